//! From a board's species, size and paint to what drying needs of it.

use serde::{Deserialize, Serialize};

use crate::measure::Length;
use crate::surface::{Behind, BoardSpec, Finish};
use crate::wood::drying::{Panel, transfer};
use crate::wood::{Kind, Species};

/// How far a coating lets moisture through.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Coating {
    /// Which it is.
    pub finish: Finish,
    /// Its name.
    pub name: String,
    /// Permeance on the face in US perms; `None` for bare wood.
    pub face: Option<f64>,
    /// Permeance on the back in US perms; `None` for bare wood.
    pub back: Option<f64>,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// The films of air at a board, kg/(s·m²·Pa).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Films {
    /// On the room's side.
    pub face: f64,
    /// In a cavity behind.
    pub back: f64,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// The board as drying sees it. Boards thinner than a millimetre count as one.
pub fn panel(board: &BoardSpec, species: &Species, coating: &Coating, films: &Films) -> Panel {
    let back = match board.behind {
        Behind::Cavity => transfer(films.back, coating.back),
        Behind::Tight => 0.0,
    };
    Panel {
        thickness: board.thickness.max(Length::mm(1.0)),
        density: species.density(),
        transfer: [transfer(films.face, coating.face), back],
    }
}
