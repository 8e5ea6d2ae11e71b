//! Fields of what came afterwards: the work, later visits.

use super::{WIDEST_GAP, by_id, fields, optional};
use crate::job::fields::Kind;
use crate::measure::{Hours, Length};

fields! {
    /// The day the work was finished.
    FINISHED = "finished", "done.finished", Job, Kind::Date;
    /// Hours that tasks took.
    ACTUAL_HOURS = "actual-hours", "done.hours", Job, by_id!(done.hours, Hours, Hours::ZERO, Hours::h(100_000.0));
    /// Pieces that were used.
    PIECES_USED = "pieces-used", "done.pieces", Job, by_id!(done.pieces, Count, 0, 1_000_000);
    /// Notes on the work.
    WORK_NOTES = "work-notes", "done.note", Job, Kind::Text;
    /// The day of a later visit.
    VISIT_DATE = "visit-date", "later[].on", Visit, Kind::Date;
    /// The joint of a gap at a later visit.
    LATER_JOINT = "later-joint", "later[].gaps[].joint", LaterGap, Kind::Choice;
    /// Width of a gap at a later visit.
    LATER_GAP = "later-gap", "later[].gaps[].width", LaterGap,
        optional!(later, width, Length, Length::ZERO, WIDEST_GAP, LeaveOut);
}
