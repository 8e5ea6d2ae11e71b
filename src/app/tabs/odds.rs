//! The odds of the causes with their clues, and what is known of all joints.

use eframe::egui::{Frame, Grid, Label, Margin, ProgressBar, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark, term};
use crate::assess::{ClueFinding, Diagnosis, MissingEntry};
use crate::cause::Cause;
use crate::measure::{Percent, Units, show_number};
use crate::words::{self, Say as _, causes as causes_words};

pub(super) fn odds(ui: &mut Ui, context: &WindowContext<'_>, causes: &Diagnosis) {
    heading(ui, "How likely each cause is");
    Grid::new("odds").num_columns(3).spacing([12.0, 5.0]).show(ui, |ui| {
        for cause in Cause::ALL {
            let chance = causes.of(cause);
            let label = cause.say(context.words);
            term(ui, &label, &causes_words::explained(cause, context.words));
            let told = causes_words::chance_as_percent(chance, context.words);
            ui.label(RichText::new(&told).strong());
            let name = format!("{label}: {told}");
            let fill =
                if chance > 0.5 { context.palette.accent } else { context.palette.soft.gamma_multiply(0.6) };
            let width = ui.available_width().min(170.0);
            let bar = ProgressBar::new(chance as f32).desired_width(width).desired_height(10.0).fill(fill);
            ui.add(bar.corner_radius(3)).widget_info(|| {
                eframe::egui::WidgetInfo::labeled(eframe::egui::Role::ProgressIndicator, true, &name)
            });
            ui.end_row();
        }
    });
    remark(
        ui,
        context.palette,
        "Wet boards and ordinary movement exclude each other; the others may come with either. How often each cause is expected before anything is measured is an assumption of the shelf.",
    );
    heading(ui, "What says so");
    for clue in &causes.clues {
        clue_ui(ui, context, clue);
    }
    if let Some(reading) = causes.most_informative {
        let entry = MissingEntry::ForTheCause(reading);
        let said = words::answer::missing(context.assessment, entry, context.words);
        ui.add(Label::new(format!("{said}.")).wrap());
    }
}

fn clue_ui(ui: &mut Ui, context: &WindowContext<'_>, clue: &ClueFinding) {
    Frame::new().fill(context.palette.raised).corner_radius(6).inner_margin(Margin::symmetric(9, 6)).show(
        ui,
        |ui| {
            ui.set_width(ui.available_width());
            ui.add(Label::new(clue.evidence.say(context.words)).wrap());
            let argues = |(cause, factor): (Cause, f64), how: &str| {
                format!(
                    "{how}: {} (odds {} {})",
                    cause.say(context.words).to_lowercase(),
                    if how == "For" { "×" } else { "÷" },
                    times(factor)
                )
            };
            let both = [
                clue.argues_for.map(|what| argues(what, "For")),
                clue.argues_against.map(|what| argues(what, "Against")),
            ];
            let both: Vec<String> = both.into_iter().flatten().collect();
            let words = if both.is_empty() {
                "Argues for none of them in particular.".to_owned()
            } else {
                both.join(" · ")
            };
            ui.add(Label::new(RichText::new(words).small().color(context.palette.soft)).wrap());
        },
    );
}

/// A factor without false precision.
fn times(factor: f64) -> String {
    match factor {
        f if f >= 1000.0 => "over 1000".to_owned(),
        f if f >= 10.0 => show_number(f.round(), 0),
        f => show_number(f, 1),
    }
}

/// What the readings say of all joints, and how many more are worth taking.
pub(super) fn all_joints(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(opening) = context.assessment.gaps.opening else { return };
    heading(ui, "All joints together");
    let half = 1.645 * opening.sd.to_m2();
    let (mean, units) = (opening.mean.to_m2(), context.units());
    let area = |m2: f64| match units {
        Units::Inches => format!("{} in²", show_number(m2 / 0.000_645_16, 0)),
        Units::Millimeters => format!("{} cm²", show_number(m2 * 1e4, 0)),
    };
    Grid::new("all joints").num_columns(2).show(ui, |ui| {
        term(
            ui,
            "Opening",
            "Gap times length of every joint between boards, measured or not, with its nine-in-ten interval.",
        );
        ui.label(RichText::new(format!("{} ± {}", area(mean), area(half))).strong());
        ui.end_row();
        term(ui, "Known to", "Half-width of that interval. More readings narrow it.");
        let known = if mean > 0.0 { 100.0 * half / mean } else { 0.0 };
        ui.label(format!("± {} %", show_number(known, 0)));
        ui.end_row();
        term(ui, "Wanted to, %", "How well the opening is to be known.");
        let wanted = context.job.survey.precision.to_pct();
        if let Some(pct) = context.number_entry(ui, "Wanted to", wanted, 0, 1.0..=100.0, 50.0) {
            context.edit("Precision", move |job| job.survey.precision = Percent::pct(pct));
        }
        ui.end_row();
    });
    let words = match context.assessment.gaps.next {
        None => "The readings of gaps are enough for that.".to_owned(),
        Some(next) => {
            let joint = &context.assessment.layouts[next.surface].joints[next.joint].label;
            match next.more {
                Some(1) => format!("One more reading does it, best at {joint}."),
                Some(more) => format!("{more} more readings do it, the first best at {joint}."),
                None => format!("The joints differ too much for that; measure {joint} next."),
            }
        }
    };
    ui.add(Label::new(words).wrap());
}
