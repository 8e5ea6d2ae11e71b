//! What every part of the window is given: the job and its assessment to read, the view to look
//! through, and a list to put commands on.

use eframe::egui::{Color32, Label, TextStyle, Ui};

use super::command::{Command, Edit};
use super::icon::Icon;
use super::languages::Languages;
use super::lead;
use super::services::Services;
use super::session::Session;
use super::theme::Palette;
use super::view::{Settings, View};
use super::widgets::fitted;
use crate::assess::{Assessment, EntryPlace, JointState, SectionState};
use crate::job::fields::{At, Field, Item};
use crate::job::{Job, Place, Severity};
use crate::measure::{Length, Quantity, Units, parse_number, parse_room_length, plain_number};
use crate::words::{Say as _, Words, say};

/// Lines of a problem that is no error, at most.
const ROWS_OF_PROBLEM: usize = 3;

/// Everything a part of the window sees in one frame.
pub(super) struct WindowContext<'a> {
    /// The job as it is now: what entry fields show.
    pub job: &'a Job,
    /// The last assessment, with the job it was made from: what results are drawn with.
    pub assessment: &'a Assessment,
    /// The open job, its history and file.
    pub session: &'a Session,
    /// Previews, photos, templates.
    pub services: &'a Services,
    /// Settings.
    pub settings: &'a Settings,
    /// The languages of the window and of the papers.
    pub languages: &'a Languages,
    /// The words of the window.
    pub words: &'a Words,
    /// Colors.
    pub palette: &'static Palette,
    /// What is shown. Looking around is no edit.
    pub view: &'a mut View,
    /// What is to be done after the frame.
    pub commands: &'a mut Vec<Command>,
}

impl<'a> WindowContext<'a> {
    /// Puts a named change of the job on the list.
    pub fn edit(&mut self, name: impl Into<String>, change: impl FnOnce(&mut Job) + 'static) {
        self.commands.push(Command::Edit(Edit { name: name.into(), change: Box::new(change) }));
    }

    /// Puts a command on the list.
    pub fn push(&mut self, command: Command) {
        self.commands.push(command);
    }

    /// The job's units.
    pub const fn units(&self) -> Units {
        self.job.units
    }

    /// The message of the sign of a temperature in the job's units.
    pub const fn degrees(&self) -> &'static str {
        match self.units() {
            Units::Inches => "degrees-fahrenheit",
            Units::Millimeters => "degrees-celsius",
        }
    }

    /// A field for a number within `range`.
    pub fn number_entry(
        &self,
        ui: &mut Ui,
        name: &str,
        value: f64,
        decimals: usize,
        range: std::ops::RangeInclusive<f64>,
        width: f32,
    ) -> Option<f64> {
        let words = self.words;
        let shown = plain_number(value, decimals);
        super::entry::entry(ui, name, &shown, width, move |text| number_in(text, range, words))
    }

    /// Says that what is drawn next is this entry of a field, of this item if it is one of a list: a problem
    /// leads there.
    pub fn reach(&self, ui: &Ui, field: &'static Field, at: At, item: Option<&Item>) {
        lead::reach(ui.ctx(), field, item, |place| place.is(field, at));
    }

    /// Shows what is wrong at this place of the job.
    pub fn problems(&self, ui: &mut Ui, here: impl Fn(&Place) -> bool) {
        for problem in self.assessment.problems.iter().filter(|problem| here(&problem.place)) {
            self.problem(ui, problem.severity, &problem.say(self.words));
        }
    }

    /// In what color a problem is told.
    pub const fn severity_color(&self, severity: Severity) -> Color32 {
        match severity {
            Severity::Error => self.palette.error,
            Severity::Warning => self.palette.warn,
            Severity::Note => self.palette.soft,
        }
    }

    /// One line of trouble.
    pub fn problem(&self, ui: &mut Ui, severity: Severity, text: &str) {
        let color = self.severity_color(severity);
        if severity == Severity::Error {
            self.scroll_if_requested(ui, EntryPlace::Problems);
        }
        ui.horizontal_top(|ui| {
            Icon::Warning.mark(ui, eframe::egui::Stroke::new(1.3, color));
            let font = TextStyle::Small.resolve(ui.style());
            // What stands below stays where it is when a figure in the text makes it a little longer or
            // shorter: two lines take the room of three, and what is no error goes on on hover.
            let rows = if severity == Severity::Error { usize::MAX } else { ROWS_OF_PROBLEM };
            let galley = fitted(ui.painter(), text, font, color, (ui.available_width(), rows));
            let spare = if galley.rows.len() == 2 { galley.size().y / 2.0 } else { 0.0 };
            let elided = galley.elided;
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                let label = ui.add(Label::new(galley));
                if elided {
                    label.on_hover_text(text);
                }
                ui.add_space(spare);
            });
        });
    }

    /// Brings this place of a tab into sight, if it was asked for.
    pub fn scroll_if_requested(&self, ui: &Ui, place: EntryPlace) {
        if self.view.scroll_to.get() == Some(place) {
            self.view.scroll_to.set(None);
            ui.scroll_to_cursor(Some(eframe::egui::Align::TOP));
        }
    }

    /// The section that the year chart is of: the selected joint's, else the section of the
    /// surface shown that was measured most.
    pub fn shown_section(&self) -> Option<&'a SectionState> {
        // The homeowner sees what the letter speaks of.
        if self.view.presentation.page.is_some() {
            return self.assessment.typical_section();
        }
        if let Some((_, state)) = self.selected() {
            return self.assessment.sections.get(state.section?);
        }
        let here = self.assessment.sections.iter().filter(|s| s.surface == self.view.surface);
        here.max_by_key(|s| (s.gaps.measured, std::cmp::Reverse(s.section)))
    }

    /// The selected joint's index in its surface's layout, and its state; none before the homeowner.
    pub fn selected(&self) -> Option<(usize, &'a JointState)> {
        let at_work = self.view.presentation.page.is_none();
        let selected = self.view.selection.joint.as_ref().filter(|_| at_work)?;
        let laid = self.assessment.layouts.get(selected.surface)?;
        let index = laid.joints.iter().position(|joint| joint.label == selected.joint)?;
        Some((index, self.assessment.joint(selected.surface, index)?))
    }

    /// The day that is looked at, counted from the visit and kept within what was worked out: from the
    /// install, where it is known, to the end of the forecast.
    pub fn day(&self) -> i64 {
        let state = self.shown_section();
        let first = state.and_then(|state| state.past_weeks.first()).map_or(0, |week| week.day);
        self.view.time.day.clamp(first, i64::try_from(crate::joint::HORIZON).unwrap_or(1) - 1)
    }
}

/// Reads a length of the size of a room.
pub(super) fn read_room(
    text: &str,
    units: Units,
    range: &std::ops::RangeInclusive<Length>,
    words: &Words,
) -> Result<Length, String> {
    let length = parse_room_length(text, units).map_err(|error| error.say(words))?;
    if range.contains(&length) {
        return Ok(length);
    }
    let typed = text.trim().to_owned();
    Err(say!(words, "entry-out-of-range", text = &typed, low = *range.start(), high = *range.end()))
}

/// Reads a number within `range`.
fn number_in(text: &str, range: std::ops::RangeInclusive<f64>, words: &Words) -> Result<f64, String> {
    let number = parse_number(text).map_err(|error| error.say(words))?;
    if range.contains(&number) {
        return Ok(number);
    }
    let (typed, (low, high)) = (text.trim().to_owned(), range.into_inner());
    let (low, high) = (Quantity::Number(low), Quantity::Number(high));
    Err(say!(words, "entry-out-of-range", text = &typed, low = low, high = high))
}
