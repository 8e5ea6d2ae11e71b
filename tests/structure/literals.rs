//! No text that a person reads stands in the code of the window, the papers or the command line: it comes
//! from the catalogs.
//!
//! What a literal is for is guessed from the call it stands in and from how it reads: anything with a
//! letter that is handed to a widget is a fault, and so is anything that reads as words and is neither an
//! id, nor for the log, nor for whoever mends a crash.

use std::path::{Path, PathBuf};

use proc_macro2::{Delimiter, Group, TokenStream, TokenTree};

use super::{files, root};

/// Methods, functions and types that show what they are handed, or have it read out.
const SHOWING: [&str; 38] = [
    ".label",
    ".button",
    ".small_button",
    ".menu_button",
    ".heading",
    ".checkbox",
    ".radio",
    ".selectable_label",
    ".collapsing",
    ".on_hover_text",
    ".on_disabled_hover_text",
    ".hint_text",
    ".selected_text",
    ".shortcut_text",
    ".accessible_name",
    ".alt_text",
    ".small",
    ".strong",
    ".fault",
    ".problem",
    ".figure",
    ".date_entry",
    ".number_entry",
    "RichText::new",
    "Label::new",
    "Button::new",
    "Button::selectable",
    "CollapsingHeader::new",
    "Toast::good",
    "Toast::fault",
    "heading",
    "remark",
    "term",
    "title",
    "choose",
    "multiline",
    "text_entry",
    "entry",
];

/// Calls whose literals nobody reads in the window: ids, names of panes, curves, textures and threads, the log, what
/// a crash says, what a file of another program begins with.
const UNREAD: [&str; 42] = [
    ".request_discard",
    "panic!",
    "unreachable!",
    "assert!",
    "assert_eq!",
    "debug_assert!",
    "tracing::error!",
    "tracing::warn!",
    "tracing::info!",
    "tracing::debug!",
    "tracing::trace!",
    "include_bytes!",
    "include_str!",
    ".expect",
    ".name",
    ".starts_with",
    ".strip_prefix",
    ".id_salt",
    ".push_id",
    ".with",
    ".make_persistent_id",
    ".load_texture",
    "ComboBox::from_id_salt",
    "Id::new",
    "Id::unique",
    "Grid::new",
    "Plot::new",
    "Line::new",
    "VLine::new",
    "FilledArea::new",
    "Panel::top",
    "Panel::bottom",
    "Panel::left",
    "Panel::right",
    "Worker::new",
    "Worker::start",
    "Error::custom",
    "modal",
    "side_pane",
    "kept",
    "keep",
    "scroll",
];

/// Calls that hand on what they are handed.
const PASSING: [&str; 6] = ["format!", "vec!", "Some", "Ok", "String::from", "Cow::from"];

/// Names that are the same in every language.
const NAMES: [&str; 4] = ["Gapwright", "Inter", "Inter SemiBold", "Hack"];

/// Words before a bracket that are no call.
const KEYWORDS: [&str; 10] = ["if", "match", "return", "in", "let", "mut", "move", "as", "else", "while"];

/// The literals of a code that a person would read.
fn read_by_people(code: &str) -> Vec<String> {
    let tokens: TokenStream = code.parse().unwrap();
    let mut faults = Vec::new();
    walk(tokens, &mut Vec::new(), &mut faults);
    faults
}

/// Goes through tokens that stand in these calls, the outermost first.
fn walk(tokens: TokenStream, calls: &mut Vec<String>, faults: &mut Vec<String>) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let mut at = 0;
    while let Some(token) = tokens.get(at) {
        if let Some((end, test)) = attribute(&tokens, at) {
            at = if test { after_item(&tokens, end) } else { end };
            continue;
        }
        match token {
            TokenTree::Group(group) => {
                let call = callee(&tokens[..at], group);
                let called = call.is_some();
                calls.extend(call);
                walk(group.stream(), calls, faults);
                calls.truncate(calls.len() - usize::from(called));
            }
            TokenTree::Literal(literal) => {
                let text = literal.to_string();
                if text.starts_with(['"', 'r']) && is_read(&text, calls) {
                    faults.push(text);
                }
            }
            TokenTree::Ident(_) | TokenTree::Punct(_) => {}
        }
        at += 1;
    }
}

/// Where an attribute that begins here ends, and whether it says that what follows is for tests only.
fn attribute(tokens: &[TokenTree], at: usize) -> Option<(usize, bool)> {
    let is = |token: &TokenTree, c: char| matches!(token, TokenTree::Punct(punct) if punct.as_char() == c);
    if !is(tokens.get(at)?, '#') {
        return None;
    }
    let body = if is(tokens.get(at + 1)?, '!') { at + 2 } else { at + 1 };
    match tokens.get(body)? {
        TokenTree::Group(group) if group.delimiter() == Delimiter::Bracket => {
            let text = group.stream().to_string().replace(' ', "");
            Some((body + 1, text == "cfg(test)"))
        }
        _ => None,
    }
}

/// Where the item that begins here ends: behind its braces or its semicolon.
fn after_item(tokens: &[TokenTree], at: usize) -> usize {
    let ends = |token: &TokenTree| match token {
        TokenTree::Group(group) => group.delimiter() == Delimiter::Brace,
        TokenTree::Punct(punct) => punct.as_char() == ';',
        _ => false,
    };
    tokens[at..].iter().position(ends).map_or(tokens.len(), |length| at + length + 1)
}

/// What is called with this group, by the tokens before it: `.method`, `Type::function` or `macro!`.
fn callee(before: &[TokenTree], group: &Group) -> Option<String> {
    let (last, rest) = before.split_last()?;
    if let (TokenTree::Punct(punct), true) = (last, !rest.is_empty())
        && punct.as_char() == '!'
    {
        return path(rest).map(|name| name + "!");
    }
    (group.delimiter() == Delimiter::Parenthesis).then(|| path(before)).flatten()
}

/// The path that these tokens end with, at most its last two parts; with a dot before it if it is a method.
fn path(tokens: &[TokenTree]) -> Option<String> {
    let ident = |at: usize| match tokens.get(at) {
        Some(TokenTree::Ident(ident)) => Some(ident.to_string()),
        _ => None,
    };
    let punct =
        |at: usize, c: char| matches!(tokens.get(at), Some(TokenTree::Punct(punct)) if punct.as_char() == c);
    let end = tokens.len().checked_sub(1)?;
    let name = ident(end).filter(|name| !KEYWORDS.contains(&name.as_str()))?;
    if end >= 1 && punct(end - 1, '.') {
        return Some(format!(".{name}"));
    }
    let qualified = end >= 3 && punct(end - 1, ':') && punct(end - 2, ':');
    match qualified.then(|| ident(end - 3)).flatten() {
        Some(of) => Some(format!("{of}::{name}")),
        None => Some(name),
    }
}

/// Whether a person would read this literal in these calls.
fn is_read(literal: &str, calls: &[String]) -> bool {
    let text = literal.trim_start_matches('r').trim_matches('#').trim_matches('"');
    // What goes wrong on the command line is said behind the program's name.
    let text = text.strip_prefix("gapwright: ").unwrap_or(text);
    if NAMES.contains(&text) || calls.iter().any(|call| UNREAD.contains(&call.as_str())) {
        return false;
    }
    let inner = calls.iter().rfind(|call| !PASSING.contains(&call.as_str()));
    let shown = inner.is_some_and(|call| SHOWING.contains(&call.as_str()));
    let (plain, filled) = (with_values(text, ""), with_values(text, "0"));
    (shown && plain.contains(char::is_alphabetic)) || reads_as_words(&filled)
}

/// The text with `value` in place of what stands in braces, and blanks in place of escapes.
fn with_values(text: &str, value: &str) -> String {
    let mut shown = String::new();
    let mut rest = text;
    while let Some((before, inside)) = rest.split_once('{') {
        shown.push_str(before);
        shown.push_str(value);
        rest = inside.split_once('}').map_or("", |(_, after)| after);
    }
    shown.push_str(rest);
    shown.replace("\\n", " ").replace("\\\"", " ")
}

/// Whether a text begins like a sentence or a label, or has a word beside another word or a value.
fn reads_as_words(text: &str) -> bool {
    // Code for the typesetter.
    if text.starts_with('#') {
        return false;
    }
    let mut start = text.chars();
    let capital =
        start.next().is_some_and(char::is_uppercase) && start.next().is_some_and(char::is_lowercase);
    let is_word = |part: &str| {
        let part = part.trim_matches(|c: char| c.is_ascii_punctuation() || c == '…');
        part.chars().count() > 1 && part.chars().all(|c| c.is_alphabetic() || c == '\'' || c == '’')
    };
    let parts: Vec<&str> = text.split_whitespace().collect();
    let beside = parts.windows(2).any(|two| {
        (is_word(two[0]) && two[1].contains(char::is_alphanumeric))
            || (is_word(two[1]) && two[0].contains(char::is_alphanumeric))
    });
    capital || beside
}

#[test]
fn no_text_for_people_stands_in_the_code() {
    let source = root().join("src");
    let folders = ["app", "papers", "cli"].map(|folder| files(&source.join(folder), "rs"));
    let all: Vec<PathBuf> = folders.into_iter().flatten().chain([source.join("main.rs")]).collect();
    let mut faults = Vec::new();
    for path in &all {
        let code = std::fs::read_to_string(path).unwrap();
        let shown: &Path = path.strip_prefix(&source).unwrap();
        let found = read_by_people(&code).into_iter();
        faults.extend(found.map(|text| format!("src/{}: {text}", shown.display())));
    }
    assert!(faults.is_empty(), "these texts belong in assets/words:\n{}", faults.join("\n"));
}

/// The guess itself: what must be found, and what must be left alone.
#[test]
fn text_for_people_is_told_from_ids() {
    let found = |code: &str| read_by_people(&format!("fn f() {{ {code} }}")).len();
    for code in [
        r#"ui.label("gap");"#,
        r#"ui.checkbox(&mut on, "prices");"#,
        r#"ui.label(format!("{n} mm"));"#,
        r#"ui.add(Button::new(RichText::new("go").small()));"#,
        r#"ui.button(if on { "stop" } else { words.text("start") });"#,
        r#"let title = "Boards";"#,
        r#"let text = format!("{} boards", n);"#,
        r#"let text = "the year";"#,
        r#"const PAGES: [&str; 1] = ["The year"];"#,
        r#"Err("Nothing to read".to_owned())"#,
        r#"entry(ui, "width", &shown, 90.0, read);"#,
        r#"print("Done.\n")"#,
        r##"let text = r#"Not "this" either"#;"##,
    ] {
        assert_eq!(found(code), 1, "{code}");
    }
    for code in [
        r#"ui.label(words.text("boards-title"));"#,
        r#"ui.label(say!(words, "gap-reading", number = 1));"#,
        r#"ui.button(words.text(if on { "stop" } else { "start" }));"#,
        r#"context.edit("undo-remove-gap", move |job| job.clear());"#,
        r#"ui.label("%");"#,
        r#"ui.label(format!("{} {}", surface, section));"#,
        r#"let id = format!("cmd-{}", id);"#,
        r#"let id = Id::unique(("edge length", on));"#,
        r#"tracing::error!("no thread for {name}");"#,
        r#"text.parse().expect("a number");"#,
        r#"panic!("no command {id}");"#,
        r#"#[expect(clippy::unwrap_used, reason = "the code is written here")] let a = 1;"#,
        "/// Shows the boards.\nlet a = 1;",
        r#"#[cfg(test)] mod tests { const A: &str = "Some title"; }"#,
        r#"let name = "Gapwright";"#,
        r#"let bytes = b"Not a text";"#,
    ] {
        assert_eq!(found(code), 0, "{code}");
    }
}
