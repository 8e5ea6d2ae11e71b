//! Two rooms priced line by line from their drawings: a furnished bedroom that one person works in, and a great
//! room worked from a scaffold. Every quantity below is worked out on paper from the drawing, in feet; the
//! catalog gives the minutes.

use std::collections::BTreeMap;

use gapwright::assess::{RepairOption, assess};
use gapwright::job::{Catalog, file};
use gapwright::repair::{DayStep, MethodId, WorkDay};

use crate::priced_days::{option, priced_as_on_paper};

const BEDROOM: &str = include_str!("priced_rooms/bedroom.ron");
const GREAT_ROOM: &str = include_str!("priced_rooms/great_room.ron");

/// A room by hand, in feet and square feet.
struct Room {
    boards: f64,
    board_run: f64,
    joint_run: f64,
    boarded: f64,
    painted: f64,
    outline: f64,
    trim: f64,
    windows: f64,
    fixtures: f64,
    /// What ladder or scaffold make of work at the boards.
    up: f64,
    /// What furniture makes of covering and uncovering.
    around: f64,
}

/// 12 ft 6 in by 10 ft, 2 in of trim: boards of 146 in across 116 in, which takes 22.6 of 5-1/8 in. Two flanks of
/// a V of 1/8 in are 0.1036 in longer than what they span.
fn bedroom() -> Room {
    let joint_run = 22.0 * 146.0 / 12.0;
    Room {
        boards: 23.0,
        board_run: 23.0 * 146.0 / 12.0,
        joint_run,
        boarded: 146.0 * 116.0 / 144.0,
        painted: 125.0 + joint_run * 0.1036 / 12.0,
        outline: 45.0,
        trim: 45.0,
        windows: 2.0,
        fixtures: 1.0,
        up: 1.0,
        around: 1.6,
    }
}

/// 22 by 18 ft, 2-1/2 in of trim, halved by a beam of 6 in, which has two sides: boards of 132 - 2-1/2 - 3 in
/// across 211 in, which takes 41.2 of them in each half.
fn great_room() -> Room {
    let joint_run = 2.0 * 41.0 * 126.5 / 12.0;
    Room {
        boards: 84.0,
        board_run: 84.0 * 126.5 / 12.0,
        joint_run,
        boarded: 2.0 * 126.5 * 211.0 / 144.0,
        painted: 22.0 * 18.0 + joint_run * 0.1036 / 12.0,
        outline: 80.0,
        trim: 80.0 + 2.0 * 18.0,
        windows: 5.0,
        fixtures: 4.0,
        up: 1.15,
        around: 1.0,
    }
}

/// Hours of a task: so many times its minutes and so many times those of its second rate, in batches, and what
/// it takes whatever the amount; all of that `times` as long here.
fn line(catalog: &Catalog, id: &str, batches: f64, also: f64, times: f64) -> f64 {
    let task = catalog.tasks.iter().find(|task| task.id == id).unwrap();
    let each = (task.minutes.low + 4.0 * task.minutes.likely + task.minutes.high) / 6.0;
    let second = task.also.map_or(0.0, |second| second.minutes.to_minutes());
    let fixed = task.fixed.map_or(0.0, |fixed| fixed.to_minutes());
    times * (batches * each + also * second + fixed) / 60.0
}

/// What every repair of a room has: masking, two coats, cleaning up, and the days.
fn common(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let painted = room.painted / 100.0;
    vec![
        ("walk_through", 1.0, 0.0, 1.0),
        ("pick_up", 1.0, 0.0, 1.0),
        ("protect", painted, 0.0, room.around),
        ("mask_fixtures", room.fixtures, 0.0, 1.0),
        ("touch_up_paint", painted, 0.0, 1.0),
        ("clean", 1.0, painted, room.up),
        ("walk_off", 1.0, 0.0, 1.0),
    ]
}

/// Two coats with brush and roller: 125 sq ft by hand take 4.5 x 3.8 = 17 min of tape, 1.28 x 36.3 x 2 = 93 and
/// 2.68 x 18 x 2 = 96 min of painting, (1.28 x 5.3 + 10) x 1.6 = 27 min of pulling tape: 233. Sprayed it is
/// 4.5 x 13.7 = 61 and 2 x 13.7 = 27 min of masking, 83 min of sprayer, 48 + 56 min of painting and (1.28 x 15.7 +
/// 10) x 1.6 = 48 min of pulling film: 323.
fn brushed(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let painted = room.painted / 100.0;
    vec![
        ("tape_edges", room.outline / 10.0, 0.0, room.up),
        ("brush_coat", 2.0 * painted, 2.0 * room.joint_run / 100.0, room.up),
        ("pull_tape", painted, 0.0, room.around),
    ]
}

/// Two coats sprayed: of the great room it is 8 x 13.7 x 1.15 = 126 and 5 x 13.7 = 68 min of masking, 83 min of
/// sprayer, (4.03 x 18.7 x 2 + 8.64 x 10.5 x 2) x 1.15 = 382 min of painting and (4.03 x 15.7 + 10) x 1.15 = 84 min
/// of pulling film: 743. Brushed it would be 35, (4.03 x 36.3 x 2 + 8.64 x 18 x 2) x 1.15 = 694, and 31: 760.
fn sprayed(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let painted = room.painted / 100.0;
    vec![
        ("mask_edges", room.outline / 10.0, 0.0, room.up),
        ("mask_windows", room.windows, 0.0, 1.0),
        ("spray_up", 2.0, 0.0, 1.0),
        ("coat", 2.0 * painted, 2.0 * room.joint_run / 100.0, room.up),
        ("unmask", painted, 0.0, room.up * room.around),
    ]
}

fn resealed(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let hundreds = room.joint_run / 100.0;
    let joints = ["scrape", "vacuum", "spot_prime", "bead", "tool"].map(|id| (id, hundreds, 0.0, room.up));
    let scuff = [("scuff", room.painted / 100.0, 0.0, room.up)];
    common(room).into_iter().chain(joints).chain(scuff).collect()
}

fn laid_again(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let tens = room.board_run / 10.0;
    let boards = [
        ("trim_off", room.trim / 10.0, 0.0, room.up),
        ("trim_on", room.trim / 10.0, 0.0, room.up),
        ("take_down_whole", room.boards, tens, room.up),
        ("clean_edges", room.board_run / 100.0, room.boards, 1.0),
        ("refit_boards", room.boards, tens, room.up),
        ("fit_around", 0.0, room.fixtures, room.up),
        ("fill", room.boarded / 100.0, 0.0, room.up),
        ("scuff", room.painted / 100.0, 0.0, room.up),
    ];
    common(room).into_iter().chain(boards).collect()
}

fn replaced(room: &Room) -> Vec<(&'static str, f64, f64, f64)> {
    let (tens, hundreds) = (room.board_run / 10.0, room.boarded / 100.0);
    let boards = [
        ("stack", hundreds, 0.0, 1.0),
        ("prime_boards", hundreds, room.boards, 1.0),
        ("paint_boards", hundreds, room.boards, 1.0),
        ("trim_off", room.trim / 10.0, 0.0, room.up),
        ("trim_on", room.trim / 10.0, 0.0, room.up),
        ("take_down", room.boards, tens, room.up),
        ("haul", hundreds, 0.0, 1.0),
        ("fit_boards", room.boards, tens, room.up),
        ("fit_around", 0.0, room.fixtures, room.up),
        ("fill", hundreds, 0.0, room.up),
    ];
    common(room).into_iter().chain(boards).collect()
}

/// Holds every task of an option against the lines; no task may be left over, on either side.
fn hold(catalog: &Catalog, option: &RepairOption, lines: Vec<(&'static str, f64, f64, f64)>, evenings: f64) {
    let people: u32 = option.schedule.days.iter().map(|day| day.people).sum();
    let mut expected: BTreeMap<&str, f64> = BTreeMap::new();
    for (id, batches, also, times) in lines {
        expected.insert(id, line(catalog, id, batches, also, times));
    }
    for id in ["drive", "set_up"] {
        expected.insert(id, line(catalog, id, people.into(), 0.0, 1.0));
    }
    expected.insert("standby", option.schedule.standby.to_h());
    expected.insert("hand_back", line(catalog, "hand_back", evenings, 0.0, 1.0));
    // Its length depends on how wide each joint is that day.
    let tape =
        option.tasks.iter().find(|task| task.id == "breaker").map_or(0.0, |task| task.hours.mean.to_h());
    expected.insert("breaker", tape);
    let mut found: BTreeMap<&str, f64> = BTreeMap::new();
    for task in &option.tasks {
        *found.entry(task.id.as_str()).or_default() += task.hours.mean.to_h();
    }
    for (id, hours) in &found {
        let expected = expected.get(id).copied().unwrap_or(0.0);
        assert!(
            (hours - expected).abs() < 0.003 * expected + 1e-6,
            "{}: {id} {hours} {expected}",
            option.name
        );
    }
    for (id, hours) in &expected {
        assert!(*hours < 1e-9 || found.contains_key(id), "{}: {id} {hours}", option.name);
    }
}

/// Whether boards are hung or taken down on a day.
fn handles_boards(does: &[DayStep]) -> bool {
    let tells = |step: &DayStep| matches!(step, DayStep::Task(short) if short.contains("boards") && !short.contains("stack") && !short.contains("paint"));
    does.iter().any(tells)
}

#[test]
fn a_furnished_bedroom_of_one_person_adds_up_line_by_line() {
    let catalog = Catalog::built_in();
    let job = file::read(BEDROOM).unwrap().job;
    let found = assess(job.clone(), catalog);
    let furniture = ("furniture", 1.0, 0.0, 1.0);
    for (method, mut lines) in
        [(MethodId::Reseal, resealed(&bedroom())), (MethodId::Relay, laid_again(&bedroom()))]
    {
        let option = option(&found, method);
        lines.push(furniture);
        lines.extend(brushed(&bedroom()));
        // The room is handed back every evening but the last.
        let days = u32::try_from(option.schedule.days.len()).unwrap();
        hold(catalog, option, lines, f64::from(days - 1));
        priced_as_on_paper(&job, option);
        for day in &option.schedule.days {
            assert_eq!(day.people, if handles_boards(&day.does) { 2 } else { 1 }, "{day:?}");
        }
    }
    assert!(option(&found, MethodId::Relay).schedule.needs_helper(1));
    assert!(!option(&found, MethodId::Reseal).schedule.needs_helper(1));
}

#[test]
fn a_great_room_on_a_scaffold_adds_up_line_by_line() {
    let catalog = Catalog::built_in();
    let job = file::read(GREAT_ROOM).unwrap().job;
    let found = assess(job.clone(), catalog);
    for (method, mut lines) in [
        (MethodId::Reseal, resealed(&great_room())),
        (MethodId::Relay, laid_again(&great_room())),
        (MethodId::Replace, replaced(&great_room())),
    ] {
        let option = option(&found, method);
        lines.push(("scaffold", 1.0, great_room().boarded / 100.0, 1.0));
        lines.extend(sprayed(&great_room()));
        hold(catalog, option, lines, 0.0);
        priced_as_on_paper(&job, option);
        assert!(option.schedule.days.iter().all(|day| day.people == 2 || !handles_boards(&day.does)));
        let pieces =
            |id: &str| option.materials.iter().find(|line| line.id == id).map_or(0, |line| line.pieces);
        // While new boards are only stacked, primed and painted there is no scaffold.
        let scaffold = |day: &&WorkDay| day.does.contains(&DayStep::Task("scaffold".into()));
        let first = option.schedule.days.iter().find(scaffold).unwrap();
        let last = option.schedule.days.last().unwrap();
        assert_eq!(pieces("scaffold_hire"), (last.day - first.day) / 7 + 1);
        // 84 boards of 10 ft 6-1/2 in, one to a stock board of 12 ft, and 8 % more, up to a whole one: 7 spares.
        let bought: u32 = option
            .materials
            .iter()
            .filter(|line| line.id.starts_with("boards,"))
            .map(|line| line.pieces)
            .sum();
        assert_eq!(bought, if method == MethodId::Replace { 91 } else { 0 });
        // One in ten of 84 boards.
        assert_eq!(pieces("spare_boards"), if method == MethodId::Relay { 9 } else { 0 });
    }
}
