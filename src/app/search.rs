//! Finding a command by typing part of its name.

use eframe::egui::{Context, Key, RichText, ScrollArea, TextEdit, Ui};

use super::command::{Command, Picture, SHORTCUTS, Table};
use super::context::WindowContext;
use super::dialog::modal;
use super::entry::typed_text;
use super::view::{Tab, Selected, Tool};
use super::words;
use crate::measure::Units;

/// Commands shown at once.
const MOST: usize = 12;

/// Something that can be done, with its name and keys.
struct Found {
    name: String,
    keys: String,
    make: Box<dyn FnOnce() -> Command>,
}

fn plain(name: impl Into<String>, make: impl FnOnce() -> Command + 'static) -> Found {
    Found { name: name.into(), keys: String::new(), make: Box::new(make) }
}

/// Everything that can be done now.
fn all(ctx: &Context, context: &WindowContext<'_>) -> Vec<Found> {
    let mut all: Vec<Found> = SHORTCUTS
        .into_iter()
        .filter(|(name, ..)| *name != "Find a command")
        .map(|(name, shortcut, make)| Found {
            name: name.to_owned(),
            keys: ctx.format_shortcut(&shortcut),
            make: Box::new(make),
        })
        .collect();
    all.extend(Tab::ALL.map(|tab| plain(format!("Go to {}", tab.name()), move || Command::Tab(tab))));
    all.extend(Tool::ALL.map(|(tool, name, _)| plain(format!("Tool: {name}"), move || Command::Tool(tool))));
    all.extend(Table::ALL.map(|(table, name)| plain(name, move || Command::Copy(table))));
    all.push(plain("Open the demo", || Command::OpenDemo));
    all.push(plain("Read a weather file", || Command::ChooseWeather));
    all.push(plain("Read a logger's file", || Command::ChooseLogger));
    all.push(plain("Take outlines from a file", || Command::ChooseOutlines));
    all.push(plain("Keep these figures for new jobs", || Command::KeepPrices));
    all.push(plain("Compare with my shelf", || Command::OfferMyPrices));
    all.push(plain("Import a shelf", || Command::ImportPrices));
    all.push(plain("Export the shelf", || Command::ExportPrices));
    all.push(plain("Learn from finished jobs", || Command::ChooseFinished));
    all.push(plain("Play the year", || Command::Play));
    all.push(plain("Keep the curve to compare with, or let it go", || Command::ReferenceCurve));
    all.extend(Picture::ALL.map(|(picture, name)| plain(name, move || Command::CopyPicture(picture))));
    for (units, name) in
        [(Units::Inches, "Type and show in inches"), (Units::Millimeters, "Type and show in mm")]
    {
        all.push(plain(name, move || {
            Command::Edit(super::Edit {
                name: "Units".to_owned(),
                change: Box::new(move |job| job.units = units),
            })
        }));
    }
    for (index, surface) in context.assessment.job.surfaces.iter().enumerate() {
        all.push(plain(format!("Show {}", surface.name), move || Command::Surface(index)));
    }
    all.extend(glossary::all().iter().map(|word| {
        let told = || Command::Tell(format!("{}: {}", word.name(), word.meaning()));
        plain(format!("What is: {}", word.forms().join(", ")), told)
    }));
    let surface = context.view.surface;
    for joint in context.assessment.layouts.get(surface).iter().flat_map(|laid| &laid.joints) {
        let label = joint.label.clone();
        all.push(plain(format!("Joint {label}"), move || {
            Command::Select(Some(Selected { surface, joint: label }))
        }));
    }
    all
}

/// Whether all words of `typed` stand in `name`, in any order.
fn fits(name: &str, typed: &str) -> bool {
    let name = name.to_lowercase();
    typed.to_lowercase().split_whitespace().all(|word| name.contains(word))
}

/// The list, while it is open.
pub(super) fn search(ui: &Ui, context: &mut WindowContext<'_>) {
    let Some((mut typed, mut at)) = context.view.search.clone() else { return };
    let mut assessment: Vec<Found> =
        all(ui.ctx(), context).into_iter().filter(|assessment| fits(&assessment.name, &typed)).collect();
    let count = assessment.len();
    let key = |key| ui.input(|input| input.key_pressed(key));
    let step = usize::from(key(Key::ArrowDown));
    at = (at + step).min(count.saturating_sub(1)).saturating_sub(usize::from(key(Key::ArrowUp)));
    let mut chosen = (key(Key::Enter) && count > 0).then_some(at);
    let window = modal("search", ui.ctx()).show(ui.ctx(), |ui| {
        ui.set_width(430.0);
        // As high with one command found as with many: the box does not jump.
        ui.set_min_height(425.0);
        let field = TextEdit::singleline(&mut typed).hint_text("Type part of a command or joint");
        let field = ui.add(field.desired_width(f32::INFINITY)).accessible_name("Find a command");
        // What was typed before the field had the keyboard belongs to it as well.
        if !field.has_focus() {
            let early = typed_text(ui);
            typed.push_str(&early);
        }
        field.request_focus();
        if field.changed() {
            at = 0;
        }
        ScrollArea::vertical().max_height(372.0).show(ui, |ui| {
            let first = at.saturating_sub(MOST - 1);
            for (row, assessment) in assessment.iter().enumerate().skip(first).take(MOST) {
                let button = eframe::egui::Button::selectable(row == at, &assessment.name)
                    .shortcut_text(RichText::new(&assessment.keys).weak())
                    .min_size(eframe::egui::vec2(ui.available_width(), 0.0));
                if ui.add(button).clicked() {
                    chosen = Some(row);
                }
            }
            if count == 0 {
                ui.label("Nothing of that name.");
            } else if count > MOST {
                ui.label(RichText::new(format!("{count} in all; type more to find it")).small().weak());
            }
        });
    });
    context.view.search = Some((typed, at));
    if let Some(row) = chosen {
        context.view.search = None;
        let command = (assessment.swap_remove(row).make)();
        context.push(command);
    } else if window.should_close() {
        context.view.search = None;
    }
}

#[cfg(test)]
mod tests {
    use super::fits;

    #[test]
    fn words_are_found_in_any_order() {
        assert!(fits("Show the homeowner", "home sh"));
        assert!(!fits("Show the homeowner", "house"));
        assert!(fits("Joint A 3", "a 3"));
    }
}
