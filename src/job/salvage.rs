//! Getting what can be got out of a broken job file.
//!
//! The reader stops at the first thing it cannot take and says where. The smallest piece around
//! that place (a field, an element of a list) is cut out and the rest is tried again; a piece that
//! fails again is cut one level wider. A text that ends too early is cut back to its last whole
//! piece and its brackets are closed.

use super::document::Job;

/// A file with more broken pieces than this is not a job.
const MOST_CUTS: usize = 100;

/// A piece that was cut out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Cut {
    /// Line of the fault, from 1.
    pub line: usize,
    /// Column of the fault, from 1.
    pub column: usize,
    /// What the reader said of it.
    pub reason: String,
    /// The text that was left out, shortened.
    pub text: String,
}

/// Reads a job, leaving out what cannot be read. An empty list says that all of it was read.
pub(super) fn read(text: &str) -> (Job, Vec<Cut>) {
    let mut text = text.to_owned();
    let mut cuts: Vec<Cut> = Vec::new();
    let mut widen = 0;
    let mut last_fault = usize::MAX;
    while cuts.len() < MOST_CUTS {
        let error = match ron::from_str::<Job>(&text) {
            Ok(job) => return (job, cuts),
            Err(error) => error,
        };
        let (line, column) = (error.span.start.line, error.span.start.col);
        let fault = offset(&text, line, column);
        widen = if fault == last_fault { widen + 1 } else { 0 };
        last_fault = fault;
        let Some((from, to, closing)) = piece_around(&text, fault, widen) else { break };
        let left_out = text[from..to].trim().chars().take(80).collect();
        cuts.push(Cut { line, column, reason: error.code.to_string(), text: left_out });
        // Line breaks stay, so that later faults keep their line numbers.
        let blank: String = text[from..to].chars().filter(|c| *c == '\n').collect();
        text.replace_range(from..to, &(blank + &closing));
    }
    (Job::default(), cuts)
}

/// Byte offset of a line and column, both from 1.
fn offset(text: &str, line: usize, column: usize) -> usize {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    let rest = &text[start.min(text.len())..];
    start + rest.char_indices().nth(column.saturating_sub(1)).map_or(rest.len(), |(at, _)| at)
}

/// An open bracket, and where the element that is being read inside it starts.
struct Level {
    close: char,
    element: usize,
}

/// The element at `fault` and `widen` levels out: its range with its comma, and the brackets that
/// must follow if the text ends inside it.
fn piece_around(text: &str, fault: usize, widen: usize) -> Option<(usize, usize, String)> {
    let before = levels(text, fault);
    let depth = before.len().checked_sub(1 + widen)?;
    let from = before[depth].element;
    // Go on from the fault to the end of that element: its comma or its level's bracket.
    let mut stack: Vec<char> = before.iter().map(|level| level.close).collect();
    for (at, c) in outside_strings(text).filter(|(at, _)| *at >= fault) {
        match c {
            '(' | '[' | '{' => stack.push(closing(c)),
            ')' | ']' | '}' if stack.len() == depth + 1 => return Some((from, at, String::new())),
            ')' | ']' | '}' => {
                stack.pop();
            }
            ',' if stack.len() == depth + 1 => return Some((from, at + 1, String::new())),
            _ => {}
        }
    }
    let closing: String = before[..=depth].iter().rev().map(|level| level.close).collect();
    Some((from, text.len(), closing))
}

const fn closing(open: char) -> char {
    match open {
        '(' => ')',
        '[' => ']',
        _ => '}',
    }
}

/// The brackets open at `end`, outermost first.
fn levels(text: &str, end: usize) -> Vec<Level> {
    let mut stack: Vec<Level> = Vec::new();
    for (at, c) in outside_strings(text).take_while(|(at, _)| *at < end) {
        match c {
            '(' | '[' | '{' => stack.push(Level { close: closing(c), element: at + 1 }),
            ')' | ']' | '}' => {
                stack.pop();
            }
            ',' => {
                if let Some(level) = stack.last_mut() {
                    level.element = at + 1;
                }
            }
            _ => {}
        }
    }
    stack
}

/// The characters of the text that are not in strings or line comments, with their offsets.
fn outside_strings(text: &str) -> impl Iterator<Item = (usize, char)> + '_ {
    let mut in_string = false;
    let mut escaped = false;
    let mut in_comment = false;
    let mut before = ' ';
    text.char_indices().filter(move |&(_, c)| {
        let plain = !in_string && !in_comment;
        if in_comment {
            in_comment = c != '\n';
        } else if in_string {
            if escaped {
                escaped = false;
            } else if c == '\\' {
                escaped = true;
            } else if c == '"' {
                in_string = false;
            }
        } else if c == '"' {
            in_string = true;
        } else if c == '/' && before == '/' {
            in_comment = true;
        }
        before = c;
        plain && c != '"'
    })
}
