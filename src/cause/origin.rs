//! The moisture of the boards at install, worked back from the gap they left.

use statrs::distribution::{ContinuousCDF as _, Normal};

use crate::measure::{Angle, Estimate, Length, Moisture, Span};
use crate::wood::{Species, moisture_before};

/// Ring angles in a lot scatter by about this many degrees. Assumption.
const RING_SD: f64 = 12.0;

/// What the back-calculation needs of one section.
#[derive(Debug, Clone, Copy)]
pub struct OriginInputs<'a> {
    /// The boards' species.
    pub species: &'a Species,
    /// Their growth rings' angle to the face.
    pub ring: Angle,
    /// Mean gap with the error of that mean.
    pub gap: Estimate<Length>,
    /// Width of wood whose shrinkage shows at a joint.
    pub across: Length,
    /// Present moisture.
    pub now: Estimate<Moisture>,
}

/// Where the boards came from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InstallMoisture {
    /// Moisture at install. At the start of shrinkage if no moisture explains the gap.
    pub moisture: Moisture,
    /// The interval it lies in nine times out of ten.
    pub interval: Span<Moisture>,
    /// Whether drying from green still falls short of the gap.
    pub beyond_drying: bool,
}

/// Works the moisture at install back from the mean gap, on the assumption that the boards were
/// laid tight. `None` where no wood moves (both edges held) or no gap was measured.
///
/// The interval is first-order error propagation over the mean gap, the present moisture, the
/// species' scatter ([`Species::SCATTER`], as for one lot) and the ring angle, taken as normal.
pub fn install_moisture(inputs: &OriginInputs<'_>) -> Option<InstallMoisture> {
    if inputs.across <= Length::ZERO {
        return None;
    }
    let ring = inputs.ring.to_degrees();
    let solve = |gap: Length, ring: f64| {
        let ring = Angle::degrees(ring.clamp(0.0, 90.0));
        let width_then = inputs.across + gap;
        let shrunk = gap.to_m() / width_then.to_m();
        moisture_before(inputs.species, ring, shrunk, inputs.now.mean)
    };
    let wettest = Moisture::pct(inputs.species.shrinks_below);
    let best = solve(inputs.gap.mean, ring);
    let moisture = best.unwrap_or(wettest);
    let or_wettest = |m: Option<Moisture>| m.unwrap_or(wettest).to_pct();

    let gap_sd = inputs.gap.sd.to_m().max(1e-6);
    let step = Length::m(gap_sd.min(0.5 * inputs.gap.mean.to_m()).max(1e-6));
    let per_gap = (or_wettest(solve(inputs.gap.mean + step, ring))
        - or_wettest(solve((inputs.gap.mean - step).max(Length::ZERO), ring)))
        / (2.0 * step.to_m());
    let ring_part = (or_wettest(solve(inputs.gap.mean, ring + RING_SD))
        - or_wettest(solve(inputs.gap.mean, ring - RING_SD)))
        / 2.0;
    let fall = (moisture - inputs.now.mean).to_pct();
    let parts = [per_gap * gap_sd, inputs.now.sd.to_pct(), Species::SCATTER * fall, ring_part];
    let sd = parts.iter().map(|part| part * part).sum::<f64>().sqrt();

    let reach = Moisture::pct(Normal::standard().inverse_cdf(0.95) * sd);
    let interval = Span { low: (moisture - reach).max(Moisture::ZERO), high: moisture + reach };
    Some(InstallMoisture { moisture, interval, beyond_drying: best.is_none() })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wood::{Coefficients, Kind, shrinkage};

    fn pine() -> Species {
        Species {
            id: String::new(),
            aliases: Vec::new(),
            name: "pine".into(),
            specific_gravity: 0.35,
            coefficients: Some(Coefficients {
                radial: 0.0016,
                tangential: 0.002_63,
                kind: Kind::Assumption,
                source: String::new(),
            }),
            shrinkage: None,
            shrinks_below: 30.0,
        }
    }

    fn inputs(species: &Species, gap: Length) -> OriginInputs<'_> {
        OriginInputs {
            species,
            ring: Angle::ZERO,
            gap: Estimate { mean: gap, sd: Length::mm(0.2) },
            across: Length::mm(130.0),
            now: Estimate { mean: Moisture::pct(9.0), sd: Moisture::pct(1.0) },
        }
    }

    #[test]
    fn a_gap_made_by_drying_leads_back_to_where_it_started() {
        let species = pine();
        let narrowed = shrinkage(&species, Angle::ZERO, Moisture::pct(19.0), Moisture::pct(9.0));
        // The board is 130 mm now, so it was this much wider then.
        let gap = Length::mm(130.0 * narrowed / (1.0 - narrowed));
        let origin = install_moisture(&inputs(&species, gap)).unwrap();
        assert!((origin.moisture.to_pct() - 19.0).abs() < 1e-6);
        assert!(origin.interval.low.to_pct() < 17.5 && origin.interval.high.to_pct() > 20.5);
        assert!(!origin.beyond_drying);
    }

    #[test]
    fn a_gap_no_drying_makes_is_said_so() {
        let species = pine();
        let origin = install_moisture(&inputs(&species, Length::mm(30.0))).unwrap();
        assert!(origin.beyond_drying);
        let held = OriginInputs { across: Length::ZERO, ..inputs(&species, Length::mm(3.0)) };
        assert_eq!(install_moisture(&held), None);
    }
}
