//! Where the fields of a job are entered in the window.

use super::view::Tab;
use crate::job::fields::Field;

/// The tab of every part of a job's file, by where its path begins; the longest that fits counts.
const PARTS: [(&str, Tab); 33] = [
    ("title", Tab::Measure),
    ("owner", Tab::Measure),
    ("address", Tab::Measure),
    ("phone", Tab::Measure),
    ("getting_in", Tab::Measure),
    ("contractor", Tab::Measure),
    ("received", Tab::Measure),
    ("notes", Tab::Measure),
    ("units", Tab::Measure),
    ("built", Tab::Measure),
    ("installed", Tab::Measure),
    ("visited", Tab::Measure),
    ("surfaces", Tab::Measure),
    ("survey", Tab::Measure),
    ("air", Tab::Measure),
    ("logged", Tab::Measure),
    ("plan", Tab::Price),
    // What is chosen with the option and its bead.
    ("plan.chosen", Tab::Options),
    ("plan.as_recommended", Tab::Options),
    ("plan.sealant", Tab::Options),
    ("plan.scope", Tab::Options),
    ("plan.open_from", Tab::Options),
    ("plan.narrowest", Tab::Options),
    ("plan.seal_on", Tab::Options),
    ("plan.bead", Tab::Options),
    ("plan.two_visits", Tab::Options),
    // What new boards should be when they arrive is worked out beside the cause.
    ("plan.delivered_at", Tab::Why),
    ("wording", Tab::Papers),
    ("proposal", Tab::Papers),
    ("shelf", Tab::Catalog),
    ("done", Tab::FollowUp),
    ("later", Tab::FollowUp),
    ("next_install", Tab::NextInstall),
];

/// The tab in which a field is entered.
pub(super) fn tab_of(field: &Field) -> Tab {
    part_of(field).map_or(Tab::Measure, |(_, tab)| *tab)
}

/// The part of a job's file that a field stands in.
fn part_of(field: &Field) -> Option<&'static (&'static str, Tab)> {
    let inside = |part: &&(&str, Tab)| {
        field.path.strip_prefix(part.0).is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
    };
    PARTS.iter().filter(inside).max_by_key(|(part, _)| part.len())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::fields::{self, FIELDS};

    #[test]
    fn every_field_has_a_tab_and_every_part_a_field() {
        for field in FIELDS.iter() {
            assert!(part_of(field).is_some(), "{} has no tab", field.id);
        }
        for part in &PARTS {
            assert!(FIELDS.iter().any(|field| part_of(field) == Some(part)), "{} has no field", part.0);
        }
        assert_eq!(tab_of(&fields::DELIVERED_AT), Tab::Why);
        assert_eq!(tab_of(&fields::V_FILL), Tab::Options);
        assert_eq!(tab_of(&fields::WAGE), Tab::Price);
        assert_eq!(tab_of(&fields::LATER_GAP), Tab::FollowUp);
    }
}
