//! What a proposal needs besides the repair itself.

use jiff::ToSpan as _;
use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The terms of a proposal. What is left empty prints as a blank to fill in by hand, or is left to the
/// program's usual wording.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct ProposalTerms {
    /// Its number.
    pub number: String,
    /// Days from its date on which it can be accepted; zero leaves the last day blank.
    pub valid_days: u32,
    /// When what is due; empty for the deposit before work starts and the rest at its end.
    pub payment: String,
    /// What is not included besides the usual, a line for each.
    pub exclusions: String,
}

impl Default for ProposalTerms {
    /// Good for a month, with the usual terms.
    fn default() -> Self {
        Self { number: String::new(), valid_days: 30, payment: String::new(), exclusions: String::new() }
    }
}

impl ProposalTerms {
    /// The last day on which a proposal of this day can be accepted; `None` where no days are set.
    pub fn valid_until(&self, dated: Date) -> Option<Date> {
        (self.valid_days > 0).then(|| dated.checked_add(i64::from(self.valid_days).days()).unwrap_or(dated))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 30 days after Feb 14, 2026 is Mar 16, for February has 28.
    #[test]
    fn it_is_good_for_so_many_days() {
        let dated = jiff::civil::date(2026, 2, 14);
        let terms = ProposalTerms::default();
        assert_eq!(terms.valid_until(dated), Some(jiff::civil::date(2026, 3, 16)));
        assert_eq!(ProposalTerms { valid_days: 0, ..terms }.valid_until(dated), None);
    }
}
