//! Equilibrium moisture content: the moisture wood comes to in steady air, and its inverse.

use crate::measure::{Humidity, Moisture, Temperature, bisect};

/// Equilibrium moisture content of wood in air of temperature `t` and relative humidity `rh`.
///
/// Wood Handbook eq. 4-5 with the coefficients for degrees Celsius. Humidity is held to 0..1. The
/// handbook's table 4-2 runs from −1 to 132 °C; temperatures are held to −40..130 °C.
pub fn emc(t: Temperature, rh: Humidity) -> Moisture {
    let t = t.to_celsius().clamp(-40.0, 130.0);
    let h = rh.to_fraction().clamp(0.0, 1.0);
    let w = 349.0 + 1.29 * t + 0.0135 * t * t;
    let k = 0.805 + 0.000_736 * t - 0.000_002_73 * t * t;
    let k1 = 6.27 - 0.009_38 * t - 0.000_303 * t * t;
    let k2 = 1.91 + 0.0407 * t - 0.000_293 * t * t;
    let kh = k * h;
    let (one, two) = (k1 * kh, k1 * k2 * kh * kh);
    Moisture::pct(1800.0 / w * (kh / (1.0 - kh) + (one + 2.0 * two) / (1.0 + one + two)))
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
        fn damper_air_makes_damper_wood(t in -10.0..60.0_f64, h in 0.0..0.99_f64) {
            let t = Temperature::celsius(t);
            prop_assert!(emc(t, Humidity::fraction(h)) < emc(t, Humidity::fraction(h + 0.01)));
        }
    }
}
