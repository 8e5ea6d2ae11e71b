//! The air of a house as the people in it would tell it.

use super::{Say, Words};
use crate::air::{SummerAir, WinterAir};

impl Say for WinterAir {
    fn say(&self, words: &Words) -> String {
        let message = match self {
            Self::Dry => "room-winter-dry",
            Self::Usual => "room-winter-usual",
            Self::Damp => "room-winter-damp",
        };
        words.text(message).into_owned()
    }
}

impl Say for SummerAir {
    fn say(&self, words: &Words) -> String {
        let message = match self {
            Self::Cooled => "room-summer-cooled",
            Self::Dehumidified => "room-summer-dehumidified",
            Self::NotCooled => "room-summer-not-cooled",
        };
        words.text(message).into_owned()
    }
}
