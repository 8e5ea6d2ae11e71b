//! What a section's boards still have before them: how far they dry, and how far its gaps close by
//! themselves.

use jiff::civil::Date;

use super::answer::date_after;
use super::sections::SectionState;
use crate::job::Job;
use crate::measure::{Length, Moisture, Percent};

/// Boards nearer than this to what the room makes them have settled.
const SETTLED: Moisture = Moisture::pct(0.5);

/// What is left of the boards' drying.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DryingLeft {
    /// None: they are within half a per cent of what the room makes them at this season.
    Settled,
    /// They are wetter by this, and dry.
    Dries(Moisture),
    /// They are drier by this, and take up moisture.
    TakesUp(Moisture),
}

/// How much of the present mean gap closes by itself in the coming humid season.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Closing {
    /// None of it: it is narrowest today.
    No,
    /// A part of it.
    Part {
        /// How much, in whole per cents.
        share: Percent,
        /// The gap that is left.
        left: Length,
        /// The day on which it is narrowest.
        by: Date,
    },
    /// All of it.
    Whole {
        /// The day on which it is narrowest.
        by: Date,
    },
}

impl SectionState {
    /// What today's moisture differs by from what the room's model expects at this season.
    pub fn drying_left(&self) -> DryingLeft {
        let surplus = self.now.moisture.mean - self.expected_now;
        match surplus {
            wetter if wetter >= SETTLED => DryingLeft::Dries(wetter),
            drier if -drier >= SETTLED => DryingLeft::TakesUp(-drier),
            _ => DryingLeft::Settled,
        }
    }

    /// How much of the present mean gap closes by itself.
    pub fn closing(&self, job: &Job) -> Closing {
        let by = date_after(job, self.narrowest_day);
        if self.narrowest_day == 0 {
            Closing::No
        } else if self.year_gap.0 <= Length::ZERO {
            Closing::Whole { by }
        } else {
            let share = Percent::pct((100.0 * self.closes_by_itself()).round());
            Closing::Part { share, left: self.year_gap.0, by }
        }
    }
}
