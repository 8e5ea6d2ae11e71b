//! Jobs at random: every one valid enough to be typed, few of them likely.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    clippy::cast_sign_loss,
    reason = "small numbers"
)]

use gapwright::air::{Air, HouseModel, HumidityClass, IndoorAir};
use gapwright::job::{Catalog, Job};
use gapwright::measure::{Angle, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature, Units};
use gapwright::repair::{MethodId, Scope, Trial};
use gapwright::surface::pattern::{Pattern, rectangle};
use gapwright::surface::{
    Behind, BoardSpec, Divider, DividerKind, Finish, Fixing, Opening, Point, Profile, Surface, SurfaceKind,
    layout,
};
use gapwright::survey::{
    Failure, GapReading, LaterGap, LaterVisit, MeterSetting, MoistureReading, RoomReading,
};
use jiff::ToSpan as _;
use jiff::civil::date;
use rand::{RngExt as _, SeedableRng as _};
use rand_xoshiro::Xoshiro256PlusPlus;

/// What chooses.
pub struct Dice(Xoshiro256PlusPlus);

impl Dice {
    pub fn new(seed: u64) -> Self {
        Self(Xoshiro256PlusPlus::seed_from_u64(seed))
    }

    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0.random_range(low..=high)
    }

    /// Below `count`, which is not 0.
    pub fn below(&mut self, count: usize) -> usize {
        self.0.random_range(0..count)
    }

    pub fn chance(&mut self, share: f64) -> bool {
        self.0.random_bool(share)
    }

    pub fn one_of<T: Clone>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())].clone()
    }

    pub fn byte(&mut self) -> u8 {
        self.0.random()
    }

    /// Something with this chance.
    fn maybe<T>(&mut self, share: f64, make: impl FnOnce(&mut Self) -> T) -> Option<T> {
        self.chance(share).then(|| make(self))
    }

    fn mm(&mut self, low: f64, high: f64) -> Length {
        Length::mm(self.between(low, high))
    }
}

/// The job of this number; the same number gives the same job.
pub fn job(seed: u64) -> Job {
    let dice = &mut Dice::new(seed);
    let mut job = Job {
        title: format!("Job {seed}"),
        units: dice.one_of(&[Units::Inches, Units::Millimeters]),
        visited: date(2026, 1, 1).checked_add((dice.below(365) as i32).days()).unwrap(),
        built: dice.maybe(0.5, |dice| 1900 + dice.below(125) as i16),
        ..Job::default()
    };
    let age = dice.maybe(0.7, |dice| dice.below(2500) as i32);
    job.installed = age.map(|age| job.visited.checked_sub(age.days()).unwrap().into());
    for index in 0..1 + dice.below(2) {
        let surface = surface(dice, &format!("Surface {index}"));
        job.surfaces.push(surface);
    }
    readings(dice, &mut job);
    job.air = air(dice);
    plan(dice, &mut job);
    later(dice, &mut job);
    job
}

fn surface(dice: &mut Dice, name: &str) -> Surface {
    let (width, height) = (dice.between(0.5, 5.0), dice.between(0.5, 4.0));
    let outline = match dice.below(3) {
        // A raking top edge.
        0 => vec![(0.0, 0.0), (width, 0.0), (width, height), (0.0, height * dice.between(0.4, 1.0))],
        // An L.
        1 => {
            let (x, y) = (width * dice.between(0.3, 0.7), height * dice.between(0.3, 0.7));
            vec![(0.0, 0.0), (width, 0.0), (width, y), (x, y), (x, height), (0.0, height)]
        }
        _ => vec![(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)],
    };
    let outline: Vec<Point> = outline.into_iter().map(|(x, y)| Point::m(x, y)).collect();
    let board = board(dice);
    let (sections, dividers) =
        dice.one_of(&Pattern::USUAL).fill(&outline, &board, &|number| number.to_string());
    let kind = dice.one_of(&[SurfaceKind::Ceiling, SurfaceKind::Wall, SurfaceKind::Slope]);
    let trim = if dice.chance(0.3) { dice.mm(10.0, 80.0) } else { Length::ZERO };
    let mut surface =
        Surface { name: name.to_owned(), kind, outline, trim, sections, dividers, ..Surface::default() };
    if dice.chance(0.3) {
        let corners = rectangle(Length::m(0.3), Length::m(0.3));
        let (x, y) = (dice.between(0.1, width / 2.0), dice.between(0.1, height / 2.0));
        let corners = corners.into_iter().map(|p| Point(p.0 + Length::m(x), p.1 + Length::m(y))).collect();
        surface.openings.push(Opening { name: "window".to_owned(), corners });
    }
    if dice.chance(0.2) {
        let x = width * dice.between(0.2, 0.8);
        surface.part_along(Divider {
            name: "divider".to_owned(),
            kind: dice.one_of(&[DividerKind::Dividing, DividerKind::Ridge]),
            from: Point::m(x, 0.0),
            to: Point::m(x, height),
            width: dice.mm(40.0, 150.0),
        });
    }
    surface.north = dice.maybe(0.3, |dice| Angle::degrees(dice.between(0.0, 360.0)));
    surface
}

fn board(dice: &mut Dice) -> BoardSpec {
    let species: Vec<String> =
        Catalog::built_in().species.iter().map(|species| species.name.clone()).collect();
    let face = dice.between(60.0, 240.0);
    BoardSpec {
        species: dice.one_of(&species),
        thickness: dice.mm(8.0, 30.0),
        overall_width: Length::mm(face + dice.one_of(&[0.0, 4.0, 6.35, 10.0])),
        face_width: Length::mm(face),
        profile: match dice.below(3) {
            0 => Profile::Square,
            1 => Profile::VGroove(dice.mm(1.0, 6.0)),
            _ => Profile::Bead(dice.mm(3.0, 9.0)),
        },
        ring_angle: Angle::degrees(dice.between(0.0, 90.0)),
        fixing: dice.one_of(&[Fixing::Tongue, Fixing::Middle, Fixing::Groove, Fixing::BothEdges]),
        finish: dice.one_of(&[Finish::Bare, Finish::LatexFace, Finish::LatexBackPrimed, Finish::OilFace]),
        behind: dice.one_of(&[Behind::Cavity, Behind::Tight]),
        longest: dice.maybe(0.3, |dice| Length::m(dice.between(0.8, 5.0))),
    }
}

fn readings(dice: &mut Dice, job: &mut Job) {
    const FAILURES: [Failure; 5] = [
        Failure::NotNoted,
        Failure::Whole,
        Failure::LetGoOneSide,
        Failure::SplitInMiddle,
        Failure::PaintTorn,
    ];
    let typical = dice.between(0.0, 4.0);
    for surface in &job.surfaces {
        for joint in layout(surface).joints {
            if dice.chance(0.12) {
                job.survey.gaps.push(GapReading {
                    surface: surface.name.clone(),
                    joint: joint.label,
                    at: dice.maybe(0.2, |dice| dice.mm(0.0, 500.0)),
                    width: Length::mm((typical * dice.between(0.3, 1.7)).max(0.0)),
                    date: None,
                    failed: dice.one_of(&FAILURES),
                    confirmed: dice.maybe(0.1, |dice| dice.mm(0.0, 60.0)),
                });
            }
        }
        for section in &surface.sections {
            if dice.chance(0.6) {
                job.survey.moistures.push(MoistureReading {
                    surface: surface.name.clone(),
                    section: section.name.clone(),
                    board: "third".to_owned(),
                    reading: dice.maybe(0.9, |dice| Moisture::pct(dice.between(6.0, 24.0))),
                    setting: dice.one_of(&[
                        MeterSetting::ThisSpecies,
                        MeterSetting::OtherSpecies,
                        MeterSetting::Unknown,
                    ]),
                    wood: Temperature::celsius(dice.between(-5.0, 35.0)),
                    date: None,
                });
            }
        }
    }
    if dice.chance(0.5) {
        let temperature = Temperature::celsius(dice.between(10.0, 30.0));
        let humidity = Humidity::pct(dice.between(15.0, 80.0));
        job.survey.rooms.push(RoomReading { temperature, humidity, date: None });
    }
}

fn air(dice: &mut Dice) -> IndoorAir {
    if dice.chance(0.3) {
        let mut month = || Air {
            temperature: Temperature::celsius(dice.between(12.0, 28.0)),
            humidity: Humidity::pct(dice.between(15.0, 85.0)),
        };
        return IndoorAir::Monthly(std::array::from_fn(|_month| month()));
    }
    let stations: Vec<String> =
        Catalog::built_in().stations.iter().map(|station| station.name.clone()).collect();
    let heat = dice.between(14.0, 23.0);
    let house = HouseModel {
        heat_to: Temperature::celsius(heat),
        cool_to: Temperature::celsius(heat + dice.between(1.0, 10.0)),
        class: dice.maybe(0.3, |dice| dice.one_of(&[HumidityClass::Normal, HumidityClass::High])),
        moisture_load: dice.between(0.0, 8.0),
        dehumidified_to: dice.maybe(0.4, |dice| Humidity::pct(dice.between(45.0, 70.0))),
        humidified_to: dice.maybe(0.3, |dice| Humidity::pct(dice.between(20.0, 42.0))),
    };
    IndoorAir::FromClimate { station: dice.one_of(&stations), house }
}

fn plan(dice: &mut Dice, job: &mut Job) {
    let catalog = Catalog::built_in();
    let methods: Vec<MethodId> = catalog.methods.iter().map(|method| method.id).collect();
    let sealants: Vec<String> = catalog.sealants.iter().map(|sealant| sealant.name.clone()).collect();
    let plan = &mut job.plan;
    plan.chosen = dice.one_of(&methods);
    plan.sealant = dice.one_of(&sealants);
    plan.coats = dice.below(4) as u32;
    plan.scope = dice.one_of(&[Scope::OpenJoints, Scope::EveryBoardJoint]);
    plan.narrowest = dice.mm(0.5, 3.0);
    plan.crew = 1 + dice.below(4) as u32;
    plan.two_visits = dice.chance(0.3);
    plan.weekends = dice.chance(0.3);
    plan.warranty_years = dice.below(6) as u32;
    plan.discount = Percent::pct(dice.between(0.0, 8.0));
    plan.prices.labor = Money::cents(2_000 + dice.below(6_000) as i64);
    plan.payers.contractor = Percent::pct(dice.between(0.0, 60.0));
    plan.payers.supplier = Percent::pct(dice.between(0.0, 40.0));
    let visited = job.visited;
    plan.seal_on = dice.maybe(0.3, |dice| visited.checked_add((dice.below(500) as i32).days()).unwrap());
    let first = &job.surfaces[0];
    plan.trial = dice.maybe(0.3, |dice| Trial {
        surface: first.name.clone(),
        section: first.sections.first().map_or_else(String::new, |section| section.name.clone()),
        minutes: dice.maybe(0.9, |dice| Minutes::of(dice.between(5.0, 300.0))),
    });
}

fn later(dice: &mut Dice, job: &mut Job) {
    if !dice.chance(0.3) {
        return;
    }
    let after = |days: usize| job.visited.checked_add((days as i32).days()).unwrap();
    let on = after(100 + dice.below(400));
    let again = job.survey.gaps.iter().take(4);
    let gaps = again.map(|gap| LaterGap {
        surface: gap.surface.clone(),
        joint: gap.joint.clone(),
        width: dice.maybe(0.9, |dice| dice.mm(0.0, 3.0)),
    });
    let visit = LaterVisit { on, gaps: gaps.collect() };
    job.done.finished = dice.maybe(0.5, |dice| after(dice.below(90)));
    job.later.push(visit);
}
