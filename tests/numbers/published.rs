//! Checks against published values of air, climate, lumber and sampling; those of wood are in `wood.rs`.
//!
//! The values lie in `published/*.csv`, copied from the source named in each row. They stand for
//! what others have printed; where a row is quoted from memory, its file says so.

use std::collections::BTreeMap;

use gapwright::air::psychrometrics::saturation_pressure;
use gapwright::air::{HouseModel, IndoorAir, Station};
use gapwright::belief::usual_year;
use gapwright::job::Catalog;
use gapwright::measure::Temperature;
use gapwright::surface::BoardSpec;
use gapwright::survey::accepts;
use gapwright::wood::Kind;
use serde::Deserialize;

use crate::amounts::paint_spread;
use crate::checked::{self, Checked};
use crate::tables::{Row, number, rows};
use crate::wood::{equilibrium_moisture, white_fir};

/// Saturation pressure: ASHRAE Handbook Fundamentals 2017, ch. 1 Table 3. Within 3e-4 of the value:
/// the table and the handbook's equations 5 and 6 come from different formulations (from memory).
#[test]
fn saturation_pressure_is_that_of_the_ashrae_table() {
    saturation().hold(5);
}

fn saturation() -> Checked {
    let values = rows(include_str!("published/saturation_pressure.csv")).into_iter().filter_map(|row| {
        let printed = number(&row, "ASHRAE_2017_Table3_Pa")?;
        let t = number(&row, "T_C")?;
        Some((format!("{t} °C"), printed, saturation_pressure(Temperature::celsius(t))))
    });
    let source = "ASHRAE Handbook Fundamentals 2017, ch. 1 Table 3";
    Checked::by_share("saturation pressure, Pa", source, 3e-4, values)
}

/// Typical-year weather files, monthly means. Exact, every station, and none beside them.
#[test]
fn the_stations_have_the_months_of_the_weather_files() {
    #[derive(Deserialize)]
    struct Table {
        stations: Vec<Station>,
    }
    let table: Table = ron::from_str(include_str!("../../assets/stations.ron")).unwrap();
    let printed = months_by_place();
    assert_eq!(table.stations.len(), printed.len());
    for station in table.stations {
        let (months, source) = &printed[&station.name];
        assert_eq!(station.months.as_slice(), months.as_slice(), "{}", station.name);
        assert_eq!((&station.source, station.kind), (source, Kind::Published), "{}", station.name);
    }
}

/// Months in the file's order, which must be the calendar's, and the source, by place.
fn months_by_place() -> BTreeMap<String, (Vec<(f64, f64)>, String)> {
    const NAMES: [&str; 12] =
        ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let mut places: BTreeMap<String, (Vec<(f64, f64)>, String)> = BTreeMap::new();
    for row in rows(include_str!("published/climate_monthly_typical_year.csv")) {
        let place = format!("{}, {}", row["city"], row["state"]);
        let (months, source) = places.entry(place).or_default();
        assert_eq!(row["month"], NAMES[months.len()]);
        let mean = |column| number(&row, column).unwrap();
        months.push((mean("mean_dry_bulb_c"), mean("mean_rh_pct")));
        source.clone_from(&row["source"]);
    }
    places
}

/// American Softwood Lumber Standard PS 20 and western pattern tables: the board that a new section
/// starts with is the dry 1x6 tongue-and-groove pattern. Exact, printed in eighths.
#[test]
fn the_default_board_is_the_standard_one_by_six() {
    let sizes = rows(include_str!("published/lumber_sizes.csv"));
    let size = |item: &str, nominal: &str, column: &str| {
        let is_it = |row: &&Row| row["item"].starts_with(item) && row["nominal_width_in"] == nominal;
        number(sizes.iter().find(is_it).unwrap(), column).unwrap()
    };
    let board = BoardSpec::default();
    for (have, item, nominal, column) in [
        (board.face_width, "Drop / T&G", "6", "face_width_in"),
        (board.overall_width, "Drop / T&G", "6", "dressed_overall_width_in_dry"),
        // The row for thickness has it in the column for dressed width.
        (board.thickness, "Nominal 1 in board", "1", "dressed_overall_width_in_dry"),
    ] {
        let printed = size(item, nominal, column);
        assert!((have.to_inches() - printed).abs() < 1e-9, "{have:?} is not {printed} in");
    }
    assert!((board.tongue().expect("it has a tongue").to_inches() - 0.25).abs() < 1e-9);
}

/// Minor marks of PS 20 and western grading (`moisture_marks.csv`) against those on the shelf.
#[test]
fn the_marks_on_the_shelf_are_the_published_ones() {
    let marks = &Catalog::built_in().marks;
    let most = |name: &str| marks.iter().find(|mark| mark.name.starts_with(name)).unwrap().most.to_pct();
    let table = include_str!("published/moisture_marks.csv");
    let printed = |name: &str| -> f64 {
        let mut reader = csv::Reader::from_reader(table.as_bytes());
        let rows = reader.records().map(Result::unwrap);
        let row = rows.into_iter().find(|row| row[0].starts_with(name)).unwrap();
        row[1].trim_start_matches("<=").parse().unwrap()
    };
    assert_eq!(most("KD 15"), printed("KD-15"));
    assert_eq!(most("S-DRY"), printed("S-DRY"));
    assert_eq!(most("KD 12"), printed("KD12"));
    assert!(marks.is_sorted_by(|a, b| a.most <= b.most), "driest first");
}

/// Recommended moisture of interior wood at installation: Wood Handbook Table 13-2 (averages
/// second-hand, ranges from memory). It falls out of the indoor year of a lived-in, cooled house in the
/// inland, the dry and the damp coastal climate: the year's mean within the range for single pieces and
/// within 1.5 % of the average, which leans to the heating season.
#[test]
fn the_recommended_moisture_of_each_region_falls_out_of_its_year() {
    recommended().hold(3);
}

fn recommended() -> Checked {
    let table = rows(include_str!("published/recommended_interior_mc.csv"));
    let year_mean = |station: &str| {
        let air = IndoorAir::FromClimate { station: station.to_owned(), house: HouseModel::default() };
        let catalog = Catalog::built_in();
        let year = usual_year(&air, None, &catalog.stations, &catalog.priors).unwrap();
        year.iter().map(|day| day.emc().to_pct()).sum::<f64>() / 365.0
    };
    let values = [
        ("Most areas of the US", "Chicago, IL"),
        ("Dry southwestern areas", "Phoenix, AZ"),
        ("Damp, warm coastal areas", "Miami, FL"),
    ]
    .map(|(region, station)| {
        let interior = |row: &&Row| row["use"].starts_with("Interior") && row["region"] == region;
        let row = table.iter().find(interior).unwrap();
        let ours = year_mean(station);
        let column = |name: &str| number(row, name).unwrap();
        let range = column("individual_low_pct")..=column("individual_high_pct");
        assert!(range.contains(&ours), "{region}: {ours}");
        (format!("{region} by {station}"), column("average_pct"), ours)
    });
    let source = "Wood Handbook Table 13-2 (averages second-hand, ranges from memory)";
    Checked::new("recommended moisture of interior wood, %", source, 1.5, values)
}

/// Operating characteristic of the single sampling plan n = 52, c = 3: NIST/SEMATECH e-Handbook
/// section 6.2.3.2 (from memory), printed to three figures.
#[test]
fn sampling_plans_accept_as_the_handbook_says() {
    sampling().hold(10);
}

fn sampling() -> Checked {
    let table = rows(include_str!("published/nist_handbook.csv"));
    let curve = table.into_iter().filter(|row| row["quantity"].starts_with("OC curve"));
    let values = curve.map(|row| {
        let share = row["inputs"].split("pd=").nth(1).unwrap().split(' ').next().unwrap().to_owned();
        let ours = accepts(52, 3, share.parse().unwrap());
        (format!("share {share} defective"), number(&row, "printed").unwrap(), ours)
    });
    let source = "NIST/SEMATECH e-Handbook 6.2.3.2 (from memory), printed to three figures";
    Checked::new("chance that a sampling plan accepts", source, 6e-4, values)
}

#[test]
fn the_page_of_numbers_is_of_these_checks() {
    let checks =
        [equilibrium_moisture(), saturation(), white_fir(), paint_spread(), recommended(), sampling()];
    checked::page("Handbooks and standards", &checks);
}

/// Start values of pricing. Mean wages of painters (47-2141) and carpenters (47-2031), United States, May
/// 2025: BLS, Occupational Employment and Wage Statistics, national table. Wages 32.54 and benefits 14.94 an hour
/// worked of natural resources, construction and maintenance occupations, March 2026: BLS, Employer Costs for
/// Employee Compensation, Table 4. Cost of sales 69.9 % of remodelers' revenue, 2018: a trade association's
/// survey of 2020, press text.
#[test]
fn wages_burden_and_price_over_cost_start_from_published_figures() {
    let prices = gapwright::repair::Prices::default();
    assert_eq!((prices.labor.to_cents(), prices.carpenter.to_cents()), (2_664, 3_155));
    let burden = 14.94 / 32.54;
    assert!((prices.burden.to_fraction() - burden).abs() < 0.005, "{burden}");
    let over_cost = (1.0 + prices.overhead.to_fraction()) * (1.0 + prices.profit.to_fraction());
    assert!((over_cost - 1.0 / 0.699).abs() < 0.01, "{over_cost}");
    let hour = prices.hour(gapwright::repair::Trade::Painter).to_units() * over_cost;
    assert!((prices.charge_out.to_units() - hour).abs() < 1.0, "{hour}");
}
