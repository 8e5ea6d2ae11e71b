//! Newton's method in load steps: from the bead as laid through all that the boards do.

use super::element::Element;
use super::model::{Forces, Model, Motion, State, Stuck};
use super::sparse::NONE;

/// Residual over reaction at which equilibrium is taken as found; and over the gap, for movements so
/// small that rounding shows.
const TOLERANCE: f64 = 1e-6;
const ROUNDING: f64 = 1e-7;
/// Residual over reaction at which equilibrium is near.
const NEAR: f64 = 0.01;
/// Newton steps before a load step is given up.
const MOST_ITERATIONS: usize = 18;
/// Share of the least J that a Newton step must leave.
const KEPT: f64 = 0.15;
/// A Newton step is shortened if it makes the residual this many times larger.
const MOST_GROWTH: f64 = 2.0;
/// Stiffening over the shear modulus at which a Newton step is given up.
const MOST_STIFFENING: f64 = 10.0;
/// The first load step, and the smallest before equilibrium is taken as lost: in gaps, and where
/// there is a released strip, in widths of that.
const FIRST_STEP: f64 = 0.25;
const LEAST_STEP: f64 = 2e-3;
const FIRST_RELEASED_STEP: f64 = 0.4;
const LEAST_RELEASED_STEP: f64 = 0.02;
/// Load steps tried from one movement of a path to the next before equilibrium is taken as lost.
const MOST_STEPS: usize = 60;

fn norm(values: &[f64]) -> f64 {
    values.iter().map(|value| value * value).sum::<f64>().sqrt()
}

impl Model {
    /// Follows the boards through `path`, each entry from the one before; gives back the states at
    /// those that could be reached, and where it was stuck if not at the end.
    pub fn follow(&mut self, path: &[Motion]) -> (Vec<State>, Option<Stuck>) {
        let mut states: Vec<State> = Vec::with_capacity(path.len());
        let mut step = match self.mesh.release {
            release if release > 0.0 => FIRST_RELEASED_STEP * release,
            _ => FIRST_STEP * 2.0 * self.outline.half_gap,
        };
        for &target in path {
            let start = states.last().cloned().unwrap_or_else(|| self.at_rest());
            match self.go(start, target, &mut step) {
                Ok(state) => states.push(state),
                Err(stuck) => return (states, Some(stuck)),
            }
        }
        (states, None)
    }

    /// Goes to `target` in load steps, whose size in meters is kept in `step` for the next leg.
    fn go(&mut self, mut state: State, target: Motion, step: &mut f64) -> Result<State, Stuck> {
        let gap = 2.0 * self.outline.half_gap;
        let least = match self.mesh.release {
            release if release > 0.0 => LEAST_RELEASED_STEP * release,
            _ => LEAST_STEP * gap,
        };
        for _ in 0..MOST_STEPS {
            let left = (target.open - state.motion.open).hypot(target.lift - state.motion.lift);
            if left < 1e-12 * gap {
                return Ok(state);
            }
            let share = if left <= 1.2 * *step { 1.0 } else { *step / left };
            let next = state.motion.between(target, share);
            if let Some(found) = self.equilibrium(&state, next) {
                if found.iterations <= 6 {
                    *step *= 1.5;
                }
                state = found;
            } else {
                *step = 0.4 * (share * left).min(*step);
                if *step < least {
                    break;
                }
            }
        }
        Err(Stuck { reached: state.motion })
    }

    /// The equilibrium with the boards at `motion`, from one close by.
    fn equilibrium(&mut self, from: &State, motion: Motion) -> Option<State> {
        let (old, new) = (self.moved(from.motion), self.moved(motion));
        let mut carried = vec![[0.0; 2]; from.places.len()];
        for node in self.mesh.right() {
            carried[node] = [new[0] - old[0], new[1] - old[1]];
        }
        let rounding = ROUNDING * 2.0 * self.outline.half_gap;
        // The first step follows the tangent and takes the board along.
        let mut forces = self.assemble(from, old, Some(&carried), 0.0);
        let (step, mut unstable) = self.solve(from, &forces, old, Some(&carried))?;
        let mut state = self.stepped(from, &step, Some(&carried), 1.0)?;
        forces = self.assemble(&state, new, None, 0.0);
        for iterations in 1..MOST_ITERATIONS {
            let residual = norm(&forces.residual);
            let reaction = norm(forces.internal.as_flattened());
            if residual <= (TOLERANCE * reaction).max(rounding) {
                let force = self.force_on_board(&forces.internal, &state, new);
                let wrinkled = from.wrinkled || unstable;
                return Some(State { motion, force, iterations, wrinkled, ..state });
            }
            let (step, unstable_here) = self.solve(&state, &forces, new, None)?;
            // Far from equilibrium the stiffness tells nothing about whether that is stable.
            unstable |= unstable_here && residual <= NEAR * reaction;
            let mut next = None;
            for share in [1.0, 0.5, 0.25, 0.1] {
                let Some(tried) = self.stepped(&state, &step, None, share) else { continue };
                forces = self.assemble(&tried, new, None, 0.0);
                let better = norm(&forces.residual) < MOST_GROWTH * residual;
                next = Some(tried);
                if better {
                    break;
                }
            }
            state = next?;
        }
        None
    }

    /// A Newton step for the stiffness in the system, and whether that has unstable directions. Then it
    /// is stiffened until it has none, so that the step leads to an equilibrium that holds.
    fn solve(
        &mut self,
        state: &State,
        forces: &Forces,
        moved: [f64; 2],
        carried: Option<&Vec<[f64; 2]>>,
    ) -> Option<(Vec<f64>, bool)> {
        let mut stiffening = 0.0_f64;
        loop {
            let mut step: Vec<f64> = forces.residual.iter().map(|r| -r).collect();
            if self.system.solve(&mut step).ok()? == 0 {
                return Some((step, stiffening > 0.0));
            }
            stiffening = (3.0 * stiffening).max(0.1);
            if stiffening > MOST_STIFFENING {
                return None;
            }
            self.assemble(state, moved, carried, stiffening);
        }
    }

    fn least_volume_ratio(&self, places: &[[f64; 2]]) -> f64 {
        let of = |(e, element): (usize, &Element)| element.least_volume_ratio(&self.places_of(e, places));
        self.elements.iter().enumerate().map(of).fold(f64::INFINITY, f64::min)
    }

    /// The state after this share of a Newton step. `None` if that would turn an element inside out.
    fn stepped(
        &self,
        state: &State,
        step: &[f64],
        carried: Option<&Vec<[f64; 2]>>,
        share: f64,
    ) -> Option<State> {
        let mut moves = carried.cloned().unwrap_or_else(|| vec![[0.0; 2]; state.places.len()]);
        for (equations, moves) in self.equations.iter().zip(&mut moves) {
            for (&equation, moves) in equations.iter().zip(moves) {
                if equation != NONE {
                    *moves = step[equation];
                }
            }
        }
        let mut next = state.clone();
        for (place, moves) in next.places.iter_mut().zip(&moves) {
            place[0] += share * moves[0];
            place[1] += share * moves[1];
        }
        if self.least_volume_ratio(&next.places) < KEPT * self.least_volume_ratio(&state.places) {
            return None;
        }
        for (e, element) in self.elements.iter().enumerate() {
            let places = self.places_of(e, &state.places);
            let change = element.pressure_step(&places, &state.pressures[e], &self.places_of(e, &moves));
            for (p, change) in next.pressures[e].iter_mut().zip(change) {
                *p += share * change;
            }
        }
        Some(next)
    }
}
