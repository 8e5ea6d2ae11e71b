//! What the window shows of the job: nothing of it is saved in the job.

use std::cell::Cell;
use std::collections::HashMap;

use eframe::egui::{Rect, Vec2};
use serde::{Deserialize, Serialize};

use super::air_import::{AirRemark, LoggerImport};
use super::languages::LanguageTags;
use crate::air::places::Place;
use crate::assess::EntryPlace;
use crate::job::{Job, Lessons, PriceBook};
use crate::measure::Units;
use crate::surface::{NewSurface, Point};

/// A tab of the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Tab {
    /// Layout, boards, readings, house.
    #[default]
    Measure,
    /// What did it.
    Why,
    /// The ways to repair it.
    Options,
    /// Days, crew, money.
    Price,
    /// What comes out.
    Papers,
    /// What the work took and how it lasts.
    FollowUp,
    /// Boards that are to go up next.
    NextInstall,
    /// The figures the job goes by.
    Catalog,
}

impl Tab {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Measure,
        Self::Why,
        Self::Options,
        Self::Price,
        Self::Papers,
        Self::FollowUp,
        Self::NextInstall,
        Self::Catalog,
    ];

    /// The tab to open a job in: the one shown, but that of the next install for a job that is about nothing else.
    pub const fn for_job(self, job: &Job) -> Self {
        if job.surfaces.is_empty() && job.next_install.is_some() { Self::NextInstall } else { self }
    }

    /// The message of its name.
    pub const fn message(self) -> &'static str {
        match self {
            Self::Measure => "tab-measure",
            Self::Why => "tab-why",
            Self::Options => "tab-options",
            Self::Price => "tab-price",
            Self::Papers => "tab-papers",
            Self::FollowUp => "tab-follow-up",
            Self::NextInstall => "tab-next-install",
            Self::Catalog => "tab-catalog",
        }
    }
}

/// What the pointer does in the drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Tool {
    /// Selects joints, whose gaps are typed.
    #[default]
    Measure,
    /// Moves corners and sets lengths.
    Shape,
    /// Draws a divider.
    Divider,
    /// Draws an opening.
    Opening,
    /// Pins photos.
    Photo,
}

impl Tool {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Measure, Self::Shape, Self::Divider, Self::Opening, Self::Photo];

    /// Its message: the name as the value, what it does as the `hint`.
    pub const fn message(self) -> &'static str {
        match self {
            Self::Measure => "tool-measure",
            Self::Shape => "tool-shape",
            Self::Divider => "tool-divider",
            Self::Opening => "tool-opening",
            Self::Photo => "tool-photo",
        }
    }
}

/// A point that is being dragged, or a line or rectangle that is being drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drag {
    /// Where it began.
    pub from: Point,
    /// Where it is.
    pub to: Point,
}

/// A joint of a surface, by its label: it survives a change of the layout.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Selected {
    /// Index of the surface.
    pub surface: usize,
    /// Label of the joint.
    pub joint: String,
}

/// How a surface is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Camera {
    /// Zoom over showing all of it.
    pub zoom: f32,
    /// Shift in points.
    pub shift: Vec2,
}

impl Default for Camera {
    fn default() -> Self {
        Self { zoom: 1.0, shift: Vec2::ZERO }
    }
}

/// A gap through the coming days as it was when it was kept.
#[derive(Debug, Clone, PartialEq)]
pub struct ReferenceCurve {
    /// What it is of.
    pub name: String,
    /// Days from the visit and gaps, mm.
    pub gap: Vec<[f64; 2]>,
    /// Day of sealing, and the gaps between which the bead holds, mm.
    pub limits: Option<(f64, f64, f64)>,
}

/// What is selected in the drawing.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Selection {
    /// The joint whose gap is typed.
    pub joint: Option<Selected>,
    /// Other joints of the same surface that are set together with it, by label.
    pub more: Vec<String>,
    /// Where a rectangle around joints began, in points of the screen.
    pub marquee: Option<eframe::egui::Pos2>,
    /// Whether the gap field is to take the focus.
    pub focus_gap: bool,
}

/// The day that is looked at.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct TimeView {
    /// The day the drawing shows, counted from the visit.
    pub day: i64,
    /// Whether the days run.
    pub playing: bool,
    /// Whether moisture and humidity are shown under the gap.
    pub with_air: bool,
    /// A gap's curve that is kept to compare with.
    pub reference: Option<ReferenceCurve>,
}

/// The drawing: how it is looked at, and what is being drawn in it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Canvas {
    /// How each surface is looked at.
    pub cameras: HashMap<usize, Camera>,
    /// What the pointer does in the drawing.
    pub tool: Tool,
    /// What is being dragged or drawn.
    pub drag: Option<Drag>,
    /// The edge of the outline whose length is being typed.
    pub typed_edge: Option<usize>,
    /// Whether the field for that length is to take the focus.
    pub focus_edge: bool,
    /// The photo that is looked at, of the surface shown.
    pub photo: Option<usize>,
    /// Where the drawing is on the screen.
    pub area: Option<Rect>,
}

/// Places to choose from.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceChoices {
    /// What was typed.
    pub typed: String,
    /// What is said of them.
    pub lead: String,
    /// The places, the likeliest first.
    pub places: Vec<Place>,
}

/// What is being prepared and not yet part of the job.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Drafts {
    /// A surface being described.
    pub surface: NewSurface,
    /// Whether its first size is to take the keyboard.
    pub take_size: bool,
    /// A logger's file whose layout is to be confirmed.
    pub logger: Option<LoggerImport>,
    /// Places that may be meant by what was typed.
    pub places: Option<PlaceChoices>,
    /// What was odd about the weather or logger's file that was read last.
    pub air_remarks: Vec<AirRemark>,
    /// Prices that are offered in place of the job's, with where they are from.
    pub offered: Option<(String, PriceBook)>,
    /// What finished jobs taught, with how many there were.
    pub learned: Option<(usize, Lessons)>,
    /// Where the photo belongs that is being chosen.
    pub photo_at: Option<Point>,
}

/// What the homeowner is shown.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Presentation {
    /// The page that is shown; `None` at work.
    pub page: Option<usize>,
    /// Whether prices are shown.
    pub prices: bool,
}

/// Which paper is looked at.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PaperView {
    /// The paper that is previewed.
    pub index: usize,
    /// The page of it that is read, large.
    pub page: Option<usize>,
    /// Whether papers that cannot be stood for are written as well, as drafts.
    pub drafts: bool,
}

/// The state of the view: nothing of it is part of the job.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct View {
    /// The tab that is open.
    pub tab: Tab,
    /// The surface that is shown.
    pub surface: usize,
    /// What is selected in it.
    pub selection: Selection,
    /// The day that is looked at.
    pub time: TimeView,
    /// The drawing.
    pub canvas: Canvas,
    /// What is being prepared.
    pub drafts: Drafts,
    /// What the homeowner is shown.
    pub presentation: Presentation,
    /// Which paper is looked at.
    pub papers: PaperView,
    /// What is typed to find a command, and which of those found is at hand.
    pub search: Option<(String, usize)>,
    /// Whether it is told what the program is.
    pub about: bool,
    /// The shares of the window at which panes were left, by name.
    pub panes: HashMap<String, f32>,
    /// The fields that could not be read and were told of before papers were written without them.
    pub told_of: Vec<String>,
    /// What the tab is to bring into sight.
    pub scroll_to: Cell<Option<EntryPlace>>,
}

/// What is remembered between runs.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Files opened lately, newest first.
    pub recent: Vec<std::path::PathBuf>,
    /// Whether the dark theme is on.
    pub dark: bool,
    /// The languages of the window and of the papers.
    pub languages: LanguageTags,
    /// The tab that was open.
    pub tab: Tab,
    /// The shares of the window at which panes were left, by name.
    pub panes: HashMap<String, f32>,
    /// The folder papers were written to.
    pub papers: Option<std::path::PathBuf>,
    /// The units that were chosen last, for new jobs.
    pub units: Units,
}

impl Settings {
    /// Puts a file at the top of the recent ones.
    pub fn remember(&mut self, path: &std::path::Path) {
        self.recent.retain(|known| known != path);
        self.recent.insert(0, path.to_owned());
        self.recent.truncate(8);
    }
}
