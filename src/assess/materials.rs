//! The measure of the job: what tasks and materials go with, and how new boards are cut.

use std::collections::BTreeMap;

use geo::{Euclidean, Length as _, Line};

use super::option_inputs::OptionInputs;
use super::sections::JointState;
use crate::job::Job;
use crate::joint::JointEdges;
use crate::measure::{Area, Length, Percent, Volume};
use crate::repair::{
    ASSUMED_FIXTURES, ASSUMED_WINDOWS, CannotCut, CuttingList, CuttingRules, Material, Outcome, Plan,
    Quantities, StockLength, TreatedJoint, board_price, cutting_list,
};
use crate::surface::{
    Board, DividerKind, Joint, JointKind, Profile, Section, SectionLayout, SurfaceKind, SurfaceLayout,
};

/// How much of the room a repair takes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Extent {
    /// The joints that are sealed again.
    Sealed,
    /// Every joint between boards, whether it opened or not: what is over some joints is over all.
    EveryJoint,
    /// The boards of the sections of which most joints opened, see [`opened_sections`].
    Boards,
}

impl Extent {
    /// What a repair with this outcome takes in.
    pub const fn of(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Covered | Outcome::Line => Self::EveryJoint,
            Outcome::Boards { .. } => Self::Boards,
            Outcome::Bead { .. } | Outcome::Glued | Outcome::Unchanged => Self::Sealed,
        }
    }

    /// Whether a joint is worked on; of boards, whether it lies between some that are taken down, where all are.
    pub fn takes(self, state: &JointState, joint: &Joint) -> bool {
        let between = joint.kind == JointKind::BoardEdge;
        match self {
            Self::Sealed => state.treated,
            Self::EveryJoint => state.treated || between,
            Self::Boards => between,
        }
    }
}

/// The measure of the job on the day of sealing. What is masked and painted is always the whole.
pub(super) fn quantities(inputs: &OptionInputs<'_>, extent: Extent) -> Quantities {
    let mut measure = Quantities::default();
    let opened = (extent == Extent::Boards).then(|| opened_sections(inputs)).flatten();
    let takes = |surface: usize, section: usize| {
        opened.as_ref().is_none_or(|opened| opened.contains(&(surface, section)))
    };
    for (at, (surface, laid)) in inputs.job.surfaces.iter().zip(inputs.layouts).enumerate() {
        let (mut boarded, mut taken, mut edges) = (0_usize, 0_usize, Length::ZERO);
        for (number, (section, part)) in surface.sections.iter().zip(&laid.sections).enumerate() {
            let area = part.area();
            if area <= Area::ZERO {
                continue;
            }
            boarded += 1;
            if section.board.profile != Profile::Square {
                measure.grooves = measure.grooves + grooves(laid, number);
            }
            if !takes(at, number) {
                continue;
            }
            taken += 1;
            measure.boarded = measure.boarded + area;
            let thickness = section.board.thickness.max(Length::ZERO);
            measure.board_volume = measure.board_volume + Volume::m3(area.to_m2() * thickness.to_m());
            measure.board_run = measure.board_run + Length::m(area.to_m2() / section.board.face_width.to_m());
            edges = edges + around(part);
            let boards = laid.boards.iter().filter(|board| board.section == number);
            measure.angled_ends += boards.map(|board| angled_ends(board, section)).sum::<usize>();
        }
        if boarded > 0 {
            measure.painted = measure.painted + laid.painted_area;
            measure.outline = measure.outline + laid.outline_length - laid.ridge_length;
        }
        measure.sections += taken;
        if taken > 0 {
            // A board between sections has trim or its own edge along both of its sides.
            let dividing = surface.dividers.iter().filter(|divider| divider.kind == DividerKind::Dividing);
            let sides: Length = dividing.map(|divider| divider.length() * 2.0).sum();
            let whole = laid.outline_length + sides;
            measure.trim = measure.trim + if taken == boarded { whole } else { edges.min(whole) };
            measure.openings += surface.openings.len();
        }
    }
    let count = |count: u32| usize::try_from(count).unwrap_or(usize::MAX);
    measure.narrowest = inputs.job.plan.narrowest;
    measure.windows = count(windows(inputs.job).0);
    measure.fixtures = count(inputs.job.plan.site.fixtures.unwrap_or(ASSUMED_FIXTURES));
    measure.pieces = pieces(inputs.layouts, takes);
    measure.longest_overhead = longest_overhead(inputs, takes);
    // What boards are taken down for are the joints that opened.
    let joints = if extent == Extent::Boards { Extent::Sealed } else { extent };
    let wanted = inputs
        .joints
        .iter()
        .filter(|state| joints.takes(state, &inputs.layouts[state.surface].joints[state.joint]));
    measure.treated = wanted.map(|state| treated_joint(state, inputs)).collect();
    measure
}

/// Windows and doors to mask, and whether that is only assumed: what the user says, else what is drawn, else
/// what a room has.
pub(super) fn windows(job: &Job) -> (u32, bool) {
    let drawn: usize =
        job.surfaces.iter().map(|surface| surface.openings_within() + surface.windows.len()).sum();
    let drawn = u32::try_from(drawn).unwrap_or(u32::MAX);
    match job.plan.site.windows {
        Some(said) => (said, false),
        None if drawn > 0 => (drawn, false),
        None => (ASSUMED_WINDOWS, true),
    }
}

/// A section whose boards are taken down has at least this share of the length between them open. Judgment: for a
/// few open joints nobody takes a section down.
const MOSTLY_OPEN: f64 = 0.5;

/// The sections whose boards are taken down, each by its surface and its number there: those of which most joints
/// opened. `None` for all of them: where all did, or none that much.
pub(super) fn opened_sections(inputs: &OptionInputs<'_>) -> Option<Vec<(usize, usize)>> {
    // Length between boards, and how much of it is open.
    let mut sections: BTreeMap<(usize, usize), (f64, f64)> = BTreeMap::new();
    for state in inputs.joints {
        let joint = &inputs.layouts[state.surface].joints[state.joint];
        if joint.kind == JointKind::BoardEdge {
            let (all, open) = sections.entry((state.surface, joint.section)).or_default();
            *all += joint.length().to_m();
            *open += if state.treated { joint.length().to_m() } else { 0.0 };
        }
    }
    let mostly = sections.iter().filter(|(_, (all, open))| *open >= MOSTLY_OPEN * all);
    let opened: Vec<(usize, usize)> = mostly.map(|(section, _)| *section).collect();
    (!opened.is_empty() && opened.len() < sections.len()).then_some(opened)
}

/// Length of the grooves between the boards of a section.
fn grooves(laid: &SurfaceLayout, section: usize) -> Length {
    let own =
        laid.joints.iter().filter(|joint| joint.section == section && joint.kind == JointKind::BoardEdge);
    own.map(Joint::length).sum()
}

/// Length of the edge around what is boarded of a section.
fn around(part: &SectionLayout) -> Length {
    Length::m(part.clear.iter().map(|piece| Euclidean.length(piece.exterior())).sum())
}

/// Ends of a board that are not square: edges at a slant to it that are as wide as half of its face.
fn angled_ends(board: &Board, section: &Section) -> usize {
    /// Sine of the least slant that is no slip of the saw: 5 degrees.
    const SLANT: f64 = 0.087;
    let (sine, cosine) = section.direction.to_radians().sin_cos();
    let half = 0.5 * section.board.face_width.to_m();
    let slanted = |edge: &Line| {
        let run = edge.delta();
        let (along, across) = (run.x * cosine + run.y * sine, run.y * cosine - run.x * sine);
        let length = along.hypot(across).max(1e-9);
        across.abs() >= half && along.abs() > SLANT * length
    };
    board.face.exterior().lines().filter(slanted).count()
}

/// The longest board that is not on a wall.
fn longest_overhead(inputs: &OptionInputs<'_>, takes: impl Fn(usize, usize) -> bool) -> Length {
    let surfaces = inputs.job.surfaces.iter().zip(inputs.layouts).enumerate();
    let overhead = surfaces.filter(|(_, (surface, _))| surface.kind != SurfaceKind::Wall);
    overhead
        .flat_map(|(at, (_, laid))| laid.boards.iter().map(move |board| (at, board)))
        .filter(|(at, board)| takes(*at, board.section))
        .map(|(_, board)| board.run)
        .fold(Length::ZERO, Length::max)
}

fn treated_joint(state: &JointState, inputs: &OptionInputs<'_>) -> TreatedJoint {
    let joint = &inputs.layouts[state.surface].joints[state.joint];
    let board = &inputs.job.surfaces[state.surface].sections[joint.section].board;
    TreatedJoint { length: joint.length(), gap: state.at_sealing, edges: JointEdges::of(board) }
}

/// Length of joint to be sealed in the timed section.
pub(super) fn trial_run(inputs: &OptionInputs<'_>) -> Option<Length> {
    let trial = inputs.job.plan.trial.as_ref()?;
    let surface = inputs.job.surfaces.iter().position(|s| s.name == trial.surface)?;
    let section = inputs.job.surfaces[surface].sections.iter().position(|s| s.name == trial.section)?;
    let joints = &inputs.layouts[surface].joints;
    let wanted = inputs
        .joints
        .iter()
        .filter(|state| state.treated && state.surface == surface && joints[state.joint].section == section);
    Some(wanted.map(|state| joints[state.joint].length()).sum())
}

/// The boards' pieces by length, in whole millimetres up, and how many of each, longest first.
fn pieces(layouts: &[SurfaceLayout], takes: impl Fn(usize, usize) -> bool) -> Vec<(f64, usize)> {
    let mut lengths: BTreeMap<u32, usize> = BTreeMap::new();
    for (at, laid) in layouts.iter().enumerate() {
        for board in laid.boards.iter().filter(|board| takes(at, board.section)) {
            *lengths.entry(whole_mm(board.run)).or_default() += 1;
        }
    }
    lengths.into_iter().rev().map(|(mm, count)| (f64::from(mm) / 1000.0, count)).collect()
}

/// The pieces with whole spare boards for those that are split, knotty, or cut wrong: so many of a hundred, up
/// to the next whole one, each long enough for any place.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "a count of boards"
)]
pub(super) fn with_spares(pieces: &[(f64, usize)], waste: Percent) -> Vec<(f64, usize)> {
    let boards: usize = pieces.iter().map(|(_, count)| count).sum();
    let spares = (boards as f64 * waste.to_fraction().max(0.0) - 1e-9).ceil() as usize;
    let mut all = pieces.to_vec();
    if let Some((_, longest)) = all.first_mut() {
        *longest += spares;
    }
    all
}

/// Whole millimetres, up, a hundredth of one forgiven.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to what fits")]
fn whole_mm(length: Length) -> u32 {
    (length.to_mm() - 0.01).ceil().clamp(0.0, 1e7) as u32
}

/// How new boards of a material are cut from the plan's stock, at its prices.
pub(super) fn cutting(
    measure: &Quantities,
    boards: &Material,
    plan: &Plan,
) -> Result<CuttingList, CannotCut> {
    let stock = plan.stock.lengths.iter().map(|length| {
        let price = board_price(boards, (*length, measure.face()), plan).0.to_cents();
        // What costs nothing is still not bought without end.
        StockLength { length: length.to_m(), price: price.max(1) }
    });
    let rules =
        CuttingRules { kerf: plan.stock.kerf.to_m(), end_trim: plan.stock.end_trim.to_m(), defects: 0.0 };
    cutting_list(&with_spares(&measure.pieces, plan.board_waste), &stock.collect::<Vec<_>>(), &rules)
}
