//! How the width of a board follows its moisture.

use crate::measure::{Angle, Moisture, bisect};

use super::Species;

/// Movement along the grain per per cent of moisture, as a fraction of the length.
///
/// From green to oven-dry wood shrinks 0.1 to 0.2 % lengthwise (Wood Handbook ch. 4); the middle
/// of that over 30 % moisture.
pub const LENGTHWISE_PER_PCT: f64 = 0.0015 / 30.0;

/// Width change from moisture `from` to moisture `to`, as a fraction of the width at `from`:
/// negative when the board dries and narrows.
///
/// Within 6 to 14 % this is Wood Handbook eq. 13-2, C·ΔM. If either end lies outside it is
/// eq. 13-3 (from memory), ΔM / (30·100/S − 30 + M) with the species' own start of shrinkage in
/// place of 30. Above that start the width does not change.
pub fn width_change(species: &Species, ring: Angle, from: Moisture, to: Moisture) -> f64 {
    let inside = |m: Moisture| {
        let band = Species::COEFFICIENT_BAND;
        band.low <= m && m <= band.high
    };
    if inside(from) && inside(to) {
        return species.coefficient(ring) * (to - from).to_pct();
    }
    let start = species.shrinks_below;
    let total = species.total_shrinkage(ring);
    if total <= 0.0 {
        return 0.0;
    }
    let (from, to) = (from.to_pct().clamp(0.0, start), to.to_pct().clamp(0.0, start));
    (to - from) / (start * 100.0 / total - start + from)
}

/// How much narrower a board becomes from `wet` to `dry`, as a fraction of its width at `wet`:
/// positive when it narrows.
pub fn shrinkage(species: &Species, ring: Angle, wet: Moisture, dry: Moisture) -> f64 {
    -width_change(species, ring, wet, dry)
}

/// The moisture from which a board must have come to have shrunk by `shrunk` (a fraction of its
/// width then, not negative) and be at `now`.
///
/// `None` if no moisture explains it: the board would have had to shrink more than it does from
/// the start of shrinkage. Solved by bisection on [`shrinkage`] to 1e-9 %.
pub fn moisture_before(species: &Species, ring: Angle, shrunk: f64, now: Moisture) -> Option<Moisture> {
    let (low, high) = (now.to_pct(), species.shrinks_below);
    let enough = |m: f64| shrinkage(species, ring, Moisture::pct(m), now) >= shrunk;
    if low >= high || !enough(high) {
        return (shrunk <= 0.0).then_some(now);
    }
    Some(Moisture::pct(bisect(low, high, 1e-9, |m| !enough(m))))
}
