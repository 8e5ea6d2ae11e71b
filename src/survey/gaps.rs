//! From the measured joints to all of them.
//!
//! Board-to-board joints are readings in groups, one group a section ([`Hierarchy`]): an unmeasured
//! joint is expected at its section's mean and scatters about it; a section without readings borrows
//! from the others, with all the doubt that has. Joints of other kinds (ends, dividers, perimeter)
//! resemble only their own kind in their own section.

use std::collections::HashMap;

use statrs::statistics::Statistics as _;

use super::hierarchy::{Hierarchy, Share};
use super::readings::Survey;
use crate::measure::{Area, Estimate, Length, Percent};
use crate::surface::{Joint, JointKind, Surface, SurfaceLayout};

/// How well a gap gauge reads, one standard deviation: a 128th of an inch. Assumption.
pub(super) const GAUGE_SD: Length = Length::mm(0.2);

/// Readings that are looked at, at most, when planning how many more to take.
const MOST_MORE: usize = 200;

/// Half-width of a 90 % interval in standard deviations.
const NINE_TENTHS: f64 = 1.645;

/// The gap of one joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GapEstimate {
    /// Its width with its uncertainty.
    pub gap: Estimate<Length>,
    /// Whether it was measured.
    pub measured: bool,
}

/// What the readings say of one section's board-to-board joints.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SectionGaps {
    /// Number of joints measured.
    pub measured: usize,
    /// Number of joints.
    pub joints: usize,
    /// Mean over all its joints.
    pub mean: Length,
    /// Standard deviation from joint to joint.
    pub scatter: Length,
    /// Standard error of the mean.
    pub error_of_mean: Length,
}

/// The joint to measure next, and how many more readings would do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NextReading {
    /// Index of the surface.
    pub surface: usize,
    /// Index of the joint in that surface's layout.
    pub joint: usize,
    /// How many more readings, each taken where it tells most, bring the opening to the precision
    /// asked for; `None` if more than 200.
    pub more: Option<usize>,
}

/// What the readings say of every joint.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GapSurvey {
    /// For each surface the joints in the layout's order: `None` where nothing was measured that
    /// could say.
    pub joints: Vec<Vec<Option<GapEstimate>>>,
    /// For each surface its sections.
    pub sections: Vec<Vec<SectionGaps>>,
    /// Opening of all board-to-board joints: gap times length, if anything was measured.
    pub opening: Option<Estimate<Area>>,
    /// What to measure next, unless every joint was or the precision is reached.
    pub next: Option<NextReading>,
}

/// The opening of all joints together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OpeningRange {
    /// Gap times length of every joint between boards, measured or not.
    pub opening: Area,
    /// Half of the range around it in which it lies 9 times in 10.
    pub within: Area,
    /// That as a share of the opening; zero where there is no opening.
    pub share: Percent,
}

impl GapSurvey {
    /// The opening of all joints with its range, if anything was measured.
    pub fn opening_range(&self) -> Option<OpeningRange> {
        let opening = self.opening?;
        let (mean, within) = (opening.mean.to_m2(), NINE_TENTHS * opening.sd.to_m2());
        let share = if mean > 0.0 { 100.0 * within / mean } else { 0.0 };
        Some(OpeningRange { opening: opening.mean, within: Area::m2(within), share: Percent::pct(share) })
    }
}

/// Estimates the gap of every joint of every surface. `precision` is the half-width of the opening's
/// 90 % interval that is asked for, as a fraction of the opening.
pub fn joint_gaps(
    surfaces: &[Surface],
    layouts: &[SurfaceLayout],
    survey: &Survey,
    precision: f64,
) -> GapSurvey {
    let measured = measured_joints(surfaces, layouts, survey);
    let sections = sections_of(layouts);
    let readings: Vec<Vec<f64>> =
        sections.iter().map(|place| sample(layouts, &measured, *place, JointKind::BoardEdge)).collect();
    let known = Hierarchy::new(&readings, GAUGE_SD.to_m());

    let mut found = GapSurvey {
        joints: layouts.iter().map(|laid| vec![None; laid.joints.len()]).collect(),
        sections: layouts.iter().map(|laid| vec![SectionGaps::default(); laid.sections.len()]).collect(),
        opening: None,
        next: None,
    };
    for (group, &place) in sections.iter().enumerate() {
        let summary = section_gaps(&layouts[place.0], place, &readings[group], known.as_ref(), group);
        let other_kinds = other_kinds(layouts, &measured, place);
        for (index, joint) in layouts[place.0].joints.iter().enumerate() {
            if joint.section == place.1 {
                found.joints[place.0][index] = match measured[place.0][index] {
                    Some(width) => Some(GapEstimate {
                        gap: Estimate { mean: Length::m(width), sd: GAUGE_SD },
                        measured: true,
                    }),
                    None if joint.kind == JointKind::BoardEdge => known.as_ref().map(|_| summary.new_draw()),
                    None => other_kinds.get(&joint.kind).map(SectionGaps::new_draw),
                };
            }
        }
        found.sections[place.0][place.1] = summary;
    }
    if let Some(known) = known {
        found.opening = Some(opening(layouts, &measured, &sections, &known));
        found.next = next_reading(layouts, &measured, &sections, &known, precision);
    }
    found
}

/// Every section as its surface's and its own index.
pub(super) fn sections_of(layouts: &[SurfaceLayout]) -> Vec<(usize, usize)> {
    let of = |(surface, laid): (usize, &SurfaceLayout)| {
        (0..laid.sections.len()).map(move |section| (surface, section)).collect::<Vec<_>>()
    };
    layouts.iter().enumerate().flat_map(of).collect()
}

/// The readings in metres of one kind of joint in one section.
pub(super) fn sample(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    (surface, section): (usize, usize),
    kind: JointKind,
) -> Vec<f64> {
    let joints = layouts[surface].joints.iter().zip(&measured[surface]);
    joints
        .filter(|(joint, _)| joint.kind == kind && joint.section == section)
        .filter_map(|(_, width)| *width)
        .collect()
}

fn section_gaps(
    laid: &SurfaceLayout,
    (_, section): (usize, usize),
    readings: &[f64],
    known: Option<&Hierarchy>,
    group: usize,
) -> SectionGaps {
    let of_section = |joint: &&Joint| joint.section == section && joint.kind == JointKind::BoardEdge;
    let joints = laid.joints.iter().filter(of_section).count();
    let Some(known) = known else { return SectionGaps { joints, ..SectionGaps::default() } };
    let estimate = known.group(group);
    SectionGaps {
        measured: readings.len(),
        joints,
        mean: Length::m(estimate.mean),
        scatter: Length::m(estimate.scatter),
        error_of_mean: Length::m(estimate.mean_sd),
    }
}

/// Summaries of the kinds other than board to board that were measured in a section.
fn other_kinds(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    place: (usize, usize),
) -> HashMap<JointKind, SectionGaps> {
    let kinds = [JointKind::BoardEnd, JointKind::Divider, JointKind::Perimeter];
    kinds
        .into_iter()
        .filter_map(|kind| {
            let readings = vec![sample(layouts, measured, place, kind)];
            let known = Hierarchy::new(&readings, GAUGE_SD.to_m())?.group(0);
            let summary = SectionGaps {
                mean: Length::m(known.mean),
                scatter: Length::m(known.scatter),
                error_of_mean: Length::m(known.mean_sd),
                ..SectionGaps::default()
            };
            Some((kind, summary))
        })
        .collect()
}

impl SectionGaps {
    /// A joint of the section that nobody measured.
    fn new_draw(&self) -> GapEstimate {
        let sd = Length::m(self.scatter.to_m().hypot(self.error_of_mean.to_m()));
        GapEstimate { gap: Estimate { mean: self.mean, sd }, measured: false }
    }
}

/// Mean reading in metres of each joint that has any.
pub(super) fn measured_joints(
    surfaces: &[Surface],
    layouts: &[SurfaceLayout],
    survey: &Survey,
) -> Vec<Vec<Option<f64>>> {
    let mut readings: HashMap<(&str, &str), Vec<f64>> = HashMap::new();
    for gap in survey.gaps.iter().filter(|gap| gap.width >= Length::ZERO) {
        readings.entry((&gap.surface, &gap.joint)).or_default().push(gap.width.to_m());
    }
    let of_joint = |surface: &Surface, label: &str| {
        readings.get(&(surface.name.as_str(), label)).map(|widths| widths.iter().mean())
    };
    let of_surface = |(surface, laid): (&Surface, &SurfaceLayout)| {
        laid.joints.iter().map(|joint| of_joint(surface, &joint.label)).collect()
    };
    surfaces.iter().zip(layouts).map(of_surface).collect()
}

/// The board-to-board joints of a section nobody measured, as shares of the total opening.
pub(super) fn unmeasured_share(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    (surface, section): (usize, usize),
) -> Share {
    let mut share = Share::default();
    for (joint, width) in layouts[surface].joints.iter().zip(&measured[surface]) {
        if joint.section == section && joint.kind == JointKind::BoardEdge && width.is_none() {
            let length = joint.length().to_m();
            share.weight += length;
            share.squares += length * length;
        }
    }
    share
}

/// Opening of all board-to-board joints, in m².
fn opening(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    sections: &[(usize, usize)],
    known: &Hierarchy,
) -> Estimate<Area> {
    let shares: Vec<Share> =
        sections.iter().map(|place| unmeasured_share(layouts, measured, *place)).collect();
    let (mut mean, sd) = known.total(&shares);
    let mut variance = sd * sd;
    for (laid, widths) in layouts.iter().zip(measured) {
        for (joint, width) in laid.joints.iter().zip(widths) {
            if let (JointKind::BoardEdge, Some(width)) = (joint.kind, width) {
                mean += joint.length().to_m() * width;
                variance += (joint.length().to_m() * GAUGE_SD.to_m()).powi(2);
            }
        }
    }
    Estimate { mean: Area::m2(mean), sd: Area::m2(variance.sqrt()) }
}

/// The next joint to measure: in the section in which one more reading narrows the opening most, as
/// far as can be from those that were measured there.
fn next_reading(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    sections: &[(usize, usize)],
    known: &Hierarchy,
    precision: f64,
) -> Option<NextReading> {
    let mut shares: Vec<Share> =
        sections.iter().map(|place| unmeasured_share(layouts, measured, *place)).collect();
    let mut planned = known.condensed();
    // What the condensed knowledge leaves out of the interval is asked of it too.
    let too_narrow = planned.total(&shares).1 / known.total(&shares).1.max(f64::MIN_POSITIVE);
    let mean = opening(layouts, measured, sections, known).mean.to_m2();
    let wanted = too_narrow * precision * mean / NINE_TENTHS;
    let mut first = None;
    for more in 0..MOST_MORE {
        if planned.total(&shares).1 <= wanted {
            let (surface, joint) = first?;
            return Some(NextReading { surface, joint, more: Some(more) });
        }
        let Some(best) = most_telling(layouts, sections, &planned, &shares) else { break };
        if first.is_none() {
            let joint = farthest_from_measured(layouts, measured, sections[best])?;
            first = Some((sections[best].0, joint));
        }
        planned = planned.with_one_more(best);
        shares[best] = one_measured(shares[best], mean_length(layouts, sections[best]));
    }
    first.map(|(surface, joint)| NextReading { surface, joint, more: None })
}

/// The share left when one joint of `length` more is measured.
pub(super) fn one_measured(share: Share, length: f64) -> Share {
    Share { weight: (share.weight - length).max(0.0), squares: (share.squares - length * length).max(0.0) }
}

/// Mean length in metres of a section's board-to-board joints.
pub(super) fn mean_length(layouts: &[SurfaceLayout], (surface, section): (usize, usize)) -> f64 {
    let edges = layouts[surface]
        .joints
        .iter()
        .filter(|joint| joint.section == section && joint.kind == JointKind::BoardEdge);
    let lengths: Vec<f64> = edges.map(|joint| joint.length().to_m()).collect();
    if lengths.is_empty() { 0.0 } else { lengths.mean() }
}

/// The section in which one more reading narrows the total most, if any has joints left.
pub(super) fn most_telling(
    layouts: &[SurfaceLayout],
    sections: &[(usize, usize)],
    known: &Hierarchy,
    shares: &[Share],
) -> Option<usize> {
    let left_after = |group: usize| {
        let mut shares = shares.to_vec();
        shares[group] = one_measured(shares[group], mean_length(layouts, sections[group]));
        known.with_one_more(group).total(&shares).1
    };
    let open = (0..sections.len()).filter(|&group| shares[group].weight > 1e-9);
    open.map(|group| (group, left_after(group))).min_by(|a, b| a.1.total_cmp(&b.1)).map(|(group, _)| group)
}

/// The unmeasured joint of a section that lies farthest from the measured ones; the middle one if none
/// was measured.
pub(super) fn farthest_from_measured(
    layouts: &[SurfaceLayout],
    measured: &[Vec<Option<f64>>],
    (surface, section): (usize, usize),
) -> Option<usize> {
    let joints = &layouts[surface].joints;
    let edges: Vec<usize> = (0..joints.len())
        .filter(|&at| joints[at].section == section && joints[at].kind == JointKind::BoardEdge)
        .collect();
    let seen: Vec<usize> = (0..edges.len()).filter(|&at| measured[surface][edges[at]].is_some()).collect();
    let middle = edges.len() / 2;
    let distance = |at: usize| match seen.iter().map(|&other| at.abs_diff(other)).min() {
        Some(near) => near,
        None => edges.len() - at.abs_diff(middle),
    };
    // A sliver in a corner tells little and is hard to get at.
    let longest = edges.iter().map(|&at| joints[at].length()).fold(Length::ZERO, Length::max);
    let open = (0..edges.len())
        .filter(|&at| measured[surface][edges[at]].is_none() && joints[edges[at]].length() >= longest / 4.0);
    open.max_by_key(|&at| (distance(at), std::cmp::Reverse(at))).map(|at| edges[at])
}
