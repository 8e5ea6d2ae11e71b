//! The room's air: a place and a house, or twelve months by hand; and readings of the day.

use eframe::egui::{ComboBox, Grid, RichText, Ui};

use super::readings::{degrees, temperature_entry};
use super::{remark, term};
use crate::air::{Air, HouseModel, HumidityClass, IndoorAir};
use crate::app::context::Cx;
use crate::app::entry::entry;
use crate::app::icon::Icon;
use crate::job::Place;
use crate::measure::{Humidity, Temperature, parse_number, show_number};
use crate::survey::RoomReading;

const MONTHS: [&str; 12] =
    ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

pub(super) fn room(ui: &mut Ui, cx: &mut Cx<'_>) {
    let job = cx.job;
    ui.horizontal(|ui| {
        let by_hand = matches!(job.air, IndoorAir::Monthly(_));
        if ui.radio(!by_hand, "from the climate").clicked() && by_hand {
            cx.edit("Air from the climate", |job| job.air = IndoorAir::default());
        }
        if ui.radio(by_hand, "twelve months by hand").clicked() && !by_hand {
            let months = months_now(cx);
            cx.edit("Air by hand", move |job| job.air = IndoorAir::Monthly(months));
        }
    });
    match &job.air {
        IndoorAir::FromClimate { station, house } => climate(ui, cx, station, house),
        IndoorAir::FromPlace { site, house } => {
            ui.label(&site.name);
            self::house(ui, cx, house);
        }
        IndoorAir::FromWeather { weather, house } => {
            ui.label(format!("The hours outdoors of {}.", weather.place));
            self::house(ui, cx, house);
        }
        IndoorAir::Monthly(months) => by_hand(ui, cx, months),
    }
    super::air_files::air_files(ui, cx);
    cx.problems(ui, |place| matches!(place, Place::Air(_)));
    if let Some(state) = cx.told_section() {
        let (driest, wettest) = state.settled.extremes();
        remark(
            ui,
            cx,
            format!(
                "This room keeps these boards between {} and {}, {} on average.",
                driest.show(),
                wettest.show(),
                state.settled.mean().show()
            ),
        );
    }
    readings(ui, cx);
}

/// The present year by months, so that switching to entry by hand changes nothing by much.
fn months_now(cx: &Cx<'_>) -> [Air; 12] {
    let usual = Air { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0) };
    let Some(year) = &cx.found.year else { return [usual; 12] };
    std::array::from_fn(|month| {
        let middle = year.days[(15 + month * 365 / 12).min(364)];
        Air {
            temperature: Temperature::celsius((middle.temperature.to_celsius() * 10.0).round() / 10.0),
            humidity: Humidity::pct(middle.humidity.to_pct().round()),
        }
    })
}

fn edit_house(cx: &mut Cx<'_>, name: &str, change: impl FnOnce(&mut HouseModel) + 'static) {
    cx.edit(name, move |job| {
        if let Some(house) = job.air.house_mut() {
            change(house);
        }
    });
}

fn climate(ui: &mut Ui, cx: &mut Cx<'_>, station: &str, house: &HouseModel) {
    let shelf = cx.shelf;
    Grid::new("climate").num_columns(2).show(ui, |ui| {
        term(ui, "Place", "The typical year outdoors of the nearest place on the shelf.");
        let combo = ComboBox::from_id_salt("place").selected_text(station).width(180.0);
        let response = combo.show_ui(ui, |ui| {
            for known in &shelf.stations {
                if ui.selectable_label(known.name == station, &known.name).clicked() {
                    let chosen = known.name.clone();
                    cx.edit("Place", move |job| {
                        if let IndoorAir::FromClimate { station, .. } = &mut job.air {
                            *station = chosen;
                        }
                    });
                }
            }
        });
        response.response.accessible_name("Place");
        ui.end_row();
    });
    self::house(ui, cx, house);
}

fn house(ui: &mut Ui, cx: &mut Cx<'_>, house: &HouseModel) {
    Grid::new("house").num_columns(2).show(ui, |ui| {
        let sign = degrees(cx.units());
        ui.label(format!("Heated to, {sign}"));
        if let Some(t) = temperature_entry(ui, cx, "Heated to", house.heat_to) {
            edit_house(cx, "Heating", move |house| house.heat_to = t);
        }
        ui.end_row();
        ui.label(format!("Cooled to, {sign}"));
        if let Some(t) = temperature_entry(ui, cx, "Cooled to", house.cool_to) {
            edit_house(cx, "Cooling", move |house| house.cool_to = t);
        }
        ui.end_row();
        term(
            ui,
            "Humidity by",
            "The house's own moisture load and limits, or a humidity class of EN 15026: a line of the outdoor temperature.",
        );
        humidity_by(ui, cx, house);
        ui.end_row();
        term(
            ui,
            "Moisture load, g/m³",
            "Water that people, plants, cooking and washing add to the air in winter: 2 to 4 is usual, 6 a damp house. In summer, with windows open, none of it stays.",
        );
        if let Some(load) = cx.number_entry(ui, "Moisture load", house.moisture_load, 1, 0.0..=20.0, 48.0) {
            edit_house(cx, "Moisture load", move |house| house.moisture_load = load);
        }
        ui.end_row();
        term(ui, "Kept below, % humidity", "By cooling or a dehumidifier; leave empty if there is neither.");
        if let Some(limit) = limit_entry(ui, "Kept below", house.dehumidified_to) {
            edit_house(cx, "Dehumidifier", move |house| house.dehumidified_to = limit);
        }
        ui.end_row();
        term(ui, "Kept above, % humidity", "By a humidifier; leave empty if there is none.");
        if let Some(limit) = limit_entry(ui, "Kept above", house.humidified_to) {
            edit_house(cx, "Humidifier", move |house| house.humidified_to = limit);
        }
        ui.end_row();
    });
}

fn humidity_by(ui: &mut Ui, cx: &mut Cx<'_>, house: &HouseModel) {
    let words = |class: Option<HumidityClass>| match class {
        None => "moisture load",
        Some(HumidityClass::Normal) => "EN 15026, normal: 30 to 60 %",
        Some(HumidityClass::High) => "EN 15026, high: 40 to 70 %",
    };
    let combo = ComboBox::from_id_salt("humidity by").selected_text(words(house.class)).width(180.0);
    let response = combo.show_ui(ui, |ui| {
        for class in [None, Some(HumidityClass::Normal), Some(HumidityClass::High)] {
            if ui.selectable_label(house.class == class, words(class)).clicked() {
                edit_house(cx, "Humidity class", move |house| house.class = class);
            }
        }
    });
    response.response.accessible_name("Humidity by");
}

fn limit_entry(ui: &mut Ui, name: &str, now: Option<Humidity>) -> Option<Option<Humidity>> {
    let shown = now.map_or_else(String::new, |limit| show_number(limit.to_pct(), 1));
    entry(ui, name, &shown, 48.0, |text| match text.trim() {
        "" => Ok(None),
        text => humidity(text).map(Some),
    })
}

fn humidity(text: &str) -> Result<Humidity, String> {
    let pct = parse_number(text).map_err(|error| error.to_string())?;
    if !(0.0..=100.0).contains(&pct) {
        return Err(format!(
            "“{text}” is not between 0 and 100 %. Type what the hygrometer shows, such as 42"
        ));
    }
    Ok(Humidity::pct(pct))
}

fn by_hand(ui: &mut Ui, cx: &mut Cx<'_>, months: &[Air; 12]) {
    let sign = degrees(cx.units());
    Grid::new("months").num_columns(6).show(ui, |ui| {
        for _ in 0..2 {
            for title in ["", sign, "%"] {
                ui.label(RichText::new(title).small().color(cx.palette.soft));
            }
        }
        ui.end_row();
        for row in 0..6 {
            for month in [row, row + 6] {
                let name = MONTHS[month];
                ui.label(name);
                let set = move |job: &mut crate::job::Job, change: &dyn Fn(&mut Air)| {
                    if let IndoorAir::Monthly(months) = &mut job.air {
                        change(&mut months[month]);
                    }
                };
                if let Some(t) =
                    temperature_entry(ui, cx, &format!("{name} temperature"), months[month].temperature)
                {
                    cx.edit(name, move |job| set(job, &|air| air.temperature = t));
                }
                let shown = show_number(months[month].humidity.to_pct(), 1);
                if let Some(rh) = entry(ui, &format!("{name} humidity"), &shown, 44.0, humidity) {
                    cx.edit(name, move |job| set(job, &|air| air.humidity = rh));
                }
            }
            ui.end_row();
        }
    });
}

/// Readings of the room's air on the day, to hold against the year.
fn readings(ui: &mut Ui, cx: &mut Cx<'_>) {
    let job = cx.job;
    for (index, reading) in job.survey.rooms.iter().enumerate() {
        ui.horizontal(|ui| {
            ui.label("On the day");
            if let Some(t) =
                temperature_entry(ui, cx, &format!("Room temperature {}", index + 1), reading.temperature)
            {
                edit_reading(cx, index, move |reading| reading.temperature = t);
            }
            ui.label(degrees(cx.units()));
            let shown = show_number(reading.humidity.to_pct(), 1);
            if let Some(rh) = entry(ui, &format!("Room humidity {}", index + 1), &shown, 44.0, humidity) {
                edit_reading(cx, index, move |reading| reading.humidity = rh);
            }
            ui.label("%");
            let emc = crate::wood::emc(reading.temperature, reading.humidity);
            ui.label(
                RichText::new(format!("boards would come to {}", emc.show())).small().color(cx.palette.soft),
            );
            if Icon::Remove.button(ui, &format!("Remove room reading {}", index + 1), true).clicked() {
                cx.edit("Remove room reading", move |job| {
                    if index < job.survey.rooms.len() {
                        job.survey.rooms.remove(index);
                    }
                });
            }
        });
        cx.problems(ui, |place| *place == Place::Room(index));
    }
    if ui.button("Add room reading").clicked() {
        cx.edit("Add room reading", |job| job.survey.rooms.push(RoomReading::default()));
    }
}

fn edit_reading(cx: &mut Cx<'_>, index: usize, change: impl FnOnce(&mut RoomReading) + 'static) {
    cx.edit("Room reading", move |job| {
        if let Some(reading) = job.survey.rooms.get_mut(index) {
            change(reading);
        }
    });
}
