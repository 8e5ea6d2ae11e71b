//! What can have opened the joints, alone or together.

use serde::{Deserialize, Serialize};

use crate::wood::Kind;

/// A cause of open joints.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Cause {
    /// The boards were wetter at install than the room keeps them.
    WetAtInstall,
    /// The boards were dry enough at install, and follow the air through the year.
    Seasonal,
    /// The sealant failed below its rating, at a movement any good bead takes.
    WeakSealant,
    /// Framing or fastening moved: one line opened.
    FramingMoved,
    /// A part got wet and dried again.
    WettedAndDried,
    /// Paint or sealant bonded boards into groups.
    BondedGroups,
}

impl Cause {
    /// All of them, in the order shown.
    pub const ALL: [Self; 6] = [
        Self::WetAtInstall,
        Self::Seasonal,
        Self::WeakSealant,
        Self::FramingMoved,
        Self::WettedAndDried,
        Self::BondedGroups,
    ];

    /// Its key in files for other programs and in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::WetAtInstall => "wet_at_install",
            Self::Seasonal => "seasonal",
            Self::WeakSealant => "weak_sealant",
            Self::FramingMoved => "framing_moved",
            Self::WettedAndDried => "wetted_and_dried",
            Self::BondedGroups => "bonded_groups",
        }
    }
}

/// What happened on top of drying or the seasons.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OtherCause {
    /// Nothing.
    Nothing,
    /// The sealant was weak.
    WeakSealant,
    /// One line moved.
    Framing,
    /// A part was wetted.
    Wetted,
}

/// One account of what happened: wet boards or only the seasons, whether boards are bonded, and what
/// happened on top.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hypothesis {
    /// Whether the boards were too wet at install, rather than dry enough.
    pub wet: bool,
    /// Whether boards are bonded in groups.
    pub bonded: bool,
    /// What happened on top.
    pub other_cause: OtherCause,
}

impl Hypothesis {
    /// Boards that were dry enough, and nothing else.
    pub const PLAIN: Self = Self { wet: false, bonded: false, other_cause: OtherCause::Nothing };

    /// All accounts.
    pub fn all() -> Vec<Self> {
        let other_cause =
            [OtherCause::Nothing, OtherCause::WeakSealant, OtherCause::Framing, OtherCause::Wetted];
        let with = |wet, bonded| other_cause.map(|other_cause| Self { wet, bonded, other_cause });
        [with(true, false), with(true, true), with(false, false), with(false, true)].concat()
    }

    /// Whether a cause plays a part in it.
    pub fn has(&self, cause: Cause) -> bool {
        match cause {
            Cause::WetAtInstall => self.wet,
            Cause::Seasonal => !self.wet,
            Cause::WeakSealant => self.other_cause == OtherCause::WeakSealant,
            Cause::FramingMoved => self.other_cause == OtherCause::Framing,
            Cause::WettedAndDried => self.other_cause == OtherCause::Wetted,
            Cause::BondedGroups => self.bonded,
        }
    }

    /// The cause it is called by: what happened on top, else the drying or the seasons.
    pub const fn main(&self) -> Cause {
        match self.other_cause {
            OtherCause::WeakSealant => Cause::WeakSealant,
            OtherCause::Framing => Cause::FramingMoved,
            OtherCause::Wetted => Cause::WettedAndDried,
            OtherCause::Nothing if self.wet => Cause::WetAtInstall,
            OtherCause::Nothing => Cause::Seasonal,
        }
    }
}

/// How often each cause is expected to play a part, 0 to 1, with the source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CausePriors {
    /// Boards too wet at install, rather than right.
    pub wet_at_install: f64,
    /// A weak sealant.
    pub weak_sealant: f64,
    /// Framing that moved.
    pub framing_moved: f64,
    /// A wetted part.
    pub wetted_and_dried: f64,
    /// Bonded groups.
    pub bonded_groups: f64,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

impl CausePriors {
    /// How often a cause is expected to play a part, 0 to 1.
    pub const fn of(&self, cause: Cause) -> f64 {
        match cause {
            Cause::WetAtInstall => self.wet_at_install,
            Cause::Seasonal => 1.0 - self.wet_at_install,
            Cause::WeakSealant => self.weak_sealant,
            Cause::FramingMoved => self.framing_moved,
            Cause::WettedAndDried => self.wetted_and_dried,
            Cause::BondedGroups => self.bonded_groups,
        }
    }

    /// How often this account is expected, whatever the boards were at install.
    pub fn on_top(&self, hypothesis: &Hypothesis) -> f64 {
        let bonded = if hypothesis.bonded { self.bonded_groups } else { 1.0 - self.bonded_groups };
        let other_cause = match hypothesis.other_cause {
            OtherCause::WeakSealant => self.weak_sealant,
            OtherCause::Framing => self.framing_moved,
            OtherCause::Wetted => self.wetted_and_dried,
            OtherCause::Nothing => 1.0 - self.weak_sealant - self.framing_moved - self.wetted_and_dried,
        };
        bonded * other_cause
    }
}
