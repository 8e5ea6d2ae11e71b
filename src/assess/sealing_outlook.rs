//! What there is to say of sealing with the plan's sealant: the best weeks, and what a bead is then asked.

use jiff::civil::Date;

use super::Assessment;
use super::answer::{SealTime, date_after};
use crate::joint::Demand;
use crate::measure::{Length, Percent};

/// The narrowest joint that guides to sealing speak of (ASTM C1193, from memory): 1/4 in.
pub const GUIDED_JOINT: Length = Length::inches(0.25);

/// What there is to say of sealing with the plan's sealant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SealingOutlook {
    /// The best weeks.
    pub best: SealTime,
    /// The share of the joint length on which the bead then stays within its class, in whole per cents
    /// down.
    pub holds: Percent,
    /// What half of the sealed length is then asked at most; `None` if nothing can be sealed.
    pub typical: Option<Demand>,
    /// Length of joint that is too narrow to seal in any week.
    pub never: Length,
    /// The day of sealing that quantities and prices are worked out for.
    pub planned: Date,
}

impl Assessment {
    /// What there is to say of sealing; `None` where there is nothing to seal.
    pub fn sealing_outlook(&self) -> Option<SealingOutlook> {
        let season = self.season.as_ref()?;
        let week = season.best_week();
        Some(SealingOutlook {
            best: SealTime::best(&self.job, season),
            holds: Percent::pct((season.share(week) * 100.0).floor()),
            typical: week.typical,
            never: season.never,
            planned: date_after(&self.job, self.seal_day),
        })
    }
}
