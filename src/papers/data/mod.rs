//! The texts and figures that templates place. Keys are documented at the top of each template; a key that
//! was ever there stays, so that templates of the user's own keep working.

mod buying;
mod evidence;
mod follow_up;
mod maps;
mod measuring;
mod next_install;
mod price;
mod proposal;
mod work;

use serde_json::{Map, Value, json};

use super::{Paper, held_back};
use crate::assess::{Assessment, RepairOption};
use crate::job::{LetterPart, Logo, Problem, Severity};
use crate::measure::{Length, Units};
use crate::repair::{Caution, Outcome};
use crate::wood::Kind;
use crate::words::causes::chance_as_percent;
use crate::words::{Arg, LetterText, Say as _, Words, answer, say};

pub(crate) use buying::needed;
pub(super) use evidence::pinned_photos as photos;

/// At most this many options beside the chosen one are compared on the letter.
const OTHERS: usize = 3;

/// Everything a template can show, in these words.
///
/// `unread` is what could not be read of the job's file.
pub(super) fn data(assessment: &Assessment, unread: &[Problem], words: &Words) -> Value {
    let warrants = warrants(assessment, unread);
    let mut data = general(assessment, unread, words);
    data.extend(letter(assessment, warrants, words));
    data.extend(work::data(assessment, words));
    data.insert(
        "shopping".to_owned(),
        doable(assessment).map_or_else(|| json!([]), |option| buying::shopping(assessment, option, words)),
    );
    data.insert(
        "shopping_total".to_owned(),
        doable(assessment).map(|option| buying::total(option, words)).into(),
    );
    data.insert(
        "needed_by".to_owned(),
        doable(assessment)
            .filter(|option| option.schedule.crew_days > 0)
            .map(|option| words.figures().weekday(option.starts))
            .into(),
    );
    data.insert("readings".to_owned(), evidence::readings(assessment, words));
    data.insert("inputs".to_owned(), evidence::inputs(assessment, words));
    data.insert("causes".to_owned(), evidence::odds(assessment, words).unwrap_or_default());
    data.insert("next".to_owned(), next_install::next_install(assessment, words));
    data.insert("again".to_owned(), follow_up::again(assessment, words));
    data.insert("came".to_owned(), follow_up::came(assessment, words));
    data.insert("maps".to_owned(), maps::maps(assessment, words).into());
    data.insert("reading".to_owned(), measuring::sheet(assessment, words));
    data.insert("proposal".to_owned(), proposal::data(assessment, warrants, words).unwrap_or_default());
    Value::Object(data)
}

/// What every paper needs: the texts, who and where.
fn general(assessment: &Assessment, unread: &[Problem], words: &Words) -> Map<String, Value> {
    let job = &*assessment.job;
    let mut texts: Map<String, Value> =
        words.plain_texts("paper-").map(|(id, text)| (id.to_owned(), text.into())).collect();
    // Where the option cannot be done, the papers say why in place of it.
    if let Some(option) = assessment.chosen()
        && let Some(reason) = option.not_possible
    {
        let reason = crate::words::options::not_here(option, reason, words);
        texts.insert("paper-nothing-chosen".to_owned(), reason.as_str().into());
        texts.insert("paper-not-priced".to_owned(), reason.into());
    }
    // What can't be done waits for no entry.
    let waits = assessment.chosen().is_none_or(|option| option.not_possible.is_none());
    let missing: Vec<String> = assessment
        .answer
        .missing
        .iter()
        .filter(|_| waits)
        .map(|entry| answer::missing(assessment, *entry, words))
        .collect();
    let names: Map<String, Value> =
        Paper::ALL.map(|paper| (paper.file_stem().to_owned(), paper.say(words).into())).into_iter().collect();
    let internal = Paper::PriceSheet.say(words);
    // The typesetter alone knows the number of a page: it fills it in.
    let page = say!(words, "paper-page", page = Arg::Name("{page}"), pages = Arg::Name("{pages}"));
    let values = json!({
        "t": texts,
        "lang": words.language().tag().split('-').next().unwrap_or_default(),
        "names": names,
        "page": page,
        "paper": match words.units() { Units::Inches => "us-letter", Units::Millimeters => "a4" },
        "title": if job.next_install.is_some() { next_install::title(job, words) } else { job.title.clone() },
        "owner": job.owner,
        "address": job.address,
        "contractor": {
            "name": job.contractor.name,
            "details": job.contractor.details.lines().collect::<Vec<_>>(),
            "signs": job.contractor.signs,
        },
        "logo": job.contractor.logo.as_ref().map(Logo::file_name),
        "date": words.figures().date(job.visited),
        "draft": held_back(Paper::Letter, assessment, unread).map(|held| held.mark(assessment, words)),
        "drafts": drafts(assessment, unread, words),
        "marks": { (internal): say!(words, "paper-internal-mark") },
        "warnings": warnings(assessment, words),
        "answer": answer::headline(assessment, words),
        "cause": answer::cause(assessment, words),
        "surfaces": surfaces(assessment, words),
        "cautions": cautions(assessment, words),
        "has_year": !assessment.sections.is_empty(),
        "problems": assessment.problems.iter().filter(|problem| problem.severity != Severity::Note)
            .map(|problem| told(problem, assessment, words)).collect::<Vec<_>>(),
        "missing": missing,
    });
    object(values)
}

/// The cautions, with whose papers they stand on.
fn cautions(assessment: &Assessment, words: &Words) -> Vec<Value> {
    let one = |caution: &Caution| {
        // On what it rests: contracts and safety notes name the source alone.
        let basis = match caution.kind {
            Kind::FromMemory if !caution.source.is_empty() => {
                say!(words, "paper-source-memory", source = Arg::Called(&caution.source))
            }
            _ => words.called(&caution.source).into_owned(),
        };
        json!({
            "id": caution.id,
            "title": words.called(&caution.title),
            "text": words.called(caution.text_in(words.units())),
            "source": words.called(&caution.source),
            "basis": basis,
            "owner": caution.is_for_owner(),
            "crew": caution.is_for_crew(),
        })
    };
    assessment.cautions.iter().map(one).collect()
}

/// Of each paper that is held back, by its name: what marks its pages as a draft.
fn drafts(assessment: &Assessment, unread: &[Problem], words: &Words) -> Map<String, Value> {
    let one = |paper: Paper| {
        let held = held_back(paper, assessment, unread)?;
        Some((paper.say(words), held.mark(assessment, words).into()))
    };
    let mut drafts: Map<String, Value> = Paper::ALL.into_iter().filter_map(one).collect();
    // The letter's own template calls it by a shorter name.
    if let Some(mark) = drafts.get(&Paper::Letter.say(words)).cloned() {
        drafts.insert(words.text("paper-letter").into_owned(), mark);
    }
    drafts
}

/// Warnings that matter to the crew, and to whoever checks the price.
fn warnings(assessment: &Assessment, words: &Words) -> Value {
    let about = |problem: &Problem| {
        let field = problem.place.field().map_or("", |(field, _)| field.path);
        let money = ["shelf", "plan.prices", "plan.payers", "plan.own", "plan.on_hand"];
        money.iter().any(|part| field.starts_with(part))
    };
    let of = |money: bool| -> Vec<String> {
        let all = assessment.problems.iter();
        let warned = all.filter(|problem| problem.severity == Severity::Warning && about(problem) == money);
        warned.map(|problem| told(problem, assessment, words)).collect()
    };
    json!({ "crew": of(false), "price": of(true) })
}

/// A problem in a line: where, what, and the way out.
fn told(problem: &Problem, assessment: &Assessment, words: &Words) -> String {
    problem.line_on_paper(&assessment.job, words)
}

/// Whether the work is warranted: not on a draft, and not what is advised against.
fn warrants(assessment: &Assessment, unread: &[Problem]) -> bool {
    let against = assessment.chosen().is_some_and(|option| assessment.advises_against(option));
    !against && held_back(Paper::Letter, assessment, unread).is_none()
}

fn surfaces(assessment: &Assessment, words: &Words) -> Vec<Value> {
    let surfaces = assessment.job.surfaces.iter().enumerate();
    surfaces
        .map(|(index, surface)| {
            json!({
                "name": surface.name,
                "figure": format!("surface-{index}.svg"),
                "drawing": say!(words, "paper-surface-drawing", surface = &surface.name),
                "map": say!(words, "paper-surface-map", surface = &surface.name),
            })
        })
        .collect()
}

/// What the letter says, and what the other papers share with it.
fn letter(assessment: &Assessment, warrants: bool, words: &Words) -> Map<String, Value> {
    let job = &*assessment.job;
    let text = LetterText::new(assessment, words);
    let heading = |part: LetterPart| part.say(words);
    let sealed_on = assessment.seals_on();
    let years = job.plan.warranty_years;
    let seals = assessment.lays_beads();
    // Nothing is warranted of what is left as it is, or advised against.
    let warrantable =
        |option: &RepairOption| option.outcome != Outcome::Unchanged && !assessment.advises_against(option);
    let mends = doable(assessment).is_some_and(warrantable);
    let sections_caption = if seals && !text.plan.is_empty() {
        say!(words, "paper-sections-caption-sealed", date = sealed_on)
    } else {
        say!(words, "paper-sections-caption")
    };
    let options = compared_options(assessment).into_iter();
    let named = Arg::Id(if job.title.trim().is_empty() { "no" } else { "yes" });
    let proposal = Arg::Id(if assessment.payers_open() { "later" } else { "there" });
    object(json!({
        "about": say!(words, "paper-about", named = named, title = &job.title),
        "headings": {
            "saw": heading(LetterPart::Saw), "why": heading(LetterPart::Why),
            "moves": heading(LetterPart::Moves), "plan": heading(LetterPart::Plan),
            "asks": heading(LetterPart::Asks), "more": heading(LetterPart::More),
        },
        "saw": text.saw,
        "why": text.why,
        "moves": text.moves,
        "plan": text.plan,
        "asks": text.asks,
        "more": text.more,
        "sections_caption": sections_caption,
        "warranty_years": years,
        // What cannot be done is not done even if it is asked for.
        "against": doable(assessment).is_some_and(|option| assessment.advises_against(option)),
        "warranty": (years > 0 && warrants && mends)
            .then(|| say!(words, "paper-warranty", years = years, proposal = proposal)),
        "options": options.map(|option| compared(assessment, option, words)).collect::<Vec<_>>(),
        "chosen": assessment.chosen().and_then(|option| price::priced(assessment, option, words)),
        "seals": seals,
        "sealed_on": words.figures().date(sealed_on),
        "batch_note": say!(words, "paper-batch-note", units = unit_id(words.units())),
    }))
}

/// The chosen option, unless it cannot be done.
fn doable(assessment: &Assessment) -> Option<&RepairOption> {
    assessment.chosen().filter(|option| option.not_possible.is_none())
}

/// The chosen option and the three others that cost least with callbacks: the letter compares no more.
pub fn compared_options(assessment: &Assessment) -> Vec<&RepairOption> {
    let mut others: Vec<&RepairOption> = assessment
        .options
        .iter()
        .filter(|option| option.method != assessment.job.plan.chosen && option.expected.is_some())
        .collect();
    others.sort_by_key(|option| option.expected);
    assessment.chosen().into_iter().chain(others.into_iter().take(OTHERS)).collect()
}

fn compared(assessment: &Assessment, option: &RepairOption, words: &Words) -> Value {
    let again = option.callback.as_ref().map(|risk| chance_as_percent(risk.chance, words));
    json!({
        "name": words.called(&option.name),
        "chosen": option.method == assessment.job.plan.chosen,
        "price": match option.price.as_ref() {
            Some(price) => words.figures().money(price.total),
            None => say!(words, "paper-none"),
        },
        "crew_days": match option.not_possible {
            Some(_) => say!(words, "paper-none"),
            None => option.schedule.crew_days.to_string(),
        },
        "calendar_days": option.schedule.calendar_days,
        "look": words.called(&option.look),
        "against": assessment.advises_against(option),
        "again": again.unwrap_or_else(|| say!(words, "paper-none")),
    })
}

/// A gap or another length that may be unknown.
fn length_or_none(length: Option<Length>, words: &Words) -> String {
    length.map_or_else(|| say!(words, "paper-none"), |length| words.figures().length(length))
}

/// The id by which messages select what is said in these units.
const fn unit_id(units: Units) -> Arg<'static> {
    Arg::Id(match units {
        Units::Inches => "inches",
        Units::Millimeters => "millimeters",
    })
}

/// The members of a JSON object.
fn object(value: Value) -> Map<String, Value> {
    match value {
        Value::Object(members) => members,
        _ => Map::new(),
    }
}
