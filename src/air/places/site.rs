//! What a job keeps of a place.

use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::climate::PlaceClimate;
use super::coordinates::Coordinates;
use super::format::{AssetError, Fault, Table};
use super::stations::Stations;
use crate::measure::{Length, finite};

/// Where a job is. The coordinates say what climate it has; the name says what to call it, and is kept as
/// it was when the place was chosen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Site {
    /// What the place is called.
    pub name: String,
    /// Where it is.
    pub coordinates: Coordinates,
    /// Height above the sea, if the user said it; in files a number of meters.
    #[serde(
        default,
        rename = "elevation_m",
        serialize_with = "write_meters",
        deserialize_with = "read_meters"
    )]
    #[schemars(with = "Option<f64>")]
    pub elevation: Option<Length>,
}

impl Site {
    /// The site's climate, by the stations that come with the program.
    ///
    /// # Errors
    /// If the program's own table of stations is damaged.
    pub fn climate(&self) -> Result<PlaceClimate, AssetError> {
        let climate = Stations::built_in()?.climate(self.coordinates, self.elevation);
        climate.ok_or(AssetError { table: Table::Stations, fault: Fault::Damaged })
    }
}

#[expect(clippy::ref_option, reason = "the form that serde wants")]
fn write_meters<S: Serializer>(elevation: &Option<Length>, serializer: S) -> Result<S::Ok, S::Error> {
    elevation.map(Length::to_m).serialize(serializer)
}

fn read_meters<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<Length>, D::Error> {
    /// A bare number that is finite.
    #[derive(Deserialize)]
    #[serde(transparent)]
    struct Meters(#[serde(deserialize_with = "finite")] f64);

    Ok(Option::<Meters>::deserialize(deserializer)?.map(|Meters(meters)| Length::m(meters)))
}
