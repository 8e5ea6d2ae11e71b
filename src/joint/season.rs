//! In which week to seal.
//!
//! A bead's limits go with the width it was sealed at, so the week matters: sealed when the joint is
//! widest it is only ever squeezed, when narrowest only pulled, and then on the smallest base. Every week of the coming year is tried on every joint. The best weeks are those after which
//! most of the length is expected to last, with what boards and hands scatter by: a bead that is
//! asked well under its class lasts longer than one at its edge.

use std::f64::consts::SQRT_2;

use statrs::function::erf::erfc;

use super::bead::{Demand, LaidBead, demand};
use super::motion::JointMotion;
use crate::bead::MovementLimits;
use crate::measure::{Length, Span};

/// Scatter of what beads are asked and take, as a standard deviation of its logarithm. Assumption.
const SCATTER: f64 = 0.35;

/// Weeks tried.
const WEEKS: usize = 52;

/// A joint to be sealed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SealedJoint<'a> {
    /// How it moves.
    pub motion: JointMotion<'a>,
    /// Its length.
    pub length: Length,
    /// The bead it gets.
    pub bead: &'a LaidBead,
    /// The gap past which the boards come apart: no bead holds there. `None` without a tongue.
    pub tongue: Option<Length>,
}

/// How sealing in one week would fare.
#[derive(Debug, Clone, PartialEq)]
pub struct Week {
    /// Days from the visit to the week's first day.
    pub day: usize,
    /// Length of joint whose bead stays inside its class.
    pub holds: Length,
    /// Length of joint whose bead is expected to last, with what boards and beads scatter by.
    pub lasts: Length,
    /// Length of joint over whose bead the paint is expected to stay whole, likewise.
    pub paint_lasts: Length,
    /// Length of joint too narrow to seal then.
    pub too_narrow: Length,
    /// The demand that half of the sealed length stays under, if any is sealed.
    pub typical: Option<Demand>,
}

/// The year of weeks and the best run of them.
#[derive(Debug, Clone, PartialEq)]
pub struct Season {
    /// One for each week from the visit.
    pub weeks: Vec<Week>,
    /// Length of joint in question.
    pub total: Length,
    /// Length of joint that is too narrow to seal in every week of the year.
    pub never: Length,
    /// Indices of the first and last week of the run in which the bead lasts longest.
    pub best: Span<usize>,
}

impl Season {
    /// Whether the run of best weeks takes in all of the year but for a week or two.
    pub const fn is_any_time(&self) -> bool {
        self.best.high - self.best.low >= WEEKS - 2
    }

    /// The week in the middle of the best run.
    pub fn best_week(&self) -> &Week {
        &self.weeks[usize::midpoint(self.best.low, self.best.high)]
    }

    /// Share of the joint length that holds if sealed in `week`, 0 to 1.
    pub fn share(&self, week: &Week) -> f64 {
        if self.total > Length::ZERO { week.holds.to_m() / self.total.to_m() } else { 0.0 }
    }
}

/// Tries every week of the coming year. `narrowest` is the least gap that can be sealed. `None`
/// without joints.
pub fn season(joints: &[SealedJoint<'_>], narrowest: Length) -> Option<Season> {
    let total: Length = joints.iter().map(|joint| joint.length).sum();
    if total <= Length::ZERO {
        return None;
    }
    let weeks: Vec<Week> = (0..WEEKS).map(|week| sealed_on(week * 7, joints, narrowest)).collect();
    let best = best_run(&weeks);
    let ever = |joint: &&SealedJoint<'_>| (0..WEEKS).any(|week| joint.motion.gap_on(week * 7) >= narrowest);
    let never = total - joints.iter().filter(ever).map(|joint| joint.length).sum();
    Some(Season { weeks, total, never, best })
}

/// How sealing on `day` would fare.
pub fn sealed_on(day: usize, joints: &[SealedJoint<'_>], narrowest: Length) -> Week {
    let mut week = Week {
        day,
        holds: Length::ZERO,
        lasts: Length::ZERO,
        paint_lasts: Length::ZERO,
        too_narrow: Length::ZERO,
        typical: None,
    };
    let mut demands: Vec<(Demand, f64)> = Vec::with_capacity(joints.len());
    for joint in joints {
        let sealed = joint.motion.gap_on(day);
        let (least, most) = joint.motion.extremes_from(day);
        match demand(sealed, least, most, joint.motion.slide_from(day)) {
            Some(asked) if sealed >= narrowest => {
                if joint.tongue.is_none_or(|tongue| most < tongue) {
                    let limits = joint.bead.limits(asked.sealed).sliding(asked.slides());
                    if asked.use_of(&limits) <= 1.0 {
                        week.holds = week.holds + joint.length;
                    }
                    week.lasts = week.lasts + joint.length * lasting(&asked, &limits);
                    week.paint_lasts =
                        week.paint_lasts + joint.length * lasts_at(asked.opens(), limits.paint);
                }
                demands.push((asked, joint.length.to_m()));
            }
            _ => week.too_narrow = week.too_narrow + joint.length,
        }
    }
    week.typical = median_by_length(demands);
    week
}

/// The demand that half of the length stays under, ranked by the larger of its two sides.
fn median_by_length(mut demands: Vec<(Demand, f64)>) -> Option<Demand> {
    let size = |demand: &Demand| demand.stretch.max(demand.squeeze).to_pct();
    demands.sort_by(|a, b| size(&a.0).total_cmp(&size(&b.0)));
    let half = demands.iter().map(|(_, length)| length).sum::<f64>() / 2.0;
    let mut run = 0.0;
    demands.into_iter().find_map(|(demand, length)| {
        run += length;
        (run >= half).then_some(demand)
    })
}

/// The chance that a bead with these limits lasts that is asked this. What it takes is put in the middle between
/// what shows at once and what begins out of sight.
fn lasting(asked: &Demand, limits: &MovementLimits) -> f64 {
    lasts_at(asked.opens(), limits.opening()) * lasts_at(asked.closes(), limits.closing())
}

/// The chance that what takes so much stays whole when it is asked this, of the bead or of the paint over it.
fn lasts_at(asked: Length, takes: Length) -> f64 {
    match (asked.to_m(), takes.to_m()) {
        (asked, _) if asked <= 0.0 => 1.0,
        (_, takes) if takes <= 0.0 => 0.0,
        (asked, takes) => 0.5 * erfc((asked / takes).ln() / (SCATTER * SQRT_2)),
    }
}

/// The run of weeks around the best one after which all but as much lasts: within 2 % of what lasts
/// after the best. Of weeks that are as good to within half a per cent, the soonest is the best.
fn best_run(weeks: &[Week]) -> Span<usize> {
    let lasts = |index: usize| weeks[index].lasts.to_m();
    let most = (0..weeks.len()).map(lasts).fold(0.0, f64::max);
    let top = (0..weeks.len()).find(|&at| lasts(at) >= 0.995 * most).unwrap_or(0);
    let good = |index: usize| lasts(index) >= 0.98 * most;
    let low = (0..top).rev().take_while(|&i| good(i)).last().unwrap_or(top);
    let high = (top + 1..weeks.len()).take_while(|&i| good(i)).last().unwrap_or(top);
    Span { low, high }
}
