//! Papers in another language than US English have no word of US English left but what a person typed.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use gapwright::air::IndoorAir;
use gapwright::assess::{Assessment, assess};
use gapwright::job::{Catalog, Job, file};
use gapwright::measure::Units;
use gapwright::papers::{Paper, PaperWords, Papers, Templates, record};
use gapwright::repair::MethodId;
use gapwright::words::{Language, Words, languages};

const EXAMPLES: [&str; 3] = [
    include_str!("../../examples/tea_room.ron"),
    include_str!("../../examples/stair_hall.ron"),
    include_str!("../../examples/porch_room.ron"),
];
const DELIVERY: &str = include_str!("../../examples/boathouse_delivery.ron");

/// Words of dates and times in the languages there are, which CLDR knows and no catalog has.
const DATES: &str = "ene feb mar abr may jun jul ago sept sep oct nov dic enero febrero marzo abril mayo junio \
     julio agosto septiembre octubre noviembre diciembre lun mar mié jue vie sáb dom de";

/// The words of a text: runs of letters, in small letters.
fn words_of(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphabetic()).filter(|word| word.chars().count() > 1).map(str::to_lowercase)
}

/// What the catalogs of a language say, without ids, names of arguments and variants, and comments.
fn said(language: &Language) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/words").join(language.tag());
    let mut said = String::new();
    for entry in fs::read_dir(folder).unwrap() {
        for line in fs::read_to_string(entry.unwrap().path()).unwrap().lines() {
            let line = line.trim_start();
            if line.starts_with('#') {
                continue;
            }
            let is_id = |text: &str| !text.trim_end().contains(' ');
            let text = line.split_once('=').filter(|(id, _)| is_id(id)).map_or(line, |(_, text)| text);
            let text = text.trim_start_matches('*').trim_start();
            let text =
                text.strip_prefix('[').and_then(|rest| rest.split_once(']')).map_or(text, |(_, text)| text);
            let mut depth = 0;
            for c in text.chars() {
                match c {
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    c if depth <= 0 => said.push(c),
                    _ => {}
                }
            }
            said.push('\n');
        }
    }
    said
}

/// What a person typed that papers show.
fn typed(job: &Job) -> String {
    let mut typed = vec![job.title.clone(), job.owner.clone(), job.address.clone()];
    typed.extend([job.contractor.name.clone(), job.contractor.details.clone(), job.contractor.signs.clone()]);
    for surface in &job.surfaces {
        typed.push(surface.name.clone());
        typed.extend(surface.sections.iter().map(|section| section.name.clone()));
        typed.extend(surface.openings.iter().map(|opening| opening.name.clone()));
        typed.extend(surface.dividers.iter().map(|divider| divider.name.clone()));
    }
    typed.extend(job.survey.moistures.iter().map(|reading| reading.board.clone()));
    if let Some(next) = &job.next_install {
        typed.extend([next.supplier.clone(), next.checked_by.clone()]);
        typed.extend(next.readings.iter().map(|reading| reading.board.clone()));
    }
    // Names of places are the same in every language.
    match &job.air {
        IndoorAir::FromPlace { site, .. } => typed.push(site.name.clone()),
        IndoorAir::FromClimate { station, .. } => typed.push(station.clone()),
        IndoorAir::Monthly(_) | IndoorAir::FromWeather { .. } => {}
    }
    typed.join("\n")
}

/// What a page shows, and what its script may put there.
fn shown(html: &str) -> String {
    let mut shown = String::new();
    let mut rest = html;
    while let Some(at) = rest.find('<') {
        shown += &rest[..at];
        shown.push('\n');
        let skipped = ["style", "script", "!--"].iter().find(|tag| rest[at + 1..].starts_with(**tag));
        let end = match skipped {
            Some(&"style") => "</style>",
            Some(&"script") => "</script>",
            Some(_) => "-->",
            None => ">",
        };
        rest = rest[at..].split_once(end).map_or("", |(_, rest)| rest);
    }
    let data = html.split_once("id=\"data\">").unwrap().1.split_once("</script>").unwrap().0;
    let mut shown = shown + rest;
    for entity in ["&amp;", "&quot;", "&lt;", "&gt;"] {
        shown = shown.replace(entity, " ");
    }
    strings(&serde_json::from_str(data).unwrap(), &mut shown);
    shown
}

/// The texts in a JSON value that have a blank in them: others may be keys.
fn strings(value: &serde_json::Value, all: &mut String) {
    match value {
        serde_json::Value::String(text) if text.contains(' ') => {
            all.push_str(text);
            all.push('\n');
        }
        serde_json::Value::Array(items) => items.iter().for_each(|item| strings(item, all)),
        serde_json::Value::Object(members) => members.values().for_each(|member| strings(member, all)),
        _ => {}
    }
}

/// The papers and the page of a job in a language, each with what stands on it.
fn papers(found: &Assessment, language: &'static Language) -> Vec<(String, String)> {
    let words = Words::new(language, found.job.units, &found.job.plan.prices.currency);
    let words = PaperWords { owner: words.clone(), crew: words };
    let papers = Papers::with(found, Templates::default(), &words);
    let mut all: Vec<(String, String)> =
        Paper::ALL.map(|paper| (format!("{paper:?}"), papers.typeset(paper).unwrap().text())).to_vec();
    if !found.job.surfaces.is_empty() {
        all.push(("page".to_owned(), shown(&papers.owner_page().unwrap().html)));
    }
    if found.next_install.is_some() {
        for (name, bytes) in record(found, &[], &words).unwrap().into_iter().take(2) {
            all.push((name.to_owned(), pdf_extract::extract_text_from_mem(&bytes).unwrap()));
        }
    }
    all
}

/// Every job here: the examples and a delivery; and the first example with every repair there is.
fn jobs() -> Vec<Job> {
    let read = |text: &str| file::read(text).unwrap().job;
    let mut jobs: Vec<Job> = EXAMPLES.iter().chain([&DELIVERY]).map(|text| read(text)).collect();
    for method in MethodId::ALL {
        let mut job = read(EXAMPLES[0]);
        job.plan.chosen = method;
        job.built = Some(1950);
        job.units = Units::Millimeters;
        jobs.push(job);
    }
    jobs
}

#[test]
fn every_word_on_a_paper_is_of_its_language_or_was_typed() {
    for language in languages().iter().skip(1) {
        let catalogs: BTreeSet<String> = words_of(&said(language)).chain(words_of(DATES)).collect();
        let mut strange = BTreeSet::new();
        for job in jobs() {
            let typed: BTreeSet<String> = words_of(&typed(&job)).collect();
            let found = assess(job, Catalog::built_in());
            for (paper, text) in papers(&found, language) {
                let all: Vec<String> = words_of(&text).collect();
                assert!(all.len() > 20, "{paper} of {}: {text}", found.job.title);
                let unknown =
                    all.into_iter().filter(|word| !catalogs.contains(word) && !typed.contains(word));
                strange.extend(unknown.map(|word| format!("{paper}: {word}")));
            }
        }
        assert!(strange.is_empty(), "{}: {strange:#?}", language.tag());
    }
}

#[test]
fn no_text_of_the_catalog_stands_on_a_paper_in_us_english() {
    let catalog = Catalog::built_in();
    let mut texts: Vec<&str> = catalog.species.iter().map(|species| species.name.as_str()).collect();
    texts.extend(catalog.sealants.iter().flat_map(|sealant| [&*sealant.name, &sealant.source]));
    texts.extend(catalog.paints.iter().flat_map(|paint| [&*paint.name, &paint.source]));
    texts.extend(catalog.materials.iter().flat_map(|material| [&*material.name, &material.source]));
    texts.extend(catalog.tasks.iter().flat_map(|task| [&*task.name, &task.source]));
    texts.extend(catalog.conditions.iter().map(|condition| condition.name.as_str()));
    texts.extend(catalog.methods.iter().flat_map(|m| [&*m.name, &m.look, &m.upset, &m.says]));
    texts.extend(catalog.cautions.iter().flat_map(|caution| [&*caution.title, &caution.text]));
    texts.extend(catalog.finishes.iter().map(|coating| coating.name.as_str()));
    // Without blanks, so that a line break hides nothing. A word or two may be part of something else.
    let dense = |text: &str| text.chars().filter(|c| c.is_alphanumeric()).collect::<String>();
    let texts: Vec<String> = texts.into_iter().map(dense).filter(|text| text.len() > 12).collect();
    let in_english: usize = jobs().len();
    let mut seen = 0;
    for job in jobs() {
        let found = assess(job, Catalog::built_in());
        for language in languages() {
            for (paper, text) in papers(&found, language) {
                let text = dense(&text);
                let left: Vec<&String> = texts.iter().filter(|known| text.contains(known.as_str())).collect();
                if language.tag() == "en-US" {
                    seen += left.len();
                } else {
                    assert!(left.is_empty(), "{paper} of {}: {left:?}", found.job.title);
                }
            }
        }
    }
    // In US English they do stand there.
    assert!(seen > 20 * in_english, "{seen}");
}
