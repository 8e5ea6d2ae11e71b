//! The figures a job goes by, kept with the job, and a user's own shelf in a file.

use std::borrow::Cow;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::catalog::Catalog;
use super::fields::{self, Field};
use super::letterhead::Contractor;
use crate::joint::Sealant;
use crate::measure::{Money, ThreePoint};
use crate::repair::{Material, Outcome, Paint, Prices, RepairMethod, Step, Task};
use crate::surface::BoardSpec;

/// Boards under a name.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "ShelfBoard")]
pub struct CatalogBoard {
    /// The name.
    pub name: String,
    /// The boards.
    pub board: BoardSpec,
}

/// What of the shelf is the user's to change. In the job it is what the job goes by; in a file of its
/// own it is what new jobs start with.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields, rename = "OwnShelf")]
pub struct PriceBook {
    /// The day the figures were taken.
    pub taken: Option<Date>,
    /// Boards that are often used.
    pub boards: Vec<CatalogBoard>,
    /// Sealants.
    pub sealants: Vec<Sealant>,
    /// Primers and paints.
    pub paints: Vec<Paint>,
    /// Other materials.
    pub materials: Vec<Material>,
    /// Tasks.
    pub tasks: Vec<Task>,
    /// Ways to mend the joints that are the user's own.
    pub methods: Vec<RepairMethod>,
    /// Rates of money that new jobs start with.
    pub prices: Option<Prices>,
    /// Who writes the papers, in new jobs.
    pub contractor: Option<Contractor>,
}

/// Something with a name on the shelf.
trait Entry: Clone + Serialize {
    /// By what the rest refers to it.
    fn key(&self) -> String;
    /// By what people know it.
    fn name(&self) -> String;
    /// What keeps it from being used.
    fn fault(&self) -> Option<EntryFault>;
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
    /// What a piece is enough for, in the unit of the material.
    Coverage,
    /// What a batch of a task is, in the unit of the task.
    Batch,
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
            Self::Coverage => "coverage",
            Self::Batch => "batch",
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
            Self::Coverage | Self::Batch => (1e-4, 1e6),
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
    fn key(&self) -> String {
        self.name.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<EntryFault> {
        None
    }
}

impl Entry for Sealant {
    fn key(&self) -> String {
        self.name.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
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
    fn key(&self) -> String {
        self.name.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<EntryFault> {
        let can = |(liters, price): &(f64, Money)| {
            EntryFigure::Pack.fault(*liters).or_else(|| EntryFigure::Price.fault(price.to_units()))
        };
        EntryFigure::Solids
            .fault(self.solids.to_pct())
            .or_else(|| EntryFigure::Transfer.fault(self.transfer.to_pct()))
            .or_else(|| EntryFigure::Film.fault(self.film))
            .or_else(|| EntryFigure::Recoat.fault(self.recoat.to_h()))
            .or_else(|| self.cans.is_empty().then_some(EntryFault::NoPack))
            .or_else(|| self.cans.iter().find_map(can))
    }
}

impl Entry for Material {
    fn key(&self) -> String {
        self.id.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<EntryFault> {
        EntryFigure::Coverage.fault(self.holds).or_else(|| EntryFigure::Price.fault(self.price.to_units()))
    }
}

impl Entry for Task {
    fn key(&self) -> String {
        self.id.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<EntryFault> {
        let rises = self.minutes.is_in_order() && self.minutes.likely > 0.0;
        (!rises)
            .then_some(EntryFault::MinutesOutOfOrder(self.minutes))
            .or_else(|| EntryFigure::Batch.fault(self.batch))
    }
}

impl Entry for RepairMethod {
    fn key(&self) -> String {
        self.id.key()
    }
    fn name(&self) -> String {
        self.name.clone()
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

/// One figure that differs between two shelves.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Name of the entry.
    pub entry: String,
    /// What of it; nothing where the whole entry is new or gone.
    pub field: String,
    /// As it is now.
    pub now: String,
    /// As it would be.
    pub then: String,
}

impl PriceBook {
    /// What of `catalog` a job takes with it.
    pub fn of(catalog: &Catalog, taken: Date) -> Self {
        Self {
            taken: Some(taken),
            boards: catalog.boards.clone(),
            sealants: catalog.sealants.clone(),
            paints: catalog.paints.clone(),
            materials: catalog.materials.clone(),
            tasks: catalog.tasks.clone(),
            methods: catalog.methods.iter().filter(|method| method.id.is_own()).cloned().collect(),
            prices: None,
            contractor: None,
        }
    }

    /// Every entry that cannot be used: the field of its list, its name, and what is wrong with it.
    pub fn faults(&self) -> Vec<(&'static Field, String, EntryFault)> {
        fn of<T: Entry>(
            field: &'static Field,
            entries: &[T],
        ) -> impl Iterator<Item = (&'static Field, String, EntryFault)> {
            entries.iter().filter_map(move |entry| Some((field, entry.name(), entry.fault()?)))
        }
        let things = of(&fields::BOOK_SEALANTS, &self.sealants).chain(of(&fields::BOOK_PAINTS, &self.paints));
        let things = things.chain(of(&fields::BOOK_MATERIALS, &self.materials));
        things
            .chain(of(&fields::BOOK_TASKS, &self.tasks))
            .chain(of(&fields::BOOK_METHODS, &self.methods))
            .collect()
    }

    /// What differs from `then`, entry by entry and figure by figure.
    pub fn differences(&self, then: &Self) -> Vec<Difference> {
        let mut found = Vec::new();
        compare(&self.boards, &then.boards, &mut found);
        compare(&self.sealants, &then.sealants, &mut found);
        compare(&self.paints, &then.paints, &mut found);
        compare(&self.materials, &then.materials, &mut found);
        compare(&self.tasks, &then.tasks, &mut found);
        compare(&self.methods, &then.methods, &mut found);
        found
    }
}

fn compare<T: Entry>(now: &[T], then: &[T], found: &mut Vec<Difference>) {
    let whole = |entry: &T, now: &str, then: &str| Difference {
        entry: entry.name(),
        field: String::new(),
        now: now.to_owned(),
        then: then.to_owned(),
    };
    for entry in now {
        match then.iter().find(|other| other.key() == entry.key()) {
            None => found.push(whole(entry, "on the shelf", "not on the shelf")),
            Some(other) => figures(entry, other, found),
        }
    }
    let new = then.iter().filter(|entry| !now.iter().any(|other| other.key() == entry.key()));
    found.extend(new.map(|entry| whole(entry, "not on the shelf", "new")));
}

/// The figures of one entry that differ.
fn figures<T: Entry>(now: &T, then: &T, found: &mut Vec<Difference>) {
    let fields = |entry: &T| match serde_json::to_value(entry) {
        Ok(Value::Object(fields)) => fields,
        _ => serde_json::Map::new(),
    };
    let (now_fields, then_fields) = (fields(now), fields(then));
    for (field, value) in &now_fields {
        let other = then_fields.get(field).unwrap_or(&Value::Null);
        if value != other {
            found.push(Difference {
                entry: now.name(),
                field: field.replace('_', " "),
                now: plain(value),
                then: plain(other),
            });
        }
    }
}

/// A figure as people read it.
fn plain(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Null => "none".to_owned(),
        Value::Array(values) => values.iter().map(plain).collect::<Vec<_>>().join(", "),
        Value::Object(fields) => fields.values().map(plain).collect::<Vec<_>>().join(" · "),
        other => other.to_string(),
    }
}

impl Catalog {
    /// The shelf with a job's own figures in place of its own; entries with a fault are left as they
    /// are.
    pub fn with(&self, own: Option<&PriceBook>) -> Cow<'_, Self> {
        let Some(own) = own else { return Cow::Borrowed(self) };
        let mut catalog = self.clone();
        put(&mut catalog.boards, &own.boards);
        put(&mut catalog.sealants, &own.sealants);
        put(&mut catalog.paints, &own.paints);
        put(&mut catalog.materials, &own.materials);
        put(&mut catalog.tasks, &own.tasks);
        put(&mut catalog.methods, &own.methods);
        Cow::Owned(catalog)
    }
}

fn put<T: Entry>(catalog: &mut Vec<T>, own: &[T]) {
    for entry in own.iter().filter(|entry| entry.fault().is_none()) {
        match catalog.iter_mut().find(|known| known.key() == entry.key()) {
            Some(known) => *known = entry.clone(),
            None => catalog.push(entry.clone()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Percent;

    #[test]
    fn a_jobs_own_figures_go_before_the_shelfs() {
        let catalog = Catalog::built_in();
        let mut own = PriceBook::of(catalog, jiff::civil::date(2026, 3, 1));
        assert!(own.differences(&PriceBook::of(catalog, jiff::civil::date(2027, 1, 1))).is_empty());
        own.tasks[0].minutes = ThreePoint::exactly(77.0);
        own.sealants.push(Sealant { name: "My own".into(), ..own.sealants[0].clone() });
        let with = catalog.with(Some(&own));
        assert_eq!(with.tasks[0].minutes, ThreePoint::exactly(77.0));
        assert!(with.sealant("My own").is_some());
        let differences = PriceBook::of(catalog, jiff::civil::date(2026, 3, 1)).differences(&own);
        let told: Vec<(&str, &str)> =
            differences.iter().map(|d| (d.entry.as_str(), d.field.as_str())).collect();
        assert_eq!(told, [("My own", ""), (own.tasks[0].name.as_str(), "minutes")]);
    }

    #[test]
    fn what_cannot_be_is_told_and_the_shelfs_own_is_used() {
        let catalog = Catalog::built_in();
        let mut own = PriceBook::of(catalog, jiff::civil::date(2026, 3, 1));
        own.tasks[0].minutes = ThreePoint::exactly(0.0);
        own.materials[0].price = Money::cents(-100);
        own.paints[0].solids = Percent::pct(0.0);
        own.sealants[0].packs.clear();
        assert_eq!(own.faults().len(), 4);
        assert_eq!(*catalog.with(Some(&own)), **catalog);
    }
}
