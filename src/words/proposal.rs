//! The proposal in sentences: scope, what is left out, what is warranted, what is due when, notices.

use super::causes::percent;
use super::letter;
use super::{Arg, Words, say};
use crate::assess::{Assessment, RepairOption};
use crate::job::Job;
use crate::measure::Money;
use crate::repair::{LeadPaint, Outcome, Price};

/// Homes built before this year may have lead paint: 40 CFR 745.
const LEAD_YEAR: i16 = 1978;

/// What will be done, in sentences, without the chance that it lasts.
pub fn scope(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<String> {
    let mut lines = vec![letter::work(assessment, option, words)];
    if assessment.lays_beads() {
        lines.extend(letter::left_open(assessment, words));
        lines.push(letter::when(assessment, words));
        lines.push(say!(words, "proposal-class-or-better"));
    }
    lines.extend(letter::paints_all(assessment, option, words));
    // Where every joint or every board is worked on, it does not matter which are open.
    let by_opening = matches!(option.outcome, Outcome::Bead { .. } | Outcome::Glued);
    let counted = assessment.counted_open();
    if counted > 0 && by_opening {
        lines.push(say!(words, "proposal-counted", count = counted));
    }
    lines.extend(super::options::only_sections(assessment, option, words));
    lines.extend(letter::not_counted(assessment, option, words));
    lines.extend(letter::starts(option, words));
    lines.extend(letter::days(option, words));
    lines
}

/// What is not included: first what the user typed, a line for each.
pub fn exclusions(assessment: &Assessment, words: &Words) -> Vec<String> {
    let job = &assessment.job;
    let own = job.proposal.exclusions.lines().map(str::trim).filter(|line| !line.is_empty());
    let mut lines: Vec<String> = own.map(str::to_owned).collect();
    lines.extend(
        ["hidden", "trades", "testing", "permits"]
            .map(|of| say!(words, "proposal-excluded", what = Arg::Id(of))),
    );
    if !job.plan.site.furnished {
        lines.push(say!(words, "proposal-excluded", what = Arg::Id("furniture")));
    }
    if assessment.lays_beads() {
        lines.push(say!(words, "proposal-excluded-narrow", narrowest = job.plan.narrowest));
    }
    lines
}

/// What is warranted, in sentences; says so where nothing is.
pub fn warranted(
    assessment: &Assessment,
    option: &RepairOption,
    warrants: bool,
    words: &Words,
) -> Vec<String> {
    let plan = &assessment.job.plan;
    if assessment.advises_against(option) {
        return vec![say!(words, "proposal-against-not-warranted")];
    }
    if plan.warranty_years == 0 || !warrants || option.outcome == Outcome::Unchanged {
        return vec![say!(words, "proposal-no-warranty")];
    }
    let mut lines = vec![if assessment.lays_beads() {
        say!(
            words,
            "proposal-warranted-beads",
            years = plan.warranty_years,
            share = plan.callback.open_share,
            widest = plan.callback.widest
        )
    } else {
        say!(words, "proposal-warranted-work", years = plan.warranty_years)
    }];
    lines.extend(option.callback.as_ref().map(|risk| {
        // Fine cracks in the paint over a sound bead are not warranted, so they are not counted either.
        let of_beads = assessment.lays_beads();
        let (band, chance) = percent(if of_beads { risk.without_paint } else { risk.chance });
        let said = say!(words, "proposal-come-back", band = band, chance = chance);
        let counted = percent(risk.chance);
        if of_beads && counted.1 != chance {
            let (band, percent) = counted;
            said + " " + &say!(words, "proposal-come-back-paint", band = band, percent = percent)
        } else {
            said
        }
    }));
    lines
}

/// What is not warranted, a line for each.
pub fn not_warranted(assessment: &Assessment, words: &Words) -> Vec<String> {
    let seen = assessment.job.plan.callback.seen_from;
    let beads = assessment.lays_beads().then(|| say!(words, "proposal-hairlines", seen = seen));
    let keep = assessment.humidity_to_keep();
    let air = keep.map(|keep| say!(words, "proposal-not-warranted-air", low = keep.low, high = keep.high));
    let of = |what| say!(words, "proposal-not-warranted", what = Arg::Id(what));
    beads.into_iter().chain([of("water")]).chain(air).chain(["house", "others"].map(of)).collect()
}

/// What is due when: the user's own terms, else the deposit and the rest.
pub fn payment(job: &Job, price: &Price, words: &Words) -> Vec<String> {
    let own: Vec<String> =
        job.proposal.payment.lines().map(str::to_owned).filter(|line| !line.trim().is_empty()).collect();
    if !own.is_empty() {
        return own;
    }
    if price.deposit > Money::ZERO {
        vec![
            say!(words, "paper-deposit", amount = price.deposit),
            say!(words, "proposal-balance", amount = price.balance()),
        ]
    } else {
        vec![say!(words, "proposal-due", amount = price.balance())]
    }
}

/// What must be done before the work, a sentence each: where water gets in, that comes first.
pub fn conditions(assessment: &Assessment, words: &Words) -> Vec<String> {
    let wet = assessment.sections.iter().filter(|state| state.is_wetted());
    let names: Vec<&str> = wet
        .map(|state| assessment.job.surfaces[state.surface].sections[state.section].name.as_str())
        .collect();
    let count = names.len();
    let first =
        (count > 0).then(|| say!(words, "proposal-water-first", count = count, sections = Arg::Names(names)));
    first.into_iter().collect()
}

/// That a supplier has not agreed to pay, where one is asked to.
pub fn supplier(option: &RepairOption, words: &Words) -> Option<String> {
    let asked = option.price.as_ref()?.supplier;
    (asked > Money::ZERO).then(|| say!(words, "proposal-supplier", amount = asked))
}

/// Whether the lead pamphlet is usually due.
pub fn lead_pamphlet(job: &Job) -> bool {
    job.built.is_none_or(|built| built < LEAD_YEAR) && job.plan.site.lead == LeadPaint::ByAge
}

/// The notices that usually apply, each with its heading.
pub fn notices(job: &Job, words: &Words) -> Vec<[String; 2]> {
    let lead = lead_pamphlet(job).then_some("lead");
    let all = lead.into_iter().chain(["cancel", "contract", "liens"]);
    all.map(|of| {
        [
            say!(words, "proposal-notice-name", notice = Arg::Id(of)),
            say!(words, "proposal-notice", notice = Arg::Id(of), units = Arg::units(words.units())),
        ]
    })
    .collect()
}

/// Whether the option takes no work that could be proposed.
pub fn is_no_work(option: &RepairOption) -> bool {
    option.total() == Money::ZERO
}
