//! A job from sizes, an outline and tables.

use super::*;

/// Runs `new` for a job in the folder.
fn new_job(folder: &Path, more: &[&str]) -> Output {
    let job = folder.join("new.ron");
    run([&["new", job.to_str().unwrap()], more].concat())
}

/// A job of sizes and tables is one that the window could have made: it is assessed, and its readings are those of the
/// tables.
#[test]
fn a_job_is_made_of_sizes_and_tables() {
    let folder = TempDir::new().unwrap();
    let table = |name: &str, text: &str| {
        let path = folder.path().join(name);
        fs::write(&path, text).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let gaps = table(
        "gaps.csv",
        "joint,gap,bead\nA 2,7/64,one side\nA 5,1/8,split\nA 9,9/64,\nA 13,3/32,\nA 17,0,whole\n",
    );
    let meter =
        table("meter.csv", "section;board;moisture;wood_temperature\nA;third;8.5;64 F\nA;middle;9;64\n");
    let options = [
        "--size",
        "18' x 9' 6\"",
        "--place",
        "Chicago, IL",
        "--installed",
        "Aug 2025",
        "--visited",
        "2026-02-14",
    ];
    let tables = [
        "--gaps",
        gaps.as_str(),
        "--meter",
        meter.as_str(),
        "--title",
        "New",
        "--face",
        "5-1/8",
        "--built",
        "1994",
    ];
    let output = new_job(folder.path(), &[&options[..], &tables].concat());
    let job = folder.path().join("new.ron");
    // What is worth a warning is told, and no fault.
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    assert_eq!(out(&output).trim(), job.to_str().unwrap());
    // Boards as long as the surface are longer than any stock: that is told, and no fault.
    let assessed = on(&job, "assess", &["--json"]);
    assert_eq!(assessed.status.code(), Some(0), "{}", err(&assessed));
    let report: Value = serde_json::from_str(out(&assessed)).unwrap();
    // By hand: 18 ft by 9 ft 6 in are 171 sq ft, 15.886 m²; 114 in of 5-1/8 in boards are 22 whole ones and a rip.
    assert!(
        (report["layout"]["plan_area_m2"].as_f64().unwrap() - 15.886).abs() < 0.001,
        "{}",
        report["layout"]
    );
    assert_eq!(report["layout"]["boards"], 23);
    assert_eq!(report["sections"][0]["gaps_measured"], 5);
    assert_eq!((&report["title"], &report["visited"]), (&Value::from("New"), &Value::from("2026-02-14")));
    assert!(report["causes"]["main"].is_string(), "{}", report["causes"]);
    // What is there is not written over, unless asked.
    let again = new_job(folder.path(), &options);
    assert_eq!(again.status.code(), Some(1));
    assert!(err(&again).contains("--force"), "{}", err(&again));
    let forced = new_job(folder.path(), &[&options[..], &["--force"]].concat());
    assert_eq!(forced.status.code(), Some(0), "{}", err(&forced));
}

/// An outline file gives a surface for each outline, filled with the pattern.
#[test]
fn a_job_is_made_of_an_outline_file() {
    let folder = TempDir::new().unwrap();
    let outline = folder.path().join("room.csv");
    fs::write(&outline, "x (mm),y (mm)\n0,0\n4000,0\n4000,3000\n0,3000\n").unwrap();
    let more =
        ["--outline", outline.to_str().unwrap(), "--units", "mm", "--kind", "wall", "--pattern", "upright"];
    printed(&new_job(folder.path(), &[&more[..], &["--species", "alder-red"]].concat()));
    let text = fs::read_to_string(folder.path().join("new.ron")).unwrap();
    assert!(text.contains("Wall") && text.contains("alder-red") && text.contains("Millimetres"), "{text}");
    let report: Value =
        serde_json::from_str(printed(&on(&folder.path().join("new.ron"), "assess", &["--json"]))).unwrap();
    assert!((report["layout"]["plan_area_m2"].as_f64().unwrap() - 12.0).abs() < 1e-6);
}

/// Every fault is told once, and nothing is written.
#[test]
fn every_fault_of_a_new_job_is_told() {
    let folder = TempDir::new().unwrap();
    let gaps = folder.path().join("gaps.csv");
    fs::write(&gaps, "joint,gap\nA 2,wide\nA 3,1/16\n,1/16\n").unwrap();
    let more = [
        "--size",
        "18 ft",
        "--kind",
        "floor",
        "--place",
        "Springfield",
        "--species",
        "pine-blue",
        "--visited",
        "soon",
    ];
    let output = new_job(folder.path(), &[&more[..], &["--gaps", gaps.to_str().unwrap()]].concat());
    assert_eq!(output.status.code(), Some(1));
    let told = err(&output);
    for part in
        ["“18 ft”", "“floor”", "Springfield", "“pine-blue”", "“soon”", "gaps.csv, line 2", "gaps.csv, line 4"]
    {
        assert!(told.contains(part), "{part}: {told}");
    }
    assert!(!told.contains("line 3") && told.contains("no job was written"), "{told}");
    assert!(!folder.path().join("new.ron").exists());
    // A joint that is not on the drawing is told when the job is there.
    fs::write(&gaps, "joint,gap\nZ 99,1/16\n").unwrap();
    let output = new_job(folder.path(), &["--size", "18 x 9", "--gaps", gaps.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("Z 99") && folder.path().join("new.ron").exists(), "{}", err(&output));
}
