//! What the window can do. Widgets only push commands; [`super::App`] applies them in one place,
//! so that menus, shortcuts, undo and tests all go the same way.

use std::path::PathBuf;

use super::air_import::LoggerImport;
use super::languages::Audience;
use super::lead::Destination;
use super::pick::{Form, Purpose};
use super::view::{Selected, Tab, Tool};
use crate::assess::EntryPlace;
use crate::job::Job;
use crate::measure::Units;
use crate::papers::Paper;
use crate::surface::Point;
use crate::words::Language;

/// A named change of the job.
pub struct Edit {
    /// The message of what it is called in undo.
    pub name: String,
    /// The change.
    pub change: Box<dyn FnOnce(&mut Job)>,
}

/// Something to do.
pub enum Command {
    /// Change the job.
    Edit(Edit),
    /// Start an empty job.
    New,
    /// Start a job for boards that go up next in the same room.
    PlanNextInstall,
    /// Start the job that follows an install up.
    FollowUpInstall,
    /// Write the record of a next install to this folder.
    WriteRecordTo(PathBuf),
    /// Ask for a file or a folder.
    Pick(Purpose),
    /// Open this file.
    OpenPath(PathBuf),
    /// Open the demo.
    OpenDemo,
    /// Save to the job's file, or choose one.
    Save,
    /// Save to this file.
    SavePath(PathBuf),
    /// Take the year outdoors from this file.
    TakeWeather(PathBuf),
    /// Work out how this logger's file is laid out, and ask.
    AskLogger(PathBuf),
    /// Take the readings of a logger's file whose layout was confirmed.
    TakeLogger(Box<LoggerImport>),
    /// Write the job's figures to this file.
    ExportPricesTo(PathBuf),
    /// Offer the figures of this file.
    OfferPrices(PathBuf),
    /// Offer the user's own prices, or the program's where there are none.
    OfferMyPrices,
    /// Keep the job's figures for new jobs.
    KeepPrices,
    /// Learn from the finished jobs in this folder.
    LearnFrom(PathBuf),
    /// Write the papers to this folder.
    WritePapersTo(PathBuf),
    /// Take a step back.
    Undo,
    /// Take an undone step again.
    Redo,
    /// Close the window.
    Quit,
    /// Speak this language to those.
    Language(Audience, &'static Language),
    /// Light to dark or back.
    SwitchTheme,
    /// Show lengths and the rest in these units.
    Units(Units),
    /// Turn to a tab.
    Tab(Tab),
    /// Show a surface.
    Surface(usize),
    /// Select a joint, or nothing.
    Select(Option<Selected>),
    /// Take these joints of the surface shown in with the selected one; a single one that is in is let go.
    SelectMore(Vec<String>),
    /// Select these joints of the surface shown, and no others.
    SelectMarquee(Vec<String>),
    /// Select the joint most worth measuring next.
    NextJoint,
    /// Show the drawing on this day, counted from the visit.
    Day(i64),
    /// Show all of the surface.
    Fit,
    /// Choose a photo to pin at this place of the surface shown.
    ChoosePhoto(Point),
    /// Pin this photo where it was asked for, or in the middle of what is shown.
    TakePhoto(PathBuf),
    /// Read this photo to be shown.
    WantPhoto(PathBuf),
    /// Add a surface for each outline in this file.
    TakeOutlines(PathBuf),
    /// Copy a table to the clipboard.
    Copy(Table),
    /// Turn to this entry, in the tab and on the surface it stands in.
    GoToField(Destination),
    /// Bring what is to be entered there into sight.
    ScrollTo(EntryPlace),
    /// Say this to the user.
    Tell(String),
    /// Tells what the program is, and of its licenses.
    About,
    /// Copy a picture to the clipboard.
    CopyPicture(Picture),
    /// Lay out a template of one's own for this paper.
    OwnTemplate(Paper),
    /// Go back to the built-in template of this paper.
    BuiltInTemplate(Paper),
    /// Read the templates again.
    ReadTemplates,
    /// Take this picture for the letterhead.
    TakeLogo(PathBuf),
    /// Find a command by its name.
    Search,
    /// Run through the days from the one shown, or stop.
    Play,
    /// Keep the gap's curve as it is to compare with, or let it go.
    ReferenceCurve,
    /// Show the homeowner this page, or go back to work.
    Show(Option<usize>),
    /// Take another tool in the drawing.
    Tool(Tool),
}

/// A table that can be copied.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Table {
    /// Every joint.
    Joints,
    /// The coming year.
    Year,
    /// The tasks of the selected option.
    Tasks,
    /// Its buying list.
    Materials,
}

/// A picture that can be copied.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Picture {
    /// The surface shown, with its joints.
    Surface,
    /// The coming year of a typical joint.
    Year,
    /// The cuts through a typical joint.
    Cuts,
}

impl Purpose {
    /// What is done with the path that was asked for.
    pub fn command(self, path: PathBuf) -> Command {
        let path = self.target(path);
        match self {
            Self::Open => Command::OpenPath(path),
            Self::Save => Command::SavePath(path),
            Self::Papers => Command::WritePapersTo(path),
            Self::Record => Command::WriteRecordTo(path),
            Self::Weather => Command::TakeWeather(path),
            Self::Logger => Command::AskLogger(path),
            Self::ImportPrices => Command::OfferPrices(path),
            Self::ExportPrices => Command::ExportPricesTo(path),
            Self::Finished => Command::LearnFrom(path),
            Self::Photo => Command::TakePhoto(path),
            Self::Logo => Command::TakeLogo(path),
            Self::Outlines => Command::TakeOutlines(path),
        }
    }

    /// The path that is used: what is saved ends in `.ron`, unless another ending was typed.
    pub fn target(self, path: PathBuf) -> PathBuf {
        let ends = self.form() != Form::SaveFile || path.extension().is_some();
        if ends { path } else { path.with_extension("ron") }
    }
}

/// What is to be done with a file that was dropped on the window, by its kind.
pub(super) fn for_dropped(path: PathBuf) -> Command {
    let extension = path.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default();
    match extension.as_str() {
        "epw" => Command::TakeWeather(path),
        // A typical year says so in its second line; other tables are a logger's.
        "csv" if is_typical_year(&path) => Command::TakeWeather(path),
        "csv" | "txt" | "tsv" => Command::AskLogger(path),
        "dxf" | "svg" => Command::TakeOutlines(path),
        "jpg" | "jpeg" | "png" => Command::TakePhoto(path),
        _ => Command::OpenPath(path),
    }
}

/// Whether a table has the heading of a TMY3 file.
fn is_typical_year(path: &std::path::Path) -> bool {
    use std::io::{BufRead as _, BufReader, Read as _};
    let Ok(file) = std::fs::File::open(path) else { return false };
    let mut lines = BufReader::new(file.take(20_000)).lines();
    lines.nth(1).and_then(Result::ok).is_some_and(|line| line.starts_with("Date (MM/DD/YYYY),Time (HH:MM)"))
}
