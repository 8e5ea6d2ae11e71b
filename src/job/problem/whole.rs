//! Faults of what entries make together: surfaces, the plan, the price book, the state of a section.

use crate::job::book_entry::EntryFault;
use crate::measure::{Length, Moisture, Money, Percent, ThreePoint};
use crate::repair::PriceLine;

/// What is wrong with surfaces and their boards, beside their drawing.
#[derive(Debug, Clone, PartialEq)]
pub enum LayoutFault {
    /// A surface has no sections.
    NoBoards {
        /// Its name.
        surface: String,
    },
    /// Two surfaces have the same name.
    SameSurface {
        /// The name.
        name: String,
    },
    /// Two sections of a surface have the same name.
    SameSection {
        /// The name.
        name: String,
    },
    /// The edge profiles of a board would meet.
    ProfileTooWide {
        /// Size of the profile.
        size: Length,
        /// Half the face of the board, which is used in its place.
        used: Length,
    },
}

/// What is wrong with the plan.
#[derive(Debug, Clone, PartialEq)]
pub enum PlanFault {
    /// The contractor and the supplier pay more than the whole.
    SharesOverWhole {
        /// The line of the price; `None` for the price as a whole.
        line: Option<PriceLine>,
        /// The contractor's share.
        contractor: Percent,
        /// The supplier's share.
        supplier: Percent,
        /// The supplier's share that is used.
        used: Percent,
    },
    /// No stock length is long enough for the longest board.
    StockTooShort {
        /// The longest board.
        board: Length,
        /// The longest stock length.
        stock: Length,
        /// What of it is good after ends and defects.
        good: Length,
    },
    /// There is no stock length.
    NoStock,
    /// The minutes of a task do not rise from least to most.
    MinutesOutOfOrder {
        /// Id of the task.
        task: String,
        /// The minutes.
        minutes: ThreePoint,
    },
    /// Minutes are of a task that there is no longer, or whose time goes with something else now.
    NoSuchTask {
        /// Id of the task.
        task: String,
    },
    /// A wage so high that it is most likely what an hour is charged at, with everything in it.
    WageLikeCharge {
        /// The wage.
        wage: Money,
        /// What an hour is charged at with it.
        charged: Money,
    },
    /// A section was timed, and the minutes are still to be typed.
    NoTimedMinutes,
    /// The section that was timed is not in the drawing.
    NoSuchTimedSection {
        /// Its surface.
        surface: String,
        /// Its name.
        section: String,
    },
}

/// What is wrong with the price book.
#[derive(Debug, Clone, PartialEq)]
pub enum BookFault {
    /// An entry of the price book cannot be used.
    BookEntry {
        /// Its name.
        entry: String,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// A repair method of the user's own has a step that is no task.
    UnknownStep {
        /// The method.
        method: String,
        /// The step.
        step: String,
    },
    /// Rates kept with the job are not used: the time of those tasks goes with something else now.
    FormerRates {
        /// Names of the tasks.
        tasks: Vec<String>,
    },
    /// Prices are older than a year.
    OldPrices {
        /// What they are of.
        names: Vec<String>,
    },
}

/// What the physics finds wrong with a section.
#[derive(Debug, Clone, PartialEq)]
pub enum SectionFault {
    /// A section's gaps are wider than drying from green explains.
    BeyondDrying {
        /// The mean gap.
        gap: Length,
    },
    /// Paint and backing let no water through at all.
    SealedOff,
    /// Joints open past the tongue at the driest.
    OpensPastTongue {
        /// The widest gap of the year.
        gap: Length,
        /// Length of the tongue.
        tongue: Length,
    },
    /// Boards are wetter than their room keeps them.
    Wetted {
        /// Their moisture.
        moisture: Moisture,
        /// The wettest that the room keeps them.
        wettest: Moisture,
    },
    /// Boards push at joints that close.
    Pushes {
        /// How many measured joints close.
        joints: usize,
        /// The joint that is pushed most.
        most: String,
        /// By how much.
        push: Length,
    },
}
