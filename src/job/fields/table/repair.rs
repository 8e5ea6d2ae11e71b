//! Fields of the repair: option, bead, crew, new boards, callbacks.

use super::{COARSEST, FINEST, fields, figure, optional};
use crate::job::fields::{Figures, Item, Kind, Mending};
use crate::joint::BeadForm;
use crate::measure::{Hours, Length, Minutes, Moisture, Percent, Quantity};

/// Lengths in which boards are sold. More of them than this make no better cutting list.
const STOCK: Figures = Figures {
    low: Quantity::RoomLength(Length::feet(1.0)),
    high: Quantity::RoomLength(Length::feet(50.0)),
    mending: Mending::LeaveOut,
    most: 20,
    read: |job, _| {
        let lengths = job.plan.stock.lengths.iter().enumerate();
        lengths.map(|(index, length)| (Item::Number(index + 1), Quantity::RoomLength(*length))).collect()
    },
    mend: |job, _, most, mend| {
        let lengths = &mut job.plan.stock.lengths;
        lengths.retain(|length| mend(Quantity::RoomLength(*length)).is_some());
        lengths.truncate(most);
    },
};

/// Minutes for a batch of a task, at their least, likely and most.
const MINUTES: Figures = Figures {
    low: Quantity::Minutes(Minutes::ZERO),
    high: Quantity::Minutes(Minutes::of(1e6)),
    mending: Mending::LeaveOut,
    most: usize::MAX,
    read: |job, _| {
        let all = job.plan.own_minutes.iter();
        let points = all.flat_map(|(id, own)| [own.low, own.likely, own.high].map(|minutes| (id, minutes)));
        let figure = |minutes: f64| Quantity::Minutes(Minutes::of(minutes));
        points.map(|(id, minutes)| (Item::Id(id.clone()), figure(minutes))).collect()
    },
    mend: |job, _, _, mend| {
        job.plan.own_minutes.retain(|_, own| {
            let figure = |minutes: f64| Quantity::Minutes(Minutes::of(minutes));
            [own.low, own.likely, own.high].into_iter().all(|minutes| mend(figure(minutes)).is_some())
        });
    },
};

fields! {
    /// The option the papers speak of.
    OPTION = "option", "plan.chosen", Job, Kind::Choice;
    /// Whether that is whichever is recommended.
    AS_RECOMMENDED = "as-recommended", "plan.as_recommended", Job, Kind::Choice;
    /// The sealant.
    SEALANT = "sealant", "plan.sealant", Job, Kind::Catalog;
    /// The primer.
    PRIMER = "primer", "plan.primer", Job, Kind::Catalog;
    /// The paint.
    PAINT = "paint", "plan.paint", Job, Kind::Catalog;
    /// The paint's color.
    COLOR = "color", "plan.color", Job, Kind::Text;
    /// Coats of paint.
    COATS = "coats", "plan.coats", Job, figure!(job, plan.coats, Count, 0, 10, Nearest);
    /// How paint goes on.
    PAINTING = "painting", "plan.painting", Job, Kind::Choice;
    /// Which joints are sealed.
    SCOPE = "scope", "plan.scope", Job, Kind::Choice;
    /// Gap from which a joint counts as open.
    OPEN_THRESHOLD = "open-threshold", "plan.open_from", Job,
        figure!(job, plan.open_from, Length, FINEST, COARSEST, Nearest);
    /// Smallest gap that takes a bead.
    MIN_SEALABLE_GAP = "min-sealable-gap", "plan.narrowest", Job,
        figure!(job, plan.narrowest, Length, FINEST, COARSEST, Nearest);
    /// The day of sealing.
    SEALING_DATE = "sealing-date", "plan.seal_on", Job, Kind::Date;
    /// Least depth of the bead.
    BEAD_DEPTH = "bead-depth", "plan.bead.least_depth", Job,
        figure!(job, plan.bead.least_depth, Length, FINEST, COARSEST, Nearest);
    /// How much of the V the bead fills.
    V_FILL = "v-fill", "plan.bead.v_filled", Job,
        figure!(job, plan.bead.v_filled, Percent, Percent::ZERO, Percent::pct(100.0), Nearest);
    /// How far a bead across a V reaches into the slot.
    BEAD_IN_SLOT = "bead-in-slot", "plan.bead.in_slot", Job,
        figure!(job, plan.bead.in_slot, Length, Length::ZERO, COARSEST, Nearest);
    /// How hollow the bead's face is.
    BEAD_HOLLOW = "bead-hollow", "plan.bead.hollow", Job,
        figure!(job, plan.bead.hollow, Percent, Percent::ZERO, BeadForm::MOST_HOLLOW, Nearest);
    /// Sealant that is lost.
    SEALANT_WASTE = "sealant-waste", "plan.bead.waste", Job,
        figure!(job, plan.bead.waste, Percent, Percent::ZERO, Percent::pct(200.0), Nearest);
    /// People on the job.
    CREW_SIZE = "crew-size", "plan.crew", Job, figure!(job, plan.crew, Count, 1, 50, Nearest);
    /// Hours of a working day.
    HOURS_PER_DAY = "hours-per-day", "plan.day", Job,
        figure!(job, plan.day, Hours, Hours::h(0.5), Hours::h(16.0), Nearest);
    /// Hour at which the crew is there.
    START_TIME = "start-time", "plan.starts", Job,
        figure!(job, plan.starts, TimeOfDay, Hours::ZERO, Hours::h(20.0), Nearest);
    /// Workdays until the crew can come.
    LEAD_DAYS = "lead-days", "plan.lead_days", Job, figure!(job, plan.lead_days, Count, 0, 250, Nearest);
    /// Workdays until boards that are ordered have come.
    ORDER_DAYS = "order-days", "plan.order_days", Job, figure!(job, plan.order_days, Count, 0, 250, Nearest);
    /// Lunch break.
    LUNCH = "lunch", "plan.lunch", Job,
        figure!(job, plan.lunch, Minutes, Minutes::ZERO, Minutes::of(180.0), Nearest);
    /// How late they stay rather than come back.
    STAY_LATE = "stay-late", "plan.stays_late", Job,
        figure!(job, plan.stays_late, Hours, Hours::ZERO, Hours::h(4.0), Nearest);
    /// Windows and doors to mask.
    WINDOWS = "windows", "plan.site.windows", Job, optional!(job, plan.site.windows, Count, 0, 500, Nearest);
    /// Lights and vents to take down or mask.
    FIXTURES = "fixtures", "plan.site.fixtures", Job, optional!(job, plan.site.fixtures, Count, 0, 500, Nearest);
    /// Whether the room is handed back in the evening.
    EVENINGS = "evenings", "plan.site.handed_back", Job, Kind::Choice;
    /// What is known of lead in the paint.
    LEAD_PAINT = "lead-paint", "plan.site.lead", Job, Kind::Choice;
    /// Whether packs for two guns may be mixed.
    GUNS = "guns", "plan.two_guns", Job, Kind::Choice;
    /// Moisture at which new boards are delivered.
    DELIVERED_AT = "delivered-at", "plan.delivered_at", Job,
        figure!(job, plan.delivered_at, Moisture, Moisture::pct(2.0), Moisture::pct(60.0), Nearest);
    /// Days that new boards lie in the room.
    ACCLIMATION = "acclimation", "plan.acclimation_days", Job,
        figure!(job, plan.acclimation_days, Days, 0, 365, Nearest);
    /// Spare boards, as a share of those needed.
    WASTE_FACTOR = "waste-factor", "plan.board_waste", Job,
        figure!(job, plan.board_waste, Percent, Percent::ZERO, Percent::pct(90.0), Nearest);
    /// Lengths in which boards are sold.
    STOCK_LENGTHS = "stock-lengths", "plan.stock.lengths", Job, Kind::Figures(STOCK);
    /// Width of the saw's cut.
    KERF = "kerf", "plan.stock.kerf", Job,
        figure!(job, plan.stock.kerf, Length, Length::ZERO, Length::inches(0.75), Nearest);
    /// Trimmed off each stock board.
    END_TRIM = "end-trim", "plan.stock.end_trim", Job,
        figure!(job, plan.stock.end_trim, Length, Length::ZERO, Length::inches(20.0), Nearest);
    /// Whether paint waits for a second visit.
    TWO_VISITS = "two-visits", "plan.two_visits", Job, Kind::Choice;
    /// Whether the crew works on weekends.
    WORKDAYS = "workdays", "plan.weekends", Job, Kind::Choice;
    /// What the crew works from.
    ACCESS = "access", "plan.site.height", Job, Kind::Choice;
    /// How the old caulk comes out.
    OLD_CAULK = "old-caulk", "plan.site.old_sealant", Job, Kind::Choice;
    /// Whether the room is furnished, and whether it is tight to get to or work in.
    ROOM_STATE = "room-state", "plan.site.furnished|tight", Job, Kind::Choice;
    /// The section that was timed.
    TIMED_SECTION = "timed-section", "plan.trial.section", Job, Kind::Choice;
    /// Whether the time of the timed section is charged.
    CHARGE_TIMED = "charge-timed", "plan.charge_timed", Job, Kind::Choice;
    /// Minutes that a timed section took one person.
    TIMED_MINUTES = "timed-minutes", "plan.trial.minutes", Job,
        optional!(trial, minutes, Minutes, Minutes::of(0.1), Minutes::of(100_000.0), LeaveOut);
    /// Minutes of tasks for this job alone.
    OWN_MINUTES = "own-minutes", "plan.own_minutes", Job, Kind::Figures(MINUTES);
    /// Years of warranty.
    WARRANTY = "warranty", "plan.warranty_years", Job,
        figure!(job, plan.warranty_years, Years, 0, 50, Nearest);
    /// Share of the length that brings a callback.
    CALLBACK_SHARE = "callback-share", "plan.callback.open_share", Job,
        figure!(job, plan.callback.open_share, Percent, Percent::ZERO, Percent::pct(100.0), Nearest);
    /// One gap that brings a callback.
    CALLBACK_GAP = "callback-gap", "plan.callback.widest", Job,
        figure!(job, plan.callback.widest, Length, FINEST, COARSEST, Nearest);
    /// Smallest gap anyone sees.
    SMALLEST_VISIBLE_GAP = "smallest-visible-gap", "plan.callback.seen_from", Job,
        figure!(job, plan.callback.seen_from, Length, FINEST, COARSEST, Nearest);
}
