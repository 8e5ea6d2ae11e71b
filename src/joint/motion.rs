//! Movement of boards and joints, day by day from the visit.

use super::moisture::HORIZON;
use crate::measure::{Angle, Length, Moisture};
use crate::surface::Joint;
use crate::wood::{LENGTHWISE_PER_PCT, Species, shrinkage};

/// How the boards of one build-up (species, ring angle, coating, present moisture) move.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardMotion {
    /// Moisture on each day from the visit, in per cent.
    pub moisture: Vec<Moisture>,
    /// Narrowing since the visit on each day, as a fraction of the present width; negative when
    /// the board is wider than at the visit.
    pub narrowing: Vec<f64>,
    /// The same along the grain, as a fraction of the length.
    pub shortening: Vec<f64>,
    /// From this day on, the least and greatest narrowing still to come. One pair a day.
    to_come: Vec<(f64, f64)>,
    /// Shortening per narrowing, from the day on which the narrowing is largest.
    lengthwise: f64,
}

impl BoardMotion {
    /// From the boards' moisture on each day from the visit, over [`HORIZON`], and how much their lot
    /// shrinks against its species.
    pub fn new(species: &Species, ring: Angle, moisture: Vec<Moisture>, lot: f64) -> Self {
        let now = moisture.first().copied().unwrap_or_default();
        let narrowing: Vec<f64> = moisture.iter().map(|&m| lot * shrinkage(species, ring, now, m)).collect();
        let shortening: Vec<f64> =
            moisture.iter().map(|&m| LENGTHWISE_PER_PCT * (now - m).to_pct()).collect();
        let mut to_come = vec![(0.0, 0.0); narrowing.len()];
        let mut range = (f64::INFINITY, f64::NEG_INFINITY);
        for (day, &value) in narrowing.iter().enumerate().rev() {
            range = (range.0.min(value), range.1.max(value));
            to_come[day] = range;
        }
        let lengthwise = lengthwise_per_narrowing(&narrowing, &shortening);
        Self { moisture, narrowing, shortening, to_come, lengthwise }
    }
}

/// One joint, ready to be asked for its gap on any day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointMotion<'a> {
    /// Gap at the visit.
    pub gap_now: Length,
    /// Width of wood whose movement shows here.
    pub across: Length,
    /// Length of wood whose movement shows here.
    pub along: Length,
    /// Width and length of wood whose movement slides the joint's sides along each other.
    pub slides: (Length, Length),
    /// The boards' movement.
    pub boards: &'a BoardMotion,
}

impl<'a> JointMotion<'a> {
    /// The motion of `joint`, open by `gap_now` at the visit.
    pub const fn new(joint: &Joint, gap_now: Length, boards: &'a BoardMotion) -> Self {
        let slides = (Length::ZERO, Length::ZERO);
        Self { gap_now, across: joint.moves_across, along: joint.moves_along, slides, boards }
    }

    /// The same, with its sides sliding by the movement of this width and length of wood.
    #[must_use]
    pub const fn sliding(self, across: Length, along: Length) -> Self {
        Self { slides: (across, along), ..self }
    }

    /// How far the sides slide along each other at most from `day` on, against how they lie then.
    pub fn slide_from(&self, day: usize) -> Length {
        let day = day.min(HORIZON - 1);
        let (least, most) = self.boards.to_come[day];
        let now = self.boards.narrowing[day];
        let reach = self.slides.0 + self.slides.1 * self.boards.lengthwise;
        reach * (most - now).max(now - least)
    }

    /// Gap on a day, negative when the boards push against each other: then they have this much
    /// less room than they want.
    pub fn signed_gap_on(&self, day: usize) -> Length {
        let day = day.min(HORIZON - 1);
        self.gap_now + self.across * self.boards.narrowing[day] + self.along * self.boards.shortening[day]
    }

    /// Gap on a day, nothing when closed.
    pub fn gap_on(&self, day: usize) -> Length {
        self.signed_gap_on(day).max(Length::ZERO)
    }

    /// Narrowest and widest gap from `day` on, nothing when closed.
    pub fn extremes_from(&self, day: usize) -> (Length, Length) {
        let (low, high) = self.rooms_from(day);
        (low.max(Length::ZERO), high.max(Length::ZERO))
    }

    /// Least and most room from `day` on; negative when the boards push.
    pub fn rooms_from(&self, day: usize) -> (Length, Length) {
        let day = day.min(HORIZON - 1);
        // Along and across move together, so both are extreme on the same day to within their
        // curvature; the lengthwise part is a few per cent of the other.
        let (least, most) = self.boards.to_come[day];
        let reach = self.across + self.along * self.boards.lengthwise;
        (self.gap_now + reach * least, self.gap_now + reach * most)
    }
}

/// Shortening per narrowing, from the day on which they are largest.
fn lengthwise_per_narrowing(narrowing: &[f64], shortening: &[f64]) -> f64 {
    narrowing
        .iter()
        .zip(shortening)
        .max_by(|a, b| a.0.abs().total_cmp(&b.0.abs()))
        .map_or(0.0, |(&narrow, &short)| if narrow.abs() > 1e-12 { short / narrow } else { 0.0 })
}
