//! Shelf: the figures the job goes by, to see, to change, and to take elsewhere.

mod entries;
mod offers;
mod ways;

use eframe::egui::{CollapsingHeader, Ui};

use super::{heading, remark};
use crate::app::command::Command;
use crate::app::context::Cx;
use crate::job::{OwnShelf, Place, Shelf};
use crate::measure::show_date;

pub(super) fn shelf(ui: &mut Ui, cx: &mut Cx<'_>) {
    heading(ui, "The figures of this job");
    let words = match cx.job.shelf.as_ref().and_then(|own| own.taken) {
        Some(day) => format!(
            "Kept with the job since {}: a newer program or shelf does not change it. Hover a name for where its figures are from.",
            show_date(day)
        ),
        None => "The program's own; they are kept with the job when it is first saved. Hover a name for where its figures are from.".to_owned(),
    };
    remark(ui, cx, words);
    ui.horizontal_wrapped(|ui| {
        for (name, hover, command) in [
            (
                "Keep for new jobs",
                "New jobs start with these figures and rates of money.",
                Command::KeepShelf,
            ),
            (
                "Compare with my shelf",
                "Shows what would change if the job took the figures kept for new jobs.",
                Command::OfferMyShelf,
            ),
            (
                "Import…",
                "Shows what would change if the job took the figures of a file.",
                Command::ImportShelf,
            ),
            ("Export…", "Writes these figures to a file.", Command::ExportShelf),
            (
                "Learn from finished jobs…",
                "Works rates out of the hours of finished jobs in a folder.",
                Command::ChooseFinished,
            ),
        ] {
            if ui.button(name).on_hover_text(hover).clicked() {
                cx.push(command);
            }
        }
    });
    cx.problems(ui, |place| matches!(place, Place::Plan("shelf" | "prices")));
    offers::offers(ui, cx);
    fold(ui, "Sealants", |ui| entries::sealants(ui, cx));
    fold(ui, "Primers and paints", |ui| entries::paints(ui, cx));
    fold(ui, "Other materials", |ui| entries::materials(ui, cx));
    fold(ui, "Tasks and their minutes", |ui| entries::tasks(ui, cx));
    fold(ui, "Boards", |ui| entries::boards(ui, cx));
    fold(ui, "Ways of your own", |ui| ways::ways(ui, cx));
    remark(
        ui,
        cx,
        "Wages, tax and currency are under Repair, Rates of money; they are kept for new jobs too.",
    );
}

fn fold(ui: &mut Ui, title: &str, show: impl FnOnce(&mut Ui)) {
    CollapsingHeader::new(title).show(ui, show);
}

/// Changes the job's own figures; before that they are taken from the shelf as it is.
fn edit(cx: &mut Cx<'_>, name: &str, change: impl FnOnce(&mut OwnShelf) + 'static) {
    cx.edit(name, move |job| {
        let visited = job.visited;
        change(job.shelf.get_or_insert_with(|| OwnShelf::of(Shelf::built_in(), visited)));
    });
}
