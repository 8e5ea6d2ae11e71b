//! A joint through time: from the install, over the visit and the repair, into the coming years. The same
//! worlds are behind the past and the forecast.

use super::follow_up::{GAUGE, NINE_IN_TEN};
use super::section_worlds::{MeanGap, PastWeek, WEEK};
use super::sections::motion;
use super::{Assessment, JointState, SectionState};
use crate::job::Job;
use crate::joint::HORIZON;
use crate::measure::{Length, Span};
use crate::survey::LaterGap;

/// The days that a joint's story turns on, counted from the visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Story {
    /// The install, if its day is known and worked through.
    pub installed: Option<i64>,
    /// The first day that is known.
    pub first: i64,
    /// The day on which the joint is sealed, if the chosen option seals it.
    pub sealed: Option<i64>,
    /// The day on which it stands widest in the year after the sealing, or after the visit without one.
    pub widest: i64,
}

/// What was measured of a joint, or of a section on average.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeasuredGap {
    /// Days from the visit.
    pub day: i64,
    /// The gap.
    pub gap: Length,
    /// Where it lies nine times in ten.
    pub range: Span<Length>,
}

impl SectionState {
    /// Its mean gap on a day counted from the visit, and where it lies nine times in ten. `None` before the
    /// first day that is known.
    pub fn mean_gap_at(&self, day: i64) -> Option<MeanGap> {
        if let Ok(day) = usize::try_from(day) {
            return Some(MeanGap { expected: self.mean_gap_on(day), range: self.mean_gap_band(day) });
        }
        let today = MeanGap { expected: self.mean_gap_on(0), range: self.mean_gap_band(0) };
        let (before, after, share) = self.between_past_weeks(day)?;
        let after = after.map_or(today, |week| week.gap);
        let part = |of: fn(&MeanGap) -> Length| of(&before.gap) + (of(&after) - of(&before.gap)) * share;
        let range = Span { low: part(|gap| gap.range.low), high: part(|gap| gap.range.high) };
        Some(MeanGap { expected: part(|gap| gap.expected), range })
    }

    /// By how much its boards were narrower on a day before the visit, as a fraction of their width.
    fn past_narrowing(&self, day: i64) -> Option<f64> {
        let (before, after, share) = self.between_past_weeks(day)?;
        let after = after.map_or(0.0, |week| week.narrowing);
        Some(before.narrowing + (after - before.narrowing) * share)
    }

    /// The weeks that a day before the visit lies between, and how far it is from the one to the other; the
    /// later one is `None` where that is the visit.
    #[expect(clippy::cast_precision_loss, reason = "a few days")]
    fn between_past_weeks(&self, day: i64) -> Option<(&PastWeek, Option<&PastWeek>, f64)> {
        let next = self.past_weeks.partition_point(|week| week.day <= day);
        let before = self.past_weeks.get(next.checked_sub(1)?)?;
        let after = self.past_weeks.get(next);
        let to = after.map_or(0, |week| week.day);
        Some((before, after, (day - before.day) as f64 / (to - before.day).max(1) as f64))
    }
}

impl Assessment {
    /// The gap of a joint of a section, else the section's mean one, on a day counted from the visit. `None`
    /// if nothing says, or before the first day that is known.
    pub fn gap_at(&self, state: &SectionState, joint: Option<&JointState>, day: i64) -> Option<Length> {
        let Some(joint) = joint else { return Some(state.mean_gap_at(day)?.expected) };
        match usize::try_from(day) {
            Ok(day) => self.gap_on(joint, day),
            Err(_) => {
                let (at, now) = self.joint_now(joint)?;
                Some((now + at * state.past_narrowing(day)?).max(Length::ZERO))
            }
        }
    }

    /// The least and the widest gap of a joint of a section, else of its mean one, between two days, looked at
    /// once a week.
    pub(super) fn gaps_between(
        &self,
        state: &SectionState,
        joint: Option<&JointState>,
        (from, to): (i64, i64),
    ) -> Option<Span<Length>> {
        let weeks = (from..=to).step_by(WEEK).chain([to]);
        weeks.map(|day| self.gap_at(state, joint, day)).try_fold(
            None,
            |span: Option<Span<Length>>, gap| {
                let gap = gap?;
                let span = span.unwrap_or(Span { low: gap, high: gap });
                Some(Some(Span { low: span.low.min(gap), high: span.high.max(gap) }))
            },
        )?
    }

    /// Where that gap lies nine times in ten. For a single joint before the visit: as far as its gap at the
    /// visit is known.
    pub fn gap_range_at(
        &self,
        state: &SectionState,
        joint: Option<&JointState>,
        day: i64,
    ) -> Option<Span<Length>> {
        let Some(joint) = joint else { return Some(state.mean_gap_at(day)?.range) };
        match usize::try_from(day) {
            Ok(day) => self.gap_band_on(joint, day),
            Err(_) => {
                let (at, now) = self.joint_now(joint)?;
                let (then, reach) = (now + at * state.past_narrowing(day)?, joint.gap?.gap.sd * NINE_IN_TEN);
                let part = |gap: Length| gap.max(Length::ZERO);
                Some(Span { low: part(then - reach), high: part(then + reach) })
            }
        }
    }

    /// Width of wood whose movement shows at a joint, and its gap at the visit, below zero where its boards
    /// push.
    fn joint_now(&self, joint: &JointState) -> Option<(Length, Length)> {
        let at = self.layouts.get(joint.surface)?.joints.get(joint.joint)?;
        Some((at.moves_across, motion(at, joint, &self.sections)?.signed_gap_on(0)))
    }

    /// The days that the story of a joint of a section, or of its mean one, turns on.
    pub fn story(&self, state: &SectionState, joint: Option<&JointState>) -> Story {
        let first = state.past_weeks.first().map_or(0, |week| week.day);
        let seal_day = i64::try_from(self.seal_day).unwrap_or(0);
        let on = |day| self.gap_at(state, joint, day);
        let narrowest = self.job.plan.narrowest;
        let takes_a_bead = self.bead(state).is_some() && on(seal_day).is_some_and(|gap| gap >= narrowest);
        let sealed = takes_a_bead.then_some(seal_day);
        let year = i64::try_from(crate::air::DAYS).unwrap_or(365);
        let last = i64::try_from(HORIZON).unwrap_or(year) - 1;
        let from = sealed.unwrap_or(0);
        let gap = |day: &i64| on(*day).unwrap_or_default().to_m();
        let widest = (from..=(from + year).min(last)).max_by(|a, b| gap(a).total_cmp(&gap(b)));
        let installed = super::sections::age(&self.job).filter(|age| first == -*age && *age > 0);
        Story { installed: installed.map(|age| -age), first, sealed, widest: widest.unwrap_or(from) }
    }

    /// What was measured of a joint of a section, else of the section on average, at the visit and at later
    /// ones before the work was done. The average is over the joints that were looked at.
    pub fn measured_gaps(&self, state: &SectionState, joint: Option<&JointState>) -> Vec<MeasuredGap> {
        let job = &*self.job;
        let at_visit = match joint {
            Some(joint) => joint.gap.filter(|gap| gap.measured).map(|gap| (gap.gap.mean, GAUGE)),
            None => (state.gaps.measured > 0).then_some((state.gaps.mean, state.gaps.error_of_mean)),
        };
        let measured = |day, (gap, sd): (Length, Length)| {
            let reach = sd * NINE_IN_TEN;
            MeasuredGap { day, gap, range: Span { low: (gap - reach).max(Length::ZERO), high: gap + reach } }
        };
        let later = job.later.iter().filter(|visit| job.done.finished.is_none_or(|done| visit.on <= done));
        let later = later.filter_map(|visit| {
            let day = i64::from((visit.on - job.visited).get_days());
            let widths: Vec<f64> = visit
                .gaps
                .iter()
                .filter(|gap| self.is_of(job, gap, state, joint))
                .filter_map(|gap| Some(gap.width?.to_m()))
                .collect();
            Some(measured(day, mean_and_error(&widths)?))
        });
        at_visit.map(|gap| measured(0, gap)).into_iter().chain(later).collect()
    }

    /// Whether a reading is of this joint, else of any joint of this section.
    fn is_of(&self, job: &Job, gap: &LaterGap, state: &SectionState, joint: Option<&JointState>) -> bool {
        let Some(surface) = job.surfaces.iter().position(|surface| surface.name == gap.surface) else {
            return false;
        };
        let mut joints = self.joints.iter().filter(|other| other.surface == surface);
        let named = |other: &&JointState| {
            let layout = self.layouts.get(surface);
            layout.and_then(|layout| layout.joints.get(other.joint)).is_some_and(|at| at.label == gap.joint)
        };
        let Some(found) = joints.find(named) else { return false };
        match joint {
            Some(joint) => (found.surface, found.joint) == (joint.surface, joint.joint),
            None => found.section.is_some_and(|at| {
                self.sections
                    .get(at)
                    .is_some_and(|of| (of.surface, of.section) == (state.surface, state.section))
            }),
        }
    }
}

/// The mean of readings and its standard error, the gauge's included; `None` without readings.
#[expect(clippy::cast_precision_loss, reason = "dozens of readings")]
fn mean_and_error(widths: &[f64]) -> Option<(Length, Length)> {
    use statrs::statistics::Statistics as _;
    let count = widths.len() as f64;
    let scatter = if widths.len() > 1 { widths.std_dev() } else { 0.0 };
    let error = scatter.hypot(GAUGE.to_m()) / count.sqrt();
    (!widths.is_empty()).then(|| (Length::m(widths.mean()), Length::m(error)))
}

#[cfg(test)]
mod tests {
    use crate::assess::assess;
    use crate::job::{Catalog, demo_job};

    #[test]
    fn past_and_forecast_meet_at_the_visit() {
        let assessment = assess(demo_job(), Catalog::built_in());
        let state = &assessment.sections[0];
        let joint = assessment.joints.iter().find(|joint| joint.gap.is_some_and(|gap| gap.measured));
        for joint in [None, joint] {
            let on = |day| assessment.gap_at(state, joint, day).unwrap().to_mm();
            assert!((on(-1) - on(0)).abs() < 0.05, "{} and {}", on(-1), on(0));
            let range = assessment.gap_range_at(state, joint, -30).unwrap();
            assert!(range.low <= assessment.gap_at(state, joint, -30).unwrap());
            let story = assessment.story(state, joint);
            assert!(story.first < -150 && story.installed == Some(story.first), "{story:?}");
            let sealed = story.sealed.expect("the demo is sealed");
            assert!(on(story.widest) >= on(sealed));
            assert_eq!(assessment.gap_at(state, joint, story.first - 1), None);
        }
        // Wet boards: nearly shut at the install, open at the visit.
        let at = |day| assessment.gap_at(state, None, day).unwrap();
        assert!(at(assessment.story(state, None).first) < at(0) * 0.5);
        let measured = assessment.measured_gaps(state, None);
        assert_eq!(measured.len(), 1);
        assert!(measured[0].range.low < measured[0].gap && measured[0].gap < measured[0].range.high);
    }
}
