//! Saturation pressure and the forms in which air's water is given.
//!
//! Pressures are in pascals; the air is at sea level, where the difference to other heights does
//! not reach the relations used here.

use crate::measure::{Humidity, Temperature, bisect};

/// Specific gas constant of water vapour, J/(kg·K).
const VAPOR_GAS_CONSTANT: f64 = 461.5;

/// Pressure of water vapour in saturated air, in pascals.
///
/// ASHRAE Handbook *Fundamentals* 2017, ch. 1 eqs. 5 and 6: over ice below 0.01 °C, over water
/// above. Valid from −100 to 200 °C; temperatures are held to that range.
pub fn saturation_pressure(t: Temperature) -> f64 {
    let kelvin = t.to_celsius().clamp(-100.0, 200.0) + 273.15;
    let ln = if kelvin < 273.16 {
        -5.674_535_9e3 / kelvin + 6.392_524_7 - 9.677_843e-3 * kelvin
            + 6.221_570_1e-7 * kelvin.powi(2)
            + 2.074_782_5e-9 * kelvin.powi(3)
            - 9.484_024e-13 * kelvin.powi(4)
            + 4.163_501_9 * kelvin.ln()
    } else {
        -5.800_220_6e3 / kelvin + 1.391_499_3 - 4.864_023_9e-2 * kelvin + 4.176_476_8e-5 * kelvin.powi(2)
            - 1.445_209_3e-8 * kelvin.powi(3)
            + 6.545_967_3 * kelvin.ln()
    };
    ln.exp()
}

/// Pressure of the water vapour in air of temperature `t` and humidity `rh`, in pascals.
pub fn vapor_pressure(t: Temperature, rh: Humidity) -> f64 {
    rh.to_fraction() * saturation_pressure(t)
}

/// Relative humidity of air of temperature `t` that holds vapour at `pressure` pascals, at most 1.
pub fn relative_humidity(t: Temperature, pressure: f64) -> Humidity {
    Humidity::fraction((pressure / saturation_pressure(t)).clamp(0.0, 1.0))
}

/// Pressure that `grams` of water in a cubic metre of air adds at temperature `t`, in pascals.
pub fn pressure_of_load(grams: f64, t: Temperature) -> f64 {
    grams * 1e-3 * VAPOR_GAS_CONSTANT * (t.to_celsius() + 273.15)
}

/// The temperature at which vapour at `pressure` pascals would start to condense.
///
/// Bisection on [`saturation_pressure`] from −100 to 200 °C, to 1e-9 °C.
pub fn dew_point(pressure: f64) -> Temperature {
    let unsaturated = |t: f64| saturation_pressure(Temperature::celsius(t)) < pressure;
    Temperature::celsius(bisect(-100.0, 200.0, 1e-9, unsaturated))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_forms_of_humidity_convert_back(t in -20.0..45.0_f64, h in 0.02..1.0_f64) {
            let (t, rh) = (Temperature::celsius(t), Humidity::fraction(h));
            let pressure = vapor_pressure(t, rh);
            prop_assert!((relative_humidity(t, pressure).to_fraction() - h).abs() < 1e-12);
            let dew = dew_point(pressure);
            prop_assert!((saturation_pressure(dew) / pressure - 1.0).abs() < 1e-8);
            prop_assert!(dew.to_celsius() <= t.to_celsius() + 1e-6);
        }
    }
}
