//! Local search: the boards of highest reduced cost are cut over again together, then with some of the
//! others. On a small job these are all boards; once every way was tried, the solution is optimal.

use super::bin_completion::BinCompletion;
use super::problem::{Item, PatternRun, times_in};
use super::solver::Solver;

/// Search steps of some twenty nanoseconds each: in all for a small job, in all for others.
const STEPS: (usize, usize) = (80_000, 30_000);
/// Search steps for one attempt.
const ATTEMPT_STEPS: usize = 6_000;
/// Jobs of at most so many pieces are small, and first searched as a whole.
const SMALL_JOB: f64 = 100.0;
/// Pieces in a neighborhood otherwise.
const NEIGHBORHOOD: f64 = 20.0;
/// Budgets to try one after the other, as shares of the reduced cost to beat. A small one prunes most.
const BUDGETS: [f64; 3] = [0.0625, 0.25, 1.0];

/// Boards to cut over again.
struct Neighborhood {
    /// How many of each item are on them.
    demand: Vec<f64>,
    /// Their reduced cost, cents.
    reduced_cost: f64,
    /// The other boards of the solution.
    kept: Vec<PatternRun>,
    /// How many patterns they were cut to.
    patterns: usize,
}

impl Solver<'_> {
    /// Searches while that lowers the price. With `duals`, no pattern may be worth more than its board.
    pub(super) fn local_search(&mut self, duals: &[f64]) {
        let small = self.items.iter().map(|item| item.demand).sum::<f64>() <= SMALL_JOB;
        let (mut steps, mut skip) = (if small { STEPS.0 } else { STEPS.1 }, 0);
        while steps > 0 && skip < self.runs.len() && !self.is_optimal() {
            let pieces = if skip == 0 && small { SMALL_JOB } else { NEIGHBORHOOD };
            let neighborhood = self.neighborhood(duals, skip, pieces);
            skip += neighborhood.patterns.max(2) - 1;
            if self.reoptimize(neighborhood, duals, &mut steps) {
                skip = 0;
            }
            steps = steps.saturating_sub(4 * self.runs.len());
        }
    }

    /// Boards with at most so many pieces: the pattern of highest reduced cost, then those from index
    /// `skip` on.
    fn neighborhood(&mut self, duals: &[f64], skip: usize, mut pieces: f64) -> Neighborhood {
        let mut kept = std::mem::take(&mut self.runs);
        kept.sort_by(|a, b| self.reduced_cost(b, duals).total_cmp(&self.reduced_cost(a, duals)));
        self.runs.clone_from(&kept);
        let others = kept.len() - 1;
        let order = std::iter::once(0).chain((0..others).map(|place| 1 + (place + skip) % others));
        let mut demand = vec![0.0; self.items.len()];
        let (mut reduced_cost, mut patterns) = (0.0, 0);
        for run in order {
            let run = &mut kept[run];
            let each: f64 = run.pattern.iter().map(|piece| piece.1).sum();
            let times = times_in(each, pieces).min(run.times);
            pieces -= times * each;
            run.times -= times;
            reduced_cost += times * self.reduced_cost(run, duals);
            patterns += usize::from(times > 0.0);
            run.pattern.iter().for_each(|&(item, count)| demand[item] += times * count);
        }
        kept.retain(|run| run.times > 0.0);
        Neighborhood { demand, reduced_cost, kept, patterns }
    }

    /// Looks for cheaper boards for the same pieces; `true` if there are any.
    fn reoptimize(&mut self, neighborhood: Neighborhood, duals: &[f64], steps: &mut usize) -> bool {
        let Neighborhood { mut demand, reduced_cost, kept, .. } = neighborhood;
        let rows: Vec<usize> = (0..demand.len()).filter(|&item| demand[item] > 0.0).collect();
        let item = |&row: &usize| Item { width: self.items[row].width, demand: demand[row] };
        let items: Vec<Item> = rows.iter().map(item).collect();
        let duals: Vec<f64> = rows.iter().map(|&row| duals[row]).collect();
        let to_beat = reduced_cost - self.price_step + 1e-3;
        let mut exhaustive = false;
        for budget in BUDGETS {
            let allowed = ATTEMPT_STEPS.min(*steps);
            let mut search = BinCompletion::new(&items, self.boards, &duals, allowed);
            let found = search.search(to_beat * budget);
            *steps -= allowed - search.steps;
            if found {
                let mut runs = kept;
                for pattern in search.solution {
                    let pattern = pattern.into_iter().map(|(row, count)| (rows[row], count)).collect();
                    runs.extend(self.run(&mut demand, pattern, 1.0));
                }
                return self.complete(runs);
            }
            exhaustive = search.exhaustive && search.steps > 0;
        }
        if exhaustive && kept.is_empty() {
            self.bound = self.cost.0;
        }
        false
    }
}
