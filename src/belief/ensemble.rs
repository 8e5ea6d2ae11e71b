//! Many boards of one build-up dried side by side, one for each world.
//!
//! The same equations and the same scheme as [`crate::wood::drying`], with what differs between worlds
//! (the room's vapor pressure, the paint, the back, the diffusivity, the moisture at install) in the
//! lanes of the vector unit. The isotherm and the diffusivity of a day depend on its temperature alone,
//! which all worlds share, so each day prepares them once. Every step is an addition, a multiplication,
//! a division or a comparison in singles, done in the same order on all processors; the exponential is
//! our own, because the system's differ.
//!
//! Single precision keeps the mean moisture within 1e-5 kg/kg of doubles over years of steps.

use fearless_simd::{Level, dispatch, f32x8, prelude::*};
use rayon::prelude::*;

/// Boards in one group.
pub(super) const LANES: usize = 8;
/// One value for each board of a group.
pub(super) type Lanes = [f32; LANES];

/// Slices through the thickness.
const CELLS: usize = 10;
/// Newton's passes over one step. A second one mends what the isotherm's tangent missed.
const PASSES: usize = 2;
/// Stands for a surface that lets nothing through, kg/(s·m²·Pa): a ten-thousandth of a perm.
const SHUT: f32 = 1e-15;

/// The air of one step, prepared for all worlds.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct StepAir {
    /// Length of the step, s.
    pub seconds: f32,
    /// Vapor pressure of saturated air, Pa.
    pub saturation: f32,
    /// The isotherm at this temperature: scale (kg/kg), K, K1, K2 of Wood Handbook eq. 4-5.
    pub isotherm: [f32; 4],
    /// Diffusivity of dry wood, m²/s, and the rate at which its logarithm rises with moisture.
    pub diffusivity: [f32; 2],
    /// Vapor pressure in the room before what differs between worlds, Pa.
    pub vapor: f32,
    /// How it goes with each of the worlds' [`AirLanes::shifts`], Pa.
    pub by_shift: [f32; SHIFTS],
    /// How it goes with the spell's own shift, Pa, and between which two spells the step lies.
    pub by_spell: f32,
    pub spell: usize,
    pub into_spell: f32,
    /// Least vapor pressure, Pa: the humidifier's.
    pub least: f32,
    /// How much the worlds' limit on humidity counts, 0 to 1.
    pub limited: f32,
}

/// Lasting differences of a room's air between worlds.
pub(super) const SHIFTS: usize = 4;

/// How the air of a group's worlds differs.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct AirLanes {
    /// Lasting shifts.
    pub shifts: [Lanes; SHIFTS],
    /// Highest relative humidity where it is limited, 0 to 1.
    pub limit: Lanes,
    /// Shift of each spell.
    pub spells: Vec<Lanes>,
}

/// The boards of a group.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Boards {
    /// Thickness in m and oven-dry density in kg/m³, the same for all.
    pub thickness: f32,
    pub density: f32,
    /// Transfer at face and back, kg/(s·m²·Pa).
    pub transfer: [Lanes; 2],
    /// Factor on the diffusivity.
    pub diffusivity: Lanes,
    cells: [Lanes; CELLS],
    surfaces: [Lanes; 2],
}

impl Boards {
    /// Boards of even moisture `start`, kg/kg.
    pub fn new(thickness: f32, density: f32, transfer: [Lanes; 2], diffusivity: Lanes, start: Lanes) -> Self {
        let cells = [start; CELLS];
        Self { thickness, density, transfer, diffusivity, cells, surfaces: [[0.5; LANES]; 2] }
    }

    /// The same boards with a core wetter than their faces by `core`, kg/kg: a parabola through the
    /// thickness about the mean.
    #[expect(clippy::cast_precision_loss, reason = "ten cells")]
    pub fn with_core(mut self, core: &Lanes) -> Self {
        for (at, cell) in self.cells.iter_mut().enumerate() {
            // From -1 at one face to 1 at the other; the parabola's own mean in the cells is taken off.
            let place = |at: usize| (2 * at + 1) as f32 / CELLS as f32 - 1.0;
            let mean: f32 = (0..CELLS).map(|at| place(at) * place(at)).sum::<f32>() / CELLS as f32;
            for (moisture, core) in cell.iter_mut().zip(core) {
                *moisture = (*moisture + core * (mean - place(at) * place(at))).max(0.0);
            }
        }
        self
    }

    /// Mean moisture of the outer fifths, and of the two slices in the middle, kg/kg.
    pub fn shell_and_core(&self) -> [Lanes; 2] {
        let (middle, last) = (CELLS / 2, CELLS - 1);
        let of =
            |lane: usize, cells: [usize; 2]| cells.map(|at| self.cells[at][lane]).iter().sum::<f32>() / 2.0;
        [[0, last], [middle - 1, middle]].map(|cells| std::array::from_fn(|lane| of(lane, cells)))
    }

    /// The wettest moisture from the first face to a depth, which is a share of the thickness, kg/kg: what
    /// bare pins tell that reach so deep.
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "ten cells"
    )]
    pub fn wettest_within(&self, depth: f32) -> Lanes {
        let place = (depth.clamp(0.0, 0.5) * CELLS as f32 - 0.5).clamp(0.0, CELLS as f32 / 2.0 - 1.0);
        let (below, share) = (place as usize, place.fract());
        std::array::from_fn(|lane| {
            let at = |cell: usize| self.cells[cell][lane];
            let tip = at(below) + (at(below + 1) - at(below)) * share;
            (0..=below).map(at).fold(tip, f32::max)
        })
    }

    /// Mean moisture through the thickness, kg/kg.
    #[expect(clippy::cast_precision_loss, reason = "ten cells")]
    pub fn mean(&self) -> Lanes {
        std::array::from_fn(|lane| self.cells.iter().map(|cell| cell[lane]).sum::<f32>() / CELLS as f32)
    }

    /// One board of the group as it is now, in the lanes of a new group: lane `to` of `other`.
    pub fn copy_lane(&self, lane: usize, other: &mut Self, to: usize) {
        for (from, into) in self.cells.iter().zip(&mut other.cells) {
            into[to] = from[lane];
        }
        for (from, into) in self.surfaces.iter().zip(&mut other.surfaces) {
            into[to] = from[lane];
        }
        for (from, into) in self.transfer.iter().zip(&mut other.transfer) {
            into[to] = from[lane];
        }
        other.diffusivity[to] = self.diffusivity[lane];
    }
}

/// Takes every group through `steps`. Gives the mean moisture of each group after every step, kg/kg.
pub(super) fn run(groups: &mut [Boards], air: &[AirLanes], steps: &[StepAir]) -> Vec<Vec<Lanes>> {
    let level = Level::new();
    groups
        .par_iter_mut()
        .zip(air)
        .with_min_len(4)
        .map(|(boards, air)| dispatch!(level, simd => track(simd, boards, air, steps)))
        .collect()
}

#[inline(always)]
fn track<S: Simd>(simd: S, boards: &mut Boards, air: &AirLanes, steps: &[StepAir]) -> Vec<Lanes> {
    let mut lanes = Vectors::load(simd, boards, air);
    // A loop and not an iterator's closure: a closure is compiled for the least processor.
    let mut course = Vec::with_capacity(steps.len());
    for step in steps {
        course.push(lanes.step(simd, step, air));
    }
    lanes.store(boards);
    course
}

/// A group in registers.
struct Vectors<S: Simd> {
    dx: f32,
    density: f32,
    transfer: [f32x8<S>; 2],
    diffusivity: f32x8<S>,
    shifts: [f32x8<S>; SHIFTS],
    limit: f32x8<S>,
    cells: [f32x8<S>; CELLS],
    surfaces: [f32x8<S>; 2],
}

/// A face made linear for one step: the flux out is `slope` times the cell's moisture plus `at_zero`.
#[derive(Clone, Copy)]
struct Face<S: Simd> {
    slope: f32x8<S>,
    at_zero: f32x8<S>,
}

impl<S: Simd> Vectors<S> {
    #[inline(always)]
    #[expect(clippy::cast_precision_loss, reason = "ten cells")]
    fn load(simd: S, boards: &Boards, air: &AirLanes) -> Self {
        let shut = f32x8::splat(simd, SHUT);
        let mut lanes = Self {
            dx: boards.thickness / CELLS as f32,
            density: boards.density,
            transfer: [shut; 2],
            diffusivity: f32x8::simd_from(simd, boards.diffusivity),
            shifts: [shut; SHIFTS],
            limit: f32x8::simd_from(simd, air.limit),
            cells: [shut; CELLS],
            surfaces: [shut; 2],
        };
        for (to, from) in lanes.transfer.iter_mut().zip(&boards.transfer) {
            *to = f32x8::simd_from(simd, *from).max(shut);
        }
        for (to, from) in lanes.shifts.iter_mut().zip(&air.shifts) {
            *to = f32x8::simd_from(simd, *from);
        }
        for (to, from) in lanes.cells.iter_mut().zip(&boards.cells) {
            *to = f32x8::simd_from(simd, *from);
        }
        for (to, from) in lanes.surfaces.iter_mut().zip(&boards.surfaces) {
            *to = f32x8::simd_from(simd, *from);
        }
        lanes
    }

    #[inline(always)]
    fn store(&self, boards: &mut Boards) {
        for (to, from) in boards.cells.iter_mut().zip(&self.cells) {
            *to = (*from).into();
        }
        for (to, from) in boards.surfaces.iter_mut().zip(&self.surfaces) {
            *to = (*from).into();
        }
    }

    /// Vapor pressure in each world's room.
    #[inline(always)]
    fn vapor(&self, simd: S, step: &StepAir, air: &AirLanes) -> f32x8<S> {
        let mut vapor = f32x8::splat(simd, step.vapor);
        for (shift, by) in self.shifts.iter().zip(step.by_shift) {
            vapor += *shift * by;
        }
        if let [before, after, ..] = air.spells.get(step.spell..).unwrap_or(&[]) {
            let (before, after) = (f32x8::simd_from(simd, *before), f32x8::simd_from(simd, *after));
            vapor += (before + (after - before) * step.into_spell) * step.by_spell;
        }
        let most = self.limit * (step.limited * step.saturation) + (1.0 - step.limited) * step.saturation;
        vapor.min(most).max(f32x8::splat(simd, step.least.max(0.02 * step.saturation)))
    }

    /// One step; gives the mean moisture after it.
    #[inline(always)]
    #[expect(clippy::cast_precision_loss, reason = "ten cells")]
    fn step(&mut self, simd: S, step: &StepAir, air: &AirLanes) -> Lanes {
        let vapor = self.vapor(simd, step, air);
        let [dry, rise] = step.diffusivity;
        let scale = self.diffusivity * dry;
        let apart = scale * (step.seconds / (self.dx * self.dx));
        let mut exchange = [apart; CELLS - 1];
        for (at, exchange) in exchange.iter_mut().enumerate() {
            *exchange = exp(simd, (self.cells[at] + self.cells[at + 1]) * (0.5 * rise)) * apart;
        }
        let half = scale * (2.0 * self.density / self.dx);
        let conductance =
            [exp(simd, self.cells[0] * rise) * half, exp(simd, self.cells[CELLS - 1] * rise) * half];
        let outer = step.seconds / (self.density * self.dx);
        let mut next = self.cells;
        for _ in 0..PASSES {
            let faces = [
                tangent(simd, step, self.surfaces[0], conductance[0], self.transfer[0], vapor),
                tangent(simd, step, self.surfaces[1], conductance[1], self.transfer[1], vapor),
            ];
            next = solve(simd, &self.cells, &exchange, &faces, outer);
            for (side, end) in [(0, next[0]), (1, next[CELLS - 1])] {
                let flux = faces[side].slope * end + faces[side].at_zero;
                let h = (vapor + flux / self.transfer[side]) / step.saturation;
                self.surfaces[side] = h.max(f32x8::splat(simd, 0.0)).min(f32x8::splat(simd, 1.0));
            }
        }
        self.cells = next;
        let mut sum = next[0];
        for cell in &next[1..] {
            sum += *cell;
        }
        (sum * (1.0 / CELLS as f32)).into()
    }
}

/// e to the power of `x`, for 0 to 2: the series at a quarter, squared twice; to 1e-5.
#[inline(always)]
fn exp<S: Simd>(simd: S, x: f32x8<S>) -> f32x8<S> {
    let y = x * 0.25;
    let mut sum = f32x8::splat(simd, 1.0);
    for n in [6.0, 5.0, 4.0, 3.0, 2.0, 1.0] {
        sum = y * (1.0 / n) * sum + 1.0;
    }
    let square = sum * sum;
    square * square
}

/// The surface where as much arrives through the half cell as leaves into the air, with the
/// isotherm's tangent at relative humidity `h`; see [`crate::wood::drying`].
#[inline(always)]
fn tangent<S: Simd>(
    simd: S,
    step: &StepAir,
    h: f32x8<S>,
    conductance: f32x8<S>,
    transfer: f32x8<S>,
    vapor: f32x8<S>,
) -> Face<S> {
    let (moisture, slope) = isotherm(simd, step, h);
    let steepness = f32x8::splat(simd, step.saturation) / slope;
    let both = conductance * transfer / (conductance + transfer * steepness);
    Face { slope: both * steepness, at_zero: both * (h * step.saturation - steepness * moisture - vapor) }
}

/// Moisture in balance with relative humidity `h`, kg/kg, and how fast it rises with it.
#[inline(always)]
fn isotherm<S: Simd>(simd: S, step: &StepAir, h: f32x8<S>) -> (f32x8<S>, f32x8<S>) {
    let [scale, k, k1, k2] = step.isotherm;
    let one = f32x8::splat(simd, 1.0);
    let kh = h * k;
    let first = kh * k1;
    let second = first * kh * k2;
    let (free, hydrated) = (one / (one - kh), one / (first + second + 1.0));
    let above = first + second * 2.0;
    let moisture = (kh * free + above * hydrated) * scale;
    let cross = kh * (k1 * k2);
    let hydrates = (cross * 4.0 + k1 - above * hydrated * (cross * 2.0 + k1)) * hydrated;
    (moisture, (free * free + hydrates) * (scale * k))
}

/// The step's tridiagonal system, by Thomas' algorithm.
#[inline(always)]
fn solve<S: Simd>(
    simd: S,
    cells: &[f32x8<S>; CELLS],
    exchange: &[f32x8<S>; CELLS - 1],
    faces: &[Face<S>; 2],
    outer: f32,
) -> [f32x8<S>; CELLS] {
    let zero = f32x8::splat(simd, 0.0);
    let (mut from_left, mut eliminated, mut upper) = (zero, zero, zero);
    let mut scratch = [(zero, zero); CELLS];
    for at in 0..CELLS {
        let to_right = if at + 1 < CELLS { exchange[at] } else { zero };
        let (mut diagonal, mut right) = (from_left + to_right + 1.0, cells[at]);
        for (end, face) in [(0, &faces[0]), (CELLS - 1, &faces[1])] {
            if at == end {
                diagonal += face.slope * outer;
                right -= face.at_zero * outer;
            }
        }
        let pivot = diagonal - from_left * upper;
        eliminated = (right + from_left * eliminated) / pivot;
        upper = to_right / pivot;
        scratch[at] = (eliminated, upper);
        from_left = to_right;
    }
    let mut next = [zero; CELLS];
    let mut after = zero;
    for at in (0..CELLS).rev() {
        let (right, upper) = scratch[at];
        after = right + upper * after;
        next[at] = after;
    }
    next
}

impl StepAir {
    /// Vapor pressure in one world's room, Pa: as [`run`] takes it.
    pub fn vapor_in(&self, air: &AirLanes, lane: usize) -> f32 {
        let mut vapor = self.vapor;
        for (shift, by) in air.shifts.iter().zip(self.by_shift) {
            vapor += shift[lane] * by;
        }
        if let [before, after, ..] = air.spells.get(self.spell..).unwrap_or(&[]) {
            vapor += (before[lane] + (after[lane] - before[lane]) * self.into_spell) * self.by_spell;
        }
        let most =
            air.limit[lane] * (self.limited * self.saturation) + (1.0 - self.limited) * self.saturation;
        vapor.min(most).max(self.least.max(0.02 * self.saturation))
    }

    /// Moisture in per cent that wood comes to in one world's room.
    pub fn settles_at(&self, air: &AirLanes, lane: usize) -> f64 {
        let [scale, k, k1, k2] = self.isotherm.map(f64::from);
        let kh = k * f64::from(self.vapor_in(air, lane) / self.saturation);
        let first = k1 * kh;
        let second = first * k2 * kh;
        100.0 * scale * (kh / (1.0 - kh) + (first + 2.0 * second) / (1.0 + first + second))
    }
}

#[cfg(test)]
impl Boards {
    /// Moisture of one board's slices from face to back, kg/kg.
    pub fn profile(&self, lane: usize) -> [f32; CELLS] {
        self.cells.map(|cell| cell[lane])
    }

    /// Relative humidity that one board's face and back are in balance with.
    pub fn surface_humidity(&self, lane: usize) -> [f32; 2] {
        self.surfaces.map(|side| side[lane])
    }
}
