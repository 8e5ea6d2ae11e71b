//! What can be laid at all, and where the guides stop.
//!
//! Reasons are data: an id, how grave, the figure and the one it is held against. What they say to
//! people is told elsewhere.

use serde::Serialize;

use super::section::{Behind, BoardEdge, Section};
use crate::measure::{Length, Percent};

/// Why a section cannot be laid, or is outside of what guides cover.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Reason {
    /// No gap to bridge.
    NoGap,
    /// A figure is out of its range: fill or solids outside 0 to 100 %, a depth below zero, a bevel
    /// steeper than 80 or flatter than 20 degrees.
    OutOfRange,
    /// The bead has no thickness: neither V filled nor slot.
    NoBead,
    /// The bead sinks through, or is hollowed through, in its middle.
    SinksThrough,
    /// The edges of the face thin to nothing.
    FeatherEdge,
    /// The slot is too narrow to lay bond-breaker tape in it.
    TapeNeedsWidth,
    /// The slot is too narrow for the smallest backer rod.
    RodNeedsWidth,
    /// A rod is used, but the bead does not reach into the slot over it.
    RodNeedsDepth,
    /// The V is filled to the face of the boards: it will not show.
    HidesV,
    /// The bead is bonded on a third side.
    ThirdSide,
    /// Thinner in the middle than guides have it.
    BelowGuideThickness,
    /// Bonded to each board over less than guides have it.
    BelowGuideBond,
    /// Narrower at the slot than any guide covers.
    BelowGuideWidth,
    /// Deeper into the slot than a nozzle pushes sealant.
    BeyondNozzle,
    /// The face lies deeper below the boards than a finger reaches: it takes a rounded tool.
    BeyondFinger,
}

/// How grave a reason is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// Outside of what guides cover; the strain is worked out all the same.
    Advice,
    /// Cannot be laid with what is sold; the strain is worked out all the same.
    Impractical,
    /// Not a bead; no strain is worked out.
    Invalid,
}

/// One reason with its figures.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Finding {
    /// Which.
    pub reason: Reason,
    /// How grave.
    pub severity: Severity,
    /// What the section has, where the reason is about a length.
    pub value: Option<Length>,
    /// What it should at least have.
    pub least: Option<Length>,
    /// What it should at most have.
    pub most: Option<Length>,
}

/// Narrowest slot in which tape can be laid flat: strips are cut to 1/8 in by hand. Common practice.
pub const LEAST_TAPE: Length = Length::inches(0.125);
/// Narrowest slot for backer rod: the smallest stocked rod, 1/4 in, less a third of oversize (25 to
/// 33 % oversize: ASTM C1193, from memory).
pub const LEAST_ROD: Length = Length::inches(0.25 / 1.33);
/// Least thickness in the middle: 1/8 in, the lower end of the 3 to 6 mm of a bridge bead (ASTM C1193,
/// from memory).
pub const GUIDE_THICKNESS: Length = Length::inches(0.125);
/// Least bond to each side: 1/4 in (Petrie, Handbook of Adhesives and Sealants, p. 119; ASTM C1193
/// for fillet and bridge beads, from memory).
pub const GUIDE_BOND: Length = Length::inches(0.25);
/// Least width of a joint: 1/4 in (Petrie, p. 119).
pub const GUIDE_WIDTH: Length = Length::inches(0.25);

/// Outside of a nozzle that was cut for a fine bead, 1/8 in. Where the slot is wide enough it goes in; else
/// sealant is pushed in from above, about twice as deep as the slot is wide. Judgment, no source.
pub const NOZZLE: Length = Length::inches(0.125);
const PUSHED_IN: f64 = 2.0;
/// Radius of a fingertip: half of the width of an index finger of about 16 mm. From memory of body measures.
pub const FINGER: Length = Length::mm(8.0);

/// The steepest the face may meet the bevel, as a share of the bevel's slope, before its edge is a
/// feather that neither bonds nor can be meshed.
const MOST_FEATHER: f64 = 0.85;
/// The thinnest bead that is taken as one.
const LEAST_THICKNESS: Length = Length::mm(0.2);

impl Section {
    /// All reasons that speak against this section, the gravest first.
    pub fn findings(&self) -> Vec<Finding> {
        let mut findings = self.range_findings();
        if findings.is_empty() {
            findings = self.shape_findings();
        }
        findings.sort_by_key(|finding| std::cmp::Reverse(finding.severity));
        findings
    }

    /// Whether it can be laid.
    pub fn can_be_laid(&self) -> bool {
        self.findings().iter().all(|finding| finding.severity < Severity::Impractical)
    }

    /// Whether its strain can be worked out.
    pub fn is_valid(&self) -> bool {
        self.findings().iter().all(|finding| finding.severity < Severity::Invalid)
    }

    /// How far a fingertip drawn along the joint reaches below the boards: as deep as its round dips between
    /// their edges. `None` where nothing holds it off.
    pub fn finger_reach(&self) -> Option<Length> {
        let BoardEdge::V { leg, .. } = self.edge else { return None };
        let half = 0.5 * self.gap.to_m() + leg.to_m();
        let radius = FINGER.to_m();
        (half < radius).then(|| Length::m(radius - (radius * radius - half * half).sqrt()))
    }

    /// How far the middle of the face, as it is tooled, lies below the boards.
    pub fn face_below_boards(&self) -> Length {
        let BoardEdge::V { leg, angle } = self.edge else { return Length::ZERO };
        let deep = leg.to_m() * angle.to_degrees().to_radians().tan();
        let wet = Self { solids: Percent::pct(100.0), ..*self }.outline();
        Length::m(deep - wet.top + wet.top_sag)
    }

    fn range_findings(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        if self.gap < Length::mm(0.05) {
            findings.push(invalid(Reason::NoGap, Some(self.gap), Some(Length::mm(0.05))));
        }
        let share = |share: f64| (0.0..=100.0).contains(&share);
        let edge = match self.edge {
            BoardEdge::V { leg, angle } => leg > Length::ZERO && (20.0..=80.0).contains(&angle.to_degrees()),
            BoardEdge::Square => true,
        };
        let solids = self.solids.to_pct() >= 20.0 && share(self.solids.to_pct());
        if !(edge && solids && share(self.fill.to_pct()) && self.depth >= Length::ZERO) {
            findings.push(invalid(Reason::OutOfRange, None, None));
        }
        findings
    }

    fn shape_findings(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        let outline = self.outline();
        let thickness = self.middle_thickness();
        if outline.top - outline.bottom <= 0.0 {
            return vec![invalid(Reason::NoBead, None, None)];
        }
        let mut least = |reason, severity, value: Length, least: Length| {
            if value < least {
                let (value, least) = (Some(value), Some(least));
                findings.push(Finding { reason, severity, value, least, most: None });
            }
        };
        least(Reason::SinksThrough, Severity::Invalid, thickness, LEAST_THICKNESS);
        match self.behind {
            Behind::Breaker => least(Reason::TapeNeedsWidth, Severity::Impractical, self.gap, LEAST_TAPE),
            Behind::Rod => {
                least(Reason::RodNeedsWidth, Severity::Impractical, self.gap, LEAST_ROD);
                least(Reason::RodNeedsDepth, Severity::Impractical, self.depth, self.gap * 0.5);
            }
            Behind::Free | Behind::Tongue => {}
        }
        if thickness >= LEAST_THICKNESS {
            least(Reason::BelowGuideThickness, Severity::Advice, thickness, GUIDE_THICKNESS);
        }
        least(Reason::BelowGuideBond, Severity::Advice, self.bond_length(), GUIDE_BOND);
        least(Reason::BelowGuideWidth, Severity::Advice, self.gap, GUIDE_WIDTH);
        let mut most = |reason, value: Length, most: Length| {
            if value > most {
                let (value, most) = (Some(value), Some(most));
                findings.push(Finding { reason, severity: Severity::Advice, value, least: None, most });
            }
        };
        if self.gap < NOZZLE {
            most(Reason::BeyondNozzle, self.depth, self.gap * PUSHED_IN);
        }
        if let Some(reach) = self.finger_reach() {
            most(Reason::BeyondFinger, self.face_below_boards(), reach);
        }
        if outline.feather() > MOST_FEATHER {
            findings.push(invalid(Reason::FeatherEdge, None, None));
        }
        if self.behind == Behind::Tongue {
            findings.push(advice(Reason::ThirdSide));
        }
        if matches!(self.edge, BoardEdge::V { .. }) && self.fill.to_pct() >= 100.0 {
            findings.push(advice(Reason::HidesV));
        }
        findings
    }
}

const fn invalid(reason: Reason, value: Option<Length>, least: Option<Length>) -> Finding {
    Finding { reason, severity: Severity::Invalid, value, least, most: None }
}

const fn advice(reason: Reason) -> Finding {
    Finding { reason, severity: Severity::Advice, value: None, least: None, most: None }
}
