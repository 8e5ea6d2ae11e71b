//! A real house: eight rooms from January to May, forecast from the climate of the place and one hygrometer reading,
//! then from a month of logger.
//!
//! `house/daily.csv`: Candanedo, Feldheim, Deramaix, Energy and Buildings 140 (2017) 81-97; UCI data set 374, CC BY
//! 4.0 (license from memory). The heads of the file say more. One house says nothing of how houses differ, so it
//! is held against the bands with wide limits, and only what differs within a house and from week to week is learned
//! from it.

use std::fmt::Write as _;

use gapwright::air::{Air, IndoorAir, LoggedAir, LoggedDay, places};
use gapwright::assess::assess;
use gapwright::job::{Catalog, Job};
use gapwright::measure::{Angle, Humidity, Length, Temperature, day_of_year};
use gapwright::surface::pattern::{Pattern, rectangle};
use gapwright::surface::{BoardSpec, Surface};
use gapwright::survey::RoomReading;
use jiff::civil::{Date, date};

const DAYS: &str = include_str!("house/daily.csv");
const ROOMS: [(&str, usize); 8] = [
    ("kitchen", 1),
    ("living room", 2),
    ("laundry", 3),
    ("office", 4),
    ("bathroom", 5),
    ("ironing room", 7),
    ("teenager's room", 8),
    ("parents' room", 9),
];
/// The day of the visit: nine days in, so that it is no odd first day.
const VISIT: Date = date(2016, 1, 20);
/// Days of the mean that boards follow.
const MONTH: u32 = 30;

/// The daily air of a room.
fn days(room: usize) -> Vec<(Date, Air)> {
    let mut rows = csv::ReaderBuilder::new().comment(Some(b'#')).from_reader(DAYS.as_bytes());
    let heads = rows.headers().unwrap().clone();
    let at = |name: String| heads.iter().position(|head| head == name).unwrap();
    let (celsius, humid) = (at(format!("t{room}")), at(format!("rh_{room}")));
    let read = |row: csv::StringRecord| {
        let figure = |at: usize| row[at].parse::<f64>().ok();
        let air = Air {
            temperature: Temperature::celsius(figure(celsius)?),
            humidity: Humidity::pct(figure(humid)?),
        };
        Some((row[0].parse().unwrap(), air))
    };
    rows.records().filter_map(|row| read(row.unwrap())).collect()
}

/// A room in Mons without cooling, with one wall of boards in it, and what was read in it.
fn job(read: RoomReading, logged: Option<LoggedAir>) -> Job {
    let outline = rectangle(Length::m(3.0), Length::m(3.0));
    let board = BoardSpec::default();
    let (sections, dividers) =
        Pattern::StraightRun { direction: Angle::ZERO }.fill(&outline, &board, &|number| number.to_string());
    let mut job = Job::new(VISIT);
    job.surfaces.push(Surface { name: "Wall".into(), outline, sections, dividers, ..Surface::default() });
    let mut house = job.air.house().cloned().unwrap_or_default();
    (house.cool_to, house.dehumidified_to) = (Temperature::celsius(35.0), None);
    let site = places::find("50.45, 3.95", 1).unwrap().places.remove(0).site(None);
    job.air = IndoorAir::FromPlace { site, house };
    job.survey.rooms.push(read);
    job.logged = logged;
    job
}

/// How a forecast did over the days after the last one that was told.
#[derive(Default)]
struct Score {
    /// Squares of what the daily humidity and a month's mean humidity were off by, points, and a month's mean
    /// equilibrium moisture, per cent.
    squares: [f64; 3],
    /// Days and months, and how many months had their mean in the band.
    counts: [f64; 2],
    inside: [f64; 2],
}

fn score(room: usize, logged_days: usize) -> Score {
    let all = days(room);
    let start = all.iter().position(|(day, _)| *day == VISIT).unwrap();
    let logged = (logged_days > 0).then(|| LoggedAir {
        name: String::new(),
        days: all[start..start + logged_days]
            .iter()
            .map(|&(date, air)| LoggedDay { date, air, hours: 24 })
            .collect(),
    });
    let air = all[start].1;
    let read = RoomReading { temperature: air.temperature, humidity: air.humidity, date: None };
    let found = assess(job(read, logged), Catalog::built_in());
    let year = found.year.unwrap();
    let rest = &all[start + logged_days.max(1)..];
    let of = |date: Date| day_of_year(date).min(364);
    let mut score = Score::default();
    for (day, air) in rest {
        score.squares[0] += (year.days[of(*day)].humidity.to_pct() - air.humidity.to_pct()).powi(2);
        score.counts[0] += 1.0;
    }
    for month in rest.windows(MONTH as usize) {
        let mean =
            |value: &dyn Fn(&(Date, Air)) -> f64| month.iter().map(value).sum::<f64>() / f64::from(MONTH);
        let humid = mean(&|(_, air)| air.humidity.to_pct());
        let said = mean(&|(day, _)| year.days[of(*day)].humidity.to_pct());
        let low = mean(&|(day, _)| year.range[of(*day)].low.to_pct());
        let high = mean(&|(day, _)| year.range[of(*day)].high.to_pct());
        let moisture = mean(&|(_, air)| air.emc().to_pct());
        let moisture_said = mean(&|(day, _)| year.days[of(*day)].emc().to_pct());
        let at = |humidity: f64| {
            let warm = mean(&|(day, _)| year.days[of(*day)].temperature.to_celsius());
            Air { temperature: Temperature::celsius(warm), humidity: Humidity::pct(humidity) }.emc().to_pct()
        };
        score.squares[1] += (said - humid).powi(2);
        score.squares[2] += (moisture_said - moisture).powi(2);
        score.inside[0] += f64::from((low..=high).contains(&humid));
        score.inside[1] += f64::from((at(low)..=at(high)).contains(&moisture));
        score.counts[1] += 1.0;
    }
    score
}

#[test]
fn a_real_house_is_where_it_was_forecast() {
    let mut table = String::from(
        "| room | told | a day's humidity is off by, points | a month's mean | in its range | its equilibrium moisture, % | in its range |\n|---|---|---|---|---|---|---|\n",
    );
    let mut totals = [[0.0; 5]; 2];
    for (name, room) in ROOMS {
        for (at, (told, logged)) in [("one reading", 0), ("a month of logger", 31)].into_iter().enumerate() {
            let Score { squares, counts, inside } = score(room, logged);
            let row = [
                (squares[0] / counts[0]).sqrt(),
                (squares[1] / counts[1]).sqrt(),
                100.0 * inside[0] / counts[1],
                (squares[2] / counts[1]).sqrt(),
                100.0 * inside[1] / counts[1],
            ];
            writeln!(
                table,
                "| {name} | {told} | {:.1} | {:.1} | {:.0}% | {:.2} | {:.0}% |",
                row[0], row[1], row[2], row[3], row[4]
            )
            .unwrap();
            for (total, value) in totals[at].iter_mut().zip(row) {
                *total += value / 8.0;
            }
        }
    }
    for (told, row) in ["one reading", "a month of logger"].into_iter().zip(totals) {
        writeln!(
            table,
            "| all, mean | {told} | {:.1} | {:.1} | {:.0}% | {:.2} | {:.0}% |",
            row[0], row[1], row[2], row[3], row[4]
        )
        .unwrap();
    }
    println!("{table}");
    crate::tables::write_tables("real_house", &table);
    // Nine months in ten are to be in the range. A month of logger should help and doesn't here: rooms grow warmer in
    // spring than their setpoint, which is not modeled (DEVELOPERS.md); what it must not do is lead far astray.
    let [told, logged] = totals;
    assert!(told[2] > 80.0 && told[4] > 80.0 && told[1] < 6.5 && told[3] < 1.1, "{told:?}");
    assert!(logged[2] > 70.0 && logged[4] > 65.0 && logged[1] < 7.5 && logged[3] < 1.2, "{logged:?}");
}
