//! Cause: what did it, section by section.

use eframe::egui::{Frame, Grid, Label, Margin, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::explain::{self, Why};
use crate::app::widgets::{heading, remark, term};
use crate::assess::{SectionState, date_after};
use crate::job::fields::{At, Each};
use crate::measure::{Length, show_date, show_number};
use crate::words::{self, Say as _};

pub(super) fn cause(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let measured = context.assessment.sections.iter().any(|state| state.gaps.measured > 0);
    if !measured {
        remark(
            ui,
            context.palette,
            "Nothing can be said of the cause before a gap is measured: click a joint and type its width.",
        );
        return;
    }
    heading(ui, "Why they opened");
    ui.add(Label::new(words::answer::cause(context.assessment, context.words)).wrap());
    remark(
        ui,
        context.palette,
        "Worked back from the gap: the width that shrank and the present moisture tell the moisture at install. The boards are taken to have been laid tight. The interval is nine in ten.",
    );
    if let Some(causes) = &context.assessment.causes {
        super::odds::odds(ui, context, causes);
    }
    super::odds::all_joints(ui, context);
    for state in &context.assessment.sections {
        section(ui, context, state);
    }
    super::install::before_install(ui, context);
    marks(ui, context);
}

fn section(ui: &mut Ui, context: &WindowContext<'_>, state: &SectionState) {
    let Some(surface) = context.assessment.job.surfaces.get(state.surface) else { return };
    let units = context.units();
    heading(ui, &format!("{}, section {}", surface.name, surface.sections[state.section].name));
    Frame::new().fill(context.palette.raised).corner_radius(6).inner_margin(Margin::same(9)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        Grid::new(("cause", state.surface, state.section)).num_columns(2).show(ui, |ui| {
            /// Where a number comes from, of a section.
            type Ask = fn(&WindowContext<'_>, &SectionState) -> Why;
            let mut row = |name: &str, explanation: &str, value: String, ask: Option<Ask>| {
                term(ui, name, explanation);
                let shown = RichText::new(value).strong();
                match ask {
                    Some(ask) => explain::number(ui, context, name, shown, || ask(context, state)),
                    None => {
                        ui.add(Label::new(shown).wrap());
                    }
                }
                ui.end_row();
            };
            let gaps = &state.gaps;
            let mean = format!(
                "{} ± {}, {} of {} joints measured",
                gaps.mean.show(units),
                gaps.error_of_mean.show(units),
                gaps.measured,
                gaps.joints
            );
            row("Mean gap", "Over the joints between boards.", mean, Some(explain::mean_gap));
            row("Boards today", "Their moisture, by weight.", boards_today(state), Some(explain::now));
            if let Some(origin) = state.origin {
                let value = if origin.beyond_drying {
                    "no moisture explains this gap".to_owned()
                } else {
                    let (low, high) = (origin.interval.low.to_pct(), origin.interval.high.to_pct());
                    format!("{} ({} to {})", origin.moisture.show(), show_number(low, 0), show_number(high, 0))
                };
                let explanation = "The moisture from which drying to today makes this gap.";
                row("Boards at install", explanation, value, Some(explain::install));
            }
            let (driest, wettest) = state.settled.extremes();
            row(
                "The room keeps them",
                "The moisture that the room's air leads to over a year.",
                format!("{} to {}", driest.show(), wettest.show()),
                Some(explain::settled),
            );
            row(
                "Closes by itself",
                "How much of today's gap goes in the coming humid season.",
                closes(context, state),
                None,
            );
            row(
                "Still to lose",
                "What today's moisture is above what the room's model expects at this season, and how long nine tenths of such a surplus take to go.",
                most_informative_reading(state),
                None,
            );
            row(
                "Behind the air",
                "By how many days the boards' yearly wave comes after that of the air: paint and thickness slow it.",
                match state.settled.lag() {
                    Some(days) => format!("{} days", show_number(days, 0)),
                    None => "no yearly wave to speak of".to_owned(),
                },
                None,
            );
            let widest = state.year_gap.1.show(units);
            row("Widest", "In the coming year, if nothing is done.", widest, Some(explain::widest));
        });
        if let Some(against) =
            state.against_marks.filter(|_| state.origin.is_some_and(|origin| !origin.beyond_drying))
        {
            let marks = &context.assessment.catalog.marks;
            ui.add(Label::new(words::causes::marks(against, marks, context.words)).wrap());
        }
    });
    context.entry_problems(ui, Each::Section, At(state.surface, state.section));
}

fn boards_today(state: &SectionState) -> String {
    let moisture = state.now.moisture;
    match state.now.readings {
        0 => format!("about {}, from the room's year: no reading", moisture.mean.show()),
        1 => format!("{} ± {}, 1 reading", moisture.mean.show(), moisture.sd.show()),
        n => format!("{} ± {}, {n} readings", moisture.mean.show(), moisture.sd.show()),
    }
}

fn most_informative_reading(state: &SectionState) -> String {
    let surplus = (state.now.moisture.mean - state.expected_now).to_pct();
    let days = state.settled.days_to_settle().map_or_else(
        || "in more than three years".to_owned(),
        |days| format!("nine tenths within {days} days"),
    );
    if surplus.abs() < 0.5 {
        format!("nothing: they have settled ({days})")
    } else if surplus > 0.0 {
        format!("{} %, {days}", show_number(surplus, 1))
    } else {
        format!("nothing; they will take up {} %, {days}", show_number(-surplus, 1))
    }
}

fn closes(context: &WindowContext<'_>, state: &SectionState) -> String {
    if state.narrowest_day == 0 {
        return "none of it: it is at its narrowest today".to_owned();
    }
    let share = show_number(state.closes_by_itself() * 100.0, 0);
    let when = show_date(date_after(&context.assessment.job, state.narrowest_day));
    if state.year_gap.0 <= Length::ZERO {
        format!("all of it, by {when}")
    } else {
        format!("{share} %, down to {} by {when}", state.year_gap.0.show(context.units()))
    }
}

fn marks(ui: &mut Ui, context: &WindowContext<'_>) {
    heading(ui, "What the stamps allow");
    Grid::new("marks").num_columns(3).show(ui, |ui| {
        for mark in &context.assessment.catalog.marks {
            ui.label(RichText::new(&mark.name).strong());
            ui.label(format!("at most {}", mark.most.show()));
            ui.add(
                Label::new(
                    RichText::new(format!("{} ({})", mark.source, mark.kind.say(context.words)))
                        .small()
                        .color(context.palette.soft),
                )
                .wrap(),
            );
            ui.end_row();
        }
    });
}
