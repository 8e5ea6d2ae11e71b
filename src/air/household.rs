//! The room as the people who live in it know it, in the place of set points and moisture loads.
//!
//! Each thing they can tell stands for figures of the [`HouseModel`], which come from `household.ron`. It
//! goes both ways: a house tells what it would be called. Figures that were typed stay as they are until
//! somebody says otherwise.

use serde::Deserialize;

use super::HouseModel;
use crate::measure::{Humidity, Temperature};
use crate::wood::Kind;

/// Figures that differ by less than this are one.
const ALIKE: f64 = 1e-6;

/// A room that is kept below this in summer is cooled.
const COOLED_BELOW: Temperature = Temperature::celsius(32.0);

/// How the air feels in the heating season.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WinterAir {
    /// Dry skin, sparks from the carpet.
    Dry,
    /// Neither dry nor damp.
    Usual,
    /// Fogged windows.
    Damp,
}

impl WinterAir {
    /// All of them, driest first.
    pub const ALL: [Self; 3] = [Self::Dry, Self::Usual, Self::Damp];
}

/// What is done about the air in summer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SummerAir {
    /// The room is air-conditioned.
    Cooled,
    /// A dehumidifier runs, and nothing cools.
    Dehumidified,
    /// Nothing.
    NotCooled,
}

impl SummerAir {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Cooled, Self::Dehumidified, Self::NotCooled];
}

/// A humidifier's set point.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct HumidifierFigures {
    /// The humidity it keeps.
    pub humidified_to: Humidity,
    /// Where that is from.
    pub source: String,
    /// How far to trust it.
    pub kind: Kind,
}

/// The moisture load behind each kind of winter air, grams in a cubic meter.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct WinterFigures {
    /// Dry.
    pub dry: f64,
    /// Neither dry nor damp.
    pub usual: f64,
    /// Damp.
    pub damp: f64,
    /// Where they are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// What stands for one way to live through the summer.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct SummerFigures {
    /// Cooled to this; out of reach where nothing cools.
    pub cool_to: Temperature,
    /// Kept below this humidity.
    pub dehumidified_to: Option<Humidity>,
    /// Where they are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// The figures that stand for what people know of a room.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Household {
    /// A humidifier that runs in winter.
    pub humidifier: HumidifierFigures,
    /// Winter air.
    pub winter: WinterFigures,
    /// Air conditioning.
    pub cooled: SummerFigures,
    /// A dehumidifier alone.
    pub dehumidified: SummerFigures,
    /// Neither.
    pub not_cooled: SummerFigures,
}

impl Household {
    /// How a house's air feels in winter; `None` where its moisture load was set by hand, or its humidity
    /// goes by a class.
    pub fn winter_of(&self, house: &HouseModel) -> Option<WinterAir> {
        let alike = |air: &WinterAir| (self.load(*air) - house.moisture_load).abs() < ALIKE;
        WinterAir::ALL.into_iter().find(alike).filter(|_| house.class.is_none())
    }

    /// Gives a house this winter air.
    pub fn set_winter(&self, house: &mut HouseModel, air: WinterAir) {
        house.class = None;
        house.moisture_load = self.load(air);
    }

    /// What is done about a house's air in summer.
    pub fn summer_of(&self, house: &HouseModel) -> SummerAir {
        match (house.cool_to < COOLED_BELOW, house.dehumidified_to) {
            (true, _) => SummerAir::Cooled,
            (false, Some(_)) => SummerAir::Dehumidified,
            (false, None) => SummerAir::NotCooled,
        }
    }

    /// Has a house's air treated so in summer.
    pub fn set_summer(&self, house: &mut HouseModel, air: SummerAir) {
        let figures = match air {
            SummerAir::Cooled => &self.cooled,
            SummerAir::Dehumidified => &self.dehumidified,
            SummerAir::NotCooled => &self.not_cooled,
        };
        (house.cool_to, house.dehumidified_to) = (figures.cool_to, figures.dehumidified_to);
    }

    /// Sets up a humidifier in a house, or takes it away.
    pub fn set_humidifier(&self, house: &mut HouseModel, there: bool) {
        house.humidified_to = there.then_some(self.humidifier.humidified_to);
    }

    const fn load(&self, air: WinterAir) -> f64 {
        match air {
            WinterAir::Dry => self.winter.dry,
            WinterAir::Usual => self.winter.usual,
            WinterAir::Damp => self.winter.damp,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::IndoorAir;
    use crate::belief::usual_year;
    use crate::job::Catalog;

    fn household() -> &'static Household {
        &Catalog::built_in().household
    }

    #[test]
    fn what_is_said_is_what_the_house_tells() {
        let mut house = HouseModel::default();
        for air in WinterAir::ALL {
            household().set_winter(&mut house, air);
            assert_eq!(household().winter_of(&house), Some(air));
        }
        for air in SummerAir::ALL {
            household().set_summer(&mut house, air);
            assert_eq!(household().summer_of(&house), air);
        }
        house.moisture_load = 2.7;
        assert_eq!(household().winter_of(&house), None, "set by hand");
    }

    #[test]
    fn a_damper_room_is_damper_in_january_and_a_cooled_one_drier_in_july() {
        let humidity = |say: &dyn Fn(&mut HouseModel), day: usize| {
            let IndoorAir::FromClimate { station, mut house } = IndoorAir::default() else { unreachable!() };
            say(&mut house);
            let air = IndoorAir::FromClimate { station, house };
            let catalog = Catalog::built_in();
            let year = usual_year(&air, None, &catalog.stations, &catalog.priors).unwrap();
            year[day].humidity.to_pct()
        };
        let winter = |air| humidity(&move |house| household().set_winter(house, air), 15);
        assert!(winter(WinterAir::Dry) + 4.0 < winter(WinterAir::Usual));
        assert!(winter(WinterAir::Usual) + 4.0 < winter(WinterAir::Damp));
        let humidified = humidity(&|house| household().set_humidifier(house, true), 15);
        assert!((humidified - 35.0).abs() < 1.0, "{humidified}");
        let summer = |air| humidity(&move |house| household().set_summer(house, air), 196);
        assert!((summer(SummerAir::Cooled) - 50.0).abs() < 1.0);
        assert!(summer(SummerAir::NotCooled) > 55.0);
    }
}
