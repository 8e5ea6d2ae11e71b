//! Putting a pin meter's reading right.

use crate::measure::{Moisture, Temperature};

/// What is to be said about a corrected reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MeterCheck {
    /// Inside the range in which pin meters are trusted.
    Trusted,
    /// Below 6 %: too little current to measure well.
    TooDry,
    /// Above 30 %: past fibre saturation, the reading says little more than "wet".
    TooWet,
}

/// The temperature at which pin meters read true: 21.1 °C (70 °F).
const CALIBRATED_AT: f64 = 21.1;

/// Corrects a pin meter's reading for the wood's temperature and says how far to trust it.
///
/// About 0.5 % of moisture for every 5.6 °C (10 °F): added below the calibration temperature,
/// taken off above it (Wood Handbook ch. 13). Never below zero.
pub fn correct_pin_meter(reading: Moisture, wood: Temperature) -> (Moisture, MeterCheck) {
    let correction = 0.5 * (CALIBRATED_AT - wood.to_celsius()) / 5.6;
    let corrected = (reading + Moisture::pct(correction)).max(Moisture::ZERO);
    let check = match corrected.to_pct() {
        m if m < 6.0 => MeterCheck::TooDry,
        m if m > 30.0 => MeterCheck::TooWet,
        _ => MeterCheck::Trusted,
    };
    (corrected, check)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cold_wood_reads_too_dry_and_warm_wood_too_wet() {
        let at = |t| correct_pin_meter(Moisture::pct(12.0), Temperature::celsius(t)).0.to_pct();
        assert!((at(21.1) - 12.0).abs() < 1e-12);
        assert!((at(15.5) - 12.5).abs() < 1e-9);
        assert!((at(26.7) - 11.5).abs() < 1e-9);
    }

    #[test]
    fn readings_outside_the_meter_are_flagged() {
        let check = |m| correct_pin_meter(Moisture::pct(m), Temperature::celsius(21.1)).1;
        assert_eq!(check(4.0), MeterCheck::TooDry);
        assert_eq!(check(12.0), MeterCheck::Trusted);
        assert_eq!(check(35.0), MeterCheck::TooWet);
    }
}
