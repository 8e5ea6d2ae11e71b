//! Getting what can be got out of a broken job file.
//!
//! Works on RON and JSON alike: both are lists and structs of named values, parted by commas.
//!
//! The reader stops at the first thing it cannot take and says where. Pieces around that place are
//! tried: the field, the element of a list, the line, the line before, wider elements. The one
//! that costs least is left out, by what it takes with it and what stays unread; then the next
//! fault is looked for. A struct that would lack a figure it needs goes as a whole. A text that
//! ends too early is cut back to its last whole piece and its brackets are closed.

use std::ops::Range;

use super::document::Job;
use super::problem::Unread;

/// A file with more broken pieces than this is not a job.
const MOST_CUTS: usize = 100;

/// How much dearer it is to leave a character out than to leave it unread until the next fault.
const COST_OF_CUTTING: usize = 10;

/// A piece that was cut out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Cut {
    /// Line of the fault, from 1.
    pub line: usize,
    /// Column of the fault, from 1.
    pub column: usize,
    /// What the reader met.
    pub reason: Unread,
    /// The text that was left out, shortened.
    pub text: String,
    /// The whole text, if it is a field of the job that this program does not know.
    pub unknown: Option<String>,
}

/// A fault of the reader.
pub(super) struct Fault {
    /// Line from 1.
    pub line: usize,
    /// Column from 1.
    pub column: usize,
    /// Offset in the text, in bytes.
    pub at: usize,
    /// What the reader met.
    pub reason: Unread,
}

impl Fault {
    /// Whether a struct lacks a field it cannot do without.
    const fn lacks_figure(&self) -> bool {
        matches!(self.reason, Unread::MissingField(_))
    }
}

/// A format of job files.
pub(super) struct Format {
    /// Reads a job, up to the first fault.
    pub read: fn(&str) -> Result<Job, Fault>,
    /// Whether a comma may stand after the last element of a list.
    pub trailing_comma: bool,
}

/// A piece to leave out, and the brackets to put in its place where the text ends inside it.
struct Piece {
    range: Range<usize>,
    closing: String,
}

/// Reads a job, leaving out what cannot be read. An empty list says that all of it was read.
pub(super) fn read(text: &str, format: &Format) -> (Job, Vec<Cut>) {
    let attempt = format.read;
    let mut text = text.to_owned();
    let mut cuts: Vec<Cut> = Vec::new();
    let mut fault = match attempt(&text) {
        Ok(job) => return (job, cuts),
        Err(fault) => fault,
    };
    while cuts.len() < MOST_CUTS {
        if let Some((shorter, field)) = unknown_field(&text, &fault, format) {
            let (line, column, reason) = (fault.line, fault.column, fault.reason);
            cuts.push(Cut { line, column, reason, text: shortened(&field), unknown: Some(field) });
            text = shorter;
            match attempt(&text) {
                Ok(job) => return (job, cuts),
                Err(next) => fault = next,
            }
            continue;
        }
        let unread = text.len() - fault.at;
        // Fault upon fault: better lose a whole list than everything that comes after.
        let price = if cuts.len() < MOST_CUTS - 5 { COST_OF_CUTTING } else { 0 };
        let tried = pieces(&text, fault.at).into_iter().filter_map(|piece| {
            let taken = piece.range.len();
            let left_out = text[piece.range.clone()].to_owned();
            let shorter = without(&text, &piece, format);
            let outcome = attempt(&shorter);
            let still = match &outcome {
                Ok(_) => 0,
                Err(next) if next.lacks_figure() || shorter.len() - next.at >= unread => return None,
                Err(next) => shorter.len() - next.at,
            };
            Some((still + price * taken, shorter, left_out, outcome))
        });
        let Some((_, shorter, left_out, outcome)) = tried.min_by_key(|(cost, ..)| *cost) else { break };
        cuts.push(Cut {
            line: fault.line,
            column: fault.column,
            reason: fault.reason,
            text: shortened(&left_out),
            unknown: None,
        });
        text = shorter;
        match outcome {
            Ok(job) => return (job, cuts),
            Err(next) => fault = next,
        }
    }
    let rest = shortened(&text);
    cuts.push(Cut {
        line: fault.line,
        column: fault.column,
        reason: fault.reason,
        text: rest,
        unknown: None,
    });
    (Job::default(), cuts)
}

/// The text without a field of the job itself that is not known, and the field.
fn unknown_field(text: &str, fault: &Fault, format: &Format) -> Option<(String, String)> {
    let levels = levels(text, fault.at);
    if !matches!(fault.reason, Unread::UnknownField(_)) || levels.len() != 1 {
        return None;
    }
    let piece = element(text, fault.at, &levels, 0);
    let field = text[piece.range.clone()].to_owned();
    (piece.closing.is_empty() && !field.is_empty()).then(|| (without(text, &piece, format), field))
}

/// The text without a piece. Line breaks stay, so that later faults keep their line numbers.
fn without(text: &str, piece: &Piece, format: &Format) -> String {
    let left_out = &text[piece.range.clone()];
    let breaks: String = left_out.chars().filter(|c| *c == '\n').collect();
    let mut shorter = text.to_owned();
    shorter.replace_range(piece.range.clone(), &(breaks + &piece.closing));
    let before = shorter[..piece.range.start].trim_end().len();
    let closes = shorter[piece.range.start..].trim_start().starts_with([']', '}']);
    if !format.trailing_comma && closes && shorter[..before].ends_with(',') {
        shorter.replace_range(before - 1..before, " ");
    }
    shorter
}

fn shortened(text: &str) -> String {
    text.trim().chars().take(80).collect()
}

/// Byte offset of a line and column, both from 1.
pub(super) fn offset(text: &str, line: usize, column: usize) -> usize {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    let rest = &text[start.min(text.len())..];
    let at = rest.char_indices().nth(column.saturating_sub(1)).map_or(rest.len(), |(at, _)| at);
    (start + at).min(text.len())
}

/// The pieces to try around a fault.
fn pieces(text: &str, fault: usize) -> Vec<Piece> {
    let levels = levels(text, fault);
    let is_list = |depth: &usize| levels[*depth].close == ']';
    let named = |piece: &Piece| outside_strings(&text[piece.range.clone()]).any(|(_, c)| c == ':');
    let element = |depth: usize| element(text, fault, &levels, depth);
    let inner = (0..levels.len()).rev().take(6);
    let outer = 0..levels.len().min(3);
    // One value of a tuple cannot go without the others.
    let elements = inner.chain(outer).map(|depth| (depth, element(depth)));
    let mut tried: Vec<Piece> =
        elements.filter(|(depth, piece)| is_list(depth) || named(piece)).map(|(_, piece)| piece).collect();
    let line = line_around(text, fault);
    let before = line_around(text, line.start.saturating_sub(1));
    tried.extend([line, before].map(|range| Piece { range, closing: String::new() }));
    // A bracket too few leaves the end to be closed; what follows the job is no part of it.
    let closing: String = levels.iter().rev().map(|level| level.close).collect();
    tried.push(Piece { range: fault..text.len(), closing });
    tried.retain(|piece| !piece.range.is_empty() || !piece.closing.is_empty());
    tried
}

/// The line that holds a place, its break included.
fn line_around(text: &str, at: usize) -> Range<usize> {
    let at = text.floor_char_boundary(at.min(text.len()));
    let start = text[..at].rfind('\n').map_or(0, |place| place + 1);
    let end = text[at..].find('\n').map_or(text.len(), |place| at + place + 1);
    start..end
}

/// An open bracket, and where the element that is being read inside it starts.
struct Level {
    close: char,
    element: usize,
}

/// The element of the level at `depth` that the fault is in, with its comma; if the text ends
/// inside it, with the brackets that must follow.
fn element(text: &str, fault: usize, levels: &[Level], depth: usize) -> Piece {
    let from = levels[depth].element;
    let mut stack = levels.len();
    for (at, c) in outside_strings(text).filter(|(at, _)| *at >= fault) {
        match c {
            '(' | '[' | '{' => stack += 1,
            ')' | ']' | '}' if stack == depth + 1 => {
                return Piece { range: from..at, closing: String::new() };
            }
            ')' | ']' | '}' => stack = stack.saturating_sub(1),
            ',' if stack == depth + 1 => return Piece { range: from..at + 1, closing: String::new() },
            _ => {}
        }
    }
    let closing = levels[..=depth].iter().rev().map(|level| level.close).collect();
    Piece { range: from..text.len(), closing }
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
