//! Finding a command, a field, a word of the trade or a joint by typing part of its name.

use eframe::egui::{Button, Context, Key, RichText, ScrollArea, TextEdit, Ui, vec2};

use super::command::Command;
use super::commands::COMMANDS;
use super::context::WindowContext;
use super::dialog::modal;
use super::entry::{leave_field, typed_text};
use super::field_place::tab_of;
use super::glossary;
use super::lead::Destination;
use super::view::{Selected, Tab};
use crate::job::fields::FIELDS;
use crate::named::fold;
use crate::words::{Arg, say};

/// Results shown at once.
const MOST: usize = 12;

/// Something that can be gone to or done.
struct Hit {
    /// What it is called.
    name: String,
    /// Everyday words by which it is found as well.
    also: String,
    keys: String,
    /// Whether it leads to a field rather than doing something.
    leads: bool,
    /// Whether it leads to a part of the work that the job does not have.
    elsewhere: bool,
    make: Box<dyn FnOnce() -> Command>,
}

impl Hit {
    fn new(name: String, make: impl FnOnce() -> Command + 'static) -> Self {
        Self {
            name,
            also: String::new(),
            keys: String::new(),
            leads: false,
            elsewhere: false,
            make: Box::new(make),
        }
    }
}

/// Everything that can be done now.
fn all(ctx: &Context, context: &WindowContext<'_>) -> Vec<Hit> {
    let words = context.words;
    let named = COMMANDS.iter().filter(|command| command.id != "find" && (command.enabled)(context));
    let mut all: Vec<Hit> = named
        .map(|command| {
            let message = command.message();
            let also = words.optional(&format!("{message}.search")).unwrap_or_default().into_owned();
            let keys = command.keys.map_or_else(String::new, |keys| ctx.format_shortcut(&keys));
            Hit {
                name: words.text(&message).into_owned(),
                also,
                keys,
                leads: false,
                elsewhere: false,
                make: Box::new(command.make),
            }
        })
        .collect();
    all.extend(FIELDS.iter().map(|field| {
        let label = field.label(words);
        let name = say!(words, "search-field-result", label = Arg::Name(&label));
        let also = words.optional(&format!("field-{}.search", field.id)).unwrap_or_default().into_owned();
        // What the open job has no part of comes last.
        let elsewhere = tab_of(field) == Tab::NextInstall && context.job.next_install.is_none();
        let hit = Hit::new(name, move || Command::GoToField(Destination::any(field)));
        Hit { also, elsewhere, leads: true, ..hit }
    }));
    for (index, surface) in context.assessment.job.surfaces.iter().enumerate() {
        let name = say!(words, "search-show-surface", surface = &surface.name);
        all.push(Hit::new(name, move || Command::Surface(index)));
    }
    all.extend(glossary::all(words).into_iter().map(|term| {
        let forms = term.forms.iter().map(String::as_str).collect();
        let name = say!(words, "search-what-is", word = Arg::Names(forms));
        let told = say!(words, "search-meaning", word = &term.forms[0], meaning = Arg::Name(&term.meaning));
        Hit::new(name, move || Command::Tell(told))
    }));
    let surface = context.view.surface;
    for joint in context.assessment.layouts.get(surface).iter().flat_map(|laid| &laid.joints) {
        let label = joint.label.clone();
        let name = say!(words, "search-joint", joint = Arg::Joint(&label));
        all.push(Hit::new(name, move || Command::Select(Some(Selected { surface, joint: label }))));
    }
    all
}

/// How well what was typed fits: all of its words must be found, in any order. Lower is better: first
/// what starts with it and does something, then what has it in its name, then what is found by an
/// everyday word, and last what the job has no part of.
fn rank(hit: &Hit, typed: &str) -> Option<u8> {
    // Nobody types accents to find something.
    let (name, also, typed) = (fold(&hit.name), fold(&hit.also), fold(typed));
    let words = || typed.split_whitespace();
    let elsewhere = 3 * u8::from(hit.elsewhere);
    if words().all(|word| name.contains(word)) {
        return Some(elsewhere + u8::from(hit.leads || !name.starts_with(typed.trim())));
    }
    words().all(|word| name.contains(word) || also.contains(word)).then_some(elsewhere + 2)
}

/// The list, while it is open.
pub(super) fn search(ui: &Ui, context: &mut WindowContext<'_>) {
    let Some((mut typed, mut at)) = context.view.search.clone() else { return };
    let ranked =
        all(ui.ctx(), context).into_iter().filter_map(|hit| rank(&hit, &typed).map(|rank| (rank, hit)));
    let mut hits: Vec<(u8, Hit)> = ranked.collect();
    hits.sort_by_key(|(rank, _)| *rank);
    let count = hits.len();
    let key = |key| ui.input(|input| input.key_pressed(key));
    let step = usize::from(key(Key::ArrowDown));
    at = (at + step).min(count.saturating_sub(1)).saturating_sub(usize::from(key(Key::ArrowUp)));
    let mut chosen = (key(Key::Enter) && count > 0).then_some(at);
    let window = modal("search", ui.ctx()).show(ui.ctx(), |ui| {
        ui.set_width(430.0);
        // As high with one command found as with many: the box does not jump.
        ui.set_min_height(425.0);
        let hint = context.words.text("search-field.hint");
        let field = TextEdit::singleline(&mut typed).hint_text(hint).desired_width(f32::INFINITY);
        let field = ui.add(field).accessible_name(context.words.text("search-field"));
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
            for (row, (_, hit)) in hits.iter().enumerate().skip(first).take(MOST) {
                let button = Button::selectable(row == at, &hit.name)
                    .shortcut_text(RichText::new(&hit.keys).weak())
                    .min_size(vec2(ui.available_width(), 0.0));
                if ui.add(button).clicked() {
                    chosen = Some(row);
                }
            }
            if count == 0 {
                ui.label(context.words.text("search-none"));
            } else if count > MOST {
                let more = say!(context.words, "search-more", count = count);
                ui.label(RichText::new(more).small().weak());
            }
        });
    });
    context.view.search = Some((typed, at));
    if let Some(row) = chosen {
        context.view.search = None;
        let command = (hits.swap_remove(row).1.make)();
        context.push(command);
    } else if window.should_close() {
        context.view.search = None;
    }
    if context.view.search.is_none() {
        // A field that is gone keeps neither the keyboard nor the ring around it.
        leave_field(ui.ctx());
        ui.ctx().request_repaint();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hit(name: &str, also: &str) -> Hit {
        Hit { also: also.to_owned(), ..Hit::new(name.to_owned(), || Command::Undo) }
    }

    #[test]
    fn words_are_found_in_any_order_and_by_everyday_names() {
        assert_eq!(rank(&hit("For the homeowner", ""), "home fo"), Some(1));
        assert_eq!(rank(&hit("For the homeowner", ""), "for"), Some(0));
        assert_eq!(rank(&hit("For the homeowner", ""), "house"), None);
        assert_eq!(rank(&hit("Go to Options", "wage caulk"), "wage"), Some(2));
        assert_eq!(rank(&hit("Opciones de reparación", ""), "reparacion"), Some(1));
        let elsewhere = Hit { elsewhere: true, ..hit("Delivered", "") };
        assert!(rank(&elsewhere, "delivered") > rank(&hit("Boards", "delivered"), "delivered"));
    }
}
