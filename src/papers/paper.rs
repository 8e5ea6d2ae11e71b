//! The kinds of papers, who reads them, and in which words.

use crate::job::Job;
use crate::words::{Arg, Say, Words, say};

/// A kind of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Paper {
    /// What happened and what will be done, for the homeowner.
    Letter,
    /// The build-up of the price, for the contractor or an insurer.
    PriceSheet,
    /// What the crew does where, in which order.
    WorkOrder,
    /// What to buy, by aisle.
    BuyingList,
    /// Readings, method, odds and sources, for a claim on a supplier.
    EvidenceSheet,
    /// What to measure again, where and when.
    FollowUpCard,
}

/// Who reads a paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Reader {
    /// The homeowner, and whoever they show it to.
    Owner,
    /// Those who do the work.
    Crew,
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

    /// The stem of its file name, which is also its key in the data of templates.
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

    /// Who reads it.
    pub const fn reader(self) -> Reader {
        match self {
            Self::Letter | Self::PriceSheet | Self::EvidenceSheet => Reader::Owner,
            Self::WorkOrder | Self::BuyingList | Self::FollowUpCard => Reader::Crew,
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

impl Say for Paper {
    /// Its name.
    fn say(&self, words: &Words) -> String {
        say!(words, "paper-name", paper = Arg::Id(self.file_stem()))
    }
}

/// The words of the papers, chosen apart for those who read them.
#[derive(Clone, PartialEq)]
pub struct PaperWords {
    /// Of the owner's papers.
    pub owner: Words,
    /// Of the crew's papers.
    pub crew: Words,
}

impl PaperWords {
    /// US English for all, in the job's units and currency.
    pub fn us_english(job: &Job) -> Self {
        let words = Words::of_job(job);
        Self { owner: words.clone(), crew: words }
    }

    /// Those for this reader.
    pub const fn of(&self, reader: Reader) -> &Words {
        match reader {
            Reader::Owner => &self.owner,
            Reader::Crew => &self.crew,
        }
    }
}
