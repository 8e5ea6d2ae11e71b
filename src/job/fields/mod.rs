//! Everything a person can enter into a job, each once: its id, its place in the job's file, its range,
//! and what is done when it is out of range.
//!
//! The widgets of the window, the check of a job, the mending of values that cannot be, the links from a
//! message to its field, and the schema of the job's file all read [`FIELDS`]. The label of a field is
//! the message `field-<id>` of the words' catalogs, with a `hint` where one is needed.
//!
//! Adding a field takes an entry in the table of its subject under `table/`, a label in `fields.ftl`, and
//! its tab in `app/field_place.rs`; tests find what is missing.

mod access;
mod table;
#[cfg(test)]
mod tests;

pub use table::*;

use super::document::Job;
use crate::measure::Quantity;
use crate::repair::PriceLine;

/// One thing a person can enter.
#[derive(Debug)]
pub struct Field {
    /// Its stable id, in words joined by hyphens.
    pub id: &'static str,
    /// Its place in the job's file: names of fields joined by points, `[]` after a list, and `|` between
    /// names of which a file has one or the other.
    pub path: &'static str,
    /// How often it stands in a job.
    pub each: Each,
    /// What it takes.
    pub kind: Kind,
}

/// How often a field stands in a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Each {
    /// Once.
    Job,
    /// In every surface.
    Surface,
    /// In every opening of every surface.
    Opening,
    /// In every divider of every surface.
    Divider,
    /// In every section of every surface.
    Section,
    /// In every gap reading.
    Gap,
    /// In every meter reading.
    Moisture,
    /// In every reading of the room's air.
    Room,
    /// In every month of an air by hand.
    Month,
    /// In every later visit.
    Visit,
    /// In every gap of every later visit.
    LaterGap,
    /// In every reading of a delivery.
    Stacked,
}

impl Each {
    /// Whether it stands in every surface, or in every part of one: then the first index of its entries is
    /// that of the surface.
    pub const fn is_of_surface(self) -> bool {
        matches!(self, Self::Surface | Self::Opening | Self::Divider | Self::Section)
    }
}

/// Which of the entries of a field: up to two indices into the job's lists, the outer first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct At(pub usize, pub usize);

impl At {
    /// The entry of a field that stands once.
    pub const ONCE: Self = Self(0, 0);

    /// The entry in a list.
    pub const fn index(index: usize) -> Self {
        Self(index, 0)
    }
}

/// What a field takes.
#[derive(Debug)]
pub enum Kind {
    /// A figure within a range.
    Figure(Figure),
    /// Any number of figures, all within one range.
    Figures(Figures),
    /// Free text.
    Text,
    /// A date.
    Date,
    /// One of a few.
    Choice,
    /// An entry of the catalog, by its id.
    Catalog,
    /// A file that is chosen and kept with the job.
    File,
    /// A list of things other than figures.
    List,
}

/// A figure that can be entered.
#[derive(Debug)]
pub struct Figure {
    /// The least it can be.
    pub low: Quantity,
    /// The most it can be.
    pub high: Quantity,
    /// What is done with one out of that range.
    pub mending: Mending,
    /// Whether it may be left empty.
    pub optional: bool,
    /// The figure of a job; `None` where it is empty, or where there is no such entry.
    pub read: fn(&Job, At) -> Option<Quantity>,
    /// Sets the figure of a job. An entry that is not there is left alone.
    pub write: fn(&mut Job, At, Option<Quantity>),
}

/// What is used in place of a figure; `None` leaves it out.
pub type Mend<'a> = &'a dyn Fn(Quantity) -> Option<Quantity>;

/// Figures in a list, such as the corners of an outline or the hours of tasks.
#[derive(Debug)]
pub struct Figures {
    /// The least that each can be.
    pub low: Quantity,
    /// The most that each can be.
    pub high: Quantity,
    /// What is done with one out of that range: it is moved to the nearest end, or its item is left out.
    pub mending: Mending,
    /// How many items are used at most.
    pub most: usize,
    /// The figures of a job, each with the item it belongs to.
    pub read: fn(&Job, At) -> Vec<(Item, Quantity)>,
    /// Puts in place of each figure what it becomes, and leaves out the items of those that become
    /// nothing and all items past the given number.
    pub mend: fn(&mut Job, At, usize, Mend<'_>),
}

/// An item of a list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Item {
    /// By its place, from 1.
    Number(usize),
    /// By its id, or by its name where it has none.
    Id(String),
    /// A line of the price.
    Line(PriceLine),
}

/// What is done with a figure that is out of its range.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mending {
    /// The nearest end of the range is used.
    Nearest,
    /// It does not count: an empty entry stands in its place, or the reading or item it belongs to is left
    /// out.
    LeaveOut,
}

impl Mending {
    /// What is used in place of a figure that is to be from `low` to `high`; `None` if it is left out.
    fn of(self, quantity: Quantity, low: Quantity, high: Quantity) -> Option<Quantity> {
        match self {
            _ if (low..=high).contains(&quantity) => Some(quantity),
            Self::Nearest if quantity < low => Some(low),
            Self::Nearest => Some(high),
            Self::LeaveOut => None,
        }
    }
}

impl Figure {
    /// Whether this figure can be.
    pub fn holds(&self, quantity: Quantity) -> bool {
        (self.low..=self.high).contains(&quantity)
    }

    /// What is used in place of a figure that cannot be; `None` if it is left out.
    pub fn mended(&self, quantity: Quantity) -> Option<Quantity> {
        self.mending.of(quantity, self.low, self.high)
    }
}

impl Figures {
    /// Whether this figure can be.
    pub fn holds(&self, quantity: Quantity) -> bool {
        (self.low..=self.high).contains(&quantity)
    }

    /// What is used in place of a figure that cannot be; `None` if its item is left out.
    pub fn mended(&self, quantity: Quantity) -> Option<Quantity> {
        self.mending.of(quantity, self.low, self.high)
    }
}

impl Field {
    /// The field of this id.
    pub fn of(id: &str) -> Option<&'static Self> {
        FIELDS.iter().copied().find(|field| field.id == id)
    }

    /// The field's figure, if it takes one.
    pub const fn figure(&self) -> Option<&Figure> {
        match &self.kind {
            Kind::Figure(figure) => Some(figure),
            _ => None,
        }
    }

    /// The field's list of figures, if it takes one.
    pub const fn figures(&self) -> Option<&Figures> {
        match &self.kind {
            Kind::Figures(figures) => Some(figures),
            _ => None,
        }
    }
}

/// Two fields are the same if their ids are.
impl PartialEq for Field {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
    }
}

impl Eq for Field {}
