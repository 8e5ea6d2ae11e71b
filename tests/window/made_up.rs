//! The window and the papers in a made-up language: every word of the catalogs accented and a third longer.
//!
//! What then still stands in plain English comes from no catalog, unless it is a name or a source out of the
//! job or the lists of lumber, materials and places, which are data.

use std::collections::BTreeSet;

use crate::driven::{Window, click_first, window};
use crate::made_up_language::{assets, files, made_up, made_up_text};
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::NodeT as _;
use gapwright::job::{demo_job, file};
use gapwright::measure::Units;
use gapwright::papers::{Paper, PaperWords, Papers, Templates};
use gapwright::words::Words;

fn one_line(text: &str) -> String {
    // A line may end after a hyphen.
    text.split_whitespace().collect::<Vec<_>>().join(" ").replace("- ", "-")
}

/// Texts of the data: all that stands in quotes in the lists and in the job, longest first.
fn data() -> Vec<String> {
    let mut texts = files(&assets(), "ron");
    texts.push(file::write(&demo_job()).unwrap());
    let quoted = texts.iter().flat_map(|text| text.split('"').skip(1).step_by(2));
    let mut quoted: Vec<String> = quoted.map(|text| one_line(&text.replace("\\n", " "))).collect();
    // Some go on in a sentence of the catalogs.
    let lower =
        |text: &String| Some(text.chars().next()?.to_lowercase().chain(text.chars().skip(1)).collect());
    quoted.extend(quoted.iter().filter_map(lower).collect::<Vec<String>>());
    quoted.sort_by_key(|text| std::cmp::Reverse(text.len()));
    quoted.retain(|text| text.len() > 2);
    quoted
}

/// Words in plain English that are left in `texts` when those of the data are taken out.
fn plain_words(texts: &[String], data: &[String]) -> BTreeSet<String> {
    // Months and the "and" of lists are ICU's, the handles of panes are egui's own; sides of a surface are
    // part of the labels that joints have in files.
    const NAMES: [&str; 37] = [
        "January",
        "February",
        "March",
        "April",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
        "Jan",
        "Feb",
        "Mar",
        "Apr",
        "May",
        "Jun",
        "Jul",
        "Aug",
        "Sep",
        "Sept",
        "Oct",
        "Nov",
        "Dec",
        "Mon",
        "Tue",
        "Wed",
        "Thu",
        "Fri",
        "Sat",
        "Sun",
        "and",
        "Shift",
        "Resize",
        "panel",
        "side",
        "ridge",
    ];
    let mut found = BTreeSet::new();
    for text in texts {
        let ours = data.iter().fold(one_line(text), |text, known| text.replace(known.as_str(), " "));
        let words: Vec<&str> =
            ours.split(|c: char| !c.is_alphabetic()).filter(|word| !word.is_empty()).collect();
        for (at, word) in words.iter().enumerate() {
            let vowel = word.contains(['a', 'e', 'i', 'o', 'u', 'A', 'E', 'I', 'O', 'U']);
            if word.len() > 2 && word.is_ascii() && vowel && !NAMES.contains(word) {
                let near = &words[at.saturating_sub(4)..words.len().min(at + 5)];
                found.insert(format!("{word} in {}", near.join(" ")));
            }
        }
    }
    found
}

/// All that a screen reader could say of the window.
fn said(window: &Window) -> Vec<String> {
    let nodes = window.root().children_recursive().map(|node| node.accesskit_node());
    // Runs are rows of what their label says whole.
    let nodes = nodes.filter(|node| node.role() != Role::TextRun);
    nodes.flat_map(|node| [node.label(), node.value()]).flatten().collect()
}

#[test]
fn the_window_speaks_another_language_throughout() {
    let (language, data) = (made_up(), data());
    let mut window = window(demo_job());
    window.state_mut().speak(language);
    window.run();
    let mut texts = said(&window);
    for room in ["Why", "Options", "Price", "Papers", "Follow-up", "Catalog", "Measure"] {
        click_first(&mut window, &made_up_text(room));
        texts.extend(said(&window));
    }
    for tool in ["Shape", "Trim break", "Window/door", "Photo"] {
        click_first(&mut window, &made_up_text(tool));
        texts.extend(said(&window));
    }
    for menu in ["File", "Edit", "View"] {
        click_first(&mut window, &made_up_text(menu));
        texts.extend(said(&window));
        window.key_press(Key::Escape);
        window.run();
    }
    window.key_press_modifiers(Modifiers::COMMAND, Key::H);
    window.run();
    for _ in 0..4 {
        texts.extend(said(&window));
        window.key_press(Key::ArrowRight);
        window.run();
    }
    assert!(texts.iter().any(|text| text.contains('ø')));
    assert_eq!(plain_words(&texts, &data), BTreeSet::new());
}

#[test]
fn the_papers_speak_another_language_throughout() {
    let (language, data) = (made_up(), data());
    for units in [Units::Inches, Units::Millimeters] {
        let job = gapwright::job::Job { units, ..demo_job() };
        let found = gapwright::assess::assess(job, gapwright::job::Catalog::built_in());
        let words = || Words::new(language, units, "$");
        let words = PaperWords { owner: words(), crew: words() };
        let papers = Papers::with(&found, Templates::default(), &words);
        for paper in Paper::ALL {
            let text = papers.typeset(paper).unwrap().text();
            let words = plain_words(&[text], &data);
            assert_eq!(words, BTreeSet::new(), "{paper:?}");
        }
    }
}
