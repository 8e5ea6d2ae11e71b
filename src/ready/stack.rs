//! How a stack lies, and how fast its boards take up or give off moisture there.
//!
//! A lone board in a room dries in days. Boards in a stack don't: between stickers the air hardly moves,
//! and what the boards give off has to leave the room with its change of air, which for a room full of
//! boards is the narrower passage of the two. Solid piles and wrapped ones are fitted to published rates.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::air::IndoorYear;
use crate::air::psychrometrics::{saturation_pressure, vapor_pressure};
use crate::belief::Prior;
use crate::measure::{Length, Moisture};
use crate::wood::Species;
use crate::wood::drying::{Drying, Exposure, Panel, Wood};

/// How boards are piled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Piling {
    /// On stickers, air between the layers.
    #[default]
    Stickered,
    /// Board on board.
    Solid,
    /// In the wrapper they came in.
    Wrapped,
}

impl Piling {
    /// All of them, in the order offered.
    pub const ALL: [Self; 3] = [Self::Stickered, Self::Solid, Self::Wrapped];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Stickered => "stickered",
            Self::Solid => "solid",
            Self::Wrapped => "wrapped",
        }
    }
}

/// Where boards are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Kept {
    /// In the room they are for.
    #[default]
    Room,
    /// In a garage or shed without heat.
    Garage,
}

impl Kept {
    /// All of them, in the order offered.
    pub const ALL: [Self; 2] = [Self::Room, Self::Garage];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Room => "room",
            Self::Garage => "garage",
        }
    }
}

/// A stack.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Stack {
    /// How it is piled.
    pub piling: Piling,
    /// Where it is kept.
    pub kept: Kept,
}

/// What is expected of stacks and deliveries, each figure with its source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StackFigures {
    /// Transfer at a face between stickers.
    pub stickered: Prior,
    /// Transfer at a face in a solid pile: that of the whole pile, shared out.
    pub solid: Prior,
    /// The same in a wrapper.
    pub wrapped: Prior,
    /// How often a room's air is changed.
    pub room_air_change: Prior,
    /// The same of a garage.
    pub garage_air_change: Prior,
    /// Air that takes the water from a square meter of boards.
    pub air_per_board: Prior,
    /// How much wetter than their faces boards are inside when they come; never less than nothing.
    pub core_excess: Prior,
    /// Mean moisture of a delivery.
    pub delivered: Prior,
    /// Standard deviation between its boards.
    pub spread: Prior,
    /// How boards of a lot differ in shrinkage.
    pub piece_shrinkage: Prior,
    /// How boards of one room differ in moisture.
    pub piece_in_room: Prior,
    /// How far restrained boards are squeezed before they crush or buckle, per cent of their width.
    pub gives_way: Prior,
    /// How much warmer a room is kept to dry a stack.
    pub warmer: Prior,
    /// Humidity that a dehumidifier keeps.
    pub dehumidified_to: Prior,
}

/// Gas constant of water vapor, J/(kg·K).
const VAPOR: f64 = 461.5;
/// A usual room, K.
const ROOM: f64 = 294.0;

impl Stack {
    /// Transfer at each face, kg/(s·m²·Pa), in a world whose piling differs by `z[0]` and whose air by
    /// `z[1]`, standard normal numbers. `dried` is for a dehumidifier that takes the water out of the air.
    pub fn transfer(self, figures: &StackFigures, z: [f64; 2], dried: bool) -> f64 {
        let of = |prior: &Prior, z: f64| prior.middle * (prior.sd * z).exp();
        let own = match self.piling {
            Piling::Stickered => of(&figures.stickered, z[0]),
            Piling::Solid => return of(&figures.solid, z[0]),
            Piling::Wrapped => return of(&figures.wrapped, z[0]),
        };
        if dried {
            return own;
        }
        let change = match self.kept {
            Kept::Room => &figures.room_air_change,
            Kept::Garage => &figures.garage_air_change,
        };
        // Both differ between worlds by one number: the scatters add up as variances.
        let sd = change.sd.hypot(figures.air_per_board.sd);
        let flow = change.middle * figures.air_per_board.middle / 3600.0 * (sd * z[1]).exp();
        let air = flow / (VAPOR * ROOM) / 2.0;
        1.0 / (1.0 / own + 1.0 / air)
    }
}

/// Mean moisture of boards delivered at `delivered` after so many days on stickers in the room, from the
/// day of the year `from` on, everything unknown at its middle; at most a year of them.
pub fn moisture_after(
    species: &Species,
    thickness: Length,
    figures: &StackFigures,
    year: &IndoorYear,
    delivered: Moisture,
    (from, days): (usize, u32),
) -> Moisture {
    const STEPS: u32 = 2;
    let transfer = [Stack::default().transfer(figures, [0.0; 2], false); 2];
    let panel = Panel { thickness: thickness.max(Length::mm(1.0)), density: species.density(), transfer };
    let mut board = Drying::uniform(Wood, panel, 12, delivered.to_pct() / 100.0);
    let days = usize::try_from(days.min(365)).unwrap_or(0);
    for day in from..from + days {
        let air = &year.days[day % year.days.len()];
        let air = Exposure {
            celsius: air.temperature.to_celsius(),
            saturation: saturation_pressure(air.temperature),
            vapour: vapor_pressure(air.temperature, air.humidity),
        };
        for _ in 0..STEPS {
            board.step(air, 86_400.0 / f64::from(STEPS));
        }
    }
    board.moisture()
}
