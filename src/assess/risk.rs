//! The chance of a callback for each repair option.

use std::sync::Arc;

use rayon::prelude::*;

use super::laid::LaidBeads;
use super::option_inputs::OptionInputs;
use super::options::RepairOption;
use super::pictures::{PicturedJoint, Pictures};
use super::section_worlds::{Start, Swing};
use super::sections::{JointState, SectionState, motion, slides, tongue};
use super::start::lead;
use crate::bead::MovementLimits;
use crate::job::{Catalog, Job};
use crate::joint::BeadLay;
use crate::measure::{Length, Money, Span};
use crate::repair::{
    MethodId, Outcome, Risk, RiskJoint, RiskOption, Scope, SectionMovement, Tears, present_value, risks,
};
use crate::surface::JointKind;
use crate::survey::{GapEstimate, SectionGaps};
use crate::wood::Species;

/// Where the random sequences start; any figure would do.
const SEED: u64 = 20_240_229;
/// How well boards dried for the room meet its mean, per cent moisture, one standard deviation.
/// Assumption.
const DRIED_TO: f64 = 0.7;
/// Boards at the mean of the room.
const DRIED: Start = Start::Above { mean: 0.0, sd: DRIED_TO };
/// Width of a strip's overlap on a board: an opening beneath it does not show before.
const OVERLAP: Length = Length::mm(12.0);
/// Stretch across the grain at which a board splits, over what a bead of its class takes. From memory:
/// 2 to 3 N/mm² over 400 N/mm².
const SPLITS_AT: f64 = 0.006;
/// Share of a repair's price that a callback costs before anything is mended. Assumption.
const VISIT: f64 = 0.15;
/// Scatter of ring angles adds about this much to that of species, relative. Assumption.
pub(super) const RING_SCATTER: f64 = 0.08;

/// The options that can be put to the trials, over so many years: by their indices, and as the trials see them.
fn tried(inputs: &OptionInputs<'_>, options: &[RepairOption], years: u32) -> (Vec<usize>, Vec<RiskOption>) {
    (0..options.len())
        .into_par_iter()
        .filter(|&at| options[at].not_possible.is_none())
        .filter_map(|at| Some((at, risk_option(inputs, &options[at], years)?)))
        .filter(|(_, option)| !option.joints().is_empty())
        .unzip()
}

/// What one year of warranty is expected to cost, as a share of an option's price.
pub(super) type YearlyShare = (usize, f64);

/// Fills in the options' chances, and what they cost with callbacks. Returns what a year of warranty
/// costs each.
pub(super) fn chances(inputs: &OptionInputs<'_>, options: &mut [RepairOption]) -> Vec<YearlyShare> {
    let plan = &inputs.job.plan;
    let catalog = inputs.catalog;
    let run = |(_, tried): &(Vec<usize>, Vec<RiskOption>), years, tears, trials| {
        risks(tried, &plan.callback, &catalog.capability.after(years), tears, trials, SEED)
    };
    // What a year costs is a sum over many trials: fewer of them tell it as well.
    let fewer = catalog.trials * 2 / 5;
    let (all, first) = (tried(inputs, options, plan.warranty_years), tried(inputs, options, 1));
    let term = run(&all, plan.warranty_years, Tears::Unknown, catalog.trials);
    let one_year = run(&first, 1, Tears::Unknown, fewer);
    let bounds = [Tears::Stay, Tears::ComeThrough].map(|tears| run(&all, plan.warranty_years, tears, fewer));
    let years = first.1.iter().zip(&one_year).map(|(option, risk)| WarrantyYear {
        chance: risk.chance,
        redone: redone(option, risk),
        share: 0.0,
    });
    let years: Vec<WarrantyYear> = years.collect();
    let shares = first.0.iter().zip(&years).map(|(at, year)| (*at, yearly_share(year))).collect();
    let shares: Vec<YearlyShare> = with_lapses(inputs, options, shares);
    let [stay, come_through] = bounds.map(|all| all.into_iter().map(|risk| risk.without_paint));
    let all = shares.iter().zip(years).zip(term).zip(stay.zip(come_through));
    for (((&(at, share), year), risk), tears) in all {
        let option = &mut options[at];
        option.warranty_year = Some(WarrantyYear { share, ..year });
        if matches!(option.outcome, Outcome::Bead { .. }) {
            option.tears = Some(Span { low: tears.0, high: tears.1 });
        }
        // What mends nothing has no callback to be paid for: it leaves the repair to be paid later.
        if option.outcome != Outcome::Unchanged {
            let years = plan.warranty_years;
            option.expected = Some(with_callbacks(inputs.job, option.total(), share, years));
            if plan.prices.add_callbacks {
                option.hold_for_callbacks(plan);
            }
        }
        option.callback = Some(risk);
    }
    lapses(inputs, options);
    shares.into_iter().filter(|(at, _)| options[*at].expected.is_some()).collect()
}

/// Whether an option lays the same bead in the room as it is.
fn is_bare_bead(option: &RepairOption) -> bool {
    option.method == MethodId::Reseal
}

/// The chance a year of what movement does not tell.
fn yearly_lapse(inputs: &OptionInputs<'_>, option: &RepairOption) -> f64 {
    inputs.catalog.method(option.method).map_or(0.0, |method| method.lapses.to_fraction())
}

/// What a year costs with its lapses: a visit each, or the bare bead's callbacks where the air was not
/// held.
fn with_lapses(
    inputs: &OptionInputs<'_>,
    options: &[RepairOption],
    shares: Vec<YearlyShare>,
) -> Vec<YearlyShare> {
    let bare = shares.iter().find(|(at, _)| is_bare_bead(&options[*at])).map(|(_, share)| *share);
    let one = |(at, share): YearlyShare| {
        let lapse = yearly_lapse(inputs, &options[at]);
        let held = matches!(options[at].outcome, Outcome::Bead { held: true, .. });
        let then = bare.filter(|_| held).map_or(share + VISIT, |bare| bare.max(share));
        (at, (1.0 - lapse) * share + lapse * then)
    };
    shares.into_iter().map(one).collect()
}

/// What joints and worlds do not tell: each method has ways of its own to bring the crew back, at the
/// catalog's chance a year. Where humidity is held, a year in which it is not has the chance of the same
/// bead in the room as it is.
fn lapses(inputs: &OptionInputs<'_>, options: &mut [RepairOption]) {
    let bare = options.iter().find(|option| is_bare_bead(option));
    let bare: Option<Risk> = bare.and_then(|option| option.callback.clone());
    let years = i32::try_from(inputs.job.plan.warranty_years.max(1)).unwrap_or(i32::MAX);
    for option in options {
        let yearly = yearly_lapse(inputs, option);
        let Some(risk) = option.callback.as_mut().filter(|_| yearly > 0.0) else { continue };
        let lapse = 1.0 - (1.0 - yearly).powi(years);
        let held = matches!(option.outcome, Outcome::Bead { held: true, .. });
        let bare = bare.as_ref().filter(|_| held);
        // A lapse of anything else is a callback; of the held air, what the bare room makes of the bead.
        let mixed = |own: f64, of_bare: fn(&Risk) -> f64| {
            (1.0 - lapse) * own + lapse * bare.map_or(1.0, |bare| of_bare(bare).max(own))
        };
        risk.chance = mixed(risk.chance, |bare| bare.chance);
        risk.interval.low = mixed(risk.interval.low, |bare| bare.interval.low);
        risk.interval.high = mixed(risk.interval.high, |bare| bare.interval.high);
        risk.without_paint = mixed(risk.without_paint, |bare| bare.without_paint);
        let range = &mut risk.without_paint_interval;
        range.low = mixed(range.low, |bare| bare.without_paint_interval.low);
        range.high = mixed(range.high, |bare| bare.without_paint_interval.high);
        option.tears = option.tears.map(|tears| Span {
            low: mixed(tears.low, |bare| bare.without_paint),
            high: mixed(tears.high, |bare| bare.without_paint),
        });
    }
}

/// A year of warranty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WarrantyYear {
    /// The chance of a callback in it, 0 to 1, of what moves alone.
    pub chance: f64,
    /// The share of the length that is done again in it, on average, 0 to 1.
    pub redone: f64,
    /// What it is expected to cost, as a share of the price; what else may bring the crew back is in it.
    pub share: f64,
}

/// The share of the length that is open when the crew is called back in a year, on average over all years.
fn redone(tried: &RiskOption, one_year: &Risk) -> f64 {
    let lengths = tried.pictures.iter().flatten().map(|joint| joint.length.to_m());
    #[expect(clippy::cast_precision_loss, reason = "a few pictures")]
    let all = Length::m(lengths.sum::<f64>() / tried.pictures.len().max(1) as f64);
    (one_year.opens_if_called.to_m() / all.to_m().max(1e-9)).min(one_year.chance)
}

/// What a year is expected to cost: the chance of a callback in it times a visit's share of the price,
/// and the share of the length that is open then, as that is done again.
fn yearly_share(year: &WarrantyYear) -> f64 {
    year.chance * VISIT + (1.0 - VISIT) * year.redone
}

/// A price with the callbacks of `years` of warranty at present value. Every year is taken to be like
/// the first, as what opens is made good the same way each time; expenses fall in the middle of it.
pub(super) fn with_callbacks(job: &Job, total: Money, yearly_share: f64, years: u32) -> Money {
    let rate = job.plan.discount.to_fraction();
    let worth: f64 = (0..years).map(|year| present_value(rate, f64::from(year) + 0.5)).sum();
    total + total.times(yearly_share * worth)
}

/// How an option's joints are put to the trials; `None` where nothing is mended.
fn risk_option(inputs: &OptionInputs<'_>, option: &RepairOption, years: u32) -> Option<RiskOption> {
    let days = crate::air::DAYS * years.max(1) as usize;
    let callback = &inputs.job.plan.callback;
    Some(match option.outcome {
        Outcome::Bead { held, lay } => reseal(inputs, if held { inputs.held } else { 1.0 }, lay, days)?,
        // A line is there by design; it is judged by how much it grows beyond what it is now.
        Outcome::Line => staying(inputs, callback.widest, days),
        Outcome::Covered => staying(inputs, OVERLAP, days),
        Outcome::Glued => glued(inputs, years, days),
        Outcome::Boards { moves } => {
            // New boards of wood are hung as wet as they have become; the same boards as they are.
            if option.buys_boards && moves >= 1.0 {
                let hung = |state: &SectionState| {
                    let above = (state.before_install.hung_at - state.settled.mean()).to_pct();
                    Start::Above { mean: above, sd: DRIED_TO }
                };
                unsealed_from(inputs, moves, hung, callback.widest, days)
            } else {
                let start = if moves >= 1.0 { Start::AsToday } else { DRIED };
                unsealed(inputs, (moves, start), callback.widest, days)
            }
        }
        Outcome::Unchanged => unchanged(inputs, days),
    })
}

/// Movement per per cent of moisture of a section's boards, as a fraction of their width.
fn per_pct(job: &Job, catalog: &Catalog, state: &SectionState) -> f64 {
    let board = &job.surfaces[state.surface].sections[state.section].board;
    catalog.species(&board.species).map_or(0.0, |species| species.coefficient(board.ring_angle))
}

/// Whether a joint gets a bead whose movement is known: those, in order, are the ones the trials of a
/// bead see.
pub(super) const fn is_sealed(state: &JointState) -> bool {
    state.treated && state.section.is_some() && state.gap.is_some()
}

/// Joints sealed again on the day of sealing, with beads laid so, in a room that keeps this share of its
/// swing; `None` without a sealant.
fn reseal(inputs: &OptionInputs<'_>, held: f64, lay: BeadLay, days: usize) -> Option<RiskOption> {
    let OptionInputs { job, catalog, layouts, sections, joints, seal_day, .. } = *inputs;
    let beads = LaidBeads::planned(job, catalog, sections, lay)?;
    let swing = |state: &SectionState| SectionMovement { worlds: state.worlds.swings(seal_day, days, held) };
    let pictures = Pictures::new(sections);
    let one = |pictured: PicturedJoint| {
        let PicturedJoint { state, boards, usual } = pictured;
        let joint = &layouts[state.surface].joints[state.joint];
        let section = state.section?;
        let gap = state.gap?.gap.mean;
        let motion = motion(joint, &state, sections)?;
        let of_all = |then: Length| gap + (then - gap) * boards;
        let width = of_all(motion.signed_gap_on(seal_day)).max(Length::ZERO);
        // Where open joints alone are sealed, one that is shut here is left out.
        let works = job.plan.scope == Scope::EveryBoardJoint || gap >= job.plan.open_from;
        let bead = beads.of(section).filter(|_| lay.slot(width) >= job.plan.narrowest);
        let gaps = SectionGaps { mean: usual, ..sections[section].gaps };
        let (more, moves) = moves_like_its_gap(&gaps, pictured.gap_of_one()?);
        let power = bead.map_or(1.0, |bead| bead.grows_with_gap(width));
        let scatter = scatter_over_gap(&sections[section].gaps, state.gap?, power);
        let most = of_all(motion.extremes_from(seal_day).1);
        let (across, along) = slides(job, joint, state.surface);
        let slide = motion.sliding(across, along).slide_from(seal_day) * held;
        Some(RiskJoint {
            section,
            length: if works { joint.length() } else { Length::ZERO },
            across: if works { joint.moves_across * (more * boards) } else { Length::ZERO },
            bead: bead.map(|bead| bead.limits(width).sliding(slide)),
            open_from: job.plan.callback.seen_from,
            scatter,
            moves: moves.min(scatter).min(Species::SCATTER.hypot(RING_SCATTER)),
            lost: works && tongue(job, state.surface, joint).is_some_and(|tongue| most >= tongue),
        })
    };
    let pictured = |picture: usize| -> Vec<RiskJoint> {
        let sealed = joints.iter().enumerate().filter(|(_, state)| is_sealed(state));
        sealed.filter_map(|joint| one(pictures.joint(picture, joint, sections))).collect()
    };
    Some(RiskOption {
        movements: sections.iter().map(swing).collect(),
        pictures: (0..pictures.count()).map(pictured).collect(),
        picture_of: Arc::clone(&pictures.of_world),
    })
}

/// By what factor the boards at a joint move more than their section's, and the scatter that is left
/// of the ratio of their movement to their gap (standard deviation of its logarithm).
///
/// Boards that have opened more do so because they move more, or because they were wetter. Of two
/// causes that add up, the first takes the part that its variance has.
pub(super) fn moves_like_its_gap(section: &SectionGaps, joint: GapEstimate) -> (f64, f64) {
    let mean = section.mean.to_m().max(1e-6);
    let boards = Species::SCATTER.hypot(RING_SCATTER);
    let all = (section.scatter.to_m() / mean).clamp(boards, 1.0);
    if !joint.measured {
        // Movement and gap share the boards' own factor: it drops out of their ratio.
        return (1.0, (all * all - boards * boards).max(0.0025).sqrt().min(0.5));
    }
    let part = (boards / all).powi(2);
    let wider = (joint.gap.mean.to_m().max(0.2 * mean) / mean).ln();
    ((part * wider).exp(), boards * (1.0 - part).max(0.1).sqrt())
}

/// The scatter of the ratio of a joint's movement to a power of its gap, as [`moves_like_its_gap`] has it
/// for the gap itself.
///
/// Of a joint that was measured the gap is known, so movement alone is left. Of one that was not, movement
/// and gap share the boards' own factor, which drops out only where the power is 1.
fn scatter_over_gap(section: &SectionGaps, joint: GapEstimate, power: f64) -> f64 {
    let (_, at_one) = moves_like_its_gap(section, joint);
    if joint.measured {
        return at_one;
    }
    let boards = Species::SCATTER.hypot(RING_SCATTER);
    ((1.0 - power) * boards).hypot(power * at_one)
}

/// Joints left as they are: those whose gap shows are open, the others open when they widen so far.
fn unchanged(inputs: &OptionInputs<'_>, days: usize) -> RiskOption {
    let callback = &inputs.job.plan.callback;
    let mut option = unsealed(inputs, (1.0, Start::AsToday), callback.widest, days);
    let pictures = Pictures::new(inputs.sections);
    let of_picture = |picture: usize| -> Vec<RiskJoint> {
        let edges = inputs.joints.iter().enumerate().filter(|(_, state)| is_board_edge(inputs, state));
        let mut joints = option.joints().to_vec();
        for (joint, edge) in joints.iter_mut().zip(edges) {
            let PicturedJoint { state, boards, .. } = pictures.joint(picture, edge, inputs.sections);
            let gap = state.gap.map_or(Length::ZERO, |gap| gap.gap.mean);
            joint.across = joint.across * boards;
            joint.lost = gap >= callback.seen_from;
            joint.open_from = (callback.seen_from - gap).max(Length::mm(0.01));
        }
        joints
    };
    let pictured = (0..pictures.count()).map(of_picture).collect();
    option.pictures = pictured;
    option.picture_of = Arc::clone(&pictures.of_world);
    option
}

/// Boards that stay up, with no bead between them: they move from the day on which the crew can come. A joint
/// counts as open from `open_from` on.
fn staying(inputs: &OptionInputs<'_>, open_from: Length, days: usize) -> RiskOption {
    let from = lead(inputs.job);
    let option = bare(inputs, |state| state.worlds.swings(from, days, 1.0), open_from);
    let pictures = Pictures::new(inputs.sections);
    let of_picture = |picture: usize| -> Vec<RiskJoint> {
        let edges = inputs.joints.iter().enumerate().filter(|(_, state)| is_board_edge(inputs, state));
        let boards = edges.map(|edge| pictures.joint(picture, edge, inputs.sections).boards);
        let joints = option.joints().iter().zip(boards);
        joints.map(|(joint, boards)| RiskJoint { across: joint.across * boards, ..*joint }).collect()
    };
    let pictured = (0..pictures.count()).map(of_picture).collect();
    RiskOption { pictures: pictured, picture_of: Arc::clone(&pictures.of_world), ..option }
}

/// Boards fitted as `start` says, which move by `moves` of what wood does, with no bead between them; a
/// joint counts as open from `open_from` on.
fn unsealed(
    inputs: &OptionInputs<'_>,
    (moves, start): (f64, Start),
    open_from: Length,
    days: usize,
) -> RiskOption {
    unsealed_from(inputs, moves, |_| start, open_from, days)
}

/// Whether a joint lies between two boards of a section.
fn is_board_edge(inputs: &OptionInputs<'_>, state: &JointState) -> bool {
    let joint = &inputs.layouts[state.surface].joints[state.joint];
    state.section.is_some() && joint.kind == JointKind::BoardEdge
}

/// The same, where boards start differently by section.
fn unsealed_from(
    inputs: &OptionInputs<'_>,
    moves: f64,
    start: impl Fn(&SectionState) -> Start,
    open_from: Length,
    days: usize,
) -> RiskOption {
    let swings = |state: &SectionState| {
        let per_pct = moves * per_pct(inputs.job, inputs.catalog, state);
        state.worlds.settled_swings(days, per_pct, start(state))
    };
    bare(inputs, swings, open_from)
}

/// Joints between boards without a bead, which move by these swings.
fn bare(
    inputs: &OptionInputs<'_>,
    swings: impl Fn(&SectionState) -> Arc<[Swing]>,
    open_from: Length,
) -> RiskOption {
    let swing = |state: &SectionState| SectionMovement { worlds: swings(state) };
    let scatter = Species::SCATTER.hypot(RING_SCATTER);
    let edges = inputs.joints.iter().filter(|state| is_board_edge(inputs, state)).filter_map(|state| {
        let joint = &inputs.layouts[state.surface].joints[state.joint];
        let section = state.section?;
        Some(RiskJoint {
            section,
            length: joint.length(),
            across: joint.moves_across,
            bead: None,
            open_from,
            scatter,
            moves: scatter,
            lost: false,
        })
    });
    RiskOption::alike(inputs.sections.iter().map(swing).collect(), edges.collect())
}

/// Splined joints: the glue line and the board beside it stretch together, by what wood takes across
/// the grain before it splits.
fn glued(inputs: &OptionInputs<'_>, years: u32, days: usize) -> RiskOption {
    let mut option = staying(inputs, inputs.job.plan.callback.seen_from, days);
    // Wood loses nothing as sealant does by curing and by age.
    let capability = &inputs.catalog.capability;
    let splits_at = SPLITS_AT * capability.median / capability.after(years).median;
    for joint in option.pictures.iter_mut().flatten() {
        joint.bead = Some(MovementLimits::breaks_at(joint.across * splits_at));
    }
    option
}
