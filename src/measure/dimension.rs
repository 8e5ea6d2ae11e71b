//! What the amounts that work and material go with are measured in.

use super::Units;

/// Meters of a foot.
const FOOT: f64 = 0.3048;

/// What an amount is: a number of things, or how long, how wide or how much.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dimension {
    /// A number of things: visits, sections.
    Number,
    /// A length: meters, or feet.
    Length,
    /// An area: square meters, or square feet.
    Area,
    /// A volume of solid stuff: cubic meters, or cubic feet.
    Volume,
}

impl Dimension {
    /// One of the units that people use, in SI: what an amount in SI is divided by to show it.
    pub fn si_of_unit(self, units: Units) -> f64 {
        let power = match self {
            Self::Number => 0,
            Self::Length => 1,
            Self::Area => 2,
            Self::Volume => 3,
        };
        match units {
            Units::Inches => FOOT.powi(power),
            Units::Millimeters => 1.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hundred_square_feet_are_what_they_are() {
        let area = Dimension::Area.si_of_unit(Units::Inches);
        assert!((100.0 * area - 9.290_304).abs() < 1e-9);
        assert!((Dimension::Volume.si_of_unit(Units::Inches) - 0.028_316_846_592).abs() < 1e-12);
        for dimension in [Dimension::Number, Dimension::Length, Dimension::Area, Dimension::Volume] {
            assert_eq!(dimension.si_of_unit(Units::Millimeters), 1.0, "{dimension:?}");
        }
        assert_eq!(Dimension::Number.si_of_unit(Units::Inches), 1.0);
    }
}
