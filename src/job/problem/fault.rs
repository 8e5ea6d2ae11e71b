//! What can be wrong with a job. Each fault carries the values that its message names, among them what is
//! used in place of a value that cannot be.

use jiff::civil::Date;

use super::Severity;
use crate::job::fields::Item;
use crate::job::price_book::EntryFault;
use crate::measure::{Length, Moisture, Percent, Quantity, Temperature, ThreePoint};
use crate::repair::PriceLine;
use crate::surface;

/// What is wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum Fault {
    // The file.
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

    // Ranges.
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

    // The drawing.
    /// Something is wrong with the drawing.
    Drawing(surface::FaultKind),
    /// A surface has no sections.
    NoBoards {
        /// Its name.
        surface: String,
    },
    /// Two surfaces have the same name.
    SameSurface {
        /// The name.
        name: String,
    },
    /// Two sections of a surface have the same name.
    SameSection {
        /// The name.
        name: String,
    },
    /// The edge profiles of a board would meet.
    ProfileTooWide {
        /// Size of the profile.
        size: Length,
        /// Half the face of the board, which is used in its place.
        used: Length,
    },
    /// What the job names is not in the catalog.
    NotInCatalog {
        /// What it is.
        listed: Listed,
        /// The name.
        name: String,
    },

    // Readings.
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
    /// The date of a reading does not fit the other dates.
    ReadingDated {
        /// How.
        dated: Dated,
        /// The date of the reading.
        date: Date,
    },

    // The air.
    /// The house is cooled to less than it is heated to.
    CoolsBelowHeat {
        /// The AC setpoint.
        cool: Temperature,
        /// The heat setpoint, at which the rooms are taken to stay.
        heat: Temperature,
    },

    // Dates.
    /// The boards were installed after the visit.
    InstalledAfterVisit {
        /// The day of the install.
        installed: Date,
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

    // The plan.
    /// The contractor and the supplier pay more than the whole.
    SharesOverWhole {
        /// The line of the price; `None` for the price as a whole.
        line: Option<PriceLine>,
        /// The contractor's share.
        contractor: Percent,
        /// The supplier's share.
        supplier: Percent,
        /// The supplier's share that is used.
        used: Percent,
    },
    /// No stock length is long enough for the longest board.
    StockTooShort {
        /// The longest board.
        board: Length,
        /// The longest stock length.
        stock: Length,
        /// What of it is good after ends and defects.
        good: Length,
    },
    /// There is no stock length.
    NoStock,
    /// The minutes of a task do not rise from least to most.
    MinutesOutOfOrder {
        /// Id of the task.
        task: String,
        /// The minutes.
        minutes: ThreePoint,
    },
    /// A section was timed, and the minutes are still to be typed.
    NoTimedMinutes,
    /// The section that was timed is not in the drawing.
    NoSuchTimedSection {
        /// Its surface.
        surface: String,
        /// Its name.
        section: String,
    },

    // The price book.
    /// An entry of the price book cannot be used.
    BookEntry {
        /// Its name.
        entry: String,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// A repair method of the user's own has a step that is no task.
    UnknownStep {
        /// The method.
        method: String,
        /// The step.
        step: String,
    },
    /// Prices are older than a year.
    OldPrices {
        /// What they are of.
        names: Vec<String>,
    },

    // What follows from the entries.
    /// A section's gaps are wider than drying from green explains.
    BeyondDrying {
        /// The mean gap.
        gap: Length,
    },
    /// Paint and backing let no water through at all.
    SealedOff,
    /// Joints open past the tongue at the driest.
    OpensPastTongue {
        /// The widest gap of the year.
        gap: Length,
        /// Length of the tongue.
        tongue: Length,
    },
    /// Boards are wetter than their room keeps them.
    Wetted {
        /// Their moisture.
        moisture: Moisture,
        /// The wettest that the room keeps them.
        wettest: Moisture,
    },
    /// Boards push at joints that close.
    Pushes {
        /// How many measured joints close.
        joints: usize,
        /// The joint that is pushed most.
        most: String,
        /// By how much.
        push: Length,
    },
}

/// What a job names in the catalog.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Listed {
    /// A species.
    Species,
    /// A place with a climate.
    Place,
    /// A sealant.
    Sealant,
    /// A primer.
    Primer,
    /// A paint.
    Paint,
}

impl Listed {
    /// As a key to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Species => "species",
            Self::Place => "place",
            Self::Sealant => "sealant",
            Self::Primer => "primer",
            Self::Paint => "paint",
        }
    }
}

/// How the date of a reading does not fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dated {
    /// It is after the visit on this day.
    AfterVisit(Date),
    /// It is before the boards were installed on this day.
    BeforeInstall(Date),
    /// It is so many days before the visit.
    DaysBefore(u32),
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

impl Fault {
    /// How much it matters.
    pub const fn severity(&self) -> Severity {
        match self {
            Self::Drawing(kind) if kind.is_fatal() => Severity::Error,
            Self::ReadingDated { dated: Dated::DaysBefore(_), .. }
            | Self::UnknownEntry { .. }
            | Self::NoReading
            | Self::NoTimedMinutes
            | Self::OldPrices { .. }
            | Self::Pushes { .. } => Severity::Note,
            Self::Drawing(_)
            | Self::NoBoards { .. }
            | Self::NearTongue { .. }
            | Self::GapsDiffer { .. }
            | Self::MoisturesDiffer { .. }
            | Self::MeterUnsure { .. }
            | Self::StockTooShort { .. }
            | Self::BeyondDrying { .. }
            | Self::SealedOff
            | Self::OpensPastTongue { .. }
            | Self::Wetted { .. } => Severity::Warning,
            Self::LeftOut { .. }
            | Self::OutOfRange { .. }
            | Self::ItemOutOfRange { .. }
            | Self::TooMany { .. }
            | Self::SameSurface { .. }
            | Self::SameSection { .. }
            | Self::ProfileTooWide { .. }
            | Self::NotInCatalog { .. }
            | Self::NoSuchJoint { .. }
            | Self::NoSuchSection { .. }
            | Self::ReadingDated { .. }
            | Self::CoolsBelowHeat { .. }
            | Self::InstalledAfterVisit { .. }
            | Self::BuiltAfterVisit { .. }
            | Self::SealsBeforeVisit { .. }
            | Self::SealsTooLate { .. }
            | Self::SharesOverWhole { .. }
            | Self::NoStock
            | Self::MinutesOutOfOrder { .. }
            | Self::NoSuchTimedSection { .. }
            | Self::BookEntry { .. }
            | Self::UnknownStep { .. } => Severity::Error,
        }
    }
}
