//! How wide a section's joints are today, the ones that nobody measured among them.
//!
//! The measured joints are known but for the gauge, the better the more alike joints are. What the others are
//! is drawn in each world that counts: from how far its boards have opened, what its joints differ by, and whether wide ones were
//! picked for measuring.

use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rayon::prelude::*;

use super::Particle;
use super::cause::{Hypothesis, OtherCause};
use super::evidence::{SectionEvidence, chosen};
use super::gaps::{Drawn, LINE_MOVED, MOVED, WETTED};
use super::scatter::Opening;
use super::weigh::{Prepared, Scale, accounts};
use crate::measure::{Estimate, Length};

/// A section's joints today in one world.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SectionToday {
    /// Mean gap of all joints.
    pub mean: Length,
    /// Mean gap of those that nobody measured, and how far single ones are from it, one standard
    /// deviation.
    pub others: Estimate<Length>,
    /// How the mean goes on.
    opening: Opening,
    /// Share of its joints that were measured.
    seen: f64,
    /// How well gaps are read, mm.
    gauge: f64,
}

impl SectionToday {
    /// One of the joints that nobody measured, drawn by two numbers from 0 to 1: its gap, and how many boards open at it;
    /// none where its boards are bonded across it.
    pub fn unseen_joint(&self, at: (f64, f64)) -> (Length, f64) {
        let joint = self.opening.unseen_joint(self.seen, self.gauge, at);
        (Length::mm(joint.gap), joint.boards)
    }

    /// How many boards open at a joint of this gap, on average over what it may be.
    pub fn boards_behind(&self, gap: Length) -> f64 {
        self.opening.boards_behind(gap.to_mm(), self.gauge)
    }

    /// What the worlds' sections are told apart by: whether boards are bonded, and how far they opened, mm.
    pub const fn kind(&self) -> (bool, f64) {
        (self.opening.bonded, self.opening.today)
    }

    /// Mean gap of all joints when every board has opened by `moved` more than today.
    pub fn mean_after(&self, moved: Length) -> Length {
        (self.mean + Length::mm(self.opening.change(moved.to_mm()))).max(Length::ZERO)
    }
}

/// Each section's joints in each world that counts: by section, by world.
pub(super) fn sections_today(
    scale: &Scale<'_>,
    worlds: &[Prepared],
    particles: &[Particle],
    seed: u64,
) -> Vec<Vec<SectionToday>> {
    let accounts = accounts();
    let of = |(at, particle): (usize, &Particle)| {
        let mut random = Xoshiro256PlusPlus::seed_from_u64(seed + at as u64);
        let world =
            World { scale, world: &worlds[particle.world], lot: particle.lot, at, count: particles.len() };
        world.sections(&accounts[particle.account], &mut random)
    };
    let by_world: Vec<Vec<SectionToday>> = particles.par_iter().enumerate().map(of).collect();
    (0..scale.sections().len()).map(|section| by_world.iter().map(|own| own[section]).collect()).collect()
}

/// One world that counts.
struct World<'a> {
    scale: &'a Scale<'a>,
    world: &'a Prepared,
    lot: f64,
    /// Its index among so many.
    at: usize,
    count: usize,
}

impl World<'_> {
    fn sections(&self, account: &Hypothesis, random: &mut Xoshiro256PlusPlus) -> Vec<SectionToday> {
        let on_top = match account.other_cause {
            OtherCause::Framing => LINE_MOVED,
            OtherCause::Wetted => WETTED,
            OtherCause::Nothing | OtherCause::WeakSealant => 0,
        };
        let place = (on_top > 0).then(|| {
            let logs = self.scale.places_of(self.world, self.lot, (account.bonded, on_top));
            chosen(&logs, random.random())
        });
        let sections = self.scale.sections().iter().enumerate();
        sections
            .map(|(at, section)| {
                let here = if place == Some(at) { on_top } else { 0 };
                self.section(at, section, (account.bonded, here), random)
            })
            .collect()
    }

    #[expect(clippy::cast_precision_loss, reason = "counts of joints")]
    fn section(
        &self,
        at: usize,
        section: &SectionEvidence<'_>,
        (bonded, on_top): (bool, usize),
        random: &mut Xoshiro256PlusPlus,
    ) -> SectionToday {
        let normal = |random: &mut Xoshiro256PlusPlus| -> f64 { StandardNormal.sample(random) };
        let (measured, all) = (section.gaps.len() as f64, section.joints.max(section.gaps.len()) as f64);
        let table = self.scale.gap_table(at);
        let opened = self.scale.opened(self.world, at, self.lot);
        let seen = measured / all.max(1.0);
        let Drawn { measured: (read, variance), unseen: single, opening, moved_unseen } =
            table.draw(opened, (bonded, on_top), (&section.gaps, seen), random.random());
        let mut sum = (read + super::normal_of(self.at + 131 * at, self.count) * variance.sqrt()).max(0.0);
        let others = (all - measured).max(1.0);
        let mut unseen = others * single.mean + normal(random) * single.sd() * others.sqrt();
        // The line that moved may be among those that nobody measured.
        if on_top == LINE_MOVED && random.random::<f64>() < moved_unseen {
            unseen += MOVED.0 + (MOVED.1 - MOVED.0) * random.random::<f64>();
        }
        let unseen = unseen.max(0.0);
        if all > measured {
            sum += unseen;
        }
        SectionToday {
            mean: Length::mm((sum / all.max(1.0)).max(0.0)),
            others: Estimate { mean: Length::mm(unseen / others), sd: Length::mm(single.sd()) },
            opening,
            seen,
            gauge: self.scale.priors().gap_gauge.sd,
        }
    }
}
