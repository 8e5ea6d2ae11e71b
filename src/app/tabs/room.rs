//! The room's air: a place and a house, or twelve months by hand; and readings of the day.

use eframe::egui::{Grid, RichText, Ui};

use super::place::place;
use crate::air::{Air, HouseModel, HumidityClass, IndoorAir};
use crate::app::context::WindowContext;
use crate::app::icon::Icon;
use crate::app::widgets::remark;
use crate::job::Job;
use crate::job::fields::{self, At, Each};
use crate::measure::{Humidity, Temperature};
use crate::named::name_of;
use crate::survey::RoomReading;
use crate::words::{Arg, say};

/// Messages of the months' short names.
const MONTHS: [&str; 12] = [
    "month-1", "month-2", "month-3", "month-4", "month-5", "month-6", "month-7", "month-8", "month-9",
    "month-10", "month-11", "month-12",
];

pub(super) fn room(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    ui.horizontal(|ui| {
        let by_hand = matches!(job.air, IndoorAir::Monthly(_));
        if ui.radio(!by_hand, context.words.text("choice-air-climate")).clicked() && by_hand {
            context.edit("choice-air-climate", |job| job.air = IndoorAir::default());
        }
        if ui.radio(by_hand, context.words.text("choice-air-months")).clicked() && !by_hand {
            let months = months_now(context);
            context.edit("choice-air-months", move |job| job.air = IndoorAir::Monthly(months));
        }
    });
    match &job.air {
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
    super::air_files::air_files(ui, context);
    context.problems(ui, |place| place.field().is_some_and(|(field, _)| field.path.starts_with("air")));
    if let Some(state) = context.shown_section() {
        let (driest, wettest) = state.settled.extremes();
        let mean = state.settled.mean();
        let text = say!(context.words, "room-range", driest = driest, wettest = wettest, mean = mean);
        remark(ui, context.palette, text);
    }
    readings(ui, context);
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

fn house(ui: &mut Ui, context: &mut WindowContext<'_>, house: &HouseModel) {
    Grid::new("house").num_columns(2).show(ui, |ui| {
        context.field(ui, &fields::HEAT_SETPOINT, At::ONCE);
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

/// Readings of the room's air on the day, to hold against the year.
fn readings(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    for (index, reading) in job.survey.rooms.iter().enumerate() {
        let number = index + 1;
        ui.horizontal(|ui| {
            ui.label(context.words.text("room-reading"));
            let said = say!(context.words, "room-reading-temperature", number = number);
            // The day of a reading has no entry of its own in the row.
            context.reach(ui, &fields::ROOM_DATE, At::index(index), None);
            context.figure(ui, &fields::ROOM_TEMPERATURE, At::index(index), &said);
            ui.label(context.words.text(context.degrees()));
            let said = say!(context.words, "room-reading-humidity", number = number);
            context.figure(ui, &fields::ROOM_HUMIDITY, At::index(index), &said);
            ui.label("%");
            let emc = reading.equilibrium();
            let text = say!(context.words, "room-reading-emc", moisture = emc);
            ui.label(RichText::new(text).small().color(context.palette.soft));
            let said = say!(context.words, "room-reading-remove", number = number);
            if Icon::Remove.button(ui, &said, true).clicked() {
                context.edit("undo-remove-room-reading", move |job| {
                    if index < job.survey.rooms.len() {
                        job.survey.rooms.remove(index);
                    }
                });
            }
        });
        context.entry_problems(ui, Each::Room, At::index(index));
    }
    if ui.button(context.words.text("room-reading-add")).clicked() {
        context.edit("room-reading-add", |job| job.survey.rooms.push(RoomReading::default()));
    }
}
