//! What must be bought, in whole pieces.

use jiff::civil::Date;

use super::cutting::CuttingList;
use super::methods::{Outcome, RepairMethod};
use super::plan::{BeadShape, Plan};
use super::quantities::{Quantities, TreatedJoint};
use super::supplies::{Material, MaterialPer, Paint};
use crate::joint::{BeadLay, Sealant};
use crate::measure::{Area, Dimension, Length, Money, Percent, Volume};
use crate::named::Named as _;
use crate::wood::Kind;

/// Width of bare wood to spot-prime along a scraped joint, metres. Assumption.
const PRIMED_STRIP: f64 = 0.025;

/// A size is left out of the mix for at most this many of its cans in favour of smaller ones.
const MOST_CANS: u32 = 30;

/// What the take-off follows from.
#[derive(Debug, Clone, Copy)]
pub struct TakeoffInputs<'a> {
    /// The method.
    pub method: &'a RepairMethod,
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
    /// Weeks begun in which the crew is on the job.
    pub weeks: u32,
    /// How new boards are cut from the plan's stock lengths, if they can be.
    pub cutting: Option<&'a CuttingList>,
}

/// Where the price of a line is from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum OfferBasis {
    /// The user's own price.
    Own,
    /// The catalog's price.
    Catalog {
        /// Where it and what a piece holds are from; of a sealant, its class.
        source: String,
        /// How far to trust that; `None` where the source is a class.
        kind: Option<Kind>,
        /// The day of the price, if it is known.
        priced: Option<Date>,
    },
}

/// One line of the buying list.
#[derive(Debug, Clone, PartialEq)]
pub struct MaterialLine {
    /// Id by which the user's own prices refer to it.
    pub id: String,
    /// What it is.
    pub name: String,
    /// What one piece is, where its name does not say it all.
    pub size: PieceSize,
    /// What is needed.
    pub need: Need,
    /// Pieces that what is needed comes to, where it is sold in one size: not whole, waste not included.
    pub exact: Option<f64>,
    /// Whole pieces that are there already.
    pub on_hand: u32,
    /// Whole pieces to buy.
    pub pieces: u32,
    /// Price of a piece.
    pub price: Money,
    /// Price of all pieces that are used up, those that are there already included.
    pub amount: Money,
    /// Whether the price is the user's own.
    pub own_price: bool,
    /// Where its price is from.
    pub basis: OfferBasis,
}

/// What one piece of a line is, where its name does not say it all.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PieceSize {
    /// What its name says.
    One,
    /// A can that holds this.
    Can(Volume),
    /// A board of this length.
    Board(Length),
    /// A load of this loose volume.
    Load(Volume),
    /// Strips and the like by the length: this much of it.
    Run(Length),
    /// The same, of this thickness and width.
    Strip {
        /// How thick and how wide it is.
        section: (Length, Length),
        /// The length that a piece counts for.
        run: Length,
    },
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

impl Need {
    /// Whether nothing is needed.
    pub fn is_nothing(&self) -> bool {
        match *self {
            Self::Volume(volume) => volume.to_m3() <= 0.0,
            Self::Area(area) => area <= Area::ZERO,
            Self::Run(run) => run <= Length::ZERO,
            Self::Count(count) => count <= 0.0,
        }
    }
}

/// Volume of wet sealant for `joints`, waste included: the section as it is laid, before it cures and
/// sinks, along every joint, what runs into slots that nothing backs, and a second bead that takes this share
/// of the first. A slot that does not take such a bead counts for nothing.
pub fn wet_sealant(joints: &[TreatedJoint], bead: &BeadShape, lay: BeadLay, second_bead: Percent) -> Volume {
    let wet = |joint: &TreatedJoint| {
        let slot = lay.slot(joint.gap);
        let section = lay.design(joint.edges, &bead.form()).section(slot);
        let lost = lay.runs_in(slot, joint.edges);
        (section.wet_area().to_m2().max(0.0) + lost.to_m2()) * joint.length.to_m()
    };
    let wet: f64 = joints.iter().map(wet).sum();
    Volume::m3(wet * (1.0 + second_bead.to_fraction()) * (1.0 + bead.waste.to_fraction()))
}

/// Area that a litre covers with one coat, sprayed or not: 1000 × solids / film (µm) m², less what does not
/// reach the wood. The same as 1604 ft²·mil a US gallon at 100 % solids.
pub fn spread_rate(paint: &Paint, sprayed: bool) -> f64 {
    let transfer = paint.sprayed.filter(|_| sprayed).unwrap_or(paint.transfer);
    1000.0 * paint.solids.to_fraction() / paint.film.max(1.0) * transfer.to_fraction()
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

/// The buying list of a method, with the sizes that are offered and not bought at no pieces.
pub fn takeoff(inputs: &TakeoffInputs<'_>) -> Vec<MaterialLine> {
    let mut lines = Vec::new();
    let joints = inputs.quantities;
    let painted = joints.painted.to_m2();
    let strip = joints.joint_run().to_m() * PRIMED_STRIP;
    let primed = match inputs.method.outcome {
        Outcome::Bead { lay, .. } => {
            lines.extend(sealant_lines(inputs, lay));
            strip
        }
        Outcome::Line => 2.0 * strip,
        Outcome::Glued | Outcome::Covered => strip,
        // Old boards are primed where their edges are scraped bare, new ones all round.
        Outcome::Boards { .. } if inputs.method.does("clean_edges") => {
            2.0 * joints.board_run.to_m() * PRIMED_STRIP
        }
        Outcome::Boards { .. } => joints.boarded.to_m2() * 2.0,
        Outcome::Unchanged => 0.0,
    };
    lines.extend(paint_lines(inputs.primer, primed, inputs.plan, false));
    if inputs.method.paints() {
        // New boards have a coat on face and edges before they go up.
        let before = if inputs.method.does("paint_boards") { joints.boarded.to_m2() } else { 0.0 };
        let coats = f64::from(inputs.plan.coats);
        let sprayed = inputs.method.sprays();
        lines.extend(paint_lines(inputs.paint, painted * coats + before, inputs.plan, sprayed));
    }
    let wanted = inputs.materials.iter().filter(|material| inputs.method.materials.contains(&material.id));
    lines.extend(wanted.flat_map(|material| match material.per {
        MaterialPer::BoardRun => board_lines(material, inputs),
        _ => vec![material_line(material, inputs)],
    }));
    lines.retain(|line| !line.need.is_nothing());
    lines
}

/// A line for each pack of sealant that is bought.
fn sealant_lines(inputs: &TakeoffInputs<'_>, lay: BeadLay) -> Vec<MaterialLine> {
    let sealant = inputs.sealant;
    let beaded: Vec<TreatedJoint> = inputs.quantities.beaded().copied().collect();
    let need = wet_sealant(&beaded, &inputs.plan.bead, lay, sealant.second_bead());
    let packs = sealant.packs.iter().map(|pack| Offer {
        id: format!("{}, {}", sealant.key(), pack.name),
        name: format!("{}, {}", sealant.name, pack.name),
        size: PieceSize::One,
        litres: pack.holds.to_litres(),
        price: pack.price,
    });
    let basis = OfferBasis::Catalog { source: sealant.class.clone(), kind: None, priced: sealant.priced };
    let packs: Vec<Offer> = packs.collect();
    if inputs.plan.two_guns {
        return cheapest_lines(need, packs, inputs.plan, &basis);
    }
    // Each pack wants a gun of its own.
    let one_gun = packs.into_iter().map(|pack| cheapest_lines(need, vec![pack], inputs.plan, &basis));
    let mut lines: Vec<MaterialLine> = one_gun.flatten().collect();
    let cheapest = lines.iter().enumerate().min_by_key(|(_, line)| line.amount).map(|(at, _)| at);
    for (_, line) in lines.iter_mut().enumerate().filter(|(at, _)| Some(*at) != cheapest) {
        (line.pieces, line.on_hand, line.amount) = (0, 0, Money::ZERO);
    }
    lines
}

/// A line for each can size that is bought.
fn paint_lines(paint: &Paint, area: f64, plan: &Plan, sprayed: bool) -> Vec<MaterialLine> {
    let need = Volume::litres(area / spread_rate(paint, sprayed).max(0.01));
    let cans = paint.cans.iter().map(|&(litres, price)| Offer {
        id: format!("{}, {litres} l", paint.key()),
        name: paint.name.clone(),
        size: PieceSize::Can(Volume::litres(litres)),
        litres,
        price,
    });
    let basis =
        OfferBasis::Catalog { source: paint.source.clone(), kind: Some(paint.kind), priced: paint.priced };
    cheapest_lines(need, cans.collect(), plan, &basis)
}

/// Something sold in one size.
struct Offer {
    id: String,
    name: String,
    size: PieceSize,
    litres: f64,
    price: Money,
}

/// The cheapest mix of sizes that holds `need`, at the user's own prices where there are any.
fn cheapest_lines(need: Volume, offers: Vec<Offer>, plan: &Plan, basis: &OfferBasis) -> Vec<MaterialLine> {
    let priced = |offer: &Offer| own_price(plan, &offer.id, offer.price, basis);
    let sizes: Vec<(f64, Money)> = offers.iter().map(|offer| (offer.litres, priced(offer).0)).collect();
    let Some(choice) = cheapest_cans(need, &sizes) else { return vec![] };
    let line = |(offer, pieces): (Offer, u32)| {
        let (price, own_price, basis) = priced(&offer);
        let (on_hand, pieces) = from_the_van(plan, &offer.id, pieces);
        MaterialLine {
            exact: None,
            on_hand,
            id: offer.id,
            name: offer.name,
            size: offer.size,
            need: Need::Volume(need),
            pieces,
            price,
            amount: price.times(f64::from(pieces) + f64::from(on_hand)),
            own_price,
            basis,
        }
    };
    offers.into_iter().zip(choice.counts).map(line).collect()
}

/// Of the pieces that are needed, those that are there already, and those to buy.
fn from_the_van(plan: &Plan, id: &str, needed: u32) -> (u32, u32) {
    let on_hand = plan.on_hand.get(id).copied().unwrap_or(0).min(needed);
    (on_hand, needed - on_hand)
}

/// Where the catalog's price of a material is from.
fn catalog_basis(material: &Material) -> OfferBasis {
    OfferBasis::Catalog {
        source: material.source.clone(),
        kind: Some(material.kind),
        priced: material.priced,
    }
}

/// Face of the board that the catalog's price of boards is for, a 1x6.
const PRICED_FACE: Length = Length::inches(5.25);
/// Share of a board's price that goes with its width; the rest is milling, drying and handling. Assumption.
const GOES_WITH_WIDTH: f64 = 0.6;

/// The price of one board of a length and a face: the user's own for that length, else by the user's own price for a
/// run of it, else by the catalog's, for this face. With it, whether it is the user's own, and where it is from.
pub fn board_price(
    boards: &Material,
    (length, face): (Length, Length),
    plan: &Plan,
) -> (Money, bool, OfferBasis) {
    if let Some(own) = plan.own_prices.get(&board_id(boards, length)) {
        return (*own, true, OfferBasis::Own);
    }
    let basis = catalog_basis(boards);
    let (each, own, basis) = own_price(plan, &boards.id, boards.price, &basis);
    let wider = 1.0 + GOES_WITH_WIDTH * (face.to_m() / PRICED_FACE.to_m() - 1.0);
    let of_face = if own { 1.0 } else { wider };
    (each.times(of_face * length.to_m() / boards.holds.max(1e-9)), own, basis)
}

/// By what the user's own price of one board is known.
fn board_id(boards: &Material, length: Length) -> String {
    format!("{}, {:.0} mm", boards.id, length.to_mm())
}

/// A line for each stock length of board that is bought, by the cutting list.
fn board_lines(material: &Material, inputs: &TakeoffInputs<'_>) -> Vec<MaterialLine> {
    let plan = inputs.plan;
    let Some(cut) = inputs.cutting else { return vec![] };
    let line = |(length, &pieces): (&Length, &usize)| {
        let (price, own_price, basis) = board_price(material, (*length, inputs.quantities.face()), plan);
        let id = board_id(material, *length);
        let (on_hand, pieces) = from_the_van(plan, &id, u32::try_from(pieces).unwrap_or(u32::MAX));
        MaterialLine {
            exact: None,
            on_hand,
            id,
            name: material.name.clone(),
            size: PieceSize::Board(*length),
            need: Need::Run(inputs.quantities.board_run),
            pieces,
            price,
            amount: price.times(f64::from(pieces) + f64::from(on_hand)),
            own_price,
            basis,
        }
    };
    plan.stock.lengths.iter().zip(&cut.buy).map(line).collect()
}

/// What one piece of a material is.
fn piece_size(material: &Material) -> PieceSize {
    /// What is for less than this many meters is sold by the length, not by the roll or the pack.
    const BY_LENGTH: f64 = 1.01;
    let run = Length::m(material.holds);
    match (material.per, material.section) {
        (MaterialPer::BoardVolume, _) => PieceSize::Load(Volume::m3(material.holds)),
        (MaterialPer::JointRun | MaterialPer::BackedRun, Some(section)) => PieceSize::Strip { section, run },
        (MaterialPer::JointRun | MaterialPer::BackedRun, None) if material.holds < BY_LENGTH => {
            PieceSize::Run(run)
        }
        _ => PieceSize::One,
    }
}

fn material_line(material: &Material, inputs: &TakeoffInputs<'_>) -> MaterialLine {
    let (plan, quantities) = (inputs.plan, inputs.quantities);
    let need = quantities.of_material(material.per, inputs.method, inputs.weeks);
    let exact = need / material.holds.max(1e-9);
    let with_waste = exact * (1.0 + material.waste.unwrap_or_default().to_fraction());
    let (on_hand, pieces) = from_the_van(plan, &material.id, whole(with_waste));
    let basis = catalog_basis(material);
    let (price, own_price, basis) = own_price(plan, &material.id, material.price, &basis);
    MaterialLine {
        exact: Some(exact),
        on_hand,
        id: material.id.clone(),
        name: material.name.clone(),
        size: piece_size(material),
        need: match material.per.dimension() {
            Dimension::Number => Need::Count(need),
            Dimension::Area => Need::Area(Area::m2(need)),
            Dimension::Length => Need::Run(Length::m(need)),
            Dimension::Volume => Need::Volume(Volume::m3(need)),
        },
        pieces,
        price,
        amount: price.times(f64::from(pieces) + f64::from(on_hand)),
        own_price,
        basis,
    }
}

/// The price of a line, whether it is the user's own, and where it is from.
fn own_price(plan: &Plan, id: &str, catalog: Money, basis: &OfferBasis) -> (Money, bool, OfferBasis) {
    match plan.own_prices.get(id) {
        Some(own) => (*own, true, OfferBasis::Own),
        None => (catalog, false, basis.clone()),
    }
}
