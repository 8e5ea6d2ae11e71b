//! Loggers' files as they come: the forms that different makers write, and every fault that has
//! been thought of.

use std::fmt::Write as _;

use gapwright::air::{
    DateOrder, LoggedAir, LoggerDoubt, LoggerError, LoggerFormat, LoggerGuess, LoggerRead, LoggerRemark,
    Tally, TextError, guess_logger, read_logger,
};
use gapwright::measure::{Hours, Humidity, Span, Temperature, Units};
use gapwright::words::{Say, Words};
use jiff::ToSpan as _;
use jiff::civil::{DateTime, date};
use proptest::prelude::*;

const START: DateTime = date(2026, 1, 20).at(0, 0, 0, 0);

/// A file of so many readings, an hour apart from 20 January 2026, below `head`; `line` writes one
/// from its time and its number.
fn hourly(head: &str, readings: i32, line: impl Fn(DateTime, i32) -> String) -> String {
    let mut text = head.to_owned();
    for hour in 0..readings {
        writeln!(text, "{}", line(START.checked_add(hour.hours()).unwrap(), hour)).unwrap();
    }
    text
}

/// Ten days at 20.5 °C and 41.5 %.
fn sound() -> String {
    hourly("Time,Temperature (°C),Humidity (%)\n", 240, |at, _| {
        format!("{},20.5,41.5", at.strftime("%F %T"))
    })
}

/// The guess and what is read by it.
fn both(text: &str) -> (LoggerGuess, LoggerRead) {
    let guess = guess_logger(text).unwrap();
    let read = read_logger(text, &guess.format).unwrap();
    (guess, read)
}

/// Asserts that all ten days are read at 20.5 °C and 41.5 %, within what °F rounds away.
fn assert_ten_days(name: &str, read: &LoggerRead) {
    assert_eq!(read.logged.days.len(), 10, "{name}: {read:?}");
    for day in &read.logged.days {
        let (t, rh) = (day.air.temperature.to_celsius(), day.air.humidity.to_pct());
        assert!((t - 20.5).abs() < 0.06 && (rh - 41.5).abs() < 0.01, "{name}: {day:?}");
        assert_eq!(day.hours, 24, "{name}: {day:?}");
    }
    assert_eq!(read.logged.days[0].date, date(2026, 1, 20), "{name}");
}

fn doubts(text: &str) -> Vec<LoggerDoubt> {
    guess_logger(text).unwrap().doubts
}

/// What the user is told, a sentence a line.
fn said(all: &[impl Say]) -> String {
    let words = Words::us_english(Units::Millimeters, "$");
    all.iter().map(|one| one.say(&words)).collect::<Vec<_>>().join("\n")
}

#[test]
fn a_sound_file_is_read_without_doubt_or_remark() {
    let (guess, read) = both(&sound());
    assert_eq!(guess.columns, ["Time", "Temperature (°C)", "Humidity (%)"]);
    assert_eq!((guess.preview.len(), guess.preview[0][2].as_str()), (5, "41.5"));
    assert_eq!(guess.doubts, []);
    assert_eq!(read.remarks, []);
    assert_eq!(read.logged.name, "");
    assert_ten_days("sound", &read);
}

#[test]
fn the_forms_of_many_loggers_are_read() {
    let f = |at: DateTime, form: &str| at.strftime(form).to_string();
    let numbered = "\"Plot Title: Hall\"\n\"#\",\"Date Time, GMT-06:00\",\"Temp, °F (LGR S/N: 1, SEN S/N: 1)\",\
        \"RH, % (LGR S/N: 1, SEN S/N: 1)\",\"DewPt, °F\",\"Host Connected\"\n";
    let files = [
        (
            "ISO",
            hourly("timestamp;temp_c;rh\n", 240, |at, _| format!("{};20.5;41.5", f(at, "%FT%T.000+01:00"))),
        ),
        (
            "commas",
            hourly("Datum;Temperatur [°C];Feuchte [%rF]\n", 240, |at, _| {
                format!("{};20,5;41,5", f(at, "%d.%m.%Y %H:%M"))
            }),
        ),
        (
            "quoted commas",
            hourly("Date,Temp C,Humidity\n", 240, |at, _| format!("{},\"20,5\",\"41,5\"", f(at, "%F %R"))),
        ),
        (
            "tabs",
            hourly("Date\tTime\tHumidity\tTemperature °C\n", 240, |at, _| {
                format!("{}\t{}\t41.5%\t20.5", f(at, "%d/%m/%Y"), f(at, "%H:%M:%S"))
            }),
        ),
        ("bars", hourly("Time|Temp (C)|RH\n", 240, |at, _| format!("{}|20.5|41.5", f(at, "%d-%b-%Y %H:%M")))),
        (
            "AM and PM",
            hourly("Date,Time,Temp (F),Humid (%)\n", 240, |at, _| {
                format!("{},{},68.9,41.5", f(at, "%m/%d/%y"), f(at, "%I:%M:%S %p"))
            }),
        ),
        (
            "numbered, preamble",
            hourly(numbered, 240, |at, n| format!("{n},{},68.9,41.5,44.1,", f(at, "%m/%d/%y %I:%M:%S %p"))),
        ),
        ("°F by value", hourly("Time,Temp,Hum\n", 240, |at, _| format!("{},68.9,41.5", f(at, "%F %T")))),
        ("°F in cells", hourly("Time,Temp,Hum\n", 240, |at, _| format!("{},68.9 °F,41.5 %", f(at, "%F %T")))),
        (
            "units below",
            hourly("Serial,123\nLogged,Temperature,Rel. humidity,Date\n,°C,%,\n", 240, |at, n| {
                format!("{n},20.5,41.5,{}", f(at, "%F %T"))
            }),
        ),
        ("no headings", hourly("", 240, |at, n| format!("{n},{},20.5,41.5", f(at, "%F %T")))),
        ("no headings, °F", hourly("", 240, |at, _| format!("{},68.9,41.5", f(at, "%F %T")))),
        (
            "dew point first",
            hourly("Time,Dew point °C,RH %,Temp °C\n", 240, |at, _| {
                format!("{},7.1,41.5,20.5", f(at, "%F %T"))
            }),
        ),
        (
            "UTC and local",
            hourly("UTC,Local time,Temp °C,RH\n", 240, |at, _| {
                format!("{},{},20.5,41.5", f(at.checked_add(6.hours()).unwrap(), "%F %T"), f(at, "%F %T"))
            }),
        ),
        (
            "sensor in headings",
            hourly("Time,Sensor Temp °C,Sensor RH %\n", 240, |at, n| {
                format!("{},{},41.5", f(at, "%F %T"), if n % 2 == 0 { 20.4 } else { 20.6 })
            }),
        ),
        ("latest first", {
            let lines: Vec<String> = hourly("", 240, |at, _| format!("{},20.5,41.5", f(at, "%d/%m/%Y %R")))
                .lines()
                .rev()
                .map(str::to_owned)
                .collect();
            format!("Time,T (°C),RH\n{}", lines.join("\r\n"))
        }),
    ];
    for (name, text) in files {
        let (_, read) = both(&text);
        assert_ten_days(name, &read);
    }
}

#[test]
fn seconds_and_milliseconds_since_1970_are_in_utc() {
    for (factor, order) in [(1, DateOrder::EpochSeconds), (1000, DateOrder::EpochMilliseconds)] {
        let line = |_, hour| format!("{},20.5,41.5", (1_768_867_200 + i64::from(hour) * 3600) * factor);
        let (guess, read) = both(&hourly("time,temperature_c,humidity\n", 240, line));
        assert_eq!(guess.format.order, order);
        assert_ten_days("epoch", &read);
        assert_eq!(read.remarks, [LoggerRemark::UtcTimes]);
    }
}

#[test]
fn day_and_month_are_told_apart_or_doubted() {
    let file = |form: &str, start: DateTime, hours: i32| {
        let line =
            |hour: i32| format!("{},20.5,41.5\n", start.checked_add(hour.hours()).unwrap().strftime(form));
        "Time,T °C,RH\n".to_owned() + &(0..hours).map(line).collect::<String>()
    };
    let early = date(2026, 3, 1).at(0, 0, 0, 0);
    for (form, hours, order, doubted) in [
        ("%d/%m/%Y %R", 24 * 20, DateOrder::DayFirst, false), // the 13th decides
        ("%m/%d/%Y %R", 24 * 20, DateOrder::MonthFirst, false),
        ("%d/%m/%Y %R", 24 * 9, DateOrder::DayFirst, false), // nine days, or nine months
        ("%m/%d/%Y %R", 24 * 9, DateOrder::MonthFirst, false),
        ("%m/%d/%Y %R", 12, DateOrder::MonthFirst, true),
        ("%d.%m.%Y %R", 12, DateOrder::DayFirst, false), // with dots only days stand first
        ("%y-%m-%d %R", 24 * 20, DateOrder::YearFirst, false),
    ] {
        let guess = guess_logger(&file(form, early, hours)).unwrap();
        assert_eq!(guess.format.order, order, "{form}, {hours}");
        assert_eq!(!guess.doubts.is_empty(), doubted, "{form}, {hours}: {:?}", guess.doubts);
    }
}

#[test]
fn rooms_are_listed_and_the_first_is_taken() {
    let head = "Time,Sensor,Temp °C,RH\n";
    let text = hourly(head, 240, |at, _| {
        let at = at.strftime("%F %T");
        format!("{at},Hall,20.5,41.5\n{at},Cellar,12,70")
    });
    let (guess, read) = both(&text);
    assert_eq!(guess.rooms.iter().map(|room| room.name.as_str()).collect::<Vec<_>>(), ["Hall", "Cellar"]);
    assert_eq!(guess.doubts, [LoggerDoubt::SeveralRooms { count: 2, taken: "Hall".to_owned() }]);
    assert!(said(&guess.doubts).contains("2 rooms or sensors. “Hall” will be used"));
    assert_eq!(read.logged.name, "Hall");
    assert_ten_days("hall", &read);
    let cellar = LoggerFormat { room: guess.rooms[1].clone(), ..guess.format };
    let read = read_logger(&text, &cellar).unwrap();
    assert_eq!(
        (read.logged.name.as_str(), read.logged.days[0].air.humidity.to_pct().round()),
        ("Cellar", 70.0)
    );
}

#[test]
fn rooms_side_by_side_keep_their_own_temperature() {
    let head = "Time,Hall Temp (°C),Cellar Temp (°C),Cellar RH (%),Hall RH (%)\n";
    let text = hourly(head, 240, |at, _| format!("{},20.5,12,70,41.5", at.strftime("%F %T")));
    let guess = guess_logger(&text).unwrap();
    let rooms: Vec<_> = guess.rooms.iter().map(|r| (r.name.as_str(), r.temperature, r.humidity)).collect();
    assert_eq!(rooms, [("Cellar", Some(2), 3), ("Hall", Some(1), 4)]);
    let hall = LoggerFormat { room: guess.rooms[1].clone(), ..guess.format };
    assert_ten_days("hall", &read_logger(&text, &hall).unwrap());
}

#[test]
fn what_is_unclear_is_doubted() {
    let at = |at: DateTime| at.strftime("%F %T").to_string();
    let twins = hourly("Time,Temp °C,RH\n", 48, |t, _| format!("{},20,40\n{},12,70", at(t), at(t)));
    assert_eq!(doubts(&twins), [LoggerDoubt::RepeatedTimes { repeated: 48, lines: 96 }]);
    let bare = hourly("", 48, |t, _| format!("{},20,40", at(t)));
    assert_eq!(doubts(&bare), [LoggerDoubt::NoHeadings]);
    let cold = hourly("Time,Temp,RH\n", 48, |t, _| format!("{},38,40", at(t)));
    assert_eq!(doubts(&cold), [LoggerDoubt::TemperatureUnit { typical: 38.0 }]);
    assert!(said(&doubts(&cold)).contains("around 38 could be °C or °F"));
    let humid = hourly("Time,RH\n", 48, |t, _| format!("{},40", at(t)));
    let assumed = Temperature::celsius(20.0);
    assert_eq!(doubts(&humid), [LoggerDoubt::NoTemperature(assumed)]);
    assert_eq!(both(&humid).1.remarks, [LoggerRemark::NoTemperature(assumed)]);
    let order = hourly("Time,T °C,RH\n", 12, |t, _| format!("{},20,40", t.strftime("%m/02/%Y %R")));
    let example = order.lines().nth(1).unwrap().split(',').next().unwrap().to_owned();
    let (taken, other) = (DateOrder::MonthFirst, DateOrder::DayFirst);
    let expected = LoggerDoubt::DateOrder { example: example.clone(), taken, other };
    assert_eq!(doubts(&order), [expected]);
    assert!(said(&doubts(&order)).contains(&format!("“{example}” was read with the month first")));
}

/// One line of a file, the one that is changed.
const LINE: Tally = Tally { count: 1, first: 31 };

fn humidity(worst: f64) -> LoggerRemark {
    let range = Span { low: Humidity::pct(1.0), high: Humidity::pct(99.9) };
    LoggerRemark::HumidityFaults { lines: LINE, range, worst: Humidity::pct(worst) }
}

fn temperature(worst: f64) -> LoggerRemark {
    let range = Span { low: Temperature::celsius(-40.0), high: Temperature::celsius(60.0) };
    LoggerRemark::TemperatureFaults { lines: LINE, range, worst: Temperature::celsius(worst) }
}

fn spike(humidity: f64, temperature: f64) -> LoggerRemark {
    let (humidity, temperature) = (Humidity::pct(humidity), Temperature::celsius(temperature));
    LoggerRemark::Spikes { count: 1, at: date(2026, 1, 21).at(5, 0, 0, 0), humidity, temperature }
}

#[test]
fn faults_are_left_out_and_remarked_on() {
    let sound = sound();
    let change = |line: usize, to: &str| {
        let mut lines: Vec<&str> = sound.lines().collect();
        lines[line] = to;
        lines.join("\n")
    };
    for (text, expected) in [
        (change(30, "Battery changed"), LoggerRemark::LinesWithoutTime(LINE)),
        (change(30, "2026-01-21 05:00:00,,"), LoggerRemark::LinesWithoutValue(LINE)),
        (change(30, "2026-01-21 05:00:00,20.5,NaN"), LoggerRemark::LinesWithoutValue(LINE)),
        (change(30, "2026-01-21 05:00:00,20.5,0"), humidity(0.0)),
        (change(30, "2026-01-21 05:00:00,20.5,100"), humidity(100.0)),
        (change(30, "2026-01-21 05:00:00,20.5,130"), humidity(130.0)),
        (change(30, "2026-01-21 05:00:00,-127,41"), temperature(-127.0)),
        (change(30, "2026-01-21 05:00:00,20.5,95"), spike(95.0, 20.5)),
        (change(30, "2026-01-21 05:00:00,45,41.5"), spike(41.5, 45.0)),
        (change(30, "2026-01-21 04:00:00,20.5,41.5"), LoggerRemark::RepeatedTimes(1)),
        (change(30, "2026-01-25 05:30:00,20.5,41.5"), LoggerRemark::Sorted),
    ] {
        let (_, read) = both(&text);
        assert!(read.remarks.contains(&expected), "{expected:?}: {:?}", read.remarks);
        assert_ten_days(&format!("{expected:?}"), &read);
    }
}

#[test]
fn remarks_name_the_values_and_the_line() {
    for (remark, expected) in [
        (LoggerRemark::LinesWithoutTime(LINE), "1 line without a time was left out: line 31."),
        (
            humidity(100.0),
            "1 humidity value below 1% or above 99.9% was left out as a sensor fault: 100% on line 31.",
        ),
        (
            temperature(-127.0),
            "1 temperature below -40°C or above 60°C was left out as a sensor fault: -127°C on line 31.",
        ),
        (
            spike(95.0, 20.5),
            "1 reading far from those around it was left out: 95% and 20.5°C on 21 Jan 2026.",
        ),
        (
            LoggerRemark::ShortDays(vec![date(2026, 1, 29); 5]),
            "5 days with fewer than 6 hours of readings were left out, starting with \
             29 Jan 2026, 29 Jan 2026, and 29 Jan 2026.",
        ),
    ] {
        assert_eq!(said(&[remark]), expected);
    }
}

#[test]
fn gaps_and_short_days_are_named() {
    let sound = sound();
    let kept = |line: &&str| !["2026-01-22", "2026-01-23"].iter().any(|day| line.starts_with(day));
    let lines: Vec<&str> = sound.lines().filter(kept).take(24 * 7 + 4).collect();
    let (_, read) = both(&lines.join("\n"));
    let longest = Span { low: date(2026, 1, 21), high: date(2026, 1, 24) };
    let short = LoggerRemark::ShortDays(vec![date(2026, 1, 29)]);
    assert_eq!(read.remarks, [LoggerRemark::Gaps { count: 1, longest }, short]);
    assert_eq!(read.logged.days.iter().map(|day| day.hours).collect::<Vec<_>>(), [24; 7]);
}

#[test]
fn the_clock_may_be_put_back_and_forth() {
    let mut text = "Time,T °C,RH\n".to_owned();
    for quarter in 0..192 {
        let at = date(2026, 10, 24).at(12, 0, 0, 0).checked_add((quarter * 15).minutes()).unwrap();
        let back = if quarter >= 60 { 1 } else { 0 };
        writeln!(text, "{},20.5,41.5", at.checked_sub(back.hours()).unwrap().strftime("%F %T")).unwrap();
    }
    let (guess, read) = both(&text);
    assert_eq!(guess.doubts, []);
    assert_eq!(read.remarks.len(), 2, "{:?}", read.remarks);
    assert_eq!(read.remarks[0], LoggerRemark::ClockBack(date(2026, 10, 25)));
    assert_eq!(read.logged.days[1].hours, 24);
}

#[test]
fn many_readings_in_an_hour_weigh_no_more_than_one() {
    let mut text = "Time,T °C,RH\n".to_owned();
    for minute in 0..24 * 60 {
        let at = START.checked_add(i64::from(minute).minutes()).unwrap().strftime("%F %T");
        // Every minute until noon, every two hours after.
        if minute < 720 || minute % 120 == 0 {
            writeln!(text, "{at},20,{}", if minute < 720 { 30 } else { 60 }).unwrap();
        }
    }
    let day = both(&text).1.logged.days[0];
    let mean = day.air.humidity.to_pct();
    assert!((45.0..48.0).contains(&mean), "{mean}: half the day each, damp hours a little more");
}

#[test]
fn files_without_readings_are_told_what_is_missing() {
    let guess = |text: &str| guess_logger(text).unwrap_err();
    assert_eq!(guess(""), LoggerError::Text(TextError::Empty));
    assert_eq!(guess("PK\u{3}\u{4}\0\0"), LoggerError::Text(TextError::Binary));
    assert_eq!(guess(&"1,2\n".repeat(6_000_000)), LoggerError::Text(TextError::TooLarge(24)));
    assert_eq!(guess("Dear sir,\nplease find"), LoggerError::NoReadings("Dear sir,".to_owned()));
    assert_eq!(guess("Time,Temp,RH\n"), LoggerError::NoReadings("Time,Temp,RH".to_owned()));
    let no_humidity = hourly("Time,Temp °C,Light\n", 48, |at, _| format!("{},20,300", at.strftime("%F %T")));
    let columns = ["Time", "Temp °C", "Light"].map(str::to_owned).to_vec();
    assert_eq!(guess(&no_humidity), LoggerError::NoHumidity(columns));
    assert!(said(&[guess(&no_humidity)]).contains("The columns are Time, Temp °C, and Light."));
    let one = "Time,Temp °C,RH\n2026-01-05 10:00,20,40\n";
    let format = guess_logger(one).unwrap().format;
    assert_eq!(read_logger(one, &format), Err(LoggerError::NoDays(Hours::h(2.0))));
    let wrong = LoggerFormat { date: 17, ..format };
    let lines = Tally { count: 240, first: 2 };
    let expected = LoggerError::WrongLayout(Some(LoggerRemark::LinesWithoutTime(lines)));
    assert_eq!(read_logger(&sound(), &wrong), Err(expected));
}

#[test]
fn a_stored_log_is_the_same_to_the_bit() {
    let text = hourly("Time,T °C,RH\n", 240, |at, n| {
        format!("{},{},{}", at.strftime("%F %T"), f64::from(n % 50) / 7.0, 30 + n % 20)
    });
    let logged = both(&text).1.logged;
    let stored = ron::ser::to_string_pretty(&logged, ron::ser::PrettyConfig::default()).unwrap();
    assert!(stored.contains("\"2026-01-20 1.6 38.2 24\",\n"), "{stored}");
    assert_eq!(ron::from_str::<LoggedAir>(&stored).unwrap(), logged);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_text_makes_it_panic(text in "[ -~\n\t;é°]{0,300}") {
        if let Ok(guess) = guess_logger(&text) {
            let _read = read_logger(&text, &guess.format);
        }
    }

    #[test]
    fn no_damage_makes_it_panic(at in 0..9_000_usize, put in "[0-9,./\"\n:;T\\-é]{0,20}", cut in 0..400_usize) {
        let mut text = sound();
        let near = |text: &str, at: usize| text.char_indices().map(|(place, _)| place).find(|place| *place >= at).unwrap_or(text.len());
        let (from, to) = (near(&text, at), near(&text, at + cut));
        text.replace_range(from..to, &put);
        if let Ok(guess) = guess_logger(&text) && let Ok(read) = read_logger(&text, &guess.format) {
            for day in &read.logged.days {
                prop_assert!((6..=24).contains(&day.hours));
                prop_assert!((1.0..=99.9).contains(&day.air.humidity.to_pct()));
            }
            let stored = ron::to_string(&read.logged).unwrap();
            prop_assert_eq!(ron::from_str::<LoggedAir>(&stored).unwrap(), read.logged);
        }
    }

    #[test]
    fn no_layout_makes_it_panic(cells in prop::collection::vec(0..6_usize, 5), sign in any::<char>(), order in 0..5_usize) {
        let mut format = guess_logger(&sound()).unwrap().format;
        (format.delimiter, format.order) = (sign, DateOrder::ALL[order]);
        (format.first_row, format.date, format.time) = (cells[0] * 50, cells[1], (cells[2] > 2).then_some(cells[2]));
        (format.room.temperature, format.room.humidity) = (Some(cells[3]), cells[4]);
        let _read = read_logger(&sound(), &format);
    }
}
