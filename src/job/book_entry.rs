//! Entries of a price book: which of them are the same, and what keeps one from being used.

use super::book_figure::{
    BookFigures, BookNames, of_board, of_material, of_method, of_paint, of_sealant, of_task,
};
use super::catalog::CatalogBoard;
use crate::joint::Sealant;
use crate::measure::{Dimension, Money, ThreePoint};
use crate::named::{Named, place_of};
use crate::repair::{Material, Outcome, Paint, RepairMethod, Step, Task};

/// An entry of a price book.
pub(super) trait Entry: Clone {
    /// What people read.
    fn name(&self) -> &str;
    /// The place in a list of the entry that this one stands for.
    fn place_in(&self, entries: &[Self]) -> Option<usize>;
    /// Whether its name is another's too, be it one of the names that the other had.
    fn shares_name(&self, other: &Self) -> bool;
    /// The entry as it stands in for `known`, which the rest refers to by its id: an entry that was written
    /// when there were no ids takes the id, and the present name if its own is one of the names that
    /// `known` had.
    fn in_place_of(&self, known: &Self) -> Self;
    /// Its figures, but for its name. `book` has the names of the price book that it stands in.
    fn figures(&self, book: BookNames<'_>) -> BookFigures;
    /// What keeps it from being used.
    fn fault(&self) -> Option<EntryFault>;
}

/// How an entry with a name of its own is found.
macro_rules! by_name {
    () => {
        fn name(&self) -> &str {
            Named::name(self)
        }
        fn place_in(&self, entries: &[Self]) -> Option<usize> {
            place_of(entries, self)
        }
        fn shares_name(&self, other: &Self) -> bool {
            let named = |one: &Self, other: &Self| other.calls().any(|name| name == Named::name(one));
            named(self, other) || named(other, self)
        }
    };
}

/// How an entry takes over the id and the names of another, and of these fields what it lacks.
macro_rules! renamed {
    ($($lacking:ident)*) => {
        fn in_place_of(&self, known: &Self) -> Self {
            let mut entry = self.clone();
            entry.id.clone_from(&known.id);
            if self.shares_name(known) {
                entry.name.clone_from(&known.name);
            }
            let more = known.aliases.iter().filter(|alias| !self.aliases.contains(alias));
            entry.aliases.extend(more.cloned());
            $(entry.$lacking = entry.$lacking.or(known.$lacking);)*
            entry
        }
    };
}

/// What keeps an entry of the price book from being used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EntryFault {
    /// A figure is out of its range.
    OutOfRange {
        /// Which.
        figure: EntryFigure,
        /// The figure, in the unit of its kind.
        value: f64,
        /// The least it can be.
        low: f64,
        /// The most it can be.
        high: f64,
    },
    /// It is sold in no pack or can.
    NoPack,
    /// Its minutes are not above 0, or do not rise from least to most.
    MinutesOutOfOrder(ThreePoint),
    /// A method has no task among its steps.
    NoTask,
    /// A method that mends joints has fewer than three tasks.
    TooFewTasks,
}

/// A figure of an entry of the price book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EntryFigure {
    /// What a sealant may be stretched, percent of its width.
    Stretch,
    /// What a sealant may be squeezed, percent of its width.
    Squeeze,
    /// What is left when it has dried, percent by volume.
    Solids,
    /// What of a paint reaches the wood, percent.
    Transfer,
    /// Until a sealant may be painted, hours.
    Cure,
    /// Until the next coat, hours.
    Recoat,
    /// Dry film of a coat, micrometers.
    Film,
    /// What a pack or can holds, liters.
    Pack,
    /// A price, units of money.
    Price,
    /// What a piece is enough for, in SI units.
    Coverage(Dimension),
    /// What a batch of a task is, in SI units.
    Batch(Dimension),
}

impl EntryFigure {
    /// As a key to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Stretch => "stretch",
            Self::Squeeze => "squeeze",
            Self::Solids => "solids",
            Self::Transfer => "transfer",
            Self::Cure => "cure",
            Self::Recoat => "recoat",
            Self::Film => "film",
            Self::Pack => "pack",
            Self::Price => "price",
            Self::Coverage(_) => "coverage",
            Self::Batch(_) => "batch",
        }
    }

    /// The least and the most it can be.
    pub const fn range(self) -> (f64, f64) {
        match self {
            Self::Stretch | Self::Squeeze => (0.0, 200.0),
            Self::Solids | Self::Transfer => (5.0, 100.0),
            Self::Cure => (0.0, 2000.0),
            Self::Recoat => (0.0, 500.0),
            Self::Film => (1.0, 1000.0),
            Self::Pack => (0.01, 1000.0),
            Self::Price => (0.0, 1e6),
            Self::Coverage(_) | Self::Batch(_) => (1e-4, 1e6),
        }
    }

    /// The fault of a figure that is out of its range.
    fn fault(self, value: f64) -> Option<EntryFault> {
        let (low, high) = self.range();
        let fault = EntryFault::OutOfRange { figure: self, value, low, high };
        (!(low..=high).contains(&value)).then_some(fault)
    }
}

impl Entry for CatalogBoard {
    by_name! {}
    fn in_place_of(&self, _known: &Self) -> Self {
        self.clone()
    }
    fn figures(&self, _book: BookNames<'_>) -> BookFigures {
        of_board(self)
    }
    fn fault(&self) -> Option<EntryFault> {
        None
    }
}

impl Entry for Sealant {
    by_name! {}
    renamed! {}
    fn figures(&self, _book: BookNames<'_>) -> BookFigures {
        of_sealant(self)
    }
    fn fault(&self) -> Option<EntryFault> {
        let pack = |pack: &crate::joint::Pack| {
            EntryFigure::Pack
                .fault(pack.holds.to_litres())
                .or_else(|| EntryFigure::Price.fault(pack.price.to_units()))
        };
        EntryFigure::Stretch
            .fault(self.stretch.to_pct())
            .or_else(|| EntryFigure::Squeeze.fault(self.squeeze.to_pct()))
            .or_else(|| EntryFigure::Solids.fault(self.solids.to_pct()))
            .or_else(|| EntryFigure::Cure.fault(self.cure.to_h()))
            .or_else(|| self.packs.is_empty().then_some(EntryFault::NoPack))
            .or_else(|| self.packs.iter().find_map(pack))
    }
}

impl Entry for Paint {
    by_name! {}
    renamed! {}
    fn figures(&self, _book: BookNames<'_>) -> BookFigures {
        of_paint(self)
    }
    fn fault(&self) -> Option<EntryFault> {
        let can = |(liters, price): &(f64, Money)| {
            EntryFigure::Pack.fault(*liters).or_else(|| EntryFigure::Price.fault(price.to_units()))
        };
        EntryFigure::Solids
            .fault(self.solids.to_pct())
            .or_else(|| EntryFigure::Transfer.fault(self.transfer.to_pct()))
            .or_else(|| EntryFigure::Transfer.fault(self.sprayed?.to_pct()))
            .or_else(|| EntryFigure::Film.fault(self.film))
            .or_else(|| EntryFigure::Recoat.fault(self.recoat.to_h()))
            .or_else(|| self.cans.is_empty().then_some(EntryFault::NoPack))
            .or_else(|| self.cans.iter().find_map(can))
    }
}

impl Entry for Material {
    by_name! {}
    // A price book of old has the size of a strip in its name.
    renamed! { section waste }
    fn figures(&self, _book: BookNames<'_>) -> BookFigures {
        of_material(self)
    }
    fn fault(&self) -> Option<EntryFault> {
        EntryFigure::Coverage(self.per.dimension())
            .fault(self.holds)
            .or_else(|| EntryFigure::Price.fault(self.price.to_units()))
    }
}

impl Entry for Task {
    by_name! {}
    fn in_place_of(&self, known: &Self) -> Self {
        // A price book has no say in what a task is.
        Self {
            formerly: known.formerly.clone(),
            short: self.short.clone().or_else(|| known.short.clone()),
            trade: known.trade,
            people: known.people,
            ..self.clone()
        }
    }
    fn figures(&self, _book: BookNames<'_>) -> BookFigures {
        of_task(self)
    }
    fn fault(&self) -> Option<EntryFault> {
        let rises = self.minutes.is_in_order() && self.minutes.likely > 0.0;
        (!rises)
            .then_some(EntryFault::MinutesOutOfOrder(self.minutes))
            .or_else(|| EntryFigure::Batch(self.per.dimension()).fault(self.batch))
            .or_else(|| self.also.and_then(|also| EntryFigure::Batch(also.per.dimension()).fault(also.batch)))
    }
}

impl Entry for RepairMethod {
    fn name(&self) -> &str {
        &self.name
    }
    fn place_in(&self, entries: &[Self]) -> Option<usize> {
        entries.iter().position(|known| known.id == self.id)
    }
    fn shares_name(&self, other: &Self) -> bool {
        self.name == other.name
    }
    fn in_place_of(&self, _known: &Self) -> Self {
        self.clone()
    }
    fn figures(&self, book: BookNames<'_>) -> BookFigures {
        of_method(self, book)
    }
    fn fault(&self) -> Option<EntryFault> {
        let tasks = self.steps.iter().filter(|step| matches!(step, Step::Do(_) | Step::Coats(_)));
        match tasks.count() {
            0 => Some(EntryFault::NoTask),
            count if count < 3 && self.outcome != Outcome::Unchanged => Some(EntryFault::TooFewTasks),
            _ => None,
        }
    }
}
