//! Whether boards can be hung on the day they are wanted.

use super::gate::{Gate, Verdict};
use super::known::HangDay;

/// Whether they can.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Can {
    /// They can.
    Yes,
    /// They are nearly there: a little short of the chance that is waited for.
    Close,
    /// They can't.
    No,
    /// Too few were measured to tell, or the day is farther off than a stack is followed.
    Unknown,
    /// The day is over.
    Past,
}

impl Can {
    /// Its key in messages and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::Close => "close",
            Self::No => "no",
            Self::Unknown => "unknown",
            Self::Past => "past",
        }
    }
}

/// The answer to the day that boards are wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wanted {
    /// The day, from the delivery.
    pub on: i64,
    /// Whether they can be hung then.
    pub can: Can,
    /// The chance then, with what the stack needs first; `None` where nothing was measured, or nothing is known of
    /// that day.
    pub chance: Option<f64>,
    /// The day they can be hung on and the chance then, if that is another.
    pub instead: Option<(i64, f64)>,
}

impl Wanted {
    /// Of boards wanted on a day, `today` being the day spoken of; `chance` is what they have on that day, `enough` what
    /// boards are hung with, and `hang` the day they are hung on.
    pub(super) fn on(
        wanted: i64,
        today: i64,
        (gate, enough): (&Gate, f64),
        chance: Option<f64>,
        hang: Option<&HangDay>,
    ) -> Self {
        let good = chance.is_some_and(|chance| chance >= enough);
        let can = match gate.verdict {
            Verdict::Measure | Verdict::MeterMore => Can::Unknown,
            _ if wanted < today => Can::Past,
            Verdict::SendBack | Verdict::ChangePlan => Can::No,
            _ if chance.is_none() => Can::Unknown,
            Verdict::Hang | Verdict::Wait | Verdict::Sort if !good => Can::No,
            Verdict::Wait if gate.late => Can::Close,
            Verdict::Hang | Verdict::Wait | Verdict::Sort => Can::Yes,
        };
        let instead = hang.filter(|hang| can != Can::Yes && hang.day != wanted);
        Self {
            on: wanted,
            can,
            chance: chance.filter(|_| can != Can::Past && gate.verdict != Verdict::Measure),
            instead: instead.map(|hang| (hang.day, hang.chance)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ready::Chances;

    fn answer(verdict: Verdict, late: bool, wanted: i64, chance: Option<f64>) -> Can {
        let gate = Gate {
            verdict,
            now: Chances::default(),
            waiting: 0.0,
            best: 0.0,
            late,
            first: None,
            caulk_fails: false,
            dry: false,
        };
        Wanted::on(wanted, 3, (&gate, 0.91), chance, None).can
    }

    #[test]
    fn every_day_has_an_answer_and_none_is_given_before_boards_are_metered() {
        assert_eq!(answer(Verdict::Measure, false, 14, Some(0.99)), Can::Unknown);
        assert_eq!(answer(Verdict::MeterMore, false, 14, Some(0.99)), Can::Unknown);
        assert_eq!(answer(Verdict::Hang, false, 14, Some(0.95)), Can::Yes);
        assert_eq!(answer(Verdict::Hang, false, 14, Some(0.6)), Can::No);
        assert_eq!(answer(Verdict::Hang, false, 400, None), Can::Unknown);
        assert_eq!(answer(Verdict::Hang, false, 2, Some(0.95)), Can::Past);
        assert_eq!(answer(Verdict::Wait, true, 14, Some(0.5)), Can::No);
        assert_eq!(answer(Verdict::Wait, true, 14, Some(0.92)), Can::Close);
        assert_eq!(answer(Verdict::Wait, false, 14, Some(0.95)), Can::Yes);
        assert_eq!(answer(Verdict::SendBack, false, 14, Some(0.95)), Can::No);
    }
}
