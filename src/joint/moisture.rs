//! Board moisture through a usual year, for one build-up.
//!
//! [`BoardYears`] runs the drying of one build-up ([`Panel`]) through the room's year until it repeats:
//! the settled year, how long a surplus of moisture takes to leave, how far the boards lag behind the air.
//! Sections of the same build-up share one. What the boards of a job did and will do comes from the
//! plausible worlds ([`crate::belief`]), not from here.

use std::f64::consts::TAU;

use crate::air::psychrometrics::{saturation_pressure, vapor_pressure};
use crate::air::{Air, DAYS, IndoorYear};
use crate::measure::Moisture;
use crate::wood::drying::{Drying, Exposure, Panel, Wood};

/// Days from the visit over which movement is worked out: three years.
pub const HORIZON: usize = 3 * crate::air::DAYS;

/// Slices through the thickness.
const CELLS: usize = 12;
/// Seconds in a day.
const DAY: f64 = 86_400.0;
/// Years after which the slowest board counts as settled.
const MOST_YEARS: usize = 30;
/// The year repeats when its end is this near its start, kg/kg.
const REPEATS: f64 = 2e-5;
/// Surpluses of moisture, kg/kg, whose leaving is followed: a small one, and that of boards that got wet.
const SMALL: f64 = 0.02;
const WET: f64 = 0.08;

/// What one build-up's moisture does in the room's air.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardYears {
    /// Settled moisture on each day of the year, per cent.
    settled: Vec<f64>,
    /// Days until nine tenths of a small surplus are gone, counted from the visit's season.
    settles_in: Option<usize>,
    /// Share left of what boards took up that got wet, by day from the visit; none after its end.
    wetness_left: Vec<f64>,
    /// Whether neither face lets anything through.
    sealed_off: bool,
    /// Days by which the yearly wave of the boards is behind that of their equilibrium.
    lag: Option<f64>,
}

/// The air as exposure of a board.
pub(super) fn exposure(air: &Air) -> Exposure {
    Exposure {
        celsius: air.temperature.to_celsius(),
        saturation: saturation_pressure(air.temperature),
        vapour: vapor_pressure(air.temperature, air.humidity),
    }
}

impl BoardYears {
    /// Follows `panel` through `year`. `visit` is the visit's day of the year.
    pub fn new(panel: Panel, year: &IndoorYear, visit: i64) -> Self {
        let days: Vec<Exposure> = year.days.iter().map(exposure).collect();
        let emc: Vec<f64> = year.days.iter().map(|air| air.emc().to_pct()).collect();
        let mean = emc.iter().sum::<f64>() / 100.0;
        #[expect(clippy::cast_precision_loss, reason = "365 days")]
        let mut board = Drying::uniform(Wood, panel, CELLS, mean / emc.len() as f64);
        let (settled, at_visit) = settle(&mut board, &days, visit);
        let small = leaves(&at_visit, SMALL, &days, &settled, visit);
        let gone = small.iter().position(|left| *left <= 0.1);
        let settles_in = gone.or((small.len() < HORIZON).then_some(small.len()));
        let wetness_left = leaves(&at_visit, WET, &days, &settled, visit);
        let sealed_off = panel.transfer.iter().all(|transfer| *transfer <= 0.0);
        Self { lag: lag(&emc, &settled), sealed_off, settled, settles_in, wetness_left }
    }

    /// Whether neither face lets anything through: then the room's air says nothing of the boards.
    pub const fn is_sealed_off(&self) -> bool {
        self.sealed_off
    }

    /// Settled moisture on the day of the year with this index; any whole number, the year repeats.
    pub fn on(&self, day: i64) -> Moisture {
        Moisture::pct(self.settled[index(day)])
    }

    /// Mean of the settled year.
    #[expect(clippy::cast_precision_loss, reason = "365 days")]
    pub fn mean(&self) -> Moisture {
        Moisture::pct(self.settled.iter().sum::<f64>() / self.settled.len() as f64)
    }

    /// Driest and wettest moisture of the settled year.
    pub fn extremes(&self) -> (Moisture, Moisture) {
        let low = self.settled.iter().copied().fold(f64::INFINITY, f64::min);
        let high = self.settled.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (Moisture::pct(low), Moisture::pct(high))
    }

    /// Days until nine tenths of a small surplus of moisture are gone, counted from the visit's
    /// season; `None` if it takes more than three years.
    pub const fn days_to_settle(&self) -> Option<usize> {
        self.settles_in
    }

    /// Share left, so many days after the visit, of what boards took up that had got wet by then.
    pub fn wetness_left(&self, days: usize) -> f64 {
        self.wetness_left.get(days).copied().unwrap_or(0.0)
    }

    /// Days by which the boards' yearly wave comes after that of the air, by their first harmonics;
    /// `None` where there is no wave.
    pub const fn lag(&self) -> Option<f64> {
        self.lag
    }
}

/// Runs the board through years of `days` until they repeat. Gives the last year, and the board as it
/// is on the day of the year `visit`.
fn settle(board: &mut Drying<Wood>, days: &[Exposure], visit: i64) -> (Vec<f64>, Drying<Wood>) {
    for _ in 0..MOST_YEARS {
        let before = board.mean();
        days.iter().for_each(|air| {
            board.step(*air, DAY);
        });
        if (board.mean() - before).abs() < REPEATS {
            break;
        }
    }
    let mut at_visit = board.clone();
    let year = (0..DAYS)
        .map(|day| {
            if day == index(visit) {
                at_visit = board.clone();
            }
            let today = board.moisture().to_pct();
            board.step(days[day], DAY);
            today
        })
        .collect();
    (year, at_visit)
}

/// The share left of a surplus that was even through the thickness at the visit, day by day until nothing
/// worth following is left.
fn leaves(at_visit: &Drying<Wood>, surplus: f64, days: &[Exposure], settled: &[f64], visit: i64) -> Vec<f64> {
    let mut board = at_visit.clone();
    board.add(surplus);
    let mut shares = Vec::with_capacity(HORIZON);
    for day in (visit..).take(HORIZON) {
        let left = (board.moisture().to_pct() - settled[index(day)]) / (100.0 * surplus);
        if left < 1e-3 {
            break;
        }
        shares.push(left);
        board.step(days[index(day)], DAY);
    }
    shares
}

/// Days by which the first harmonic of `follows` comes after that of `leads`; `None` where either has
/// no wave to speak of.
#[expect(clippy::cast_precision_loss, reason = "365 days")]
fn lag(leads: &[f64], follows: &[f64]) -> Option<f64> {
    let wave = |days: &[f64]| {
        let (sin, cos) = days.iter().enumerate().fold((0.0, 0.0), |(sin, cos), (day, value)| {
            let angle = TAU * day as f64 / DAYS as f64;
            (sin + value * angle.sin(), cos + value * angle.cos())
        });
        (2.0 * f64::hypot(sin, cos) / DAYS as f64, f64::atan2(sin, cos))
    };
    let ((swing, leads), (moved, follows)) = (wave(leads), wave(follows));
    let is_wave = swing > 0.05 && moved > 0.02;
    is_wave.then(|| (follows - leads).rem_euclid(TAU) / TAU * DAYS as f64)
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    reason = "the remainder of 365 fits anything"
)]
fn index(day: i64) -> usize {
    day.rem_euclid(DAYS as i64) as usize
}
