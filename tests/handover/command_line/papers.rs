//! What `papers` and `templates` write.

use super::*;

/// Every file below a folder.
fn files_below(folder: &Path) -> BTreeSet<PathBuf> {
    if !folder.exists() {
        return BTreeSet::new();
    }
    let entries = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| if path.is_dir() { files_below(&path) } else { [path].into() }).collect()
}

/// The papers of a job by their names in the folder.
fn papers(job: &Path, folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let output = on(job, "papers", &["--out", folder.to_str().unwrap()]);
    let told: Vec<PathBuf> = printed(&output).lines().map(PathBuf::from).collect();
    let written = files_below(folder);
    assert_eq!(told.iter().cloned().collect::<BTreeSet<_>>(), written, "told is not what was written");
    let name = |path: &Path| path.strip_prefix(folder).unwrap().to_string_lossy().replace('\\', "/");
    written.iter().map(|path| (name(path), fs::read(path).unwrap())).collect()
}

/// What wages and profit are is in a folder of its own.
const PAPERS: [&str; 11] = [
    "claim/evidence-sheet.pdf",
    "crew/buying-list.pdf",
    "crew/calendar.ics",
    "crew/crew-card.pdf",
    "crew/follow-up-card.pdf",
    "crew/measuring-sheet.pdf",
    "crew/work-order.pdf",
    "inside/price-sheet.pdf",
    "owner/letter.pdf",
    "owner/owner-page.html",
    "owner/proposal.pdf",
];

#[test]
fn the_papers_are_pdf_and_the_same_each_time() {
    for name in EXAMPLES {
        let folder = TempDir::new().unwrap();
        // The folder is made, and those above it.
        let (first, second) = (folder.path().join("new").join("papers"), folder.path().join("again"));
        let once = papers(&example(name), &first);
        assert_eq!(once.keys().collect::<Vec<_>>(), PAPERS, "{name}");
        for (paper, bytes) in &once {
            let ends: [&[u8]; 2] = match paper.rsplit_once('.').unwrap().1 {
                "html" => [b"<!DOCTYPE html>", b"</html>"],
                "ics" => [b"BEGIN:VCALENDAR\r\n", b"END:VCALENDAR"],
                _ => [b"%PDF", b"%%EOF"],
            };
            assert!(bytes.starts_with(ends[0]), "{name}: {paper}");
            assert!(bytes.trim_ascii_end().ends_with(ends[1]), "{name}: {paper} is cut short");
        }
        let again = papers(&example(name), &second);
        assert!(once == again, "{name}: not the same bytes");
        let over = papers(&example(name), &first);
        assert!(once == over, "{name}: written over, not the same bytes");
    }
}

/// An entry that can't be used holds back what depends on it, with the reason; asked for, drafts are written, each
/// marked.
#[test]
fn papers_that_depend_on_an_error_are_held_back_or_drafts() {
    let folder = TempDir::new().unwrap();
    let job = folder.path().join("broken.ron");
    let text = fs::read_to_string(example("tea_room")).unwrap();
    fs::write(&job, text.replace("width: \"7/64 in\"", "width: \"40 in\"")).unwrap();
    let out_to = |name: &str, more: &[&str]| {
        let folder = folder.path().join(name);
        let output = on(&job, "papers", &[&["--out", folder.to_str().unwrap()], more].concat());
        assert_eq!(output.status.code(), Some(1), "{}", err(&output));
        (err(&output).to_owned(), files_below(&folder))
    };
    let (told, written) = out_to("held", &[]);
    let names: Vec<_> = written.iter().map(|path| path.file_name().unwrap().to_str().unwrap()).collect();
    assert_eq!(names, ["measuring-sheet.pdf"], "{told}");
    assert!(told.contains("Not written: Homeowner’s letter, Proposal") && told.contains("3' 4\""), "{told}");
    let (told, written) = out_to("drafts", &["--draft"]);
    assert_eq!(written.len(), PAPERS.len(), "{told}");
    for path in written.iter().filter(|path| path.extension() == Some(OsStr::new("pdf"))) {
        let text = pdf_extract::extract_text(path).unwrap();
        assert_eq!(text.contains("DRAFT"), !path.ends_with("measuring-sheet.pdf"), "{}", path.display());
    }
    let page = written.iter().find(|path| path.ends_with("owner-page.html")).unwrap();
    assert!(fs::read_to_string(page).unwrap().contains("DRAFT"));
    // What could not be read of a file may be anything.
    fs::write(&job, text.replacen("kind: Slope", "kind: Sloop", 1)).unwrap();
    let (told, written) = out_to("unread", &[]);
    assert!(written.is_empty() && told.contains("Not written"), "{told}");
    assert_eq!(told.matches("“Sloop”").count(), 1, "{told}");
}

/// The calendar has the weeks to seal in and the days to measure again, as the report has them.
#[test]
fn the_calendar_has_the_days_of_the_report() {
    let folder = TempDir::new().unwrap();
    let all = papers(&example("tea_room"), folder.path());
    let calendar = String::from_utf8(all["crew/calendar.ics"].clone()).unwrap().replace("\r\n ", "");
    let report = report("tea_room");
    let compact = |date: &Value| text(date).replace('-', "");
    let (season, section) = (&report["season"], &report["sections"][0]);
    let days = items(
        items(&report["options"]).iter().find(|option| option["chosen"] == true).map(|o| &o["days"]).unwrap(),
    );
    let start = |date: &Value| format!("DTSTART;VALUE=DATE:{}\r\n", compact(date));
    for day in [&days[0]["on"], &season["best_from"], &section["look_again_damp"], &section["look_again_dry"]]
    {
        assert!(calendar.contains(&start(day)), "{day}: {calendar}");
    }
    let last: Date = text(&season["best_to"]).parse().unwrap();
    let end = last.tomorrow().unwrap().to_string().replace('-', "");
    assert!(calendar.contains(&format!("DTEND;VALUE=DATE:{end}\r\n")), "{calendar}");
    assert_eq!(calendar.matches("BEGIN:VEVENT").count(), 4, "{calendar}");
    assert_eq!(calendar.matches("UID:").count(), 4, "{calendar}");
}

/// What was told is kept in the job only when asked for, and stays once a joint was measured again; then the report
/// of what came is among the papers, with the figures of the JSON.
#[test]
fn what_papers_tell_is_kept_and_held_against() {
    let folder = TempDir::new().unwrap();
    let job = folder.path().join("tea_room.ron");
    let out = folder.path().join("papers");
    fs::copy(example("tea_room"), &job).unwrap();
    let papers = |more: &[&str]| on(&job, "papers", &[&["--out", out.to_str().unwrap()], more].concat());
    let before = fs::read_to_string(&job).unwrap();
    assert!(!printed(&papers(&[])).contains("follow-up-report"));
    assert_eq!(fs::read_to_string(&job).unwrap(), before, "nobody asked to keep it");
    printed(&papers(&["--keep"]));
    let kept: Value = serde_json::from_str(printed(&on(&job, "assess", &["--json"]))).unwrap();
    let (told, verdict) = (&kept["promise"], &kept["verdict"]["recommended"]);
    for key in ["lasts_pct", "lasts_low_pct", "lasts_high_pct", "total", "lasts_through"] {
        assert_eq!(told[key], verdict[key], "{key}");
    }
    assert_eq!(told["option"], verdict["method"]);

    // A year later, two joints.
    let text = fs::read_to_string(&job).unwrap();
    let later = r#"later: [(on: "2027-02-20", gaps: [
        (surface: "South slope", joint: "A 2", width: Some("1/8 in")),
        (surface: "South slope", joint: "A 5", width: Some("9/16 in")),
    ])],"#;
    let with_visit = text.replacen("later: [],", later, 1);
    assert_ne!(with_visit, text);
    fs::write(&job, &with_visit).unwrap();
    // What was offered counts from the first visit: it is not offered anew.
    let output = papers(&[]);
    assert!(super::out(&output).contains("follow-up-report.pdf"), "{}", super::out(&output));
    assert!(
        err(&output).contains("measured again") && !super::out(&output).contains("letter.pdf"),
        "{}",
        err(&output)
    );
    let now: Value = serde_json::from_str(printed(&on(&job, "assess", &["--json"]))).unwrap();
    assert_eq!(now["promise"], *told, "what was told stays");
    let report = pdf_extract::extract_text(out.join("owner").join("follow-up-report.pdf")).unwrap();
    let report = report.split_whitespace().collect::<Vec<_>>().join(" ");
    let visit = &items(&now["later"])[0];
    // The owner reads what came, and not what the crew is to look for.
    let (came, _) = super::text(&visit["words"]).split_once('.').unwrap();
    assert!(report.contains(came), "{report}\n{visit}");
    let inside: Vec<bool> =
        items(&visit["readings"]).iter().map(|reading| reading["inside"].as_bool().unwrap()).collect();
    assert!(!inside[1], "{visit}");
    assert_eq!(report.matches("out of range").count(), inside.iter().filter(|inside| !**inside).count());
    let output = papers(&["--keep"]);
    assert!(err(&output).contains("Nothing was kept"), "{}", err(&output));
    assert_eq!(fs::read_to_string(&job).unwrap(), with_visit, "what was told is not told anew");
}

#[test]
fn papers_that_cannot_be_written_are_told() {
    let folder = TempDir::new().unwrap();
    let in_the_way = folder.path().join("file");
    fs::write(&in_the_way, "in the way").unwrap();
    let output = on(&example("tea_room"), "papers", &["--out", in_the_way.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains(in_the_way.to_str().unwrap()), "{}", err(&output));
    assert_eq!(fs::read(&in_the_way).unwrap(), b"in the way");
}

#[test]
fn templates_are_written_used_and_told_about() {
    let folder = TempDir::new().unwrap();
    let templates = folder.path().join("templates");
    let output = run(["templates".as_ref(), "--out".as_ref(), templates.as_os_str()]);
    let paths: Vec<PathBuf> = printed(&output).lines().map(PathBuf::from).collect();
    // Of all but the calendar, and the look and the report of later visits.
    assert_eq!(paths.len(), PAPERS.len() + 1);
    assert!(paths.iter().all(|path| path.is_file()) && paths.contains(&templates.join("look.typ")));
    let papers = folder.path().join("papers");
    let with = |templates: &Path| {
        let more = ["--out", papers.to_str().unwrap(), "--templates", templates.to_str().unwrap()];
        on(&example("tea_room"), "papers", &more)
    };
    printed(&with(&templates));
    // The built-in template is used where one has a fault, and the command does not end well.
    fs::write(templates.join("letter.typ"), "Fine\n#nonsense").unwrap();
    let output = with(&templates);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("letter.typ, line 2: "), "{}", err(&output));
    assert_eq!(out(&output).lines().count(), PAPERS.len());
    // A folder that is not there is not taken for an empty one.
    fs::remove_dir_all(&papers).unwrap();
    let missing = folder.path().join("nowhere");
    let output = with(&missing);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains(missing.to_str().unwrap()), "{}", err(&output));
    assert!(out(&output).is_empty() && !papers.exists());
}

/// What stands in a PDF.
fn pdf(path: &Path) -> String {
    pdf_extract::extract_text_from_mem(&fs::read(path).unwrap()).unwrap()
}

#[test]
fn the_languages_of_the_papers_are_chosen_apart() {
    let folder = TempDir::new().unwrap();
    let job = example(EXAMPLES[0]);
    let to = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    for (owner, crew) in [("en-US", "es-US"), ("es-US", "en-US")] {
        let into = to(owner);
        let chosen = ["--out", &into, "--owner-language", owner, "--crew-language", crew];
        let run = on(&job, "papers", &chosen);
        assert!(run.status.success(), "{}", err(&run));
        let [letter, order] =
            ["owner/letter.pdf", "crew/work-order.pdf"].map(|name| pdf(&Path::new(&into).join(name)));
        assert_eq!(letter.contains("Lo que vimos"), owner == "es-US", "{letter}");
        assert_eq!(letter.contains("What we saw"), owner == "en-US", "{letter}");
        assert_eq!(order.contains("Orden de trabajo"), crew == "es-US", "{order}");
        assert_eq!(order.contains("Work order"), crew == "en-US", "{order}");
        let page = fs::read_to_string(Path::new(&into).join("owner/owner-page.html")).unwrap();
        assert_eq!(page.contains("lang=\"es\""), owner == "es-US");
    }
    let run = on(&job, "papers", &["--out", &to("none"), "--crew-language", "tlh"]);
    assert!(!run.status.success());
    assert!(err(&run).contains("tlh") && err(&run).contains("es-US"), "{}", err(&run));
}

/// Papers of a folder of jobs stay in the folder that was chosen, each job's in one of its own.
#[test]
fn no_name_of_a_job_leads_out_of_the_chosen_folder() {
    let folder = TempDir::new().unwrap();
    let (jobs, out) = (folder.path().join("jobs"), folder.path().join("chosen").join("out"));
    fs::create_dir(&jobs).unwrap();
    // The stem of the first is the folder above; two others differ in their ending alone.
    for name in ["...ron", "..ron", "same.ron"] {
        fs::copy(example("stair_hall"), jobs.join(name)).unwrap();
    }
    let job = gapwright::job::file::load(&example("tea_room")).unwrap().job;
    gapwright::job::file::save(&job, &jobs.join("same.json")).unwrap();
    let run = on(&jobs, "papers", &["--draft", "--out", out.to_str().unwrap()]);
    let below = files_below(folder.path());
    let outside: Vec<_> = below.iter().filter(|p| !p.starts_with(&out) && !p.starts_with(&jobs)).collect();
    assert_eq!(outside, [] as [&PathBuf; 0], "{}", err(&run));
    let letters: Vec<_> = below.iter().filter(|path| path.ends_with("owner/letter.pdf")).collect();
    let read = fs::read_dir(&jobs).unwrap().count();
    assert_eq!(letters.len(), read, "{letters:?} {}", err(&run));
}
