//! The ZIP codes, sorted by number.

use std::ops::Range;

use super::coordinates::Coordinates;
use super::format::{AssetError, Damaged, Sections, Table, open};
use super::towns::Towns;

/// ZIP codes with their towns and points.
#[derive(Debug)]
pub(super) struct Zips {
    number: Vec<u32>,
    town: Vec<u32>,
    latitude: Vec<i16>,
    longitude: Vec<i16>,
}

impl Zips {
    /// Unpacks the table; `towns` are those it refers to.
    pub fn open(file: &[u8], towns: &Towns) -> Result<Self, AssetError> {
        open(file, Table::Zips, |sections| Self::read(sections, towns))
    }

    fn read(sections: &mut Sections<'_>, towns: &Towns) -> Result<Self, Damaged> {
        let mut last = 0_u32;
        let above_last = sections.pairs()?.into_iter();
        let number: Vec<u32> = above_last
            .map(|above| {
                last += u32::from(above);
                last
            })
            .collect();
        let town = sections.triples()?;
        let latitude = sections.latitudes()?;
        let longitude = sections.longitudes()?;
        let is_known = |town: &u32| usize::try_from(*town).is_ok_and(|town| town < towns.len());
        let fits = [town.len(), latitude.len(), longitude.len()] == [number.len(); 3];
        let sound = last < 100_000 && fits && town.iter().all(is_known);
        if sound { Ok(Self { number, town, latitude, longitude }) } else { Err(Damaged) }
    }

    /// The rows of the numbers in `numbers`.
    pub fn within(&self, numbers: Range<u32>) -> Range<usize> {
        let before = |bound: u32| self.number.partition_point(|number| *number < bound);
        before(numbers.start)..before(numbers.end)
    }

    /// The rows whose numbers are nearest to `number`, nearest first; the lower of two equally near.
    pub fn nearest(&self, number: u32, count: usize) -> Vec<usize> {
        let at = self.number.partition_point(|other| *other < number);
        let mut near: Vec<usize> =
            (at.saturating_sub(count)..at.saturating_add(count).min(self.number.len())).collect();
        near.sort_by_key(|&row| self.number[row].abs_diff(number));
        near.truncate(count);
        near
    }

    /// The code in a row, five digits.
    pub fn code(&self, row: usize) -> String {
        format!("{:05}", self.number[row])
    }

    /// The town of a row.
    pub fn town(&self, row: usize) -> usize {
        self.town[row] as usize
    }

    /// The point of a row.
    pub fn coordinates(&self, row: usize) -> Coordinates {
        Coordinates::from_hundredths(self.latitude[row], self.longitude[row])
    }
}
