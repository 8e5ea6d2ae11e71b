//! What is handed over: the homeowner's letter, the price sheet, the crew's papers, the evidence.
//!
//! A paper is a typst template in `assets/papers`, or one of the user's own, filled from `data`, with
//! drawings from [`figure`]. Nothing is computed here: every figure comes from the assessment.

mod data;
mod desk;
pub mod figure;
mod site;
mod typeset;
mod words;

pub(crate) use data::needed;
pub use data::weighed;
pub use desk::{Papers, Templates};
pub use figure::picture;
pub use typeset::{PageImage, PaperError, Typeset};
pub use words::Words;

/// A kind of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Paper {
    /// What happened and what will be done, for the homeowner.
    Letter,
    /// The build-up of the price, for the contractor or an insurer.
    PriceSheet,
    /// What the crew does where, in which order.
    WorkOrder,
    /// What to buy, by the part of the shop.
    BuyingList,
    /// Readings, method, odds and sources, for a claim on a supplier.
    EvidenceSheet,
    /// What to measure again, where and when.
    FollowUpCard,
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::Letter,
        Self::PriceSheet,
        Self::WorkOrder,
        Self::BuyingList,
        Self::EvidenceSheet,
        Self::FollowUpCard,
    ];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Letter => "Homeowner's letter",
            Self::PriceSheet => "Price sheet",
            Self::WorkOrder => "Work order",
            Self::BuyingList => "Buying list",
            Self::EvidenceSheet => "Evidence sheet",
            Self::FollowUpCard => "Follow-up card",
        }
    }

    /// The stem of its file name.
    pub const fn file_stem(self) -> &'static str {
        match self {
            Self::Letter => "letter",
            Self::PriceSheet => "price-sheet",
            Self::WorkOrder => "work-order",
            Self::BuyingList => "buying-list",
            Self::EvidenceSheet => "evidence-sheet",
            Self::FollowUpCard => "follow-up-card",
        }
    }

    /// The built-in template.
    pub const fn template(self) -> &'static str {
        match self {
            Self::Letter => include_str!("../../assets/papers/letter.typ"),
            Self::PriceSheet => include_str!("../../assets/papers/price-sheet.typ"),
            Self::WorkOrder => include_str!("../../assets/papers/work-order.typ"),
            Self::BuyingList => include_str!("../../assets/papers/buying-list.typ"),
            Self::EvidenceSheet => include_str!("../../assets/papers/evidence-sheet.typ"),
            Self::FollowUpCard => include_str!("../../assets/papers/follow-up-card.typ"),
        }
    }
}
