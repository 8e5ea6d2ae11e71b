//! The plain quantities: a number with one fixed unit each.

use std::borrow::Cow;
use std::iter::Sum;
use std::ops::{Add, Div, Mul, Neg, Sub};

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// A number from a file that is NaN or infinite.
#[derive(Debug, thiserror::Error)]
#[error("{0} is not a finite number: write an ordinary one, such as 12.5")]
struct NotFinite(f64);

/// Declares a newtype over a finite `f64`, with arithmetic that keeps the unit.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $new:ident, $get:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            /// Zero of this quantity.
            pub const ZERO: Self = Self(0.0);

            /// Makes the quantity from its number. The number must be finite.
            pub const fn $new(value: f64) -> Self {
                debug_assert!(value.is_finite());
                Self(value)
            }

            /// The number in the unit that the name says.
            pub const fn $get(self) -> f64 {
                self.0
            }

            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, Add::add)
            }
        }
    };
}
pub(super) use quantity;

/// Lets quantities stand in files as their bare number, refusing NaN and infinity; with the unit as the
/// schema of the files says it.
macro_rules! written_as_number {
    ($($name:ident $said:literal)*) => {$(
        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_f64(self.0)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                finite(deserializer).map(Self)
            }
        }

        impl JsonSchema for $name {
            fn schema_name() -> Cow<'static, str> {
                stringify!($name).into()
            }

            fn json_schema(_: &mut SchemaGenerator) -> Schema {
                json_schema!({ "type": "number", "description": $said })
            }
        }
    )*};
}
written_as_number! {
    Area "Square meters"
    Volume "Cubic meters"
    Moisture "Percent of the oven-dry weight"
    Temperature "Degrees Celsius"
    Humidity "Relative humidity as a fraction: 0.5 is 50%"
    Percent "Percent: 12.5 is 12.5%"
    Hours "Hours"
    Minutes "Minutes of one person"
    Angle "Degrees, counterclockwise"
}

quantity! {
    /// An area, in square metres.
    Area, m2, to_m2
}
quantity! {
    /// A volume, in cubic metres.
    Volume, m3, to_m3
}
quantity! {
    /// Moisture content of wood: per cent of its oven-dry mass. Below 0 means nothing.
    Moisture, pct, to_pct
}
quantity! {
    /// Temperature, in degrees Celsius.
    Temperature, celsius, to_celsius
}
quantity! {
    /// Relative humidity of air, as a fraction: 0.5 is 50 %.
    Humidity, fraction, to_fraction
}
quantity! {
    /// A share, rate or margin: 12.5 is 12.5 %.
    Percent, pct, to_pct
}
quantity! {
    /// Working time, in hours of one person unless said otherwise.
    Hours, h, to_h
}
quantity! {
    /// Working time of one person as it is read off a watch, in minutes.
    Minutes, of, to_minutes
}
quantity! {
    /// A plane angle, in degrees, counter-clockwise from the horizontal of the drawing.
    Angle, degrees, to_degrees
}

/// Reads a bare number of a file, refusing NaN and infinity. For `#[serde(deserialize_with)]`.
///
/// # Errors
/// If it is not a finite number.
pub fn finite<'de, D: Deserializer<'de>>(deserializer: D) -> Result<f64, D::Error> {
    let value = f64::deserialize(deserializer)?;
    if value.is_finite() { Ok(value) } else { Err(de::Error::custom(NotFinite(value))) }
}

impl Volume {
    /// Cubic metres of one millilitre.
    const ML: f64 = 1e-6;

    /// Makes a volume from litres.
    pub const fn litres(litres: f64) -> Self {
        Self::m3(litres * 1e-3)
    }

    /// The volume in litres.
    pub const fn to_litres(self) -> f64 {
        self.0 * 1e3
    }

    /// The volume in millilitres.
    pub const fn to_ml(self) -> f64 {
        self.0 / Self::ML
    }
}

impl Percent {
    /// The share as a fraction: 12.5 % is 0.125.
    pub const fn to_fraction(self) -> f64 {
        self.0 / 100.0
    }
}

impl Temperature {
    /// Makes a temperature from degrees Fahrenheit.
    pub const fn fahrenheit(degrees: f64) -> Self {
        Self::celsius((degrees - 32.0) / 1.8)
    }

    /// The temperature in degrees Fahrenheit.
    pub const fn to_fahrenheit(self) -> f64 {
        self.0 * 1.8 + 32.0
    }
}

impl Humidity {
    /// Makes a humidity from per cent.
    pub const fn pct(pct: f64) -> Self {
        Self::fraction(pct / 100.0)
    }

    /// The humidity in per cent.
    pub const fn to_pct(self) -> f64 {
        self.0 * 100.0
    }
}

impl Hours {
    /// Makes working time from minutes.
    pub const fn minutes(minutes: f64) -> Self {
        Self::h(minutes / 60.0)
    }
}

impl Angle {
    /// The angle in radians.
    pub const fn to_radians(self) -> f64 {
        self.0.to_radians()
    }
}

/// A range from `low` to `high`, both included.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Span<T> {
    /// Lower end.
    pub low: T,
    /// Upper end.
    pub high: T,
}

impl<T: PartialOrd + Copy> Span<T> {
    /// Whether a value lies in the range, its ends included.
    pub fn holds(&self, value: T) -> bool {
        self.low <= value && value <= self.high
    }
}

/// A value with its standard deviation in the same unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate<T> {
    /// The expected value.
    pub mean: T,
    /// Its standard deviation, not negative.
    pub sd: T,
}

/// A judged quantity: the least, the likely and the most it will be, in one unit.
///
/// Mean and spread by the PERT formulas, mean (a + 4m + b) / 6 and standard deviation (b − a) / 6.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
pub struct ThreePoint {
    /// Least.
    #[serde(deserialize_with = "finite")]
    pub low: f64,
    /// Most likely.
    #[serde(deserialize_with = "finite")]
    pub likely: f64,
    /// Most.
    #[serde(deserialize_with = "finite")]
    pub high: f64,
}

impl ThreePoint {
    /// The same value at all three points.
    pub const fn exactly(value: f64) -> Self {
        Self { low: value, likely: value, high: value }
    }

    /// Expected value.
    pub fn mean(self) -> f64 {
        (self.low + 4.0 * self.likely + self.high) / 6.0
    }

    /// Standard deviation.
    pub fn sd(self) -> f64 {
        (self.high - self.low) / 6.0
    }

    /// All three points this many times.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        Self { low: self.low * factor, likely: self.likely * factor, high: self.high * factor }
    }

    /// Whether the points are not negative, in order, and within a million.
    pub fn is_in_order(self) -> bool {
        self.high <= 1e6 && 0.0 <= self.low && self.low <= self.likely && self.likely <= self.high
    }
}
