//! From the days that were found to bars and to a plan that people can read.

use super::chain::{Chain, Lag, Piece};
use super::search::{Day, Rules};
use super::{Bar, BarStep, Calendar, DayStep, Schedule, ScheduleInputs, WorkDay, days_touched};
use crate::measure::Hours;

/// The schedule of these days.
pub(super) fn lay_out(
    inputs: &ScheduleInputs<'_>,
    chain: &Chain,
    calendar: &Calendar,
    days: &[Day],
) -> Schedule {
    let rules = Rules::new(inputs);
    let last = |at: usize| is_last(at, days, &chain.pieces);
    let work_day = |(at, day)| work_day(day, last(at), &rules, &chain.pieces);
    let days_on_site: Vec<WorkDay> = days.iter().enumerate().map(work_day).collect();
    let worked = u32::try_from(days.len()).unwrap_or(u32::MAX);
    let visits = u32::try_from((0..days.len()).filter(|at| last(*at)).count()).unwrap_or(u32::MAX);
    let bars = bars(&rules, chain, days);
    let standby: f64 = days.iter().map(|day| day.standby * f64::from(day.people)).sum();
    Schedule {
        crew_days: worked,
        person_days: days.iter().map(|day| day.people).sum(),
        standby: Hours::h(standby),
        evenings: if inputs.crew.handed_back { worked - visits } else { 0 },
        weeks: weeks(days, &chain.pieces, &last),
        calendar_days: days.last().map_or(0, |day| day.day + 1),
        room_out: room_out(inputs, chain, days),
        put_off: calendar.put_off,
        bars,
        days: days_on_site,
    }
}

/// Whether a day is the last before the crew stays away for long, or for good.
fn is_last(at: usize, days: &[Day], pieces: &[Piece]) -> bool {
    let next = days.get(at + 1).and_then(|day| day.does.first());
    next.is_none_or(|next| {
        let begins = days[at].does.iter().all(|done| done.piece != next.piece);
        begins && pieces[next.piece].lag.is_between_visits()
    })
}

/// Weeks begun in each stretch of days in which the room is worked in, together: from the first day on which
/// it is closed, where it is closed at all.
fn weeks(days: &[Day], pieces: &[Piece], last: &dyn Fn(usize) -> bool) -> u32 {
    let closes = |day: &Day| day.does.iter().any(|done| pieces[done.piece].closes);
    let ever_closed = days.iter().any(closes);
    let (mut weeks, mut from) = (0, None);
    for (at, day) in days.iter().enumerate() {
        if from.is_none() && (closes(day) || !ever_closed) {
            from = Some(day.day);
        }
        if last(at) {
            weeks += from.map_or(0, |first| (day.day - first) / 7 + 1);
            from = None;
        }
    }
    weeks
}

fn work_day(day: &Day, last: bool, rules: &Rules, pieces: &[Piece]) -> WorkDay {
    let mut does: Vec<DayStep> = Vec::new();
    for stretch in &day.does {
        let piece = &pieces[stretch.piece];
        let step = match piece.does {
            BarStep::Coat(coat) => DayStep::Coat(coat),
            _ => DayStep::Task(piece.short.clone()),
        };
        if step != DayStep::Task(String::new()) && !does.contains(&step) {
            does.push(step);
        }
    }
    let before = rules.before_work(day.people);
    // Nothing is handed back and closed off again on the last day.
    let less = if last { rules.evening / f64::from(day.people) } else { 0.0 };
    WorkDay {
        day: day.day,
        people: day.people,
        from: day.arrival,
        to: rules.clock(day.arrival, day.people, day.hours) + before - less,
        paid: Hours::h(rules.drive + 2.0 * before + day.hours - less),
        standby: Hours::h(day.standby),
        does,
    }
}

/// A bar for each piece, and one for each wait that holds the work up.
fn bars(rules: &Rules, chain: &Chain, days: &[Day]) -> Vec<Bar> {
    let bar = |step: BarStep, of_step: usize, from: f64, to: f64| Bar {
        step,
        of_step,
        start: from / 24.0,
        end: to / 24.0,
    };
    let mut bars: Vec<Bar> = Vec::new();
    let mut ended = rules.starts;
    for (at, piece) in chain.pieces.iter().enumerate() {
        let stretches = || days.iter().flat_map(|day| &day.does).filter(|stretch| stretch.piece == at);
        let (Some(first), Some(last)) = (stretches().next(), stretches().next_back()) else { continue };
        if let Some(wait) = piece.lag.of() {
            let over = match piece.lag {
                Lag::Hours(_, hours) => (ended + hours).min(first.from),
                _ => first.from,
            };
            if over > ended + 1e-6 {
                bars.push(bar(BarStep::Wait(wait), piece.lag_of_step, ended, over));
            }
        }
        bars.push(bar(piece.does.clone(), piece.of_step, first.from, last.to));
        ended = last.to;
    }
    bars
}

/// Days on which the room cannot be used.
fn room_out(inputs: &ScheduleInputs<'_>, chain: &Chain, days: &[Day]) -> u32 {
    let mut closed: Option<f64> = None;
    let mut spans: Vec<(f64, f64)> = Vec::new();
    for stretch in days.iter().flat_map(|day| &day.does) {
        let piece = &chain.pieces[stretch.piece];
        if piece.closes {
            closed = closed.or(Some(stretch.from));
        }
        if piece.opens
            && let Some(from) = closed.take()
        {
            spans.push((from, stretch.to));
        }
    }
    let last = days.iter().flat_map(|day| &day.does).last().map_or(0.0, |stretch| stretch.to);
    spans.extend(closed.map(|from| (from, last)));
    let touched = |(from, to): &(f64, f64)| days_touched(from / 24.0, to / 24.0);
    if !inputs.crew.handed_back {
        return spans.iter().map(touched).sum();
    }
    let inside = |day: &&Day| {
        let midnight = 24.0 * f64::from(day.day);
        spans.iter().any(|(from, to)| *from < midnight + 24.0 && *to > midnight)
    };
    u32::try_from(days.iter().filter(inside).count()).unwrap_or(u32::MAX)
}
