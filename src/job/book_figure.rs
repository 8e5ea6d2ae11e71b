//! The figures of an entry of a price book, to hold two entries against each other.

use jiff::civil::Date;

use super::catalog::{Catalog, CatalogBoard};
use crate::joint::{Pack, Sealant};
use crate::measure::{Dimension, Hours, Length, Minutes, Money, Percent, ThreePoint};
use crate::named::name_of;
use crate::repair::{
    AlsoPer, BarStep, Material, MaterialPer, Outcome, Paint, RepairMethod, Step, Task, TaskPer,
};
use crate::surface::BoardSpec;
use crate::wood::Kind;

/// What a figure of an entry is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BookField {
    /// What people read.
    Name,
    /// The class of a sealant.
    Class,
    /// What a sealant may be stretched.
    Stretch,
    /// What a sealant may be squeezed.
    Squeeze,
    /// What is left of it when it has dried.
    Solids,
    /// Until a sealant may be painted.
    Cure,
    /// The packs or cans it is sold in, with their prices.
    Packs,
    /// Dry film of a coat.
    Film,
    /// What of a paint reaches the wood.
    Transfer,
    /// What of a paint reaches the wood where it is sprayed.
    Sprayed,
    /// Until the next coat.
    Recoat,
    /// What the amount or the time goes with.
    Per,
    /// What a piece is enough for.
    Coverage,
    /// What a batch is.
    Batch,
    /// Minutes for a batch.
    Minutes,
    /// Minutes besides, however much there is.
    Fixed,
    /// A second rate.
    Also,
    /// The price of a piece.
    Price,
    /// The day of the price.
    Priced,
    /// How far to trust it.
    Kind,
    /// Where it is from.
    Source,
    /// The species of boards.
    Species,
    /// The width of boards that shows.
    FaceWidth,
    /// The width of boards over the tongue.
    OverallWidth,
    /// The thickness of boards.
    Thickness,
    /// Whatever else boards are.
    OtherBoards,
    /// How a repair looks afterward.
    Look,
    /// What a repair means for those who live there.
    Disruption,
    /// What the letter says of a repair.
    Letter,
    /// What a repair leaves at the joints.
    Outcome,
    /// The materials of a repair.
    Materials,
    /// The steps of a repair.
    Steps,
}

impl BookField {
    /// As a key to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Class => "class",
            Self::Stretch => "stretch",
            Self::Squeeze => "squeeze",
            Self::Solids => "solids",
            Self::Cure => "cure",
            Self::Packs => "packs",
            Self::Film => "film",
            Self::Transfer => "transfer",
            Self::Sprayed => "sprayed",
            Self::Recoat => "recoat",
            Self::Per => "per",
            Self::Coverage => "coverage",
            Self::Batch => "batch",
            Self::Minutes => "minutes",
            Self::Fixed => "fixed",
            Self::Also => "also",
            Self::Price => "price",
            Self::Priced => "priced",
            Self::Kind => "kind",
            Self::Source => "source",
            Self::Species => "species",
            Self::FaceWidth => "face-width",
            Self::OverallWidth => "overall-width",
            Self::Thickness => "thickness",
            Self::OtherBoards => "other-boards",
            Self::Look => "look",
            Self::Disruption => "disruption",
            Self::Letter => "letter",
            Self::Outcome => "outcome",
            Self::Materials => "materials",
            Self::Steps => "steps",
        }
    }
}

/// A figure of an entry.
#[derive(Debug, Clone, PartialEq)]
pub enum BookValue {
    /// Text as it was typed, or as the catalog has it.
    Text(String),
    /// A share.
    Percent(Percent),
    /// A time.
    Hours(Hours),
    /// A dry film, micrometers.
    Film(f64),
    /// Packs of a sealant.
    Packs(Vec<Pack>),
    /// Cans of a paint: liters and price.
    Cans(Vec<(f64, Money)>),
    /// What a task's time goes with.
    TaskPer(TaskPer),
    /// What a material's amount goes with.
    MaterialPer(MaterialPer),
    /// What a batch or a piece is for, in SI units.
    Amount(Dimension, f64),
    /// Least, likely and most minutes.
    Minutes(ThreePoint),
    /// Minutes of a task, as expected.
    Took(Minutes),
    /// A second rate of a task.
    Also(AlsoPer),
    /// An amount of money.
    Money(Money),
    /// A day.
    Date(Date),
    /// How far to trust something.
    Kind(Kind),
    /// A size.
    Length(Length),
    /// What else boards are. It is not told in words, only that it differs.
    Boards(Box<BoardSpec>),
    /// What a repair leaves at the joints.
    Outcome(Outcome),
    /// Names in a list.
    Names(Vec<String>),
    /// The steps of a repair in order.
    Steps(Vec<BarStep>),
}

/// The figures of an entry, each by what it is; those that are not known are left out.
pub(super) type BookFigures = Vec<(BookField, BookValue)>;

fn text(text: &str) -> BookValue {
    BookValue::Text(text.to_owned())
}

/// The figures that every priced entry has.
fn priced(priced: Option<Date>, source: &str, kind: Kind) -> BookFigures {
    let day = priced.map(|day| (BookField::Priced, BookValue::Date(day)));
    let from = [(BookField::Source, text(source)), (BookField::Kind, BookValue::Kind(kind))];
    day.into_iter().chain(from).collect()
}

pub(super) fn of_board(named: &CatalogBoard) -> BookFigures {
    let board = &named.board;
    // The sizes have figures of their own.
    let rest = BoardSpec {
        species: String::new(),
        face_width: Length::ZERO,
        overall_width: Length::ZERO,
        thickness: Length::ZERO,
        ..board.clone()
    };
    vec![
        (BookField::Species, text(name_of(&Catalog::built_in().species, &board.species))),
        (BookField::FaceWidth, BookValue::Length(board.face_width)),
        (BookField::OverallWidth, BookValue::Length(board.overall_width)),
        (BookField::Thickness, BookValue::Length(board.thickness)),
        (BookField::OtherBoards, BookValue::Boards(Box::new(rest))),
    ]
}

pub(super) fn of_sealant(sealant: &Sealant) -> BookFigures {
    let mut figures = vec![
        (BookField::Class, text(&sealant.class)),
        (BookField::Stretch, BookValue::Percent(sealant.stretch)),
        (BookField::Squeeze, BookValue::Percent(sealant.squeeze)),
        (BookField::Solids, BookValue::Percent(sealant.solids)),
        (BookField::Cure, BookValue::Hours(sealant.cure)),
        (BookField::Packs, BookValue::Packs(sealant.packs.clone())),
    ];
    figures.extend(priced(sealant.priced, &sealant.source, sealant.kind));
    figures
}

pub(super) fn of_paint(paint: &Paint) -> BookFigures {
    let mut figures = vec![
        (BookField::Solids, BookValue::Percent(paint.solids)),
        (BookField::Film, BookValue::Film(paint.film)),
        (BookField::Transfer, BookValue::Percent(paint.transfer)),
        (BookField::Recoat, BookValue::Hours(paint.recoat)),
        (BookField::Packs, BookValue::Cans(paint.cans.clone())),
    ];
    figures.extend(paint.sprayed.map(|share| (BookField::Sprayed, BookValue::Percent(share))));
    figures.extend(priced(paint.priced, &paint.source, paint.kind));
    figures
}

pub(super) fn of_material(material: &Material) -> BookFigures {
    let mut figures = vec![
        (BookField::Per, BookValue::MaterialPer(material.per)),
        (BookField::Coverage, BookValue::Amount(material.per.dimension(), material.holds)),
        (BookField::Price, BookValue::Money(material.price)),
    ];
    figures.extend(priced(material.priced, &material.source, material.kind));
    figures
}

pub(super) fn of_task(task: &Task) -> BookFigures {
    let mut figures = vec![
        (BookField::Per, BookValue::TaskPer(task.per)),
        (BookField::Batch, BookValue::Amount(task.per.dimension(), task.batch)),
        (BookField::Minutes, BookValue::Minutes(task.minutes)),
    ];
    figures.extend(task.fixed.map(|fixed| (BookField::Fixed, BookValue::Took(fixed))));
    figures.extend(task.also.map(|also| (BookField::Also, BookValue::Also(also))));
    figures.extend(priced(None, &task.source, task.kind));
    figures
}

/// What the tasks and the materials of a price book are called.
#[derive(Debug, Clone, Copy)]
pub(super) struct BookNames<'a> {
    pub tasks: &'a [Task],
    pub materials: &'a [Material],
}

/// The figures of a repair, its tasks and materials by the names that they have in its price book.
pub(super) fn of_method(method: &RepairMethod, book: BookNames<'_>) -> BookFigures {
    let step = |step: &Step| match step {
        Step::Do(id) | Step::Coats(id) => BarStep::Task(name_of(book.tasks, id).to_owned()),
        Step::Wait(wait) => BarStep::Wait(*wait),
    };
    let material = |id: &String| name_of(book.materials, id).to_owned();
    vec![
        (BookField::Look, text(&method.look)),
        (BookField::Disruption, text(&method.upset)),
        (BookField::Letter, text(&method.says)),
        (BookField::Outcome, BookValue::Outcome(method.outcome)),
        (BookField::Materials, BookValue::Names(method.materials.iter().map(material).collect())),
        (BookField::Steps, BookValue::Steps(method.steps.iter().map(step).collect())),
    ]
}
