//! What can be wrong with a job. Each fault carries the values that its message names, among them what is
//! used in place of a value that cannot be.

use super::Severity;
use super::entry::{DateFault, Dated, FileFault, RangeFault, ReadingFault};
use super::whole::{BookFault, LayoutFault, PlanFault, SectionFault};
use crate::job::fields::Item;
use crate::measure::Temperature;
use crate::surface;

/// What is wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum Fault {
    /// Of the text of the file.
    File(FileFault),
    /// Of a figure that cannot be.
    Range(RangeFault),
    /// Of a drawing.
    Drawing(surface::FaultKind),
    /// Of surfaces and their boards.
    Layout(LayoutFault),
    /// Of a reading.
    Reading(ReadingFault),
    /// Of dates that do not follow one another.
    Date(DateFault),
    /// Of the plan.
    Plan(PlanFault),
    /// Of the price book.
    Book(BookFault),
    /// Of the state of a section.
    Section(SectionFault),
    /// What the job names is not in the catalog.
    NotInCatalog {
        /// What it is.
        listed: Listed,
        /// The name.
        name: String,
    },
    /// The climate of a place cannot be read: the program's own table is damaged.
    ClimateUnreadable {
        /// The place.
        place: String,
    },
    /// The house is cooled to less than it is heated to.
    CoolsBelowHeat {
        /// The AC setpoint.
        cool: Temperature,
        /// The heat setpoint, at which the rooms are taken to stay.
        heat: Temperature,
    },
}

macro_rules! from {
    ($($kind:ident($type:ty)),+ $(,)?) => {
        $(impl From<$type> for Fault {
            fn from(fault: $type) -> Self {
                Self::$kind(fault)
            }
        })+
    };
}

from! {
    File(FileFault),
    Range(RangeFault),
    Drawing(surface::FaultKind),
    Layout(LayoutFault),
    Reading(ReadingFault),
    Date(DateFault),
    Plan(PlanFault),
    Book(BookFault),
    Section(SectionFault),
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

impl Fault {
    /// The item of a field's list that it is about, where it is about one.
    pub fn item(&self) -> Option<Item> {
        match self {
            Self::Range(RangeFault::ItemOutOfRange { item, .. }) => Some(item.clone()),
            Self::Plan(PlanFault::SharesOverWhole { line, .. }) => line.map(Item::Line),
            Self::Plan(PlanFault::MinutesOutOfOrder { task, .. }) => Some(Item::Id(task.clone())),
            Self::Book(
                BookFault::BookEntry { entry: name, .. } | BookFault::UnknownStep { method: name, .. },
            ) => Some(Item::Id(name.clone())),
            _ => None,
        }
    }

    /// How much it matters.
    pub const fn severity(&self) -> Severity {
        match self {
            Self::File(FileFault::UnknownEntry { .. })
            | Self::Reading(
                ReadingFault::NoReading | ReadingFault::ReadingDated { dated: Dated::DaysBefore(_), .. },
            )
            | Self::Plan(
                PlanFault::NoTimedMinutes | PlanFault::NoSuchTask { .. } | PlanFault::WageLikeCharge { .. },
            )
            | Self::Book(BookFault::OldPrices { .. } | BookFault::FormerRates { .. })
            | Self::Section(SectionFault::Pushes { .. }) => Severity::Note,
            Self::Drawing(kind) if kind.is_fatal() => Severity::Error,
            Self::Drawing(_)
            | Self::Layout(LayoutFault::NoBoards { .. })
            | Self::Reading(
                ReadingFault::NearTongue { .. }
                | ReadingFault::GapsDiffer { .. }
                | ReadingFault::MoisturesDiffer { .. }
                | ReadingFault::MeterUnsure { .. }
                | ReadingFault::OpenBetweenFixed { .. }
                | ReadingFault::AllClosed { .. }
                | ReadingFault::NotThisRoom { .. }
                | ReadingFault::MeterUnlikeRest { .. },
            )
            | Self::Date(DateFault::ReadBeforeDelivery { .. } | DateFault::ReadTooLate { .. })
            | Self::Plan(PlanFault::StockTooShort { .. })
            | Self::Section(_) => Severity::Warning,
            Self::File(_)
            | Self::Range(_)
            | Self::Layout(_)
            | Self::Reading(_)
            | Self::Date(_)
            | Self::Plan(_)
            | Self::Book(_)
            | Self::NotInCatalog { .. }
            | Self::ClimateUnreadable { .. }
            | Self::CoolsBelowHeat { .. } => Severity::Error,
        }
    }
}
