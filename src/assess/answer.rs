//! The answer as data: what to do, when, for how much and how sure; why it happened; what is missing.

use jiff::civil::Date;

use super::{InformativeReading, NotPossible, RatedSealant};
use crate::belief::{AgainstMarks, Cause};
use crate::job::Job;
use crate::joint::Season;
use crate::measure::{Length, Moisture, Money, Percent, Span};
use crate::repair::MethodId;
use crate::survey::DoubtedGap;

/// The answer so far.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Answer {
    /// What to do.
    pub advice: Advice,
    /// When to seal; `None` where nothing is sealed.
    pub when: Option<SealTime>,
    /// What the chosen repair option costs; `None` while there is none.
    pub quote: Option<Quote>,
    /// The chance that it brings another callback; `None` where nobody can tell.
    pub callback: Option<CallbackChance>,
    /// Sections that are wetter than the room makes them, as indices of surface and section: water gets
    /// in there, and must be found first.
    pub wet_sections: Vec<(usize, usize)>,
    /// Why it happened; `None` while no gap is known.
    pub cause: Option<CauseVerdict>,
    /// The option that costs least with callbacks, where it is not the chosen one.
    pub cheaper: Option<MethodId>,
    /// What to enter or measure next, most useful first.
    pub missing: Vec<MissingEntry>,
    /// Whether what is chosen will likely last: it can be done, it holds, another callback is unlikely, and
    /// no row of boards is expected to open at its weak joint so far that the owner calls.
    pub lasts: bool,
}

impl Answer {
    /// Whether there is an answer at all.
    pub const fn is_complete(&self) -> bool {
        !matches!(self.advice, Advice::NothingYet(_))
    }
}

/// What to do, with the figures that say so.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Advice {
    /// There is nothing to go on yet: this comes first.
    NothingYet(FirstStep),
    /// Seal the joints again: the bead stays within its class on this share of the joint length, 90 % or
    /// more.
    Reseal {
        /// The share.
        holds: Percent,
    },
    /// Sealing them again would hold on too little.
    ResealFails {
        /// The share of the joint length on which the bead stays within its class, below 90 %.
        holds: Percent,
        /// What to do instead.
        instead: Instead,
    },
    /// Most open joints are too narrow for a bead even in the best weeks.
    TooNarrow {
        /// The narrowest gap that can be sealed.
        narrowest: Length,
    },
    /// New boards.
    Replace {
        /// The moisture they must be dried to: the mean of what the room keeps.
        dried_to: Moisture,
        /// Days from first to last; 0 where the schedule is not known.
        calendar_days: u32,
        /// The widest their joints open, at the driest of the year.
        opens_to: Length,
    },
    /// Any other option, as the catalog describes it.
    AsChosen,
    /// What is chosen cannot be done here.
    NotPossible(NotPossible),
}

impl Default for Advice {
    fn default() -> Self {
        Self::NothingYet(FirstStep::DrawBoards)
    }
}

/// What comes first while there is nothing to go on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FirstStep {
    /// Draw a surface with boards.
    DrawBoards,
    /// Measure gaps.
    MeasureGaps,
    /// Put entries right: no repair option can be worked out.
    FixProblems,
}

/// What to do where resealing with the plan's sealant holds on too little.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Instead {
    /// This sealant of the catalog would hold on enough in its own best weeks.
    Sealant(RatedSealant),
    /// No sealant would; this option costs least with callbacks.
    Method(MethodId),
    /// No sealant would, and no option's chances are known.
    Unknown,
}

/// When to seal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SealTime {
    /// On the day of the plan.
    On(Date),
    /// Between these days, the best weeks.
    Between(Date, Date),
    /// All weeks of the year are alike.
    AnyTime,
}

impl SealTime {
    /// The best weeks of a season.
    pub fn best(job: &Job, season: &Season) -> Self {
        let best = season.best;
        // Two weeks less than the year are the whole year, to within what a week is.
        if best.high - best.low + 2 >= season.weeks.len() {
            return Self::AnyTime;
        }
        Self::Between(date_after(job, best.low * 7), date_after(job, best.high * 7 + 6))
    }

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::On(_) => "on",
            Self::Between(..) => "between",
            Self::AnyTime => "any_time",
        }
    }
}

/// What an option costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quote {
    /// The price.
    pub total: Money,
    /// Between these it lies in 80 % of the trials.
    pub spread: Span<Money>,
    /// Days on which the crew works; `None` where there is no schedule.
    pub crew_days: Option<u32>,
}

/// The chance of another callback.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CallbackChance {
    /// The chance, 0 to 1.
    pub chance: f64,
    /// Within so many years of warranty, at least 1.
    pub years: u32,
}

/// Why the joints opened, in short.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CauseVerdict {
    /// The cause that the likeliest account is called by.
    pub main: Cause,
    /// The chance that it plays a part, 0 to 1.
    pub chance: f64,
    /// The section that got wet, as indices of surface and section, where one stands out.
    pub section: Option<(usize, usize)>,
    /// Whether boards are likely bonded in groups, too.
    pub bonded: bool,
    /// What the gaps say of the install; `None` where no section's gaps can be explained by drying.
    pub install: Option<InstallFinding>,
}

/// What the gaps say of the install.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum InstallFinding {
    /// Nothing by itself: the line that moved is in the mean of its section.
    LineMoved,
    /// By their width alone the gaps would want boards as wet as this, which the rest speaks against.
    Contradicted(InstallFigures),
    /// The boards that did not get wet later.
    OtherBoards(InstallFigures),
    /// The boards, held against the lumber marks.
    Boards(InstallFigures, Option<AgainstMarks>),
}

/// Moisture at install and in the room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InstallFigures {
    /// At install.
    pub moisture: Moisture,
    /// The interval it lies in nine times out of ten.
    pub interval: Span<Moisture>,
    /// The mean that the room keeps.
    pub room: Moisture,
}

/// Something that would make the answer firmer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MissingEntry {
    /// A surface with its size and pattern.
    Surface,
    /// So many entries must be put right.
    WrongEntries(usize),
    /// Which it is, where a gap was likely meant otherwise than it was typed.
    DoubtedGap(DoubtedGap),
    /// More gaps in a section.
    Gaps {
        /// Index of its surface.
        surface: usize,
        /// Index of the section on it.
        section: usize,
        /// How many more.
        more: usize,
    },
    /// The reading that would settle the cause.
    ForTheCause(InformativeReading),
    /// A moisture reading of the boards.
    Moisture,
    /// The date of the install.
    InstallDate,
    /// Where the house is.
    Place,
    /// When the house was built, where the price depends on it.
    YearBuilt,
    /// Who pays, where it may be others than the owner.
    Payers,
    /// A timed section, for a firmer price.
    TimedSection,
}

impl MissingEntry {
    /// Where it is entered.
    pub const fn place(self) -> EntryPlace {
        match self {
            Self::Surface => EntryPlace::Surfaces,
            Self::WrongEntries(_) => EntryPlace::Problems,
            Self::Gaps { surface, section, .. }
            | Self::ForTheCause(InformativeReading::Gap { surface, section }) => {
                EntryPlace::Gaps(surface, section)
            }
            Self::Moisture | Self::ForTheCause(InformativeReading::Moisture { .. }) => EntryPlace::Moisture,
            Self::DoubtedGap(_) | Self::ForTheCause(InformativeReading::Failures) => EntryPlace::Failures,
            Self::ForTheCause(InformativeReading::Room) => EntryPlace::Room,
            Self::Place => EntryPlace::House,
            Self::YearBuilt => EntryPlace::YearBuilt,
            Self::InstallDate => EntryPlace::Dates,
            Self::Payers => EntryPlace::Payers,
            Self::TimedSection => EntryPlace::TimedSection,
        }
    }
}

/// Where what is missing is entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EntryPlace {
    /// Among the surfaces.
    Surfaces,
    /// At the hygrometer's readings.
    Room,
    /// At the entries marked as wrong.
    Problems,
    /// At the joints of this section: indices of surface and section.
    Gaps(usize, usize),
    /// With the readings of gaps, where it is noted how beads failed.
    Failures,
    /// Among the repair options.
    Options,
    /// With the readings of moisture.
    Moisture,
    /// With the dates.
    Dates,
    /// Where the house is said to be.
    House,
    /// Where its year is.
    YearBuilt,
    /// With the shares of the price.
    Payers,
    /// With the timed section.
    TimedSection,
}

/// The date so many days after the visit.
pub fn date_after(job: &Job, days: usize) -> Date {
    date_on(job, i64::try_from(days).unwrap_or(i64::MAX))
}

/// The date so many days from the visit, before it below zero; the visit's where that is past the calendar.
pub fn date_on(job: &Job, day: i64) -> Date {
    let days = jiff::Span::new().try_days(day);
    days.and_then(|days| job.visited.checked_add(days)).unwrap_or(job.visited)
}
