//! What the crew does where, in which order.

use jiff::civil::Time;
use serde_json::{Map, Value, json};

use super::unit_id;
use crate::assess::{Assessment, JointState, RepairOption, SectionState, date_after};
use crate::bead::LEAST_TAPE;
use crate::joint::{BeadLay, JointEdges};
use crate::measure::{Length, Moisture, Percent};
use crate::named::position;
use crate::repair::{Bar, Outcome, WorkDay};
use crate::surface::Joint;
use crate::words::{Arg, Say as _, Words, bead_designs, say, work};

/// Gaps that are off by more than this on the day of sealing are not those that were forecast.
const GAP_OFF: Length = Length::inches(1.0 / 32.0);

/// Minutes of a day.
const DAY_MINUTES: f64 = 24.0 * 60.0;

/// What the work order says besides the letter.
pub(super) fn data(assessment: &Assessment, words: &Words) -> Map<String, Value> {
    let chosen = assessment.chosen();
    let groups: Vec<Value> = assessment
        .sections
        .iter()
        .enumerate()
        .map(|(at, state)| group(assessment, at, state, words))
        .collect();
    let sealed_on = date_after(&assessment.job, assessment.seal_day);
    super::object(json!({
        "groups": groups,
        "where_note": say!(words, "paper-where-note", date = sealed_on, gap = GAP_OFF),
        "sealant": sealant(assessment, words),
        "narrow": narrow(assessment, words),
        "workdays": chosen.map_or_else(Vec::new, |option| workdays(option, words)),
        "steps": chosen.map_or_else(Vec::new, |option| steps(option, words)),
        "do_not": [
            say!(words, "paper-do-not-seal", units = unit_id(words.units())),
            say!(words, "paper-do-not-seal-wet"),
            say!(words, "paper-do-not-paint"),
        ],
    }))
}

/// How the chosen option lays its beads, if it does.
fn bead(assessment: &Assessment) -> Option<BeadLay> {
    match assessment.chosen()?.outcome {
        Outcome::Bead { lay, .. } => Some(lay),
        _ => None,
    }
}

/// A section with what is to be done in it.
fn group(assessment: &Assessment, at: usize, state: &SectionState, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let surface = &job.surfaces[state.surface];
    let section = &surface.sections[state.section];
    let treated: Vec<&JointState> = treated(assessment).filter(|joint| joint.section == Some(at)).collect();
    let run: Length = treated.iter().map(|joint| laid(assessment, joint).length()).sum();
    let mut gaps: Vec<Length> = treated.iter().map(|joint| joint.at_sealing).collect();
    gaps.sort_by(|a, b| a.to_m().total_cmp(&b.to_m()));
    let typical = gaps.get(gaps.len() / 2).copied();
    let lay = assessment.catalog.lay(&job.plan);
    let typical = typical.map(|gap| lay.slot(gap));
    let edges = JointEdges::of(&section.board);
    let design = lay.design(edges, &job.plan.bead.form());
    let laid = |slot| design.section(slot).middle_thickness();
    let depth = typical.map(laid);
    let sealant = assessment.wet_sealant(at).filter(|_| bead(assessment).is_some());
    let place = if state.is_wetted() {
        say!(words, "paper-place-wet", surface = &surface.name, section = &section.name)
    } else {
        say!(words, "paper-place", surface = &surface.name, section = &section.name)
    };
    json!({
        "number": at + 1,
        "surface": surface.name,
        "section": section.name,
        "place": place,
        "joints": treated.len(),
        "run": figures.run(run),
        "gap": typical.map(|gap| figures.length(gap)),
        "gap_mm": typical.map(Length::to_mm),
        "depth": depth.map(|depth| figures.length(depth)),
        "depth_mm": depth.map(Length::to_mm),
        "bead": typical.zip(depth).map(|(gap, depth)| {
            say!(words, "paper-bead-shape", gap = gap, depth = depth, lay = Arg::Id(lay.key()))
        }),
        "v_mm": section.board.profile.v_leg().to_mm(),
        "sealant": sealant.map(|volume| figures.volume(volume)),
        "too_narrow": treated.iter().filter(|joint| joint.at_sealing < job.plan.narrowest).count(),
        "boards": figures.percent(moisture_on(state, assessment.seal_day).to_pct(), 1),
        "wet": state.is_wetted(),
    })
}

/// The joints that are worked on.
fn treated(assessment: &Assessment) -> impl Iterator<Item = &JointState> {
    assessment.joints.iter().filter(|joint| joint.treated)
}

/// A joint as it lies in the layout.
pub(super) fn laid<'a>(assessment: &'a Assessment, state: &JointState) -> &'a Joint {
    &assessment.layouts[state.surface].joints[state.joint]
}

fn moisture_on(state: &SectionState, day: usize) -> Moisture {
    state.motion.moisture[day.min(crate::joint::HORIZON - 1)]
}

/// The joints too narrow to seal on the day, in a sentence.
fn narrow(assessment: &Assessment, words: &Words) -> Option<String> {
    let narrowest = assessment.job.plan.narrowest;
    let sections = treated(assessment).filter(|joint| joint.section.is_some());
    let count = sections.filter(|joint| joint.at_sealing < narrowest).count();
    (count > 0).then(|| say!(words, "paper-narrow-joints", count = count, narrowest = narrowest))
}

/// The sealant's class and limits, if the chosen option lays a bead.
fn sealant(assessment: &Assessment, words: &Words) -> Option<Value> {
    let (plan, figures) = (&assessment.job.plan, words.figures());
    let sealant = assessment.sealant.as_ref()?;
    let lay = bead(assessment)?;
    let percent = |share: Percent| figures.percent(share.to_pct(), 1);
    let open = Percent::pct(100.0 - plan.bead.v_filled.to_pct());
    Some(json!({
        "name": sealant.name,
        "class": sealant.class,
        "stretch": percent(sealant.stretch),
        "squeeze": percent(sealant.squeeze),
        "cure": figures.hours(sealant.cure),
        "narrowest": figures.length(plan.narrowest),
        "v_filled": percent(plan.bead.v_filled),
        "v_open": say!(words, "paper-bead-v", share = open),
        "shape": planned_shape(assessment, lay, words),
        "limits": say!(
            words,
            "paper-bead-limits",
            stretch = sealant.stretch,
            squeeze = sealant.squeeze,
            cure = sealant.cure
        ),
        "breaker": lay != BeadLay::OnTongue,
        "backed": (lay == BeadLay::Bridge).then(|| say!(words, "paper-bead-backed", least = LEAST_TAPE)),
    }))
}

/// How the planned bead is shaped in most of the joints, and what becomes of one laid without thinking.
fn planned_shape(assessment: &Assessment, lay: BeadLay, words: &Words) -> Option<String> {
    let plan = &assessment.job.plan;
    let most = assessment.bead_designs.first()?;
    let planned = position(&assessment.catalog.sealants, &plan.sealant);
    let of = most.sealants.iter().find(|of| Some(of.sealant) == planned);
    let form = plan.bead.form();
    let shape = bead_designs::shape(lay, &form, most.edges, words);
    // What is told of the best bead holds for the planned one if that is it.
    let is_best = of.filter(|of| (of.best.lay, of.best.form) == (lay, form));
    let warning = is_best.and_then(|of| bead_designs::warning(most, of, words));
    Some([shape].into_iter().chain(warning).collect::<Vec<_>>().join(" "))
}

/// The days of the chosen option: when and who, what, hours of each.
fn workdays(option: &RepairOption, words: &Words) -> Vec<Value> {
    let day = |day: &WorkDay| {
        json!({
            "when": work::day_and_people(option.starts, day, words),
            "what": work::day_work(day, words),
            "hours": words.figures().number(day.paid.to_h(), 1),
        })
    };
    option.schedule.days.iter().map(day).collect()
}

/// The steps of the chosen option with their days and times.
fn steps(option: &RepairOption, words: &Words) -> Vec<Value> {
    let step = |bar: &Bar| {
        let ((day, from), (to_day, to)) = (day_and_time(bar.start), day_and_time(bar.end));
        let [start, end] = [from, to].map(|time| words.figures().time(time));
        let end = if to_day == day {
            say!(words, "paper-step-end", time = &end)
        } else {
            say!(words, "paper-step-end-later", day = Arg::Number(to_day, 0), time = &end)
        };
        json!({
            "name": bar.step.say(words),
            "waiting": bar.is_wait(),
            "day": format!("{day:.0}"),
            "from": from.strftime("%H:%M").to_string(),
            "to_day": format!("{to_day:.0}"),
            "to": to.strftime("%H:%M").to_string(),
            "start": say!(words, "paper-step-start", day = Arg::Number(day, 0), time = &start),
            "end": end,
        })
    };
    option.schedule.bars.iter().map(step).collect()
}

/// The day, from 1, and the time of day to the minute, of a time in days since the first midnight.
fn day_and_time(days: f64) -> (f64, Time) {
    let minutes = (days.max(0.0) * DAY_MINUTES).round();
    let of_day = minutes % DAY_MINUTES;
    #[expect(clippy::cast_possible_truncation, reason = "below 24 and below 60")]
    let (hour, minute) = ((of_day / 60.0).floor() as i8, (of_day % 60.0) as i8);
    ((minutes / DAY_MINUTES).floor() + 1.0, Time::new(hour, minute, 0, 0).unwrap_or(Time::midnight()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 2.5 days after midnight is noon of the third day; half a minute before midnight is
    /// midnight, of the day after.
    #[test]
    fn times_of_the_schedule_are_days_and_clock_times() {
        let time = |hour, minute| Time::constant(hour, minute, 0, 0);
        assert_eq!(day_and_time(2.5), (3.0, time(12, 0)));
        assert_eq!(day_and_time(8.0 / 24.0), (1.0, time(8, 0)));
        assert_eq!(day_and_time(1.0 - 0.2 / DAY_MINUTES), (2.0, time(0, 0)));
        assert_eq!(day_and_time(0.75 + 5.0 / DAY_MINUTES), (1.0, time(18, 5)));
    }
}
