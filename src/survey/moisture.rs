//! From meter readings to the present moisture of a section's boards.

use statrs::statistics::Statistics as _;

use super::readings::{MeterSetting, Survey};
use crate::measure::{Estimate, Moisture};
use crate::wood::correct_pin_meter;

/// One standard deviation of a pin meter set to the species, in per cent moisture. Assumption.
const METER_SD: f64 = 1.0;
/// The same where the setting is another species or not known. Assumption.
const LOOSE_METER_SD: f64 = 2.0;
/// One standard deviation of moisture taken from the room's modelled year alone. Assumption.
const MODELLED_SD: f64 = 1.5;

/// Present moisture of a section's boards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistureNow {
    /// The moisture with its uncertainty.
    pub moisture: Estimate<Moisture>,
    /// Number of readings behind it; 0 if it comes from the modelled year.
    pub readings: usize,
}

/// Present moisture of `section` of `surface`: the mean of its corrected readings, else of the
/// job's, else `modelled`, what the room's year says.
pub fn board_moisture(survey: &Survey, surface: &str, section: &str, modelled: Moisture) -> MoistureNow {
    let own = corrected(survey, |s, c| s == surface && c == section);
    let readings = if own.is_empty() { corrected(survey, |_, _| true) } else { own };
    if readings.is_empty() {
        let moisture = Estimate { mean: modelled, sd: Moisture::pct(MODELLED_SD) };
        return MoistureNow { moisture, readings: 0 };
    }
    let values = || readings.iter().map(|(value, _)| *value);
    let scatter = if readings.len() > 1 { values().std_dev() } else { 0.0 };
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    let n = readings.len() as f64;
    // The meter's error is common to its readings; averaging takes out only the scatter.
    let meter = readings.iter().map(|(_, sd)| sd).sum::<f64>() / n;
    let sd = meter.hypot(scatter / n.sqrt());
    let moisture = Estimate { mean: Moisture::pct(values().mean()), sd: Moisture::pct(sd) };
    MoistureNow { moisture, readings: readings.len() }
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
            let (moisture, _) = correct_pin_meter(r.reading?, r.wood);
            let sd = match r.setting {
                MeterSetting::ThisSpecies => METER_SD,
                MeterSetting::OtherSpecies | MeterSetting::Unknown => LOOSE_METER_SD,
            };
            Some((moisture.to_pct(), sd))
        })
        .collect()
}
