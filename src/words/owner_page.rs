//! What the homeowner's page says besides the letter: the repair in short, and the joint on a day.

use super::answer::days;
use super::causes::{chance_as_percent, percent};
use super::verdict::{SAYS_NOTHING, WORTH_A_RANGE, whole_percent};
use super::{Arg, Words, letter, say};
use crate::assess::{Assessment, JointWeek, RepairOption, RepairedJoint, RepairedLook, SealTime};
use crate::joint::{BeadCut, BeadState};
use crate::measure::{Length, Span};
use crate::repair::{Outcome, Price, Risk};

/// A fact of the repair: what it is about, what is so, and a remark, which may be empty.
pub type Fact = [String; 3];

/// The chosen repair in short: what, when, for how much, and whether it lasts.
pub fn facts(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<Fact> {
    let mut facts = vec![[
        say!(words, "owner-page-repair"),
        words.called(&option.name).into_owned(),
        words.called(&option.look).into_owned(),
    ]];
    // What cannot be done has no days and no price.
    let Some(price) = &option.price else { return facts };
    let crew_days = option.schedule.crew_days;
    if crew_days > 0 {
        let days = match assessment.answer.when {
            Some(SealTime::Between(..)) if matches!(option.outcome, Outcome::Bead { .. }) => {
                say!(words, "owner-page-days-from", days = crew_days, date = option.starts)
            }
            _ => say!(words, "owner-page-days", days = crew_days),
        };
        facts.push([say!(words, "owner-page-when"), when(assessment, option, words), days]);
    }
    facts.push(cost(assessment, price, words));
    if let Some(risk) = &option.callback {
        let within = within(risk, assessment.job.plan.warranty_years.max(1), words);
        facts.push([say!(words, "owner-page-reopening"), chance_as_percent(risk.chance, words), within]);
    }
    facts
}

/// What the owner pays; where that is still open, what it costs.
fn cost(assessment: &Assessment, price: &Price, words: &Words) -> Fact {
    let (owner, total) = (price.owner, price.total);
    let money = |amount| words.figures().money(amount);
    if assessment.payers_open() {
        return [say!(words, "paper-cost"), money(total), say!(words, "paper-payers-open")];
    }
    let of_total =
        if owner == total { String::new() } else { say!(words, "owner-page-of-total", total = total) };
    [say!(words, "paper-you-pay"), money(owner), of_total]
}

/// When the repair is done: the weeks to seal in, or from which day on.
fn when(assessment: &Assessment, option: &RepairOption, words: &Words) -> String {
    match assessment.answer.when {
        Some(when) if matches!(option.outcome, Outcome::Bead { .. }) => {
            let (key, from, to) = days(when);
            say!(words, "owner-page-when-seal", when = Arg::Id(key), from = from, to = to)
        }
        _ => say!(words, "owner-page-starts", date = option.starts),
    }
}

/// Within how long joints may open again, and how far that chance may be off where that is far.
fn within(risk: &Risk, years: u32, words: &Words) -> String {
    let width = |range: &Span<f64>| range.high - range.low;
    if width(&risk.interval) < WORTH_A_RANGE {
        return say!(words, "owner-page-within", years = years);
    }
    // Such a range says nothing by its figures.
    if width(&risk.interval) > SAYS_NOTHING {
        return say!(words, "owner-page-within-open", years = years, why = letter::why_open(risk));
    }
    let [low, high] = [risk.interval.low, risk.interval.high].map(whole_percent);
    say!(words, "owner-page-within-range", years = years, low = low, high = high)
}

/// What an option means for those who live there, a sentence each.
pub fn what_it_means(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    if !option.look.is_empty() {
        lines.push(say!(words, "homeowner-look", look = Arg::Called(&option.look)));
    }
    if !option.upset.is_empty() {
        lines.push(say!(words, "homeowner-meanwhile", upset = Arg::Called(&option.upset)));
    }
    if let Some(risk) = &option.callback {
        let years = assessment.job.plan.warranty_years.max(1);
        let (band, percent) = percent(risk.chance);
        lines.push(say!(words, "homeowner-come-back", years = years, band = band, percent = percent));
    }
    let (work, days) = (option.schedule.crew_days, option.schedule.room_out);
    lines.push(say!(words, "homeowner-room-closed", work = work, days = days));
    lines
}

/// The typical joint on the day it is sealed.
pub fn just_sealed(joint: &RepairedJoint, words: &Words) -> String {
    say!(words, "owner-page-just-sealed", gap = joint.gap)
}

/// The typical joint on a day if nothing is done.
pub fn untouched(week: &JointWeek, words: &Words) -> String {
    if closed(week.gap, words) {
        return say!(words, "owner-page-closed");
    }
    say!(words, "owner-page-open", gap = week.gap)
}

const fn is_torn(bead: &BeadCut) -> bool {
    matches!(bead.fares, BeadState::Torn(_))
}

/// The typical joint on a day after the repair. Where a repair is advised against, a bead that holds is told as
/// the one that is drawn, and no more.
pub fn repaired(joint: &RepairedJoint, advised_against: bool, words: &Words) -> String {
    let (gap, shut) = (joint.gap, closed(joint.gap, words));
    match &joint.look {
        RepairedLook::Bead(bead) if is_torn(bead) && closed(joint.open, words) => {
            say!(words, "owner-page-bead-torn-closed")
        }
        RepairedLook::Bead(bead) if is_torn(bead) => say!(words, "owner-page-bead-torn", open = joint.open),
        RepairedLook::Bead(bead) if bead.fares.shows() => say!(words, "owner-page-bead-squeezed"),
        RepairedLook::Bead(_) if advised_against => say!(words, "owner-page-bead-holds-here", gap = gap),
        RepairedLook::Bead(_) => say!(words, "owner-page-bead-holds", gap = gap),
        RepairedLook::TooNarrow => say!(words, "owner-page-too-narrow", gap = gap),
        RepairedLook::Line if shut => say!(words, "owner-page-line-closed"),
        RepairedLook::Line => say!(words, "owner-page-line", gap = gap),
        RepairedLook::Covered(_) if shut => say!(words, "owner-page-covered-closed"),
        RepairedLook::Covered(_) => say!(words, "owner-page-covered", gap = gap),
        RepairedLook::Glued => say!(words, "owner-page-glued"),
        RepairedLook::NewBoards if shut => say!(words, "owner-page-laid-closed"),
        RepairedLook::NewBoards => say!(words, "owner-page-laid", gap = gap),
    }
}

/// Whether a gap shows as nothing in the words' units.
fn closed(gap: Length, words: &Words) -> bool {
    words.figures().length(gap) == words.figures().length(Length::ZERO)
}
