//! The price book: entries that cannot be used, steps that are no task, old prices.

use jiff::civil::Date;

use super::{Checked, Problems};
use crate::job::fields::{self, Field};
use crate::job::price_book::{BookList, PriceBook};
use crate::job::problem::BookFault;
use crate::repair::{Step, Task, task_of};

/// Prices older than this many days are to be asked for again.
const OLD: i32 = 366;

pub(super) fn book(job: &Checked<'_>, problems: &mut Problems) {
    for (list, entry, fault) in job.entered.price_book.iter().flat_map(PriceBook::faults) {
        problems.once(field_of(list), BookFault::BookEntry { entry, fault });
    }
    for method in job.catalog.methods.iter().filter(|method| method.id.is_own()) {
        let unknown = method.steps.iter().find_map(|step| match step {
            Step::Do(id) | Step::Coats(id) if task_of(&job.catalog.tasks, id).is_none() => Some(id),
            _ => None,
        });
        if let Some(step) = unknown {
            let (method, step) = (method.name.clone(), step.clone());
            problems.once(&fields::BOOK_METHODS, BookFault::UnknownStep { method, step });
        }
    }
    let tasks = former_rates(job);
    if !tasks.is_empty() {
        problems.once(&fields::BOOK_TASKS, BookFault::FormerRates { tasks });
    }
    let names = old_prices(job);
    if !names.is_empty() {
        problems.once(&fields::PRICE_BOOK, BookFault::OldPrices { names });
    }
}

/// Rates kept with the job that are not used, because the task's time goes with something else now.
fn former_rates(job: &Checked<'_>) -> Vec<String> {
    let kept = job.entered.price_book.iter().flat_map(|book| &book.tasks);
    let former = |task: &&Task| job.catalog.tasks.iter().any(|now| now.formerly.contains(&task.id));
    kept.filter(former).map(|task| task.name.clone()).collect()
}

/// The field of a list of the price book.
const fn field_of(list: BookList) -> &'static Field {
    match list {
        BookList::Sealants => &fields::BOOK_SEALANTS,
        BookList::Paints => &fields::BOOK_PAINTS,
        BookList::Materials => &fields::BOOK_MATERIALS,
        BookList::Tasks => &fields::BOOK_TASKS,
        BookList::Methods => &fields::BOOK_METHODS,
    }
}

/// What of the chosen option was priced more than a year before the visit.
fn old_prices(job: &Checked<'_>) -> Vec<String> {
    let (plan, catalog) = (&job.entered.plan, job.catalog);
    let old = |priced: Option<Date>| priced.is_some_and(|day| (job.entered.visited - day).get_days() > OLD);
    let method = catalog.method(plan.chosen);
    let bought = |id: &String| method.is_some_and(|method| method.materials.contains(id));
    let materials =
        catalog.materials.iter().filter(|m| bought(&m.id) && !plan.own_prices.contains_key(&m.id));
    let used = [catalog.paint(&plan.primer), catalog.paint(&plan.paint)];
    let once = if used[0] == used[1] { &used[..1] } else { &used[..] };
    let paints = once.iter().copied().flatten();
    let sealants = catalog.sealant(&plan.sealant).into_iter();
    let names = materials
        .filter(|material| old(material.priced))
        .map(|material| &material.name)
        .chain(paints.filter(|paint| old(paint.priced)).map(|paint| &paint.name))
        .chain(sealants.filter(|sealant| old(sealant.priced)).map(|sealant| &sealant.name));
    names.cloned().collect()
}
