//! Gap readings that were likely meant otherwise: an eighth typed as an inch, millimeters without their point.
//!
//! They count as they were typed; they are only asked about, until somebody says which it is.

use super::GapReading;
use crate::measure::{Length, Units};

/// A gap from here on is asked about. Judgment: boards 5 in wide would have to shrink by a tenth for it, which is
/// more than most softwoods shrink across the grain from green to oven-dry.
const DOUBTFUL: Length = Length::inches(0.5);

/// A gap reading that was likely meant otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoubtedGap {
    /// Its place among the readings.
    pub index: usize,
    /// What was typed.
    pub typed: Length,
    /// What was likely meant.
    pub meant: Length,
}

impl DoubtedGap {
    /// The reading at a place of the list, if it is doubted: wider than gaps are, and nobody has said that it is so
    /// wide.
    pub fn of(index: usize, reading: &GapReading, units: Units) -> Option<Self> {
        let typed = reading.width;
        if typed < DOUBTFUL || reading.confirmed == Some(typed) {
            return None;
        }
        let meant = match units {
            Units::Inches => typed / 8.0,
            Units::Millimeters => typed / 10.0,
        };
        Some(Self { index, typed, meant })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_that_no_joint_has_is_asked_about_until_somebody_says_so() {
        let reading = |width| GapReading { width, ..GapReading::default() };
        let asked = |reading: &GapReading, units| DoubtedGap::of(3, reading, units);
        let inch = reading(Length::inches(1.0));
        let doubted = asked(&inch, Units::Inches).expect("an inch is asked about");
        assert_eq!((doubted.index, doubted.meant), (3, Length::inches(0.125)));
        let wide = reading(Length::mm(15.0));
        assert_eq!(asked(&wide, Units::Millimeters).map(|doubted| doubted.meant), Some(Length::mm(1.5)));
        assert_eq!(asked(&reading(Length::inches(0.375)), Units::Inches), None);
        let said = GapReading { confirmed: Some(inch.width), ..inch };
        assert_eq!(asked(&said, Units::Inches), None);
        // Another figure typed over it is another question.
        let again = GapReading { width: Length::inches(2.0), ..said };
        assert!(asked(&again, Units::Inches).is_some());
    }
}
