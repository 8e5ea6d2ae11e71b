//! What must be bought, in whole pieces.

use super::catalogue::{Material, MaterialPer, Method, Outcome, Paint};
use super::plan::{BeadShape, Plan};
use super::quantities::{Quantities, TreatedJoint};
use crate::joint::Sealant;
use crate::measure::{Area, Length, Money, Percent, Units, Volume};

/// Width of bare wood to spot-prime along a scraped joint, metres. Assumption.
const PRIMED_STRIP: f64 = 0.025;

/// A size is left out of the mix for at most this many of its cans in favour of smaller ones.
const MOST_CANS: u32 = 30;

/// What the take-off follows from.
#[derive(Debug, Clone, Copy)]
pub struct TakeoffInputs<'a> {
    /// The method.
    pub method: &'a Method,
    /// What the user decided.
    pub plan: &'a Plan,
    /// The measure of the job.
    pub quantities: &'a Quantities,
    /// The sealant used.
    pub sealant: &'a Sealant,
    /// The primer used.
    pub primer: &'a Paint,
    /// The paint used.
    pub paint: &'a Paint,
    /// Everything else that is bought.
    pub materials: &'a [Material],
}

/// One line of the buying list.
#[derive(Debug, Clone, PartialEq)]
pub struct MaterialLine {
    /// Id by which the user's own prices refer to it.
    pub id: String,
    /// What it is.
    pub name: String,
    /// What one piece holds, where that tells pieces apart: cans of paint.
    pub holds: Option<Volume>,
    /// What is needed, in litres, metres and the like, with its unit.
    pub need: Need,
    /// Whole pieces to buy.
    pub pieces: u32,
    /// Price of a piece.
    pub price: Money,
    /// Price of all pieces.
    pub amount: Money,
    /// Where price and contents are from, in words.
    pub basis: String,
}

impl MaterialLine {
    /// Its name with what a piece holds.
    pub fn label(&self, units: Units) -> String {
        match self.holds {
            Some(holds) => format!("{}, can of {}", self.name, holds.show(units)),
            None => self.name.clone(),
        }
    }
}

/// How much of something is needed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Need {
    /// A volume.
    Volume(Volume),
    /// An area.
    Area(Area),
    /// A length.
    Run(Length),
    /// A number.
    Count(f64),
}

/// Volume of wet sealant for `joints`, waste included.
///
/// Cured, a metre of bead takes gap × depth (as deep as wide, but at least the plan's depth) plus
/// the filled share of the V, whose section is the square of its leg. Wet volume is the cured one
/// over the sealant's solids.
pub fn wet_sealant(joints: &[TreatedJoint], bead: &BeadShape, solids: Percent) -> Volume {
    let cured = |joint: &TreatedJoint| {
        let (gap, v) = (joint.gap.to_m(), joint.v_leg.to_m());
        let depth = gap.max(bead.least_depth.to_m());
        (gap * depth + v * v * bead.v_filled.to_fraction()) * joint.length.to_m()
    };
    let cured: f64 = joints.iter().map(cured).sum();
    Volume::m3(cured / solids.to_fraction().max(0.01) * (1.0 + bead.waste.to_fraction()))
}

/// Area that a litre covers with one coat: 1000 × solids / film (µm) m², less what does not reach
/// the wood. The same as 1604 ft²·mil a US gallon at 100 % solids.
pub fn spread_rate(paint: &Paint) -> f64 {
    1000.0 * paint.solids.to_fraction() / paint.film.max(1.0) * paint.transfer.to_fraction()
}

/// A choice of cans: how many of each of the paint's sizes, and their price.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cans {
    /// Number of each size, in the paint's order.
    pub counts: Vec<u32>,
    /// Price of all.
    pub amount: Money,
}

/// The cheapest cans that hold at least `need`. `None` if the paint has no cans.
///
/// Every number of each larger size is tried, the rest filled with what is left; exact for up to
/// three sizes of the small numbers a room takes.
pub fn cheapest_cans(need: Volume, cans: &[(f64, Money)]) -> Option<Cans> {
    fn best(need: f64, cans: &[(f64, Money)]) -> Option<Cans> {
        let (&(litres, price), smaller) = cans.split_last()?;
        if litres <= 0.0 {
            return None;
        }
        let enough = whole(need / litres);
        let least = if smaller.is_empty() { enough } else { enough.saturating_sub(MOST_CANS) };
        let with = |count: u32| {
            let left = need - f64::from(count) * litres;
            let rest = match left > 1e-9 {
                true => best(left, smaller)?,
                false => Cans { counts: vec![0; smaller.len()], amount: Money::ZERO },
            };
            let mut counts = rest.counts;
            counts.push(count);
            Some(Cans { counts, amount: rest.amount + price.times(f64::from(count)) })
        };
        (least..=enough).filter_map(with).min_by_key(|cans| cans.amount)
    }
    best(need.to_litres().max(0.0), cans)
}

/// Whole pieces for a number of them, a hair of rounding forgiven; at most a million.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to 0..=1e6")]
fn whole(pieces: f64) -> u32 {
    (pieces - 1e-9).ceil().clamp(0.0, 1e6) as u32
}

/// The buying list of a method.
pub fn takeoff(inputs: &TakeoffInputs<'_>) -> Vec<MaterialLine> {
    let mut lines = Vec::new();
    let joints = inputs.quantities;
    let painted = joints.painted.to_m2();
    let strip = joints.joint_run().to_m() * PRIMED_STRIP;
    let primed = match inputs.method.outcome {
        Outcome::Bead { .. } => {
            lines.push(sealant_line(inputs));
            strip
        }
        Outcome::Line => 2.0 * strip,
        Outcome::Glued | Outcome::Covered => strip,
        // New boards are primed all round.
        Outcome::Boards { .. } => joints.boarded.to_m2() * 2.0,
        Outcome::Unchanged => 0.0,
    };
    lines.extend(paint_lines(inputs.primer, primed, inputs.plan));
    if inputs.method.paints() {
        let coats = f64::from(inputs.plan.usable_coats());
        lines.extend(paint_lines(inputs.paint, painted * coats, inputs.plan));
    }
    let wanted = inputs.materials.iter().filter(|material| inputs.method.materials.contains(&material.id));
    lines.extend(wanted.map(|material| material_line(material, inputs)));
    lines.retain(|line| line.pieces > 0);
    lines
}

fn sealant_line(inputs: &TakeoffInputs<'_>) -> MaterialLine {
    let sealant = inputs.sealant;
    let need = wet_sealant(&inputs.quantities.treated, &inputs.plan.bead, sealant.solids);
    let pieces = whole(need.to_m3() / sealant.cartridge.to_m3().max(1e-9));
    let (price, basis) = own_price(inputs.plan, &sealant.name, sealant.price, &sealant.class);
    MaterialLine {
        id: sealant.name.clone(),
        name: format!("{}, cartridge", sealant.name),
        holds: None,
        need: Need::Volume(need),
        pieces,
        price,
        amount: price.times(f64::from(pieces)),
        basis,
    }
}

/// A line for each can size that is bought.
fn paint_lines(paint: &Paint, area: f64, plan: &Plan) -> Vec<MaterialLine> {
    let need = Volume::litres(area / spread_rate(paint).max(0.01));
    let mut cans = paint.cans.clone();
    if let (Some(own), Some(largest)) = (plan.own_prices.get(&paint.name), cans.last_mut()) {
        largest.1 = *own;
    }
    let Some(choice) = cheapest_cans(need, &cans) else { return vec![] };
    let line = |(&(litres, price), &pieces): (&(f64, Money), &u32)| MaterialLine {
        id: paint.name.clone(),
        name: paint.name.clone(),
        holds: Some(Volume::litres(litres)),
        need: Need::Volume(need),
        pieces,
        price,
        amount: price.times(f64::from(pieces)),
        basis: format!("{} ({})", paint.source, paint.kind.words()),
    };
    cans.iter().zip(&choice.counts).map(line).collect()
}

fn material_line(material: &Material, inputs: &TakeoffInputs<'_>) -> MaterialLine {
    let (plan, quantities) = (inputs.plan, inputs.quantities);
    let waste = plan.board_waste.to_fraction();
    let need = quantities.of_material(material.per, inputs.method.visits(), waste);
    let pieces = whole(need / material.holds.max(1e-9));
    let basis = format!("{} ({})", material.source, material.kind.words());
    let (price, basis) = own_price(plan, &material.id, material.price, basis.trim_start());
    MaterialLine {
        id: material.id.clone(),
        name: material.name.clone(),
        holds: None,
        need: match material.per {
            MaterialPer::Visit | MaterialPer::Section => Need::Count(need),
            MaterialPer::PaintedArea | MaterialPer::CoveredArea | MaterialPer::BoardedArea => {
                Need::Area(Area::m2(need))
            }
            MaterialPer::OutlineRun | MaterialPer::BoardRun | MaterialPer::JointRun => {
                Need::Run(Length::m(need))
            }
            MaterialPer::BoardVolume => Need::Volume(Volume::m3(need)),
        },
        pieces,
        price,
        amount: price.times(f64::from(pieces)),
        basis,
    }
}

fn own_price(plan: &Plan, id: &str, shelf: Money, basis: &str) -> (Money, String) {
    match plan.own_prices.get(id) {
        Some(own) => (*own, "your own price".to_owned()),
        None => (shelf, basis.to_owned()),
    }
}
