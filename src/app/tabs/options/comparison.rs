//! The repair options side by side: a row each, with the joint as it leaves it in January and August.

use eframe::egui::{
    Align, Id, Label, Layout, Pos2, Rect, RichText, Role, Sense, Stroke, StrokeKind, TextStyle, Ui,
    UiBuilder, WidgetInfo, pos2, vec2,
};

use crate::app::context::WindowContext;
use crate::app::explain;
use crate::app::fold::fold;
use crate::app::joint_section;
use crate::app::lead;
use crate::app::widgets::{fitted, remark};
use crate::assess::{Assessment, Choice, RepairOption};
use crate::job::fields::{self, At};
use crate::measure::Money;
use crate::repair::{CostDriver, MethodId, Outcome};
use crate::words::causes::chance_as_percent;
use crate::words::verdict::lasts_between;
use crate::words::{self, Arg, Say as _, Words, say};

/// Height of a row: whatever its figures become, no other moves.
const ROW: f32 = 82.0;
/// Width of a picture; the two of a row go where there is no room for them and the name.
const PICTURE: f32 = 92.0;
const WITH_PICTURES: f32 = 740.0;
/// Width of the chance, and of the price.
const CHANCE: f32 = 150.0;
const PRICE: f32 = 138.0;
/// Space between the cells.
const BETWEEN: f32 = 10.0;
/// Dots that stand for the chance, and the space that one takes.
const DOTS: u8 = 10;
const DOT: f32 = 11.0;

/// What the options are to whoever chooses, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Group {
    /// The one to choose, and those that cannot be told from it.
    Best,
    /// Others that can be offered; leaving things as they are among them.
    Other,
    /// Those that will most likely open again or cannot be done here.
    Against,
}

impl Group {
    fn of(assessment: &Assessment, option: &RepairOption) -> Self {
        let best = recommended(assessment)
            .is_some_and(|choice| choice.best == option.method || choice.equal.contains(&option.method));
        if assessment.advises_against(option) || option.not_possible.is_some() {
            Self::Against
        } else if best && option.outcome != Outcome::Unchanged {
            Self::Best
        } else {
            Self::Other
        }
    }
}

/// The options by what they are to whoever chooses.
pub(super) fn comparison(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, assessment) = (context.words, context.assessment);
    let choice = recommended(assessment);
    match choice {
        Some(choice) => why(ui, &words::options::best(assessment, choice, words)),
        None => why(ui, &words::verdict::first(assessment, &assessment.verdict(), words)),
    }
    let groups = groups(ui, context);
    // Numbered as they stand here, one after the other.
    let mut numbers: Vec<MethodId> = Vec::new();
    let [best, others, against] = [Group::Best, Group::Other, Group::Against].map(|group| {
        let here = |option: &&RepairOption| groups.contains(&(option.method, group));
        let mut own: Vec<&RepairOption> = assessment.options.iter().filter(here).collect();
        // The one to choose first, then by what each comes to.
        own.sort_by_key(|option| {
            let first = choice.is_some_and(|choice| choice.best == option.method);
            (!first, option.expected.is_none(), option.expected)
        });
        let first = numbers.len();
        numbers.extend(own.iter().map(|option| option.method));
        own.into_iter().enumerate().map(|(at, option)| (first + at, option)).collect::<Vec<_>>()
    });
    if !best.is_empty() {
        let title = if best.len() == 1 { "options-group-best" } else { "options-group-equal" };
        title_of(ui, words, title);
        rows(ui, context, &best);
        title_of(ui, words, "options-group-other");
    }
    rows(ui, context, &others);
    if !against.is_empty() {
        let title = say!(words, "options-group-against", count = against.len());
        let chosen = against.iter().any(|(_, option)| option.method == context.job.plan.chosen);
        fold(ui, "options-against", title, chosen, |ui| rows(ui, context, &against));
    }
    as_recommended(ui, context, choice);
    // What follows from entries stands under the rows: it may grow and shrink without moving them.
    let bead = super::planned(context).filter(|option| matches!(option.outcome, Outcome::Bead { .. }));
    let risk = bead.and_then(|option| option.callback.as_ref());
    if let Some(range) = risk.and_then(|risk| words::verdict::paint_range(risk, words)) {
        remark(ui, context.palette, range);
    }
    if let Some(choice) = choice {
        for change in words::options::changes(assessment, choice, words) {
            remark(ui, context.palette, change);
        }
        super::risk_plot::risk_plot(ui, context, choice, &numbers);
    }
}

/// A way back, where another option was chosen, to the one that is recommended whatever is entered.
fn as_recommended(ui: &mut Ui, context: &mut WindowContext<'_>, choice: Option<&Choice>) {
    context.reach(ui, &fields::AS_RECOMMENDED, At::ONCE, None);
    if choice.is_none_or(|choice| choice.best == context.job.plan.chosen) {
        return;
    }
    let button = ui.button(context.words.text("field-as-recommended"));
    lead::take_focus(&button);
    if button.clicked() {
        context.edit("field-as-recommended", |job| job.plan.as_recommended = true);
    }
}

/// The choice among the options, once there is enough to go on for one.
fn recommended(assessment: &Assessment) -> Option<&Choice> {
    assessment.choice.as_ref().filter(|_| assessment.verdict().recommended.is_some())
}

/// Which option to choose, in room for two lines whatever it takes; the rest on hover.
fn why(ui: &mut Ui, text: &str) {
    let font = TextStyle::Body.resolve(ui.style());
    let color = ui.visuals().text_color();
    let galley = fitted(ui.painter(), text, font, color, (ui.available_width(), 2));
    let height = 2.0 * ui.text_style_height(&TextStyle::Body);
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover());
    let elided = galley.elided;
    ui.painter().galley(rect.min, galley, color);
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, text));
    if elided {
        response.on_hover_text(text);
    }
}

/// What each option is, as it was when this room was entered: while someone types here, no row goes elsewhere.
fn groups(ui: &Ui, context: &WindowContext<'_>) -> Vec<(MethodId, Group)> {
    type Kept = (u64, u64, Vec<(MethodId, Group)>);
    let (id, pass, opened) =
        (Id::unique("option groups"), ui.ctx().cumulative_pass_nr(), context.session.opened);
    let now = context.assessment.options.iter();
    let now = now.map(|option| (option.method, Group::of(context.assessment, option)));
    let now: Vec<(MethodId, Group)> = now.collect();
    let kept: Option<Kept> = ui.data(|data| data.get_temp(id));
    let methods = |groups: &[(MethodId, Group)]| groups.iter().map(|(method, _)| *method).collect::<Vec<_>>();
    let stays =
        |(last, of, groups): &Kept| pass <= last + 1 && *of == opened && methods(groups) == methods(&now);
    let groups = kept.filter(stays).map_or(now.clone(), |(.., groups)| groups);
    ui.data_mut(|data| data.insert_temp(id, (pass, opened, groups.clone())));
    groups
}

fn title_of(ui: &mut Ui, words: &Words, message: &str) {
    ui.add_space(4.0);
    ui.strong(words.text(message));
}

fn rows(ui: &mut Ui, context: &mut WindowContext<'_>, options: &[(usize, &RepairOption)]) {
    for (at, option) in options {
        row(ui, context, at + 1, option);
    }
}

/// An option; a click anywhere in its row chooses it.
fn row(ui: &mut Ui, context: &mut WindowContext<'_>, number: usize, option: &RepairOption) {
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::click());
    let chosen = context.job.plan.chosen == option.method;
    let palette = context.palette;
    let (width, edge) = if chosen { (2.0, palette.accent) } else { (1.0, palette.line) };
    ui.painter().rect(rect, 6, palette.raised, Stroke::new(width, edge), StrokeKind::Inside);
    let inside = rect.shrink2(vec2(8.0, 5.0));
    let mut clicked = response.clicked();
    let figures = CHANCE + PRICE + 2.0 * BETWEEN;
    let mut left = inside.left();
    if inside.width() >= WITH_PICTURES {
        for still in option.stills.iter().take(2) {
            let picture = Rect::from_min_size(pos2(left, inside.top()), vec2(PICTURE, inside.height()));
            joint_section::paint_still(ui, context, still, picture);
            left = picture.right() + 4.0;
        }
        left = inside.left() + 2.0 * (PICTURE + 4.0) + BETWEEN;
    }
    let right = inside.right() - figures;
    let cell = |from: f32, to: f32| Rect::from_min_max(pos2(from, inside.top()), pos2(to, inside.bottom()));
    within(ui, cell(left, right), |ui| clicked |= name(ui, context, number, option));
    within(ui, cell(right + BETWEEN, right + BETWEEN + CHANCE), |ui| chance(ui, context, option));
    within(ui, cell(inside.right() - PRICE, inside.right()), |ui| price(ui, context, option));
    if clicked && !chosen {
        let method = option.method;
        context.edit("field-option", move |job| job.plan.choose(method));
    }
}

/// A cell of a row, its lines from the top.
fn within(ui: &mut Ui, cell: Rect, add: impl FnOnce(&mut Ui)) {
    let builder = UiBuilder::new().max_rect(cell).layout(Layout::top_down(Align::Min));
    // A child that takes no room of the list: the row has it.
    let mut ui = ui.new_child(builder);
    ui.set_clip_rect(ui.clip_rect().intersect(cell));
    ui.spacing_mut().item_spacing.y = 2.0;
    // Words that can be marked would take the row's clicks.
    ui.style_mut().interaction.selectable_labels = false;
    add(&mut ui);
}

/// The option's name and its days; whether it was chosen by them.
fn name(ui: &mut Ui, context: &WindowContext<'_>, number: usize, option: &RepairOption) -> bool {
    let words = context.words;
    let chosen = context.job.plan.chosen == option.method;
    let mut shown =
        RichText::new(say!(words, "options-name", number = number, option = Arg::Called(&option.name)))
            .strong();
    if option.not_possible.is_some() {
        shown = shown.color(context.palette.soft);
    }
    let clicked = ui
        .horizontal_top(|ui| {
            ui.style_mut().wrap_mode = Some(eframe::egui::TextWrapMode::Wrap);
            ui.radio(chosen, shown).accessible_name(words.called(&option.name)).clicked()
        })
        .inner;
    let said = match &option.not_possible {
        Some(reason) => reason.say(words),
        None => {
            let days = &option.schedule;
            let (crew, calendar, out) = (days.crew_days, days.calendar_days, days.room_out);
            say!(words, "options-days", crew = crew, calendar = calendar, out = out)
        }
    };
    ui.add(Label::new(RichText::new(said).small().color(context.palette.soft)).wrap());
    clicked
}

/// The chance that it stays closed, as dots and as a figure with its range.
fn chance(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (words, palette) = (context.words, context.palette);
    let Some(risk) = option.callback.as_ref().filter(|_| option.not_possible.is_none()) else { return };
    let (dots, _) = ui.allocate_exact_size(vec2(DOT * f32::from(DOTS), DOT + 4.0), Sense::hover());
    let filled = ((1.0 - risk.chance) * f64::from(DOTS)).round() as u8;
    for dot in 0..DOTS {
        let at: Pos2 = dots.left_center() + vec2(DOT * (f32::from(dot) + 0.5), 0.0);
        if dot < filled {
            ui.painter().circle_filled(at, 4.0, palette.good);
        } else {
            ui.painter().circle_stroke(at, 3.5, Stroke::new(1.2, palette.soft));
        }
    }
    let shown =
        RichText::new(say!(words, "options-lasts", chance = &chance_as_percent(1.0 - risk.chance, words)));
    explain::number(ui, context, &words.text("options-chance"), shown, || explain::chance(context, option));
    if let Some(range) = lasts_between(risk, words) {
        ui.add(Label::new(RichText::new(range).small().color(palette.soft)).truncate());
    }
}

/// The price with its range, and what it comes to with callbacks.
fn price(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let words = context.words;
    let figures = words.figures();
    let Some(of_work) = &option.price else { return };
    let (low, high) = (of_work.spread.low, of_work.spread.high);
    let total = RichText::new(figures.rough_money(of_work.total)).strong();
    let total = ui.label(total);
    let small = |text: String| RichText::new(text).small().color(context.palette.soft);
    if low != high {
        total.on_hover_text(drivers(option, words));
        let (low, high) = (Arg::RoughMoney(low), Arg::RoughMoney(high));
        ui.add(Label::new(small(say!(words, "options-price-range", low = low, high = high))).truncate());
    }
    let Some(expected) = option.expected else { return };
    let said = small(say!(words, "options-with-callbacks", total = Arg::RoughMoney(expected)));
    explain::number(ui, context, &words.text("options-total"), said, || explain::expected(context, option));
}

/// What moves a price most: the two inputs, and by how much.
fn drivers(option: &RepairOption, words: &Words) -> String {
    let one = |(driver, swing): &(CostDriver, Money)| {
        say!(words, "options-price-driver", what = &driver.say(words), swing = Arg::RoughMoney(*swing))
    };
    let most: Vec<String> = option.cost.drivers.iter().take(2).map(one).collect();
    say!(words, "options-price-drivers", drivers = &words.figures().list(&most))
}
