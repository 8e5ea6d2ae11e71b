//! Where the fields of a job are entered in the window.

use super::view::Tab;
use crate::job::fields::{Each, Field};

/// The tab in which a field is entered.
pub(super) fn tab_of(field: &Field) -> Tab {
    match field.id {
        "gap-failure" | "work-notes" | "finished" | "actual-hours" | "pieces-used" | "visit-date"
        | "later-gap" => {
            if field.id == "gap-failure" {
                Tab::Measure
            } else {
                Tab::FollowUp
            }
        }
        "price-book" => Tab::Catalog,
        _ if field.each != Each::Job => Tab::Measure,
        _ if field.path.starts_with("plan.") => Tab::Options,
        _ => Tab::Measure,
    }
}
