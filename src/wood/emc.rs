//! Equilibrium moisture content: the moisture wood comes to in steady air, and its inverse.

use crate::measure::{Humidity, Moisture, Temperature, bisect};

/// The sorption isotherm of wood at one temperature: Wood Handbook eq. 4-5 with the coefficients for
/// degrees Celsius.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Isotherm {
    /// 1800 / W: per cent moisture.
    scale: f64,
    k: f64,
    k1: f64,
    k2: f64,
}

impl Isotherm {
    /// At `t` degrees Celsius, held to −40..130 °C.
    pub fn at(t: f64) -> Self {
        let t = t.clamp(-40.0, 130.0);
        Self {
            scale: 1800.0 / (349.0 + 1.29 * t + 0.0135 * t * t),
            k: 0.805 + 0.000_736 * t - 0.000_002_73 * t * t,
            k1: 6.27 - 0.009_38 * t - 0.000_303 * t * t,
            k2: 1.91 + 0.0407 * t - 0.000_293 * t * t,
        }
    }

    /// Its coefficients: scale in per cent moisture, K, K1 and K2.
    pub const fn coefficients(&self) -> [f64; 4] {
        [self.scale, self.k, self.k1, self.k2]
    }

    /// Moisture in per cent at relative humidity `h` (0 to 1), and how fast it rises with `h`.
    pub fn moisture_and_slope(&self, h: f64) -> (f64, f64) {
        let kh = self.k * h;
        let one = self.k1 * kh;
        let two = one * self.k2 * kh;
        let below = 1.0 + one + two;
        let above = one + 2.0 * two;
        let (free, hydrated) = (1.0 / (1.0 - kh), 1.0 / below);
        let moisture = self.scale * (kh * free + above * hydrated);
        // Derivatives by kh: of `above` k1 + 4·k1·k2·kh, of `below` k1 + 2·k1·k2·kh.
        let cross = self.k1 * self.k2 * kh;
        let hydrates = (self.k1 + 4.0 * cross - above * hydrated * (self.k1 + 2.0 * cross)) * hydrated;
        let slope = self.scale * self.k * (free * free + hydrates);
        (moisture, slope)
    }
}

/// Equilibrium moisture content of wood in air of temperature `t` and relative humidity `rh`.
///
/// Wood Handbook eq. 4-5. Humidity is held to 0..1. The handbook's table 4-2 runs from −1 to 132 °C;
/// temperatures are held to −40..130 °C.
pub fn emc(t: Temperature, rh: Humidity) -> Moisture {
    let h = rh.to_fraction().clamp(0.0, 1.0);
    Moisture::pct(Isotherm::at(t.to_celsius()).moisture_and_slope(h).0)
}

/// The relative humidity in which wood of temperature `t` neither dries nor wets at moisture `m`.
///
/// The inverse of [`emc`], which rises with humidity; to 1e-12. Moisture beyond what saturated air
/// gives comes back as 1.
pub fn equilibrium_humidity(t: Temperature, m: Moisture) -> Humidity {
    let drier = |h: f64| emc(t, Humidity::fraction(h)) < m;
    Humidity::fraction(bisect(0.0, 1.0, 1e-12, drier))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn humidity_comes_back_from_its_own_moisture(t in -10.0..60.0_f64, h in 0.0..0.99_f64) {
            let t = Temperature::celsius(t);
            let back = equilibrium_humidity(t, emc(t, Humidity::fraction(h)));
            prop_assert!((back.to_fraction() - h).abs() < 1e-9);
        }

        #[test]
        fn the_slope_is_that_of_the_curve(t in -10.0..60.0_f64, h in 0.01..0.98_f64) {
            let curve = Isotherm::at(t);
            let (_, slope) = curve.moisture_and_slope(h);
            let chord = (curve.moisture_and_slope(h + 1e-6).0 - curve.moisture_and_slope(h - 1e-6).0) / 2e-6;
            prop_assert!((slope / chord - 1.0).abs() < 1e-5);
        }

        #[test]
        fn damper_air_makes_damper_wood(t in -10.0..60.0_f64, h in 0.0..0.99_f64) {
            let t = Temperature::celsius(t);
            prop_assert!(emc(t, Humidity::fraction(h)) < emc(t, Humidity::fraction(h + 0.01)));
        }
    }
}
