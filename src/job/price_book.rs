//! The prices and rates a job goes by, kept with the job, and a user's own price book in a file.

use std::borrow::Cow;

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::book_entry::{Entry, EntryFault};
use super::book_figure::{BookField, BookNames, BookValue};
use super::catalog::{Catalog, CatalogBoard};
use super::letterhead::Contractor;
use crate::joint::Sealant;
use crate::measure::DateText;
use crate::repair::{Material, Paint, Prices, RepairMethod, Task};

/// What of the catalog is the user's to change. In the job it is what the job goes by; in a file of its
/// own it is what new jobs start with.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields, rename = "OwnShelf")]
pub struct PriceBook {
    /// The day the figures were taken.
    #[schemars(with = "Option<DateText>")]
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
    /// Repair methods of the user's own.
    pub methods: Vec<RepairMethod>,
    /// Rates of pay, overhead and profit that new jobs start with.
    pub prices: Option<Prices>,
    /// Who writes the papers, in new jobs.
    pub contractor: Option<Contractor>,
}

/// A list of a price book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BookList {
    /// Sealants.
    Sealants,
    /// Primers and paints.
    Paints,
    /// Other materials.
    Materials,
    /// Tasks.
    Tasks,
    /// Repair methods of the user's own.
    Methods,
}

/// One figure that differs between two price books, or an entry that only one of them has.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// The entry.
    pub entry: String,
    /// What differs.
    pub what: Differs,
}

/// What of an entry differs between two price books.
#[derive(Debug, Clone, PartialEq)]
pub enum Differs {
    /// The whole entry: only one of the two has it.
    Entry {
        /// Whether it is the one of now.
        is_now: bool,
    },
    /// A figure.
    Figure {
        /// Which.
        field: BookField,
        /// What it is now; `None` where it is not known.
        now: Option<BookValue>,
        /// What it would be then, likewise.
        then: Option<BookValue>,
    },
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

    /// Every entry that cannot be used: its list, its name, and what is wrong with it.
    pub fn faults(&self) -> Vec<(BookList, String, EntryFault)> {
        fn of<T: Entry>(
            list: BookList,
            entries: &[T],
        ) -> impl Iterator<Item = (BookList, String, EntryFault)> {
            entries.iter().filter_map(move |entry| Some((list, entry.name().to_owned(), entry.fault()?)))
        }
        of(BookList::Sealants, &self.sealants)
            .chain(of(BookList::Paints, &self.paints))
            .chain(of(BookList::Materials, &self.materials))
            .chain(of(BookList::Tasks, &self.tasks))
            .chain(of(BookList::Methods, &self.methods))
            .collect()
    }

    fn names(&self) -> BookNames<'_> {
        BookNames { tasks: &self.tasks, materials: &self.materials }
    }

    /// What differs from `then`, entry by entry and figure by figure.
    pub fn differences(&self, then: &Self) -> Vec<Difference> {
        let (ours, theirs) = (self.names(), then.names());
        let mut found = Vec::new();
        compare((ours, &self.boards), (theirs, &then.boards), &mut found);
        compare((ours, &self.sealants), (theirs, &then.sealants), &mut found);
        compare((ours, &self.paints), (theirs, &then.paints), &mut found);
        compare((ours, &self.materials), (theirs, &then.materials), &mut found);
        compare((ours, &self.tasks), (theirs, &then.tasks), &mut found);
        compare((ours, &self.methods), (theirs, &then.methods), &mut found);
        found
    }
}

/// A list of a price book, and what is called how in that book.
type List<'a, T> = (BookNames<'a>, &'a [T]);

fn compare<T: Entry>((book, now): List<'_, T>, (other, then): List<'_, T>, found: &mut Vec<Difference>) {
    let whole = |entry: &T, is_now: bool| Difference {
        entry: entry.name().to_owned(),
        what: Differs::Entry { is_now },
    };
    for entry in now {
        match entry.place_in(then) {
            None => found.push(whole(entry, true)),
            Some(place) => figures((book, entry), (other, &then[place]), found),
        }
    }
    let new = then.iter().filter(|entry| entry.place_in(now).is_none());
    found.extend(new.map(|entry| whole(entry, false)));
}

/// The figures of one entry that differ. A name that is another of the same entry's makes no difference.
fn figures<T: Entry>(
    (book, now): (BookNames<'_>, &T),
    (other, then): (BookNames<'_>, &T),
    found: &mut Vec<Difference>,
) {
    let name = |entry: &T| (BookField::Name, BookValue::Text(entry.name().to_owned()));
    let all = |entry: &T, book| {
        let named = (!now.shares_name(then)).then(|| name(entry));
        named.into_iter().chain(entry.figures(book)).collect::<Vec<_>>()
    };
    let (now_figures, then_figures) = (all(now, book), all(then, other));
    let of = |figures: &[(BookField, BookValue)], field: BookField| {
        figures.iter().find(|(known, _)| *known == field).map(|(_, value)| value.clone())
    };
    let gone = |(field, _): &&(BookField, BookValue)| of(&now_figures, *field).is_none();
    let fields = now_figures.iter().chain(then_figures.iter().filter(gone)).map(|(field, _)| *field);
    for field in fields {
        let (now_value, then_value) = (of(&now_figures, field), of(&then_figures, field));
        if now_value != then_value {
            let what = Differs::Figure { field, now: now_value, then: then_value };
            found.push(Difference { entry: now.name().to_owned(), what });
        }
    }
}

impl Catalog {
    /// The catalog with a job's own figures in place of its own; entries with a fault are left as they
    /// are.
    pub fn with(&self, own: Option<&PriceBook>) -> Cow<'_, Self> {
        let Some(own) = own else { return Cow::Borrowed(self) };
        let mut catalog = self.clone();
        put(&mut catalog.boards, &own.boards);
        put(&mut catalog.sealants, &own.sealants);
        put(&mut catalog.paints, &own.paints);
        put(&mut catalog.materials, &own.materials);
        // A rate that goes with something else than the task does now says nothing of it.
        let former = |task: &&Task| self.tasks.iter().any(|now| now.formerly.contains(&task.id));
        put(&mut catalog.tasks, own.tasks.iter().filter(|task| !former(task)));
        put(&mut catalog.methods, &own.methods);
        Cow::Owned(catalog)
    }
}

fn put<'a, T: Entry + 'a>(catalog: &mut Vec<T>, own: impl IntoIterator<Item = &'a T>) {
    for entry in own.into_iter().filter(|entry| entry.fault().is_none()) {
        match entry.place_in(catalog) {
            Some(place) => catalog[place] = entry.in_place_of(&catalog[place]),
            None => catalog.push(entry.clone()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Money, Percent, ThreePoint};

    #[test]
    fn a_jobs_own_figures_go_before_the_shelfs() {
        let catalog = Catalog::built_in();
        let mut own = PriceBook::of(catalog, jiff::civil::date(2026, 3, 1));
        assert!(own.differences(&PriceBook::of(catalog, jiff::civil::date(2027, 1, 1))).is_empty());
        own.tasks[0].minutes = ThreePoint::exactly(77.0);
        let (id, aliases) = (String::new(), Vec::new());
        own.sealants.push(Sealant { id, name: "My own".into(), aliases, ..own.sealants[0].clone() });
        let with = catalog.with(Some(&own));
        assert_eq!(with.tasks[0].minutes, ThreePoint::exactly(77.0));
        assert!(with.sealant("My own").is_some());
        let differences = PriceBook::of(catalog, jiff::civil::date(2026, 3, 1)).differences(&own);
        let minutes = |minutes: ThreePoint| Some(BookValue::Minutes(minutes));
        let then = minutes(own.tasks[0].minutes);
        let now = minutes(catalog.tasks[0].minutes);
        assert_eq!(
            differences,
            [
                Difference { entry: "My own".into(), what: Differs::Entry { is_now: false } },
                Difference {
                    entry: own.tasks[0].name.clone(),
                    what: Differs::Figure { field: BookField::Minutes, now, then }
                },
            ]
        );
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
