//! The homeowner's page: its figures are those of the JSON, nothing typed becomes markup, and it works in a
//! browser without asking for anything.

use std::fs;
use std::path::Path;
use std::process::Command;

use gapwright::assess::assess;
use gapwright::export::{Report, year_csv};
use gapwright::job::{Catalog, Job, LetterPart, OwnWords, file};
use gapwright::measure::{Percent, Units};
use gapwright::papers::{PaperError, PaperWords, Papers, Templates};
use gapwright::repair::MethodId;
use serde_json::{Value, json};

const EXAMPLES: [&str; 3] = [
    include_str!("../../examples/tea_room.ron"),
    include_str!("../../examples/stair_hall.ron"),
    include_str!("../../examples/porch_room.ron"),
];

const HOSTILE: &str = "</script><img src=x onerror=\"parent.hacked=1\"><!-- '\u{2028}\u{2029} & {{ 7 }} \\";

fn example(at: usize) -> Job {
    file::read(EXAMPLES[at]).unwrap().job
}

fn page(job: &Job) -> String {
    let found = assess(job.clone(), Catalog::built_in());
    let made = Papers::new(&found).owner_page().unwrap();
    assert!(made.fault.is_none(), "{:?}", made.fault);
    made.html
}

/// The data within a page.
fn data(page: &str) -> Value {
    let (_, rest) = page.split_once("<script type=\"application/json\" id=\"data\">").unwrap();
    serde_json::from_str(rest.split_once("</script>").unwrap().0).unwrap()
}

/// A job whose every name is this text.
fn named(name: &str) -> Job {
    let mut job = example(0);
    (job.title, job.owner, job.address) = (name.to_owned(), name.to_owned(), name.to_owned());
    job.contractor.name = name.to_owned();
    job.contractor.details = name.to_owned();
    job.contractor.signs = name.to_owned();
    job.plan.prices.currency = name.to_owned();
    job.wording = vec![OwnWords { part: LetterPart::Plan, text: name.to_owned(), draft: String::new() }];
    job.rename_surface(0, name);
    job.rename_section(0, 0, name);
    job
}

#[test]
fn what_the_page_draws_is_what_the_report_says() {
    for at in 0..EXAMPLES.len() {
        for (method, units) in
            [(None, Units::Inches), (None, Units::Millimeters), (Some(MethodId::Replace), Units::Inches)]
        {
            let mut job = example(at);
            job.units = units;
            job.plan.chosen = method.unwrap_or(job.plan.chosen);
            let found = assess(job.clone(), Catalog::built_in());
            let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
            let page = page(&job);
            let drawn = data(&page);
            let chosen = report["options"].as_array().unwrap().iter().find(|o| o["chosen"] == true).unwrap();
            let figures = &drawn["figures"];
            for (own, theirs) in [
                (&figures["method"], &chosen["method"]),
                (&figures["total"], &chosen["price"]["total"]),
                (&figures["owner"], &chosen["price"]["owner"]),
                (&figures["currency"], &chosen["price"]["currency"]),
                (&figures["visited"], &report["visited"]),
                (&drawn["joint"]["days_from_visit"], &report["typical_joint"]["days_from_visit"]),
                (&drawn["joint"]["gap_mm"], &report["typical_joint"]["gap_mm"]),
            ] {
                assert_eq!(own, theirs, "{}", job.title);
                assert!(!own.is_null());
            }
            let chance =
                (figures["callback_pct"].as_f64().unwrap(), chosen["callback_pct"].as_f64().unwrap());
            assert!((chance.0 - chance.1).abs() < 0.06, "{chance:?}");
            let after = drawn["joint"]["after"].as_array().unwrap();
            let of = |key: &str| Value::Array(after.iter().map(|week| week[key].clone()).collect());
            assert_eq!(of("gap_mm"), report["typical_joint"]["repaired_gap_mm"], "{}", job.title);
            assert_eq!(of("open_mm"), report["typical_joint"]["repaired_open_mm"], "{}", job.title);
            assert!(after.iter().any(|week| !week.is_null()) && after[0].is_null());
            // As the papers write it.
            let (units, cents) = chosen["price"]["total"].as_str().unwrap().split_once('.').unwrap();
            let (thousands, rest) = units.split_at(units.len() - 3);
            assert!(page.contains(&format!("{thousands},{rest}.{cents}")), "{}: {units}.{cents}", job.title);
        }
    }
}

/// The gaps from the visit on are those of the year's table, and the first of the days is the install's.
#[test]
fn the_gaps_are_those_of_the_years_table_and_begin_at_the_install() {
    for at in 0..EXAMPLES.len() {
        let job = example(at);
        let found = assess(job.clone(), Catalog::built_in());
        let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
        let joint = &report["typical_joint"];
        let table = year_csv(&found).unwrap();
        let mut rows = csv::Reader::from_reader(table.as_bytes());
        let name = format!(
            "{}/{} mean_gap_mm",
            joint["surface"].as_str().unwrap(),
            joint["section"].as_str().unwrap()
        );
        let column = rows.headers().unwrap().iter().position(|head| head == name).unwrap();
        let days: Vec<i64> =
            joint["days_from_visit"].as_array().unwrap().iter().map(|d| d.as_i64().unwrap()).collect();
        let mut seen = 0;
        for (day, row) in (0_i64..).zip(rows.records().map(Result::unwrap)) {
            let Some(week) = days.iter().position(|known| *known == day) else { continue };
            let gap: f64 = row[column].parse().unwrap();
            assert!((joint["gap_mm"][week].as_f64().unwrap() - gap).abs() < 1e-9, "{}, day {day}", job.title);
            seen += 1;
        }
        assert!(seen >= 52, "{seen}");
        let installed = job.installed.unwrap().date().until(job.visited).unwrap().get_days();
        assert_eq!(days[0], -i64::from(installed), "{}", job.title);
        assert!(days.len() < 430 && days.windows(2).all(|two| two[1] > two[0] && two[1] - two[0] < 12));
    }
}

/// The marks of a text that a reader of HTML takes for elements.
fn elements(page: &str) -> Vec<&str> {
    let tags = page
        .split('<')
        .skip(1)
        .filter(|rest| rest.starts_with(|c: char| c.is_ascii_alphabetic() || "/!".contains(c)));
    tags.map(|rest| rest.split(|c: char| c.is_whitespace() || c == '>').next().unwrap()).collect()
}

#[test]
fn hostile_names_leave_the_page_as_it_is_with_harmless_ones() {
    let (plain, hostile) = (page(&named("Thorne")), page(&named(HOSTILE)));
    assert_eq!(elements(&hostile), elements(&plain));
    assert!(!hostile.split_once("<script").unwrap().1.contains('\u{2028}'));
    assert_eq!(data(&hostile)["figures"]["currency"], HOSTILE);
    assert!(hostile.contains("default-src 'none'") && hostile.contains("script-src 'sha256-"));
    // A name that is looked up nowhere.
    let plain = plain.replace("http://www.w3.org/2000/svg", "");
    for request in ["http:", "https:", "url(", "@import", "src=\"/"] {
        assert!(!plain.contains(request), "{request}");
    }
}

#[test]
fn drafts_and_what_is_advised_against_say_so_above_everything_else() {
    let sound = page(&example(0));
    assert!(!sound.contains("DRAFT") && !sound.contains("id=\"against\"") && sound.contains("We warrant"));
    let mut broken = example(0);
    broken.plan.prices.overhead = Percent::pct(900.0);
    for job in [broken, Job::default()] {
        let draft = page(&job);
        assert!(draft.find("DRAFT").unwrap() < draft.find("<header").unwrap());
        assert!(!draft.contains("We warrant"));
    }
    let mut against = example(2);
    against.plan.chosen = MethodId::Reseal;
    let against = page(&against);
    assert!(against.find("We advise against this repair").unwrap() < against.find("<header").unwrap());
    assert!(!against.contains("We warrant") && !against.contains("class=\"tag\""));
    // It stands among those that the letter compares, four in all.
    assert_eq!(against.matches("class=\"price\"").count(), 4);
}

#[test]
fn a_template_of_ones_own_makes_the_page_and_its_faults_are_told() {
    let folder = tempfile::tempdir().unwrap();
    let found = assess(named(HOSTILE), Catalog::built_in());
    let made = |text: &str| {
        fs::write(folder.path().join("owner-page.html"), text).unwrap();
        let templates = Templates::in_folder(folder.path());
        Papers::with(&found, templates, &PaperWords::us_english(&found.job)).owner_page().unwrap()
    };
    let own = made("<p>{{ title }}</p>");
    assert!(own.fault.is_none() && own.html.matches('<').count() == 2, "{}", own.html);
    let faulty = made("<p>\n{{ no_such_thing }}</p>");
    assert!(matches!(faulty.fault, Some(PaperError::Template { line: Some(2), .. })), "{:?}", faulty.fault);
    assert!(faulty.html.starts_with("<!DOCTYPE html>"));
}

/// What a page is asked in the browser, and answers.
const ASKED: &str = r#"
const answers = [];
for (const { page, width } of pages) {
  const frame = document.createElement("iframe");
  frame.style.cssText = `width:${width}px;height:740px;border:0`;
  frame.srcdoc = page;
  frame.onload = () => {
    const own = frame.contentDocument, slider = own.getElementById("when");
    const left = () => Number(/translate\((\S+) /.exec(own.getElementById("left").getAttribute("transform"))[1]);
    const at = week => { slider.value = week; slider.dispatchEvent(new Event("input", { bubbles: true })); return left(); };
    const stops = [...own.querySelectorAll(".stop")];
    const nothing = own.querySelector('input[value="before"]');
    if (nothing) nothing.click();
    const room = own.documentElement.clientWidth;
    const moved = pages.length && [...Array(Number(slider.max) + 1).keys()].map(at);
    const said = slider.getAttribute("aria-valuetext");
    stops[0].click();
    answers.push({
      live: own.documentElement.classList.contains("live"),
      width, wide: own.documentElement.scrollWidth,
      over: [...own.body.querySelectorAll("*")].filter(e => !e.closest("svg") && e.getBoundingClientRect().right > room + 0.5).map(e => e.tagName + "." + e.className),
      moved, said, stopped: Number(slider.value), first: Number(stops[0].value),
      requests: frame.contentWindow.performance.getEntriesByType("resource").length,
      small: [...own.querySelectorAll("button, input[type=range]")].filter(e => e.getBoundingClientRect().height < 44).length,
      title: own.title,
    });
    if (answers.length === pages.length) {
      console.log("all asked");
      document.body.textContent = JSON.stringify({ answers, hacked: "hacked" in window });
    }
  };
  document.body.append(frame);
}
"#;

/// Opens pages in a browser of the machine; gives what they answer and what stood in the console. `None`
/// where there is no browser.
fn in_the_browser(folder: &Path, pages: &[(String, u32)]) -> Option<(Value, Vec<String>)> {
    let pages: Vec<Value> =
        pages.iter().map(|(page, width)| json!({ "page": page, "width": width })).collect();
    let pages = json!(pages).to_string().replace('<', "\\u003c");
    let asking =
        format!("<!DOCTYPE html><meta charset=utf-8><body><script>const pages = {pages};{ASKED}</script>");
    let path = folder.join("asking.html");
    fs::write(&path, asking).unwrap();
    let browser = Command::new("chromium")
        .args([
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--enable-logging=stderr",
        ])
        .args(["--no-first-run", "--virtual-time-budget=4000", "--dump-dom"])
        .arg(format!("--user-data-dir={}", folder.join("profile").display()))
        .arg(format!("file://{}", path.display()))
        .env("HOME", folder)
        .output();
    let Ok(output) = browser else {
        println!("skipped: no chromium is installed");
        return None;
    };
    let (shown, logged) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    let answer = shown.split_once("<body>").and_then(|(_, rest)| rest.split_once("</body>"));
    let answer =
        answer.map(|(answer, _)| answer.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"));
    let answer = serde_json::from_str(&answer.unwrap_or_default());
    let console = logged.lines().filter(|line| line.contains("CONSOLE")).map(str::to_owned).collect();
    Some((answer.unwrap_or_else(|error| panic!("{error}: {shown}\n{logged}")), console))
}

/// In a browser the slider moves the gap, nothing is wider than a phone, nothing is asked of anyone, and
/// nothing goes wrong.
#[test]
fn the_page_works_on_a_phone_and_asks_for_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let mut pages: Vec<(String, u32)> =
        (0..3).flat_map(|at| [360, 1280].map(|width| (page(&example(at)), width))).collect();
    let long = "The-house-at-the-far-end-of-the-lane-with-the-tea-room-upstairs-and-the-landing";
    pages.push((page(&named(long)), 360));
    pages.push((page(&named(HOSTILE)), 360));
    let drawn: Vec<Value> = pages.iter().map(|(page, _)| data(page)).collect();
    let Some((found, console)) = in_the_browser(folder.path(), &pages) else { return };
    assert!(console.len() == 1 && console[0].contains("all asked"), "{console:#?}");
    assert_eq!(found["hacked"], false);
    let answers = found["answers"].as_array().unwrap();
    assert_eq!(answers.len(), pages.len());
    let mut by_title = 0;
    for answer in answers {
        assert!(answer["wide"].as_u64() <= answer["width"].as_u64(), "{answer}");
        assert_eq!(answer["over"], json!([]), "{answer}");
        assert_eq!(
            (&answer["live"], &answer["requests"], &answer["small"]),
            (&json!(true), &json!(0), &json!(0)),
            "{answer}"
        );
        assert_eq!(answer["stopped"], answer["first"]);
        assert!(!answer["said"].as_str().unwrap().is_empty());
        // Half of the gap of each week, on either side of the middle.
        let moved: Vec<f64> =
            answer["moved"].as_array().unwrap().iter().map(|at| at.as_f64().unwrap()).collect();
        let same = |own: &&Value| {
            let gaps = own["joint"]["gap_mm"].as_array().unwrap();
            gaps.len() == moved.len()
                && gaps.iter().zip(&moved).all(|(gap, at)| (gap.as_f64().unwrap() + 2.0 * at).abs() < 2e-3)
        };
        by_title += usize::from(drawn.iter().any(|own| same(&own)));
    }
    assert_eq!(by_title, pages.len(), "a slider moved something else than its gaps");
}
