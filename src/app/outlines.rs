//! Surfaces out of a drawing another program made.

use std::path::Path;

use eframe::egui::Context;

use super::command::{Command, Edit};
use super::{App, Toast};
use crate::job::Job;
use crate::measure::Units;
use crate::surface::Surface;
use crate::surface::outlines::{FileUnit, OutlinesRead, read_outlines};
use crate::words::{Arg, Say as _, Words, say, unreadable_file};

/// Reads the outlines of a file; its lengths are in the job's units where it does not say.
fn read(path: &Path, words: &Words) -> Result<OutlinesRead, String> {
    let bytes = std::fs::read(path).map_err(|error| unreadable_file(words, path, &error))?;
    let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let assume = if words.units() == Units::Inches { FileUnit::Inches } else { FileUnit::Millimeters };
    read_outlines(&name, &bytes, assume).map_err(|error| error.say(words))
}

impl App {
    /// Adds a surface for each outline of a file.
    pub(super) fn take_outlines(&mut self, ctx: &Context, path: &Path) {
        let words = self.words();
        match read(path, &words) {
            Ok(read) => {
                let count = read.outlines.len();
                let outlines = read.outlines;
                let change = move |job: &mut Job| {
                    for outline in outlines {
                        let name = job.free_surface_name(&outline.name);
                        job.surfaces.push(Surface::from_outline(&name, &outline.ring));
                    }
                };
                let name = "cmd-outlines".to_owned();
                self.apply(ctx, Command::Edit(Edit { name, change: Box::new(change) }));
                let unit = Arg::Id(read.unit.key());
                let mut said = vec![say!(words, "outline-taken", count = count, unit = unit)];
                if !read.unit_from_file {
                    said.push(say!(words, "outline-unit-assumed"));
                }
                said.extend(read.remarks.iter().map(|remark| remark.say(&words)));
                self.prompts.toast = Some(Toast::good(said.join(" ")));
            }
            Err(error) => self.file_fault(error),
        }
    }
}
