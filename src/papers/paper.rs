//! The kinds of papers, who reads them, and in which words.

use crate::job::Job;
use crate::words::{Arg, Say, Words, say};

/// A kind of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Paper {
    /// What happened and what will be done, for the homeowner.
    Letter,
    /// What is offered on which terms, to be signed.
    Proposal,
    /// The build-up of the price, for the contractor alone.
    PriceSheet,
    /// What the crew does where, in which order.
    WorkOrder,
    /// The same on one page, for a phone or the wall.
    CrewCard,
    /// What to buy, by aisle.
    BuyingList,
    /// Which joints to read first, with blanks: for the ladder.
    MeasuringSheet,
    /// Readings, method, odds and sources, for a claim on a supplier.
    EvidenceSheet,
    /// What to measure again, where and when.
    FollowUpCard,
    /// What was told, and what later visits found.
    FollowUpReport,
}

/// Who reads a paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Reader {
    /// The homeowner, and whoever they show it to.
    Owner,
    /// Those who do the work.
    Crew,
}

/// The folder of those a paper is meant for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Folder {
    /// The homeowner's.
    Owner,
    /// The crew's and the shop's.
    Crew,
    /// That of a claim on a supplier or an insurer.
    Claim,
    /// What stays in the house.
    Inside,
}

impl Folder {
    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Owner => "owner",
            Self::Crew => "crew",
            Self::Claim => "claim",
            Self::Inside => "inside",
        }
    }
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 10] = [
        Self::Letter,
        Self::Proposal,
        Self::PriceSheet,
        Self::WorkOrder,
        Self::CrewCard,
        Self::BuyingList,
        Self::MeasuringSheet,
        Self::EvidenceSheet,
        Self::FollowUpCard,
        Self::FollowUpReport,
    ];

    /// The stem of its file name, which is also its key in the data of templates.
    pub const fn file_stem(self) -> &'static str {
        match self {
            Self::Letter => "letter",
            Self::Proposal => "proposal",
            Self::PriceSheet => "price-sheet",
            Self::WorkOrder => "work-order",
            Self::CrewCard => "crew-card",
            Self::BuyingList => "buying-list",
            Self::MeasuringSheet => "measuring-sheet",
            Self::EvidenceSheet => "evidence-sheet",
            Self::FollowUpCard => "follow-up-card",
            Self::FollowUpReport => "follow-up-report",
        }
    }

    /// Who reads it.
    pub const fn reader(self) -> Reader {
        match self {
            Self::Letter | Self::Proposal | Self::PriceSheet | Self::EvidenceSheet | Self::FollowUpReport => {
                Reader::Owner
            }
            Self::WorkOrder
            | Self::CrewCard
            | Self::BuyingList
            | Self::MeasuringSheet
            | Self::FollowUpCard => Reader::Crew,
        }
    }

    /// The folder it is written to, so that what is meant for one pair of eyes is not handed to another.
    pub const fn folder(self) -> Folder {
        match self {
            Self::Letter | Self::Proposal | Self::FollowUpReport => Folder::Owner,
            Self::PriceSheet => Folder::Inside,
            Self::EvidenceSheet => Folder::Claim,
            Self::WorkOrder
            | Self::CrewCard
            | Self::BuyingList
            | Self::MeasuringSheet
            | Self::FollowUpCard => Folder::Crew,
        }
    }

    /// The built-in template.
    pub const fn template(self) -> &'static str {
        match self {
            Self::Letter => include_str!("../../assets/papers/letter.typ"),
            Self::Proposal => include_str!("../../assets/papers/proposal.typ"),
            Self::PriceSheet => include_str!("../../assets/papers/price-sheet.typ"),
            Self::CrewCard => include_str!("../../assets/papers/crew-card.typ"),
            Self::MeasuringSheet => include_str!("../../assets/papers/measuring-sheet.typ"),
            Self::WorkOrder => include_str!("../../assets/papers/work-order.typ"),
            Self::BuyingList => include_str!("../../assets/papers/buying-list.typ"),
            Self::EvidenceSheet => include_str!("../../assets/papers/evidence-sheet.typ"),
            Self::FollowUpCard => include_str!("../../assets/papers/follow-up-card.typ"),
            Self::FollowUpReport => include_str!("../../assets/papers/follow-up-report.typ"),
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
