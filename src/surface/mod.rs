//! What is boarded: outlines, sections and patterns, and the boards and joints they yield.
//!
//! [`Surface`] is what a person draws. [`layout`] turns it into boards (polygons), joints (straight
//! segments) and areas, and is pure geometry: it knows nothing of moisture or money.
//! [`pattern`] makes the sections of the usual patterns, which stay editable afterwards, and
//! [`faults`] says what is wrong with a drawing.
//!
//! Coordinates lie in the surface's own plane, so a sloped ceiling is drawn at its true size:
//! x to the right, y up, metres. Within a section, *along* is the direction the boards run and
//! *across* is 90° counter-clockwise from it; courses are counted across, from the low side.

mod additions;
mod boundary;
mod courses;
mod edit;
mod faults;
mod layout;
mod model;
mod new;
pub mod outlines;
pub mod pattern;
mod size;

pub use additions::add_corner;
pub use faults::{Fault, FaultKind, Part, faults};
pub use layout::{Board, Joint, JointKind, SectionLayout, SurfaceLayout, layout};
pub(crate) use model::outline_polygon;
pub use model::{
    Behind, BoardSpec, Divider, DividerKind, Finish, Fixing, Opening, Photo, Point, Profile, Section,
    Surface, SurfaceKind,
};
pub use new::NewSurface;
pub use size::BoardSize;
