//! Sealants, paints, materials, tasks and boards: a fold each, a figure a field.

use std::ops::RangeInclusive;

use eframe::egui::{ComboBox, Grid, Ui};
use jiff::civil::Date;

use super::edit;
use crate::app::context::WindowContext;
use crate::app::entry::{entry, text_entry};
use crate::app::fold::fold;
use crate::app::lead;
use crate::app::tabs::price::read_money;
use crate::app::widgets::{remark, term};
use crate::job::fields::{self, At, Field, Item};
use crate::job::{Catalog, CatalogBoard, PriceBook};
use crate::joint::Sealant;
use crate::measure::{Dimension, Hours, Minutes, Money, Percent, Units, Volume};
use crate::named::{Named, find, name_of, place_of, position};
use crate::repair::{Material, Paint, Task};
use crate::words::price_book::{material_unit, task_unit};
use crate::words::{Arg, Say as _, say};

/// A kind of entry: how it is named and where it is kept.
trait InCatalog: Clone + Named + 'static {
    /// The list of the job's own entries.
    const LIST: fn(&mut PriceBook) -> &mut Vec<Self>;
    /// The list that comes with the program.
    const BUILT_IN: fn(&Catalog) -> &[Self];
    /// Makes it an entry of the user's own under this name.
    fn rename(&mut self, name: String);
    /// The entry as it comes with the program, if it does.
    fn built_in(&self) -> Option<Self> {
        find((Self::BUILT_IN)(Catalog::built_in()), self.key()).cloned()
    }
}

impl InCatalog for Sealant {
    const LIST: fn(&mut PriceBook) -> &mut Vec<Self> = |own| &mut own.sealants;
    const BUILT_IN: fn(&Catalog) -> &[Self] = |catalog| &catalog.sealants;
    fn rename(&mut self, name: String) {
        (self.id, self.name, self.aliases) = (String::new(), name, Vec::new());
    }
}

impl InCatalog for Paint {
    const LIST: fn(&mut PriceBook) -> &mut Vec<Self> = |own| &mut own.paints;
    const BUILT_IN: fn(&Catalog) -> &[Self] = |catalog| &catalog.paints;
    fn rename(&mut self, name: String) {
        (self.id, self.name, self.aliases) = (String::new(), name, Vec::new());
    }
}

impl InCatalog for Material {
    const LIST: fn(&mut PriceBook) -> &mut Vec<Self> = |own| &mut own.materials;
    const BUILT_IN: fn(&Catalog) -> &[Self] = |catalog| &catalog.materials;
    fn rename(&mut self, name: String) {
        self.id.clone_from(&name);
        (self.name, self.aliases) = (name, Vec::new());
    }
}

impl InCatalog for Task {
    const LIST: fn(&mut PriceBook) -> &mut Vec<Self> = |own| &mut own.tasks;
    const BUILT_IN: fn(&Catalog) -> &[Self] = |catalog| &catalog.tasks;
    fn rename(&mut self, name: String) {
        self.id.clone_from(&name);
        self.name = name;
    }
}

/// Changes one entry of the job's figures.
fn change<T: InCatalog>(
    context: &mut WindowContext<'_>,
    name: &str,
    of: &T,
    set: impl FnOnce(&mut T) + 'static,
) {
    let of = of.clone();
    edit(context, name, move |own| {
        let list = T::LIST(own);
        match place_of(list, &of) {
            Some(known) => set(&mut list[known]),
            None => {
                let mut changed = of;
                set(&mut changed);
                list.push(changed);
            }
        }
    });
}

/// What can be done with a whole entry: copy it, and take it away or back to the program's.
fn whole<T: InCatalog>(ui: &mut Ui, context: &mut WindowContext<'_>, of: &T) {
    ui.horizontal_wrapped(|ui| {
        if ui.button(context.words.text("entry-copy")).clicked() {
            let mut copy = of.clone();
            copy.rename(say!(context.words, "entry-copy-name", name = Arg::Called(of.name())));
            edit(context, "entry-copy", move |own| {
                let list = T::LIST(own);
                if place_of(list, &copy).is_none() {
                    list.push(copy);
                }
            });
        }
        let key = of.key().to_owned();
        match of.built_in() {
            Some(original) => {
                if ui.button(context.words.text("entry-restore")).clicked() {
                    change(context, "entry-restore", of, move |entry| *entry = original);
                }
            }
            None => {
                if ui.button(context.words.text("entry-remove")).clicked() {
                    edit(context, "entry-remove", move |own| T::LIST(own).retain(|e| e.key() != key));
                }
            }
        }
    });
}

/// The name of an entry that does not come with the program; what refers to it follows.
fn name_entry<T: InCatalog>(ui: &mut Ui, context: &mut WindowContext<'_>, of: &T) {
    if of.built_in().is_some() {
        return;
    }
    let label = context.words.text("entry-name");
    ui.label(label.as_ref());
    if let Some(name) = text_entry(ui, &label, of.name(), 240.0).filter(|name| !name.is_empty()) {
        let old = of.key().to_owned();
        context.edit("entry-name", move |job| {
            let plan = &mut job.plan;
            for used in [&mut plan.sealant, &mut plan.primer, &mut plan.paint] {
                if *used == old {
                    used.clone_from(&name);
                }
            }
            if let Some(own) = &mut job.price_book {
                let list = T::LIST(own);
                if position(list, &name).is_some() {
                    return;
                }
                if let Some(entry) = list.iter_mut().find(|known| known.key() == old) {
                    entry.rename(name);
                }
            }
        });
    }
    ui.end_row();
}

/// A field for a number of an entry.
fn number<T: InCatalog>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    of: &T,
    message: &'static str,
    (value, decimals, range): (f64, usize, RangeInclusive<f64>),
    set: impl FnOnce(&mut T, f64) + 'static,
) {
    let label = context.words.text(message);
    named_number(ui, context, of, (message, &label), (value, decimals, range), set);
}

/// [`number`] under a label that says more than its message alone.
fn named_number<T: InCatalog>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    of: &T,
    (message, label): (&'static str, &str),
    (value, decimals, range): (f64, usize, RangeInclusive<f64>),
    set: impl FnOnce(&mut T, f64) + 'static,
) {
    let hint = context.words.optional(&format!("{message}.hint"));
    term(ui, label, hint.as_deref().unwrap_or_default());
    if let Some(number) = context.number_entry(ui, label, value, decimals, range, 70.0) {
        change(context, message, of, move |entry| set(entry, number));
    }
    ui.end_row();
}

/// A field for what a batch or a piece is for, in the units that people use; kept in SI.
fn amount<T: InCatalog>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    of: &T,
    message: &'static str,
    (dimension, value): (Dimension, f64),
    set: impl FnOnce(&mut T, f64) + 'static,
) {
    let one = dimension.si_of_unit(context.units());
    number(ui, context, of, message, (value / one, 2, 1e-4..=1e6), move |entry, n| set(entry, n * one));
}

/// The unit of the entry above, in a row of its own, since it may be long.
fn unit(ui: &mut Ui, unit: &str) {
    ui.label("");
    ui.label(unit);
    ui.end_row();
}

/// A field for a price of an entry.
fn price<T: InCatalog>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    of: &T,
    (label, value): (&str, Money),
    set: impl FnOnce(&mut T, Money, Date) + 'static,
) {
    ui.label(label);
    let words = context.words;
    let typed = entry(ui, label, &value.plain(), 70.0, |text| read_money(text, words));
    if let Some(amount) = typed {
        let today = jiff::ZonedDateTime::now().date();
        change(context, "entry-price", of, move |entry| set(entry, amount, today));
    }
    ui.end_row();
}

fn priced(ui: &mut Ui, context: &WindowContext<'_>, day: Option<Date>) {
    let priced = match day {
        Some(day) => say!(context.words, "entry-priced", date = day),
        None => say!(context.words, "entry-not-priced"),
    };
    remark(ui, context.palette, priced);
}

/// One entry of the list that is `field` in a fold of its own.
fn one(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    field: &'static Field,
    (title, source): (&str, &str),
    show: impl FnOnce(&mut Ui, &mut WindowContext<'_>),
) {
    let shown = fold(ui, ("entry", title), context.words.called(title), false, |ui| {
        context.reach(ui, field, At::ONCE, Some(&Item::Id(title.to_owned())));
        show(ui, context);
        lead::pass_by(ui.ctx());
    });
    shown.header_response.on_hover_text(source);
}

/// Milliliters of a US fluid ounce, and microns of a mil.
const FLUID_OUNCE_ML: f64 = 29.573_529_562_5;
const MIL_MICRONS: f64 = 25.4;

const SHARE: RangeInclusive<f64> = 0.0..=200.0;
const SOLIDS: RangeInclusive<f64> = 5.0..=100.0;

pub(super) fn sealants(ui: &mut Ui, context: &mut WindowContext<'_>) {
    // Packs are labeled in fluid ounces where lengths are in inches.
    let ml = if context.units() == Units::Inches { FLUID_OUNCE_ML } else { 1.0 };
    for sealant in &context.assessment.catalog.sealants {
        let kind = Arg::Id(sealant.kind.key());
        let (class, from) = (&sealant.class, &sealant.source);
        let source = say!(
            context.words,
            "entry-class-source",
            class = Arg::Called(class),
            source = Arg::Called(from),
            kind = kind
        );
        one(ui, context, &fields::BOOK_SEALANTS, (&sealant.name, &source), |ui, context| {
            Grid::new("sealant").num_columns(2).show(ui, |ui| {
                name_entry(ui, context, sealant);
                number(
                    ui,
                    context,
                    sealant,
                    "entry-stretch",
                    (sealant.stretch.to_pct(), 1, SHARE),
                    |s, n| s.stretch = Percent::pct(n),
                );
                number(
                    ui,
                    context,
                    sealant,
                    "entry-squeeze",
                    (sealant.squeeze.to_pct(), 1, SHARE),
                    |s, n| s.squeeze = Percent::pct(n),
                );
                number(ui, context, sealant, "entry-solids", (sealant.solids.to_pct(), 0, SOLIDS), |s, n| {
                    s.solids = Percent::pct(n);
                });
                number(ui, context, sealant, "entry-cure", (sealant.cure.to_h(), 1, 0.0..=2000.0), |s, n| {
                    s.cure = Hours::h(n);
                });
                for (at, pack) in sealant.packs.iter().enumerate() {
                    let label = say!(
                        context.words,
                        "entry-pack-price",
                        pack = Arg::Called(&pack.name),
                        holds = pack.holds
                    );
                    price(ui, context, sealant, (&label, pack.price), move |s, amount, today| {
                        if let Some(pack) = s.packs.get_mut(at) {
                            pack.price = amount;
                        }
                        s.priced = Some(today);
                    });
                    let units = Arg::units(context.units());
                    let label =
                        say!(context.words, "entry-pack-size", pack = Arg::Called(&pack.name), units = units);
                    named_number(
                        ui,
                        context,
                        sealant,
                        ("entry-pack-holds", &label),
                        (pack.holds.to_ml() / ml, 1, 0.3..=100_000.0),
                        move |s, held| {
                            if let Some(pack) = s.packs.get_mut(at) {
                                pack.holds = Volume::litres(held * ml / 1000.0);
                            }
                        },
                    );
                }
            });
            priced(ui, context, sealant.priced);
            whole(ui, context, sealant);
        });
    }
}

pub(super) fn paints(ui: &mut Ui, context: &mut WindowContext<'_>) {
    // Films are told in mils where lengths are in inches.
    let micron = if context.units() == Units::Inches { MIL_MICRONS } else { 1.0 };
    for paint in &context.assessment.catalog.paints {
        let kind = Arg::Id(paint.kind.key());
        let source = say!(context.words, "entry-source", source = Arg::Called(&paint.source), kind = kind);
        one(ui, context, &fields::BOOK_PAINTS, (&paint.name, &source), |ui, context| {
            Grid::new("paint").num_columns(2).show(ui, |ui| {
                name_entry(ui, context, paint);
                number(ui, context, paint, "entry-solids", (paint.solids.to_pct(), 0, SOLIDS), |p, n| {
                    p.solids = Percent::pct(n);
                });
                let label = say!(context.words, "entry-film-in", units = Arg::units(context.units()));
                named_number(
                    ui,
                    context,
                    paint,
                    ("entry-film", &label),
                    (paint.film / micron, 1, 0.03..=1000.0),
                    move |p, n| p.film = n * micron,
                );
                number(ui, context, paint, "entry-transfer", (paint.transfer.to_pct(), 0, SOLIDS), |p, n| {
                    p.transfer = Percent::pct(n);
                });
                let sprayed = paint.sprayed.unwrap_or(paint.transfer).to_pct();
                number(ui, context, paint, "entry-sprayed", (sprayed, 0, SOLIDS), |p, n| {
                    p.sprayed = Some(Percent::pct(n));
                });
                number(ui, context, paint, "entry-recoat", (paint.recoat.to_h(), 1, 0.0..=500.0), |p, n| {
                    p.recoat = Hours::h(n);
                });
                for (at, &(litres, cost)) in paint.cans.iter().enumerate() {
                    let label = say!(context.words, "entry-can-price", holds = Volume::litres(litres));
                    price(ui, context, paint, (&label, cost), move |p, amount, today| {
                        if let Some(can) = p.cans.get_mut(at) {
                            can.1 = amount;
                        }
                        p.priced = Some(today);
                    });
                }
            });
            priced(ui, context, paint.priced);
            whole(ui, context, paint);
        });
    }
}

pub(super) fn materials(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for material in &context.assessment.catalog.materials {
        let kind = Arg::Id(material.kind.key());
        let source = say!(context.words, "entry-source", source = Arg::Called(&material.source), kind = kind);
        one(ui, context, &fields::BOOK_MATERIALS, (&material.name, &source), |ui, context| {
            Grid::new("material").num_columns(2).show(ui, |ui| {
                name_entry(ui, context, material);
                let dimension = material.per.dimension();
                amount(ui, context, material, "entry-piece-for", (dimension, material.holds), |m, n| {
                    m.holds = n;
                });
                let shown = material.holds / dimension.si_of_unit(context.units());
                unit(ui, &material_unit(material.per, shown, context.words));
                let label = context.words.text("entry-piece-price");
                price(ui, context, material, (&label, material.price), |m, amount, today| {
                    m.price = amount;
                    m.priced = Some(today);
                });
            });
            priced(ui, context, material.priced);
            whole(ui, context, material);
        });
    }
}

pub(super) fn tasks(ui: &mut Ui, context: &mut WindowContext<'_>) {
    remark(ui, context.palette, context.words.text("entry-minutes"));
    for task in &context.assessment.catalog.tasks {
        let source = match task.source.as_str() {
            "" => task.kind.say(context.words),
            source => {
                let kind = Arg::Id(task.kind.key());
                say!(context.words, "entry-source", source = Arg::Called(source), kind = kind)
            }
        };
        one(ui, context, &fields::BOOK_TASKS, (&task.name, &source), |ui, context| {
            Grid::new("task").num_columns(2).show(ui, |ui| {
                name_entry(ui, context, task);
                let own_rate = context.words.text("entry-own-rate").into_owned();
                let minutes = task.minutes;
                let most = 100_000.0;
                number(ui, context, task, "entry-least", (minutes.low, 1, 0.0..=minutes.likely), |t, n| {
                    t.minutes.low = n;
                });
                number(ui, context, task, "entry-likely", (minutes.likely, 1, 0.01..=most), |t, n| {
                    // The spread keeps its proportion to the likely time.
                    t.minutes = t.minutes.times(n / t.minutes.likely.max(1e-9));
                    t.source = own_rate;
                });
                number(ui, context, task, "entry-most", (minutes.high, 1, minutes.likely..=most), |t, n| {
                    t.minutes.high = n;
                });
                let dimension = task.per.dimension();
                amount(ui, context, task, "entry-batch", (dimension, task.batch), |t, n| t.batch = n);
                let shown = task.batch / dimension.si_of_unit(context.units());
                unit(ui, &task_unit(task.per, shown, context.words));
                let fixed = task.fixed.map_or(0.0, Minutes::to_minutes);
                number(ui, context, task, "entry-fixed", (fixed, 1, 0.0..=most), |t, n| {
                    t.fixed = (n > 0.0).then(|| Minutes::of(n));
                });
                if let Some(also) = task.also {
                    let minutes = also.minutes.to_minutes();
                    number(ui, context, task, "entry-also", (minutes, 1, 0.0..=most), |t, n| {
                        if let Some(also) = &mut t.also {
                            also.minutes = Minutes::of(n);
                        }
                    });
                    let dimension = also.per.dimension();
                    amount(ui, context, task, "entry-also-batch", (dimension, also.batch), |t, n| {
                        if let Some(also) = &mut t.also {
                            also.batch = n;
                        }
                    });
                    let shown = also.batch / dimension.si_of_unit(context.units());
                    unit(ui, &task_unit(also.per, shown, context.words));
                }
            });
            remark(ui, context.palette, source.clone());
            whole(ui, context, task);
        });
    }
}

/// Boards under a name, taken from a section of the job.
pub(super) fn boards(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.assessment.catalog.boards.is_empty() {
        remark(ui, context.palette, context.words.text("entry-no-boards"));
    }
    for named in &context.assessment.catalog.boards {
        let (board, name) = (&named.board, named.name.clone());
        let species = Arg::Called(name_of(&context.assessment.catalog.species, &board.species));
        let (wide, thick) = (board.face_width, board.thickness);
        let source = say!(context.words, "entry-board", species = species, wide = wide, thick = thick);
        one(ui, context, &fields::BOOK_BOARDS, (&named.name, &source), |ui, context| {
            ui.label(&source);
            ui.horizontal_wrapped(|ui| {
                let spec = board.clone();
                if ui.button(context.words.text("entry-lay-boards")).clicked() {
                    let surface = context.view.surface;
                    context.edit("entry-lay-boards", move |job| {
                        if let Some(surface) = job.surfaces.get_mut(surface) {
                            surface.sections.iter_mut().for_each(|section| section.board = spec.clone());
                        }
                    });
                }
                if ui.button(context.words.text("entry-remove")).clicked() {
                    edit(context, "entry-remove", move |own| {
                        own.boards.retain(|b| b.name != name);
                    });
                }
            });
        });
    }
    let Some(surface) = context.job.surfaces.get(context.view.surface) else { return };
    let combo = ComboBox::from_id_salt("keep boards")
        .selected_text(context.words.text("entry-keep-boards"))
        .width(180.0);
    let response = combo.show_ui(ui, |ui| {
        for section in &surface.sections {
            if ui
                .selectable_label(false, say!(context.words, "entry-section", section = &section.name))
                .clicked()
            {
                let board = section.board.clone();
                let species = context.words.name_of(&context.assessment.catalog.species, &board.species);
                let name = format!("{species}, {}", context.words.figures().length(board.face_width));
                edit(context, "undo-keep-boards", move |own| {
                    own.boards.retain(|known| known.name != name);
                    own.boards.push(CatalogBoard { name, board });
                });
            }
        }
    });
    response.response.accessible_name(context.words.text("undo-keep-boards"));
}
