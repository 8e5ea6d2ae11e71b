//! What holds of every field, tried on jobs that have one of everything.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use std::collections::HashSet;

use jiff::civil::date;
use serde_json::Value;

use super::*;
use crate::air::{Air, HouseModel, HumidityClass, IndoorAir, LoggedAir, Weather};
use crate::job::{Catalog, LetterPart, Logo, OwnWords, PriceBook, demo_job};
use crate::measure::{Angle, Hours, Humidity, Length, Moisture, Money, Percent, Temperature, ThreePoint};
use crate::ready::{BoardReading, NextInstall};
use crate::repair::{PriceLine, Shares};
use crate::surface::{Opening, Photo, Point};
use crate::survey::{LaterGap, LaterVisit};

/// A job with one of everything, its room's air from each source in turn.
fn jobs() -> [Job; 4] {
    let mut job = demo_job();
    let surface = &mut job.surfaces[0];
    let corners = [(1.0, 1.0), (2.0, 1.0), (2.0, 2.0)].map(|(x, y)| Point::m(x, y)).to_vec();
    surface.openings.push(Opening { name: "skylight".into(), corners });
    surface.photos.push(Photo { file: "a.jpg".into(), at: Point::m(1.0, 1.0), note: String::new() });
    surface.windows.push(Point::m(1.0, 0.0));
    surface.north = Some(Angle::degrees(90.0));
    surface.sections[0].board.longest = Some(Length::feet(10.0));
    let svg = br#"<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>"#;
    job.contractor.logo = Some(Logo::new(svg).unwrap());
    job.wording.push(OwnWords { part: LetterPart::Saw, text: "a".into(), draft: "b".into() });
    for gap in &mut job.survey.gaps {
        gap.date = Some(job.visited);
        gap.confirmed = Some(gap.width);
    }
    job.survey.moistures[0].date = Some(job.visited);
    job.survey.rooms[0].date = Some(job.visited);
    job.logged = Some(LoggedAir { name: "logger".into(), days: vec![] });
    job.plan.seal_on = Some(job.visited);
    job.plan.prices.contingency = Some(Percent::pct(80.0));
    job.plan.own_minutes.insert("bead".into(), ThreePoint::exactly(5.0));
    job.plan.own_prices.insert("backer".into(), Money::cents(100));
    job.plan.on_hand.insert("backer".into(), 2);
    let shares = Shares { contractor: Percent::pct(10.0), supplier: Percent::pct(20.0) };
    job.plan.payers.lines.insert(PriceLine::Tax, shares);
    job.price_book = Some(PriceBook::of(Catalog::built_in(), job.visited));
    job.done.finished = Some(date(2026, 5, 1));
    job.done.hours.insert("bead".into(), Hours::h(3.0));
    job.done.pieces.insert("backer".into(), 2);
    let gap = LaterGap { surface: "South slope".into(), joint: "A 2".into(), width: Some(Length::mm(1.0)) };
    job.later.push(LaterVisit { on: date(2026, 6, 1), gaps: vec![gap] });
    let mut next = NextInstall {
        gap: Some(Length::mm(1.0)),
        promised: Some(Moisture::pct(12.0)),
        ..NextInstall::default()
    };
    next.boards.longest = Some(Length::feet(8.0));
    (next.wanted, next.delivered, next.hung) = (Some(job.visited), Some(job.visited), Some(job.visited));
    next.opened = Some(job.visited);
    let reading = Some(Moisture::pct(9.0));
    next.readings.push(BoardReading { reading, date: Some(job.visited), ..BoardReading::default() });
    job.next_install = Some(next);
    (job.plan.site.windows, job.plan.site.fixtures) = (Some(1), Some(1));
    let house = HouseModel {
        class: Some(HumidityClass::Normal),
        humidified_to: Some(Humidity::pct(30.0)),
        ..HouseModel::default()
    };
    let station = "Chicago, IL".to_owned();
    let air = Air { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0) };
    let flagstaff = crate::air::places::find("Flagstaff, AZ", 1).unwrap().places.remove(0);
    let site = flagstaff.site(Some(Length::feet(7000.0)));
    let weather = Weather::from_hours("here", |_| air);
    [
        IndoorAir::FromClimate { station, house: house.clone() },
        IndoorAir::FromPlace { site, house: house.clone() },
        IndoorAir::FromWeather { weather, house },
        IndoorAir::Monthly([air; 12]),
    ]
    .map(|air| Job { air, ..job.clone() })
}

/// What stands at a field's path in a job's file.
fn at_path<'a>(mut value: &'a mut Value, path: &str, At(outer, inner): At) -> Option<&'a mut Value> {
    let mut indices = [outer, inner].into_iter();
    for part in path.split('.') {
        let (names, list) = part.strip_suffix("[]").map_or((part, false), |names| (names, true));
        let name = names.split('|').find(|name| value.get(*name).is_some())?;
        value = value.get_mut(name)?;
        if list {
            value = value.get_mut(indices.next()?)?;
        }
    }
    Some(value)
}

/// Every field with its first entry, in a job that has one.
fn entries() -> Vec<(&'static Field, At, Job)> {
    let jobs = jobs();
    let entry = |field: &&'static Field| {
        let reads = |job: &&Job| {
            let mut value = serde_json::to_value(job).unwrap();
            let at = field.each.entries(job).first().copied();
            at.is_some_and(|at| at_path(&mut value, field.path, at).is_some_and(|value| !value.is_null()))
        };
        let job =
            jobs.iter().find(reads).unwrap_or_else(|| panic!("{}: nothing at {}", field.id, field.path));
        (*field, field.each.entries(job)[0], job.clone())
    };
    FIELDS.iter().map(entry).collect()
}

#[test]
fn ids_and_paths_are_unique_and_every_path_leads_to_something() {
    let mut ids = HashSet::new();
    let mut paths = HashSet::new();
    for (field, ..) in entries() {
        assert!(ids.insert(field.id), "{} stands twice", field.id);
        assert!(paths.insert(field.path), "{} stands twice", field.path);
        assert!(field.id.bytes().all(|b| b.is_ascii_lowercase() || b == b'-'), "{}", field.id);
        assert_eq!(Field::of(field.id), Some(field));
        // The path goes through as many lists as the field has indices.
        let lists = field.path.matches("[]").count();
        let indices = match field.each {
            Each::Job => 0,
            Each::Opening | Each::Divider | Each::Section | Each::LaterGap => 2,
            _ => 1,
        };
        assert_eq!(lists, indices, "{}", field.id);
    }
    assert_eq!(Field::of("no such field"), None);
}

#[test]
fn figures_are_written_where_their_path_says_and_nowhere_else() {
    for (field, at, job) in entries() {
        let Some(figure) = field.figure() else { continue };
        assert!(figure.low < figure.high, "{}", field.id);
        for end in [Some(figure.low), Some(figure.high), None] {
            if end.is_none() && !figure.optional {
                continue;
            }
            let mut changed = job.clone();
            (figure.write)(&mut changed, at, end);
            assert_eq!((figure.read)(&changed, at), end, "{}", field.id);
            let [mut before, mut after] = [&job, &changed].map(|job| serde_json::to_value(job).unwrap());
            // A figure that there is none of may be left out of the file.
            if at_path(&mut after, field.path, at).is_none() {
                let (parent, name) = field.path.rsplit_once('.').unwrap();
                at_path(&mut after, parent, at).unwrap()[name] = serde_json::Value::Null;
            }
            let written = at_path(&mut after, field.path, at).unwrap().clone();
            let place = at_path(&mut before, field.path, at).unwrap();
            let same = *place == written;
            *place = written;
            assert_eq!(before, after, "{} changes something else", field.id);
            assert_eq!(same, (figure.read)(&job, at) == end, "{} is not at its path", field.id);
        }
    }
}

#[test]
fn figures_in_lists_are_those_at_their_path_and_are_mended() {
    for (field, at, job) in entries() {
        let Some(figures) = field.figures() else { continue };
        assert!(figures.low < figures.high, "{}", field.id);
        let all = (figures.read)(&job, at);
        assert!(!all.is_empty(), "{} has none", field.id);
        let count = all.len();
        // The first figure is taken for one that cannot be.
        let bad = all[0].1;
        let mut mended = job.clone();
        (figures.mend)(&mut mended, at, usize::MAX, &|value| match figures.mending {
            Mending::Nearest if value == bad => Some(figures.high),
            Mending::LeaveOut if value == bad => None,
            _ => Some(value),
        });
        let after = (figures.read)(&mended, at);
        assert!(after.iter().all(|(_, value)| *value != bad), "{}: {after:?}", field.id);
        match figures.mending {
            Mending::Nearest => assert_eq!(after.len(), count, "{}", field.id),
            Mending::LeaveOut => assert!(after.len() < count, "{}", field.id),
        }
        let [mut before, mut after] = [&job, &mended].map(|job| serde_json::to_value(job).unwrap());
        let written = at_path(&mut after, field.path, at).unwrap().clone();
        *at_path(&mut before, field.path, at).unwrap() = written;
        // The ends of a divider are at two paths, of which the first is compared.
        if field.path.ends_with("from|to") {
            continue;
        }
        assert_eq!(before, after, "{} changes something else", field.id);
    }
}

#[test]
fn an_entry_that_is_not_there_is_left_alone() {
    for (field, _, job) in entries() {
        let Some(figure) = field.figure().filter(|_| field.each != Each::Job) else { continue };
        let nowhere = At(1000, 1000);
        let mut changed = job.clone();
        (figure.write)(&mut changed, nowhere, Some(figure.low));
        assert_eq!(((figure.read)(&changed, nowhere), &changed), (None, &job), "{}", field.id);
    }
}
