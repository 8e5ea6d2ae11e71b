//! What stands on the papers is what the assessment says, to the cent.

use std::collections::BTreeSet;

use gapwright::assess::assess;
use gapwright::export::{Report, report_schema};
use gapwright::job::{Catalog, Job, file};
use gapwright::measure::{Length, Percent, Units};
use gapwright::papers::figure::{JointMap, MapFor};
use gapwright::papers::{Folder, HeldBack, Paper, Papers, held_back};
use gapwright::repair::{MethodId, Payers, PriceLine, Shares};
use gapwright::survey::{LaterGap, LaterVisit};
use gapwright::words::Words;
use serde_json::Value;

const EXAMPLES: [&str; 3] = [
    include_str!("../../examples/tea_room.ron"),
    include_str!("../../examples/stair_hall.ron"),
    include_str!("../../examples/porch_room.ron"),
];

fn texts(job: &Job) -> (Vec<String>, Value) {
    let found = assess(job.clone(), Catalog::built_in());
    let papers = Paper::ALL.map(|paper| Papers::new(&found).typeset(paper).unwrap().text());
    (papers.to_vec(), serde_json::to_value(Report::new(&found, &[])).unwrap())
}

/// The amount of a report, `1234.50`, as papers write it.
fn written(amount: &Value, currency: &str) -> String {
    let (units, cents) = amount.as_str().unwrap().split_once('.').unwrap();
    let mut grouped = String::new();
    for (at, digit) in units.chars().enumerate() {
        if at > 0 && (units.len() - at).is_multiple_of(3) {
            grouped.push(',');
        }
        grouped.push(digit);
    }
    format!("{currency}{grouped}.{cents}")
}

/// Without blanks, so that a line break in the paper hides nothing.
fn dense(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace() && !c.is_control()).collect()
}

/// Boards that likely went up too wet may be somebody else's to pay for: until it is said who pays, no paper says
/// that the owner does, and there is nothing to sign.
#[test]
fn no_paper_says_that_the_owner_pays_before_somebody_did() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    job.plan.payers = Payers::default();
    let held = |job: &Job| {
        let found = assess(job.clone(), Catalog::built_in());
        held_back(Paper::Proposal, &found, &[])
    };
    assert_eq!(held(&job), Some(HeldBack::PayersOpen));
    let letter = |job: &Job| dense(&texts(job).0[0]);
    assert_eq!(Paper::ALL[0], Paper::Letter);
    let open = letter(&job);
    assert!(!open.contains("Youpay") && open.contains("stilltobeagreed"), "{open}");
    assert!(open.contains("willbeinourproposal") && !open.contains("inourproposal."), "{open}");
    job.plan.payers.agreed = true;
    assert_eq!(held(&job), None);
    let agreed = letter(&job);
    assert!(agreed.contains("Youpay100%") && !agreed.contains("stilltobeagreed"), "{agreed}");
    job.plan.payers = Payers { supplier: Percent::pct(40.0), ..Payers::default() };
    assert_eq!(held(&job), None);
    assert!(letter(&job).contains("Youpay60%"));
}

/// The owner is asked to call from the width on that the warranty goes by.
#[test]
fn the_letter_asks_for_a_call_from_the_warranted_width_on() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    job.plan.payers.agreed = true;
    for (widest, told) in
        [(1.0 / 32.0, "1/32\"(aboutasthickasacreditcard)"), (0.125, "1/8\"(about4creditcards")]
    {
        job.plan.callback.widest = Length::inches(widest);
        let (papers, _) = texts(&job);
        let of = |paper| dense(&papers[Paper::ALL.iter().position(|other| *other == paper).unwrap()]);
        assert!(of(Paper::Letter).contains(&format!("openswiderthan{told}")), "{}", of(Paper::Letter));
        let (width, _) = told.split_once('(').unwrap();
        assert!(of(Paper::Proposal).contains(&format!("openswiderthan{width}")), "{}", of(Paper::Proposal));
    }
}

/// What was not entered leaves a line to write it on or nothing at all: no colon before nothing, no comma.
#[test]
fn papers_of_a_job_without_names_leave_no_loose_ends() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    job.plan.payers.agreed = true;
    for text in [&mut job.title, &mut job.owner, &mut job.address] {
        text.clear();
    }
    let found = assess(job, Catalog::built_in());
    let text = |paper| Papers::new(&found).typeset(paper).unwrap().text();
    assert!(!dense(&text(Paper::Letter)).contains("boards:"), "{}", text(Paper::Letter));
    for paper in [Paper::Letter, Paper::Proposal, Paper::WorkOrder] {
        let lines = text(paper);
        assert!(!lines.lines().any(|line| line.trim_start().starts_with(',')), "{lines}");
    }
    assert!(text(Paper::Proposal).contains("Where"), "{}", text(Paper::Proposal));
}

/// A follow-up report is of the day of the last visit, on every page.
#[test]
fn a_follow_up_report_is_dated_by_its_last_visit() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    let first = job.survey.gaps[0].clone();
    let on = job.visited.saturating_add(jiff::Span::new().days(200));
    let gap = LaterGap { surface: first.surface, joint: first.joint, width: Some(first.width) };
    job.later = vec![LaterVisit { on, gaps: vec![gap] }];
    let found = assess(job.clone(), Catalog::built_in());
    let text = dense(&Papers::new(&found).typeset(Paper::FollowUpReport).unwrap().text());
    let words = Words::us_english(Units::Inches, "$");
    let footer = |date| dense(&format!("{}, {}", job.title, words.figures().date(date)));
    assert!(text.contains(&footer(on)) && !text.contains(&footer(job.visited)), "{text}");
}

#[test]
fn every_amount_on_the_papers_is_that_of_the_report() {
    for text in EXAMPLES {
        for units in [Units::Inches, Units::Millimeters] {
            let mut job = file::read(text).unwrap().job;
            job.units = units;
            job.plan.prices.deposit = Percent::pct(30.0);
            job.plan.prices.contingency = Some(Percent::pct(80.0));
            let own = Shares { contractor: Percent::pct(10.0), supplier: Percent::pct(45.0) };
            job.plan.payers.lines.insert(PriceLine::Materials, own);
            let (papers, report) = texts(&job);
            let of = |paper: Paper| dense(&papers[Paper::ALL.iter().position(|of| *of == paper).unwrap()]);
            let (letter, sheet, proposal) = (of(Paper::Letter), of(Paper::PriceSheet), of(Paper::Proposal));
            let options = report["options"].as_array().unwrap();
            let chosen = options.iter().find(|option| option["chosen"] == true).unwrap();
            let price = &chosen["price"];
            let currency = price["currency"].as_str().unwrap();
            for key in ["total", "owner", "deposit"] {
                assert!(letter.contains(&written(&price[key], currency)), "{}: letter, {key}", job.title);
                assert!(proposal.contains(&written(&price[key], currency)), "{}: proposal, {key}", job.title);
            }
            let parts = ["labour", "materials", "overhead", "contingency", "profit", "tax", "total"];
            for key in parts.into_iter().chain(["owner", "contractor", "supplier", "deposit"]) {
                assert!(sheet.contains(&written(&price[key], currency)), "{}: sheet, {key}", job.title);
            }
            for line in chosen["materials"].as_array().unwrap() {
                assert!(sheet.contains(&written(&line["amount"], currency)), "{}: {line}", job.title);
            }
            let days = format!("{}days", chosen["crew_days"]);
            assert!(sheet.contains(&days) && letter.contains(&days), "{}: {days}", job.title);
        }
    }
}

/// Every date in a text, `Feb 14, 2026`, `14 Feb 2026` or `2026-02-14`, as ISO.
fn dates(text: &str) -> BTreeSet<String> {
    const MONTHS: [&str; 12] =
        ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let words: Vec<&str> = text.split(|c: char| c.is_whitespace() || ",.;()".contains(c)).collect();
    let date = |three: &[&str]| {
        let (month, day) =
            if three[0].parse::<u8>().is_ok() { (three[1], three[0]) } else { (three[0], three[1]) };
        let month = MONTHS.iter().position(|known| *known == month)? + 1;
        let (day, year): (u8, u16) = (day.parse().ok()?, three[2].parse().ok()?);
        Some(format!("{year:04}-{month:02}-{day:02}"))
    };
    let words: Vec<&str> = words.into_iter().filter(|word| !word.is_empty()).collect();
    let iso = words.iter().filter(|word| word.parse::<jiff::civil::Date>().is_ok() && word.len() == 10);
    words.windows(3).filter_map(date).chain(iso.map(|word| (*word).to_owned())).collect()
}

/// Every amount of money in a text, without the signs that group digits.
fn amounts(text: &str, currency: &str) -> BTreeSet<String> {
    let amount = |rest: &str| {
        let taken: String = rest.chars().take_while(|c| c.is_ascii_digit() || ",.".contains(*c)).collect();
        let digits = taken.replace(',', "");
        let (units, cents) = digits.split_once('.')?;
        // To the cent; rounded ones in sentences are held against the report's sentences.
        (!units.is_empty() && cents.len() >= 2).then(|| format!("{units}.{}", &cents[..2]))
    };
    text.split(currency).skip(1).filter_map(amount).collect()
}

/// Every text anywhere in a report.
fn strings(value: &Value, all: &mut Vec<String>) {
    match value {
        Value::String(text) => all.push(text.clone()),
        Value::Array(values) => values.iter().for_each(|value| strings(value, all)),
        Value::Object(values) => values.values().for_each(|value| strings(value, all)),
        _ => {}
    }
}

/// What stands in the PDFs, taken out of them by another program's reader, is in the report: every date
/// and every amount of money, to the cent.
#[test]
fn every_date_and_amount_in_the_pdfs_is_in_the_report() {
    for text in EXAMPLES {
        let job = file::read(text).unwrap().job;
        let found = assess(job.clone(), Catalog::built_in());
        let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
        let mut all = Vec::new();
        strings(&report, &mut all);
        // The evidence sheet repeats what was entered, too.
        let entered = job.installed.map(|installed| installed.date().to_string());
        let known_dates: BTreeSet<String> =
            all.iter().cloned().chain(all.iter().flat_map(|text| dates(text))).chain(entered).collect();
        let known: BTreeSet<&String> = all.iter().collect();
        let papers = Papers::new(&found);
        let mut seen = (0, 0);
        for paper in Paper::ALL {
            let pdf = papers.typeset(paper).unwrap().pdf().unwrap();
            let text = pdf_extract::extract_text_from_mem(&pdf).unwrap();
            for date in dates(&text) {
                assert!(known_dates.contains(&date), "{}, {paper:?}: {date}", job.title);
                seen.0 += 1;
            }
            for amount in amounts(&text, &job.plan.prices.currency) {
                assert!(known.contains(&amount), "{}, {paper:?}: {amount}", job.title);
                seen.1 += 1;
            }
        }
        assert!(seen.0 >= 8 && seen.1 >= 20, "{}: {seen:?}", job.title);
    }
}

#[test]
fn the_published_schema_is_that_of_the_report_and_every_report_keeps_to_it() {
    let schema = include_str!("../../assets/assessment.schema.json");
    assert_eq!(
        schema,
        report_schema().unwrap(),
        "write it anew: gapwright schema > assets/assessment.schema.json"
    );
    let schema = jsonschema::validator_for(&serde_json::from_str(schema).unwrap()).unwrap();
    let jobs = EXAMPLES.iter().map(|text| file::read(text).unwrap().job).chain([Job::default()]);
    for job in jobs {
        let found = assess(job.clone(), Catalog::built_in());
        let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
        let faults: Vec<String> = schema.iter_errors(&report).map(|error| error.to_string()).collect();
        assert!(faults.is_empty(), "{}: {faults:?}", job.title);
        let mut wrong = report;
        wrong["sections"] = Value::from("none");
        assert!(!schema.is_valid(&wrong));
    }
}

/// Long names, names in other scripts, no names at all: every paper is made and says the names.
#[test]
fn papers_bear_long_and_foreign_names_and_none() {
    let names = [
        String::new(),
        "The house at the far end of the lane, with the tea room upstairs and the landing".to_owned(),
        "فاطمة الزهراء".to_owned(),
        "יעקב בן־שלום".to_owned(),
        "Ångström, Łódź, Ñuñoa, Čertova".to_owned(),
        "#panic(\"no\") $x^2$ *bold* @ref <label> \\ \"quoted\" // comment".to_owned(),
    ];
    for name in names {
        for units in [Units::Inches, Units::Millimeters] {
            let mut job = file::read(EXAMPLES[0]).unwrap().job;
            job.units = units;
            (job.title, job.owner, job.address) = (name.clone(), name.clone(), name.clone());
            job.contractor.name.clone_from(&name);
            job.contractor.signs.clone_from(&name);
            job.rename_surface(0, &name);
            job.rename_section(1, 0, &name);
            let found = assess(job.clone(), Catalog::built_in());
            let papers = Papers::new(&found);
            for paper in Paper::ALL {
                let typeset = papers.typeset(paper).unwrap_or_else(|error| panic!("{name}: {error}"));
                assert!(dense(&typeset.text()).contains(&dense(&name)), "{paper:?}: {name}");
                // The evidence sheet says every name again with the boards and with what does not fit.
                let most = if matches!(paper, Paper::EvidenceSheet | Paper::MeasuringSheet) { 7 } else { 4 };
                assert!(typeset.pages() <= most, "{paper:?}: {} pages", typeset.pages());
            }
        }
    }
}

#[test]
fn the_same_job_gives_the_same_bytes_with_its_title_in_the_metadata() {
    let job = file::read(EXAMPLES[0]).unwrap().job;
    let made = || {
        let found = assess(job.clone(), Catalog::built_in());
        let papers = Papers::new(&found);
        Paper::ALL.map(|paper| papers.typeset(paper).unwrap().pdf().unwrap())
    };
    let (first, second) = (made(), made());
    assert!(first == second);
    for pdf in first {
        let text = String::from_utf8_lossy(&pdf);
        assert!(text.contains("/Title") && text.contains("/StructTreeRoot") && text.contains("/Lang"));
    }
}

/// Papers in inches have nothing metric in them; where names and sources of the catalog have, it is not ours.
#[test]
fn papers_in_inches_are_in_us_units() {
    const METRIC: [&str; 14] =
        ["mm", "cm", "m", "m²", "m³", "mL", "ml", "L", "l", "°C", "g/m³", "kg", "metre", "metres"];
    for text in EXAMPLES {
        let mut job = file::read(text).unwrap().job;
        job.units = Units::Inches;
        let (papers, _) = texts(&job);
        for (paper, text) in Paper::ALL.iter().zip(papers) {
            let words: Vec<&str> = text.split_whitespace().collect();
            let number = |word: &str| word.trim_start_matches('(').starts_with(|c: char| c.is_ascii_digit());
            for pair in words.windows(2) {
                let unit = pair[1].trim_end_matches(|c: char| ",.;)".contains(c));
                let metric = number(pair[0]) && METRIC.contains(&unit);
                assert!(!metric && !pair[1].contains("°C"), "{}, {paper:?}: {pair:?}", job.title);
            }
        }
    }
}

/// As many pages as a contractor hands over: two of the letter, of the proposal and of the price sheet, one of the
/// crew card.
#[test]
fn letter_and_price_sheet_have_two_pages() {
    for text in EXAMPLES {
        for units in [Units::Inches, Units::Millimeters] {
            let mut job = file::read(text).unwrap().job;
            job.units = units;
            let papers = Papers::new(&assess(job.clone(), Catalog::built_in()));
            assert_eq!(papers.typeset(Paper::CrewCard).unwrap().pages(), 1, "{}: crew card", job.title);
            for paper in [Paper::Letter, Paper::Proposal, Paper::PriceSheet] {
                let pages = papers.typeset(paper).unwrap().pages();
                assert!(pages <= 2, "{}, {units:?}, {paper:?}: {pages} pages", job.title);
            }
        }
    }
}

/// What cannot be stood for is no clean paper: a job with a broken outline and an empty one are drafts on
/// every page and promise no warranty; a sound one is neither.
#[test]
fn a_broken_or_empty_job_prints_drafts() {
    let text = |job: Job, paper: Paper| {
        let found = assess(job, Catalog::built_in());
        Papers::new(&found).typeset(paper).unwrap().text()
    };
    let sound = file::read(EXAMPLES[0]).unwrap().job;
    let mut broken = sound.clone();
    broken.plan.prices.overhead = Percent::pct(900.0);
    // A markup that can't be changes no reading: papers without prices stand.
    let priced = |paper: Paper| {
        !matches!(
            paper,
            Paper::MeasuringSheet | Paper::EvidenceSheet | Paper::FollowUpCard | Paper::FollowUpReport
        )
    };
    for paper in Paper::ALL {
        assert!(!text(sound.clone(), paper).contains("DRAFT"), "{paper:?}");
        assert_eq!(text(broken.clone(), paper).contains("DRAFT"), priced(paper), "{paper:?}");
        assert!(text(Job::default(), paper).contains("DRAFT"), "{paper:?}");
    }
    assert!(text(sound, Paper::Letter).contains("We warrant"));
    let warranty = |job: Job| text(job, Paper::Letter).contains("We warrant");
    assert!(!warranty(Job::default()) && !warranty(broken));
}

/// A repair that would most likely open again is not offered without saying so first, and not warranted; one
/// that lasts is.
#[test]
fn what_is_advised_against_says_so_and_is_not_warranted() {
    let letter = |text: &str, method: MethodId| {
        let mut job = file::read(text).unwrap().job;
        job.plan.chosen = method;
        Papers::new(&assess(job, Catalog::built_in())).typeset(Paper::Letter).unwrap().text()
    };
    let advised_against = letter(EXAMPLES[2], MethodId::Reseal);
    assert!(advised_against.contains("We advise against this repair"));
    assert!(!advised_against.contains("Our warranty"));
    let lasts = letter(EXAMPLES[2], MethodId::CoverStrips);
    assert!(!lasts.contains("advise against") && lasts.contains("We warrant"));
    // The letter is no contract: nobody signs it but its writer.
    assert!(!advised_against.contains("initials") && !lasts.contains("initials"));
    let proposal = |method: MethodId| {
        let mut job = file::read(EXAMPLES[2]).unwrap().job;
        job.plan.chosen = method;
        Papers::new(&assess(job, Catalog::built_in())).typeset(Paper::Proposal).unwrap().text()
    };
    let offered = proposal(MethodId::Reseal);
    let warned = offered.find("We advise against this repair").unwrap();
    let (initials, scope) = (offered.find("initials").unwrap(), offered.find("What we will do").unwrap());
    assert!(warned < initials && initials < scope, "{offered}");
    assert!(!offered.contains("come back and fix it") && offered.contains("can’t warrant"), "{offered}");
    let good = proposal(MethodId::CoverStrips);
    assert!(!good.contains("advise against") && good.contains("come back and fix it"), "{good}");
}

/// A proposal bears its terms as they were entered, and blanks where they were not.
#[test]
fn the_proposal_bears_its_terms() {
    let proposal =
        |job: Job| Papers::new(&assess(job, Catalog::built_in())).typeset(Paper::Proposal).unwrap().text();
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    let blank = proposal(job.clone());
    assert!(blank.contains("License no.") && blank.contains("Mar 16, 2026"), "{blank}");
    // A house of 1994 needs no lead pamphlet; the right to cancel is told whatever its age.
    assert!(!blank.contains("Renovate Right") && blank.contains("Right to cancel"), "{blank}");
    assert!(blank.contains("Check your local rules") && blank.contains("They haven’t agreed"), "{blank}");
    job.built = Some(1960);
    job.proposal.number = "2026-014".into();
    job.proposal.valid_days = 10;
    job.proposal.payment = "Half now, half in June.".into();
    job.proposal.exclusions = "The stair rail".into();
    job.contractor.license = "LIC 0000".into();
    job.contractor.insurance = "Policy 0000".into();
    let filled = proposal(job);
    for entered in
        ["2026-014", "Feb 24, 2026", "Half now, half in June.", "The stair rail", "LIC 0000", "Policy 0000"]
    {
        assert!(filled.contains(entered), "{entered}: {filled}");
    }
    assert!(filled.contains("Renovate Right"), "{filled}");
}

/// The evidence can be rechecked from the sheet: boards, dates and the place stand beside the readings.
#[test]
fn the_evidence_sheet_has_what_a_recheck_needs() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    job.survey.meter = "Pin meter, checked Feb 1".into();
    job.received.delivery = "Aug 18, slip 77".into();
    job.received.storage = "One week in the garage".into();
    let found = assess(job, Catalog::built_in());
    let text = Papers::new(&found).typeset(Paper::EvidenceSheet).unwrap().text();
    // One delivery: its stamps are told once, with the chance to be above each.
    assert_eq!(text.matches("stamp allows,").count(), 1, "{text}");
    let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
    let over = report["sections"][0]["over_marks"].as_array().unwrap();
    assert!(over.len() >= 2, "{over:?}");
    for mark in over {
        let chance = mark["chance_pct"].as_f64().unwrap();
        if (1.0..=99.0).contains(&chance) {
            assert!(text.contains(&format!("{}%", chance.round())), "{mark}: {text}");
        }
    }
    for needed in [
        "Pin meter, checked Feb 1",
        "Aug 18, slip 77",
        "One week in the garage",
        "Pine, western white",
        "5-1/8",
        "V-groove",
        "nailing: tongue",
        "Aug 25, 2025",
        "Feb 14, 2026",
        "1994",
    ] {
        assert!(text.contains(needed), "{needed} is not in\n{text}");
    }
}

/// Every joint that is named on a paper is to be found: its number is on the map of the same paper.
#[test]
fn the_joints_to_read_and_those_read_are_on_the_map() {
    for text in EXAMPLES {
        let job = file::read(text).unwrap().job;
        let found = assess(job.clone(), Catalog::built_in());
        for (surface, drawn) in job.surfaces.iter().enumerate() {
            let first = found.reading_order();
            let map = JointMap::new(&found, surface, MapFor::Evidence, &first).unwrap().draw();
            for gap in job.survey.gaps.iter().filter(|gap| gap.surface == drawn.name) {
                assert!(
                    map.contains(&format!(">\n{}\n<", gap.joint))
                        || map.contains(&format!(">{}<", gap.joint)),
                    "{}",
                    gap.joint
                );
            }
            let map = JointMap::new(&found, surface, MapFor::Reading, &first).unwrap().draw();
            for (_, joint) in first.iter().filter(|(of, _)| *of == surface) {
                let label = &found.layouts[surface].joints[*joint].label;
                assert!(
                    map.contains(&format!(">\n{label}\n<")) || map.contains(&format!(">{label}<")),
                    "{label}"
                );
            }
        }
    }
}

/// Where nothing was read yet, a few joints of each section come first; the first of all is the one that the
/// report names.
#[test]
fn the_sheet_for_the_ladder_begins_with_what_tells_most() {
    let mut job = file::read(EXAMPLES[0]).unwrap().job;
    let found = assess(job.clone(), Catalog::built_in());
    let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
    if let Some(next) = report["opening"]["next_joint"].as_str() {
        // Right after what the verdict asks for.
        let order = found.reading_order();
        let first = order.iter().take(2).map(|&(surface, joint)| &found.layouts[surface].joints[joint].label);
        assert!(first.into_iter().any(|label| label == next), "{next}: {order:?}");
    }
    job.survey.gaps.clear();
    let found = assess(job, Catalog::built_in());
    let order = found.reading_order();
    for (surface, laid) in found.layouts.iter().enumerate() {
        for section in 0..laid.sections.len() {
            let here =
                |(of, joint): &&(usize, usize)| *of == surface && laid.joints[*joint].section == section;
            assert_eq!(order.iter().filter(here).count(), 3, "surface {surface}, section {section}");
        }
    }
    let unlike: BTreeSet<_> = order.iter().collect();
    assert_eq!(unlike.len(), order.len());
    let sheet = Papers::new(&found).typeset(Paper::MeasuringSheet).unwrap().text();
    assert!(sheet.contains("Read these 12 joints first") && !sheet.contains("DRAFT"), "{sheet}");
}

/// What wages and profit are is marked on every page, and on no paper for others.
#[test]
fn the_price_sheet_is_marked_internal_on_every_page() {
    let papers = Papers::new(&assess(file::read(EXAMPLES[0]).unwrap().job, Catalog::built_in()));
    for paper in Paper::ALL {
        let typeset = papers.typeset(paper).unwrap();
        let marks = typeset.text().matches("INTERNAL").count();
        let inside = paper.folder() == Folder::Inside;
        assert_eq!(marks, if inside { typeset.pages() } else { 0 }, "{paper:?}");
    }
}

/// A reveal's width stands in a text of the catalog as a place to fill in: nobody ever reads that place.
#[test]
fn no_paper_page_or_report_leaves_the_place_of_a_width_open() {
    for text in EXAMPLES {
        let mut job = file::read(text).unwrap().job;
        job.plan.chosen = MethodId::Reveal;
        let (papers, report) = texts(&job);
        let page = Papers::new(&assess(job.clone(), Catalog::built_in())).owner_page().unwrap().html;
        let all = papers.join(" ") + &page + &report.to_string();
        assert!(!all.contains("[reveal]"), "{}", job.title);
    }
}

/// The porch's complaint is the quarter under the valley, open by 3/16 in and more: it is what is drawn.
#[test]
fn the_joint_that_is_drawn_is_one_of_those_that_opened() {
    let job = file::read(EXAMPLES[2]).unwrap().job;
    let found = assess(job, Catalog::built_in());
    let state = found.typical_section().unwrap();
    assert_eq!(found.job.surfaces[state.surface].sections[state.section].name, "C");
}

/// On the day of sealing every measured joint that is to be sealed is forecast between the gaps that the crew is told
/// to seal at, in its own section.
#[test]
fn every_joint_to_be_sealed_is_forecast_between_the_gaps_to_seal_at() {
    for text in EXAMPLES {
        let mut job = file::read(text).unwrap().job;
        job.plan.chosen = MethodId::Reseal;
        let found = assess(job, Catalog::built_in());
        for at in 0..found.sections.len() {
            for joint in found.sealed_joints(at) {
                let gaps = found.gaps_to_seal_at(at).unwrap();
                let gap = joint.at_sealing;
                assert!(gaps.low <= gap && gap <= gaps.high, "{} {at}: {gap:?} {gaps:?}", found.job.title);
            }
        }
    }
}

#[test]
fn a_leak_is_a_condition_of_the_proposal_that_names_the_wet_section() {
    let job = file::read(EXAMPLES[2]).unwrap().job;
    let proposal = Papers::new(&assess(job, Catalog::built_in())).typeset(Paper::Proposal).unwrap().text();
    let proposal = dense(&proposal);
    let first = proposal.find(&dense("Please read first")).unwrap();
    let wet = proposal.find(&dense("Water has gotten into section C")).unwrap();
    assert!(first < wet && wet < proposal.find(&dense("What we will do")).unwrap());
}

/// A warranty that the room breaks as it is would be worth nothing: what was read in it and what it is forecast to be
/// lie between the humidities that the warranty asks for.
#[test]
fn the_humidity_asked_for_holds_the_room_as_it_is() {
    for text in EXAMPLES {
        let found = assess(file::read(text).unwrap().job, Catalog::built_in());
        let keep = found.humidity_to_keep().unwrap();
        let read = found.job.survey.rooms.iter().map(|room| room.humidity);
        let forecast = found.year.as_ref().unwrap().days.iter().map(|air| air.humidity);
        for humidity in read.chain(forecast) {
            assert!(keep.low <= humidity && humidity <= keep.high, "{keep:?} {humidity:?}");
        }
        let letter = Papers::new(&found).typeset(Paper::Letter).unwrap().text();
        let asked =
            format!("between about {:.0}% and {:.0}% humidity", keep.low.to_pct(), keep.high.to_pct());
        let metric =
            format!("between about {:.0} % and {:.0} % humidity", keep.low.to_pct(), keep.high.to_pct());
        let letter = dense(&letter);
        assert!(letter.contains(&dense(&asked)) || letter.contains(&dense(&metric)), "{letter}");
    }
}

/// The verdict, the evidence sheet and the sheet for the ladder name the same joints to read next.
#[test]
fn what_to_read_next_is_the_same_on_all_papers() {
    for text in EXAMPLES {
        let found = assess(file::read(text).unwrap().job, Catalog::built_in());
        let Some(next) = found.next_reading() else { continue };
        let helps = found.verdict().helps_most;
        assert!(helps.is_none_or(|helps| helps == next), "{}", found.job.title);
        if let gapwright::assess::EntryPlace::Gaps(surface, section) = next.place()
            && let Some(&(of, joint)) = found.reading_order().first()
        {
            let state = &found.sections[found.joint(of, joint).unwrap().section.unwrap()];
            assert_eq!((state.surface, state.section), (surface, section), "{}", found.job.title);
        }
    }
}
