//! The measure of the job: what tasks and materials go with, and how new boards are cut.

use std::collections::BTreeMap;

use super::option_inputs::OptionInputs;
use super::sections::JointState;
use crate::joint::JointEdges;
use crate::measure::{Area, Length, Volume};
use crate::repair::{
    CannotCut, CuttingList, CuttingRules, Material, Plan, Quantities, StockLength, TreatedJoint, board_price,
    cutting_list,
};
use crate::surface::{DividerKind, SurfaceKind, SurfaceLayout};

/// The measure of the job on the day of sealing.
pub(super) fn quantities(inputs: &OptionInputs<'_>) -> Quantities {
    let mut measure = Quantities::default();
    for (surface, laid) in inputs.job.surfaces.iter().zip(inputs.layouts) {
        let mut boarded = false;
        for (section, part) in surface.sections.iter().zip(&laid.sections) {
            let area = part.area();
            if area <= Area::ZERO {
                continue;
            }
            boarded = true;
            measure.sections += 1;
            measure.boarded = measure.boarded + area;
            let thickness = section.board.thickness.max(Length::ZERO);
            measure.board_volume = measure.board_volume + Volume::m3(area.to_m2() * thickness.to_m());
            measure.board_run = measure.board_run + Length::m(area.to_m2() / section.board.face_width.to_m());
        }
        if boarded {
            measure.painted = measure.painted + laid.painted_area;
            measure.outline = measure.outline + laid.outline_length - laid.ridge_length;
            // A board between sections has trim or its own edge along both of its sides.
            let dividing = surface.dividers.iter().filter(|divider| divider.kind == DividerKind::Dividing);
            let sides: Length = dividing.map(|divider| divider.length() * 2.0).sum();
            measure.trim = measure.trim + laid.outline_length + sides;
            measure.openings += surface.openings.len();
        }
    }
    let count = |count: u32| usize::try_from(count).unwrap_or(usize::MAX);
    measure.windows = count(inputs.job.plan.site.windows);
    measure.fixtures = count(inputs.job.plan.site.fixtures);
    measure.pieces = pieces(inputs.layouts);
    measure.longest_overhead = longest_overhead(inputs);
    let treated = inputs.joints.iter().filter(|state| state.treated);
    measure.treated = treated.map(|state| treated_joint(state, inputs)).collect();
    measure
}

/// The longest board that is not on a wall.
fn longest_overhead(inputs: &OptionInputs<'_>) -> Length {
    let surfaces = inputs.job.surfaces.iter().zip(inputs.layouts);
    let overhead = surfaces.filter(|(surface, _)| surface.kind != SurfaceKind::Wall);
    overhead.flat_map(|(_, laid)| &laid.boards).map(|board| board.run).fold(Length::ZERO, Length::max)
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
fn pieces(layouts: &[SurfaceLayout]) -> Vec<(f64, usize)> {
    let mut lengths: BTreeMap<u32, usize> = BTreeMap::new();
    for board in layouts.iter().flat_map(|laid| &laid.boards) {
        *lengths.entry(whole_mm(board.run)).or_default() += 1;
    }
    lengths.into_iter().rev().map(|(mm, count)| (f64::from(mm) / 1000.0, count)).collect()
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
        let price = board_price(boards, *length, plan).0.to_cents();
        // What costs nothing is still not bought without end.
        StockLength { length: length.to_m(), price: price.max(1) }
    });
    let rules = CuttingRules {
        kerf: plan.stock.kerf.to_m(),
        end_trim: plan.stock.end_trim.to_m(),
        defects: plan.board_waste.to_fraction(),
    };
    cutting_list(&measure.pieces, &stock.collect::<Vec<_>>(), &rules)
}
