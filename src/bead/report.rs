//! Everything about one bead and one movement, as plain data for other programs.

use serde::Serialize;

use super::class::{ClassUse, class_uses};
use super::limits::Finding;
use super::section::{Behind, BoardEdge, Section, Tooling};
use super::strain::{BeadStrain, Movement, PlaceStretch, StrainError, strain};

/// A bead, its movement, and what comes of it. Lengths in mm, areas in mm².
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BeadReport {
    /// The bead as laid.
    pub section: SectionReport,
    /// How the boards move.
    pub movement: MovementReport,
    /// What speaks against the section, the gravest first.
    pub findings: Vec<FindingReport>,
    /// The strain; none where `error` says why.
    pub strain: Option<StrainReport>,
    /// Why there is no strain: `invalid_section`, `movement_out_of_range`, `no_equilibrium`.
    pub error: Option<String>,
    /// Opening up to which there was an equilibrium, if it was lost.
    pub reached_mm: Option<f64>,
    /// How much of each class is used, the weakest class first.
    pub classes: Vec<ClassReport>,
}

/// A section in numbers.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SectionReport {
    /// Width of the slot at sealing.
    pub gap_mm: f64,
    /// Width of the bevel on each board's face; 0 for square edges.
    pub v_leg_mm: f64,
    /// Slope of the bevel from the face, degrees; 0 for square edges.
    pub v_angle_deg: f64,
    /// Share of the V's depth that is filled.
    pub fill_pct: f64,
    /// How far the bead reaches into the slot.
    pub depth_mm: f64,
    /// Hollow of the face, percent of its width.
    pub hollow_pct: f64,
    /// What is behind.
    pub behind: Behind,
    /// Volume left after cure.
    pub solids_pct: f64,
    /// Area after cure.
    pub area_mm2: f64,
    /// Area as pushed in.
    pub wet_area_mm2: f64,
    /// Thickness in the middle after cure.
    pub middle_thickness_mm: f64,
    /// Bond to one board.
    pub bond_mm: f64,
}

/// A movement in numbers.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct MovementReport {
    /// Opening; below zero it closes.
    pub open_mm: f64,
    /// Sliding along the joint.
    pub slide_mm: f64,
    /// One board's lift over the other.
    pub lift_mm: f64,
}

/// A reason in numbers.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FindingReport {
    /// Which, and how grave.
    #[serde(flatten)]
    pub finding: FindingIds,
    /// What the section has.
    pub value_mm: Option<f64>,
    /// What it should at least have.
    pub least_mm: Option<f64>,
    /// What it should at most have.
    pub most_mm: Option<f64>,
}

/// A reason's ids.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FindingIds {
    /// Which.
    pub reason: super::Reason,
    /// How grave.
    pub severity: super::Severity,
}

/// A strain in numbers; see [`BeadStrain`] for what each means.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StrainReport {
    /// Stretch of the face's line in its middle.
    pub face_middle: f64,
    /// Mean stretch of the face's line.
    pub face_mean: f64,
    /// Largest stretch of the face's line over 0.5 mm.
    pub face_largest: f64,
    /// The same of the back.
    pub back_largest: f64,
    /// Mean stretch within 0.25 mm of every place.
    pub places: Vec<PlaceStretch>,
    /// The largest of them.
    pub largest: PlaceStretch,
    /// Force over Young's modulus, per length of joint.
    pub force_per_modulus_mm: f64,
    /// Force along the joint, likewise.
    pub slide_force_per_modulus_mm: f64,
    /// Rise of the middle of the face.
    pub bulge_mm: f64,
    /// Whether it bows or folds.
    pub wrinkled: bool,
}

/// A class and its use.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct ClassReport {
    /// Standard and class.
    pub id: &'static str,
    /// The largest local stretch of the class's test bead.
    pub limit: f64,
    /// Per cent of the class that is used.
    pub used_pct: f64,
}

impl BeadReport {
    /// Works out the strain and reports it.
    pub fn new(section: &Section, movement: Movement) -> Self {
        let findings = section.findings();
        let solved = strain(section, movement);
        let reached_mm = match &solved {
            Err(StrainError::NoEquilibrium { reached }) => Some(reached.to_mm()),
            _ => None,
        };
        let used = solved.as_ref().map(|strain| class_uses(movement.open, strain.largest.stretch));
        Self {
            section: SectionReport::new(section),
            movement: MovementReport {
                open_mm: movement.open.to_mm(),
                slide_mm: movement.slide.to_mm(),
                lift_mm: movement.lift.to_mm(),
            },
            findings: findings.iter().map(FindingReport::new).collect(),
            error: solved.as_ref().err().map(ToString::to_string),
            reached_mm,
            classes: used.unwrap_or_default().iter().map(ClassReport::new).collect(),
            strain: solved.ok().map(StrainReport::new),
        }
    }
}

impl SectionReport {
    fn new(section: &Section) -> Self {
        let (v_leg_mm, v_angle_deg) = match section.edge {
            BoardEdge::V { leg, angle } => (leg.to_mm(), angle.to_degrees()),
            BoardEdge::Square => (0.0, 0.0),
        };
        let hollow_pct = match section.tooling {
            Tooling::Flush => 0.0,
            Tooling::Concave(share) => share.to_pct(),
        };
        Self {
            gap_mm: section.gap.to_mm(),
            v_leg_mm,
            v_angle_deg,
            fill_pct: section.fill.to_pct(),
            depth_mm: section.depth.to_mm(),
            hollow_pct,
            behind: section.behind,
            solids_pct: section.solids.to_pct(),
            area_mm2: 1e6 * section.cured_area().to_m2(),
            wet_area_mm2: 1e6 * section.wet_area().to_m2(),
            middle_thickness_mm: section.middle_thickness().to_mm(),
            bond_mm: section.bond_length().to_mm(),
        }
    }
}

impl FindingReport {
    fn new(finding: &Finding) -> Self {
        Self {
            finding: FindingIds { reason: finding.reason, severity: finding.severity },
            value_mm: finding.value.map(|length| length.to_mm()),
            least_mm: finding.least.map(|length| length.to_mm()),
            most_mm: finding.most.map(|length| length.to_mm()),
        }
    }
}

impl StrainReport {
    fn new(strain: BeadStrain) -> Self {
        Self {
            face_middle: strain.face_middle,
            face_mean: strain.face_mean,
            face_largest: strain.face_largest,
            back_largest: strain.back_largest,
            places: strain.places,
            largest: strain.largest,
            force_per_modulus_mm: strain.force_per_modulus.to_mm(),
            slide_force_per_modulus_mm: strain.slide_force_per_modulus.to_mm(),
            bulge_mm: strain.bulge.to_mm(),
            wrinkled: strain.wrinkled,
        }
    }
}

impl ClassReport {
    fn new(used: &ClassUse) -> Self {
        Self { id: used.class.id, limit: used.limit, used_pct: 100.0 * used.used }
    }
}
