//! The readings as the accounts of what happened are held against them.

use crate::joint::BoardYears;
use crate::measure::{Angle, Length, Moisture};
use crate::survey::Failure;
use crate::wood::{Species, shrinkage};

/// Opening under which a joint counts as closed, mm.
pub(super) const CLOSED: f64 = 0.1;
/// Install moistures for which the course to today is worked out, per cent: every one from 4 to 30.
const INSTALLS: u32 = 27;

/// One gap reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GapEvidence {
    /// Its place along the row of the section's joints, 0 to 1.
    pub place: f64,
    /// Its width.
    pub width: Length,
    /// How it failed.
    pub failed: Failure,
}

/// What the same joints showed on a later day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LaterGaps {
    /// Mean change of their gaps since the visit.
    pub change: Length,
    /// How many joints.
    pub joints: usize,
    /// What the room makes of the boards' moisture on that day.
    pub settled: Moisture,
    /// Share of a surplus of moisture at the visit that is left then.
    pub left: f64,
}

/// What a section's evidence is made of.
#[derive(Debug)]
pub struct SectionInputs<'a> {
    /// The boards' species.
    pub species: &'a Species,
    /// Their growth rings' angle to the face.
    pub ring: Angle,
    /// Width of wood whose movement shows at a joint.
    pub across: Length,
    /// What the build-up's moisture does in the room.
    pub years: &'a BoardYears,
    /// The visit's day of the year.
    pub visit: i64,
    /// Number of its board-to-board joints.
    pub joints: usize,
    /// The readings of them.
    pub gaps: Vec<GapEvidence>,
    /// Corrected moisture readings, each with its standard deviation, per cent.
    pub moistures: Vec<(f64, f64)>,
    /// Later readings of joints that were not worked on since.
    pub later: Vec<LaterGaps>,
}

/// One section's evidence, prepared.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct SectionEvidence {
    /// Number of joints.
    pub joints: f64,
    /// Readings wider than [`CLOSED`]: place and mm.
    pub open: Vec<(f64, f64)>,
    /// Number of readings of closed joints.
    pub closed: f64,
    /// Mean of the open readings, mm.
    pub mean: f64,
    /// Widths in mm with the way they failed, of the readings that note one.
    pub failures: Vec<(f64, Failure)>,
    /// Moisture readings with their standard deviations, per cent.
    pub moistures: Vec<(f64, f64)>,
    /// Mean of the settled year, and its wettest, per cent.
    pub room: (f64, f64),
    /// Opening in mm that one per cent of moisture makes.
    pub per_pct: f64,
    /// Later days.
    pub later: Vec<LaterGaps>,
    /// What the room makes of the boards' moisture at the visit, per cent.
    pub settled: f64,
    /// For each install moisture: present moisture in per cent, and the opening since in mm.
    course: Vec<(f64, f64)>,
}

impl SectionEvidence {
    pub fn new(inputs: &SectionInputs<'_>) -> Self {
        let widths = inputs.gaps.iter().map(|gap| (gap.place, gap.width.to_mm()));
        let (open, closed): (Vec<_>, Vec<_>) = widths.partition(|(_, width)| *width > CLOSED);
        #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
        let count = |readings: &[(f64, f64)]| readings.len() as f64;
        let sum: f64 = open.iter().map(|(_, width)| width).sum();
        let mean = if open.is_empty() { 0.0 } else { sum / count(&open) };
        let settled = inputs.years.on(inputs.visit);
        let opened = |from: Moisture, to: Moisture| {
            inputs.across.to_mm() * shrinkage(inputs.species, inputs.ring, from, to)
        };
        let course = (0..INSTALLS)
            .map(|step| {
                let start = Moisture::pct(f64::from(4 + step));
                let now = inputs.years.since_install(start, 0).unwrap_or(settled);
                (now.to_pct(), opened(start, now))
            })
            .collect();
        let wettest = inputs.years.extremes().1;
        let noted = inputs.gaps.iter().filter(|gap| gap.failed != Failure::NotNoted);
        #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
        let joints = inputs.joints as f64;
        Self {
            joints,
            closed: count(&closed),
            mean,
            failures: noted.map(|gap| (gap.width.to_mm(), gap.failed)).collect(),
            moistures: inputs.moistures.clone(),
            room: (inputs.years.mean().to_pct(), wettest.to_pct()),
            per_pct: opened(settled + Moisture::pct(0.5), settled - Moisture::pct(0.5)),
            later: inputs.later.clone(),
            settled: settled.to_pct(),
            course,
            open,
        }
    }

    /// Present moisture in per cent and opening since in mm of boards put up at `start` per cent.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to the table")]
    pub fn since_install(&self, start: f64) -> (f64, f64) {
        let at = (start - 4.0).clamp(0.0, f64::from(INSTALLS - 1) - 1e-9);
        let (below, share) = (at as usize, at.fract());
        let ((now_a, open_a), (now_b, open_b)) = (self.course[below], self.course[below + 1]);
        (now_a + (now_b - now_a) * share, open_a + (open_b - open_a) * share)
    }
}
