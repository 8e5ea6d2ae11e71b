//! The table of fields, a file for each part of a job.

mod air;
mod drawing;
mod follow_up;
mod header;
mod money;
mod next_install;
mod readings;
mod repair;

pub use air::*;
pub use drawing::*;
pub use follow_up::*;
pub use header::*;
pub use money::*;
pub use next_install::*;
pub use readings::*;
pub use repair::*;

use std::sync::LazyLock;

use super::Field;
use crate::measure::{Length, Temperature};

/// All fields, in the order of a job's file.
pub static FIELDS: LazyLock<Vec<&'static Field>> = LazyLock::new(|| {
    [
        header::ALL,
        drawing::ALL,
        readings::ALL,
        air::ALL,
        repair::ALL,
        money::ALL,
        follow_up::ALL,
        next_install::ALL,
    ]
    .concat()
});

/// The widest gap of a joint: a wider one is a slip of the pen, or boards that came apart.
pub const WIDEST_GAP: Length = Length::inches(2.0);
/// The farthest point of any room from the origin of its drawing.
pub const FARTHEST: Length = Length::feet(3000.0);
/// The finest opening anyone can measure or see.
const FINEST: Length = Length::mm(0.05);
/// More than any bead or gap of a plan.
const COARSEST: Length = Length::inches(1.0);
/// Coldest that a room can be.
const COLDEST: Temperature = Temperature::celsius(-30.0);
/// Hottest that a room can be.
const HOTTEST: Temperature = Temperature::celsius(60.0);

/// Declares fields and the list `ALL` of them.
macro_rules! fields {
    ($($(#[$doc:meta])* $name:ident = $id:literal, $path:literal, $each:ident, $kind:expr;)+) => {
        $(
            $(#[$doc])*
            pub static $name: crate::job::fields::Field = crate::job::fields::Field {
                id: $id,
                path: $path,
                each: crate::job::fields::Each::$each,
                kind: $kind,
            };
        )+
        pub(super) const ALL: &[&crate::job::fields::Field] = &[$(&$name),+];
    };
}

/// A figure that always stands: the part of the job it is in, its place in there, quantity, range, mending.
macro_rules! figure {
    ($part:ident, $($field:ident).+, $quantity:ident, $low:expr, $high:expr, $mending:ident) => {
        crate::job::fields::Kind::Figure(crate::job::fields::Figure {
            low: crate::measure::Quantity::$quantity($low),
            high: crate::measure::Quantity::$quantity($high),
            mending: crate::job::fields::Mending::$mending,
            optional: false,
            read: |job, at| {
                let part = crate::job::fields::access::$part::read(job, at)?;
                Some(crate::measure::Quantity::$quantity(part.$($field).+))
            },
            write: |job, at, value| {
                let part = crate::job::fields::access::$part::write(job, at);
                if let (Some(part), Some(crate::measure::Quantity::$quantity(value))) = (part, value) {
                    part.$($field).+ = value;
                }
            },
        })
    };
}

/// A figure that may be left empty.
macro_rules! optional {
    ($part:ident, $($field:ident).+, $quantity:ident, $low:expr, $high:expr, $mending:ident) => {
        crate::job::fields::Kind::Figure(crate::job::fields::Figure {
            low: crate::measure::Quantity::$quantity($low),
            high: crate::measure::Quantity::$quantity($high),
            mending: crate::job::fields::Mending::$mending,
            optional: true,
            read: |job, at| {
                let part = crate::job::fields::access::$part::read(job, at)?;
                part.$($field).+.map(crate::measure::Quantity::$quantity)
            },
            write: |job, at, value| {
                let Some(part) = crate::job::fields::access::$part::write(job, at) else { return };
                match value {
                    Some(crate::measure::Quantity::$quantity(value)) => part.$($field).+ = Some(value),
                    Some(_) => {}
                    None => part.$($field).+ = None,
                }
            },
        })
    };
}

/// Figures by the id of what they are of: the map of the job they are in, quantity, range.
macro_rules! by_id {
    ($($field:ident).+, $quantity:ident, $low:expr, $high:expr) => {
        crate::job::fields::Kind::Figures(crate::job::fields::Figures {
            low: crate::measure::Quantity::$quantity($low),
            high: crate::measure::Quantity::$quantity($high),
            mending: crate::job::fields::Mending::LeaveOut,
            most: usize::MAX,
            read: |job, _| {
                let all = job.$($field).+.iter();
                let item = |id: &String| crate::job::fields::Item::Id(id.clone());
                all.map(|(id, value)| (item(id), crate::measure::Quantity::$quantity(*value))).collect()
            },
            mend: |job, _, _, mend| {
                job.$($field).+.retain(|_, value| {
                    let mended = mend(crate::measure::Quantity::$quantity(*value));
                    if let Some(crate::measure::Quantity::$quantity(mended)) = mended {
                        *value = mended;
                    }
                    mended.is_some()
                });
            },
        })
    };
}

use {by_id, fields, figure, optional};
