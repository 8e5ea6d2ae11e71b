//! Gap and moisture readings as lists.

use eframe::egui::{Button, ComboBox, Grid, Key, Label, RichText, Ui};

use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::lead;
use crate::app::view::Selected;
use crate::app::widgets::remark;
use crate::job::Job;
use crate::job::fields::{self, At, Each};
use crate::measure::Quantity;
use crate::surface::Surface;
use crate::survey::{MeterSetting, MoistureReading};
use crate::words::{Say as _, say};

/// Most width of how a bead failed, in points: on hover it is told whole.
const FAILURE_WIDTH: f32 = 104.0;
/// Width of a date.
const DATE_WIDTH: f32 = 84.0;
/// From this width of the list on, it takes twice that.
const ROOMY: f32 = 580.0;
/// Below this width of the list it is told on hover of the joint alone.
const TIGHT: f32 = 470.0;
/// Width of a board's name, and of how a meter was set; in a tight list.
const BOARD_WIDTH: (f32, f32) = (84.0, 44.0);
const SETTING_WIDTH: (f32, f32) = (110.0, 84.0);

/// Gaps are typed at the joint, on the drawing; here they are listed.
pub(super) fn gaps(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    if job.survey.gaps.is_empty() {
        remark(ui, context.palette, words.text("gaps-none"));
        return;
    }
    let open = job.survey.gaps.iter().filter(|gap| gap.width >= job.plan.open_from).count();
    remark(ui, context.palette, say!(words, "gaps-count", count = job.survey.gaps.len(), open = open));
    let failure = match ui.available_width() {
        tight if tight < TIGHT => None,
        width if width < ROOMY => Some(FAILURE_WIDTH),
        _ => Some(2.0 * FAILURE_WIDTH),
    };
    Grid::new("gaps").num_columns(5).striped(true).show(ui, |ui| {
        let titles = ["gaps-column-joint", "gaps-column-gap", "gaps-column-caulk", "gaps-column-date"];
        for title in titles.into_iter().filter(|title| failure.is_some() || *title != "gaps-column-caulk") {
            ui.scope(|ui| {
                // No column is wider for its title than for its entries.
                ui.set_max_width(DATE_WIDTH.max(failure.unwrap_or_default()));
                let title = RichText::new(words.text(title)).small().color(context.palette.soft);
                ui.add(Label::new(title).truncate());
            });
        }
        ui.end_row();
        for index in 0..job.survey.gaps.len() {
            gap(ui, context, index, failure);
            ui.end_row();
        }
    });
    for index in 0..job.survey.gaps.len() {
        context.entry_problems(ui, Each::Gap, At::index(index));
    }
}

/// A gap reading as a row.
fn gap(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, failure: Option<f32>) {
    let (job, words, number) = (context.job, context.words, index + 1);
    let gap = &job.survey.gaps[index];
    ui.push_id(("gap", index), |ui| {
        let surface = job.surfaces.iter().position(|surface| surface.name == gap.surface);
        let name = format!("{} {}", gap.surface, words.joint(&gap.joint));
        let button = Button::new(RichText::new(&name).small()).frame(false);
        let mut link = ui.add_enabled(surface.is_some(), button).on_hover_text(words.text("gaps-show"));
        if failure.is_none() {
            link = link.on_hover_text(gap.failed.say(words));
        }
        if let (true, Some(surface)) = (link.clicked(), surface) {
            context.push(Command::Select(Some(Selected { surface, joint: gap.joint.clone() })));
        }
    });
    let said = say!(words, "gap-reading", number = number);
    // What has no entry of its own in the row is put right beginning here.
    let (at, row) = (At::index(index), [&fields::GAP_JOINT, &fields::GAP_FAILURE, &fields::GAP_CONFIRMED]);
    row.into_iter().for_each(|field| context.reach(ui, field, at, None));
    context.figure(ui, &fields::GAP_WIDTH, at, &said);
    if let Some(width) = failure {
        ui.scope(|ui| {
            ui.set_max_width(width);
            let failed = RichText::new(gap.failed.say(words)).small().color(context.palette.soft);
            ui.add(Label::new(failed).truncate());
        });
    }
    let said = say!(words, "gap-reading-date", number = number);
    context.reach(ui, &fields::GAP_DATE, at, None);
    if let Some(date) = context.date_entry(ui, &said, gap.date, DATE_WIDTH, Ok) {
        context.edit("field-gap-date", move |job| {
            if let Some(gap) = job.survey.gaps.get_mut(index) {
                gap.date = date;
            }
        });
    }
    if Icon::Remove.button(ui, &say!(words, "gap-reading-remove", number = number), true).clicked() {
        context.edit("undo-remove-gap", move |job| {
            if index < job.survey.gaps.len() {
                job.survey.gaps.remove(index);
            }
        });
    }
}

pub(super) fn moistures(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    // Above the rows: it stays under the pointer however many there are.
    add_reading(ui, context);
    let tight = ui.available_width() < TIGHT;
    Grid::new("moistures").num_columns(6).striped(true).show(ui, |ui| {
        if !job.survey.moistures.is_empty() {
            let degrees = context.degrees();
            for title in [
                "meter-column-section",
                "meter-column-board",
                "meter-column-reading",
                degrees,
                "meter-column-setting",
            ] {
                ui.label(RichText::new(words.text(title)).small().color(context.palette.soft));
            }
            ui.end_row();
        }
        for (index, reading) in job.survey.moistures.iter().enumerate() {
            moisture(ui, context, (index, reading), tight);
            ui.end_row();
        }
    });
    // Under the rows: what they say comes and goes with other entries, and moves none of them.
    for index in 0..job.survey.moistures.len() {
        context.entry_problems(ui, Each::Moisture, At::index(index));
    }
}

/// A button for another row: of the section where the joint is that is looked at, else of the first in sight; of one
/// that follows and was not read yet, if that one was.
fn add_reading(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    let sections = sections_of(job);
    let add = ui.add_enabled(!sections.is_empty(), Button::new(context.words.text("meter-add")));
    if !add.clicked() {
        return;
    }
    let looked_at = context.shown_section().and_then(|state| {
        let surface = job.surfaces.get(state.surface)?;
        Some((surface.name.clone(), surface.sections.get(state.section)?.name.clone()))
    });
    let shown = job.surfaces.get(context.view.surface).map(|surface| &surface.name);
    let first = sections.iter().position(|section| match &looked_at {
        Some(looked_at) => section == looked_at,
        None => Some(&section.0) == shown,
    });
    let read = |(surface, section): &(String, String)| {
        let mut readings = job.survey.moistures.iter();
        readings.any(|reading| reading.surface == *surface && reading.section == *section)
    };
    let (before, from) = sections.split_at(first.unwrap_or(0));
    let unread = from.iter().chain(before).find(|section| !read(section));
    if let Some((surface, section)) = unread.or(from.first()).cloned() {
        add_row(context, surface, section);
        lead::expect(ui.ctx(), &fields::METER_READING, At::index(job.survey.moistures.len()));
    }
}

/// After a reading was entered: to the next row, or to a new one for the section that follows.
fn go_on(ui: &Ui, context: &mut WindowContext<'_>, index: usize) {
    let readings = &context.job.survey.moistures;
    lead::expect(ui.ctx(), &fields::METER_READING, At::index(index + 1));
    if index + 1 < readings.len() {
        return;
    }
    let sections = sections_of(context.job);
    let own = |(surface, section): &(String, String)| {
        readings.get(index).is_some_and(|last| last.surface == *surface && last.section == *section)
    };
    let at = sections.iter().position(own).map_or(0, |at| (at + 1) % sections.len());
    if let Some((surface, section)) = sections.into_iter().nth(at) {
        add_row(context, surface, section);
    }
}

/// Adds a row for a section, like the row before it.
fn add_row(context: &mut WindowContext<'_>, surface: String, section: String) {
    context.edit("meter-add", move |job| {
        let like = job.survey.moistures.last();
        let setting = like.map(|last| last.setting).unwrap_or_default();
        let reading = MoistureReading { surface, section, setting, ..MoistureReading::default() };
        job.survey.moistures.push(reading);
    });
}

/// The sections of all surfaces, each with the name of its surface.
fn sections_of(job: &Job) -> Vec<(String, String)> {
    let of = |surface: &Surface| {
        let sections = surface.sections.iter();
        sections.map(|section| (surface.name.clone(), section.name.clone())).collect::<Vec<_>>()
    };
    job.surfaces.iter().flat_map(of).collect()
}

fn edit(
    context: &mut WindowContext<'_>,
    step: &'static str,
    index: usize,
    change: impl FnOnce(&mut MoistureReading) + 'static,
) {
    context.edit(step, move |job| {
        if let Some(reading) = job.survey.moistures.get_mut(index) {
            change(reading);
        }
    });
}

/// A meter reading as a row.
fn moisture(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    (index, reading): (usize, &MoistureReading),
    tight: bool,
) {
    let width = |(usual, least): (f32, f32)| if tight { least } else { usual };
    let (words, number) = (context.words, index + 1);
    section(ui, context, index, reading);
    let at = At::index(index);
    let said = say!(words, "meter-reading-board", number = number);
    context.reach(ui, &fields::METER_BOARD, at, None);
    if let Some(board) = text_entry(ui, &said, &reading.board, width(BOARD_WIDTH)) {
        edit(context, "field-meter-board", index, move |reading| reading.board = board);
    }
    let said = say!(words, "meter-reading", number = number);
    // The day of a reading has no entry of its own in the row.
    context.reach(ui, &fields::METER_DATE, at, None);
    if let Some(value) = context.typed_figure(ui, &fields::METER_READING, at, &said) {
        let typed = value.and_then(|value| match value {
            Quantity::Moisture(moisture) => Some(moisture),
            _ => None,
        });
        edit(context, "field-meter-reading", index, move |reading| reading.reading = typed);
        if typed.is_some() && ui.input(|input| input.key_pressed(Key::Enter)) {
            go_on(ui, context, index);
        }
    }
    let said = say!(words, "meter-reading-temperature", number = number);
    context.figure(ui, &fields::WOOD_TEMPERATURE, at, &said);
    let combo = ComboBox::from_id_salt(("setting", index))
        .selected_text(reading.setting.say(words))
        .width(width(SETTING_WIDTH))
        .truncate();
    let response = combo.show_ui(ui, |ui| {
        for setting in MeterSetting::ALL {
            if ui.selectable_label(setting == reading.setting, setting.say(words)).clicked() {
                edit(context, "field-meter-setting", index, move |reading| reading.setting = setting);
            }
        }
    });
    context.reach(ui, &fields::METER_SETTING, at, None);
    let said = say!(words, "meter-reading-setting", number = number);
    lead::take_focus(&response.response.accessible_name(said));
    if Icon::Remove.button(ui, &say!(words, "meter-reading-remove", number = number), true).clicked() {
        context.edit("undo-remove-meter-reading", move |job| {
            if index < job.survey.moistures.len() {
                job.survey.moistures.remove(index);
            }
        });
    }
}

fn section(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, reading: &MoistureReading) {
    let job = context.job;
    let combo =
        ComboBox::from_id_salt(("moisture section", index)).selected_text(&reading.section).width(44.0);
    let response = combo.show_ui(ui, |ui| {
        for surface in &job.surfaces {
            for section in &surface.sections {
                let on = surface.name == reading.surface && section.name == reading.section;
                if ui.selectable_label(on, format!("{} {}", surface.name, section.name)).clicked() {
                    let (surface, section) = (surface.name.clone(), section.name.clone());
                    edit(context, "field-meter-section", index, move |reading| {
                        reading.surface = surface;
                        reading.section = section;
                    });
                }
            }
        }
    });
    let said = say!(context.words, "meter-reading-section", number = index + 1);
    context.reach(ui, &fields::METER_SECTION, At::index(index), None);
    lead::take_focus(&response.response.accessible_name(said));
}
