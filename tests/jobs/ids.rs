//! Jobs name entries of the catalog by ids: a name may be reworded without any file losing its entry.

use std::collections::BTreeSet;
use std::sync::Arc;

use gapwright::air::IndoorAir;
use gapwright::assess::{Assessment, assess};
use gapwright::job::{
    BookField, Catalog, Differs, Fault, Job, PriceBook, file, load_prices, read_prices, save_prices,
};
use gapwright::measure::{Money, Units};
use gapwright::named::{Named, find, position};
use gapwright::repair::Material;
use gapwright::words::{Say as _, Words, answer};
use jiff::civil::date;

use super::files::EARLIER;

const OLD_PRICES: &str = include_str!("files/shelf.ron");

/// Ids of materials that price books of old do not have.
const NEW_MATERIALS: [&str; 4] = ["lead_set", "spare_boards", "fill_set", "scaffold_hire"];

/// The catalog with every name in other words; the names of today are left to the aliases.
fn reworded() -> Arc<Catalog> {
    let mut catalog = Catalog::clone(Catalog::built_in());
    let other = |id: &str| format!("Other words for {id}");
    catalog.species.iter_mut().for_each(|entry| entry.name = other(&entry.id));
    catalog.stations.iter_mut().for_each(|entry| entry.name = other(&entry.id));
    catalog.sealants.iter_mut().for_each(|entry| entry.name = other(&entry.id));
    catalog.paints.iter_mut().for_each(|entry| entry.name = other(&entry.id));
    for material in &mut catalog.materials {
        material.aliases.push(material.name.clone());
        material.name = other(&material.id);
    }
    Arc::new(catalog)
}

fn not_in_catalog(found: &Assessment) -> Vec<&Fault> {
    let faults = found.problems.iter().map(|problem| &problem.fault);
    faults.filter(|fault| matches!(fault, Fault::NotInCatalog { .. })).collect()
}

#[track_caller]
fn well_named<T: Named>(entries: &[T]) {
    let mut ids = BTreeSet::new();
    for (place, entry) in entries.iter().enumerate() {
        assert!(ids.insert(entry.id()), "{} stands twice", entry.id());
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        assert!(!entry.id().is_empty() && entry.id().chars().all(plain), "{}", entry.id());
        for called in entry.calls() {
            assert_eq!(position(entries, called), Some(place), "“{called}” means another entry too");
        }
    }
}

#[test]
fn every_entry_has_an_id_and_no_two_share_a_name() {
    let catalog = Catalog::built_in();
    well_named(&catalog.species);
    well_named(&catalog.stations);
    well_named(&catalog.sealants);
    well_named(&catalog.paints);
}

#[test]
fn a_new_job_says_ids() {
    let catalog = Catalog::built_in();
    let job = Job::default();
    assert!(catalog.sealants.iter().any(|sealant| sealant.id == job.plan.sealant));
    for paint in [&job.plan.primer, &job.plan.paint] {
        assert!(catalog.paints.iter().any(|known| known.id == *paint));
    }
    let board = gapwright::surface::BoardSpec::default();
    assert!(catalog.species.iter().any(|species| species.id == board.species));
    let IndoorAir::FromClimate { station, .. } = &job.air else { panic!("{:?}", job.air) };
    assert!(station.is_empty(), "nobody has said where the house is: {station}");
}

/// Files with the names of their day come to the same whatever the entries are called now, and show what
/// they are called now.
#[test]
fn files_with_earlier_names_mean_the_same_entries_after_a_rewording() {
    let catalog = reworded();
    for (name, text) in EARLIER {
        let job = file::read(text).unwrap().job;
        assert_eq!(job.plan.sealant, "Hybrid, paintable, class 50", "{name}: the job keeps what was written");
        let (before, after) = (assess(job.clone(), Catalog::built_in()), assess(job.clone(), &catalog));
        assert_eq!(not_in_catalog(&after), Vec::<&Fault>::new(), "{name}");
        assert_eq!(after.year, before.year, "{name}");
        assert_eq!(after.season, before.season, "{name}");
        let totals = |found: &Assessment| found.options.iter().map(|o| o.total()).collect::<Vec<_>>();
        assert_eq!(totals(&after), totals(&before), "{name}");
        assert_eq!(after.sealant_name(), "Other words for hybrid-50");
        let said = answer::headline(&after, &Words::of_job(&job));
        assert!(!said.contains("Hybrid, paintable"), "{name}: {said}");
    }
}

/// A price file from before there were ids differs from the catalog in no sealant or paint, and its figures
/// go before the catalog's for the entries it names.
#[test]
fn a_price_file_with_earlier_names_is_about_the_same_entries() {
    for catalog in [Catalog::built_in().clone(), reworded()] {
        let own = read_prices(OLD_PRICES).unwrap();
        let now = PriceBook::of(&catalog, date(2026, 11, 25));
        for differences in [now.differences(&own), own.differences(&now)] {
            // Classes and sources were reworded, tasks rebuilt; of the rest no figure changed.
            let is_task = |name: &str| {
                find(&catalog.tasks, name).is_some() || own.tasks.iter().any(|task| task.name == name)
            };
            // One set no longer serves a room of any size, and backer goes only where the gap takes it.
            let goes_with_other = |name: &str| {
                let is_one = |m: &Material| ["air_set", "breaker"].contains(&m.id.as_str());
                find(&catalog.materials, name).is_some_and(is_one) || is_task(name)
            };
            let is_new = |name: &str| {
                find(&catalog.materials, name).is_some_and(|m| NEW_MATERIALS.contains(&m.id.as_str()))
            };
            let changed: Vec<_> = differences
                .iter()
                .filter(|difference| match &difference.what {
                    // What a brush loses and what a sprayer loses are told apart now.
                    Differs::Figure {
                        field: BookField::Class | BookField::Source | BookField::Transfer | BookField::Sprayed,
                        ..
                    } => false,
                    Differs::Figure { field: BookField::Per | BookField::Coverage, .. } => {
                        !goes_with_other(&difference.entry)
                    }
                    Differs::Entry { .. } if is_new(&difference.entry) => false,
                    Differs::Entry { .. } | Differs::Figure { .. } => !is_task(&difference.entry),
                })
                .collect();
            assert!(changed.is_empty(), "{changed:?}");
        }
        let dearer = OLD_PRICES.replace("\"13.50\"", "\"99.00\"");
        assert_ne!(dearer, OLD_PRICES);
        let own = read_prices(&dearer).unwrap();
        let with = catalog.with(Some(&own));
        assert_eq!(with.sealants.len(), catalog.sealants.len());
        assert_eq!(with.paints.len(), catalog.paints.len());
        for called in ["hybrid-50", "Hybrid, paintable, class 50"] {
            let sealant = with.sealant(called).unwrap();
            assert_eq!(sealant.packs[0].price, Money::cents(99_00));
            assert_eq!(sealant.name, catalog.sealant("hybrid-50").unwrap().name);
        }
    }
}

/// A job of old keeps the materials of its day in its price book. They show what they are called now, at the
/// prices that the job has, and in the units of the job, which the name no longer says.
#[test]
fn materials_of_an_earlier_price_book_go_by_their_names_of_today() {
    let own = read_prices(OLD_PRICES).unwrap();
    let old = |id: &str| own.materials.iter().find(|material| material.id == id).unwrap();
    assert_eq!(old("disposal").name, "Disposal of the old boards, by the cubic metre");
    let catalog = Catalog::built_in().with(Some(&own)).into_owned();
    assert_eq!(catalog.materials.len(), Catalog::built_in().materials.len());
    for material in &Catalog::built_in().materials {
        if NEW_MATERIALS.contains(&material.id.as_str()) {
            continue;
        }
        let with = catalog.materials.iter().find(|known| known.id == material.id).unwrap();
        assert_eq!((&with.name, with.price), (&material.name, old(&material.id).price));
    }
    let mut job = file::read(EARLIER[1].1).unwrap().job;
    job.price_book = Some(own);
    for (units, said) in [(Units::Inches, "per 35 cu ft"), (Units::Millimeters, "per 1 m³")] {
        let found = assess(Job { units, ..job.clone() }, Catalog::built_in());
        let mut lines = found.options.iter().flat_map(|option| &option.materials);
        let disposal = lines.find(|line| line.id == "disposal").unwrap();
        let words = Words::us_english(units, "$");
        assert_eq!(disposal.say(&words), format!("Disposal of the old boards, {said}"));
    }
}

/// What a user calls an entry of the catalog is kept, and an entry of the user's own goes by its name.
#[test]
fn own_wordings_and_own_entries_stay() {
    let mut own = PriceBook::of(Catalog::built_in(), date(2026, 5, 1));
    let hybrid = own.sealants.iter_mut().find(|sealant| sealant.id == "hybrid-50").unwrap();
    hybrid.name = "The tube on the van".into();
    let mut mine = hybrid.clone();
    (mine.id, mine.name, mine.aliases) = (String::new(), "My own".into(), Vec::new());
    own.sealants.push(mine);
    let path = tempfile::tempdir().unwrap().keep().join("prices.ron");
    save_prices(&own, &path).unwrap();
    assert!(!std::fs::read_to_string(&path).unwrap().contains("id: \"\""));
    let own = load_prices(&path).unwrap();
    std::fs::remove_dir_all(path.parent().unwrap()).unwrap();
    let catalog = reworded();
    let with = catalog.with(Some(&own));
    assert_eq!(with.sealant("hybrid-50").unwrap().name, "The tube on the van");
    assert_eq!(with.sealant("Hybrid, paintable, class 50").unwrap().id, "hybrid-50");
    assert_eq!(with.sealant("My own").unwrap().id, "");
    let mut job = file::read(EARLIER[1].1).unwrap().job;
    job.price_book = Some(own);
    job.plan.sealant = "My own".into();
    let found = assess(job, &catalog);
    assert_eq!(not_in_catalog(&found), Vec::<&Fault>::new());
    assert_eq!(found.sealant_name(), "My own");
}

/// A price that a job of old has for a line of the buying list, by the words of the line.
#[test]
fn own_prices_by_earlier_names_still_count() {
    let text = EARLIER[1].1.replacen(
        "    plan: (\n",
        "    plan: (\n        own_prices: {\"Hybrid, paintable, class 50, cartridge\": \"0.01\", \"Hybrid, paintable, class 50, sausage\": \"99.00\"},\n",
        1,
    );
    assert_ne!(text, EARLIER[1].1);
    let loaded = file::read(&text).unwrap();
    assert_eq!(loaded.problems, vec![]);
    let found = assess(loaded.job, Catalog::built_in());
    let own: Vec<_> =
        found.chosen().unwrap().materials.iter().filter(|line| line.own_price).cloned().collect();
    assert_eq!(own.len(), 1, "{own:?}");
    assert_eq!((own[0].id.as_str(), own[0].price), ("hybrid-50, cartridge", Money::cents(1)));
}
