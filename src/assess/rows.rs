//! Each section as a row after the joints were sealed again: which joints tear when the boards have
//! moved as far as they will.
//!
//! Boards, widths and workmanship are drawn a few times over, so that the result has its scatter. The
//! chance of a callback takes each joint by itself; in a row, boards that a good bead holds together let
//! their movement show at the weak joint. So a row whose weak joint is expected to open wider than one
//! gap may, before the owner calls, speaks against a repair that lasts, however few joints tear.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

use super::laid::laid_bead;
use super::risk::{RING_SCATTER, moves_like_its_gap};
use super::sections::{JointState, SectionState};
use crate::job::{Catalog, Job};
use crate::joint::{HORIZON, LaidBead, Row, RowBoard, RowJoint};
use crate::measure::{Length, Percent};
use crate::repair::Capability;
use crate::surface::{JointKind, SurfaceLayout};
use crate::wood::Species;

/// Rows drawn for a section; fewer where it is long.
const DRAWS: usize = 24;
/// Joints that all draws of a section come to at most.
const MOST_JOINTS: usize = 6_000;

/// A section's row after the work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowForecast {
    /// Sealed joints in it.
    pub joints: usize,
    /// Share of them that tears, on average.
    pub torn: Percent,
    /// Standard deviation of that share.
    pub torn_sd: Percent,
    /// Opening of the widest of them when the boards have moved as far as they will, on average; zero in
    /// draws in which none tears.
    pub widest: Length,
}

impl RowForecast {
    /// How many joints are expected to tear.
    #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
    pub fn expected_torn(&self) -> f64 {
        self.torn.to_fraction() * self.joints as f64
    }
}

/// A joint of the row before its draw: bead or paint.
struct Sealed {
    stiffness: f64,
    /// Opening that half of such joints take, mm.
    reach: f64,
    /// How far it can close, mm.
    room: f64,
    /// Factor on its boards' movement.
    more: f64,
    /// Whether it is sealed again; else paint bridges it, if it is shut.
    treated: bool,
    bonded: bool,
}

/// The row of a section sealed on `seal_day`. `None` without sealed joints or where boards are held at
/// both edges.
pub(super) fn row_after(
    job: &Job,
    catalog: &Catalog,
    laid: &SurfaceLayout,
    state: &SectionState,
    joints: &[&JointState],
    seal_day: usize,
) -> Option<RowForecast> {
    let board = &job.surfaces[state.surface].sections[state.section].board;
    let species = catalog.species(&board.species)?;
    let bead = laid_bead(job, catalog, board, catalog.lay(&job.plan))?;
    let edges: Vec<Sealed> = joints
        .iter()
        .filter(|joint| laid.joints[joint.joint].kind == JointKind::BoardEdge)
        .filter_map(|joint| sealed(job, catalog, state, joint, &bead))
        .collect();
    let treated = edges.iter().filter(|edge| edge.treated).count();
    if treated == 0 || state.across <= Length::ZERO {
        return None;
    }
    let from = seal_day.min(HORIZON - 1);
    let then = state.motion.narrowing[from];
    let later = state.motion.narrowing[from..].iter().copied().fold(then, f64::max);
    let narrows = board.face_width.to_mm() * (later - then);
    let even = RowBoard {
        narrows,
        at_groove: board.fixing.at_groove(),
        at_tongue: board.fixing.at_tongue(),
        nails: catalog.bonding.nails(species.density()),
    };
    let draws = (MOST_JOINTS / edges.len()).clamp(2, DRAWS);
    let mut random = Xoshiro256PlusPlus::seed_from_u64(state.section as u64);
    let rows: Vec<(f64, f64)> =
        (0..draws).map(|_| drawn(&edges, &even, &catalog.capability, &mut random)).collect();
    #[expect(clippy::cast_precision_loss, reason = "a few draws")]
    let count = draws as f64;
    let torn = rows.iter().map(|(torn, _)| torn).sum::<f64>() / count;
    let spread = rows.iter().map(|(share, _)| (share - torn).powi(2)).sum::<f64>() / count;
    Some(RowForecast {
        joints: treated,
        torn: Percent::pct(100.0 * torn),
        torn_sd: Percent::pct(100.0 * spread.sqrt()),
        widest: Length::mm(rows.iter().map(|(_, widest)| widest).sum::<f64>() / count),
    })
}

fn sealed(
    job: &Job,
    catalog: &Catalog,
    state: &SectionState,
    joint: &JointState,
    bead: &LaidBead,
) -> Option<Sealed> {
    let (more, _) = moves_like_its_gap(&state.gaps, joint.gap?);
    let width = joint.at_sealing.to_mm();
    let bonding = &catalog.bonding;
    // A gap too narrow for a bead is bridged by paint alone.
    let (wide, depth, reach) = if joint.treated && joint.at_sealing >= job.plan.narrowest {
        let (wide, thick) = bead.mean_size(joint.at_sealing);
        let takes = bead.limits(joint.at_sealing).opening();
        (wide.to_mm(), thick.to_mm(), takes.to_mm() * catalog.capability.median)
    } else {
        (width, 0.0, bonding.paint_reach)
    };
    let bonded = joint.treated || joint.at_sealing < job.plan.open_from;
    let stiffness = bonding.joint(wide, depth);
    Some(Sealed { stiffness, reach, room: width, more, treated: joint.treated, bonded })
}

/// One row: share of the joints that tear, and the widest opening among them in mm.
fn drawn(
    edges: &[Sealed],
    even: &RowBoard,
    capability: &Capability,
    random: &mut Xoshiro256PlusPlus,
) -> (f64, f64) {
    let mut normal = |sd: f64| -> f64 {
        let z: f64 = StandardNormal.sample(random);
        sd * z
    };
    let lot = normal(capability.lot);
    let boards_sd = Species::SCATTER.hypot(RING_SCATTER);
    let joints = edges
        .iter()
        .map(|edge| RowJoint {
            stiffness: edge.stiffness,
            reach: edge.reach * (lot + normal(capability.hand)).exp(),
            room: edge.room,
            bonded: edge.bonded,
        })
        .collect();
    // A board's movement shows at the joint before it, or at the one after it if it is nailed at its
    // groove; one end of the row shows none.
    let mores = || edges.iter().map(|edge| edge.more);
    let more: Vec<f64> = if even.at_groove >= even.at_tongue {
        std::iter::once(1.0).chain(mores()).collect()
    } else {
        mores().chain([1.0]).collect()
    };
    let boards = more
        .into_iter()
        .map(|more| RowBoard { narrows: even.narrows * more * normal(boards_sd).exp(), ..*even })
        .collect();
    let mut row = Row::new(boards, joints);
    let mut torn = row.tear();
    torn.retain(|&joint| edges[joint].treated);
    let treated = edges.iter().filter(|edge| edge.treated).count();
    let state = row.balance();
    #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
    let share = torn.len() as f64 / treated.max(1) as f64;
    (share, torn.iter().map(|&joint| state.opening[joint]).fold(0.0, f64::max))
}
