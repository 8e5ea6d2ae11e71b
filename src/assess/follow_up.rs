//! Later visits held against what was forecast.

use std::borrow::Cow;

use jiff::civil::Date;

use super::Assessment;
use super::confidence::Recommendation;
use super::option_inputs::OptionInputs;
use super::options::RepairOption;
use super::risk::{RING_SCATTER, is_sealed};
use super::sections::{JointState, motion};
use crate::air::IndoorYear;
use crate::job::{Promise, TOLD_EVERY, ToldChance, ToldJoint, sanitized};
use crate::joint::HORIZON;
use crate::measure::{Length, Percent, Span, day_of_year};
use crate::repair::Outcome;
use crate::survey::{LaterGap, LaterVisit};
use crate::wood::Species;

/// How well a gap gauge reads. Assumption.
pub(super) const GAUGE: Length = Length::mm(0.2);
/// Standard deviations to either side within which nine readings in ten lie.
pub(super) const NINE_IN_TEN: f64 = 1.645;
/// A number of joints that opened is a surprise where so many, or so few, come by chance in no more than so many
/// cases. Joints fail together where the lot of boards or sealant is to blame, so it is kept small. Judgment.
const BY_CHANCE: f64 = 0.02;
/// What comes by chance in no more than so many cases is more than expected. Judgment.
const SELDOM: f64 = 0.2;
/// A bead counts as open from here on.
const OPEN: Length = Length::mm(0.2);

/// One reading of a later visit.
#[derive(Debug, Clone, PartialEq)]
pub struct LaterReading {
    /// Name of its surface.
    pub surface: String,
    /// Label of its joint.
    pub joint: String,
    /// What was measured.
    pub width: Length,
    /// What was forecast, and where nine of ten should lie; `None` after the work, when the bead
    /// hides it.
    pub forecast: Option<(Length, Span<Length>)>,
    /// After the work: the chance with which the joint was expected to open.
    pub chance: Option<f64>,
}

impl LaterReading {
    /// Whether it lies where it was forecast; `None` where nothing was.
    pub fn inside(&self) -> Option<bool> {
        let (_, band) = self.forecast?;
        Some(band.low <= self.width && self.width <= band.high)
    }
}

/// How many of the joints that got a bead a later visit looked at, and what it found open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeadsChecked {
    /// Joints with a bead that were looked at.
    pub checked: usize,
    /// Joints with a bead.
    pub sealed: usize,
    /// Of the length of all beads, how much was found open: at least that much is.
    pub open_share: Percent,
}

/// What a joint shows at a later visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum JointShows {
    /// The gap between the boards, as it was forecast.
    Gap,
    /// Nothing, or the opening of what was sealed or glued.
    Opening,
    /// Another gap than was forecast: joints were cut open, or boards were laid anew.
    NewGap,
    /// Nothing: a strip is over it.
    Nothing,
}

/// What joints show after this repair, or before it.
fn shows(option: Option<&RepairOption>, after_work: bool) -> JointShows {
    match option.filter(|_| after_work).map(|option| option.outcome) {
        None | Some(Outcome::Unchanged) => JointShows::Gap,
        Some(Outcome::Bead { .. } | Outcome::Glued) => JointShows::Opening,
        Some(Outcome::Line | Outcome::Boards { .. }) => JointShows::NewGap,
        Some(Outcome::Covered) => JointShows::Nothing,
    }
}

/// A later visit against what was forecast.
#[derive(Debug, Clone, PartialEq)]
pub struct VisitOutcome {
    /// The day.
    pub on: Date,
    /// Whether the work was done by then.
    pub after_work: bool,
    /// What its readings can be of.
    pub shows: JointShows,
    /// What was found of the beads after the work; `None` before it, and where what was done is no bead.
    pub beads: Option<BeadsChecked>,
    /// Its readings; those of joints that there are not are left out.
    pub readings: Vec<LaterReading>,
    /// What it comes to.
    pub verdict: VisitVerdict,
}

impl VisitOutcome {
    /// Whether joints had opened after the work.
    pub const fn found_open(&self) -> bool {
        matches!(self.verdict, VisitVerdict::Opened { open: 1.., .. })
    }
}

/// What a later visit comes to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum VisitVerdict {
    /// No joint has been measured yet.
    NothingMeasured,
    /// After the work: the driest weeks, in which joints open, are still to come.
    TooSoon,
    /// The visit is before the first one or more than three years after it: nothing was forecast.
    OutOfRange,
    /// Nothing was forecast for the joints that were measured.
    NoForecast,
    /// Strips are over the joints: there is no gap to measure.
    Covered,
    /// Before the work: gaps against their forecast.
    Forecast {
        /// Readings inside the range in which nine in ten should lie.
        inside: usize,
        /// Readings with a forecast.
        of: usize,
        /// By how much they are wider than forecast on average; negative where they are narrower.
        wider: Length,
        /// Whether the forecast holds: at least two in three are inside.
        holds: bool,
    },
    /// After joints were cut open or boards laid anew: gaps against the widest that was told.
    Lines {
        /// Readings that are wider.
        wider: usize,
        /// Joints looked at.
        of: usize,
        /// The widest that any was to come to in the driest weeks.
        widest: Length,
    },
    /// After the work: joints that have opened.
    Opened {
        /// Joints that have opened.
        open: usize,
        /// Joints looked at.
        of: usize,
        /// How many were to be expected, and what the difference says; `None` where no chance was known.
        expected: Option<(f64, Surprise)>,
    },
}

/// What the number of joints that opened says, against what was to be expected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surprise {
    /// More than chance explains.
    TooMany,
    /// More than expected, and it may be chance.
    More,
    /// Fewer than chance explains.
    Fewer,
    /// About as expected.
    AsExpected,
}

impl Surprise {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::TooMany => "too_many",
            Self::More => "more",
            Self::Fewer => "fewer",
            Self::AsExpected => "as_expected",
        }
    }
}

impl Assessment {
    /// What papers written now tell, to hold later visits against; `None` where they offer no repair, and
    /// once the work is done or a joint was looked at again.
    pub fn promise(&self) -> Option<Promise> {
        let Recommendation { method, quote, lasting, .. } = self.verdict().recommended?;
        if !self.job.may_promise() {
            return None;
        }
        let job = &sanitized(&self.job);
        let inputs = OptionInputs {
            job,
            catalog: &self.catalog,
            layouts: &self.layouts,
            sections: &self.sections,
            joints: &self.joints,
            seal_day: self.seal_day,
            held: self.year.as_ref().map_or(1.0, IndoorYear::humidity_control_share),
        };
        let pct = |chance: f64| Percent::pct(100.0 * chance);
        Some(Promise {
            told_on: job.visited,
            program: env!("CARGO_PKG_VERSION").to_owned(),
            option: method,
            total: quote?.total,
            seal_on: self.lays_beads().then(|| self.seals_on()),
            lasts: lasting.map(|lasting| ToldChance {
                chance: pct(lasting.chance),
                low: pct(lasting.interval.low),
                high: pct(lasting.interval.high),
                until: lasting.until,
            }),
            joints: told_joints(&inputs, &self.options, |state| state.gap.is_some_and(|gap| gap.measured)),
        })
    }
}

pub(super) fn follow_up(inputs: &OptionInputs<'_>, options: &[RepairOption]) -> Vec<VisitOutcome> {
    let job = inputs.job;
    let (visited, told) = match &job.promise {
        Some(promise) => (promise.told_on, Cow::Borrowed(promise.joints.as_slice())),
        None => (job.visited, Cow::Owned(told_joints(inputs, options, |state| looked_at(state, inputs)))),
    };
    let chosen = options.iter().find(|option| option.method == job.plan.chosen);
    job.later.iter().map(|visit| outcome(visit, (visited, &told), chosen, inputs)).collect()
}

/// Whether a later visit measured a joint.
fn looked_at(state: &JointState, inputs: &OptionInputs<'_>) -> bool {
    let surface = &inputs.job.surfaces[state.surface].name;
    let joint = &inputs.layouts[state.surface].joints[state.joint].label;
    let mut gaps = inputs.job.later.iter().flat_map(|visit| &visit.gaps);
    gaps.any(|gap| gap.surface == *surface && gap.joint == *joint)
}

/// A visit against what was told on the day of the first one, once the chosen option was or was not done.
fn outcome(
    visit: &LaterVisit,
    (visited, told): (Date, &[ToldJoint]),
    chosen: Option<&RepairOption>,
    inputs: &OptionInputs<'_>,
) -> VisitOutcome {
    let finished = inputs.job.done.finished;
    let after_work = finished.is_some_and(|finished| visit.on > finished);
    let shows = shows(chosen, after_work);
    let days = (visit.on - visited).get_days();
    let day = usize::try_from(days).ok().filter(|day| *day < HORIZON);
    let one = |gap: &LaterGap| {
        let told = told.iter().find(|told| told.surface == gap.surface && told.joint == gap.joint);
        Some(LaterReading {
            surface: gap.surface.clone(),
            joint: gap.joint.clone(),
            width: gap.width?,
            forecast: match shows {
                JointShows::Gap => told.and_then(|told| forecast(told, day?)),
                _ => None,
            },
            chance: match shows {
                JointShows::Opening => told.and_then(|told| told.opens).map(Percent::to_fraction),
                _ => None,
            },
        })
    };
    let drawn = |gap: &&LaterGap| is_drawn(gap, inputs);
    let readings: Vec<LaterReading> = visit.gaps.iter().filter(drawn).filter_map(one).collect();
    let verdict = match (shows, day) {
        (JointShows::Nothing, _) => VisitVerdict::Covered,
        _ if readings.is_empty() => VisitVerdict::NothingMeasured,
        (JointShows::NewGap, _) => lines(&readings, chosen.map_or(Length::ZERO, |option| option.opens_to)),
        // What has opened has; only what is still shut may open yet.
        (JointShows::Opening, _)
            if !dry_weeks_came(visit.on, inputs) && readings.iter().all(|r| r.width < OPEN) =>
        {
            VisitVerdict::TooSoon
        }
        (JointShows::Opening, _) => opened(&readings),
        (JointShows::Gap, None) => VisitVerdict::OutOfRange,
        (JointShows::Gap, Some(_)) => against_forecast(&readings),
    };
    let sealed = matches!(chosen.map(|option| option.outcome), Some(Outcome::Bead { .. }));
    let beads = (after_work && sealed).then(|| beads_checked(&readings, inputs));
    VisitOutcome { on: visit.on, after_work, shows, beads, readings, verdict }
}

/// Whether the driest day of the settled year has passed between the end of the work and a visit: what
/// opens, opens then.
fn dry_weeks_came(on: Date, inputs: &OptionInputs<'_>) -> bool {
    let Some(finished) = inputs.job.done.finished else { return false };
    let (Some(state), days) = (inputs.sections.first(), (on - finished).get_days()) else { return true };
    let driest =
        (0_i64..365).min_by(|a, b| state.settled.on(*a).to_pct().total_cmp(&state.settled.on(*b).to_pct()));
    let start = i64::try_from(day_of_year(finished)).unwrap_or(0);
    (0..i64::from(days)).any(|day| Some((start + day).rem_euclid(365)) == driest)
}

/// What a visit found of the joints that were to be sealed.
fn beads_checked(readings: &[LaterReading], inputs: &OptionInputs<'_>) -> BeadsChecked {
    let joint = |state: &JointState| &inputs.layouts[state.surface].joints[state.joint];
    let read = |state: &JointState| {
        let surface = &inputs.job.surfaces[state.surface].name;
        readings.iter().find(|reading| reading.surface == *surface && reading.joint == joint(state).label)
    };
    let (mut checked, mut sealed, mut all, mut open) = (0, 0, 0.0, 0.0);
    for state in inputs.joints.iter().filter(|state| is_sealed(state)) {
        let (run, reading) = (joint(state).length().to_m(), read(state));
        sealed += 1;
        checked += usize::from(reading.is_some());
        all += run;
        open += if reading.is_some_and(|reading| reading.width >= OPEN) { run } else { 0.0 };
    }
    let open_share = if all > 0.0 { Percent::pct(100.0 * open / all) } else { Percent::ZERO };
    BeadsChecked { checked, sealed, open_share }
}

/// Whether there is such a joint in the drawing.
fn is_drawn(gap: &LaterGap, inputs: &OptionInputs<'_>) -> bool {
    let mut surfaces = inputs.job.surfaces.iter().zip(inputs.layouts);
    let surface = surfaces.find(|(surface, _)| surface.name == gap.surface);
    surface.is_some_and(|(_, layout)| layout.joints.iter().any(|joint| joint.label == gap.joint))
}

/// What is told of the joints that `wanted` picks: the gap every seven days, and the chance that it opens by
/// the chosen option.
pub(super) fn told_joints(
    inputs: &OptionInputs<'_>,
    options: &[RepairOption],
    wanted: impl Fn(&JointState) -> bool,
) -> Vec<ToldJoint> {
    let all = inputs.joints.iter().enumerate().filter(|(_, state)| wanted(state));
    let hundredths = |length: Length| quantized(100.0 * length.to_mm());
    let one = |(at, state): (usize, &JointState)| {
        let days = (0..HORIZON).step_by(TOLD_EVERY);
        let (gaps, reach) = days
            .map_while(|day| expected(state, inputs, day))
            .map(|(gap, reach)| (hundredths(gap), hundredths(reach)))
            .unzip();
        let opens = chance(at, inputs, options).map(|chance| Percent::pct(100.0 * chance));
        ToldJoint {
            surface: inputs.job.surfaces[state.surface].name.clone(),
            joint: inputs.layouts[state.surface].joints[state.joint].label.clone(),
            opens,
            gaps,
            reach,
        }
    };
    all.map(one).collect()
}

#[expect(clippy::cast_possible_truncation, reason = "a cast of floats saturates")]
const fn quantized(hundredths: f64) -> i32 {
    hundredths.round() as i32
}

/// The gap expected on a day, negative where boards push, and how far to either side nine in ten should lie.
///
/// What nobody knew at the visit adds up as variances: the gap itself, how much these boards move,
/// what plausible worlds differ by, and the gauge.
fn expected(state: &JointState, inputs: &OptionInputs<'_>, day: usize) -> Option<(Length, Length)> {
    let joint = &inputs.layouts[state.surface].joints[state.joint];
    let section = &inputs.sections[state.section?];
    let motion = motion(joint, state, inputs.sections)?;
    let expected = motion.signed_gap_on(day);
    let moved = (expected - motion.signed_gap_on(0)).to_m() * Species::SCATTER.hypot(RING_SCATTER);
    // How wet the boards were, how much the lot moves, the years' weather: what worlds differ by.
    let worlds = joint.moves_across.to_m() * section.worlds.narrowing_sd(day);
    let known = state.gap?.gap.sd.to_m();
    let variance: f64 = [known, moved, worlds, GAUGE.to_m()].iter().map(|sd| sd * sd).sum();
    Some((expected, Length::m(NINE_IN_TEN * variance.sqrt())))
}

/// The gap that was told for a day, and where nine in ten should lie.
fn forecast(told: &ToldJoint, day: usize) -> Option<(Length, Span<Length>)> {
    let (expected, reach) = told.on(day)?;
    // Out to the next 64th, so that no reading looks inside and counts as outside.
    let step = |length: Length, round: fn(f64) -> f64| {
        Length::inches(round(length.to_inches() * 64.0) / 64.0).max(Length::ZERO)
    };
    let band = Span { low: step(expected - reach, f64::floor), high: step(expected + reach, f64::ceil) };
    Some((expected.max(Length::ZERO), band))
}

/// The chance with which a sealed joint was expected to open, by the chosen option.
fn chance(at: usize, inputs: &OptionInputs<'_>, options: &[RepairOption]) -> Option<f64> {
    let chosen = options.iter().find(|option| option.method == inputs.job.plan.chosen)?;
    if !matches!(chosen.outcome, Outcome::Bead { .. }) || !is_sealed(&inputs.joints[at]) {
        return None;
    }
    let place = inputs.joints[..at].iter().filter(|state| is_sealed(state)).count();
    chosen.callback.as_ref()?.joints.get(place).copied()
}

fn against_forecast(readings: &[LaterReading]) -> VisitVerdict {
    let known = || readings.iter().filter_map(|reading| Some((reading, reading.forecast?.0)));
    let of = known().count();
    if of == 0 {
        return VisitVerdict::NoForecast;
    }
    let inside = readings.iter().filter(|reading| reading.inside() == Some(true)).count();
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    let wider = known().map(|(reading, expected)| (reading.width - expected).to_m()).sum::<f64>() / of as f64;
    // Nine in ten should be inside; fewer than two in three is no chance any more.
    VisitVerdict::Forecast { inside, of, wider: Length::m(wider), holds: 3 * inside >= 2 * of }
}

/// Gaps that were left open on purpose, against the widest that was told.
fn lines(readings: &[LaterReading], widest: Length) -> VisitVerdict {
    if widest <= Length::ZERO {
        return VisitVerdict::NoForecast;
    }
    let wider = readings.iter().filter(|reading| reading.width > widest + GAUGE).count();
    VisitVerdict::Lines { wider, of: readings.len(), widest }
}

/// The chances that none, one, two and so on of joints with these chances open, each by itself.
fn counts(chances: &[f64]) -> Vec<f64> {
    let mut counts = vec![1.0];
    for chance in chances {
        let one_more = counts.iter().map(|known| known * chance).collect::<Vec<_>>();
        counts.iter_mut().for_each(|known| *known *= 1.0 - chance);
        counts.push(0.0);
        counts.iter_mut().skip(1).zip(one_more).for_each(|(known, more)| *known += more);
    }
    counts
}

fn opened(readings: &[LaterReading]) -> VisitVerdict {
    // Where a chance was told, the joints without one say nothing of it.
    let told = readings.iter().any(|reading| reading.chance.is_some());
    let counted = || readings.iter().filter(|reading| !told || reading.chance.is_some());
    let open = counted().filter(|reading| reading.width >= OPEN).count();
    let chances: Vec<f64> = readings.iter().filter_map(|reading| reading.chance).collect();
    let expected: f64 = chances.iter().sum();
    let counts = counts(&chances);
    let known = open.min(chances.len());
    let (no_fewer, no_more): (f64, f64) = (counts[known..].iter().sum(), counts[..=known].iter().sum());
    let surprise = match () {
        () if no_fewer < BY_CHANCE => Surprise::TooMany,
        () if no_fewer < SELDOM => Surprise::More,
        () if no_more < BY_CHANCE => Surprise::Fewer,
        () => Surprise::AsExpected,
    };
    VisitVerdict::Opened {
        open,
        of: counted().count(),
        expected: (!chances.is_empty()).then_some((expected, surprise)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: of joints that open in 8 and 7 cases of 100, one or both do in 14.44, which is no wonder; of three
    /// with 1 in 100 each, two or three do in 3 in 10,000, which is one.
    #[test]
    fn as_many_as_come_by_chance_are_no_surprise() {
        let found = counts(&[0.08, 0.07]);
        assert!((found[0] - 0.92 * 0.93).abs() < 1e-12 && (found[2] - 0.0056).abs() < 1e-12);
        assert!((found.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        let held = |chances: &[f64], open: usize| {
            let reading = |(at, chance): (usize, &f64)| LaterReading {
                surface: String::new(),
                joint: at.to_string(),
                width: if at < open { Length::mm(1.0) } else { Length::ZERO },
                forecast: None,
                chance: Some(*chance),
            };
            let readings: Vec<LaterReading> = chances.iter().enumerate().map(reading).collect();
            match opened(&readings) {
                VisitVerdict::Opened { expected: Some((_, surprise)), .. } => surprise,
                other => panic!("{other:?}"),
            }
        };
        assert_eq!(held(&[0.08, 0.07], 1), Surprise::More);
        assert_eq!(held(&[0.3, 0.3], 1), Surprise::AsExpected);
        assert_eq!(held(&[0.01, 0.01, 0.01], 2), Surprise::TooMany);
        assert_eq!(held(&[0.9, 0.9, 0.9], 0), Surprise::Fewer);
        assert_eq!(held(&[0.9, 0.9, 0.9], 3), Surprise::AsExpected);
    }
}
