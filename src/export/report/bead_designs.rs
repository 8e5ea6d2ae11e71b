//! Beads that last longest, as data.

use schemars::JsonSchema;
use serde::Serialize;

use super::fill::{mm, plain, round};
use crate::assess::{Assessment, JointBeads, SealantBeads, TriedBead, date_after};

/// The beads of all joints of a kind.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct JointBeadsReport {
    /// Leg of the V; 0 for square edges.
    pub v_leg_mm: f64,
    /// How far the tongue lies below the boards' face.
    pub tongue_below_mm: f64,
    /// Whether boards slide along these joints: against trim and dividers.
    pub slides: bool,
    /// How many there are.
    pub joints: usize,
    /// Their length.
    pub run_m: f64,
    /// The gap of half of them on the visit.
    pub gap_mm: f64,
    /// One for each sealant of the catalog.
    pub sealants: Vec<SealantBeadsReport>,
}

/// The beads of one sealant.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct SealantBeadsReport {
    /// Its name.
    pub sealant: String,
    /// The bead that is expected to last on most of the length.
    pub best: TriedBeadReport,
    /// The one that is laid without thinking, on the day of the visit.
    pub usual: TriedBeadReport,
}

/// A bead that was tried.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct TriedBeadReport {
    /// How it is laid: `bridge`, `on_tongue`, `reveal`.
    pub lay: &'static str,
    /// Share of the V that is filled.
    pub fill_pct: f64,
    /// How far a bead across the V reaches into the slot.
    pub in_slot_mm: f64,
    /// Hollow of its face, as a share of its width.
    pub hollow_pct: f64,
    /// Depth in the slot where no V holds it.
    pub slot_depth_mm: f64,
    /// Whether most of it gets backer or tape.
    pub backed: bool,
    /// First and last day of the weeks it is laid in.
    pub seal_from: String,
    /// See `seal_from`.
    pub seal_to: String,
    /// Share of the length on which it is expected to last.
    pub lasts_pct: f64,
    /// Share of the length on which the paint over it is expected to stay whole.
    pub paint_lasts_pct: f64,
    /// Wet sealant, waste included.
    pub sealant_ml: f64,
    /// What that costs.
    pub sealant_cost: String,
    /// Minutes of one person to lay, tool and back it, a second bead included.
    pub minutes: f64,
}

impl JointBeadsReport {
    pub(super) fn new(assessment: &Assessment, beads: &JointBeads) -> Self {
        let sealant = |of: &SealantBeads| SealantBeadsReport {
            sealant: assessment.catalog.sealants[of.sealant].name.clone(),
            best: TriedBeadReport::new(assessment, &of.best, 6),
            usual: TriedBeadReport::new(assessment, &of.usual, 0),
        };
        Self {
            v_leg_mm: mm(beads.edges.v_leg),
            tongue_below_mm: mm(beads.edges.tongue_below),
            slides: beads.slides,
            joints: beads.joints,
            run_m: round(beads.run.to_m(), 3),
            gap_mm: mm(beads.gap),
            sealants: beads.sealants.iter().map(sealant).collect(),
        }
    }
}

impl TriedBeadReport {
    /// The last week goes on for `more` days after its first.
    fn new(assessment: &Assessment, bead: &TriedBead, more: usize) -> Self {
        let date = |day| date_after(&assessment.job, day).to_string();
        Self {
            lay: bead.lay.key(),
            fill_pct: round(bead.form.v_filled.to_pct(), 1),
            in_slot_mm: mm(bead.form.in_slot),
            hollow_pct: round(bead.form.hollow.to_pct(), 1),
            slot_depth_mm: mm(bead.form.least_depth),
            backed: bead.backed,
            seal_from: date(bead.days.low),
            seal_to: date(bead.days.high + more),
            lasts_pct: round(bead.lasts.to_pct(), 1),
            paint_lasts_pct: round(bead.paint_lasts.to_pct(), 1),
            sealant_ml: round(bead.sealant.to_ml(), 0),
            sealant_cost: plain(bead.cost),
            minutes: round(bead.minutes.to_minutes(), 0),
        }
    }
}
