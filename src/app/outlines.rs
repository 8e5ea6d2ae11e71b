//! Surfaces out of a drawing another program made.

use std::path::Path;

use eframe::egui::Context;

use super::command::{Command, Edit};
use super::{App, Toast};
use crate::job::Job;
use crate::measure::Units;
use crate::surface::Surface;
use crate::surface::outlines::{FileUnit, OutlinesRead, read_outlines};

/// Reads the outlines of a file; its lengths are in the job's units where it does not say.
fn read(path: &Path, units: Units) -> Result<OutlinesRead, String> {
    let bytes = std::fs::read(path)
        .map_err(|error| format!("“{}” cannot be read: {error}. Choose another file", path.display()))?;
    let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let assume = if units == Units::Inches { FileUnit::Inches } else { FileUnit::Millimeters };
    read_outlines(&name, &bytes, assume).map_err(|error| error.to_string())
}

/// A name that no surface has yet.
fn free_name(job: &Job, wanted: &str) -> String {
    let taken = |name: &str| job.surfaces.iter().any(|surface| surface.name == name);
    let numbered = (2..).map(|number| format!("{wanted} {number}"));
    std::iter::once(wanted.to_owned()).chain(numbered).find(|name| !taken(name)).unwrap_or_default()
}

impl App {
    /// Adds a surface for each outline of a file.
    pub(super) fn take_outlines(&mut self, ctx: &Context, path: &Path) {
        match read(path, self.job().units) {
            Ok(read) => {
                let count = read.outlines.len();
                let outlines = read.outlines;
                let change = move |job: &mut Job| {
                    for outline in outlines {
                        let name = free_name(job, &outline.name);
                        job.surfaces.push(Surface::from_outline(&name, &outline.ring));
                    }
                };
                let name = "Take outlines from a file".to_owned();
                self.apply(ctx, Command::Edit(Edit { name, change: Box::new(change) }));
                let mut told = vec![format!("{count} outlines taken, in {}", read.unit.name())];
                if !read.unit_from_file {
                    told.push("the file does not say its unit: check a length".to_owned());
                }
                told.extend(read.notes);
                self.prompts.toast = Some(Toast::good(told.join(". ") + "."));
            }
            Err(error) => self.fault(error),
        }
    }
}
