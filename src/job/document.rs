//! The job as the user entered it.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::catalog::Catalog;
use super::letterhead::{Contractor, OwnWords};
use super::price_book::PriceBook;
use super::promise::Promise;
use super::proposal::ProposalTerms;
use super::received::BoardsReceived;
use crate::air::{IndoorAir, LoggedAir, WinterAir};
use crate::measure::{DateText, DayOrMonth, Length, Units};
use crate::ready::NextInstall;
use crate::repair::{Done, Plan, RoundTo};
use crate::surface::{Joint, Point, Section, Surface, layout};
use crate::survey::{LaterVisit, Survey};

/// The version of the file format that this program writes. Older ones are read.
pub const VERSION: u32 = 1;

/// A job. Every part may be missing in a file; then it is as in a new job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, rename = "Job", deny_unknown_fields)]
pub struct Job {
    /// Version of the file format.
    pub version: u32,
    /// What the job is called.
    pub title: String,
    /// The homeowner's name.
    pub owner: String,
    /// Where it is.
    pub address: String,
    /// The homeowner's telephone.
    pub phone: String,
    /// How the crew gets in: key, parking, pets.
    pub getting_in: String,
    /// Who does it.
    pub contractor: Contractor,
    /// The terms of the proposal.
    pub proposal: ProposalTerms,
    /// Parts of the letter that were worded otherwise.
    pub wording: Vec<OwnWords>,
    /// Free notes.
    pub notes: String,
    /// Units in which lengths and the rest are typed and shown.
    pub units: Units,
    /// Year the house was built, if known: for the cautions.
    pub built: Option<i16>,
    /// When the boards were installed; the month alone if the day is not known.
    pub installed: Option<DayOrMonth>,
    /// How the boards came, and where they lay.
    pub received: BoardsReceived,
    /// The day of the visit, on which the readings were taken.
    #[schemars(with = "DateText")]
    pub visited: Date,
    /// The boarded surfaces.
    pub surfaces: Vec<Surface>,
    /// What was measured.
    pub survey: Survey,
    /// The room's air through the year.
    pub air: IndoorAir,
    /// What a logger in the room saw; it goes before the model on its days.
    pub logged: Option<LoggedAir>,
    /// What is to be done.
    pub plan: Plan,
    /// The figures of the shelf that the job goes by, kept with it so that it never changes by itself;
    /// `None` before it was first saved.
    #[serde(rename = "shelf")]
    pub price_book: Option<PriceBook>,
    /// What the papers told; `None` before they were written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub promise: Option<Promise>,
    /// What the work took.
    pub done: Done,
    /// Later visits.
    pub later: Vec<LaterVisit>,
    /// Boards that are to go up next in this room.
    pub next_install: Option<NextInstall>,
    /// Fields of the file that this program does not know, as they are written there: they are kept.
    #[serde(skip)]
    pub unknown: Vec<String>,
}

impl Default for Job {
    /// An empty job, visited on a fixed day: the window sets it to today.
    fn default() -> Self {
        Self {
            version: VERSION,
            title: String::new(),
            owner: String::new(),
            address: String::new(),
            phone: String::new(),
            getting_in: String::new(),
            contractor: Contractor::default(),
            proposal: ProposalTerms::default(),
            wording: Vec::new(),
            notes: String::new(),
            units: Units::default(),
            built: None,
            installed: None,
            received: BoardsReceived::default(),
            visited: jiff::civil::date(2026, 1, 15),
            surfaces: Vec::new(),
            survey: Survey::default(),
            air: IndoorAir::default(),
            logged: None,
            plan: Plan::default(),
            price_book: None,
            promise: None,
            done: Done::default(),
            later: Vec::new(),
            next_install: None,
            unknown: Vec::new(),
        }
    }
}

impl Job {
    /// An empty job visited on `today`, in a room whose winter air is the usual one, its price rounded to
    /// ten. A file that says nothing of the air or of rounding keeps what files were always read with.
    pub fn new(today: Date) -> Self {
        let mut job = Self { visited: today, ..Self::default() };
        job.plan.prices.round_to = RoundTo::Ten;
        job.plan.as_recommended = true;
        if let Some(house) = job.air.house_mut() {
            Catalog::built_in().household.set_winter(house, WinterAir::Usual);
        }
        job
    }

    /// A job of its own for boards that go up next in the same room: the same house, air and people, the boards as
    /// those of the first section, and nothing of what opened.
    pub fn next_install_here(&self, today: Date) -> Self {
        let mut boards =
            self.surfaces.iter().flat_map(|surface| &surface.sections).map(|section| &section.board);
        let install = NextInstall::begun_on(today);
        let boards = boards.next().cloned().unwrap_or(install.boards);
        let mut next = Self {
            title: self.title.clone(),
            owner: self.owner.clone(),
            address: self.address.clone(),
            phone: self.phone.clone(),
            getting_in: self.getting_in.clone(),
            contractor: self.contractor.clone(),
            units: self.units,
            built: self.built,
            visited: today,
            air: self.air.clone(),
            logged: self.logged.clone(),
            next_install: Some(NextInstall { boards, ..install }),
            ..Self::default()
        };
        // A reading keeps its day: it says of the room what it said then.
        next.survey.rooms = self
            .survey
            .rooms
            .iter()
            .cloned()
            .map(|mut reading| {
                reading.date = reading.date.or(Some(self.visited));
                reading
            })
            .collect();
        next.plan.callback = self.plan.callback.clone();
        next.plan.sealant.clone_from(&self.plan.sealant);
        next.plan.prices.currency.clone_from(&self.plan.prices.currency);
        next
    }

    /// The job to follow an install up by, on the day of a visit: a ceiling as large as the boards cover, so that
    /// gaps can be measured in it. `None` without a day on which the boards were hung.
    pub fn follow_up_of_install(&self, today: Date) -> Option<Self> {
        let next = self.next_install.as_ref()?;
        let hung = next.hung?;
        let mut job =
            Self { next_install: None, visited: today, installed: Some(hung.into()), ..self.clone() };
        if job.surfaces.is_empty() {
            let length = next.boards.longest.unwrap_or(Length::feet(8.0));
            let across = next.boards.face_width * f64::from(next.count.max(1));
            let corners = [
                (Length::ZERO, Length::ZERO),
                (length, Length::ZERO),
                (length, across),
                (Length::ZERO, across),
            ];
            job.surfaces.push(Surface {
                name: "1".to_owned(),
                outline: corners.map(|(x, y)| Point(x, y)).to_vec(),
                sections: vec![Section {
                    name: "A".to_owned(),
                    board: next.boards.clone(),
                    ..Section::default()
                }],
                ..Surface::default()
            });
        }
        Some(job)
    }

    /// Renames a section and the readings and trial that refer to it, so that none is orphaned.
    pub fn rename_section(&mut self, surface: usize, section: usize, name: &str) {
        let Some(on) = self.surfaces.get_mut(surface) else { return };
        let Some(renamed) = on.sections.get_mut(section) else { return };
        let old = std::mem::replace(&mut renamed.name, name.to_owned());
        let (surface, old_label) = (on.name.clone(), format!("{old} "));
        for (_, joint) in self.named_joints().filter(|(on, _)| **on == surface) {
            if let Some(rest) = joint.strip_prefix(&old_label) {
                *joint = format!("{name} {rest}");
            }
        }
        for reading in self.survey.moistures.iter_mut().filter(|r| r.surface == surface && r.section == old) {
            reading.section = name.to_owned();
        }
        if let Some(trial) = self.plan.trial.as_mut().filter(|t| t.surface == surface && t.section == old) {
            trial.section = name.to_owned();
        }
    }

    /// Changes the drawing of a surface. Readings stay at their place in the room: a joint that is called
    /// otherwise afterwards takes its readings along.
    pub fn redraw(&mut self, surface: usize, change: impl FnOnce(&mut Surface)) {
        let Some(drawn) = self.surfaces.get_mut(surface) else { return };
        let before = layout(drawn);
        change(drawn);
        let after = layout(drawn);
        let name = drawn.name.clone();
        let moved = |label: &str| {
            let old = before.joints.iter().find(|joint| joint.label == label)?;
            let apart = |joint: &Joint| joint.distance_to(old.middle()) + f64::from(joint.kind != old.kind);
            let nearest = after.joints.iter().min_by(|a, b| apart(a).total_cmp(&apart(b)))?;
            // Farther off than a board it is another joint.
            (apart(nearest) < 0.14 && nearest.label != label).then(|| nearest.label.clone())
        };
        for (_, joint) in self.named_joints().filter(|(on, _)| **on == name) {
            if let Some(label) = moved(joint) {
                *joint = label;
            }
        }
    }

    /// A name that no surface has yet: the wanted one, or else with the first number from 2 that is free.
    pub fn free_surface_name(&self, wanted: &str) -> String {
        let taken = |name: &str| self.surfaces.iter().any(|surface| surface.name == name);
        let numbered = (2..).map(|number| format!("{wanted} {number}"));
        std::iter::once(wanted.to_owned()).chain(numbered).find(|name| !taken(name)).unwrap_or_default()
    }

    /// Renames a surface and the readings and trial that refer to it.
    pub fn rename_surface(&mut self, surface: usize, name: &str) {
        let Some(renamed) = self.surfaces.get_mut(surface) else { return };
        let old = std::mem::replace(&mut renamed.name, name.to_owned());
        for (surface, _) in self.named_joints().filter(|(surface, _)| **surface == old) {
            name.clone_into(surface);
        }
        for reading in self.survey.moistures.iter_mut().filter(|r| r.surface == old) {
            reading.surface = name.to_owned();
        }
        if let Some(trial) = self.plan.trial.as_mut().filter(|t| t.surface == old) {
            trial.surface = name.to_owned();
        }
    }

    /// Surface and joint by which readings, later visits and what was told of joints refer to them.
    fn named_joints(&mut self) -> impl Iterator<Item = (&mut String, &mut String)> {
        let gaps = self.survey.gaps.iter_mut().map(|gap| (&mut gap.surface, &mut gap.joint));
        let later = self.later.iter_mut().flat_map(|visit| &mut visit.gaps);
        let later = later.map(|gap| (&mut gap.surface, &mut gap.joint));
        let told = self.promise.iter_mut().flat_map(|promise| &mut promise.joints);
        gaps.chain(later).chain(told.map(|told| (&mut told.surface, &mut told.joint)))
    }

    /// Whether what the papers tell today is still what later visits are to be held against: not once the work is
    /// done, or a joint was looked at again.
    pub fn may_promise(&self) -> bool {
        self.done.finished.is_none() && self.later.iter().all(|visit| visit.gaps.is_empty())
    }
}
