//! Repair: the ways side by side, then plan, tasks, materials and price of the chosen one.

use eframe::egui::{
    Align, CollapsingHeader, ComboBox, Grid, Label, Layout, Rect, RichText, Sense, Stroke, Ui, pos2, vec2,
};

use super::{heading, remark, term};
use crate::app::context::Cx;
use crate::app::entry::entry;
use crate::assess::{RepairOption, date_after};
use crate::job::Place;
use crate::measure::{
    Hours, Length, Minutes, Money, Percent, ThreePoint, parse_date, parse_money, parse_number, show_date,
    show_number,
};
use crate::papers::need;
use crate::repair::{Outcome, Plan, Scope, TaxOn, Trial};

pub(super) fn repair(ui: &mut Ui, cx: &mut Cx<'_>) {
    if cx.found.options.is_empty() {
        remark(ui, cx, "Draw the boards first: then the ways to mend them are worked out here.");
        return;
    }
    heading(ui, "The ways");
    super::ways::ways(ui, cx);
    let Some(option) = cx.found.options.iter().find(|option| option.method == cx.job.plan.chosen) else {
        return;
    };
    if matches!(option.outcome, Outcome::Bead { .. }) {
        heading(ui, "Sealing");
        sealing(ui, cx);
    }
    heading(ui, &format!("Price: {}", option.price.total.show(&cx.job.plan.prices.currency)));
    price(ui, cx, option);
    CollapsingHeader::new("Who pays").default_open(true).show(ui, |ui| payers(ui, cx, option));
    CollapsingHeader::new("Crew, paint and rates").default_open(false).show(ui, |ui| crew(ui, cx));
    CollapsingHeader::new(format!("Tasks: {}", option.hours.show())).default_open(true).show(ui, |ui| {
        trial(ui, cx);
        tasks(ui, cx, option);
    });
    CollapsingHeader::new("Materials").default_open(false).show(ui, |ui| materials(ui, cx, option));
    CollapsingHeader::new(format!(
        "Days: {} of work over {}",
        option.schedule.crew_days, option.schedule.calendar_days
    ))
    .default_open(false)
    .show(ui, |ui| days(ui, cx, option));
    heading(ui, "Cautions");
    for caution in &cx.found.cautions {
        let text = RichText::new(format!("{}. {}", caution.title, caution.text)).small();
        let label = ui.add(Label::new(text).wrap());
        if !caution.source.is_empty() {
            label.on_hover_text(format!("{} ({})", caution.source, caution.kind.words()));
        }
    }
}

pub(super) fn edit_plan(cx: &mut Cx<'_>, name: &str, change: impl FnOnce(&mut Plan) + 'static) {
    cx.edit(name, move |job| change(&mut job.plan));
}

fn sealing(ui: &mut Ui, cx: &mut Cx<'_>) {
    let plan = &cx.job.plan;
    Grid::new("sealing").num_columns(2).show(ui, |ui| {
        term(
            ui,
            "Sealant",
            "Its class is the per cent of the width at sealing by which the joint may open or close.",
        );
        named(
            ui,
            cx,
            "Sealant",
            &plan.sealant,
            &cx.shelf.sealants.iter().map(|s| s.name.as_str()).collect::<Vec<_>>(),
            |plan, name| plan.sealant = name,
        );
        ui.end_row();
        term(ui, "Seal on", "The first day of sealing. Leave empty for the best weeks.");
        let (units, visited) = (cx.units(), cx.job.visited);
        let shown = plan.seal_on.map_or_else(String::new, show_date);
        let date = entry(ui, "Seal on", &shown, 110.0, |text| match text.trim() {
            "" => Ok(None),
            text => match parse_date(text, units).map_err(|error| error.to_string())? {
                date if date < visited => {
                    Err(format!("{} is before the visit on {}", show_date(date), show_date(visited)))
                }
                date => Ok(Some(date)),
            },
        });
        if let Some(date) = date {
            edit_plan(cx, "Sealing date", move |plan| plan.seal_on = date);
        }
        ui.end_row();
        ui.label("Joints");
        let scope = plan.scope;
        ui.horizontal(|ui| {
            for (choice, words) in
                [(Scope::OpenJoints, "the open ones"), (Scope::EveryBoardJoint, "every board joint")]
            {
                if ui.radio(scope == choice, words).clicked() && scope != choice {
                    edit_plan(cx, "Which joints", move |plan| plan.scope = choice);
                }
            }
        });
        ui.end_row();
        let tiny = Length::mm(0.05)..=Length::mm(25.4);
        term(ui, "Open from", "A joint at least this wide is counted as open.");
        if let Some(width) = cx.length_entry(ui, "Open from", plan.open_from, tiny.clone(), 74.0) {
            edit_plan(cx, "Open from", move |plan| plan.open_from = width);
        }
        ui.end_row();
        term(ui, "Can be filled from", "A narrower gap leaves sealant nothing to hold to.");
        if let Some(width) = cx.length_entry(ui, "Can be filled from", plan.narrowest, tiny.clone(), 74.0) {
            edit_plan(cx, "Narrowest gap", move |plan| plan.narrowest = width);
        }
        ui.end_row();
        term(ui, "Bead at least", "Depth of the bead: as deep as the gap is wide, but at least this.");
        if let Some(depth) = cx.length_entry(ui, "Bead at least", plan.bead.least_depth, tiny, 74.0) {
            edit_plan(cx, "Bead depth", move |plan| plan.bead.least_depth = depth);
        }
        ui.end_row();
        term(
            ui,
            "Bond breaker",
            "A backer or tape that keeps the bead off the tongue behind it. Bonded on three sides it is taken to keep half of its class.",
        );
        let mut breaker = plan.bead.bond_breaker;
        if ui.checkbox(&mut breaker, "behind the bead").changed() {
            edit_plan(cx, "Bond breaker", move |plan| plan.bead.bond_breaker = breaker);
        }
        ui.end_row();
        term(ui, "V filled, %", "Share of the V's section that sealant fills; the rest stays visible.");
        if let Some(pct) = cx.number_entry(ui, "V filled", plan.bead.v_filled.to_pct(), 0, 0.0..=100.0, 50.0)
        {
            edit_plan(cx, "V filled", move |plan| plan.bead.v_filled = Percent::pct(pct));
        }
        ui.end_row();
    });
    for field in ["sealant", "sealing date", "bead depth", "V filled", "open from", "narrowest gap"] {
        cx.problems(ui, |place| *place == Place::Plan(field));
    }
    rows(ui, cx);
    if let Some(season) = &cx.found.season {
        let best = season.best_week();
        let from = show_date(date_after(cx.assessed, season.best.low * 7));
        let to = show_date(date_after(cx.assessed, season.best.high * 7 + 6));
        let mut words = format!(
            "Best weeks: {from} to {to}; {} % of the length holds then. Reckoned for {}.",
            show_number((season.share(best) * 100.0).floor(), 0),
            show_date(date_after(cx.assessed, cx.found.seal_day)),
        );
        if let Some(typical) = best.typical {
            words.push_str(&format!(
                " A typical bead is then pulled {} % and squeezed {} %.",
                show_number(typical.stretch.to_pct(), 0),
                show_number(typical.squeeze.to_pct(), 0)
            ));
        }
        if season.never > Length::ZERO {
            let never = season.never.show_run(cx.units());
            words.push_str(&format!(" {never} is too narrow to seal in any week."));
        }
        if let Some(asked) = selected_words(cx) {
            words.push_str(&asked);
        }
        remark(ui, cx, words);
    }
    remark(
        ui,
        cx,
        "Sealing guides speak of joints from 1/4 in up with a backer behind; joints between interior boards are narrower, and the tongue behind the bead holds it too. Take the shares as a guide, not a warranty.",
    );
}

/// A drop-down of names of the shelf.
fn named(
    ui: &mut Ui,
    cx: &mut Cx<'_>,
    what: &'static str,
    now: &str,
    names: &[&str],
    set: fn(&mut Plan, String),
) {
    let combo = ComboBox::from_id_salt(what).selected_text(now).width(230.0);
    let response = combo.show_ui(ui, |ui| {
        for name in names {
            if ui.selectable_label(*name == now, *name).clicked() {
                let name = (*name).to_owned();
                edit_plan(cx, what, move |plan| set(plan, name));
            }
        }
    });
    response.response.accessible_name(what);
}

/// An amount of money, so that cents stand under cents.
fn amount_label(ui: &mut Ui, text: String) {
    let layout = Layout::right_to_left(Align::Center);
    ui.allocate_ui_with_layout(vec2(84.0, 18.0), layout, |ui| ui.label(text));
}

fn price(ui: &mut Ui, cx: &mut Cx<'_>, option: &RepairOption) {
    let (prices, price) = (&cx.job.plan.prices, &option.price);
    let money = |amount: Money| amount.show(&prices.currency);
    Grid::new("price").num_columns(3).striped(true).show(ui, |ui| {
        let mut row = |name: &str, how: String, amount: Money| {
            ui.label(name);
            ui.label(RichText::new(how).small().color(cx.palette.soft));
            amount_label(ui, money(amount));
            ui.end_row();
        };
        row(
            "Labour",
            format!("{} h at {}", show_number(option.hours.to_h(), 2), money(prices.labour)),
            price.labour,
        );
        row("Materials", "as listed below".to_owned(), price.materials);
        row("Overhead", format!("{} of both", prices.overhead.show()), price.overhead);
        row("Profit", format!("{} markup on all of that", prices.profit.show()), price.profit);
        let tax = match prices.tax_on {
            TaxOn::Nothing => "none".to_owned(),
            TaxOn::Materials => format!("{} of materials", prices.tax.show()),
            TaxOn::Everything => format!("{} of everything", prices.tax.show()),
        };
        row("Tax", tax, price.tax);
        row(
            "Total",
            format!("{} to {} four times in five", money(price.spread.low), money(price.spread.high)),
            price.total,
        );
    });
    for field in ["labour rate", "overhead", "profit", "tax"] {
        cx.problems(ui, |place| *place == Place::Plan(field));
    }
}

fn payers(ui: &mut Ui, cx: &mut Cx<'_>, option: &RepairOption) {
    let (plan, price) = (&cx.job.plan, &option.price);
    let money = |amount: Money| amount.show(&plan.prices.currency);
    Grid::new("payers").num_columns(3).show(ui, |ui| {
        /// A payer: who, the share, the other's share, how it is set, and what it comes to.
        type Payer = (&'static str, Percent, Percent, fn(&mut Plan, Percent), Money);
        let (contractor, supplier) = (plan.payers.contractor, plan.payers.supplier);
        let payers: [Payer; 2] = [
            ("Contractor", contractor, supplier, |p, share| p.payers.contractor = share, price.contractor),
            ("Supplier", supplier, contractor, |p, share| p.payers.supplier = share, price.supplier),
        ];
        for (who, share, other, set, amount) in payers {
            let name = format!("{who}'s share");
            ui.label(format!("{who}, %"));
            let range = 0.0..=100.0 - other.to_pct();
            if let Some(pct) = cx.number_entry(ui, &name, share.to_pct(), 1, range, 50.0) {
                edit_plan(cx, &name, move |plan| set(plan, Percent::pct(pct)));
            }
            amount_label(ui, money(amount));
            ui.end_row();
        }
        ui.label("Owner");
        ui.label(plan.payers.owner().show());
        amount_label(ui, money(price.owner));
        ui.end_row();
    });
    cx.problems(ui, |place| *place == Place::Plan("who pays"));
}

/// What the selected joint asks of a bead put in on the day reckoned with, and the lowest class that
/// takes it.
fn selected_words(cx: &Cx<'_>) -> Option<String> {
    let (_, state) = cx.selected()?;
    let demand = state.demand?;
    let label = &cx.view.selected.as_ref()?.joint;
    let pct = |share: Percent| show_number(share.to_pct(), 0);
    let class = match state.smallest_class.and_then(|at| cx.shelf.sealants.get(at)) {
        Some(sealant) => format!("the lowest class that takes it: {}", sealant.name),
        None => "no sealant on the shelf takes it".to_owned(),
    };
    Some(format!(
        " {label} is pulled {} %, squeezed {} %, its sides slide {} %; {class}.",
        pct(demand.stretch),
        pct(demand.squeeze),
        pct(demand.shear)
    ))
}

/// What becomes of each section's row of sealed boards.
fn rows(ui: &mut Ui, cx: &Cx<'_>) {
    let told = cx.found.sections.iter().zip(&cx.found.rows);
    let words: Vec<String> = told
        .filter_map(|(state, row)| {
            let row = (*row)?;
            let name = &cx.assessed.surfaces.get(state.surface)?.sections.get(state.section)?.name;
            let torn = row.torn.to_fraction() * row.joints as f64;
            let widest = if torn < 0.05 {
                String::new()
            } else {
                format!(", the widest to {}", row.widest.show(cx.units()))
            };
            Some(format!("{name}: {} of {}{widest}", show_number(torn, 1), row.joints))
        })
        .collect();
    if !words.is_empty() {
        remark(
            ui,
            cx,
            format!(
                "Sealed joints that tear again when the row of boards moves as far as it will, section {}.",
                words.join("; ")
            ),
        );
    }
}

fn crew(ui: &mut Ui, cx: &mut Cx<'_>) {
    let plan = &cx.job.plan;
    let shelf = cx.shelf;
    let paints: Vec<&str> = shelf.paints.iter().map(|paint| paint.name.as_str()).collect();
    Grid::new("crew").num_columns(2).show(ui, |ui| {
        /// A number of the plan: its name, value, decimals, range, and how it is set.
        type Number = (&'static str, f64, usize, std::ops::RangeInclusive<f64>, fn(&mut Plan, f64));
        let numbers: [Number; 10] = [
            ("People", plan.crew.into(), 0, 1.0..=50.0, |plan, n| plan.crew = n.round() as u32),
            ("Hours a day", plan.day.to_h(), 1, 0.5..=16.0, |plan, n| plan.day = Hours::h(n)),
            ("Coats of paint", plan.coats.into(), 0, 0.0..=10.0, |plan, n| plan.coats = n.round() as u32),
            ("Overhead, %", plan.prices.overhead.to_pct(), 1, 0.0..=200.0, |plan, n| {
                plan.prices.overhead = Percent::pct(n);
            }),
            ("Profit, % markup", plan.prices.profit.to_pct(), 1, 0.0..=200.0, |plan, n| {
                plan.prices.profit = Percent::pct(n);
            }),
            ("Tax, %", plan.prices.tax.to_pct(), 2, 0.0..=50.0, |plan, n| plan.prices.tax = Percent::pct(n)),
            ("Board waste, %", plan.board_waste.to_pct(), 0, 0.0..=100.0, |plan, n| {
                plan.board_waste = Percent::pct(n);
            }),
            ("Days to acclimate", plan.acclimation_days.into(), 0, 0.0..=365.0, |plan, n| {
                plan.acclimation_days = n.round() as u32;
            }),
            ("Years warranted", plan.warranty_years.into(), 0, 0.0..=50.0, |plan, n| {
                plan.warranty_years = n.round() as u32;
            }),
            ("Callback at open length, %", plan.callback.open_share.to_pct(), 0, 0.0..=100.0, |plan, n| {
                plan.callback.open_share = Percent::pct(n);
            }),
        ];
        for (name, value, decimals, range, set) in numbers {
            ui.label(name);
            if let Some(number) = cx.number_entry(ui, name, value, decimals, range, 60.0) {
                edit_plan(cx, name, move |plan| set(plan, number));
            }
            ui.end_row();
        }
        term(
            ui,
            "Or one gap of",
            "The owner calls again with this much of the length open, or with one gap this wide.",
        );
        if let Some(widest) = cx.length_entry(
            ui,
            "Or one gap of",
            plan.callback.widest,
            Length::mm(0.05)..=Length::mm(25.4),
            74.0,
        ) {
            edit_plan(cx, "Callback gap", move |plan| plan.callback.widest = widest);
        }
        ui.end_row();
        term(ui, "An hour of one person", "With everything it costs the firm: wage, taxes, insurance.");
        if let Some(rate) = money_entry(ui, "An hour of one person", plan.prices.labour) {
            edit_plan(cx, "Labour rate", move |plan| plan.prices.labour = rate);
        }
        ui.end_row();
        ui.label("Tax on");
        ui.horizontal(|ui| {
            for (choice, words) in [
                (TaxOn::Nothing, "nothing"),
                (TaxOn::Materials, "materials"),
                (TaxOn::Everything, "everything"),
            ] {
                let on = plan.prices.tax_on == choice;
                if ui.radio(on, words).clicked() && !on {
                    edit_plan(cx, "Tax on", move |plan| plan.prices.tax_on = choice);
                }
            }
        });
        ui.end_row();
        ui.label("Currency");
        if let Some(currency) = crate::app::entry::text_entry(ui, "Currency", &plan.prices.currency, 60.0) {
            edit_plan(cx, "Currency", move |plan| plan.prices.currency = currency);
        }
        ui.end_row();
        ui.label("Primer");
        named(ui, cx, "Primer", &plan.primer, &paints, |plan, name| plan.primer = name);
        ui.end_row();
        ui.label("Paint");
        named(ui, cx, "Paint", &plan.paint, &paints, |plan, name| plan.paint = name);
        ui.end_row();
    });
    for field in ["crew", "working day", "coats", "acclimation", "warranty", "board waste", "primer", "paint"]
    {
        cx.problems(ui, |place| *place == Place::Plan(field));
    }
}

/// An amount as it can be typed again.
fn plain_money(amount: Money) -> String {
    amount.show("").replace(',', "").replace('−', "-")
}

fn money_entry(ui: &mut Ui, name: &str, value: Money) -> Option<Money> {
    entry(ui, name, &plain_money(value), 66.0, |text| {
        let amount = parse_money(text).map_err(|error| error.to_string())?;
        if amount < Money::ZERO {
            return Err(format!("“{}” is less than nothing. Type 0 if it costs nothing", text.trim()));
        }
        Ok(amount)
    })
}

/// One section, scraped against the clock.
fn trial(ui: &mut Ui, cx: &mut Cx<'_>) {
    let job = cx.job;
    let now = job.plan.trial.clone();
    ui.horizontal(|ui| {
        term(
            ui,
            "Timed section",
            "Scrape one section against the clock: the rest of the job follows its pace.",
        );
        let shown = now.as_ref().map_or("none".to_owned(), |t| format!("{} {}", t.surface, t.section));
        let combo = ComboBox::from_id_salt("trial").selected_text(shown).width(130.0);
        let response = combo.show_ui(ui, |ui| {
            if ui.selectable_label(now.is_none(), "none").clicked() {
                edit_plan(cx, "Timed section", |plan| plan.trial = None);
            }
            for surface in &job.surfaces {
                for section in &surface.sections {
                    let on =
                        now.as_ref().is_some_and(|t| t.surface == surface.name && t.section == section.name);
                    if ui.selectable_label(on, format!("{} {}", surface.name, section.name)).clicked() {
                        let (surface, section) = (surface.name.clone(), section.name.clone());
                        let minutes = now.as_ref().and_then(|t| t.minutes);
                        edit_plan(cx, "Timed section", move |plan| {
                            plan.trial = Some(Trial { surface, section, minutes });
                        });
                    }
                }
            }
        });
        response.response.accessible_name("Timed section");
        if let Some(trial) = &now {
            if let Some(minutes) = cx.optional_entry(
                ui,
                "Minutes it took",
                trial.minutes.map(Minutes::to_minutes),
                0,
                0.1..=10_000.0,
                50.0,
            ) {
                edit_plan(cx, "Minutes of the timed section", move |plan| {
                    if let Some(trial) = &mut plan.trial {
                        trial.minutes = minutes.map(Minutes::of);
                    }
                });
            }
            ui.label("minutes of one person");
        }
    });
    cx.problems(ui, |place| *place == Place::Plan("timed section"));
}

fn tasks(ui: &mut Ui, cx: &mut Cx<'_>, option: &RepairOption) {
    Grid::new("tasks").num_columns(4).striped(true).show(ui, |ui| {
        for title in ["task", "batches", "likely min", "hours"] {
            ui.label(RichText::new(title).small().color(cx.palette.soft));
        }
        ui.end_row();
        for (index, task) in option.tasks.iter().enumerate() {
            ui.push_id(index, |ui| {
                ui.set_max_width(190.0);
                ui.add(Label::new(RichText::new(&task.name).small()).wrap())
                    .on_hover_text(format!("Rate: {}", task.basis));
            });
            ui.label(show_number(task.batches, 1));
            let id = task.id.clone();
            let shown = show_number(task.minutes.likely, 1);
            let typed = ui.push_id(("minutes", index), |ui| {
                entry(ui, &format!("Minutes: {}", task.name), &shown, 48.0, |text| match text.trim() {
                    "" => Ok(None),
                    text => match parse_number(text).map_err(|error| error.to_string())? {
                        minutes if (0.01..=10_000.0).contains(&minutes) => Ok(Some(minutes)),
                        _ => Err(format!(
                            "“{text}” is not between 0.01 and 10000. Leave it empty for the shelf's rate"
                        )),
                    },
                })
            });
            if let Some(minutes) = typed.inner {
                let rate = task.minutes;
                edit_plan(cx, "Own rate", move |plan| match minutes {
                    None => {
                        plan.own_minutes.remove(&id);
                    }
                    // The spread keeps its proportion to the likely time.
                    Some(likely) => {
                        let scale = if rate.likely > 0.0 { likely / rate.likely } else { 1.0 };
                        let own = ThreePoint { low: rate.low * scale, likely, high: rate.high * scale };
                        plan.own_minutes.insert(id, own);
                    }
                });
            }
            ui.label(show_number(task.hours.mean.to_h(), 1));
            ui.end_row();
        }
    });
    cx.problems(ui, |place| *place == Place::Plan("own minutes"));
    remark(
        ui,
        cx,
        "A batch is 100 ft (30.5 m) of joint, 100 ft² (9.3 m²) of surface, 10 ft (3 m) of trim, a section or a visit, after the task. Hover a task for where its rate comes from; empty a field to go back to the shelf's rate.",
    );
}

fn materials(ui: &mut Ui, cx: &mut Cx<'_>, option: &RepairOption) {
    let currency = &cx.job.plan.prices.currency;
    Grid::new("materials").num_columns(5).striped(true).show(ui, |ui| {
        for title in ["what", "needed", "buy", "each", "amount"] {
            ui.label(RichText::new(title).small().color(cx.palette.soft));
        }
        ui.end_row();
        for (index, line) in option.materials.iter().enumerate() {
            ui.push_id(index, |ui| {
                ui.set_max_width(150.0);
                ui.add(Label::new(RichText::new(line.label(cx.units())).small()).wrap())
                    .on_hover_text(&line.basis);
            });
            ui.label(RichText::new(need(line.need, cx.units())).small());
            ui.label(line.pieces.to_string());
            let id = line.id.clone();
            let typed = ui.push_id(("price", index), |ui| {
                money_entry(ui, &format!("Price: {}", line.label(cx.units())), line.price)
            });
            if let Some(price) = typed.inner {
                edit_plan(cx, "Own price", move |plan| {
                    plan.own_prices.insert(id, price);
                });
            }
            amount_label(ui, line.amount.show(currency));
            ui.end_row();
        }
    });
    cx.problems(ui, |place| *place == Place::Plan("own prices"));
}

/// The schedule as bars.
fn days(ui: &mut Ui, cx: &Cx<'_>, option: &RepairOption) {
    let total = f64::from(option.schedule.calendar_days.max(1));
    for bar in &option.schedule.bars {
        ui.horizontal(|ui| {
            let (name, _) = ui.allocate_exact_size(vec2(168.0, 16.0), Sense::hover());
            let painter = ui.painter().with_clip_rect(name);
            painter.text(
                name.left_center(),
                eframe::egui::Align2::LEFT_CENTER,
                &bar.name,
                eframe::egui::FontId::proportional(11.5),
                cx.palette.ink,
            );
            let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), 14.0), Sense::hover());
            let x = |day: f64| rect.left() + rect.width() * (day / total).clamp(0.0, 1.0) as f32;
            let piece = Rect::from_min_max(
                pos2(x(bar.start), rect.top() + 2.0),
                pos2(x(bar.end).max(x(bar.start) + 2.0), rect.bottom() - 2.0),
            );
            if bar.waiting {
                ui.painter().rect_stroke(
                    piece,
                    2,
                    Stroke::new(1.0, cx.palette.soft),
                    eframe::egui::StrokeKind::Inside,
                );
            } else {
                ui.painter().rect_filled(piece, 2, cx.palette.accent);
            }
            response.on_hover_text(format!(
                "{}: day {} to day {}{}",
                bar.name,
                bar.start.floor() + 1.0,
                bar.end.floor() + 1.0,
                if bar.waiting { ", waiting" } else { "" }
            ));
        });
    }
    remark(ui, cx, "Filled: the crew works. Outlined: waiting for something to dry or cure.");
}
