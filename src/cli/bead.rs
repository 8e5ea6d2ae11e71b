//! `bead`: the strain of one bead. The help texts are messages of `command-line.ftl`.

#![allow(
    clippy::missing_docs_in_private_items,
    missing_docs,
    reason = "clap would print doc comments as help"
)]

use clap::{Args, ValueEnum};

use crate::bead::{BeadReport, Behind, BoardEdge, Movement, Section, Tooling};
use crate::measure::{Angle, EntryError, Length, Percent, Units, parse_length, parse_number};

#[derive(Debug, Clone, Args)]
pub(super) struct BeadArguments {
    #[arg(long, value_parser = length)]
    gap: Length,
    #[arg(long, value_parser = length, default_value = "1/8in")]
    v: Length,
    #[arg(long, value_parser = number, default_value = "45")]
    angle: f64,
    #[arg(long, value_parser = number, default_value = "50")]
    fill: f64,
    #[arg(long, value_parser = length, default_value = "0")]
    depth: Length,
    #[arg(long, value_parser = number, default_value = "0")]
    hollow: f64,
    #[arg(long, value_parser = number, default_value = "100")]
    solids: f64,
    #[arg(long, value_enum, default_value = "free")]
    behind: BehindArgument,
    #[arg(long, value_parser = length, default_value = "0", conflicts_with = "close")]
    open: Length,
    #[arg(long, value_parser = length, default_value = "0")]
    close: Length,
    #[arg(long, value_parser = length, default_value = "0")]
    slide: Length,
    #[arg(long, value_parser = length, default_value = "0")]
    lift: Length,
    #[arg(long)]
    json: bool,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum BehindArgument {
    Free,
    Tongue,
    Breaker,
    Rod,
}

fn length(text: &str) -> Result<Length, EntryError> {
    parse_length(text, Units::Inches)
}

fn number(text: &str) -> Result<f64, EntryError> {
    parse_number(text)
}

impl BeadArguments {
    /// The bead that is asked about.
    fn section(&self) -> Section {
        let edge = if self.v > Length::ZERO {
            BoardEdge::V { leg: self.v, angle: Angle::degrees(self.angle) }
        } else {
            BoardEdge::Square
        };
        let behind = match self.behind {
            BehindArgument::Free => Behind::Free,
            BehindArgument::Tongue => Behind::Tongue,
            BehindArgument::Breaker => Behind::Breaker,
            BehindArgument::Rod => Behind::Rod,
        };
        let tooling =
            if self.hollow > 0.0 { Tooling::Concave(Percent::pct(self.hollow)) } else { Tooling::Flush };
        let plain = Section::plain(self.gap, edge, Percent::pct(self.fill), self.depth, behind);
        Section { tooling, solids: Percent::pct(self.solids), ..plain }
    }

    /// The movement that is asked about.
    fn movement(&self) -> Movement {
        Movement { open: self.open - self.close, slide: self.slide, lift: self.lift }
    }

    /// What is to be printed of the bead, as JSON or as a name and value a line, and whether it could be
    /// worked out.
    ///
    /// # Errors
    /// If the report cannot be written as JSON.
    pub(super) fn run(&self) -> Result<(String, bool), serde_json::Error> {
        let report = BeadReport::new(&self.section(), self.movement());
        let printed = if self.json { serde_json::to_string_pretty(&report)? + "\n" } else { lines(&report)? };
        Ok((printed, report.error.is_none()))
    }
}

/// The report's leaves, each with the path to it.
fn lines(report: &BeadReport) -> Result<String, serde_json::Error> {
    let mut out = String::new();
    add_lines(&serde_json::to_value(report)?, "", &mut out);
    Ok(out)
}

fn add_lines(value: &serde_json::Value, path: &str, out: &mut String) {
    use serde_json::Value;
    let below = |name: &str| if path.is_empty() { name.to_owned() } else { format!("{path}.{name}") };
    match value {
        Value::Object(fields) => fields.iter().for_each(|(name, value)| add_lines(value, &below(name), out)),
        Value::Array(items) => {
            for (at, item) in items.iter().enumerate() {
                // What names itself needs no number.
                let name = ["place", "id", "reason"].iter().find_map(|key| item.get(key)?.as_str());
                add_lines(item, &below(&name.map_or_else(|| at.to_string(), str::to_owned)), out);
            }
        }
        Value::Null => {}
        Value::Number(number) if number.is_f64() => {
            let number = number.as_f64().unwrap_or_default();
            *out += &format!("{path} {number:.4}\n");
        }
        Value::String(text) => *out += &format!("{path} {text}\n"),
        other => *out += &format!("{path} {other}\n"),
    }
}
