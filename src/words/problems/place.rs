//! Where a problem is.

use super::super::{Arg, Words, say};
use crate::job::fields::{self, At, Each, Field};
use crate::job::{Job, Place};
use crate::survey::LaterVisit;

/// A place with the names the user gave to what it is in.
pub(super) fn say(place: &Place, job: &Job, words: &Words) -> String {
    match place {
        Place::File { line, column } => say!(words, "place-file", line = *line, column = *column),
        Place::WholeFile => say!(words, "place-whole-file"),
        Place::Field(field, at) => entry(field, *at, job, words),
    }
}

/// The same on a paper, where nobody sees the fields: the part of the job it is about; nothing where that is the job.
pub(super) fn on_paper(place: &Place, job: &Job, words: &Words) -> Option<String> {
    let Place::Field(field, At(outer, inner)) = place else { return Some(say(place, job, words)) };
    let section = |surface: &str, section: &str| {
        Some(say!(words, "place-whole-section", surface = Arg::Name(surface), section = Arg::Name(section)))
    };
    match field.each {
        Each::Job => None,
        Each::Surface => job.surfaces.get(*outer).map(|surface| surface.name.clone()),
        Each::Section => {
            let surface = job.surfaces.get(*outer)?;
            section(&surface.name, &surface.sections.get(*inner)?.name)
        }
        Each::Gap => {
            let gap = job.survey.gaps.get(*outer)?;
            Some(format!("{} {}", gap.surface, words.joint(&gap.joint)))
        }
        Each::Moisture => {
            let reading = job.survey.moistures.get(*outer)?;
            let place = section(&reading.surface, &reading.section)?;
            Some(if reading.board.trim().is_empty() { place } else { format!("{place}, {}", reading.board) })
        }
        _ => Some(say(place, job, words)),
    }
}

fn entry(field: &Field, At(outer, inner): At, job: &Job, words: &Words) -> String {
    let label = &field.label(words);
    let number = outer + 1;
    let surface = job.surfaces.get(outer);
    let surface_name = || surface.map_or("", |surface| &surface.name);
    let section_name = || {
        let section = surface.and_then(|surface| surface.sections.get(inner));
        section.map_or("", |section| &section.name)
    };
    match field.each {
        Each::Job => label.clone(),
        // What is wrong with the whole of it stands at its name.
        Each::Surface if *field == fields::SURFACE_NAME => surface_name().to_owned(),
        Each::Surface => say!(words, "place-surface", surface = Arg::Name(surface_name()), field = label),
        Each::Section if *field == fields::SECTION_NAME => {
            let (surface, section) = (Arg::Name(surface_name()), Arg::Name(section_name()));
            say!(words, "place-whole-section", surface = surface, section = section)
        }
        Each::Opening | Each::Divider | Each::Section => {
            let (part, name) = match field.each {
                Each::Opening => ("opening", surface.and_then(|of| Some(&of.openings.get(inner)?.name))),
                Each::Divider => ("divider", surface.and_then(|of| Some(&of.dividers.get(inner)?.name))),
                _ => ("section", surface.and_then(|of| Some(&of.sections.get(inner)?.name))),
            };
            let (part, name) = (Arg::Id(part), Arg::Name(name.map_or("", String::as_str)));
            let surface = Arg::Name(surface_name());
            say!(words, "place-part", part = part, surface = surface, name = name, field = label)
        }
        Each::Gap => {
            let gap = job.survey.gaps.get(outer);
            let surface = Arg::Name(gap.map_or("", |gap| &gap.surface));
            let joint = Arg::Joint(gap.map_or("", |gap| &gap.joint));
            say!(words, "place-gap", number = number, surface = surface, joint = joint, field = label)
        }
        Each::Moisture => say!(words, "place-moisture", number = number, field = label),
        Each::Room => say!(words, "place-room", number = number, field = label),
        Each::Stacked => say!(words, "place-stacked", number = number, field = label),
        Each::Month => say!(words, "place-month", month = number, field = label),
        Each::Visit => match job.later.get(outer) {
            Some(visit) => say!(words, "place-visit", date = visit.on, field = label),
            None => label.clone(),
        },
        Each::LaterGap => match job.later.get(outer) {
            Some(visit) => later_gap(visit, inner, label, words),
            None => label.clone(),
        },
    }
}

fn later_gap(visit: &LaterVisit, index: usize, label: &String, words: &Words) -> String {
    let gap = visit.gaps.get(index);
    let surface = Arg::Name(gap.map_or("", |gap| &gap.surface));
    let joint = Arg::Joint(gap.map_or("", |gap| &gap.joint));
    say!(words, "place-later-gap", date = visit.on, surface = surface, joint = joint, field = label)
}
