//! A new job from sizes and a pattern or from an outline file, with readings out of tables.

#![allow(
    clippy::missing_docs_in_private_items,
    missing_docs,
    reason = "clap would print doc comments as help"
)]

use std::path::{Path, PathBuf};

use clap::Args;

use super::opened::{Opened, file_name};
use super::{Outcome, judged, print};
use crate::air::places::{self, Place};
use crate::air::{HouseModel, IndoorAir};
use crate::job::{Catalog, Job, TableFault, file, read_gaps, read_moistures, read_whole};
use crate::measure::{
    EntryError, Length, Units, parse_date, parse_length, parse_month_or_date, parse_room_length,
};
use crate::named::Named;
use crate::surface::outlines::{FileUnit, read_outlines};
use crate::surface::pattern::Pattern;
use crate::surface::{BoardSpec, NewSurface, Surface, SurfaceKind};
use crate::wood::Species;
use crate::words::{Arg, Say as _, Words, boards::divider_name, places as place_words, say, unreadable_file};

/// Places and species that are named where one is not known.
const OFFERED: usize = 5;

#[derive(Args)]
pub(super) struct NewJob {
    pub job: PathBuf,
    #[arg(long, value_name = "W x H", required_unless_present = "outline", conflicts_with = "outline")]
    pub size: Option<String>,
    #[arg(long, value_name = "FILE")]
    pub outline: Option<PathBuf>,
    #[arg(long, value_name = "NAME")]
    pub surface: Option<String>,
    #[arg(long, default_value = "ceiling")]
    pub kind: String,
    #[arg(long, default_value = "straight")]
    pub pattern: String,
    #[arg(long, value_name = "LENGTH")]
    pub right: Option<String>,
    #[arg(long, default_value = "inches")]
    pub units: String,
    #[arg(long, value_name = "LENGTH")]
    pub face: Option<String>,
    #[arg(long, value_name = "LENGTH")]
    pub overall: Option<String>,
    #[arg(long, value_name = "LENGTH")]
    pub thickness: Option<String>,
    #[arg(long, value_name = "ID")]
    pub species: Option<String>,
    #[arg(long, value_name = "FILE")]
    pub gaps: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    pub meter: Option<PathBuf>,
    #[arg(long)]
    pub place: Option<String>,
    #[arg(long, value_name = "DATE")]
    pub visited: Option<String>,
    #[arg(long, value_name = "DATE")]
    pub installed: Option<String>,
    #[arg(long, value_name = "YEAR")]
    pub built: Option<i16>,
    #[arg(long)]
    pub title: Option<String>,
    #[arg(long)]
    pub owner: Option<String>,
    #[arg(long)]
    pub address: Option<String>,
    #[arg(long)]
    pub force: bool,
}

impl NewJob {
    /// Makes the job and writes it, then tells what is wrong with it. Every fault of the arguments and the tables
    /// is told, a line each; with any of them nothing is written.
    pub(super) fn run(&self) -> Result<Outcome, String> {
        let Some(units) = units_of(&self.units) else {
            return Err(say!(super::plain_words(), "new-job-units", text = Arg::Name(&self.units)));
        };
        let words = Words::us_english(units, "$");
        if self.job.exists() && !self.force {
            return Err(say!(words, "new-job-exists", path = &self.job.display().to_string()));
        }
        let mut faults = Vec::new();
        let job = self.make(units, &words, &mut faults);
        if !faults.is_empty() {
            faults.iter().for_each(|fault| eprintln!("{fault}"));
            return Err(say!(words, "new-job-faults", count = faults.len()));
        }
        file::save(&job, &self.job).map_err(|error| error.say(&words))?;
        print(&format!("{}\n", self.job.display()))?;
        let opened = Opened::of(job);
        for problem in opened.problems() {
            eprintln!("{}", opened.line(problem));
        }
        Ok(judged(&opened))
    }

    fn make(&self, units: Units, words: &Words, faults: &mut Vec<String>) -> Job {
        let visited =
            self.entry("visited", self.visited.as_deref(), |text| parse_date(text, units), words, faults);
        let mut job = Job::new(visited.unwrap_or_else(|| jiff::ZonedDateTime::now().date()));
        job.units = units;
        job.installed = self.entry(
            "installed",
            self.installed.as_deref(),
            |text| parse_month_or_date(text, units),
            words,
            faults,
        );
        job.built = self.built;
        let text = |given: &Option<String>| given.clone().unwrap_or_default();
        (job.title, job.owner, job.address) = (text(&self.title), text(&self.owner), text(&self.address));
        let board = self.board(units, words, faults);
        self.surfaces(&mut job, &board, words, faults);
        self.place(&mut job, words, faults);
        // Without a surface no job is written: what is wrong with the rows themselves is told all the same.
        let only = match &job.surfaces[..] {
            [] => self.kind.clone(),
            [surface] => surface.name.clone(),
            _ => String::new(),
        };
        let gaps = self.table(self.gaps.as_deref(), |text| read_gaps(text, &only, units), words, faults);
        let moistures =
            self.table(self.meter.as_deref(), |text| read_moistures(text, &only, units), words, faults);
        job.survey.gaps = gaps;
        job.survey.moistures = moistures;
        job
    }

    /// An option that may be left out, as it is typed in the window.
    fn entry<T>(
        &self,
        option: &str,
        given: Option<&str>,
        read: impl Fn(&str) -> Result<T, EntryError>,
        words: &Words,
        faults: &mut Vec<String>,
    ) -> Option<T> {
        match read(given?) {
            Ok(value) => Some(value),
            Err(error) => {
                faults.push(say!(
                    words,
                    "new-job-entry",
                    option = Arg::Name(option),
                    what = &error.say(words)
                ));
                None
            }
        }
    }

    fn board(&self, units: Units, words: &Words, faults: &mut Vec<String>) -> BoardSpec {
        let mut board = BoardSpec::default();
        let length = |text: &str| parse_length(text, units);
        if let Some(face) = self.entry("face", self.face.as_deref(), length, words, faults) {
            // The tongue stays as long as it is on a usual board.
            board.overall_width = face + (board.overall_width - board.face_width);
            board.face_width = face;
        }
        if let Some(overall) = self.entry("overall", self.overall.as_deref(), length, words, faults) {
            board.overall_width = overall;
        }
        if let Some(thickness) = self.entry("thickness", self.thickness.as_deref(), length, words, faults) {
            board.thickness = thickness;
        }
        if let Some(species) = &self.species {
            match Catalog::built_in().species(species) {
                Some(known) => board.species = known.key().to_owned(),
                None => faults.push(no_species(species, words)),
            }
        }
        board
    }

    /// The surfaces: one of the size, or those of the outline file.
    fn surfaces(&self, job: &mut Job, board: &BoardSpec, words: &Words, faults: &mut Vec<String>) {
        let kind = SurfaceKind::ALL.into_iter().find(|kind| kind.key() == self.kind);
        if kind.is_none() {
            faults.push(say!(words, "new-job-kind", text = Arg::Name(&self.kind)));
        }
        let pattern = Pattern::USUAL.into_iter().find(|pattern| key(*pattern) == self.pattern);
        if pattern.is_none() {
            let all = Pattern::USUAL.map(key).join(", ");
            faults.push(say!(words, "new-job-pattern", text = Arg::Name(&self.pattern), patterns = &all));
        }
        if self.right.is_some() && kind != Some(SurfaceKind::Wall) {
            faults.push(say!(words, "new-job-right-wall"));
        }
        let sides = if self.outline.is_some() { None } else { self.sides(job.units, words, faults) };
        let (Some(kind), Some(pattern)) = (kind, pattern) else { return };
        if let Some(path) = &self.outline {
            match outlines(path, job.units, words) {
                Ok(found) => {
                    for (name, ring) in found {
                        let name = job.free_surface_name(self.surface.as_deref().unwrap_or(&name));
                        let mut surface = Surface { kind, ..Surface::from_outline(&name, &ring) };
                        let divider = |number| divider_name(words, number);
                        (surface.sections, surface.dividers) =
                            pattern.fill(&surface.outline, board, &divider);
                        job.surfaces.push(surface);
                    }
                }
                Err(error) => faults.push(error),
            }
            return;
        }
        let Some((width, height)) = sides else { return };
        let room = |text: &str| parse_room_length(text, job.units);
        let right = self.entry("right", self.right.as_deref(), room, words, faults);
        let new = NewSurface { kind, width, height, right, pattern };
        let name = job.free_surface_name(self.surface.as_deref().unwrap_or(&kind.say(words)));
        job.surfaces.push(new.draw(name, board, &|number| divider_name(words, number)));
    }

    /// The two sides of `--size`.
    fn sides(&self, units: Units, words: &Words, faults: &mut Vec<String>) -> Option<(Length, Length)> {
        let size = self.size.as_deref().unwrap_or_default();
        let Some((width, height)) = size.split_once(['x', 'X', '×']) else {
            faults.push(say!(words, "new-job-size", text = Arg::Name(size)));
            return None;
        };
        let mut side = |text: &str| {
            let side =
                self.entry("size", Some(text), |text| parse_room_length(text, units), words, faults)?;
            if NewSurface::SIDES.contains(&side) {
                return Some(side);
            }
            let (low, high) = (*NewSurface::SIDES.start(), *NewSurface::SIDES.end());
            faults.push(say!(words, "new-job-side", side = side, low = low, high = Arg::Run(high)));
            None
        };
        let (width, height) = (side(width), side(height));
        Some((width?, height?))
    }

    fn place(&self, job: &mut Job, words: &Words, faults: &mut Vec<String>) {
        let Some(typed) = self.place.as_deref() else { return };
        let (lead, choices) = match places::find(typed, OFFERED) {
            Ok(matches) => {
                if let Some(place) = matches.only() {
                    let house: HouseModel = job.air.house().cloned().unwrap_or_default();
                    job.air = IndoorAir::FromPlace { site: place.site(None), house };
                    return;
                }
                (say!(words, "new-job-place-several"), matches.places)
            }
            Err(error) => (place_words::not_found(&error, typed, words), place_words::choices(error)),
        };
        let labels: Vec<String> = choices.iter().map(Place::label).collect();
        faults.push(say!(words, "new-job-place", lead = &lead, places = &labels.join("; ")));
    }

    /// The readings of a table; none without one.
    fn table<T>(
        &self,
        path: Option<&Path>,
        read: impl Fn(&str) -> Result<Vec<T>, Vec<TableFault>>,
        words: &Words,
        faults: &mut Vec<String>,
    ) -> Vec<T> {
        let Some(path) = path else { return Vec::new() };
        let text = match read_whole(path) {
            Ok(bytes) => String::from_utf8_lossy(&bytes).into_owned(),
            Err(error) => {
                faults.push(unreadable_file(words, path, &error));
                return Vec::new();
            }
        };
        read(&text).unwrap_or_else(|found| {
            faults.extend(found.iter().map(|fault| fault.line(&file_name(path), words)));
            Vec::new()
        })
    }
}

/// A pattern's key as it is typed.
fn key(pattern: Pattern) -> String {
    pattern.key().replace('_', "-")
}

fn units_of(text: &str) -> Option<Units> {
    match text {
        "inches" | "in" => Some(Units::Inches),
        "mm" | "millimeters" => Some(Units::Millimeters),
        _ => None,
    }
}

/// That a species is not known, with those that are sold under that name or called much like it.
fn no_species(text: &str, words: &Words) -> String {
    let catalog = Catalog::built_in();
    let part = text.to_lowercase();
    let first = part.split(['-', ' ', ',']).next().unwrap_or_default();
    let sold = catalog.species_sold_as(text);
    let called = |species: &&Species| !first.is_empty() && species.key().starts_with(first);
    let near: Vec<&str> = match sold.is_empty() {
        true => catalog.species.iter().filter(called).take(OFFERED).map(Named::key).collect(),
        false => sold.iter().map(|species| species.key()).collect(),
    };
    let (text, listed) = (Arg::Name(text), near.join(", "));
    match (near.len(), sold.is_empty()) {
        (0, _) => say!(words, "new-job-species-none", text = text),
        (1, false) => say!(words, "new-job-species-sold", text = text, near = &listed),
        (_, false) => say!(words, "new-job-species-several", text = text, near = &listed),
        (_, true) => say!(words, "new-job-species", text = text, near = &listed),
    }
}

/// An outline's name and corners, meters.
type Ring = (String, Vec<[f64; 2]>);

/// The outlines of a file; lengths without a unit are in the job's.
fn outlines(path: &Path, units: Units, words: &Words) -> Result<Vec<Ring>, String> {
    let bytes = read_whole(path).map_err(|error| unreadable_file(words, path, &error))?;
    let assume = if units == Units::Inches { FileUnit::Inches } else { FileUnit::Millimeters };
    let read = read_outlines(&file_name(path), &bytes, assume).map_err(|error| error.say(words))?;
    for remark in &read.remarks {
        eprintln!("{}", remark.say(words));
    }
    Ok(read.outlines.into_iter().map(|outline| (outline.name, outline.ring)).collect())
}
