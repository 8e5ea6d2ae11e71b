//! What comes after: figures kept with the job, later visits, rates learned from finished jobs.

use std::sync::Arc;

use gapwright::air::IndoorAir;
use gapwright::assess::{
    Assessment, Confidence, Doubt, LaterReading, MissingEntry, Surprise, VisitVerdict, assess, taken,
};
use gapwright::belief::Cause;
use gapwright::job::demo_job;
use gapwright::job::{Catalog, Job, Lessons, Place, PriceBook, file, jobs_in, load_prices, save_prices};
use gapwright::measure::{Hours, Humidity, Length, Money, ThreePoint, Units};
use gapwright::repair::{MethodId, Outcome, Step};
use gapwright::survey::{GapReading, LaterGap, LaterVisit};
use gapwright::words::Words;
use jiff::ToSpan as _;
use jiff::civil::date;

fn found(job: &Job) -> Assessment {
    assess(job.clone(), Catalog::built_in())
}

fn chance(found: &Assessment, cause: Cause) -> f64 {
    found.causes.as_ref().unwrap().of(cause)
}

fn again(gap: &GapReading, width: Length) -> LaterGap {
    LaterGap { surface: gap.surface.clone(), joint: gap.joint.clone(), width: Some(width) }
}

/// A job that says in what figures it was reckoned does not change when the shelf does.
#[test]
fn a_kept_job_does_not_follow_the_shelf() {
    let mut job = demo_job();
    let before = found(&job);
    job.price_book = Some(PriceBook::of(Catalog::built_in(), job.visited));
    let mut dearer = Catalog::clone(Catalog::built_in());
    for material in &mut dearer.materials {
        material.price = material.price.times(3.0);
    }
    for task in &mut dearer.tasks {
        task.minutes = task.minutes.times(2.0);
    }
    let dearer = Arc::new(dearer);
    let kept = assess(job.clone(), &dearer);
    assert_eq!(kept.options, before.options);
    job.price_book = None;
    assert_ne!(assess(job, &dearer).chosen().unwrap().price, before.chosen().unwrap().price);
}

#[test]
fn a_shelf_survives_its_file_and_a_job_its_shelf() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("shelf.ron");
    let mut own = PriceBook::of(Catalog::built_in(), date(2026, 5, 1));
    own.tasks[0].minutes = ThreePoint { low: 1.0, likely: 2.0, high: 3.5 };
    save_prices(&own, &path).unwrap();
    assert_eq!(load_prices(&path).unwrap(), own);
    let mut job = demo_job();
    job.price_book = Some(own);
    let read = file::read(&file::write(&job).unwrap()).unwrap();
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    assert_eq!(read.job, job);
    std::fs::write(&path, "(sealants: 3)").unwrap();
    let told = load_prices(&path).unwrap_err().to_string();
    assert!(told.contains("not a price book") && told.contains("1:"), "{told}");
}

#[test]
fn prices_older_than_a_year_are_told_and_figures_that_cannot_be_too() {
    let words = Words::us_english(Units::Inches, "$");
    let told = |job: &Job, text: &str| {
        let of_book = |place: &Place| place.field().is_some_and(|(field, _)| field.path.starts_with("shelf"));
        found(job).problems.iter().any(|p| p.what(&words).contains(text) && of_book(&p.place))
    };
    let mut job = demo_job();
    assert!(!told(&job, "more than a year old"));
    let mut own = PriceBook::of(Catalog::built_in(), job.visited);
    let sealant = own.sealants.iter_mut().find(|sealant| sealant.id == job.plan.sealant).unwrap();
    sealant.priced = Some(date(2024, 1, 1));
    own.tasks[3].minutes = ThreePoint::exactly(0.0);
    own.materials[0].price = Money::cents(-1);
    job.price_book = Some(own);
    assert!(told(&job, "more than a year old"));
    assert!(told(&job, "a price of -$0.01 is not between"));
    assert!(told(&job, "the minutes 0, 0, 0 must be above 0"));
    // Until they are put right the program's own are reckoned with.
    assert_eq!(found(&job).options.len(), found(&demo_job()).options.len());
    let price = |job: &Job| found(job).chosen().unwrap().total();
    assert_eq!(price(&job), price(&demo_job()));
}

/// A way of the user's own is worked out like the others: without masking and paint it costs less.
#[test]
fn a_way_of_ones_own_stands_among_the_others() {
    let mut job = demo_job();
    let mut own = PriceBook::of(Catalog::built_in(), job.visited);
    let mut mine = Catalog::built_in().method(MethodId::Reseal).unwrap().clone();
    mine.id = MethodId::Own(1);
    mine.name = "Scrape and seal only".into();
    mine.steps.retain(|step| !matches!(step, Step::Coats(_)));
    own.methods.push(mine);
    job.price_book = Some(own);
    let found = found(&job);
    let option = |id| found.options.iter().find(|option| option.method == id).unwrap();
    let (mine, reseal) = (option(MethodId::Own(1)), option(MethodId::Reseal));
    assert!(mine.total() < reseal.total());
    assert!(matches!(mine.outcome, Outcome::Bead { .. }));
    assert_eq!(mine.callback.as_ref().unwrap().chance, reseal.callback.as_ref().unwrap().chance);
    job.plan.chosen = MethodId::Own(1);
    let text = file::write(&job).unwrap();
    assert_eq!(file::read(&text).unwrap().job.plan.chosen, MethodId::Own(1));
}

/// Gaps that came as they were forecast lie inside; gaps a sixteenth of an inch off do not.
#[test]
fn later_gaps_are_held_against_the_forecast() {
    let mut job = demo_job();
    let first = found(&job);
    let day = 150;
    let at = |job: &Job, off: Length| LaterVisit {
        on: job.visited.checked_add(150.days()).unwrap(),
        gaps: job
            .survey
            .gaps
            .iter()
            .map(|gap| {
                let surface = job.surfaces.iter().position(|s| s.name == gap.surface).unwrap();
                let joint = first.layouts[surface].joints.iter().position(|j| j.label == gap.joint).unwrap();
                let forecast = first.gap_on(first.joint(surface, joint).unwrap(), day).unwrap();
                again(gap, (forecast + off).max(Length::ZERO))
            })
            .collect(),
    };
    job.later = vec![at(&job, Length::ZERO), at(&job, Length::inches(0.125))];
    let held = found(&job).follow_up;
    assert!(held[0].readings.iter().all(|reading| reading.inside() == Some(true)));
    assert!(matches!(held[0].verdict, VisitVerdict::Forecast { holds: true, .. }), "{:?}", held[0].verdict);
    assert!(held[1].readings.iter().filter(|reading| reading.inside() == Some(false)).count() > 10);
    assert!(matches!(held[1].verdict, VisitVerdict::Forecast { holds: false, .. }), "{:?}", held[1].verdict);
    assert!(held.iter().all(|visit| !visit.after_work));
}

/// What the papers told is what visits are held against: it says the same as the first visit alone does until
/// something is learned since, and stays when a reading of the first visit is corrected.
#[test]
fn later_gaps_are_held_against_what_was_told() {
    let mut job = demo_job();
    let visit = LaterVisit {
        on: job.visited.checked_add(150.days()).unwrap(),
        gaps: job.survey.gaps.iter().map(|gap| again(gap, gap.width)).collect(),
    };
    let told = found(&job).promise().unwrap();
    let bands = |job: &Job| -> Vec<Option<(Length, Length, Length)>> {
        let forecast = |reading: &LaterReading| reading.forecast.map(|(at, band)| (at, band.low, band.high));
        found(job).follow_up[0].readings.iter().map(forecast).collect()
    };
    job.later.push(visit);
    let untold = bands(&job);
    job.promise = Some(told);
    assert_eq!(bands(&job), untold, "told and forecast differ");
    assert!(untold.iter().flatten().count() > 10);
    for gap in &mut job.survey.gaps {
        gap.width = gap.width * 2.0;
    }
    assert_eq!(bands(&job), untold, "what was told changed afterwards");
    job.promise = None;
    assert_ne!(bands(&job), untold);
}

/// Nothing is told where there is nothing to offer, or what was told is already being held against.
#[test]
fn what_was_told_stays_once_it_is_held_against() {
    assert_eq!(found(&Job::default()).promise(), None);
    let mut job = demo_job();
    job.done.finished = Some(date(2026, 5, 1));
    assert_eq!(found(&job).promise(), None);
    job.done.finished = None;
    let gap = again(&job.survey.gaps[0].clone(), Length::ZERO);
    job.later.push(LaterVisit { on: date(2026, 8, 1), gaps: vec![gap] });
    assert_eq!(found(&job).promise(), None);
    // A file that was told keeps it whole.
    let mut told = demo_job();
    told.promise = found(&told).promise();
    assert_eq!(file::read(&file::write(&told).unwrap()).unwrap().job, told);
    let text = file::write_json(&told).unwrap();
    assert_eq!(file::read(&text).unwrap().job, told);
}

/// A room a month after install: boards that were too wet go on opening, boards that only follow the
/// season hardly do. What a later visit sees must move the odds the right way.
#[test]
fn a_later_visit_puts_the_odds_right() {
    let mut job = demo_job();
    // Few and doubtful readings, taken soon after the install, so that there is something left to learn.
    job.installed = Some(date(2026, 1, 20).into());
    job.survey.moistures.clear();
    job.survey.gaps.retain(|gap| gap.joint.starts_with("A ") && gap.joint != "A ridge");
    for gap in &mut job.survey.gaps {
        gap.width = Length::mm(1.6);
    }
    let visit = |job: &Job, more: f64| LaterVisit {
        on: job.visited.checked_add(60.days()).unwrap(),
        gaps: job.survey.gaps.iter().map(|gap| again(gap, gap.width + Length::mm(more))).collect(),
    };
    let wet_after = |more: Option<f64>| {
        let mut job = job.clone();
        job.later.extend(more.map(|more| visit(&job, more)));
        chance(&found(&job), Cause::WetAtInstall)
    };
    let (opened, still, unseen) = (wet_after(Some(0.5)), wet_after(Some(-0.2)), wet_after(None));
    assert!(opened > still && opened > unseen, "opened {opened}, unseen {unseen}, still {still}");
}

/// After the work the beads are held against the chance that each was given.
#[test]
fn beads_that_opened_are_counted_against_the_chance() {
    let mut job = demo_job();
    job.done.finished = Some(date(2026, 5, 1));
    let readings = |open: usize| {
        let blank = |(at, gap): (usize, &GapReading)| {
            again(gap, if at < open { Length::mm(1.0) } else { Length::ZERO })
        };
        job.survey.gaps.iter().filter(|gap| gap.width > Length::ZERO).enumerate().map(blank).collect()
    };
    let visits = [0, 16].map(|open| LaterVisit { on: date(2027, 2, 1), gaps: readings(open) });
    job.later = visits.to_vec();
    let held = found(&job).follow_up;
    assert!(held.iter().all(|visit| visit.after_work));
    assert!(held[0].readings.iter().all(|reading| reading.chance.is_some() && reading.forecast.is_none()));
    assert!(matches!(held[0].verdict, VisitVerdict::Opened { open: 0, of: 17, .. }), "{:?}", held[0].verdict);
    let opened = |verdict| match verdict {
        VisitVerdict::Opened { expected: Some((_, surprise)), .. } => Some(surprise),
        _ => None,
    };
    assert_eq!(opened(held[1].verdict), Some(Surprise::TooMany));
}

/// Where strips are over the joints there is no gap to measure, and none that opened; where they were cut open they
/// are held against the widest that was told; left alone, gaps are held against their forecast as before.
#[test]
fn what_was_done_says_what_a_later_visit_can_be_held_against() {
    let found_after = |outcome: fn(&Outcome) -> bool| {
        let mut job = demo_job();
        job.done.finished = Some(date(2026, 5, 1));
        let wanted = Catalog::built_in().methods.iter().find(|method| outcome(&method.outcome)).unwrap();
        job.plan.chosen = wanted.id;
        let gaps = job.survey.gaps.iter().map(|gap| again(gap, gap.width + Length::mm(0.5))).collect();
        job.later = vec![LaterVisit { on: date(2026, 12, 1), gaps }];
        found(&job).follow_up.remove(0)
    };
    let covered = found_after(|outcome| *outcome == Outcome::Covered);
    assert_eq!(covered.verdict, VisitVerdict::Covered);
    let cut = found_after(|outcome| *outcome == Outcome::Line);
    // The letter told how wide the widest would get.
    let VisitVerdict::Lines { wider, of, widest } = cut.verdict else { panic!("{:?}", cut.verdict) };
    let over = |reading: &&LaterReading| reading.width > widest + Length::mm(0.2);
    assert_eq!(wider, cut.readings.iter().filter(over).count());
    assert!(of == cut.readings.len() && widest > Length::ZERO);
    let left = found_after(|outcome| *outcome == Outcome::Unchanged);
    assert!(matches!(left.verdict, VisitVerdict::Forecast { of: 1.., .. }), "{:?}", left.verdict);
    for visit in [covered, cut, left] {
        assert!(visit.after_work && visit.beads.is_none());
        assert!(visit.readings.iter().all(|reading| reading.chance.is_none()));
    }
}

/// Once the work is done nobody is told to do it, nor to measure for it.
#[test]
fn a_finished_job_is_told_as_done() {
    let mut job = demo_job();
    job.done.finished = Some(date(2026, 5, 1));
    let found = found(&job);
    let words = Words::of_job(&job);
    let lines = gapwright::words::verdict::lines(&found, &found.verdict(), &words);
    assert!(lines[0].ends_with("done on May 1, 2026."), "{lines:?}");
    assert!(!lines.iter().any(|line| line.contains("on site") || line.contains("Would help")), "{lines:?}");
    assert!(found.answer.missing.is_empty(), "{:?}", found.answer.missing);
}

/// Miters, ends and edges nobody measured are no part of the work, and whoever prices or signs is told how long they
/// are; measured, they are known.
#[test]
fn joints_that_are_left_out_are_told() {
    let mut job = demo_job();
    job.survey.gaps.retain(|gap| gap.joint.chars().any(|c| c.is_ascii_digit()));
    let none = found(&job);
    let chosen = none.chosen().unwrap();
    let run = none.not_counted_run(chosen);
    let of_kind = |found: &Assessment| -> f64 {
        let states = found.joints.iter().filter(|state| state.gap.is_none());
        states.map(|state| found.layouts[state.surface].joints[state.joint].length().to_m()).sum()
    };
    assert!(run > Length::ZERO && (run.to_m() - of_kind(&none)).abs() < 1e-9);
    let words = Words::of_job(&job);
    let told = gapwright::words::price::taken_for_granted(&none, chosen, &words);
    assert!(told.iter().any(|line| line.starts_with("Not included: ")), "{told:?}");
    let miter = none.joints.iter().find(|state| state.gap.is_none()).unwrap();
    let joint = &none.layouts[miter.surface].joints[miter.joint];
    let gap = GapReading {
        surface: job.surfaces[miter.surface].name.clone(),
        joint: joint.label.clone(),
        width: Length::mm(1.0),
        ..GapReading::default()
    };
    job.survey.gaps.push(gap);
    let one = found(&job);
    assert!(one.not_counted_run(one.chosen().unwrap()) < run);
}

/// Four finished jobs whose scraping took twice as long pull the rate most of the way there.
#[test]
fn rates_are_learned_from_a_folder_of_finished_jobs() {
    let folder = tempfile::tempdir().unwrap();
    let mut job = demo_job();
    job.plan.trial = None;
    let plain = found(&job);
    let reckoned = plain.chosen().unwrap().tasks.iter().find(|task| task.id == "scrape").unwrap().clone();
    job.done.hours.insert("scrape".into(), Hours::h(2.0 * reckoned.hours.mean.to_h()));
    let film = plain.chosen().unwrap().materials.iter().find(|line| line.id == "film").unwrap().pieces;
    job.done.pieces.insert("film".into(), 2 * film);
    for number in 0..4 {
        file::save(&job, &folder.path().join(format!("{number}.ron"))).unwrap();
    }
    std::fs::write(folder.path().join("broken.ron"), "(((").unwrap();
    file::save(&demo_job(), &folder.path().join("unfinished.ron")).unwrap();
    let jobs = jobs_in(folder.path()).unwrap();
    let all: Vec<_> = jobs.iter().map(|(_, job)| taken(job, Catalog::built_in())).collect();
    let all: Vec<_> = all.into_iter().filter(|taken| !taken.is_empty()).collect();
    assert_eq!(all.len(), 4);
    let learned = Lessons::of(Catalog::built_in(), &all);
    assert_eq!((learned.rates.len(), learned.waste.len()), (1, 1));
    let (rate, start) = (&learned.rates[0], learned.rates[0].start.mean());
    assert_eq!((rate.id.as_str(), rate.learned.jobs), ("scrape", 4));
    assert!(learned.waste[0].waste > learned.waste[0].start && learned.waste[0].jobs == 4);
    assert!(rate.learned.minutes.likely > 1.7 * start && rate.learned.minutes.likely < 2.0 * start);
    let mut own = PriceBook::of(Catalog::built_in(), job.visited);
    own.take(&learned, |jobs| format!("{jobs} jobs"));
    job.price_book = Some(own);
    let slower = found(&job);
    assert!(slower.chosen().unwrap().total() > plain.chosen().unwrap().total());
}

/// Jobs in hard conditions that took just what was reckoned teach no other rate: what ladder and
/// furniture add is not learned as pace.
#[test]
fn conditions_are_not_learned_as_pace() {
    let mut job = demo_job();
    job.plan.trial = None;
    job.plan.site.height = gapwright::repair::Height::Scaffold;
    job.plan.site.old_sealant = gapwright::repair::OldSealant::Hard;
    job.plan.site.furnished = true;
    for task in &found(&job).chosen().unwrap().tasks {
        job.done.hours.insert(task.id.clone(), task.hours.mean);
    }
    let one = taken(&job, Catalog::built_in());
    let learned = Lessons::of(Catalog::built_in(), &[one.clone(), one]);
    assert!(learned.rates.len() > 10);
    for rate in learned.rates {
        assert!((rate.learned.minutes.likely / rate.start.mean() - 1.0).abs() < 1e-9, "{}", rate.id);
    }
}

/// Joints that were never caulked take no scraping, and everything else as before.
#[test]
fn where_there_is_no_old_caulk_none_is_scraped_out() {
    let mut job = demo_job();
    job.plan.trial = None;
    let tasks = |job: &Job| -> Vec<String> {
        found(job).chosen().unwrap().tasks.iter().map(|task| task.id.clone()).collect()
    };
    let usual = tasks(&job);
    assert!(usual.iter().any(|id| id == "scrape"));
    job.plan.site.old_sealant = gapwright::repair::OldSealant::Missing;
    let left: Vec<String> = usual.into_iter().filter(|id| id != "scrape").collect();
    assert_eq!(tasks(&job), left);
}

/// A climate nobody named is no climate: it is asked for first, and until then the answer is rough.
#[test]
fn a_place_nobody_named_is_asked_for() {
    let mut job = demo_job();
    assert!(!found(&job).answer.missing.contains(&MissingEntry::Place));
    job.air = Job::new(job.visited).air;
    let guessed = found(&job);
    assert_eq!(guessed.answer.missing.first(), Some(&MissingEntry::Place));
    assert_eq!(guessed.verdict().confidence, Confidence::Rough(Doubt::NoPlace));
    // Saying how the house is kept names no place, nor does saving the job.
    job.air.house_mut().unwrap().humidified_to = Some(Humidity::pct(35.0));
    let mut job = file::read(&file::write(&job).unwrap()).unwrap().job;
    let kept = found(&job);
    assert_eq!(kept.answer.missing.first(), Some(&MissingEntry::Place));
    assert_eq!(kept.presumed_place(), Some("Chicago, IL"));
    let IndoorAir::FromClimate { station, .. } = &mut job.air else { panic!("{:?}", job.air) };
    "chicago-il".clone_into(station);
    let named = found(&job);
    assert!(!named.answer.missing.contains(&MissingEntry::Place));
    assert_eq!((named.presumed_place(), &named.year), (None, &kept.year));
}

/// Until somebody chooses an option, the job goes with the one that is recommended; then, and once the work is done,
/// with theirs.
#[test]
fn a_job_goes_with_what_is_recommended_until_somebody_chooses() {
    let mut job = demo_job();
    let recommended = found(&job).choice.as_ref().unwrap().best;
    let other = if recommended == MethodId::Replace { MethodId::Reseal } else { MethodId::Replace };
    job.plan.choose(other);
    assert_eq!(found(&job).chosen().unwrap().method, other);
    job.plan.as_recommended = true;
    let followed = found(&job);
    assert_eq!(followed.chosen().unwrap().method, recommended);
    assert_eq!(followed.choice.as_ref().unwrap().best, recommended);
    // A file keeps that nobody chose.
    let read = file::read(&file::write(&job).unwrap()).unwrap().job;
    assert_eq!(found(&read).chosen().unwrap().method, recommended);
    job.done.finished = Some(job.visited);
    assert_eq!(found(&job).chosen().unwrap().method, other);
}
