//! Shelf: the figures the job goes by, to see, to change, and to take elsewhere.

mod entries;
mod methods;
mod offers;

use eframe::egui::{CollapsingHeader, Ui};

use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::pick::Purpose;
use crate::app::widgets::{heading, remark};
use crate::job::{Catalog, Place, PriceBook};
use crate::measure::show_date;

pub(super) fn catalog(ui: &mut Ui, context: &mut WindowContext<'_>) {
    heading(ui, "The figures of this job");
    let words = match context.job.price_book.as_ref().and_then(|own| own.taken) {
        Some(day) => format!(
            "Kept with the job since {}: a newer program or shelf does not change it. Hover a name for where its figures are from.",
            show_date(day)
        ),
        None => "The program's own; they are kept with the job when it is first saved. Hover a name for where its figures are from.".to_owned(),
    };
    remark(ui, context.palette, words);
    ui.horizontal_wrapped(|ui| {
        for (name, hover, command) in [
            (
                "Keep for new jobs",
                "New jobs start with these figures and rates of money.",
                Command::KeepPrices,
            ),
            (
                "Compare with my shelf",
                "Shows what would change if the job took the figures kept for new jobs.",
                Command::OfferMyPrices,
            ),
            (
                "Import…",
                "Shows what would change if the job took the figures of a file.",
                Command::Pick(Purpose::ImportPrices),
            ),
            ("Export…", "Writes these figures to a file.", Command::Pick(Purpose::ExportPrices)),
            (
                "Learn from finished jobs…",
                "Works rates out of the hours of finished jobs in a folder.",
                Command::Pick(Purpose::Finished),
            ),
        ] {
            if ui.button(name).on_hover_text(hover).clicked() {
                context.push(command);
            }
        }
    });
    let book = |place: &Place| place.field().is_some_and(|(field, _)| field.path.starts_with("shelf"));
    context.problems(ui, book);
    offers::offers(ui, context);
    fold(ui, "Sealants", |ui| entries::sealants(ui, context));
    fold(ui, "Primers and paints", |ui| entries::paints(ui, context));
    fold(ui, "Other materials", |ui| entries::materials(ui, context));
    fold(ui, "Tasks and their minutes", |ui| entries::tasks(ui, context));
    fold(ui, "Boards", |ui| entries::boards(ui, context));
    fold(ui, "Ways of your own", |ui| methods::methods(ui, context));
    remark(
        ui,
        context.palette,
        "Wages, tax and currency are under Repair, Rates of money; they are kept for new jobs too.",
    );
}

fn fold(ui: &mut Ui, title: &str, show: impl FnOnce(&mut Ui)) {
    CollapsingHeader::new(title).show(ui, show);
}

/// Changes the job's own figures; before that they are taken from the shelf as it is.
fn edit(context: &mut WindowContext<'_>, name: &str, change: impl FnOnce(&mut PriceBook) + 'static) {
    context.edit(name, move |job| {
        let visited = job.visited;
        change(job.price_book.get_or_insert_with(|| PriceBook::of(Catalog::built_in(), visited)));
    });
}
