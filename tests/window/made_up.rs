//! The window and the papers in a made-up language: every word of the catalogs accented and a third longer.
//!
//! What then still stands in plain English comes from no catalog, unless it is a name or a source out of the
//! job or the lists of lumber, materials and places, which are data.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use crate::driven::{Window, click_first, window};
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::NodeT as _;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use gapwright::job::{demo_job, file};
use gapwright::measure::Units;
use gapwright::papers::{Paper, PaperWords, Papers, Templates};
use gapwright::words::{Language, Words};

fn assets() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("assets")
}

fn files(folder: &Path, ending: &str) -> Vec<String> {
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let of_kind = files.filter(|path| path.extension().is_some_and(|kind| kind == ending));
    of_kind.map(|path| std::fs::read_to_string(path).unwrap()).collect()
}

fn made_up_text(text: &str) -> String {
    let mut made = String::new();
    let mut letters = 0;
    for c in text.chars().chain(['\0']) {
        if c.is_alphabetic() {
            letters += 1;
        } else {
            made.extend(std::iter::repeat_n('ø', letters / 3));
            letters = 0;
        }
        let at = "aeiouyAEIOUY".chars().position(|plain| plain == c);
        made.extend(at.map_or(Some(c), |at| "áéíóúýÁÉÍÓÚÝ".chars().nth(at)).filter(|c| *c != '\0'));
    }
    made
}

fn make_up(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = made_up_text(value),
            PatternElement::Placeable { expression } => make_up_expression(expression),
        }
    }
}

fn make_up_expression(expression: &mut Expression<String>) {
    match expression {
        Expression::Select { variants, .. } => variants.iter_mut().for_each(|one| make_up(&mut one.value)),
        Expression::Inline(InlineExpression::Placeable { expression }) => make_up_expression(expression),
        Expression::Inline(_) => {}
    }
}

fn made_up_catalog(text: String) -> String {
    let mut catalog = fluent_syntax::parser::parse(text).unwrap();
    for entry in &mut catalog.body {
        let (value, attributes) = match entry {
            Entry::Message(message) => (message.value.as_mut(), &mut message.attributes),
            Entry::Term(term) => (Some(&mut term.value), &mut term.attributes),
            _ => continue,
        };
        value
            .into_iter()
            .chain(attributes.iter_mut().map(|attribute| &mut attribute.value))
            .for_each(make_up);
    }
    fluent_syntax::serializer::serialize(&catalog)
}

/// The language, which lasts as long as the program.
fn made_up() -> &'static Language {
    let catalogs = files(&assets().join("words/en-US"), "ftl").into_iter().map(made_up_catalog);
    Box::leak(Box::new(Language::new("en-US", catalogs).unwrap()))
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
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
    const NAMES: [&str; 18] = [
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec", "and", "Shift",
        "Resize", "panel", "side", "ridge",
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
