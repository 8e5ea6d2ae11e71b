//! Board moisture through the years, for one build-up.
//!
//! [`BoardYears`] runs the drying of one build-up ([`Panel`]) through the room's year until it
//! repeats, and keeps what everything else needs: the settled year, how a surplus of moisture fades
//! from the visit on, how boards dried since the install, and what a damper year would change.
//! Sections of the same build-up share one.

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
/// Surpluses in kg/kg whose fading is followed; between them it is mixed.
const SURPLUSES: [f64; 2] = [0.02, 0.10];
/// Moistures at install in per cent that are followed to the visit; between them it is mixed.
const INSTALLS: [f64; 4] = [4.0, 10.0, 18.0, 30.0];
/// Days since the install that are followed: older boards have settled.
const MOST_DAYS_SINCE: i64 = 1825;

/// What one build-up's moisture does in the room's air.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardYears {
    /// Settled moisture on each day of the year, per cent.
    settled: Vec<f64>,
    /// How much wetter a year damper by one standard deviation keeps the boards, per cent.
    wet_year: Vec<f64>,
    /// Part left of each of [`SURPLUSES`] on the days from the visit on; nothing from its end on.
    fading: [Vec<f64>; 2],
    /// The visit's day of the year.
    visit: i64,
    /// Moisture on the days from the install to the visit, for each of [`INSTALLS`], per cent.
    since: Option<[Vec<f64>; 4]>,
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
    /// Follows `panel` through `year`. `visit` is the visit's day of the year, `age` the days from
    /// install to visit if known.
    pub fn new(panel: Panel, year: &IndoorYear, visit: i64, age: Option<i64>) -> Self {
        let days: Vec<Exposure> = year.days.iter().map(exposure).collect();
        let emc: Vec<f64> = year.days.iter().map(|air| air.emc().to_pct()).collect();
        let mean = emc.iter().sum::<f64>() / 100.0;
        #[expect(clippy::cast_precision_loss, reason = "365 days")]
        let mut board = Drying::uniform(Wood, panel, CELLS, mean / emc.len() as f64);
        let (settled, at_visit) = settle(&mut board, &days, visit);
        let damper_days: Vec<Exposure> = year.wet_year.iter().map(exposure).collect();
        let (wet_year, _) = settle(&mut board, &damper_days, visit);
        let wet_year = wet_year.iter().zip(&settled).map(|(wet, usual)| wet - usual).collect();
        let fading = SURPLUSES.map(|surplus| fade(&at_visit, surplus, &days, &settled, visit));
        let since = age.map(|age| {
            let followed = age.min(MOST_DAYS_SINCE);
            INSTALLS.map(|start| {
                let mut board = Drying::uniform(Wood, panel, CELLS, start / 100.0);
                track(&mut board, &days, visit - followed, followed)
            })
        });
        let sealed_off = panel.transfer.iter().all(|transfer| *transfer <= 0.0);
        Self { lag: lag(&emc, &settled), sealed_off, settled, wet_year, fading, visit, since }
    }

    /// Whether neither face lets anything through: then the room's air says nothing of the boards.
    pub const fn is_sealed_off(&self) -> bool {
        self.sealed_off
    }

    /// Settled moisture on the day of the year with this index; any whole number, the year repeats.
    pub fn on(&self, day: i64) -> Moisture {
        Moisture::pct(self.settled[index(day)])
    }

    /// How much wetter boards are on that day in a year damper by one standard deviation.
    pub fn wet_year_on(&self, day: i64) -> Moisture {
        Moisture::pct(self.wet_year[index(day)])
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

    /// Moisture `days` after the visit of boards that were at `now` then.
    pub fn after_visit(&self, now: Moisture, days: usize) -> Moisture {
        let surplus = now - self.on(self.visit);
        let ahead = i64::try_from(days).unwrap_or(0);
        (self.on(self.visit + ahead) + surplus * self.left_after(days, surplus)).max(Moisture::ZERO)
    }

    /// The part of a surplus of moisture at the visit that is left `days` later.
    pub fn left_after(&self, days: usize, surplus: Moisture) -> f64 {
        let [small, large] = SURPLUSES;
        let share = ((surplus.to_pct() / 100.0 - small) / (large - small)).clamp(0.0, 1.0);
        let [slow, fast] = [0, 1].map(|which| self.fading[which].get(days).copied().unwrap_or(0.0));
        slow + (fast - slow) * share
    }

    /// Days until nine tenths of a small surplus of moisture are gone, counted from the visit's
    /// season; `None` if it takes more than three years.
    pub fn days_to_settle(&self) -> Option<usize> {
        let fading = &self.fading[0];
        fading.iter().position(|left| *left <= 0.1).or((fading.len() < HORIZON).then_some(fading.len()))
    }

    /// Days by which the boards' yearly wave comes after that of the air, by their first harmonics;
    /// `None` where there is no wave.
    pub const fn lag(&self) -> Option<f64> {
        self.lag
    }

    /// Moisture `before` days before the visit of boards that were put up at `start`. `None` if the
    /// day of the install is unknown or later.
    pub fn since_install(&self, start: Moisture, before: usize) -> Option<Moisture> {
        let tracks = self.since.as_ref()?;
        let at = tracks[0].len().checked_sub(before + 1)?;
        let start = start.to_pct();
        let upper = INSTALLS.iter().position(|known| *known > start).unwrap_or(INSTALLS.len() - 1).max(1);
        let (low, high) = (INSTALLS[upper - 1], INSTALLS[upper]);
        let share = (start - low) / (high - low);
        let [low, high] = [upper - 1, upper].map(|which| tracks[which][at]);
        Some(Moisture::pct((low + (high - low) * share).max(0.0)))
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

/// Moisture in per cent on the day of the year `from` and on the `count` days after it.
fn track(board: &mut Drying<Wood>, days: &[Exposure], from: i64, count: i64) -> Vec<f64> {
    let mut track = vec![board.moisture().to_pct()];
    for day in 0..count {
        board.step(days[index(from + day)], DAY);
        track.push(board.moisture().to_pct());
    }
    track
}

/// The part left of a surplus that was even through the thickness at the visit, day by day until
/// nothing worth following is left.
fn fade(at_visit: &Drying<Wood>, surplus: f64, days: &[Exposure], settled: &[f64], visit: i64) -> Vec<f64> {
    let mut board = at_visit.clone();
    board.add(surplus);
    let mut fading = Vec::with_capacity(HORIZON);
    for day in 0..i64::try_from(HORIZON).unwrap_or(i64::MAX) {
        let left = (board.moisture().to_pct() - settled[index(visit + day)]) / (100.0 * surplus);
        if left < 1e-3 {
            break;
        }
        fading.push(left);
        board.step(days[index(visit + day)], DAY);
    }
    fading
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
