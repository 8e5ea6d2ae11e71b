//! How commands end: faults, usage, help, folders of jobs.

use super::*;

/// Every way to read a job, with its arguments after the job; papers go to `folder`.
fn commands(folder: &Path) -> [(&'static str, Vec<&str>); 6] {
    [
        ("assess", vec![]),
        ("assess", vec!["--json"]),
        ("check", vec![]),
        ("joints", vec!["--csv"]),
        ("year", vec!["--csv"]),
        ("papers", vec!["--draft", "--out", folder.to_str().unwrap()]),
    ]
}

/// A job file made of the tea room's by `change`, in a folder of its own.
fn changed(change: impl FnOnce(&str) -> String) -> (TempDir, PathBuf) {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("changed.ron");
    fs::write(&path, change(&fs::read_to_string(example("tea_room")).unwrap())).unwrap();
    (folder, path)
}

#[test]
fn a_job_with_errors_is_worked_out_and_ends_with_1() {
    let (folder, path) = changed(|text| text.replacen("pine-western-white", "Balsa", 1));
    for (command, more) in commands(&folder.path().join("papers")) {
        let output = on(&path, command, &more);
        assert_eq!(output.status.code(), Some(1), "{command} {more:?}: {}", err(&output));
        assert!(!out(&output).is_empty(), "{command} {more:?} prints nothing");
    }
    for command in ["assess", "check"] {
        let words = on(&path, command, &[]);
        assert!(out(&words).contains("error: South slope, section A: Species: “Balsa”"), "{}", out(&words));
    }
}

#[test]
fn a_warning_is_no_error() {
    let (_folder, path) = changed(|text| text.replacen("Some(8.5)", "Some(35.0)", 1));
    let output = on(&path, "check", &[]);
    assert_eq!(output.status.code(), Some(0));
    assert!(out(&output).contains("warning: Moisture reading 1: "), "{}", out(&output));
}

#[test]
fn a_file_read_in_part_says_what_is_left_out_and_ends_with_1() {
    let (folder, path) = changed(|text| text.replacen("width: \"1/8 in\"", "width: \"wide\"", 1));
    let line = fs::read_to_string(&path).unwrap().lines().position(|line| line.contains("wide")).unwrap() + 1;
    for (command, more) in commands(&folder.path().join("papers")) {
        let output = on(&path, command, &more);
        assert_eq!(output.status.code(), Some(1), "{command} {more:?}");
        assert!(err(&output).contains(&format!("line {line}, ")), "{command}: {}", err(&output));
        assert!(!out(&output).is_empty(), "{command} {more:?} prints nothing");
    }
}

#[test]
fn a_file_that_cannot_be_read_is_named_and_ends_with_1() {
    let folder = TempDir::new().unwrap();
    let write = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    };
    let newer = write("newer.ron", b"Job(version: 2)");
    let papers = folder.path().join("papers");
    for path in [folder.path().join("none.ron"), write("binary.ron", &[0, 159, 146, 150]), newer] {
        let name = path.file_name().unwrap().to_str().unwrap();
        for (command, more) in commands(&papers) {
            let output = on(&path, command, &more);
            assert_eq!(output.status.code(), Some(1), "{command} {name}");
            assert!(err(&output).contains(name), "{command} {name}: {}", err(&output));
            assert_eq!(out(&output), "", "{command} {name}");
        }
    }
    assert!(!papers.exists(), "papers of nothing were written");
}

#[test]
fn wrong_usage_ends_with_2() {
    let job = example("tea_room");
    let job = job.to_str().unwrap();
    for wrong in [
        vec!["assess"],
        vec!["assess", "--nonsense", job],
        vec!["assess", job, job],
        vec!["check"],
        vec!["joints", job],
        vec!["joints", "--csv"],
        vec!["year", job],
        vec!["papers", job],
        vec!["papers", job, "--out"],
        vec!["--nonsense"],
        vec![job, job],
    ] {
        let output = run(&wrong);
        assert_eq!(output.status.code(), Some(2), "{wrong:?}");
        assert!(err(&output).contains("--help"), "{wrong:?}: {}", err(&output));
        assert_eq!(out(&output), "", "{wrong:?}");
    }
}

#[test]
fn help_names_every_command() {
    let help = run(["--help"]);
    for command in ["assess", "check", "joints", "year", "papers"] {
        assert!(printed(&help).contains(command), "{command}");
    }
    assert!(printed(&run(["--version"])).contains(env!("CARGO_PKG_VERSION")));
}

// Elsewhere there is always a display, and a window would open.
#[cfg(all(unix, not(target_os = "macos")))]
mod without_a_display {
    use super::*;

    #[test]
    fn the_answer_of_the_demo_is_printed() {
        let output = run([""; 0]);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        assert!(err(&output).contains("no display"), "{}", err(&output));
        assert_eq!(out(&output), printed(&on(&example("tea_room"), "assess", &[])));
    }

    #[test]
    fn the_answer_of_the_job_named_is_printed() {
        let output = run([example("porch_room")]);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        assert!(err(&output).contains("no display"), "{}", err(&output));
        assert_eq!(out(&output), printed(&on(&example("porch_room"), "assess", &[])));
        let missing = run(["none.ron"]);
        assert_eq!(missing.status.code(), Some(1));
        assert!(err(&missing).contains("none.ron"), "{}", err(&missing));
        assert_eq!(out(&missing), "");
    }
}

/// Everything for other programs: each file is what its name says.
#[test]
fn a_job_is_exported_whole() {
    let folder = TempDir::new().unwrap();
    let output = on(&example("tea_room"), "export", &["--out", folder.path().to_str().unwrap()]);
    assert!(printed(&output).lines().count() >= 12);
    let read = |name: &str| fs::read(folder.path().join(name)).unwrap();
    let json: Value = serde_json::from_slice(&read("assessment.json")).unwrap();
    assert_eq!(json, report("tea_room"));
    for (table, head) in [("joints.csv", "surface"), ("tasks.csv", "task"), ("materials.csv", "name")] {
        let text = String::from_utf8(read(table)).unwrap();
        assert!(text.starts_with(head) && text.lines().count() > 5, "{table}");
    }
    assert!(read("surface-0.png").starts_with(b"\x89PNG") && read("year.png").len() > 5_000);
    assert!(String::from_utf8(read("surface-1.svg")).unwrap().contains("<svg"));
    // The drawing read again has the outlines of both slopes, 18 by 9-1/2 feet.
    let drawn = gapwright::surface::outlines::read_outlines(
        "drawing.dxf",
        &read("drawing.dxf"),
        gapwright::surface::outlines::FileUnit::Millimeters,
    )
    .unwrap();
    let sides = |ring: &[[f64; 2]]| {
        let span = |at: usize| {
            let values = || ring.iter().map(|point| point[at]);
            values().fold(f64::NEG_INFINITY, f64::max) - values().fold(f64::INFINITY, f64::min)
        };
        (span(0), span(1))
    };
    let slopes = drawn.outlines.iter().filter(|outline| {
        let (width, height) = sides(&outline.ring);
        (width - 5.4864).abs() < 1e-3 && (height - 2.8956).abs() < 1e-3
    });
    assert_eq!(slopes.count(), 2);
}

#[test]
fn a_folder_of_jobs_gives_a_line_each() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples");
    let output = on(&folder, "assess", &[]);
    assert_eq!(String::from_utf8_lossy(&output.stderr), "4 of 4 jobs\n");
    let table = String::from_utf8(output.stdout).unwrap();
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 4);
    for row in &rows {
        let name = row[0].trim_end_matches(".ron");
        assert_eq!(Some(&row[1]), report(name)["title"].as_str());
        assert_eq!(Some(&row[7]), report(name)["answer"].as_str());
        // A job about boards to come has nothing to choose from.
        let chosen = items(&report(name)["options"]).iter().find(|o| o["chosen"] == true).cloned();
        assert_eq!(chosen.is_none(), name == "boathouse_delivery");
        let total = chosen.map_or(Value::from(""), |chosen| chosen["price"]["total"].clone());
        assert_eq!(Some(&row[4]), total.as_str());
    }
}
