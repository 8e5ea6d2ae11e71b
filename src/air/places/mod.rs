//! The climate outdoors of any place a person can name: a town, a ZIP code, or coordinates.
//!
//! [`find`] turns what was typed into [`Place`]s. A place becomes a [`Site`], which is what a job keeps;
//! [`Site::climate`] gives its twelve months outdoors, interpolated from the four nearest weather
//! stations. [`IndoorYear`](super::IndoorYear) turns those into a room's year.
//!
//! The pressure of water vapor is used as the stations report it. It is never turned into a relative
//! humidity at the month's mean temperature: over a cold, changeable month that comes out far too high
//! (88 % against about 74 % for January in Minneapolis).
//!
//! Nothing here writes a sentence. Results, cautions and errors are data; names of places are names.
//! The tables come with the program (`assets/climate`, with sources and licenses); each is unpacked when
//! first asked for. What stands in the files: [`mod@format`].

mod climate;
mod coordinates;
mod find;
pub mod format;
mod place;
mod site;
mod spelling;
mod stations;
mod towns;
mod typed;
mod zips;

pub use climate::{Caution, PlaceClimate, UsedStation};
pub use coordinates::{Coordinates, OutOfRange};
pub use find::Gazetteer;
pub use format::{AssetError, Fault, Table};
pub use place::{FindError, Matches, Place, PlaceKind};
pub use site::Site;
pub use stations::{ClimateStation, MonthOutdoors, StationSource, Stations};

/// Finds the places that `typed` may mean, the likeliest first, at most `limit` of them. Made for every
/// keystroke: well under a millisecond, once the tables are unpacked.
///
/// # Errors
/// See [`Gazetteer::find`]; and if the program's own tables are damaged.
pub fn find(typed: &str, limit: usize) -> Result<Matches, FindError> {
    Gazetteer::built_in()?.find(typed, limit)
}
