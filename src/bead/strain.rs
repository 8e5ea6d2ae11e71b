//! What a bead goes through when the boards move: the answer of this module.

use std::collections::BTreeMap;

use serde::Serialize;

use super::contact::Beyond;
use super::limits::{Finding, Severity};
use super::mesh::{Extent, Fineness};
use super::model::{Model, Motion, State, Stuck};
use super::section::{Behind, BoardEdge, Outline, Section};
use super::slide::{Slide, unit_slide};
use super::stretch::{line_means, local_stretch, middle_stretch};
use crate::measure::{Area, Length};

/// How the boards have moved since the bead cured.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Movement {
    /// Opening of the joint; below zero it has closed.
    pub open: Length,
    /// Sliding of the boards along the joint.
    pub slide: Length,
    /// How far the board without the tongue has come out of the other's plane, toward the room.
    pub lift: Length,
}

impl Movement {
    /// A joint that opens, or closes if below zero.
    pub const fn open(open: Length) -> Self {
        Self { open, slide: Length::ZERO, lift: Length::ZERO }
    }

    /// Boards that slide along the joint.
    pub const fn slide(slide: Length) -> Self {
        Self { open: Length::ZERO, slide, lift: Length::ZERO }
    }
}

/// A place in the section.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    /// The middle of the face.
    FaceMiddle,
    /// Where the face meets a board: the edge that is seen.
    VisibleEdge,
    /// The lower edge of a bevel inside the bead.
    SlotCorner,
    /// The middle of the back.
    BackMiddle,
    /// Where the back meets a board.
    BackEdge,
    /// The middle of the bead, halfway between face and back.
    Core,
    /// Wherever the bond to a board is strained most, corners left out.
    Bond,
    /// Where the back meets the tongue and the board that moves over it.
    TongueCorner,
}

/// Stretch at one place.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PlaceStretch {
    /// Where.
    pub place: Place,
    /// Mean of the largest principal stretch within 0.25 mm: length now over length as laid. At the
    /// worse of the two boards.
    pub stretch: f64,
    /// How far toward the room it lies from the bottom of the V, as laid; below zero in the slot.
    #[serde(rename = "up_mm", serialize_with = "in_mm")]
    pub up: Length,
}

fn in_mm<S: serde::Serializer>(length: &Length, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(length.to_mm())
}

/// The strain of a bead. Its stretches are lengths now over lengths as laid, 1 at rest; those of lines
/// leave sliding along the joint out.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BeadStrain {
    /// Mean stretch of the face's line within 0.25 mm of its middle.
    pub face_middle: f64,
    /// Mean stretch of the face's line from edge to edge.
    pub face_mean: f64,
    /// The largest mean stretch of the face's line over 0.5 mm.
    pub face_largest: f64,
    /// The same of the back, on a tongue its released strip included.
    pub back_largest: f64,
    /// Every place that the section has, with its mean stretch.
    pub places: Vec<PlaceStretch>,
    /// The largest of `places`.
    pub largest: PlaceStretch,
    /// Force that holds the boards so, per length of bead, over Young's modulus (three times the shear
    /// modulus). Below zero if the bead pushes. Times the modulus in Pa it is N per meter of joint.
    pub force_per_modulus: Length,
    /// Force along the joint, in the same measure.
    pub slide_force_per_modulus: Length,
    /// How far the middle of the face has moved toward the room; below zero it has sunk.
    pub bulge: Length,
    /// Whether the bead bows or its skin folds on the way there: its smooth form was not stable and
    /// another one was taken. Only squeezed beads do.
    pub wrinkled: bool,
}

/// Why there is no strain.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum StrainError {
    /// The section is not a bead; the findings say why.
    #[error("invalid_section")]
    Invalid(Vec<Finding>),
    /// The movement is not one a bead can go through: closed by 90 % and more, or not finite.
    #[error("movement_out_of_range")]
    OutOfRange,
    /// Equilibrium was lost, as in a bead folded over or torn off a corner; this opening was reached.
    #[error("no_equilibrium")]
    NoEquilibrium {
        /// The last opening with an equilibrium.
        reached: Length,
    },
}

/// Works out the strain after one movement.
///
/// # Errors
/// See [`StrainError`].
pub fn strain(section: &Section, movement: Movement) -> Result<BeadStrain, StrainError> {
    let mut path = strain_path(section, &[movement])?;
    path.pop().ok_or(StrainError::OutOfRange)
}

/// Works out the strain along movements in turn, each reached from the one before. They should all
/// open or all close: a bead is taken to be pulled or squeezed by the last of them.
///
/// # Errors
/// See [`StrainError`].
pub fn strain_path(section: &Section, path: &[Movement]) -> Result<Vec<BeadStrain>, StrainError> {
    strain_with(section, path, Fineness::STANDARD, None)
}

/// [`strain_path`] with a mesh of choice; `beyond` overrides what is beyond the face's edges.
pub(super) fn strain_with(
    section: &Section,
    path: &[Movement],
    fineness: Fineness,
    beyond: Option<Beyond>,
) -> Result<Vec<BeadStrain>, StrainError> {
    let (strains, stuck) = strain_until(section, path, fineness, beyond)?;
    match stuck {
        Some(stuck) => Err(StrainError::NoEquilibrium { reached: Length::m(stuck.reached.open) }),
        None => Ok(strains),
    }
}

/// The strains at those movements that have an equilibrium, and where it was lost.
pub(super) fn strain_until(
    section: &Section,
    path: &[Movement],
    fineness: Fineness,
    beyond: Option<Beyond>,
) -> Result<(Vec<BeadStrain>, Option<Stuck>), StrainError> {
    let findings = section.findings();
    if findings.iter().any(|finding| finding.severity == Severity::Invalid) {
        return Err(StrainError::Invalid(findings));
    }
    strain_outline(section, section.outline(), path, fineness, beyond)
}

/// [`strain_until`] for a bead that cured to this outline, whatever speaks against it.
pub(super) fn strain_outline(
    section: &Section,
    outline: Outline,
    path: &[Movement],
    fineness: Fineness,
    beyond: Option<Beyond>,
) -> Result<(Vec<BeadStrain>, Option<Stuck>), StrainError> {
    let mut model = model(section, outline, path, fineness, beyond).ok_or(StrainError::OutOfRange)?;
    let motions: Vec<Motion> =
        path.iter().map(|m| Motion { open: m.open.to_m(), lift: m.lift.to_m() }).collect();
    let (states, stuck) = model.follow(&motions);
    let slides = path.iter().any(|m| m.slide != Length::ZERO);
    let slide = slides.then(|| unit_slide(&model)).transpose();
    let slide = slide.map_err(|_singular| StrainError::NoEquilibrium { reached: Length::ZERO })?;
    let strains = states.iter().zip(path);
    let strains = strains.map(|(state, m)| read(&model, state, slide.as_ref().map(|s| (s, m.slide.to_m()))));
    Ok((strains.collect(), stuck))
}

/// The meshed section for a path of movements. `None` if one of them is out of range or memory runs
/// out.
pub(super) fn model(
    section: &Section,
    outline: Outline,
    path: &[Movement],
    fineness: Fineness,
    beyond: Option<Beyond>,
) -> Option<Model> {
    let gap = section.gap.to_m();
    let fits = |m: &Movement| {
        (-0.9..=20.0).contains(&(m.open.to_m() / gap))
            && [m.slide, m.lift].iter().all(|x| (x.to_m() / gap).abs() <= 20.0)
    };
    if !path.iter().all(fits) {
        return None;
    }
    let squeezed = path.last().is_some_and(|m| m.open < Length::ZERO);
    let lifted = path.iter().any(|m| m.lift != Length::ZERO);
    let whole = (section.behind == Behind::Tongue && !squeezed) || lifted;
    let extent = if whole { Extent::Whole } else { Extent::RightHalf };
    let over = matches!(section.edge, BoardEdge::Square) || section.fill.to_pct() >= 100.0;
    let beyond = beyond.unwrap_or(if over { Beyond::Face } else { Beyond::Bevel });
    Model::new(outline, section.behind, beyond, squeezed, extent, fineness).ok()
}

/// Reads a state's strain off the mesh; `slide` is the unit slide and how many meters of it.
fn read(model: &Model, state: &State, slide: Option<(&Slide, f64)>) -> BeadStrain {
    let mesh = &model.mesh;
    let along: Option<Vec<f64>> = slide.map(|(unit, by)| unit.along.iter().map(|along| along * by).collect());
    let stretch = |at: [f64; 2]| local_stretch(model, state, at, along.as_deref());
    let whole = model.extent == Extent::Whole;
    let mut found: BTreeMap<Place, PlaceStretch> = BTreeMap::new();
    for (place, at) in places(model) {
        let mirrored = if whole && at[0] > 0.0 { stretch([-at[0], at[1]]) } else { 1.0 };
        let here = PlaceStretch { place, stretch: stretch(at).max(mirrored), up: Length::m(at[1]) };
        let worst = found.entry(place).or_insert(here);
        if here.stretch > worst.stretch {
            *worst = here;
        }
    }
    let places: Vec<PlaceStretch> = found.into_values().collect();
    let off_middle = |node: &usize| mesh.nodes[*node][0].abs();
    let middle = mesh.face().min_by(|a, b| off_middle(a).total_cmp(&off_middle(b)));
    let middle = middle.unwrap_or(mesh.face().start);
    let largest = places.iter().copied().max_by(|a, b| a.stretch.total_cmp(&b.stretch));
    let largest =
        largest.unwrap_or(PlaceStretch { place: Place::FaceMiddle, stretch: 1.0, up: Length::ZERO });
    let (face_mean, face_largest) = line_means(model, state, mesh.face());
    let over_young = |force: f64| Length::m(force / 3.0);
    BeadStrain {
        face_middle: middle_stretch(model, state, mesh.face()),
        face_mean,
        face_largest,
        back_largest: line_means(model, state, mesh.back()).1,
        places,
        largest,
        force_per_modulus: over_young(state.force[0]),
        slide_force_per_modulus: over_young(slide.map_or(0.0, |(unit, by)| unit.force * by)),
        bulge: Length::m(state.places[middle][1] - mesh.nodes[middle][1]),
        wrinkled: state.wrinkled,
    }
}

/// Heights at which the bond is looked at, as shares of the bead's.
const BOND_STATIONS: [f64; 7] = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];

/// The places that this section has, on the right side; the bond at several.
fn places(model: &Model) -> Vec<(Place, [f64; 2])> {
    let outline = &model.outline;
    let face = [outline.half_width(outline.top), outline.top];
    let back = [outline.half_gap, outline.bottom];
    let mut places =
        vec![(Place::FaceMiddle, [0.0, outline.top - outline.top_sag]), (Place::VisibleEdge, face)];
    if outline.top > 0.0 && outline.bottom < 0.0 {
        places.push((Place::SlotCorner, [outline.half_gap, 0.0]));
    }
    if model.behind == Behind::Tongue {
        places.push((Place::TongueCorner, back));
    } else {
        places.push((Place::BackMiddle, [0.0, outline.bottom + outline.bottom_rise]));
        places.push((Place::BackEdge, back));
    }
    let height = |share: f64| outline.bottom + share * (outline.top - outline.bottom);
    let hollow = 0.5 * (outline.bottom_rise - outline.top_sag);
    places.push((Place::Core, [0.0, height(0.5) + hollow]));
    for share in BOND_STATIONS {
        places.push((Place::Bond, [outline.half_width(height(share)), height(share)]));
    }
    places
}

/// Area of the section after cure and of the wet bead that makes it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Areas {
    /// After cure.
    pub cured: Area,
    /// As pushed in.
    pub wet: Area,
}

impl Section {
    /// Both areas.
    pub fn areas(&self) -> Areas {
        Areas { cured: self.cured_area(), wet: self.wet_area() }
    }
}
