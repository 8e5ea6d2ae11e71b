//! Why the joints opened and how they will move: everything known, in one set of plausible worlds.
//!
//! A world is one full account of what nobody measured exactly: the moisture of the house, what is
//! behind the boards, how much the paint lets through, how wet the boards came, how much the lot
//! shrinks, the meter's offset, and what happened on top of drying. Every world runs the real physics
//! from the install on; then every reading weighs the worlds, and whatever is said of cause, install,
//! present and future is read off the same weights. So the answers cannot contradict each other.
//!
//! Read [`Evidence`] for what was seen, `world` and `ensemble` for the physics, `gaps` and `weigh` for how
//! the readings count, [`Belief`] for what comes out.

mod air;
mod cause;
mod clues;
mod draws;
mod ensemble;
mod evidence;
mod failures;
mod first;
mod gaps;
mod imagined;
mod marks;
mod next_reading;
mod particles;
mod priors;
mod room_weight;
mod room_worlds;
mod scatter;
mod surprise;
mod today;
mod weigh;
mod world;

pub use cause::{Cause, CausePriors, Hypothesis, OtherCause};
pub use clues::{Clue, ClueKind};
pub use evidence::{GapEvidence, LaterGaps, MeterEvidence, RoomEvidence, SectionEvidence, log_sum};
pub use imagined::{Imagined, Visit, imagine};
pub use marks::{AgainstMarks, Mark, against_marks};
pub use next_reading::Reading;
pub use particles::{Course, Particle};
pub use priors::{Prior, Priors};
pub use room_worlds::{Extremes, Phase, RoomKnown, RoomWorlds, Shelter, StackCourse, WorldBoards, resample};
pub use surprise::{Conflict, Doubted};
pub use today::SectionToday;
pub use world::BuildUp;

use rayon::prelude::*;

use crate::air::{Air, DAYS, IndoorAir, LoggedAir, Station};
use crate::measure::{Estimate, Humidity, Moisture, Span, Temperature};
use air::RoomAir;
use draws::Draws;
use ensemble::LANES;
use first::first_worlds;
use particles::{PARTICLES, choose, run_on};
use weigh::{ACCOUNTS, Accounts, Counts, Prepared, Scale, accounts};
use world::{Maker, Span as Times, Worlds};

/// Worlds of the first batch, and of each one after it.
const FIRST: usize = 3072;
const MORE: usize = 2048;
/// Batches at most.
const BATCHES: usize = 4;
/// So many worlds must count in effect.
pub const ENOUGH: f64 = 400.0;
/// Days after the visit that worlds are followed: three years and the rest of a season.
pub const HORIZON: usize = 3 * DAYS;
/// Where the random sequences start; any figure would do.
const SEED: u64 = 20_240_229;
/// Boards of unknown age are taken to be this old, days.
const USUAL_AGE: i64 = 400;

/// What is known of a job.
#[derive(Debug, Clone)]
pub struct Evidence<'a> {
    /// What the job says of the room's air.
    pub air: &'a IndoorAir,
    /// What a logger saw of it.
    pub logged: Option<&'a LoggedAir>,
    /// Places with their typical year.
    pub stations: &'a [Station],
    /// The visit's day of the year.
    pub visit: i64,
    /// Days from the install to the visit, if known.
    pub age: Option<i64>,
    /// The boards that dry alike.
    pub build_ups: &'a [BuildUp],
    /// The sections.
    pub sections: &'a [SectionEvidence<'a>],
    /// Readings of the room's hygrometer.
    pub rooms: &'a [RoomEvidence],
}

/// What follows from everything known.
#[derive(Debug, Clone, PartialEq)]
pub struct Belief {
    /// How many worlds count in effect: (Σw)²/Σw².
    pub effective: f64,
    /// How many were tried.
    pub tried: usize,
    /// Probability that each cause plays a part, in the order of [`Cause::ALL`].
    pub causes: [f64; 6],
    /// The likeliest account, and its probability.
    pub account: (Hypothesis, f64),
    /// What each kind of reading argues for.
    pub clues: Vec<Clue>,
    /// The reading that would settle most of the doubt about the causes, with the share that it is
    /// expected to remove.
    pub most_informative: Option<(Reading, f64)>,
    /// Readings that do not fit the rest.
    pub conflicts: Vec<Conflict>,
    /// The meter's offset, per cent moisture.
    pub meter_offset: Estimate<Moisture>,
    /// The worlds that count, each as much as any other.
    pub particles: Vec<Particle>,
    /// Each section's joints today in them, measured or not: by section, by world.
    pub sections: Vec<Vec<SectionToday>>,
    /// The moisture of each build-up in them.
    pub courses: Vec<Course>,
    /// The usual year of the room: mean over the worlds.
    pub year: Vec<Air>,
    /// Where its humidity lies nine times in ten, by day of the year.
    pub humidity: Vec<Span<Humidity>>,
    /// Transfer at face and back of each build-up, kg/(s·m²·Pa): geometric mean over the worlds.
    pub transfer: Vec<[f64; 2]>,
}

/// Worlds with what they weigh.
struct Weighed {
    draws: Draws,
    worlds: Worlds,
    /// The same, made ready for weighing.
    prepared: Vec<Prepared>,
    /// By how much the log weights are corrected for where worlds were drawn.
    corrections: Vec<f64>,
    /// Log weights of the accounts, so corrected.
    logs: Vec<Accounts>,
    /// Weights of the worlds, adding up to 1.
    weights: Vec<f64>,
}

/// Weighs worlds by everything known. `None` if the room's air cannot be worked out, or there are no
/// boards.
pub fn believe(evidence: &Evidence<'_>, causes: &CausePriors, priors: &Priors) -> Option<Belief> {
    if evidence.build_ups.is_empty() || evidence.sections.is_empty() {
        return None;
    }
    let room = RoomAir::new(evidence.air, evidence.logged, evidence.stations, priors)?;
    let last = evidence
        .sections
        .iter()
        .flat_map(|section| {
            let later = section.later.iter().map(|later| later.day);
            later.chain(section.meter.iter().map(|reading| reading.day))
        })
        .chain(evidence.rooms.iter().map(|reading| reading.day))
        .fold(0, i64::max);
    let horizon = i64::try_from(HORIZON).unwrap_or(i64::MAX);
    let span = Times {
        visit: evidence.visit,
        age: evidence.age.unwrap_or(USUAL_AGE).max(0),
        last: last.clamp(0, horizon - 1),
    };
    let maker = Maker { room: &room, build_ups: evidence.build_ups, span, priors };
    let scale = Scale::new(evidence.sections, evidence.rooms, &maker, causes);
    let weighed = weigh_worlds(&maker, &scale, causes);
    let particles = choose(&scale, &weighed.prepared, &weighed.weights, |world| weighed.draws.is_wet(world));
    let (courses, air) = run_on(&maker, &weighed.worlds, &particles, horizon, SEED + 99);
    let odds = Odds::new(&weighed, &Reweighed::all(&weighed));
    Some(Belief {
        effective: effective(&weighed.weights),
        tried: weighed.weights.len(),
        causes: odds.causes,
        account: odds.account,
        clues: clues::clues(&scale, &weighed),
        most_informative: next_reading::most_informative(&scale, &weighed, &odds),
        conflicts: surprise::conflicts(&scale, &weighed, evidence),
        meter_offset: meter_offset(&scale, &weighed),
        year: year(&room, &air),
        humidity: humidity(&room, &air),
        transfer: transfer(&weighed.worlds, &particles),
        sections: today::sections_today(&scale, &weighed.prepared, &particles, SEED + 500),
        particles,
        courses,
    })
}

/// The usual year of a room of which nothing was measured; `None` if it names a station that is not in
/// `stations`, or the program's own table of stations is damaged.
pub fn usual_year(
    air: &IndoorAir,
    logged: Option<&LoggedAir>,
    stations: &[Station],
    priors: &Priors,
) -> Option<Vec<Air>> {
    Some(RoomAir::new(air, logged, stations, priors)?.usual_year())
}

/// Draws worlds until enough of them count, or the last batch is drawn.
fn weigh_worlds(maker: &Maker<'_>, scale: &Scale<'_>, causes: &CausePriors) -> Weighed {
    let mut draws = Draws::expected(maker.dims(), FIRST, causes.wet_at_install, SEED);
    let mut worlds = first_worlds(maker, &draws);
    let mut own: Vec<Accounts> = Vec::new();
    let mut prepared: Vec<Prepared> = Vec::new();
    let mut batch = 1;
    loop {
        let fresh = (prepared.len()..draws.len()).into_par_iter();
        prepared.par_extend(fresh.map(|world| scale.prepare(&worlds, world)));
        let fresh = prepared[own.len()..].par_iter();
        own.par_extend(fresh.map(|world| scale.weigh(world, Counts::ALL)));
        let corrections = draws.log_corrections();
        let corrected = |(logs, correction): (&Accounts, &f64)| logs.map(|log| log + correction);
        let logs: Vec<Accounts> = own.iter().zip(&corrections).map(corrected).collect();
        let weights = normalized(&logs);
        if batch == BATCHES || effective(&weights) >= ENOUGH {
            return Weighed { draws, worlds, prepared, corrections, logs, weights };
        }
        let from = draws.len();
        draws.refine(&weights, MORE, SEED + batch as u64);
        worlds.append(maker.follow(&draws, from));
        batch += 1;
    }
}

/// Weights of worlds, adding up to 1.
fn normalized(logs: &[Accounts]) -> Vec<f64> {
    let each: Vec<f64> = logs.iter().map(|logs| evidence::log_sum(logs)).collect();
    let all = evidence::log_sum(&each);
    each.iter().map(|log| (log - all).exp()).collect()
}

/// How many worlds count in effect, by their weights.
pub fn effective(weights: &[f64]) -> f64 {
    let sum: f64 = weights.iter().sum();
    sum * sum / weights.iter().map(|weight| weight * weight).sum::<f64>().max(f64::MIN_POSITIVE)
}

/// So many worlds are weighed anew to see what a reading does; every one of them would tell little more.
const SAMPLED: usize = 1024;

/// Some worlds, weighed anew.
struct Reweighed {
    worlds: Vec<usize>,
    logs: Vec<Accounts>,
}

impl Reweighed {
    /// All worlds, by everything known.
    fn all(weighed: &Weighed) -> Self {
        Self { worlds: (0..weighed.logs.len()).collect(), logs: weighed.logs.clone() }
    }

    /// A sample of the worlds, by what counts.
    fn sample(scale: &Scale<'_>, weighed: &Weighed, counts: Counts) -> Self {
        let step = weighed.prepared.len().div_ceil(SAMPLED).max(1);
        let worlds: Vec<usize> = (0..weighed.prepared.len()).step_by(step).collect();
        let weigh = |&world: &usize| {
            if counts == Counts::ALL {
                return weighed.logs[world];
            }
            let own = scale.weigh(&weighed.prepared[world], counts);
            own.map(|log| log + weighed.corrections[world])
        };
        let logs = worlds.par_iter().map(weigh).collect();
        Self { worlds, logs }
    }
}

/// What weights say of the causes.
struct Odds {
    causes: [f64; 6],
    account: (Hypothesis, f64),
    /// Probability of each account, boards right and wet.
    of_accounts: [[f64; ACCOUNTS]; 2],
}

impl Odds {
    fn new(weighed: &Weighed, reweighed: &Reweighed) -> Self {
        let all = evidence::log_sum(reweighed.logs.as_flattened());
        let mut of_accounts = [[0.0; ACCOUNTS]; 2];
        for (world, logs) in reweighed.worlds.iter().zip(&reweighed.logs) {
            let own = &mut of_accounts[usize::from(weighed.draws.is_wet(*world))];
            for (sum, log) in own.iter_mut().zip(logs) {
                *sum += (log - all).exp();
            }
        }
        let each = || {
            let of = |wet: bool| {
                let own = of_accounts[usize::from(wet)];
                accounts().into_iter().zip(own).map(move |(account, p)| (Hypothesis { wet, ..account }, p))
            };
            of(false).chain(of(true))
        };
        let causes =
            Cause::ALL.map(|cause| each().filter(|(account, _)| account.has(cause)).map(|(_, p)| p).sum());
        let account = each().max_by(|a, b| a.1.total_cmp(&b.1)).unwrap_or((Hypothesis::PLAIN, 0.0));
        Self { causes, account, of_accounts }
    }
}

impl Belief {
    /// The probability that a cause plays a part, 0 to 1.
    pub fn of(&self, cause: Cause) -> f64 {
        let at = Cause::ALL.iter().position(|known| *known == cause).unwrap_or(0);
        self.causes[at]
    }

    /// How much the lot of boards shrinks against its species: mean over the worlds.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn mean_lot(&self) -> f64 {
        self.particles.iter().map(|particle| particle.lot).sum::<f64>() / self.particles.len().max(1) as f64
    }
}

fn meter_offset(scale: &Scale<'_>, weighed: &Weighed) -> Estimate<Moisture> {
    let each = weighed.weights.par_iter().enumerate().filter(|(_, weight)| **weight > 1e-9).map(
        |(world, weight)| {
            let (mean, square) = scale.offset(&weighed.worlds, world);
            (weight * mean, weight * square)
        },
    );
    let each: Vec<(f64, f64)> = each.collect();
    let (mean, square) = each.iter().fold((0.0, 0.0), |sum, own| (sum.0 + own.0, sum.1 + own.1));
    Estimate { mean: Moisture::pct(mean), sd: Moisture::pct((square - mean * mean).max(0.0).sqrt()) }
}

/// The room's usual year: the mean of the worlds' vapor pressures, without spells of their own.
#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
fn year(room: &RoomAir, air: &[ensemble::AirLanes]) -> Vec<Air> {
    (0..DAYS)
        .map(|day| {
            let mut step = *room.day(day);
            step.by_spell = 0.0;
            let each = air.iter().flat_map(|group| (0..LANES).map(|lane| step.vapor_in(group, lane)));
            let mean = each.map(f64::from).sum::<f64>() / (air.len() * LANES) as f64;
            Air {
                temperature: Temperature::celsius(room.celsius(day)),
                humidity: Humidity::fraction(mean / f64::from(step.saturation)),
            }
        })
        .collect()
}

/// Where the room's humidity lies nine times in ten, a spell's own weather included.
fn humidity(room: &RoomAir, air: &[ensemble::AirLanes]) -> Vec<Span<Humidity>> {
    (0..DAYS)
        .map(|day| {
            let mut step = *room.day(day);
            // Each world's first spell stands for any spell's weather.
            (step.spell, step.into_spell) = (0, 0.0);
            let each = air.iter().flat_map(|group| (0..LANES).map(|lane| step.vapor_in(group, lane)));
            let mut each: Vec<f64> = each.map(|vapor| f64::from(vapor / step.saturation)).collect();
            let (low, high) = (quantile(&mut each, 0.05), quantile(&mut each, 0.95));
            Span { low: Humidity::fraction(low), high: Humidity::fraction(high) }
        })
        .collect()
}

/// A transfer that lets nothing through, kg/(s·m²·Pa).
const SHUT: f64 = 1e-14;

fn transfer(worlds: &Worlds, particles: &[Particle]) -> Vec<[f64; 2]> {
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    let count = particles.len() as f64;
    let of = |followed: &world::Followed| {
        [0, 1].map(|side| {
            let logs = particles.iter().map(|p| {
                let own = followed.boards[p.world / LANES].transfer[side][p.world % LANES];
                f64::from(own).max(SHUT).ln()
            });
            let mean = (logs.sum::<f64>() / count).exp();
            if mean > 2.0 * SHUT { mean } else { 0.0 }
        })
    };
    worlds.build_ups.iter().map(of).collect()
}

/// The value that a share `at` of the values is below; the values get into another order.
#[expect(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "hundreds of values"
)]
pub fn quantile(values: &mut [f64], at: f64) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    let place = at.clamp(0.0, 1.0) * (values.len() - 1) as f64;
    let (below, share) = (place as usize, place.fract());
    let (_, low, above) = values.select_nth_unstable_by(below, f64::total_cmp);
    let high = above.iter().copied().min_by(f64::total_cmp).unwrap_or(*low);
    *low + (high - *low) * share
}

impl Course {
    /// Moisture at install: mean and the interval that holds it nine times in ten.
    pub fn install(&self) -> (Moisture, Span<Moisture>) {
        let mut each = self.installed.clone();
        #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
        let mean = each.iter().sum::<f64>() / each.len().max(1) as f64;
        let (low, high) = (quantile(&mut each, 0.05), quantile(&mut each, 0.95));
        (Moisture::pct(mean), Span { low: Moisture::pct(low), high: Moisture::pct(high) })
    }

    /// The chance, 0 to 1, that the boards were wetter than this at install.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn wetter_at_install(&self, than: Moisture) -> f64 {
        let wetter = self.installed.iter().filter(|moisture| **moisture > than.to_pct()).count();
        wetter as f64 / self.installed.len().max(1) as f64
    }

    /// Moisture on a day counted from the visit: mean and standard deviation over the worlds.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn on(&self, day: i64) -> Estimate<Moisture> {
        let own = &self.moisture[self.index(day)];
        let count = own.len().max(1) as f64;
        let mean = own.iter().map(|m| f64::from(*m)).sum::<f64>() / count;
        let square = own.iter().map(|m| (f64::from(*m) - mean).powi(2)).sum::<f64>() / count;
        Estimate { mean: Moisture::pct(mean), sd: Moisture::pct(square.sqrt()) }
    }
}

/// Number of worlds that count.
pub const COUNT: usize = PARTICLES;

/// A standard normal number for each world, evenly spread, in an order that has nothing to do with the
/// worlds'.
#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
pub fn normal_of(world: usize, count: usize) -> f64 {
    use statrs::distribution::{ContinuousCDF as _, Normal};
    let shuffled = (world * 199 + 67) % count;
    Normal::standard().inverse_cdf((shuffled as f64 + 0.5) / count as f64)
}

#[cfg(test)]
mod peer;
