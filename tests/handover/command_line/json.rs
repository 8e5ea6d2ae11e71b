//! The JSON of `assess`: its keys, units and sums.

use super::*;

#[test]
fn the_verdict_is_that_of_the_chosen_option() {
    for name in EXAMPLES {
        let report = report(name);
        let options = items(&report["options"]);
        let chosen = options.iter().find(|option| option["chosen"] == Value::Bool(true)).unwrap();
        let verdict = &report["verdict"];
        assert!(["rough", "fairly_sure", "sure"].contains(&text(&verdict["confidence"])), "{verdict}");
        let recommended = &verdict["recommended"];
        assert_eq!(recommended["method"], chosen["method"], "{name}");
        for (of_verdict, of_price) in
            [("total", "total"), ("total_low", "total_low"), ("total_high", "total_high")]
        {
            assert_eq!(recommended[of_verdict], chosen["price"][of_price], "{name}: {of_verdict}");
        }
        let (lasts, fails) = (&recommended["lasts_pct"], &chosen["callback_pct"]);
        let sum = lasts.as_f64().unwrap() + fails.as_f64().unwrap();
        assert!((sum - 100.0).abs() < 0.2, "{name}: {lasts} and {fails}");
    }
}

#[test]
fn an_empty_job_has_a_verdict_that_says_what_is_missing() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("empty.ron");
    fs::write(&path, "()").unwrap();
    let printed = on(&path, "assess", &["--json"]);
    let report: Value = serde_json::from_str(out(&printed)).unwrap();
    let verdict = &report["verdict"];
    assert_eq!(verdict["recommended"], Value::Null);
    assert_eq!(text(&verdict["confidence"]), "not_yet");
    assert_eq!(items(&verdict["missing"]).len(), 1);
}

/// Every key of `value` with what it holds, at any depth.
fn keys<'a>(value: &'a Value, found: &mut Vec<(&'a str, &'a Value)>) {
    match value {
        Value::Object(fields) => {
            for (key, value) in fields {
                found.push((key, value));
                keys(value, found);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| keys(item, found)),
        _ => {}
    }
}

#[test]
fn every_key_is_documented() {
    let readme = Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md");
    let readme = fs::read_to_string(readme).unwrap_or_default();
    let mut missing = BTreeSet::new();
    for name in EXAMPLES {
        let report = report(name);
        let mut found = Vec::new();
        keys(&report, &mut found);
        assert!(found.len() > 100, "{name} has {} keys only", found.len());
        let unknown = found.iter().filter(|(key, _)| !readme.contains(&format!("`{key}`")));
        missing.extend(unknown.map(|(key, _)| (*key).to_owned()));
    }
    assert!(missing.is_empty(), "README.md does not tell of {missing:?}");
}

/// Units that end a key or stand before its last word, as in `hours_sd`.
const UNITS: [&str; 9] = ["mm", "m", "m2", "ml", "pct", "c", "hours", "minutes", "days"];
/// Keys of plain counts and factors.
const COUNTS: [&str; 12] = [
    "people",
    "boards",
    "joints",
    "gaps_measured",
    "pieces",
    "more_readings",
    "odds_times",
    "odds_divided_by",
    "format",
    "worlds_tried",
    "effective_worlds",
    "conflicts",
];

pub(super) fn says_its_unit(key: &str) -> bool {
    COUNTS.contains(&key) || key.split(['_', ' ']).any(|part| UNITS.contains(&part))
}

#[test]
fn every_number_says_its_unit() {
    for name in EXAMPLES {
        let report = report(name);
        let mut found = Vec::new();
        keys(&report, &mut found);
        let numbers = || found.iter().filter(|(_, value)| value.is_number());
        assert!(numbers().count() > 50, "{name}");
        for (key, value) in numbers() {
            assert!(says_its_unit(key), "{name}: {value} of what is `{key}`?");
        }
    }
}

/// An amount in cents: text with two decimals and nothing else.
fn cents(value: &Value) -> i64 {
    let (units, decimals) = text(value).split_once('.').unwrap_or_else(|| panic!("{value} has no cents"));
    assert_eq!(decimals.len(), 2, "{value}");
    format!("{units}{decimals}").parse().unwrap_or_else(|_| panic!("{value} is no amount"))
}

fn sum(price: &Value, keys: &[&str]) -> i64 {
    keys.iter().map(|key| cents(&price[key])).sum()
}

#[test]
fn the_parts_of_a_price_add_up_to_the_cent() {
    for name in EXAMPLES {
        let report = report(name);
        let options = items(&report["options"]);
        assert_eq!(options.len(), 12, "{name}");
        for option in options {
            let price = &option["price"];
            // What can't be done has no price.
            if price.is_null() {
                assert!(option["not_possible"].is_string(), "{name}");
                continue;
            }
            let total = cents(&price["total"]);
            assert!(total > 0 || option["method"] == "nothing", "{name}");
            let lines = ["labour", "materials", "equipment", "overhead", "contingency", "profit", "minimum"];
            assert_eq!(sum(price, &lines) + sum(price, &["tax", "rounding"]), total, "{name}");
            assert_eq!(sum(price, &["contractor", "supplier", "owner"]), total, "{name}");
            assert!((cents(&price["total_low"])..=cents(&price["total_high"])).contains(&total), "{name}");
            let lines = items(&option["materials"]);
            for line in lines {
                let pieces = i64::try_from(line["pieces"].as_u64().unwrap()).unwrap();
                assert_eq!(cents(&line["price"]) * pieces, cents(&line["amount"]), "{name}: {line}");
            }
            let bought: i64 = lines.iter().map(|line| cents(&line["amount"])).sum();
            assert_eq!(bought, cents(&price["materials"]), "{name}");
        }
    }
}

#[test]
fn the_hours_of_the_tasks_are_those_of_the_option() {
    for name in EXAMPLES {
        for option in items(&report(name)["options"]) {
            let hours: f64 = items(&option["tasks"]).iter().map(|task| task["hours"].as_f64().unwrap()).sum();
            let told = option["labour_hours"].as_f64().unwrap();
            // Each is rounded: tasks to a thousandth, their sum to a hundredth.
            assert!((hours - told).abs() < 0.02, "{name}: {hours} and {told}");
        }
    }
}

#[test]
fn one_option_is_chosen() {
    for name in EXAMPLES {
        let report = report(name);
        let chosen = items(&report["options"]).iter().filter(|option| option["chosen"] == Value::Bool(true));
        assert_eq!(chosen.count(), 1, "{name}");
    }
}
