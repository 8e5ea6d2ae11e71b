//! A house as the program imagines one before anything is measured, and what would be read in it.
//!
//! One world is drawn from everything that is expected, its boards are followed through their years, and
//! its joints, beads, meter and hygrometer are drawn by the same rules by which readings weigh the worlds.
//! A program whose sums are right finds such a house's truth anywhere in what it says with the chance that
//! it says (Talts, Betancourt, Simpson, Vehtari, Gelman 2018, simulation-based calibration, from memory).
//!
//! What [`super::believe`] takes in steps (the lot, the meter's offset, a section's own part, the sets of
//! what joints differ by) is drawn here from the whole of what the steps stand for, and every joint is
//! followed by itself. So the steps are tried as well.

use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use statrs::statistics::Statistics as _;

use super::air::RoomAir;
use super::cause::{Cause, CausePriors, Hypothesis, OtherCause};
use super::draws::Draws;
use super::ensemble::LANES;
use super::evidence::{GapEvidence, MeterEvidence, RoomEvidence, SectionEvidence};
use super::failures;
use super::gaps::{MOVED, own_opening};
use super::particles::{Course, Particle, run_on};
use super::priors::Priors;
use super::scatter::{Density, PICK, Set};
use super::weigh::SURPLUSES;
use super::world::{Maker, Span as Times};
use super::{Evidence, HORIZON, USUAL_AGE};
use crate::measure::{Humidity, Length, Moisture};
use crate::survey::Failure;

/// What somebody reads on the visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Visit {
    /// Gaps in each section, at most as many as it has joints.
    pub gaps: usize,
    /// Whether it is noted how the beads failed.
    pub failures: bool,
    /// Meter readings in each section.
    pub meter: usize,
    /// Whether the room's hygrometer is read.
    pub room: bool,
}

/// An imagined house.
#[derive(Debug, Clone)]
pub struct Imagined<'a> {
    /// What happened in it.
    pub hypothesis: Hypothesis,
    /// How far off its meter is.
    pub meter_offset: Moisture,
    /// Moisture of each build-up at install.
    pub installed: Vec<Moisture>,
    /// Mean gap of all joints of each section, on each of the days asked for.
    pub mean_gaps: Vec<Vec<Length>>,
    /// The sections, with what is read in them.
    pub sections: Vec<SectionEvidence<'a>>,
    /// What the hygrometer shows.
    pub rooms: Vec<RoomEvidence>,
}

/// Imagines a house of which no more is known than `known` without its readings, and what `visit` reads in
/// it; `days` from the visit, not before it, are those on which its gaps are asked for. `None` where
/// [`super::believe`] gives none.
pub fn imagine<'a>(
    known: &Evidence<'a>,
    visit: Visit,
    days: &[i64],
    (causes, priors): (&CausePriors, &Priors),
    seed: u64,
) -> Option<Imagined<'a>> {
    if known.build_ups.is_empty() || known.sections.is_empty() {
        return None;
    }
    let room = RoomAir::new(known.air, known.logged, known.stations, priors)?;
    let span = Times { visit: known.visit, age: known.age.unwrap_or(USUAL_AGE).max(0), last: 0 };
    let maker = Maker { room: &room, build_ups: known.build_ups, span, priors };
    let mut random = Random(Xoshiro256PlusPlus::seed_from_u64(seed));
    let hypothesis = happened(causes, &mut random);
    let draws = Draws::expected(maker.dims(), LANES, if hypothesis.wet { 1.0 } else { 0.0 }, seed ^ 1);
    let worlds = maker.follow(&draws, 0);
    let lot = (priors.lot_shrinkage.sd.hypot(priors.ring_shrinkage.sd) * random.normal()).exp();
    let only = Particle { world: 0, lot, account: 0 };
    let horizon = i64::try_from(HORIZON).unwrap_or(i64::MAX);
    let (courses, _) = run_on(&maker, &worlds, &[only], horizon, seed ^ 2);
    let offset = priors.meter_offset.middle + priors.meter_offset.sd * random.normal();
    let (low, high) = failures::limits(hypothesis.has(Cause::WeakSealant));
    let limit = low + (high - low) * random.uniform();
    let house = House { hypothesis, lot, offset, visit, priors, limit, picked: random.uniform() };
    let place = happened_at(known.sections, &mut random);
    let (mut sections, mut mean_gaps) = (Vec::new(), Vec::new());
    for (at, section) in known.sections.iter().enumerate() {
        let own = house.section(section, &courses[section.build_up], at == place, days, &mut random);
        sections.push(own.0);
        mean_gaps.push(own.1);
    }
    let step = maker.step_on(0);
    let humidity = 100.0 * f64::from(step.vapor_in(&worlds.air[0], 0) / step.saturation);
    Some(Imagined {
        hypothesis,
        meter_offset: Moisture::pct(offset),
        installed: courses.iter().map(|course| Moisture::pct(course.installed[0])).collect(),
        mean_gaps,
        sections,
        rooms: if visit.room { vec![hygrometer(humidity, priors, &mut random)] } else { Vec::new() },
    })
}

struct Random(Xoshiro256PlusPlus);

impl Random {
    fn uniform(&mut self) -> f64 {
        self.0.random()
    }

    fn normal(&mut self) -> f64 {
        StandardNormal.sample(&mut self.0)
    }

    fn happens(&mut self, chance: f64) -> bool {
        self.uniform() < chance
    }

    /// Index drawn in proportion to weights.
    fn index(&mut self, weights: &[f64]) -> usize {
        let mut left = self.uniform() * weights.iter().sum::<f64>();
        let found = weights.iter().position(|weight| {
            left -= weight;
            left < 0.0
        });
        found.unwrap_or(weights.len() - 1)
    }
}

fn happened(causes: &CausePriors, random: &mut Random) -> Hypothesis {
    let wet = random.happens(causes.wet_at_install);
    let accounts: Vec<Hypothesis> =
        Hypothesis::all().into_iter().filter(|account| account.wet == wet).collect();
    let chances: Vec<f64> = accounts.iter().map(|account| causes.on_top(account)).collect();
    accounts[random.index(&chances)]
}

/// The section in which a line moved or boards got wet, if they did.
#[expect(clippy::cast_precision_loss, reason = "counts of joints")]
fn happened_at(sections: &[SectionEvidence<'_>], random: &mut Random) -> usize {
    let joints: Vec<f64> = sections.iter().map(|section| section.joints as f64).collect();
    random.index(&joints)
}

fn hygrometer(humidity: f64, priors: &Priors, random: &mut Random) -> RoomEvidence {
    let off = priors.hygrometer.sd.hypot(priors.day_humidity.sd) * random.normal();
    let says = if random.happens(0.03) { 100.0 * random.uniform() } else { humidity + off };
    RoomEvidence { day: 0, humidity: Humidity::pct(says.clamp(0.0, 100.0)) }
}

/// What all sections of an imagined house share.
struct House<'p> {
    hypothesis: Hypothesis,
    lot: f64,
    offset: f64,
    visit: Visit,
    priors: &'p Priors,
    /// Opening in mm at which beads let go.
    limit: f64,
    /// Which of the people who measure this is, 0 to 1.
    picked: f64,
}

/// A joint of an imagined section.
struct Joint {
    /// Its place among all joints of the kind, 0 to 1, and in standard deviations from their middle.
    at: f64,
    z: f64,
    is_wetted: bool,
    /// How much more its line moved, mm.
    moved: Option<f64>,
}

impl House<'_> {
    /// A section with its readings, and its mean gap on each of the days; `here` is where it happened.
    fn section<'a>(
        &self,
        known: &SectionEvidence<'a>,
        course: &Course,
        here: bool,
        days: &[i64],
        random: &mut Random,
    ) -> (SectionEvidence<'a>, Vec<Length>) {
        let came = course.installed[0];
        let on = |day: i64| f64::from(course.moisture[course.index(day)][0]);
        let today = own_opening(self.lot * known.opening(came, on(0)), random.normal());
        let set = self.set(known.joints, random);
        let joints = self.joints(&set, known.joints, here, random);
        let gaps_at = |opening: f64| self.gaps(&set, &joints, opening);
        let mean_gap_on = |&day: &i64| {
            let moved = self.lot * known.opening(on(0), on(day));
            Length::mm(gaps_at(today + moved).mean())
        };
        let mean_gaps = days.iter().map(mean_gap_on).collect();
        let gaps = self.read_gaps(&set, &gaps_at(today), random);
        let wetted = here && self.hypothesis.other_cause == OtherCause::Wetted;
        let meter = (0..self.visit.meter).map(|_| self.read_meter(on(0), wetted, random)).collect();
        (SectionEvidence { gaps, meter, later: Vec::new(), ..known.clone() }, mean_gaps)
    }

    fn set(&self, joints: usize, random: &mut Random) -> Set {
        let mut quantiles: [f64; 9] = std::array::from_fn(|_| random.uniform());
        quantiles[5] = self.picked;
        let mut set = Set::at(|dimension| usize::try_from(dimension).map_or(0.5, |at| quantiles[at]));
        if self.visit.gaps >= joints {
            set.picked = 0;
        }
        set
    }

    #[expect(clippy::cast_precision_loss, reason = "counts of joints")]
    fn joints(&self, set: &Set, count: usize, here: bool, random: &mut Random) -> Vec<Joint> {
        let other = self.hypothesis.other_cause;
        let moved = random.index(&vec![1.0; count.max(1)]);
        (0..count)
            .map(|joint| {
                let place = (joint as f64 + 0.5) / count as f64;
                let is_wetted =
                    here && other == OtherCause::Wetted && set.wetted.0 <= place && place <= set.wetted.1;
                let line_moved = here && other == OtherCause::Framing && joint == moved;
                let more = line_moved.then(|| MOVED.0 + (MOVED.1 - MOVED.0) * random.uniform());
                Joint { at: random.uniform(), z: random.normal(), is_wetted, moved: more }
            })
            .collect()
    }

    /// Gaps of all joints in mm where the section's boards have opened by so much.
    fn gaps(&self, set: &Set, joints: &[Joint], opening: f64) -> Vec<f64> {
        let density = Density::new(set, opening, self.priors.gap_gauge.sd, self.hypothesis.bonded);
        let gap = |joint: &Joint| match joint.moved {
            Some(more) => opening.max(0.0) + more,
            None => density.gap(joint.is_wetted, joint.at, joint.z),
        };
        joints.iter().map(gap).collect()
    }

    /// The joints that get measured, one after the other, and what is read of them.
    #[expect(clippy::cast_precision_loss, reason = "counts of joints")]
    fn read_gaps(&self, set: &Set, gaps: &[f64], random: &mut Random) -> Vec<GapEvidence> {
        // To the 64th of an inch, which is a part of the gauge's error; a joint can't look less than closed.
        let step = Length::inches(1.0 / 64.0).to_mm();
        let error = (self.priors.gap_gauge.sd.powi(2) - step * step / 12.0).max(0.0).sqrt();
        let looks = |gap: &f64| (gap + error * random.normal()).max(0.0);
        let looks: Vec<f64> = gaps.iter().map(looks).collect();
        let mut weights: Vec<f64> = looks.iter().map(|look| (look + PICK).powi(set.picked)).collect();
        let mut found: Vec<GapEvidence> = (0..self.visit.gaps.min(gaps.len()))
            .map(|_| {
                let joint = random.index(&weights);
                weights[joint] = 0.0;
                let width = (looks[joint] / step).round() * step;
                GapEvidence {
                    place: (joint as f64 + 0.5) / gaps.len() as f64,
                    width: Length::mm(width),
                    failed: self.failure(width, random),
                }
            })
            .collect();
        found.sort_by(|a, b| a.place.total_cmp(&b.place));
        found
    }

    fn failure(&self, width: f64, random: &mut Random) -> Failure {
        if !self.visit.failures {
            return Failure::NotNoted;
        }
        let kinds = [
            Failure::Whole,
            Failure::LetGoOneSide,
            Failure::SplitInMiddle,
            Failure::PaintTorn,
            Failure::SqueezedOut,
        ];
        kinds[random.index(&kinds.map(|kind| failures::one(width, kind, self.limit)))]
    }

    fn read_meter(&self, moisture: f64, wetted: bool, random: &mut Random) -> MeterEvidence {
        /// What meters show of wood too dry for them, per cent.
        const DRY: (f64, f64) = (7.0, 5.0);
        let damp = wetted && random.happens(0.5);
        let surplus = if damp { SURPLUSES[random.index(&[1.0; SURPLUSES.len()])] } else { 0.0 };
        let sd = self.priors.meter_reading.sd.hypot(self.priors.piece_moisture.sd);
        let usual = moisture + surplus + self.offset + sd * random.normal();
        let shown = if random.happens(0.005) { 25.0 * random.uniform() } else { usual };
        let to_half = (2.0 * shown).round() / 2.0;
        let pct = if to_half < DRY.0 { DRY.1 } else { to_half };
        MeterEvidence { pct, set_to_species: true, day: 0 }
    }
}
