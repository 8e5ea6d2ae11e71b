//! The table of fields.

use super::access::*;
use super::{Each, Field, Figure, Kind, Mending};
use crate::measure::Quantity as Q;
use crate::measure::{Angle, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature};

/// Widest gap that is taken for a joint's: a wider one is a slip or an opening.
pub const WIDEST_GAP: Length = Length::inches(2.0);
/// Farthest point of any room.
const FARTHEST: Length = Length::m(1000.0);
/// The finest opening anyone can measure or see.
const FINEST: Length = Length::mm(0.05);
/// More than any bead or gap of a plan.
const COARSEST: Length = Length::inches(1.0);
/// Coldest and hottest that a room can be.
const COLDEST: Temperature = Temperature::celsius(-30.0);
const HOTTEST: Temperature = Temperature::celsius(60.0);
/// More than anyone charges for an hour, a day, or to come at all.
const DEAREST: Money = Money::cents(1_000_000);

const fn pct(percent: f64) -> Percent {
    Percent::pct(percent)
}

/// A figure that always stands: id, path, part of the job (to read, to change), field of that part,
/// quantity with its range, mending.
macro_rules! figure {
    ($(#[$doc:meta])* $name:ident, $id:literal, $path:literal, $each:ident, $read:ident, $write:ident, $($field:ident).+,
     $quantity:ident, $low:expr, $high:expr, $mending:ident) => {
        $(#[$doc])*
        pub static $name: Field = Field {
            id: $id,
            path: $path,
            each: Each::$each,
            kind: Kind::Figure(Figure {
                low: Q::$quantity($low),
                high: Q::$quantity($high),
                mending: Mending::$mending,
                optional: false,
                read: |job, at| $read(job, at).map(|part| Q::$quantity(part.$($field).+)),
                write: |job, at, value| {
                    if let (Some(part), Some(Q::$quantity(value))) = ($write(job, at), value) {
                        part.$($field).+ = value;
                    }
                },
            }),
        };
    };
}

/// A figure that may be left empty.
macro_rules! optional {
    ($(#[$doc:meta])* $name:ident, $id:literal, $path:literal, $each:ident, $read:ident, $write:ident, $($field:ident).+,
     $quantity:ident, $low:expr, $high:expr, $mending:ident) => {
        $(#[$doc])*
        pub static $name: Field = Field {
            id: $id,
            path: $path,
            each: Each::$each,
            kind: Kind::Figure(Figure {
                low: Q::$quantity($low),
                high: Q::$quantity($high),
                mending: Mending::$mending,
                optional: true,
                read: |job, at| $read(job, at)?.$($field).+.map(Q::$quantity),
                write: |job, at, value| {
                    let Some(part) = $write(job, at) else { return };
                    match value {
                        Some(Q::$quantity(value)) => part.$($field).+ = Some(value),
                        Some(_) => {}
                        None => part.$($field).+ = None,
                    }
                },
            }),
        };
    };
}

/// A field that takes no figure.
macro_rules! other {
    ($(#[$doc:meta])* $name:ident, $id:literal, $path:literal, $each:ident, $kind:ident) => {
        $(#[$doc])*
        pub static $name: Field = Field { id: $id, path: $path, each: Each::$each, kind: Kind::$kind };
    };
}

// The job.
other!(
    #[doc = "What the job is called."]
    TITLE,
    "title",
    "title",
    Job,
    Text
);
other!(
    #[doc = "The homeowner's name."]
    OWNER,
    "owner",
    "owner",
    Job,
    Text
);
other!(
    #[doc = "Where the house is."]
    ADDRESS,
    "address",
    "address",
    Job,
    Text
);
other!(
    #[doc = "Free notes."]
    NOTES,
    "notes",
    "notes",
    Job,
    Text
);
other!(
    #[doc = "Name of the firm."]
    FIRM,
    "firm",
    "contractor.name",
    Job,
    Text
);
other!(
    #[doc = "Address and telephone of the firm."]
    FIRM_DETAILS,
    "firm-details",
    "contractor.details",
    Job,
    Text
);
other!(
    #[doc = "Who signs for the firm."]
    FIRM_SIGNS,
    "firm-signs",
    "contractor.signs",
    Job,
    Text
);
other!(
    #[doc = "Units in which figures are typed and shown."]
    UNITS,
    "units",
    "units",
    Job,
    Choice
);
other!(
    #[doc = "Year the house was built."]
    YEAR_BUILT,
    "year-built",
    "built",
    Job,
    Date
);
other!(
    #[doc = "When the boards were installed."]
    INSTALLED,
    "installed",
    "installed",
    Job,
    Date
);
other!(
    #[doc = "The day of the visit."]
    VISITED,
    "visited",
    "visited",
    Job,
    Date
);

// Surfaces.
other!(
    #[doc = "Name of a surface."]
    SURFACE_NAME,
    "surface-name",
    "surfaces[].name",
    Surface,
    Text
);
other!(
    #[doc = "Corners of a surface."]
    OUTLINE,
    "outline",
    "surfaces[].outline",
    Surface,
    List
);
figure!(
    #[doc = "Width of the trim around a surface."]
    TRIM,
    "trim",
    "surfaces[].trim",
    Surface,
    surface,
    surface_mut,
    trim,
    Length,
    Length::ZERO,
    Length::m(10.0),
    Nearest
);
other!(
    #[doc = "A window, door or skylight."]
    OPENING,
    "opening",
    "surfaces[].openings[]",
    Opening,
    List
);
other!(
    #[doc = "Ends of a divider."]
    DIVIDER,
    "divider",
    "surfaces[].dividers[]",
    Divider,
    List
);
figure!(
    #[doc = "Width of a divider."]
    DIVIDER_WIDTH,
    "divider-width",
    "surfaces[].dividers[].width",
    Divider,
    divider,
    divider_mut,
    width,
    Length,
    Length::ZERO,
    Length::m(10.0),
    Nearest
);
other!(
    #[doc = "Name of a section."]
    SECTION_NAME,
    "section-name",
    "surfaces[].sections[].name",
    Section,
    Text
);
other!(
    #[doc = "Species of the boards."]
    SPECIES,
    "species",
    "surfaces[].sections[].board.species",
    Section,
    Catalog
);
figure!(
    #[doc = "Width of a board that shows."]
    FACE_WIDTH,
    "face-width",
    "surfaces[].sections[].board.face_width",
    Section,
    board,
    board_mut,
    face_width,
    Length,
    Length::ZERO,
    FARTHEST,
    Nearest
);
figure!(
    #[doc = "Width of a board with its tongue."]
    OVERALL_WIDTH,
    "overall-width",
    "surfaces[].sections[].board.overall_width",
    Section,
    board,
    board_mut,
    overall_width,
    Length,
    Length::ZERO,
    FARTHEST,
    Nearest
);
figure!(
    #[doc = "Thickness of a board."]
    THICKNESS,
    "thickness",
    "surfaces[].sections[].board.thickness",
    Section,
    board,
    board_mut,
    thickness,
    Length,
    Length::ZERO,
    Length::mm(150.0),
    Nearest
);
figure!(
    #[doc = "Angle of the growth rings to the face."]
    GRAIN,
    "grain",
    "surfaces[].sections[].board.ring_angle",
    Section,
    board,
    board_mut,
    ring_angle,
    Angle,
    Angle::ZERO,
    Angle::degrees(90.0),
    Nearest
);
optional!(
    #[doc = "Longest board."]
    MAX_LENGTH,
    "max-length",
    "surfaces[].sections[].board.longest",
    Section,
    board,
    board_mut,
    longest,
    RoomLength,
    Length::ZERO,
    FARTHEST,
    Nearest
);
other!(
    #[doc = "Edge profile."]
    PROFILE,
    "profile",
    "surfaces[].sections[].board.profile",
    Section,
    Choice
);
other!(
    #[doc = "Where boards are nailed."]
    NAILING,
    "nailing",
    "surfaces[].sections[].board.fixing",
    Section,
    Choice
);
other!(
    #[doc = "Paint on face and back."]
    FINISH,
    "finish",
    "surfaces[].sections[].board.finish",
    Section,
    Choice
);
other!(
    #[doc = "What is behind the boards."]
    BACKING,
    "backing",
    "surfaces[].sections[].board.behind",
    Section,
    Choice
);
figure!(
    #[doc = "Direction in which boards run."]
    DIRECTION,
    "direction",
    "surfaces[].sections[].direction",
    Section,
    section,
    section_mut,
    direction,
    Angle,
    Angle::degrees(-360.0),
    Angle::degrees(360.0),
    Nearest
);
figure!(
    #[doc = "Width of the first board."]
    STARTER_RIP,
    "starter-rip",
    "surfaces[].sections[].start",
    Section,
    section,
    section_mut,
    start,
    Length,
    Length::ZERO,
    FARTHEST,
    Nearest
);

// Readings.
figure!(
    #[doc = "How well the opening of all joints is to be known."]
    PRECISION,
    "precision",
    "survey.precision",
    Job,
    job,
    job_mut,
    survey.precision,
    Percent,
    pct(1.0),
    pct(100.0),
    Nearest
);
figure!(
    #[doc = "Width of a gap."]
    GAP_WIDTH,
    "gap-width",
    "survey.gaps[].width",
    Gap,
    gap,
    gap_mut,
    width,
    Length,
    Length::ZERO,
    WIDEST_GAP,
    LeaveOut
);
other!(
    #[doc = "The joint of a gap reading."]
    GAP_JOINT,
    "gap-joint",
    "survey.gaps[].joint",
    Gap,
    Choice
);
other!(
    #[doc = "How the bead in a joint failed."]
    GAP_FAILURE,
    "gap-failure",
    "survey.gaps[].failed",
    Gap,
    Choice
);
other!(
    #[doc = "When a gap was read."]
    GAP_DATE,
    "gap-date",
    "survey.gaps[].date",
    Gap,
    Date
);
optional!(
    #[doc = "What the moisture meter shows."]
    METER_READING,
    "meter-reading",
    "survey.moistures[].reading",
    Moisture,
    meter,
    meter_mut,
    reading,
    Moisture,
    Moisture::ZERO,
    Moisture::pct(100.0),
    LeaveOut
);
figure!(
    #[doc = "Temperature of the wood under the meter."]
    WOOD_TEMPERATURE,
    "wood-temperature",
    "survey.moistures[].wood",
    Moisture,
    meter,
    meter_mut,
    wood,
    Temperature,
    COLDEST,
    HOTTEST,
    LeaveOut
);
other!(
    #[doc = "The section of a meter reading."]
    METER_SECTION,
    "meter-section",
    "survey.moistures[].section",
    Moisture,
    Choice
);
other!(
    #[doc = "Setting of the meter."]
    METER_SETTING,
    "meter-setting",
    "survey.moistures[].setting",
    Moisture,
    Choice
);
other!(
    #[doc = "The board under the meter."]
    METER_BOARD,
    "meter-board",
    "survey.moistures[].board",
    Moisture,
    Text
);
other!(
    #[doc = "When the meter was read."]
    METER_DATE,
    "meter-date",
    "survey.moistures[].date",
    Moisture,
    Date
);
figure!(
    #[doc = "Temperature of the room at a reading."]
    ROOM_TEMPERATURE,
    "room-temperature",
    "survey.rooms[].temperature",
    Room,
    room,
    room_mut,
    temperature,
    Temperature,
    COLDEST,
    HOTTEST,
    LeaveOut
);
figure!(
    #[doc = "Humidity of the room at a reading."]
    ROOM_HUMIDITY,
    "room-humidity",
    "survey.rooms[].humidity",
    Room,
    room,
    room_mut,
    humidity,
    Humidity,
    Humidity::ZERO,
    Humidity::pct(100.0),
    LeaveOut
);
other!(
    #[doc = "When the room was read."]
    ROOM_DATE,
    "room-date",
    "survey.rooms[].date",
    Room,
    Date
);

// The room's air.
other!(
    #[doc = "Whose weather the house stands in."]
    PLACE,
    "place",
    "air.station",
    Job,
    Catalog
);
figure!(
    #[doc = "Heat setpoint."]
    HEAT_SETPOINT,
    "heat-setpoint",
    "air.house.heat_to",
    Job,
    house,
    house_mut,
    heat_to,
    Temperature,
    COLDEST,
    HOTTEST,
    Nearest
);
figure!(
    #[doc = "AC setpoint."]
    AC_SETPOINT,
    "ac-setpoint",
    "air.house.cool_to",
    Job,
    house,
    house_mut,
    cool_to,
    Temperature,
    COLDEST,
    HOTTEST,
    Nearest
);
other!(
    #[doc = "What sets the humidity indoors."]
    HUMIDITY_BY,
    "humidity-by",
    "air.house.class",
    Job,
    Choice
);
figure!(
    #[doc = "Water that people add to the air."]
    MOISTURE_LOAD,
    "moisture-load",
    "air.house.moisture_load",
    Job,
    house,
    house_mut,
    moisture_load,
    MoistureLoad,
    0.0,
    20.0,
    Nearest
);
optional!(
    #[doc = "Humidity that a dehumidifier keeps."]
    DEHUMIDIFIER,
    "dehumidifier",
    "air.house.dehumidified_to",
    Job,
    house,
    house_mut,
    dehumidified_to,
    Humidity,
    Humidity::ZERO,
    Humidity::pct(100.0),
    Nearest
);
optional!(
    #[doc = "Humidity that a humidifier keeps."]
    HUMIDIFIER,
    "humidifier",
    "air.house.humidified_to",
    Job,
    house,
    house_mut,
    humidified_to,
    Humidity,
    Humidity::ZERO,
    Humidity::pct(100.0),
    Nearest
);
figure!(
    #[doc = "Temperature of a month."]
    MONTH_TEMPERATURE,
    "month-temperature",
    "air.months[].temperature",
    Month,
    month,
    month_mut,
    temperature,
    Temperature,
    COLDEST,
    HOTTEST,
    Nearest
);
figure!(
    #[doc = "Humidity of a month."]
    MONTH_HUMIDITY,
    "month-humidity",
    "air.months[].humidity",
    Month,
    month,
    month_mut,
    humidity,
    Humidity,
    Humidity::ZERO,
    Humidity::pct(100.0),
    Nearest
);
other!(
    #[doc = "A logger's days."]
    LOGGER,
    "logger",
    "logged",
    Job,
    List
);

// The repair.
other!(
    #[doc = "The option the papers speak of."]
    OPTION,
    "option",
    "plan.chosen",
    Job,
    Choice
);
other!(
    #[doc = "The sealant."]
    SEALANT,
    "sealant",
    "plan.sealant",
    Job,
    Catalog
);
other!(
    #[doc = "The primer."]
    PRIMER,
    "primer",
    "plan.primer",
    Job,
    Catalog
);
other!(
    #[doc = "The paint."]
    PAINT,
    "paint",
    "plan.paint",
    Job,
    Catalog
);
figure!(
    #[doc = "Coats of paint."]
    COATS,
    "coats",
    "plan.coats",
    Job,
    job,
    job_mut,
    plan.coats,
    Count,
    0,
    10,
    Nearest
);
other!(
    #[doc = "Which joints are sealed."]
    SCOPE,
    "scope",
    "plan.scope",
    Job,
    Choice
);
figure!(
    #[doc = "Gap from which a joint counts as open."]
    OPEN_THRESHOLD,
    "open-threshold",
    "plan.open_from",
    Job,
    job,
    job_mut,
    plan.open_from,
    Length,
    FINEST,
    COARSEST,
    Nearest
);
figure!(
    #[doc = "Smallest gap that takes a bead."]
    MIN_SEALABLE_GAP,
    "min-sealable-gap",
    "plan.narrowest",
    Job,
    job,
    job_mut,
    plan.narrowest,
    Length,
    FINEST,
    COARSEST,
    Nearest
);
other!(
    #[doc = "The day of sealing."]
    SEALING_DATE,
    "sealing-date",
    "plan.seal_on",
    Job,
    Date
);
figure!(
    #[doc = "Least depth of the bead."]
    BEAD_DEPTH,
    "bead-depth",
    "plan.bead.least_depth",
    Job,
    job,
    job_mut,
    plan.bead.least_depth,
    Length,
    FINEST,
    COARSEST,
    Nearest
);
figure!(
    #[doc = "How much of the V the bead fills."]
    V_FILL,
    "v-fill",
    "plan.bead.v_filled",
    Job,
    job,
    job_mut,
    plan.bead.v_filled,
    Percent,
    pct(0.0),
    pct(100.0),
    Nearest
);
figure!(
    #[doc = "Sealant that is lost."]
    SEALANT_WASTE,
    "sealant-waste",
    "plan.bead.waste",
    Job,
    job,
    job_mut,
    plan.bead.waste,
    Percent,
    pct(0.0),
    pct(200.0),
    Nearest
);
figure!(
    #[doc = "People on the job."]
    CREW_SIZE,
    "crew-size",
    "plan.crew",
    Job,
    job,
    job_mut,
    plan.crew,
    Count,
    1,
    50,
    Nearest
);
figure!(
    #[doc = "Hours of a working day."]
    HOURS_PER_DAY,
    "hours-per-day",
    "plan.day",
    Job,
    job,
    job_mut,
    plan.day,
    Hours,
    Hours::h(0.5),
    Hours::h(16.0),
    Nearest
);
other!(
    #[doc = "Whether the crew works on weekends."]
    WORKDAYS,
    "workdays",
    "plan.weekends",
    Job,
    Choice
);
other!(
    #[doc = "Whether paint waits for a second visit."]
    TWO_VISITS,
    "two-visits",
    "plan.two_visits",
    Job,
    Choice
);
figure!(
    #[doc = "Moisture at which new boards are delivered."]
    DELIVERED_AT,
    "delivered-at",
    "plan.delivered_at",
    Job,
    job,
    job_mut,
    plan.delivered_at,
    Moisture,
    Moisture::pct(2.0),
    Moisture::pct(60.0),
    Nearest
);
figure!(
    #[doc = "Days that new boards lie in the room."]
    ACCLIMATION,
    "acclimation",
    "plan.acclimation_days",
    Job,
    job,
    job_mut,
    plan.acclimation_days,
    Days,
    0,
    365,
    Nearest
);
figure!(
    #[doc = "Share of a new board lost to defects."]
    WASTE_FACTOR,
    "waste-factor",
    "plan.board_waste",
    Job,
    job,
    job_mut,
    plan.board_waste,
    Percent,
    pct(0.0),
    pct(90.0),
    Nearest
);
other!(
    #[doc = "Lengths in which boards are sold."]
    STOCK_LENGTHS,
    "stock-lengths",
    "plan.stock.lengths",
    Job,
    List
);
figure!(
    #[doc = "Width of the saw's cut."]
    KERF,
    "kerf",
    "plan.stock.kerf",
    Job,
    job,
    job_mut,
    plan.stock.kerf,
    Length,
    Length::ZERO,
    Length::mm(20.0),
    Nearest
);
figure!(
    #[doc = "Trimmed off each stock board."]
    END_TRIM,
    "end-trim",
    "plan.stock.end_trim",
    Job,
    job,
    job_mut,
    plan.stock.end_trim,
    Length,
    Length::ZERO,
    Length::m(0.5),
    Nearest
);
other!(
    #[doc = "What the crew works from."]
    ACCESS,
    "access",
    "plan.site.height",
    Job,
    Choice
);
other!(
    #[doc = "How the old caulk comes out."]
    OLD_CAULK,
    "old-caulk",
    "plan.site.old_sealant",
    Job,
    Choice
);
other!(
    #[doc = "Whether the room is furnished or tight."]
    ROOM_STATE,
    "room-state",
    "plan.site",
    Job,
    Choice
);
optional!(
    #[doc = "Minutes that a timed section took one person."]
    TIMED_MINUTES,
    "timed-minutes",
    "plan.trial.minutes",
    Job,
    trial,
    trial_mut,
    minutes,
    Minutes,
    Minutes::of(0.1),
    Minutes::of(100_000.0),
    LeaveOut
);
other!(
    #[doc = "The section that was timed."]
    TIMED_SECTION,
    "timed-section",
    "plan.trial",
    Job,
    Choice
);
figure!(
    #[doc = "Years of warranty."]
    WARRANTY,
    "warranty",
    "plan.warranty_years",
    Job,
    job,
    job_mut,
    plan.warranty_years,
    Years,
    0,
    50,
    Nearest
);
figure!(
    #[doc = "Share of the length that brings a callback."]
    CALLBACK_SHARE,
    "callback-share",
    "plan.callback.open_share",
    Job,
    job,
    job_mut,
    plan.callback.open_share,
    Percent,
    pct(0.0),
    pct(100.0),
    Nearest
);
figure!(
    #[doc = "One gap that brings a callback."]
    CALLBACK_GAP,
    "callback-gap",
    "plan.callback.widest",
    Job,
    job,
    job_mut,
    plan.callback.widest,
    Length,
    FINEST,
    COARSEST,
    Nearest
);
figure!(
    #[doc = "Smallest gap anyone sees."]
    SMALLEST_VISIBLE_GAP,
    "smallest-visible-gap",
    "plan.callback.seen_from",
    Job,
    job,
    job_mut,
    plan.callback.seen_from,
    Length,
    FINEST,
    COARSEST,
    Nearest
);

// Money.
other!(
    #[doc = "Sign of the currency."]
    CURRENCY,
    "currency",
    "plan.prices.currency",
    Job,
    Text
);
figure!(
    #[doc = "Wage for an hour."]
    WAGE,
    "wage",
    "plan.prices.labour",
    Job,
    job,
    job_mut,
    plan.prices.labor,
    Money,
    Money::ZERO,
    DEAREST,
    Nearest
);
figure!(
    #[doc = "Taxes and insurance on wages."]
    LABOR_BURDEN,
    "labor-burden",
    "plan.prices.burden",
    Job,
    job,
    job_mut,
    plan.prices.burden,
    Percent,
    pct(0.0),
    pct(200.0),
    Nearest
);
figure!(
    #[doc = "Equipment for a day."]
    EQUIPMENT,
    "equipment",
    "plan.prices.equipment",
    Job,
    job,
    job_mut,
    plan.prices.equipment,
    Money,
    Money::ZERO,
    DEAREST,
    Nearest
);
figure!(
    #[doc = "Overhead on cost."]
    OVERHEAD,
    "overhead",
    "plan.prices.overhead",
    Job,
    job,
    job_mut,
    plan.prices.overhead,
    Percent,
    pct(0.0),
    pct(200.0),
    Nearest
);
figure!(
    #[doc = "Profit on cost."]
    PROFIT,
    "profit",
    "plan.prices.profit",
    Job,
    job,
    job_mut,
    plan.prices.profit,
    Percent,
    pct(0.0),
    pct(200.0),
    Nearest
);
optional!(
    #[doc = "Chance with which the contingency covers the cost."]
    CONTINGENCY,
    "contingency",
    "plan.prices.contingency",
    Job,
    job,
    job_mut,
    plan.prices.contingency,
    Percent,
    pct(50.0),
    pct(99.0),
    Nearest
);
figure!(
    #[doc = "Least charge of a job."]
    MINIMUM_CHARGE,
    "minimum-charge",
    "plan.prices.minimum",
    Job,
    job,
    job_mut,
    plan.prices.minimum,
    Money,
    Money::ZERO,
    DEAREST,
    Nearest
);
figure!(
    #[doc = "Sales tax."]
    TAX,
    "tax",
    "plan.prices.tax",
    Job,
    job,
    job_mut,
    plan.prices.tax,
    Percent,
    pct(0.0),
    pct(50.0),
    Nearest
);
other!(
    #[doc = "What is taxed."]
    TAX_ON,
    "tax-on",
    "plan.prices.tax_on",
    Job,
    Choice
);
other!(
    #[doc = "What the total is rounded to."]
    ROUND_TO,
    "round-to",
    "plan.prices.round_to",
    Job,
    Choice
);
figure!(
    #[doc = "Share due before work starts."]
    DEPOSIT,
    "deposit",
    "plan.prices.deposit",
    Job,
    job,
    job_mut,
    plan.prices.deposit,
    Percent,
    pct(0.0),
    pct(100.0),
    Nearest
);
figure!(
    #[doc = "Discount rate of later expenses."]
    DISCOUNT_RATE,
    "discount-rate",
    "plan.discount",
    Job,
    job,
    job_mut,
    plan.discount,
    Percent,
    pct(0.0),
    pct(50.0),
    Nearest
);
figure!(
    #[doc = "The contractor's share of the price."]
    CONTRACTOR_SHARE,
    "contractor-share",
    "plan.payers.contractor",
    Job,
    job,
    job_mut,
    plan.payers.contractor,
    Percent,
    pct(0.0),
    pct(100.0),
    Nearest
);
figure!(
    #[doc = "The supplier's share of the price."]
    SUPPLIER_SHARE,
    "supplier-share",
    "plan.payers.supplier",
    Job,
    job,
    job_mut,
    plan.payers.supplier,
    Percent,
    pct(0.0),
    pct(100.0),
    Nearest
);
other!(
    #[doc = "Shares of single lines of the price."]
    LINE_SPLIT,
    "line-split",
    "plan.payers.lines",
    Job,
    List
);
other!(
    #[doc = "Minutes of tasks for this job alone."]
    OWN_MINUTES,
    "own-minutes",
    "plan.own_minutes",
    Job,
    List
);
other!(
    #[doc = "Prices of materials for this job alone."]
    OWN_PRICES,
    "own-prices",
    "plan.own_prices",
    Job,
    List
);
other!(
    #[doc = "Prices and rates kept with the job."]
    PRICE_BOOK,
    "price-book",
    "shelf",
    Job,
    List
);

// Afterwards.
other!(
    #[doc = "The day the work was finished."]
    FINISHED,
    "finished",
    "done.finished",
    Job,
    Date
);
other!(
    #[doc = "Hours that tasks took."]
    ACTUAL_HOURS,
    "actual-hours",
    "done.hours",
    Job,
    List
);
other!(
    #[doc = "Pieces that were used."]
    PIECES_USED,
    "pieces-used",
    "done.pieces",
    Job,
    List
);
other!(
    #[doc = "Notes on the work."]
    WORK_NOTES,
    "work-notes",
    "done.note",
    Job,
    Text
);
other!(
    #[doc = "The day of a later visit."]
    VISIT_DATE,
    "visit-date",
    "later[].on",
    Visit,
    Date
);
optional!(
    #[doc = "Width of a gap at a later visit."]
    LATER_GAP,
    "later-gap",
    "later[].gaps[].width",
    LaterGap,
    later,
    later_mut,
    width,
    Length,
    Length::ZERO,
    WIDEST_GAP,
    LeaveOut
);

/// All fields.
pub static FIELDS: [&Field; 110] = [
    &TITLE,
    &OWNER,
    &ADDRESS,
    &NOTES,
    &FIRM,
    &FIRM_DETAILS,
    &FIRM_SIGNS,
    &UNITS,
    &YEAR_BUILT,
    &INSTALLED,
    &VISITED,
    &SURFACE_NAME,
    &OUTLINE,
    &TRIM,
    &OPENING,
    &DIVIDER,
    &DIVIDER_WIDTH,
    &SECTION_NAME,
    &SPECIES,
    &FACE_WIDTH,
    &OVERALL_WIDTH,
    &THICKNESS,
    &GRAIN,
    &MAX_LENGTH,
    &PROFILE,
    &NAILING,
    &FINISH,
    &BACKING,
    &DIRECTION,
    &STARTER_RIP,
    &PRECISION,
    &GAP_WIDTH,
    &GAP_JOINT,
    &GAP_FAILURE,
    &GAP_DATE,
    &METER_READING,
    &WOOD_TEMPERATURE,
    &METER_SECTION,
    &METER_SETTING,
    &METER_BOARD,
    &METER_DATE,
    &ROOM_TEMPERATURE,
    &ROOM_HUMIDITY,
    &ROOM_DATE,
    &PLACE,
    &HEAT_SETPOINT,
    &AC_SETPOINT,
    &HUMIDITY_BY,
    &MOISTURE_LOAD,
    &DEHUMIDIFIER,
    &HUMIDIFIER,
    &MONTH_TEMPERATURE,
    &MONTH_HUMIDITY,
    &LOGGER,
    &OPTION,
    &SEALANT,
    &PRIMER,
    &PAINT,
    &COATS,
    &SCOPE,
    &OPEN_THRESHOLD,
    &MIN_SEALABLE_GAP,
    &SEALING_DATE,
    &BEAD_DEPTH,
    &V_FILL,
    &SEALANT_WASTE,
    &CREW_SIZE,
    &HOURS_PER_DAY,
    &WORKDAYS,
    &TWO_VISITS,
    &DELIVERED_AT,
    &ACCLIMATION,
    &WASTE_FACTOR,
    &STOCK_LENGTHS,
    &KERF,
    &END_TRIM,
    &ACCESS,
    &OLD_CAULK,
    &ROOM_STATE,
    &TIMED_MINUTES,
    &TIMED_SECTION,
    &WARRANTY,
    &CALLBACK_SHARE,
    &CALLBACK_GAP,
    &SMALLEST_VISIBLE_GAP,
    &CURRENCY,
    &WAGE,
    &LABOR_BURDEN,
    &EQUIPMENT,
    &OVERHEAD,
    &PROFIT,
    &CONTINGENCY,
    &MINIMUM_CHARGE,
    &TAX,
    &TAX_ON,
    &ROUND_TO,
    &DEPOSIT,
    &DISCOUNT_RATE,
    &CONTRACTOR_SHARE,
    &SUPPLIER_SHARE,
    &LINE_SPLIT,
    &OWN_MINUTES,
    &OWN_PRICES,
    &PRICE_BOOK,
    &FINISHED,
    &ACTUAL_HOURS,
    &PIECES_USED,
    &WORK_NOTES,
    &VISIT_DATE,
    &LATER_GAP,
];
