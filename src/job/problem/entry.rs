//! Faults of single entries: of the file, of ranges, of readings, of dates.

use jiff::civil::Date;

use crate::job::fields::Item;
use crate::measure::{DayOrMonth, Humidity, Length, Moisture, Quantity};

/// What is wrong with the text of a job's file.
#[derive(Debug, Clone, PartialEq)]
pub enum FileFault {
    /// A piece of the file could not be read and was left out.
    LeftOut {
        /// What the reader met.
        reason: Unread,
        /// The piece, shortened.
        text: String,
    },
    /// A field of the file that this program does not know. It is kept.
    UnknownEntry {
        /// Its name.
        name: String,
    },
}

/// What the reader of a file met.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unread {
    /// A field that is not known.
    UnknownField(String),
    /// A struct lacks this field.
    MissingField(String),
    /// A field stands twice.
    TwiceField(String),
    /// No choice of this name.
    UnknownChoice(String),
    /// Something else was expected: a number, a text, a list, a bracket.
    Expected(&'static str),
    /// The text ends too early.
    Ends,
    /// Something follows the job.
    Trailing,
    /// What the reader says in its own words.
    Other(String),
}

impl Unread {
    /// As a key to select a message by.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::UnknownField(_) => "unknown-field",
            Self::MissingField(_) => "missing-field",
            Self::TwiceField(_) => "twice-field",
            Self::UnknownChoice(_) => "unknown-choice",
            Self::Expected(what) => what,
            Self::Ends => "ends",
            Self::Trailing => "trailing",
            Self::Other(_) => "other",
        }
    }

    /// The name or the words that it is about; empty where there are none.
    pub fn about(&self) -> &str {
        match self {
            Self::UnknownField(name)
            | Self::MissingField(name)
            | Self::TwiceField(name)
            | Self::UnknownChoice(name)
            | Self::Other(name) => name,
            Self::Expected(_) | Self::Ends | Self::Trailing => "",
        }
    }
}

/// A figure that cannot be.
#[derive(Debug, Clone, PartialEq)]
pub enum RangeFault {
    /// A figure is out of its range.
    OutOfRange {
        /// The figure.
        value: Quantity,
        /// The least it can be.
        low: Quantity,
        /// The most it can be.
        high: Quantity,
        /// What is used in its place; `None` if it is left out.
        used: Option<Quantity>,
    },
    /// A figure in a list is out of its range.
    ItemOutOfRange {
        /// What in the list it is of.
        item: Item,
        /// The figure.
        value: Quantity,
        /// The least it can be.
        low: Quantity,
        /// The most it can be.
        high: Quantity,
        /// What is used in its place; `None` if the item is left out.
        used: Option<Quantity>,
    },
    /// A list has more items than are used.
    TooMany {
        /// How many there are.
        count: usize,
        /// How many are used.
        most: usize,
    },
}

/// What is wrong with a reading.
#[derive(Debug, Clone, PartialEq)]
pub enum ReadingFault {
    /// A gap reading is of a joint that is not in the drawing.
    NoSuchJoint {
        /// Its surface.
        surface: String,
        /// Its joint.
        joint: String,
    },
    /// A meter reading is of a section that is not in the drawing.
    NoSuchSection {
        /// Its surface.
        surface: String,
        /// Its section.
        section: String,
    },
    /// A gap is about as wide as the tongue is long.
    NearTongue {
        /// The gap.
        width: Length,
        /// Length of the tongue.
        tongue: Length,
    },
    /// Two readings of a joint cannot both be right.
    GapsDiffer {
        /// The joint.
        joint: String,
        /// The earlier reading.
        earlier: Length,
        /// The later one.
        later: Length,
    },
    /// Two meter readings of a board cannot both be right.
    MoisturesDiffer {
        /// The earlier reading.
        earlier: Moisture,
        /// The later one.
        later: Moisture,
    },
    /// A meter reading has no figure yet.
    NoReading,
    /// A figure at which a pin meter is not to be trusted.
    MeterUnsure {
        /// The figure.
        reading: Moisture,
        /// From here on it can be trusted.
        low: Moisture,
        /// Up to here it can be trusted.
        high: Moisture,
    },
    /// A humidity that the room, as it was described, does not have at that time of the year.
    NotThisRoom {
        /// The reading.
        reading: Humidity,
        /// The least it would have.
        low: Humidity,
        /// The most it would have.
        high: Humidity,
    },
    /// An open joint between boards that are nailed at both edges, which cannot open it.
    OpenBetweenFixed {
        /// The joint.
        joint: String,
        /// Its gap.
        width: Length,
    },
    /// All of several gaps are closed: nothing has opened.
    AllClosed {
        /// How many.
        count: usize,
    },
    /// Meter readings that contradict everything else that is known.
    MeterUnlikeRest {
        /// Their mean.
        says: Moisture,
        /// The least the rest expects.
        low: Moisture,
        /// The most.
        high: Moisture,
    },
    /// The date of a reading does not fit the other dates.
    ReadingDated {
        /// How.
        dated: Dated,
        /// The date of the reading.
        date: Date,
    },
}

/// How the date of a reading does not fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dated {
    /// It is after the visit on this day.
    AfterVisit(Date),
    /// It is before the boards were installed, on this day or in this month.
    BeforeInstall(DayOrMonth),
    /// It is so many days before the visit.
    DaysBefore(u32),
}

/// Dates that do not follow one another.
#[derive(Debug, Clone, PartialEq)]
pub enum DateFault {
    /// The boards were installed after the visit.
    InstalledAfterVisit {
        /// The day or the month of the install.
        installed: DayOrMonth,
        /// The day of the visit.
        visited: Date,
    },
    /// The house was built after the visit.
    BuiltAfterVisit {
        /// The year it was built.
        built: i16,
        /// The day of the visit.
        visited: Date,
    },
    /// The day of sealing is before the visit.
    SealsBeforeVisit {
        /// The day of sealing.
        date: Date,
        /// The day of the visit.
        visited: Date,
    },
    /// The day of sealing is past what is worked out.
    SealsTooLate {
        /// The day of sealing.
        date: Date,
        /// The last day that can be.
        last: Date,
    },
    /// Boards are wanted before they are delivered.
    WantedBeforeDelivery {
        /// The day they are wanted.
        wanted: Date,
        /// The day they are delivered.
        delivered: Date,
    },
    /// A board was metered before the delivery.
    ReadBeforeDelivery {
        /// The day of the reading.
        date: Date,
        /// The day of the delivery, as which it counts.
        delivered: Date,
    },
    /// A board was metered so long after the delivery that its date is a slip.
    ReadTooLate {
        /// The day of the reading.
        date: Date,
        /// The day of the delivery.
        delivered: Date,
    },
}
