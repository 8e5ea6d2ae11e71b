//! The room's air: a place and a house, or twelve months by hand; and readings of the day.

use std::sync::Arc;

use eframe::egui::{Button, Grid, Label, RichText, Ui};

use super::place::place;
use super::room_year::room_year;
use crate::air::{Air, HouseModel, Household, HumidityClass, IndoorAir, SummerAir, WinterAir};
use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::icon::Icon;
use crate::app::widgets::{remark, term};
use crate::job::Job;
use crate::job::fields::{self, At, Each, Field};
use crate::measure::{Humidity, Quantity, Temperature};
use crate::named::name_of;
use crate::survey::RoomReading;
use crate::words::{Arg, Say as _, say};

/// Messages of the months' short names.
pub(in crate::app) const MONTHS: [&str; 12] = [
    "month-1", "month-2", "month-3", "month-4", "month-5", "month-6", "month-7", "month-8", "month-9",
    "month-10", "month-11", "month-12",
];

pub(super) fn room(ui: &mut Ui, context: &mut WindowContext<'_>) {
    kind_of_air(ui, context);
    match &context.job.air {
        IndoorAir::FromClimate { station, house } => {
            place(ui, context, name_of(&context.assessment.catalog.stations, station));
            self::house(ui, context, house);
        }
        IndoorAir::FromPlace { site, house } => {
            place(ui, context, &site.name);
            self::house(ui, context, house);
        }
        IndoorAir::FromWeather { weather, house } => {
            ui.label(say!(context.words, "room-weather-of", place = &weather.place));
            self::house(ui, context, house);
        }
        IndoorAir::Monthly(_) => by_hand(ui, context),
    }
    follows(ui, context);
}

/// The room in a form of a few rows that keeps its height, whatever is entered: place, heating, how its air is
/// kept. The rest folds away under it.
pub(super) fn room_in_short(ui: &mut Ui, context: &mut WindowContext<'_>) {
    kind_of_air(ui, context);
    let air = &context.job.air;
    let name = match air {
        IndoorAir::FromClimate { station, .. } => name_of(&context.assessment.catalog.stations, station),
        IndoorAir::FromPlace { site, .. } => &site.name,
        IndoorAir::FromWeather { weather, .. } => &weather.place,
        IndoorAir::Monthly(_) => "",
    };
    match air.house() {
        Some(house) => {
            Grid::new("room in short").num_columns(2).show(ui, |ui| {
                match air {
                    IndoorAir::FromWeather { .. } => {
                        ui.label(context.words.text("next-room-place"));
                        ui.label(name);
                        ui.end_row();
                    }
                    _ => super::place::field(ui, context, name),
                }
                context.field(ui, &fields::HEAT_SETPOINT, At::ONCE);
                humidifier(ui, context, house);
                winter(ui, context, house);
                summer(ui, context, house);
            });
            super::place::offers(ui, context);
        }
        None => by_hand(ui, context),
    }
    let title = context.words.text("next-room-more");
    fold(ui, "next-room-more", title, false, |ui| {
        if let Some(house) = context.job.air.house() {
            Grid::new("elevation").num_columns(2).show(ui, |ui| super::place::elevation(ui, context));
            super::place::provenance(ui, context);
            figures(ui, context, house, false);
        }
        follows(ui, context);
    });
}

/// Whether the air follows from a place, or is typed for each month.
fn kind_of_air(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal_wrapped(|ui| {
        let by_hand = matches!(context.job.air, IndoorAir::Monthly(_));
        if ui.radio(!by_hand, context.words.text("choice-air-climate")).clicked() && by_hand {
            let visited = context.job.visited;
            context.edit("choice-air-climate", move |job| job.air = Job::new(visited).air);
        }
        if ui.radio(by_hand, context.words.text("choice-air-months")).clicked() && !by_hand {
            let months = months_now(context);
            context.edit("choice-air-months", move |job| job.air = IndoorAir::Monthly(months));
        }
    });
}

/// The year that follows, readings of the day, and files of the air.
fn follows(ui: &mut Ui, context: &mut WindowContext<'_>) {
    room_year(ui, context);
    readings(ui, context);
    outside(ui, context);
    if let Some(state) = context.shown_section() {
        let (driest, wettest) = state.settled.extremes();
        let mean = state.settled.mean();
        let text = say!(context.words, "room-range", driest = driest, wettest = wettest, mean = mean);
        remark(ui, context.palette, text);
    }
    super::air_files::air_files(ui, context);
    context.problems(ui, |place| place.field().is_some_and(|(field, _)| field.path.starts_with("air")));
}

/// Of which place the air outside is, in one line: naming a town moves nothing under it.
fn outside(ui: &mut Ui, context: &WindowContext<'_>) {
    let presumed = context.assessment.presumed_place();
    let place = match &context.job.air {
        IndoorAir::FromPlace { site, .. } => &*site.name,
        IndoorAir::FromClimate { station, .. } => {
            presumed.unwrap_or_else(|| name_of(&context.assessment.catalog.stations, station))
        }
        IndoorAir::FromWeather { .. } | IndoorAir::Monthly(_) => return,
    };
    let named = Arg::Id(if presumed.is_some() { "no" } else { "yes" });
    let said = say!(context.words, "room-outside", place = Arg::Name(place), named = named);
    ui.add(Label::new(RichText::new(said).small().color(context.palette.soft)).truncate());
}

/// The present year by months, so that switching to entry by hand changes nothing by much.
fn months_now(context: &WindowContext<'_>) -> [Air; 12] {
    let usual = Air { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0) };
    let Some(year) = &context.assessment.year else { return [usual; 12] };
    std::array::from_fn(|month| {
        let middle = year.days[(15 + month * 365 / 12).min(364)];
        Air {
            temperature: Temperature::celsius((middle.temperature.to_celsius() * 10.0).round() / 10.0),
            humidity: Humidity::pct(middle.humidity.to_pct().round()),
        }
    })
}

/// What people know of the house; the figures behind it fold away.
fn house(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel) {
    Grid::new("household").num_columns(2).show(ui, |ui| {
        humidifier(ui, context, house);
        winter(ui, context, house);
        summer(ui, context, house);
    });
    let title = context.words.text("room-figures");
    fold(ui, "house-figures", title, false, |ui| {
        figures(ui, context, house, true);
        super::place::provenance(ui, context);
    });
}

fn humidifier(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel) {
    term(ui, &context.words.text("room-humidifier"), &context.words.text("room-humidifier.hint"));
    ui.horizontal_wrapped(|ui| {
        let now = house.humidified_to.is_some();
        for (there, message) in [(false, "room-humidifier-none"), (true, "room-humidifier-runs")] {
            if ui.radio(now == there, context.words.text(message)).clicked() && now != there {
                say_of_house(context, "room-humidifier", move |known, house| {
                    known.set_humidifier(house, there);
                });
            }
        }
    });
    ui.end_row();
}

fn winter(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel) {
    term(ui, &context.words.text("room-winter"), &context.words.text("room-winter.hint"));
    let now = context.assessment.catalog.household.winter_of(house);
    ui.horizontal_wrapped(|ui| {
        for air in WinterAir::ALL {
            if ui.radio(now == Some(air), air.say(context.words)).clicked() && now != Some(air) {
                say_of_house(context, "room-winter", move |known, house| known.set_winter(house, air));
            }
        }
        if now.is_none() {
            let by_hand = match house.class {
                Some(_) => context.words.text("room-winter-by-class").into_owned(),
                None => {
                    let load = Quantity::MoistureLoad(house.moisture_load);
                    say!(context.words, "room-winter-by-load", load = load)
                }
            };
            ui.label(RichText::new(by_hand).color(context.palette.soft));
        }
    });
    ui.end_row();
}

fn summer(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel) {
    term(ui, &context.words.text("room-summer"), &context.words.text("room-summer.hint"));
    let now = context.assessment.catalog.household.summer_of(house);
    ui.horizontal_wrapped(|ui| {
        for air in SummerAir::ALL {
            if ui.radio(now == air, air.say(context.words)).clicked() && now != air {
                say_of_house(context, "room-summer", move |known, house| known.set_summer(house, air));
            }
        }
    });
    ui.end_row();
}

/// An edit of the house by what people know of it.
fn say_of_house(
    context: &mut WindowContext<'_>,
    name: &'static str,
    set: impl FnOnce(&Household, &mut HouseModel) + 'static,
) {
    let catalog = Arc::clone(&context.assessment.catalog);
    context.edit(name, move |job: &mut Job| {
        if let Some(house) = job.air.house_mut() {
            set(&catalog.household, house);
        }
    });
}

/// Set points and moisture load; the set point of the heating only if it stands nowhere else.
fn figures(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel, with_heat: bool) {
    Grid::new("house").num_columns(2).show(ui, |ui| {
        if with_heat {
            context.field(ui, &fields::HEAT_SETPOINT, At::ONCE);
        }
        context.field(ui, &fields::AC_SETPOINT, At::ONCE);
        let classes = [
            (None, "choice-humidity-load"),
            (Some(HumidityClass::Normal), "choice-humidity-normal"),
            (Some(HumidityClass::High), "choice-humidity-high"),
        ];
        context.choice(ui, &fields::HUMIDITY_BY, house.class, &classes, |job: &mut Job, class| {
            if let Some(house) = job.air.house_mut() {
                house.class = class;
            }
        });
        context.field(ui, &fields::MOISTURE_LOAD, At::ONCE);
        context.field(ui, &fields::DEHUMIDIFIER, At::ONCE);
        context.field(ui, &fields::HUMIDIFIER, At::ONCE);
    });
}

fn by_hand(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let sign = context.words.text(context.degrees());
    Grid::new("months").num_columns(6).show(ui, |ui| {
        for _ in 0..2 {
            for title in ["", sign.as_ref(), "%"] {
                ui.label(RichText::new(title).small().color(context.palette.soft));
            }
        }
        ui.end_row();
        for row in 0..6 {
            for month in [row, row + 6] {
                let name = context.words.text(MONTHS[month]);
                ui.label(name.as_ref());
                let said = say!(context.words, "month-temperature", month = Arg::Name(&name));
                context.figure(ui, &fields::MONTH_TEMPERATURE, At::index(month), &said);
                let said = say!(context.words, "month-humidity", month = Arg::Name(&name));
                context.figure(ui, &fields::MONTH_HUMIDITY, At::index(month), &said);
            }
            ui.end_row();
        }
    });
}

/// Readings of the room's air on the day, to hold against the year. There is always a row to type the
/// hygrometer's reading into.
fn readings(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let count = context.job.survey.rooms.len();
    for index in 0..count.max(1) {
        ui.horizontal_wrapped(|ui| reading(ui, context, index));
        // A line of its own, blank as long as nothing was read: it moves nothing.
        let said = context.job.survey.rooms.get(index).map(RoomReading::equilibrium);
        let said = said.map(|moisture| say!(context.words, "room-reading-emc", moisture = moisture));
        remark(ui, context.palette, said.unwrap_or_else(|| " ".to_owned()));
        context.entry_problems(ui, Each::Room, At::index(index));
    }
    // It is there from the start, so that the first reading moves nothing.
    let add = Button::new(context.words.text("room-reading-add"));
    if ui.add_enabled(count > 0, add).clicked() {
        context.edit("room-reading-add", |job| job.survey.rooms.push(RoomReading::default()));
    }
}

fn reading(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize) {
    let (words, number) = (context.words, index + 1);
    let (hint, degrees) = (words.text("room-reading.hint"), words.text(context.degrees()));
    term(ui, &words.text("room-reading"), &hint);
    // The day of a reading has no entry of its own in the row.
    context.reach(ui, &fields::ROOM_DATE, At::index(index), None);
    let name = say!(words, "room-reading-humidity", number = number);
    reading_figure(ui, context, &fields::ROOM_HUMIDITY, index, &name);
    ui.label("%");
    let name = say!(words, "room-reading-temperature", number = number);
    reading_figure(ui, context, &fields::ROOM_TEMPERATURE, index, &name);
    ui.label(degrees);
    let said = say!(words, "room-reading-remove", number = number);
    // There from the start, like all of the row.
    if Icon::Remove.button(ui, &said, index < context.job.survey.rooms.len()).clicked() {
        context.edit("undo-remove-room-reading", move |job| {
            if index < job.survey.rooms.len() {
                job.survey.rooms.remove(index);
            }
        });
    }
}

/// A figure of a reading; the first one typed makes the reading.
fn reading_figure(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    field: &'static Field,
    index: usize,
    name: &str,
) {
    let Some(figure) = field.figure() else { return };
    if let Some(value) = context.typed_figure(ui, field, At::index(index), name) {
        context.edit(format!("field-{}", field.id), move |job: &mut Job| {
            if index == job.survey.rooms.len() {
                job.survey.rooms.push(RoomReading::default());
            }
            (figure.write)(job, At::index(index), value);
        });
    }
}
