//! From what a job says of the next install to the window, the gate and the watch.

use std::sync::{Arc, Mutex, PoisonError};

use jiff::ToSpan as _;
use jiff::civil::{Date, Weekday};
use rayon::prelude::*;

use super::laid::laid_bead;
use crate::air::{DAYS, Household, IndoorAir, SummerAir};
use crate::belief::{RoomEvidence, RoomKnown, RoomWorlds};
use crate::job::{Catalog, Job, live_otherwise};
use crate::joint::LaidBead;
use crate::measure::{Length, Units, day_of_year};
use crate::ready::{
    Aim, BoardReading, Caulking, Change, Easier, HORIZON, Joints, Known, Lived, LotReading, Movement,
    NextInstall, Outlook, PlannedBoards, Then, USUAL_READINGS, Window, aim_at, caulking, easier, good_enough,
    hung_on, look, movement, window,
};
use crate::repair::CallbackRule;
use crate::surface::Finish;
use crate::survey::{MeterSetting, SamplingPlan, SamplingRisks, accepts, sampling_plan};

/// Years that joints must hold.
const YEARS: usize = 3;
/// Worlds that are drawn; more where later readings leave only some of them.
const WORLDS: usize = 1024;
const MORE: usize = 4096;
/// Where the random sequence starts; any figure would do.
const SEED: u64 = 20_260_412;

/// How many boards to measure, and what that is worth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeliverySampling {
    /// The plan by attributes at the usual risks, as a builder and a supplier would agree on it.
    pub plan: SamplingPlan,
    /// Boards measured on the first day.
    pub measured: u32,
    /// Chance that a bad delivery shows no bad board among so many, or among the usual eight where none is measured.
    pub missed: f64,
    /// So many boards that is said of.
    pub of: u32,
}

/// Everything that follows for a next install.
#[derive(Debug, Clone, PartialEq)]
pub struct NextInstallFindings {
    /// The first day: that of the delivery, or of the first readings where those are later.
    pub first: Date,
    /// Days from it to the day that is spoken of.
    pub today: i64,
    /// Days from it to the day the stack is put on stickers, if that is named.
    pub opened: Option<i64>,
    /// The rule that no joint may open beyond.
    pub rule: Length,
    /// What to hang them at.
    pub window: Window,
    /// What makes it easier.
    pub easier: Vec<Easier>,
    /// Days from the first to the driest of the last year the joints must hold: they are widest about then.
    pub driest: i64,
    /// The same to the dampest: the boards push on each other about then.
    pub dampest: i64,
    /// Whether the joints can be caulked; `None` where the plan's sealant is not known.
    pub caulking: Option<Caulking>,
    /// The delivery; `None` where its stack lies in outdoor air that nothing is known of.
    pub outlook: Option<Outlook>,
    /// How many boards to measure.
    pub sampling: Option<DeliverySampling>,
}

impl NextInstallFindings {
    /// The date so many days from the delivery.
    pub fn date(&self, day: i64) -> Date {
        self.first.checked_add(day.days()).unwrap_or(self.first)
    }
}

/// What a next install follows from.
#[derive(Clone, PartialEq)]
struct Told {
    next: NextInstall,
    visited: Date,
    air: IndoorAir,
    logged: Option<crate::air::LoggedAir>,
    rooms: Vec<crate::survey::RoomReading>,
    rule: CallbackRule,
    /// The bead that the plan would lay.
    bead: Option<LaidBead>,
    weekends: bool,
    units: Units,
}

/// What was found last, with what it followed from.
type Remembered = (Told, Arc<Catalog>, Option<Arc<NextInstallFindings>>);

/// Most edits have no part in it: what was found last still stands then.
static LAST: Mutex<Option<Remembered>> = Mutex::new(None);

/// What follows for a job's next install; `catalog` is the one without the job's own prices. `None` without
/// one, without a room, or where species or finish are in no table.
pub(super) fn next_install(job: &Job, catalog: &Arc<Catalog>) -> Option<Arc<NextInstallFindings>> {
    let next = job.next_install.clone()?;
    let told = Told {
        bead: laid_bead(job, catalog, &next.boards, catalog.lay(&job.plan)),
        next,
        visited: job.visited,
        air: job.air.clone(),
        logged: job.logged.clone(),
        rooms: job.survey.rooms.clone(),
        rule: job.plan.callback.clone(),
        weekends: job.plan.weekends,
        units: job.units,
    };
    let last = || LAST.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some((known, of, found)) = &*last()
        && Arc::ptr_eq(of, catalog)
        && *known == told
    {
        return found.clone();
    }
    let found = findings(&told, catalog).map(Arc::new);
    *last() = Some((told, Arc::clone(catalog), found.clone()));
    found
}

fn findings(told: &Told, catalog: &Catalog) -> Option<NextInstallFindings> {
    let next = &told.next;
    // Of boards to come nothing is said for a place that nobody named.
    if !told.air.is_placed(&catalog.stations) {
        return None;
    }
    let species = catalog.species(&next.boards.species)?;
    let first = first_day(next, told.visited);
    let day_of = |date: Date| i64::from((date - first).get_days());
    let readings = readings(next, told.visited, first);
    let today = readings.iter().map(|reading| reading.day).max().unwrap_or(0);
    let rooms: Vec<RoomEvidence> = told
        .rooms
        .iter()
        .map(|reading| RoomEvidence {
            day: day_of(reading.date.unwrap_or(told.visited)),
            humidity: reading.humidity,
        })
        .collect();
    let later = readings.iter().any(|reading| reading.day > readings[0].day);
    let horizon = usize::try_from(today).unwrap_or(0) + HORIZON + YEARS * DAYS;
    let known = RoomKnown {
        air: &told.air,
        logged: told.logged.as_ref(),
        stations: &catalog.stations,
        start: i64::try_from(day_of_year(first)).unwrap_or(0),
        readings: &rooms,
        horizon,
    };
    let worlds = if later { MORE } else { WORLDS };
    let rooms = RoomWorlds::new(&known, &catalog.priors, worlds, SEED)?;
    let years = i64::try_from(YEARS * DAYS).unwrap_or(0);
    let moves = |rooms: &RoomWorlds, finish: Finish| -> Option<Movement> {
        let hung = (catalog.coating(finish)?, &catalog.films, next.boards.behind);
        let wood = (next.boards.thickness, species.density());
        Some(movement(rooms, wood, hung, &catalog.priors, (today, years)))
    };
    let moved = moves(&rooms, next.boards.finish)?;
    let boards = PlannedBoards {
        species,
        ring: next.boards.ring_angle,
        width: next.boards.face_width,
        fixing: next.boards.fixing,
        count: usize::try_from(next.count.max(2) - 1).unwrap_or(1),
        joints: next.joints,
        rule: told.rule.widest,
        asked: next.chance.to_fraction(),
    };
    let figures = &catalog.stacks;
    let own = window(&boards, &moved, figures, next.gap);
    let finishes = [Finish::LatexBackPrimed, Finish::OilFace];
    let finishes = finishes.into_iter().filter(|finish| *finish != next.boards.finish);
    let mut others: Vec<Lived> = Vec::new();
    // Boards that can do as they are planned need no other way.
    let bead = told.bead.as_ref();
    let follows = |bead: &LaidBead| caulking(&boards, &moved, bead, figures, own.best).possible;
    let caulk_fails = next.joints == Joints::Sealed && bead.is_some_and(|bead| !follows(bead));
    if own.chance < good_enough(boards.asked) || caulk_fails {
        others.extend(finishes.filter_map(|finish| {
            Some(Lived { change: Change::Finish(finish), rooms: None, movement: moves(&rooms, finish)? })
        }));
        let otherwise = lived_in_otherwise(&told.air, &catalog.household);
        others.extend(otherwise.into_iter().filter_map(|(change, air)| {
            let rooms = RoomWorlds::new(&RoomKnown { air: &air, ..known }, &catalog.priors, worlds, SEED)?;
            let movement = moves(&rooms, next.boards.finish)?;
            Some(Lived { change, rooms: Some(rooms), movement })
        }));
    }
    let delivery = Known {
        boards: &boards,
        thickness: next.boards.thickness,
        stack: next.stack,
        opened: next.opened.map(day_of),
        readings: &readings,
        set_to_species: next.setting == MeterSetting::ThisSpecies,
        today,
        // A day before they come is a slip: it is told where it was typed, and nothing follows from it.
        wanted: next.wanted.filter(|day| *day >= next.came(told.visited)).map(day_of),
        works: works(first, told.weekends),
        caulk_fails,
        gap: next.gap,
        window: &own,
        promised: next.promised,
        rooms: &rooms,
        movement: &moved,
        figures,
        priors: &catalog.priors,
    };
    let outlook = look(&delivery);
    let hang = outlook.as_ref().and_then(|outlook| outlook.hang);
    // Joints that are planned open are told of as they would be were they caulked.
    let caulked = PlannedBoards { joints: Joints::Sealed, ..boards };
    let aim = match (next.joints, hang) {
        (Joints::Sealed, Some(hang)) => Aim { moisture: hang.moisture, gap: hang.gap },
        (Joints::Sealed, None) => own.best,
        (Joints::Open, Some(hang)) => aim_at(&caulked, &moved, figures, next.gap, hang.moisture),
        (Joints::Open, None) => window(&caulked, &moved, figures, next.gap).best,
    };
    let mut easier =
        easier(&boards, &moved, (next.gap, &others, bead), figures, (&own, caulk_fails), told.units);
    if !readings.is_empty() {
        easier.par_iter_mut().for_each(|one| one.then = when_changed(&delivery, one, &others));
    }
    Some(NextInstallFindings {
        first,
        today,
        opened: next.opened.map(day_of),
        rule: boards.rule,
        easier,
        driest: today + moved.seasons.0,
        dampest: today + moved.seasons.1,
        caulking: bead.map(|bead| caulking(&caulked, &moved, bead, figures, aim)),
        outlook,
        sampling: sampling(&readings),
        window: own,
    })
}

/// When the boards of a delivery are hung with a change; others than they are may come another day.
fn when_changed(delivery: &Known<'_>, easier: &Easier, others: &[Lived]) -> Then {
    if matches!(easier.change, Change::Width(_)) {
        return Then::Unknown;
    }
    let lived = others.iter().find(|lived| lived.change == easier.change);
    let boards = delivery.boards.planned(easier.change);
    let changed = Known {
        boards: &boards,
        caulk_fails: false,
        gap: easier.change.gap(delivery.gap),
        window: &easier.window,
        rooms: lived.and_then(|lived| lived.rooms.as_ref()).unwrap_or(delivery.rooms),
        movement: lived.map_or(delivery.movement, |lived| &lived.movement),
        ..*delivery
    };
    hung_on(&changed).map_or(Then::Never, |(day, chance)| Then::Hung(day, chance))
}

/// The room's air with one thing done for it that is not done yet; none where it was entered month by month.
fn lived_in_otherwise(air: &IndoorAir, household: &Household) -> Vec<(Change, IndoorAir)> {
    let Some(house) = air.house() else { return vec![] };
    let least = household.humidifier.humidified_to;
    let humidified = house.humidified_to.is_none_or(|kept| kept < least).then_some(Change::Humidifier(least));
    let most = household.dehumidified.dehumidified_to;
    let dried = most.filter(|_| household.summer_of(house) == SummerAir::NotCooled).map(Change::SummerAir);
    let with = |change: Change| {
        let mut air = air.clone();
        live_otherwise(air.house_mut()?, change, household);
        Some((change, air))
    };
    [humidified, dried].into_iter().flatten().filter_map(with).collect()
}

/// Whether the crew works on a day and on each of the six after it.
fn works(first: Date, weekends: bool) -> [bool; 7] {
    let free = |date: Date| matches!(date.weekday(), Weekday::Saturday | Weekday::Sunday);
    std::array::from_fn(|days| {
        let date = i64::try_from(days).ok().and_then(|days| first.checked_add(days.days()).ok());
        weekends || date.is_none_or(|date| !free(date))
    })
}

/// The day from which the stack is followed: nothing is known of it before the delivery, or before the first
/// readings where all of them are later.
fn first_day(next: &NextInstall, visited: Date) -> Date {
    days_read(next, visited).map(|(_, day)| day).min().unwrap_or_else(|| next.came(visited))
}

/// The readings that were typed, each with the day it counts as. A day on which no board can lie there any more is a
/// slip: what it says is left out.
fn days_read(next: &NextInstall, visited: Date) -> impl Iterator<Item = (&BoardReading, Date)> {
    let last = next.last_day(visited);
    let typed = next.readings.iter().filter(|reading| reading.reading.is_some());
    typed.map(move |reading| (reading, next.day_of(reading, visited))).filter(move |(_, day)| *day <= last)
}

/// The readings that were typed, put right for the wood's temperature, in the order of their days.
fn readings(next: &NextInstall, visited: Date, first: Date) -> Vec<LotReading> {
    let one = |(reading, date): (&BoardReading, Date)| {
        let day = i64::from((date - first).get_days());
        Some(LotReading { day, pct: reading.corrected()?.to_pct(), pins: reading.pins })
    };
    let mut readings: Vec<LotReading> = days_read(next, visited).filter_map(one).collect();
    readings.sort_by_key(|reading| reading.day);
    readings
}

fn sampling(readings: &[LotReading]) -> Option<DeliverySampling> {
    let risks = SamplingRisks::default();
    let first = readings.first().map_or(0, |reading| reading.day);
    let measured = readings.iter().filter(|reading| reading.day == first).count();
    let measured = u32::try_from(measured).unwrap_or(u32::MAX);
    let of = if measured == 0 { USUAL_READINGS } else { measured };
    let plan = sampling_plan(&risks)?;
    Some(DeliverySampling { plan, measured, missed: accepts(of, 0, risks.bad), of })
}
