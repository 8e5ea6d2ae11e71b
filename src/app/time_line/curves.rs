//! What the time line draws, as points by day from the visit.

use super::{AHEAD, BACK, STEP};
use crate::app::context::WindowContext;
use crate::assess::{MeasuredGap, SectionState, Story, visit_day};
use crate::measure::Length;

/// A band: days, its lower and its upper edge.
pub(super) type Band = (Vec<f64>, Vec<f64>, Vec<f64>);

/// The curves. Gaps are in mm, moisture and humidity in per cent.
pub(super) struct Curves {
    /// The gap.
    pub gap: Vec<[f64; 2]>,
    /// Where it lies nine times in ten.
    pub gap_band: Band,
    /// What was measured of it.
    pub measured: Vec<MeasuredGap>,
    /// The boards' moisture.
    pub moisture: Vec<[f64; 2]>,
    /// The room's humidity.
    pub humidity: Vec<[f64; 2]>,
    /// The same nine years in ten.
    pub humidity_band: Band,
    /// Day of sealing, and the gaps between which the bead holds.
    pub limits: Option<(f64, f64, f64)>,
    /// The days it turns on.
    pub story: Story,
    /// Top of the scale of gaps.
    pub top_gap: f64,
    /// The first day.
    pub start: i64,
    /// Whether any reading says how wide the gap is.
    pub known: bool,
}

impl Curves {
    /// Of the selected joint, else of a section on average.
    pub fn new(context: &WindowContext<'_>, state: &SectionState) -> Self {
        let (assessment, joint) = (context.assessment, context.selected().map(|(_, joint)| joint));
        let story = assessment.story(state, joint);
        let start = story.first.max(-BACK);
        let all = || (start..=AHEAD).step_by(STEP);
        let gap: Vec<[f64; 2]> = all()
            .filter_map(|day| Some([day as f64, assessment.gap_at(state, joint, day)?.to_mm()]))
            .collect();
        let gap_band = band(all().filter_map(|day| {
            let range = assessment.gap_range_at(state, joint, day)?;
            Some((day as f64, range.low.to_mm(), range.high.to_mm()))
        }));
        let measured = assessment.measured_gaps(state, joint);
        let limits = limits(context, state, &story);
        let kept = context.view.time.reference.iter().flat_map(|kept| &kept.gap).map(|[_, gap]| *gap);
        let dots = measured.iter().map(|measured| measured.range.high.to_mm());
        let widest = gap.iter().map(|[_, gap]| *gap).chain(kept).chain(dots);
        let widest = widest.chain(gap_band.2.iter().copied()).fold(0.0, f64::max);
        let visit = visit_day(&assessment.job);
        let year = assessment.year.as_ref();
        let day_of_year = |day: i64| (visit + day).rem_euclid(365) as usize;
        let humidity =
            all().filter_map(|day| Some([day as f64, year?.days.get(day_of_year(day))?.humidity.to_pct()]));
        let humidity_band = band(all().filter_map(|day| {
            let range = year?.range.get(day_of_year(day))?;
            Some((day as f64, range.low.to_pct(), range.high.to_pct()))
        }));
        Self {
            top_gap: (Length::mm(widest) * 1.05).axis_top(context.units()).to_mm(),
            moisture: all().map(|day| [day as f64, state.moisture_on(visit, day).to_pct()]).collect(),
            humidity: humidity.collect(),
            known: super::is_known(state, joint),
            gap,
            gap_band,
            measured,
            humidity_band,
            limits,
            story,
            start,
        }
    }
}

fn band(points: impl Iterator<Item = (f64, f64, f64)>) -> Band {
    let mut band = Band::default();
    for (day, low, high) in points {
        band.0.push(day);
        band.1.push(low);
        band.2.push(high);
    }
    band
}

/// The day of sealing, and the gaps in mm between which a bead put in then stays within its class; `None`
/// where none is.
fn limits(context: &WindowContext<'_>, state: &SectionState, story: &Story) -> Option<(f64, f64, f64)> {
    let (bead, day) = (context.assessment.bead(state)?, story.sealed?);
    let sealed = context.assessment.gap_at(state, context.selected().map(|(_, joint)| joint), day)?;
    let limits = bead.limits(sealed);
    let low = (sealed - limits.close_hidden).max(Length::ZERO);
    Some((day as f64, low.to_mm(), (sealed + limits.open_hidden).to_mm()))
}
