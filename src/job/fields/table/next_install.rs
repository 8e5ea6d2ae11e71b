//! Fields of a next install: the boards, their delivery, its readings.

use super::{COARSEST, COLDEST, HOTTEST, fields, figure, optional};
use crate::job::fields::{Figure, Kind, Mending, access};
use crate::measure::{Angle, Length, Moisture, Percent, Quantity};
use crate::surface::Profile;

/// More than any board is wide.
const WIDEST: Length = Length::feet(6.0);

/// What pin meters show of lumber: below it is drier than any room makes it, above it is dripping wet. Either
/// is a slip of the pen, or of the pins.
const LEAST_READ: Moisture = Moisture::pct(4.0);
const MOST_READ: Moisture = Moisture::pct(40.0);

/// The leg of the V, or the width of the bead. A square edge has none.
const NEXT_PROFILE: Figure = Figure {
    low: Quantity::Length(Length::ZERO),
    high: Quantity::Length(Length::inches(4.0)),
    mending: Mending::Nearest,
    optional: false,
    read: |job, at| access::next::read(job, at)?.boards.profile.size().map(Quantity::Length),
    write: |job, at, value| {
        let profile = access::next::write(job, at).map(|next| &mut next.boards.profile);
        if let (Some(Profile::VGroove(size) | Profile::Bead(size)), Some(Quantity::Length(value))) =
            (profile, value)
        {
            *size = value;
        }
    },
};

fields! {
    /// Species of the boards to come.
    NEXT_SPECIES = "next-species", "next_install.boards.species", Job, Kind::Catalog;
    /// What they are sold as.
    NEXT_SOLD_AS = "next-sold-as", "next_install.sold_as", Job, Kind::Text;
    /// Their thickness.
    NEXT_THICKNESS = "next-thickness", "next_install.boards.thickness", Job,
        figure!(next, boards.thickness, Length, Length::inches(0.0625), Length::inches(6.0), Nearest);
    /// Their width with the tongue.
    NEXT_OVERALL_WIDTH = "next-overall-width", "next_install.boards.overall_width", Job,
        figure!(next, boards.overall_width, Length, Length::ZERO, WIDEST, Nearest);
    /// Their width that shows.
    NEXT_FACE_WIDTH = "next-face-width", "next_install.boards.face_width", Job,
        figure!(next, boards.face_width, Length, Length::inches(0.25), WIDEST, Nearest);
    /// Their edge profile.
    NEXT_PROFILE_KIND = "next-profile", "next_install.boards.profile", Job, Kind::Choice;
    /// Leg of the V, or width of the bead.
    NEXT_PROFILE_SIZE = "next-profile-size", "next_install.boards.profile.VGroove|Bead", Job, Kind::Figure(NEXT_PROFILE);
    /// Angle of their growth rings to the face.
    NEXT_GRAIN = "next-grain", "next_install.boards.ring_angle", Job,
        figure!(next, boards.ring_angle, Angle, Angle::ZERO, Angle::degrees(90.0), Nearest);
    /// Where they will be nailed.
    NEXT_NAILING = "next-nailing", "next_install.boards.fixing", Job, Kind::Choice;
    /// Paint on face and back.
    NEXT_FINISH = "next-finish", "next_install.boards.finish", Job, Kind::Choice;
    /// What will be behind them.
    NEXT_BACKING = "next-backing", "next_install.boards.behind", Job, Kind::Choice;
    /// Their length.
    NEXT_LENGTH = "next-length", "next_install.boards.longest", Job,
        optional!(next, boards.longest, RoomLength, Length::inches(3.0), Length::feet(100.0), LeaveOut);
    /// How many boards.
    NEXT_COUNT = "next-count", "next_install.count", Job, figure!(next, count, Count, 2, 10_000, Nearest);
    /// Whether joints stay open or are caulked.
    NEXT_JOINTS = "next-joints", "next_install.joints", Job, Kind::Choice;
    /// Chance asked for.
    NEXT_CHANCE = "next-chance", "next_install.chance", Job,
        figure!(next, chance, Percent, Percent::pct(50.0), Percent::pct(99.0), Nearest);
    /// Gap that will be left.
    NEXT_GAP = "next-gap", "next_install.gap", Job,
        optional!(next, gap, Length, Length::ZERO, COARSEST, LeaveOut);
    /// The day the boards are wanted.
    NEXT_WANTED = "next-wanted", "next_install.wanted", Job, Kind::Date;
    /// Who delivered.
    SUPPLIER = "supplier", "next_install.supplier", Job, Kind::Text;
    /// The day of the delivery.
    DELIVERY_DATE = "delivery-date", "next_install.delivered", Job, Kind::Date;
    /// What stamp or note promised.
    PROMISED = "promised", "next_install.promised", Job,
        optional!(next, promised, Moisture, Moisture::pct(4.0), Moisture::pct(30.0), LeaveOut);
    /// Setting of the meter.
    GATE_SETTING = "gate-setting", "next_install.setting", Job, Kind::Choice;
    /// How the stack is piled.
    PILING = "piling", "next_install.stack.piling", Job, Kind::Choice;
    /// The day it came out of its wrapper.
    STACK_OPENED = "stack-opened", "next_install.opened", Job, Kind::Date;
    /// Where it is kept.
    STACK_KEPT = "stack-kept", "next_install.stack.kept", Job, Kind::Choice;
    /// Who measured.
    CHECKED_BY = "checked-by", "next_install.checked_by", Job, Kind::Text;
    /// The day the boards were hung.
    HUNG = "hung", "next_install.hung", Job, Kind::Date;
    /// The board under the meter.
    STACK_BOARD = "stack-board", "next_install.readings[].board", Stacked, Kind::Text;
    /// What the meter shows.
    STACK_READING = "stack-reading", "next_install.readings[].reading", Stacked,
        optional!(stacked, reading, Moisture, LEAST_READ, MOST_READ, LeaveOut);
    /// Temperature of the wood.
    STACK_WOOD = "stack-wood", "next_install.readings[].wood", Stacked,
        figure!(stacked, wood, Temperature, COLDEST, HOTTEST, Nearest);
    /// How deep the pins went.
    PIN_DEPTH = "pin-depth", "next_install.readings[].pins", Stacked,
        figure!(stacked, pins, Length, Length::mm(1.0), Length::inches(2.0), Nearest);
    /// When it was read.
    STACK_DATE = "stack-date", "next_install.readings[].date", Stacked, Kind::Date;
}
