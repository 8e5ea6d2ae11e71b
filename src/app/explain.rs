//! Where a number comes from: how it is worked out, from what, and by what source. Any number shown by
//! [`number`] can be asked by clicking it.

use eframe::egui::{
    Button, Grid, Label, Popup, RichText, Role, ScrollArea, Stroke, TextWrapMode, Ui, WidgetInfo, pos2,
};

use super::context::WindowContext;
use super::theme::Palette;
use crate::assess::{RepairOption, SectionState};
use crate::measure::{Humidity, Moisture, Percent, Quantity};
use crate::words::{Arg, Words, say, verdict};

/// The answer.
pub(super) struct Why {
    /// How it is worked out, in a sentence.
    pub how: String,
    /// What goes in: the message of its name, and its value.
    pub from: Vec<From>,
    /// What it adds up from, where that has names of its own: the name, and the sum.
    pub lines: Vec<(String, String)>,
    /// The source of the method.
    pub source: String,
}

impl Why {
    /// Of what comes to nothing.
    pub fn of_nothing(words: &Words) -> Self {
        let how = words.text("explain-nothing").into_owned();
        Self { how, from: vec![], lines: vec![], source: String::new() }
    }
}

/// A number that can be asked where it comes from.
pub(super) fn number(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    what: &str,
    shown: RichText,
    why: impl FnOnce() -> Why,
) {
    let short = shown.text().chars().count() < 24;
    let mode = if short { TextWrapMode::Extend } else { TextWrapMode::Wrap };
    let button = ui.add(Button::new(shown).frame(false).wrap_mode(mode));
    let name = say!(context.words, "explain-ask", what = Arg::Name(what));
    button.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
    // A dotted line under it says that it can be asked.
    let (left, right, low) = (button.rect.left(), button.rect.right(), button.rect.bottom());
    let dots = eframe::egui::Shape::dotted_line(
        &[pos2(left, low), pos2(right, low)],
        context.palette.soft,
        3.0,
        0.7,
    );
    ui.painter().extend(dots);
    if button.has_focus() {
        ui.painter().rect_stroke(
            button.rect.expand(2.0),
            3,
            Stroke::new(1.4, context.palette.accent),
            eframe::egui::StrokeKind::Outside,
        );
    }
    let (palette, words) = (context.palette, context.words);
    Popup::from_toggle_button_response(&button).width(360.0).show(|ui| {
        let why = why();
        ui.set_width(350.0);
        ui.label(RichText::new(what).strong());
        ui.add(Label::new(why.how).wrap());
        Grid::new("from").num_columns(2).show(ui, |ui| {
            for (message, value) in why.from {
                ui.label(RichText::new(words.text(message)).small().color(palette.soft));
                ui.add(Label::new(RichText::new(value).small()).wrap());
                ui.end_row();
            }
        });
        if !why.lines.is_empty() {
            lines(ui, palette, why.lines);
        }
        ui.add(Label::new(RichText::new(why.source).small().color(palette.soft)).wrap());
    });
    button.on_hover_text(context.words.text("explain-ask.hint"));
}

/// What a number adds up from, which may be long.
fn lines(ui: &mut Ui, palette: &Palette, lines: Vec<(String, String)>) {
    ScrollArea::vertical().max_height(260.0).show(ui, |ui| {
        Grid::new("lines").num_columns(2).striped(true).show(ui, |ui| {
            for (name, sum) in lines {
                ui.scope(|ui| {
                    ui.set_max_width(165.0);
                    ui.add(Label::new(RichText::new(name).small().color(palette.soft)).wrap());
                });
                ui.add(Label::new(RichText::new(sum).small()).wrap());
                ui.end_row();
            }
        });
    });
}

/// An entry of what goes in: the message of its name, and its value.
type From = (&'static str, String);

/// The mean gap of a section.
pub(super) fn mean_gap(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let words = context.words;
    let (measured, joints) = (state.gaps.measured, state.gaps.joints);
    let from: Vec<From> = vec![
        ("explain-joints-measured", say!(words, "explain-of", count = measured, all = joints)),
        ("explain-scatter", words.figures().length(state.gaps.scatter)),
    ];
    Why {
        how: say!(words, "explain-mean-gap"),
        from,
        source: say!(words, "explain-mean-gap.source"),
        lines: vec![],
    }
}

/// The boards' moisture at the visit.
pub(super) fn now(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let words = context.words;
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    let from: Vec<From> = vec![
        ("explain-readings", words.figures().number(count(state.now.readings), 0)),
        ("explain-expected-today", moisture(words, state.expected_now)),
        (
            "field-species",
            context.words.name_of(&context.assessment.catalog.species, &board.species).into_owned(),
        ),
    ];
    Why { how: say!(words, "explain-now"), from, source: say!(words, "explain-now.source"), lines: vec![] }
}

/// The moisture at install.
pub(super) fn install(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let words = context.words;
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    let species = context.assessment.catalog.species(&board.species);
    let coefficient = species.map_or(0.0, |species| species.coefficient(board.ring_angle));
    let from: Vec<From> = vec![
        ("explain-gap-today", words.figures().length(state.gaps.mean)),
        ("explain-width-at-joint", words.figures().length(state.across)),
        ("explain-coefficient", words.figures().number(coefficient, 5)),
        ("explain-moisture-today", moisture(words, state.now.moisture.mean)),
    ];
    Why {
        how: say!(words, "explain-install"),
        from,
        source: say!(words, "explain-install.source"),
        lines: vec![],
    }
}

/// What the room keeps the boards at.
pub(super) fn settled(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let words = context.words;
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    let days = || context.assessment.year.iter().flat_map(|year| &year.days).map(|air| air.humidity);
    let from: Vec<From> = days()
        .reduce(Humidity::min)
        .zip(days().reduce(Humidity::max))
        .map(|(low, high)| ("explain-room-humidity", say!(words, "explain-range", low = low, high = high)))
        .into_iter()
        .chain([
            ("field-thickness", words.figures().length(board.thickness)),
            ("explain-mean-of-year", moisture(words, state.settled.mean())),
        ])
        .collect();
    Why {
        how: say!(words, "explain-settled"),
        from,
        source: say!(words, "explain-settled.source"),
        lines: vec![],
    }
}

/// The widest gap of the coming year.
pub(super) fn widest(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let words = context.words;
    let (driest, _) = state.settled.extremes();
    let from: Vec<From> = vec![
        ("explain-gap-today", words.figures().length(state.gaps.mean)),
        ("explain-moisture-today", moisture(words, state.now.moisture.mean)),
        ("explain-driest", moisture(words, driest)),
    ];
    Why {
        how: say!(words, "explain-widest"),
        from,
        source: say!(words, "explain-widest.source"),
        lines: vec![],
    }
}

/// The chance of a callback.
pub(super) fn chance(context: &WindowContext<'_>, option: &RepairOption) -> Why {
    let (words, plan) = (context.words, &context.assessment.job.plan);
    let capability = &context.assessment.catalog.capability;
    let pct = |share: f64| Percent::pct(100.0 * share);
    let mut from: Vec<From> = Vec::new();
    if let Some(risk) = &option.callback {
        let (low, high) = (pct(risk.interval.low), pct(risk.interval.high));
        from.push(("explain-interval", say!(words, "explain-range", low = low, high = high)));
        if let Some(tears) = option.tears {
            from.push(("explain-without-paint", verdict::chance_with_sound_paint(risk, words)));
            let (low, high) = (pct(tears.low), pct(tears.high));
            from.push(("explain-tears", say!(words, "explain-tears-range", low = low, high = high)));
        }
        let (quarter, half) = (pct(risk.converged[0]), pct(risk.converged[1]));
        from.push(("explain-converged", say!(words, "explain-both", first = quarter, second = half)));
        from.push(("explain-opens-again", words.figures().run(risk.opens)));
    }
    from.push(("explain-drawn", say!(words, "explain-drawn-what")));
    let median = Arg::Number(capability.median, 2);
    let kind = Arg::Id(capability.kind.key());
    from.push(("explain-capability", say!(words, "explain-times-class", times = median, kind = kind)));
    let how = say!(
        words,
        "explain-chance",
        trials = context.assessment.catalog.trials,
        years = plan.warranty_years,
        share = plan.callback.open_share,
        gap = plan.callback.widest,
    );
    Why { how, from, source: say!(words, "explain-chance.source"), lines: vec![] }
}

/// The price with callbacks.
pub(super) fn expected(context: &WindowContext<'_>, option: &RepairOption) -> Why {
    let (words, plan) = (context.words, &context.assessment.job.plan);
    let mut from: Vec<From> = vec![("explain-price", words.figures().money(option.total()))];
    if let Some(year) = option.warranty_year {
        let share = |share: f64| words.figures().percent(100.0 * share, 1);
        let cost = words.figures().money(option.price_of_work().times(year.share));
        from.extend([
            ("explain-year-chance", share(year.chance)),
            ("explain-year-redone", share(year.redone)),
            ("explain-year-cost", cost),
        ]);
    }
    from.extend([
        ("field-warranty", words.figures().quantity(Quantity::Years(plan.warranty_years))),
        ("field-discount-rate", words.figures().percent(plan.discount.to_pct(), 1)),
    ]);
    Why {
        how: say!(words, "explain-expected"),
        from,
        source: say!(words, "explain-expected.source"),
        lines: vec![],
    }
}

fn moisture(words: &Words, moisture: Moisture) -> String {
    words.figures().percent(moisture.to_pct(), 1)
}

fn count(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::MAX, f64::from)
}
