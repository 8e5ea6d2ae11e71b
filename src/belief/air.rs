//! The room's air, day by day, as all plausible worlds share it, and what differs between them.

use super::ensemble::{AirLanes, LANES, Lanes, SHIFTS, StepAir};
use super::priors::Priors;
use crate::air::psychrometrics::{pressure_of_load, saturation_pressure, vapor_pressure};
use crate::air::{Air, DAYS, HouseModel, IndoorAir, LoggedAir, OutdoorYear, PRESUMED_STATION, Station};
use crate::measure::{Humidity, Temperature};
use crate::named::find;
use crate::wood::Isotherm;

/// Days between two shifts of the air, over which a dry spell turns into a damp one. Assumption.
pub(super) const SPELL: usize = 61;
/// Halfway between two spells the mean of both scatters less than either: their shifts are so much
/// larger that days do as much as they should on average, √(3/2).
const BETWEEN: f64 = 1.224_744_871_391_589;
/// How the vapor pressure that counts falls with each degree the room is warmer, a share.
const DRIER_PER_DEGREE: f64 = 0.061;

/// The lasting shifts of a room's air, in the order of the lanes.
pub(super) const WINTER: usize = 0;
pub(super) const SUMMER: usize = 1;
pub(super) const WARMER: usize = 2;
pub(super) const DAMPER: usize = 3;

/// Numbers of a room's world before its spells: the shifts and the limit on humidity.
pub(super) const ROOM: usize = SHIFTS + 1;

/// A room's year before what nobody knows of it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct RoomAir {
    /// One step of a day for each day of the year; lengths and spells are filled in by [`Self::step`].
    days: Vec<StepAir>,
    /// Temperature of the same days, °C.
    celsius: Vec<f64>,
    /// Middle and standard deviation of each shift.
    pub shifts: [(f64, f64); SHIFTS],
    /// The same of the highest humidity, as a fraction.
    pub limit: (f64, f64),
    /// Days that a logger saw: the model's step, and the relative humidity it read, 0 to 1.
    pub seen: Vec<(StepAir, f64)>,
}

impl RoomAir {
    /// Of what the job says of the room. `None` if it names a station that is not in `stations`, or the
    /// program's own table of stations is damaged.
    pub fn new(
        air: &IndoorAir,
        logged: Option<&LoggedAir>,
        stations: &[Station],
        priors: &Priors,
    ) -> Option<Self> {
        let mut room = match air {
            IndoorAir::Monthly(months) => Self::by_hand(&crate::air::daily(months), priors, 1.0),
            _ => {
                let (year, house) = climate(air, stations)?;
                Self::outdoors(&year, house, priors)
            }
        };
        if let Some(logged) = logged {
            room.take_over(logged);
        }
        Some(room)
    }

    /// Outdoor air under a roof, as in a garage. `None` where the job gives the room's air alone.
    pub fn sheltered(air: &IndoorAir, stations: &[Station], priors: &Priors) -> Option<Self> {
        let (year, _) = climate(air, stations)?;
        let open = HouseModel {
            heat_to: Temperature::celsius(-60.0),
            cool_to: Temperature::celsius(60.0),
            moisture_load: 0.0,
            class: None,
            dehumidified_to: None,
            humidified_to: None,
        };
        let mut shelter = Self::outdoors(&year, &open, priors);
        // What people do to the house's air doesn't reach it.
        shelter.days.iter_mut().for_each(|step| step.by_shift = [0.0; SHIFTS]);
        Some(shelter)
    }

    /// The same air, warmed by so many degrees Celsius without any water added to it.
    pub fn warmed(&self, by: f64) -> Self {
        let days = self.days.iter().zip(&self.celsius).map(|(step, celsius)| {
            let warm = of_temperature(Temperature::celsius(celsius + by));
            StepAir {
                saturation: warm.saturation,
                isotherm: warm.isotherm,
                diffusivity: warm.diffusivity,
                ..*step
            }
        });
        Self {
            days: days.collect(),
            celsius: self.celsius.iter().map(|celsius| celsius + by).collect(),
            ..self.clone()
        }
    }

    /// A room in a climate.
    fn outdoors(year: &OutdoorYear, house: &HouseModel, priors: &Priors) -> Self {
        if let Some(class) = house.class {
            let days: Vec<Air> = year
                .days
                .iter()
                .map(|day| Air {
                    temperature: house.room_temperature(day.temperature),
                    humidity: class.humidity(day.temperature),
                })
                .collect();
            // A class is a broad band of houses.
            return Self::by_hand(&days, priors, 2.0);
        }
        let days = year
            .days
            .iter()
            .map(|day| {
                let inside = house.room_temperature(day.temperature);
                let cold = ((15.0 - day.temperature.to_celsius()) / 10.0).clamp(0.0, 1.0);
                let gram = pressure_of_load(1.0, inside);
                let mut step = of_temperature(inside);
                step.vapor = single(day.vapor_pressure);
                step.by_shift = [
                    single(cold * gram),
                    single((1.0 - cold) * gram),
                    single(-DRIER_PER_DEGREE * day.vapor_pressure),
                    0.0,
                ];
                step.by_spell = spell(day.vapor_pressure_sd, &step, priors);
                step.least =
                    house.humidified_to.map_or(0.0, |least| single(least.to_fraction()) * step.saturation);
                step.limited = house.dehumidified_to.map_or(0.0, |_| limit_kept(house, day.temperature));
                step
            })
            .collect();
        let usual = HouseModel::default();
        // What equals the program's own default was said by nobody.
        #[expect(clippy::float_cmp, reason = "the default itself, and not a figure near it")]
        let unknown_excess = house.moisture_load == usual.moisture_load;
        let winter = if unknown_excess {
            (priors.winter_excess.middle, priors.winter_excess.sd)
        } else {
            (house.moisture_load, priors.stated_excess.sd)
        };
        let limit = match house.dehumidified_to {
            Some(limit) if Some(limit) == usual.dehumidified_to => {
                (priors.cooled_humidity.middle / 100.0, priors.cooled_humidity.sd / 100.0)
            }
            Some(limit) => (limit.to_fraction(), priors.stated_humidity.sd / 100.0),
            None => (1.0, 0.0),
        };
        let summer = (priors.summer_excess.middle, priors.summer_excess.sd);
        let celsius = year.days.iter().map(|day| house.room_temperature(day.temperature).to_celsius());
        let shifts = [winter, summer, (0.0, priors.room_temperature.sd), (0.0, 0.0)];
        Self { days, celsius: celsius.collect(), shifts, limit, seen: Vec::new() }
    }

    /// A room whose humidities are given; `doubt` times as uncertain as months by hand.
    fn by_hand(days: &[Air], priors: &Priors, doubt: f64) -> Self {
        let celsius = days.iter().map(|day| day.temperature.to_celsius()).collect();
        let days = days
            .iter()
            .map(|day| {
                let mut step = of_temperature(day.temperature);
                step.vapor = single(vapor_pressure(day.temperature, day.humidity));
                let point = step.saturation / 100.0;
                step.by_shift[DAMPER] = point;
                step.by_spell = single(BETWEEN * priors.hand_humidity.sd) * point;
                step
            })
            .collect();
        let none = (0.0, 0.0);
        let shifts = [none, none, none, (0.0, doubt * priors.hand_humidity.sd)];
        Self { days, celsius, shifts, limit: (1.0, 0.0), seen: Vec::new() }
    }

    /// Puts a logger's days in place of the model's: they are known but for other years. What the model
    /// made of them weighs the worlds.
    fn take_over(&mut self, logged: &LoggedAir) {
        let days = self.days.iter_mut().zip(&mut self.celsius);
        for ((step, celsius), seen) in days.zip(logged.by_day_of_year()) {
            let Some(seen) = seen else { continue };
            *celsius = seen.temperature.to_celsius();
            self.seen.push((StepAir { by_spell: 0.0, ..*step }, seen.humidity.to_fraction()));
            let known = of_temperature(seen.temperature);
            *step = StepAir {
                vapor: single(vapor_pressure(seen.temperature, seen.humidity)),
                by_spell: 0.03 * known.saturation,
                ..known
            };
        }
    }

    /// The air of a group of worlds from their standard normal numbers, `z(lane, number)`: the shifts, the
    /// limit, and `spells` spells.
    pub fn lanes(&self, z: &dyn Fn(usize, usize) -> f64, spells: usize) -> AirLanes {
        let lanes =
            |value: &dyn Fn(usize) -> f64| -> Lanes { std::array::from_fn(|lane| single(value(lane))) };
        let shift = |at: usize| {
            let (middle, sd) = self.shifts[at];
            lanes(&|lane| {
                let value = middle + sd * z(lane, at);
                // Nobody dries the air by living in it.
                if at == WINTER || at == SUMMER { value.max(0.0) } else { value }
            })
        };
        let (limit, sd) = self.limit;
        AirLanes {
            shifts: [shift(WINTER), shift(SUMMER), shift(WARMER), shift(DAMPER)],
            limit: lanes(&|lane| (limit + sd * z(lane, SHIFTS)).clamp(0.3, 1.0)),
            spells: (0..spells).map(|spell| lanes(&|lane| z(lane, ROOM + spell))).collect(),
        }
    }

    /// The step from `day` of `seconds`, `from` being the day on which the first spell's shift holds.
    /// Days count from 1 January of any year.
    pub fn step(&self, day: i64, seconds: f64, from: i64) -> StepAir {
        let at = usize::try_from(day.rem_euclid(YEAR)).unwrap_or(0);
        let since = usize::try_from(day - from).unwrap_or(0);
        #[expect(clippy::cast_precision_loss, reason = "half a year")]
        let into = (since % SPELL) as f32 / SPELL as f32;
        StepAir { seconds: single(seconds), spell: since / SPELL, into_spell: into, ..self.days[at] }
    }

    /// The usual year with everything that differs between worlds in its middle.
    pub fn usual_year(&self) -> Vec<Air> {
        let middle = AirLanes {
            shifts: self.shifts.map(|(middle, _)| [single(middle); LANES]),
            limit: [single(self.limit.0); LANES],
            spells: Vec::new(),
        };
        let day = |(step, celsius): (&StepAir, &f64)| Air {
            temperature: Temperature::celsius(*celsius),
            humidity: Humidity::fraction(f64::from(step.vapor_in(&middle, 0) / step.saturation)),
        };
        self.days.iter().zip(&self.celsius).map(day).collect()
    }

    /// The room's temperature on the day of the year of this number, °C.
    pub fn celsius(&self, at: usize) -> f64 {
        self.celsius[at % DAYS]
    }

    /// The day of the year of this number, without a spell.
    pub fn day(&self, at: usize) -> &StepAir {
        &self.days[at % DAYS]
    }
}

const YEAR: i64 = 365;

/// The climate outdoors and the house in it; `None` where the room's air is given by hand, at an unknown
/// station, or where the program's own tables are damaged.
fn climate<'a>(air: &'a IndoorAir, stations: &[Station]) -> Option<(OutdoorYear, &'a HouseModel)> {
    Some(match air {
        IndoorAir::Monthly(_) => return None,
        IndoorAir::FromClimate { station, house } => {
            let station = if station.is_empty() { PRESUMED_STATION } else { station };
            let months = find(stations, station)?
                .months
                .map(|(t, rh)| Air { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) });
            (OutdoorYear::of_air(&months), house)
        }
        IndoorAir::FromPlace { site, house } => (OutdoorYear::of_months(&site.climate().ok()?.months), house),
        IndoorAir::FromWeather { weather, house } => (OutdoorYear::of_weather(weather), house),
    })
}

#[expect(clippy::cast_possible_truncation, reason = "singles are ample for air")]
pub(super) const fn single(value: f64) -> f32 {
    value as f32
}

/// How far a spell moves the vapor pressure, Pa: by its weather, and by what people do.
fn spell(weather: f64, step: &StepAir, priors: &Priors) -> f32 {
    let people = priors.spell_humidity.sd / 100.0 * f64::from(step.saturation);
    single(BETWEEN * weather.hypot(people))
}

/// How much of the limit on humidity is kept when it is `outside` outdoors, 0 to 1. Cooling keeps humidity down
/// only while it runs: in mild weather rooms may be damper by a tenth or so, and boards swell then. A
/// dehumidifier in a house without cooling runs all year.
fn limit_kept(house: &HouseModel, outside: Temperature) -> f32 {
    /// Cooling starts this much below its set point outdoors: sun, people and appliances. Assumption.
    const GAINS: f64 = 4.0;
    /// A set point above this is out of reach: nothing cools.
    const COOLED_BELOW: f64 = 32.0;
    /// How much of the limit is left in mild weather: 54% becomes 66%, at which wood comes to the 12% that is the
    /// most usual in houses. Assumption.
    const LEFT: f32 = 0.75;
    let cool_to = house.cool_to.to_celsius();
    if cool_to < COOLED_BELOW && outside.to_celsius() < cool_to - GAINS { LEFT } else { 1.0 }
}

/// What a step needs of the room's temperature.
fn of_temperature(inside: Temperature) -> StepAir {
    let celsius = inside.to_celsius();
    let [scale, k, k1, k2] = Isotherm::at(celsius).coefficients();
    let (dry, rise) = crate::wood::drying::Wood::diffusivity_law(celsius);
    StepAir {
        saturation: single(saturation_pressure(inside)),
        isotherm: [single(scale / 100.0), single(k), single(k1), single(k2)],
        diffusivity: [single(dry), single(rise)],
        ..StepAir::default()
    }
}
