//! What a room does to boards that hang in it, in every world.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

use crate::belief::{Extremes, Prior, Priors, RoomWorlds, WorldBoards};
use crate::joint::{Coating, Films};
use crate::measure::Length;
use crate::surface::Behind;
use crate::wood::drying::transfer;

/// Where the random sequence starts; any figure would do.
const SEED: u64 = 19_061_933;

/// What the room does to boards in every world.
#[derive(Debug, Clone, PartialEq)]
pub struct Movement {
    /// Factor on the lot's shrinkage.
    pub lot: Vec<f64>,
    /// Driest and wettest, per cent.
    pub extremes: Vec<(f64, f64)>,
    /// Days to the driest and to the wettest of their last year, over all worlds.
    pub seasons: (i64, i64),
}

impl Movement {
    /// Midway between the driest and the wettest, per cent, over the worlds: what boards are best hung at (Peck,
    /// FPL Report 1655, 1955).
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    pub fn midpoint(&self) -> f64 {
        let all = self.extremes.iter().map(|(dry, damp)| f64::midpoint(*dry, *damp));
        all.sum::<f64>() / self.extremes.len().max(1) as f64
    }

    /// Every so many worlds of these: where a few hundred tell enough.
    pub(super) fn thinned(&self, to: usize) -> Self {
        let step = (self.lot.len() / to).max(1);
        Self {
            lot: self.lot.iter().step_by(step).copied().collect(),
            extremes: self.extremes.iter().step_by(step).copied().collect(),
            seasons: self.seasons,
        }
    }
}

/// How boards of this build-up move in the room over `days` from day `from` on.
pub fn movement(
    rooms: &RoomWorlds,
    (thickness, density): (Length, f64),
    (coating, films, behind): (&Coating, &Films, Behind),
    priors: &Priors,
    (from, days): (i64, i64),
) -> Movement {
    let count = rooms.count();
    let mut random = Xoshiro256PlusPlus::seed_from_u64(SEED);
    let drawn: Vec<[f64; 5]> =
        (0..count).map(|_| std::array::from_fn(|_| StandardNormal.sample(&mut random))).collect();
    let z = |world: usize, thing: usize| -> f64 { drawn[world][thing] };
    let factor = |prior: &Prior, z: f64| prior.middle * (prior.sd * z).exp();
    let back = match behind {
        Behind::Cavity => &priors.unknown_back,
        Behind::Tight => &priors.tight_back,
    };
    let through = |world: usize| {
        let perms = |coated: Option<f64>| coated.map(|perms| perms * factor(&priors.permeance, z(world, 1)));
        [
            transfer(films.face, perms(coating.face)),
            transfer(films.back * factor(back, z(world, 2)), perms(coating.back)),
        ]
    };
    let boards = WorldBoards {
        thickness: thickness.max(Length::mm(1.0)),
        density,
        diffusivity: (0..count).map(|world| factor(&priors.diffusivity, z(world, 3))).collect(),
        moisture: rooms.settles_at(),
        core: vec![0.0; count],
    };
    let passes: Vec<[f64; 2]> = (0..count).map(through).collect();
    let Extremes { by_world, seasons } = rooms.extremes(&boards, &passes, from, days);
    let sd = priors.lot_shrinkage.sd.hypot(priors.ring_shrinkage.sd);
    Movement { lot: (0..count).map(|world| (sd * z(world, 4)).exp()).collect(), extremes: by_world, seasons }
}
