//! A figure of a file that may be left out, where that means something else than its start value.

use std::borrow::Cow;

use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::{Deserialize, Deserializer};

/// A figure that a file gives or does not; written like the figure itself.
#[derive(Debug, Clone, Copy)]
pub(super) struct Given<T>(Option<T>);

impl<T: Copy> Given<T> {
    /// What is not given.
    pub(super) const NOT: Self = Self(None);

    pub(super) const fn is_given(&self) -> bool {
        self.0.is_some()
    }

    /// What is given, else this.
    pub(super) fn or(self, other: T) -> T {
        self.0.unwrap_or(other)
    }
}

impl<'de, T: Deserialize<'de>> Deserialize<'de> for Given<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        T::deserialize(deserializer).map(|given| Self(Some(given)))
    }
}

impl<T: JsonSchema> JsonSchema for Given<T> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        T::schema_name()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        generator.subschema_for::<T>()
    }
}
