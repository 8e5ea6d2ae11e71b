//! From the measured joints to all of them.
//!
//! Within a section the board-to-board joints are taken as a sample of one normal population: an
//! unmeasured joint is expected at the sample's mean, and its standard deviation is that of a new
//! draw, s·√(1 + 1/n). A section without readings borrows those of the whole job. A lone reading
//! has no scatter of its own; then [`LONE_SCATTER`] of it is assumed.

use std::collections::HashMap;

use statrs::statistics::Statistics as _;

use super::readings::Survey;
use crate::measure::{Estimate, Length};
use crate::surface::{JointKind, Surface, SurfaceLayout};

/// Scatter assumed where a single reading shows none, as a fraction of it.
const LONE_SCATTER: f64 = 0.6;

/// How well a gap gauge reads, one standard deviation: a 128th of an inch. Assumption.
const GAUGE_SD: Length = Length::mm(0.2);

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
    /// Mean over the measured joints.
    pub mean: Length,
    /// Standard deviation from joint to joint.
    pub scatter: Length,
    /// Standard error of the mean.
    pub error_of_mean: Length,
}

/// Estimates the gap of every joint of every surface: `None` where nothing was measured that
/// could say. In the order of the layouts' joints. Beside it, one summary per section.
pub fn joint_gaps(
    surfaces: &[Surface],
    layouts: &[SurfaceLayout],
    survey: &Survey,
) -> (Vec<Vec<Option<GapEstimate>>>, Vec<Vec<SectionGaps>>) {
    let measured = measured_joints(surfaces, layouts, survey);
    let sample = |surface: usize, section: Option<usize>, kind: JointKind| -> Vec<f64> {
        let joints = layouts[surface].joints.iter().zip(&measured[surface]);
        let wanted = joints.filter(|(joint, _)| {
            joint.kind == kind && section.is_none_or(|section| joint.section == section)
        });
        wanted.filter_map(|(_, width)| *width).collect()
    };
    let whole_job: Vec<f64> =
        (0..surfaces.len()).flat_map(|s| sample(s, None, JointKind::BoardEdge)).collect();

    let mut estimates = Vec::new();
    let mut summaries = Vec::new();
    for (index, laid) in layouts.iter().enumerate() {
        let mut populations: HashMap<(usize, JointKind), Option<Population>> = HashMap::new();
        let mut of = |section: usize, kind: JointKind| {
            *populations
                .entry((section, kind))
                .or_insert_with(|| Population::of(&sample(index, Some(section), kind), &whole_job, kind))
        };
        let one = |(joint, width): (&crate::surface::Joint, &Option<f64>)| match width {
            Some(width) => {
                Some(GapEstimate { gap: Estimate { mean: Length::m(*width), sd: GAUGE_SD }, measured: true })
            }
            None => of(joint.section, joint.kind).map(Population::new_draw),
        };
        estimates.push(laid.joints.iter().zip(&measured[index]).map(one).collect());
        let summary = |section: usize| {
            let all = laid.joints.iter().filter(|j| j.section == section && j.kind == JointKind::BoardEdge);
            let readings = sample(index, Some(section), JointKind::BoardEdge);
            SectionGaps::new(&readings, all.count(), of(section, JointKind::BoardEdge))
        };
        summaries.push((0..laid.sections.len()).map(summary).collect());
    }
    (estimates, summaries)
}

/// Mean reading in metres of each joint that has any.
fn measured_joints(
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

/// A sample's mean and scatter in metres.
#[derive(Debug, Clone, Copy)]
struct Population {
    mean: f64,
    sd: f64,
    n: f64,
}

impl Population {
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    fn of(own: &[f64], whole_job: &[f64], kind: JointKind) -> Option<Self> {
        let job_sd = if whole_job.len() > 1 { whole_job.std_dev() } else { 0.0 };
        let sample = match own {
            // Only board-to-board joints resemble those of other sections.
            [] if kind == JointKind::BoardEdge => whole_job,
            own => own,
        };
        let mean = if sample.is_empty() { return None } else { sample.mean() };
        let sd = match sample.len() {
            1 if job_sd > 0.0 => job_sd,
            1 => LONE_SCATTER * mean,
            _ => sample.std_dev(),
        };
        // A whole other section is one more draw away.
        let n = if own.is_empty() { 1.0 } else { own.len() as f64 };
        Some(Self { mean, sd, n })
    }

    fn new_draw(self) -> GapEstimate {
        let sd = self.sd * (1.0 + 1.0 / self.n).sqrt();
        GapEstimate { gap: Estimate { mean: Length::m(self.mean), sd: Length::m(sd) }, measured: false }
    }
}

impl SectionGaps {
    fn new(readings: &[f64], joints: usize, population: Option<Population>) -> Self {
        let Some(all) = population else { return Self { joints, ..Self::default() } };
        Self {
            measured: readings.len(),
            joints,
            mean: Length::m(all.mean),
            scatter: Length::m(all.sd),
            error_of_mean: Length::m(all.sd / all.n.sqrt()),
        }
    }
}
