//! Catalog: the prices and rates the job goes by, to see, to change, and to take elsewhere.

mod entries;
mod methods;
mod offers;

use eframe::egui::Ui;

use crate::app::commands::NamedCommand;
use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::{heading, remark};
use crate::job::{Catalog, Place, PriceBook};
use crate::words::say;

pub(super) fn catalog(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("catalog-heading"));
    let since = match context.job.price_book.as_ref().and_then(|own| own.taken) {
        Some(day) => say!(words, "catalog-kept-since", date = day),
        None => say!(words, "catalog-not-kept"),
    };
    remark(ui, context.palette, since);
    ui.horizontal_wrapped(|ui| {
        for id in ["keep-prices", "compare-prices", "import-prices", "export-prices", "learn"] {
            let command = NamedCommand::of(id);
            let button = ui.button(words.text(&command.message()));
            if button.on_hover_text(words.text(&format!("{}.hint", command.message()))).clicked() {
                context.push((command.make)());
            }
        }
    });
    let book = |place: &Place| place.field().is_some_and(|(field, _)| field.path.starts_with("shelf"));
    context.problems(ui, book);
    offers::offers(ui, context);
    list(ui, context, "catalog-sealants", entries::sealants);
    list(ui, context, "catalog-paints", entries::paints);
    list(ui, context, "catalog-materials", entries::materials);
    list(ui, context, "catalog-tasks", entries::tasks);
    list(ui, context, "catalog-boards", entries::boards);
    list(ui, context, "catalog-methods", methods::methods);
    remark(ui, context.palette, words.text("catalog-money-elsewhere"));
}

fn list(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    title: &str,
    show: impl FnOnce(&mut Ui, &mut WindowContext<'_>),
) {
    let words = context.words;
    fold(ui, title, words.text(title), false, |ui| show(ui, context));
}

/// Changes the job's own prices and rates; before the first change they are those of the catalog.
fn edit(context: &mut WindowContext<'_>, name: &str, change: impl FnOnce(&mut PriceBook) + 'static) {
    context.edit(name, move |job| {
        let visited = job.visited;
        change(job.price_book.get_or_insert_with(|| PriceBook::of(Catalog::built_in(), visited)));
    });
}
