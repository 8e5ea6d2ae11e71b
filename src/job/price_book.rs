//! The figures a job goes by, kept with the job, and a user's own shelf in a file.

use std::borrow::Cow;
use std::fmt::Display;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::catalog::Catalog;
use super::letterhead::Contractor;
use crate::joint::Sealant;
use crate::measure::Money;
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
    /// What keeps it from being used: the value and the rule.
    fn fault(&self) -> Option<String>;
}

fn outside(what: &str, value: impl Display, rule: &str) -> Option<String> {
    Some(format!("{what} {value} is not {rule}"))
}

fn bad_price(price: Money) -> Option<String> {
    (price < Money::ZERO).then(|| outside("a price of", price.show(""), "0 or more")).flatten()
}

impl Entry for CatalogBoard {
    fn key(&self) -> String {
        self.name.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<String> {
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
    fn fault(&self) -> Option<String> {
        let pct = [("stretch", self.stretch), ("squeeze", self.squeeze)];
        let class = pct.into_iter().find(|(_, limit)| !(0.0..=200.0).contains(&limit.to_pct()));
        match class {
            Some((what, limit)) => outside(what, limit.show(), "between 0 and 200 %"),
            None if !(5.0..=100.0).contains(&self.solids.to_pct()) => {
                outside("solids of", self.solids.show(), "between 5 and 100 %")
            }
            None if !(0.0..=2000.0).contains(&self.cure.to_h()) => {
                outside("curing for", self.cure.show(), "between 0 and 2000 h")
            }
            None if self.packs.is_empty() => Some("it is sold in no pack".to_owned()),
            None => self.packs.iter().find_map(|pack| match pack.holds.to_litres() {
                litres if !(0.01..=1000.0).contains(&litres) => {
                    outside("a pack of", format!("{litres} l"), "between 0.01 and 1000 l")
                }
                _ => bad_price(pack.price),
            }),
        }
    }
}

impl Entry for Paint {
    fn key(&self) -> String {
        self.name.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<String> {
        let (solids, transfer) = (self.solids.to_pct(), self.transfer.to_pct());
        match self {
            _ if !(5.0..=100.0).contains(&solids) => {
                outside("solids of", self.solids.show(), "between 5 and 100 %")
            }
            _ if !(5.0..=100.0).contains(&transfer) => {
                outside("transfer of", self.transfer.show(), "between 5 and 100 %")
            }
            _ if !(1.0..=1000.0).contains(&self.film) => {
                outside("a film of", self.film, "between 1 and 1000 µm")
            }
            _ if !(0.0..=500.0).contains(&self.recoat.to_h()) => {
                outside("drying for", self.recoat.show(), "between 0 and 500 h")
            }
            _ if self.cans.is_empty() => Some("it is sold in no can".to_owned()),
            _ => self.cans.iter().find_map(|(litres, price)| match litres {
                litres if !(0.01..=1000.0).contains(litres) => {
                    outside("a can of", format!("{litres} l"), "between 0.01 and 1000 l")
                }
                _ => bad_price(*price),
            }),
        }
    }
}

impl Entry for Material {
    fn key(&self) -> String {
        self.id.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<String> {
        match self.holds {
            holds if !(1e-4..=1e6).contains(&holds) => outside("a piece for", holds, "above 0"),
            _ => bad_price(self.price),
        }
    }
}

impl Entry for Task {
    fn key(&self) -> String {
        self.id.clone()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<String> {
        let ThreePointText(minutes) = ThreePointText::of(self);
        match self {
            _ if !self.minutes.is_in_order() || self.minutes.likely <= 0.0 => {
                outside("minutes", minutes, "above 0 and rising from least to most")
            }
            _ if !(1e-4..=1e6).contains(&self.batch) => outside("a batch of", self.batch, "above 0"),
            _ => None,
        }
    }
}

/// Three points as people read them.
struct ThreePointText(String);

impl ThreePointText {
    fn of(task: &Task) -> Self {
        let minutes = task.minutes;
        Self(format!("{}, {}, {}", minutes.low, minutes.likely, minutes.high))
    }
}

impl Entry for RepairMethod {
    fn key(&self) -> String {
        self.id.key()
    }
    fn name(&self) -> String {
        self.name.clone()
    }
    fn fault(&self) -> Option<String> {
        let tasks = self.steps.iter().filter(|step| matches!(step, Step::Do(_) | Step::Coats(_)));
        match tasks.count() {
            0 => Some("it has no task among its steps".to_owned()),
            count if count < 3 && self.outcome != Outcome::Unchanged => {
                Some("it mends the joints in fewer than three tasks: no way does".to_owned())
            }
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

    /// Every entry that cannot be used, with the value and the rule it breaks.
    pub fn faults(&self) -> Vec<(String, String)> {
        fn of<T: Entry>(entries: &[T]) -> impl Iterator<Item = (String, String)> {
            entries.iter().filter_map(|entry| Some((entry.name(), entry.fault()?)))
        }
        let things = of(&self.sealants).chain(of(&self.paints)).chain(of(&self.materials));
        things.chain(of(&self.tasks)).chain(of(&self.methods)).collect()
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
    use crate::measure::{Percent, ThreePoint};

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
