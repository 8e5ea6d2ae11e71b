//! From meter readings to the present moisture of a section's boards.

use super::readings::{MeterSetting, Survey};
use crate::measure::{Estimate, Moisture};

/// One standard deviation of a pin meter set to the species, in per cent moisture. Assumption.
const METER_SD: f64 = 1.0;
/// The same where the setting is another species or not known. Assumption.
const LOOSE_METER_SD: f64 = 2.0;

/// Present moisture of a section's boards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistureNow {
    /// The moisture with its uncertainty.
    pub moisture: Estimate<Moisture>,
    /// Number of readings behind it; 0 if none were taken.
    pub readings: usize,
}

/// How many meter readings speak for a section: its own, else all of the job's.
pub fn readings_behind(survey: &Survey, surface: &str, section: &str) -> usize {
    match corrected(survey, |s, c| s == surface && c == section).len() {
        0 => corrected(survey, |_, _| true).len(),
        own => own,
    }
}

/// The corrected readings of a section's boards in per cent, each with its meter's standard deviation.
pub fn moisture_readings(survey: &Survey, surface: &str, section: &str) -> Vec<(f64, f64)> {
    corrected(survey, |s, c| s == surface && c == section)
}

/// Corrected readings in per cent where `wanted(surface, section)`, each with its meter's
/// standard deviation.
fn corrected(survey: &Survey, wanted: impl Fn(&str, &str) -> bool) -> Vec<(f64, f64)> {
    let chosen = survey.moistures.iter().filter(|r| wanted(&r.surface, &r.section));
    chosen
        .filter_map(|r| {
            let moisture = r.corrected()?;
            let sd = match r.setting {
                MeterSetting::ThisSpecies => METER_SD,
                MeterSetting::OtherSpecies | MeterSetting::Unknown => LOOSE_METER_SD,
            };
            Some((moisture.to_pct(), sd))
        })
        .collect()
}
