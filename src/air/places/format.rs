//! The layout of the tables in `assets/climate`, and what reads it.
//!
//! `tests/numbers/climate/make.py` writes these files from the published tables and turns them back into text.
//!
//! A file is: four bytes that name the table (`GWS2` stations, `GWT2` towns, `GWZ2` ZIP codes); the CRC-32
//! of all that follows; then its sections. A section is its size in the file, its size when unpacked,
//! and its bytes; these are a zlib stream unless the two sizes are the same. All numbers have their low
//! byte first; those of the file itself have four bytes. A section is one of:
//!
//! - *text* and *sizes*: lines of UTF-8 without anything between them; the size of each in bytes, a byte
//!   each;
//! - *bytes*, *pairs*, *triples*: unsigned numbers of one, two, three bytes; *signed*: two bytes, in two's
//!   complement; *hundredths*: signed, hundredths of a degree;
//! - *months*: varints, that is seven bits a byte, the lowest first, the top bit set on all but the last
//!   byte; the signed ones store 0, −1, 1, −2 … as 0, 1, 2, 3 …
//!
//! | table | sections |
//! |---|---|
//! | stations | name (text, sizes); regions (text, sizes: country code, tab, region); region (pairs); number (triples); 1 if CLIMAT, 0 if adjusted TMY3 (bytes); years (bytes); latitude, longitude (hundredths); elevation in m (signed); the months |
//! | towns | name (text, sizes), sorted by [`fold`](crate::named::fold()); countries (text, sizes: code, tab, name, and more tabs and names it goes by); regions (text, sizes: country code, tab, name, tab, code or nothing); region (pairs); latitude, longitude (hundredths); population (pairs: what is below a thousand, times ten to the power of the thousands; 0 if unknown) |
//! | ZIP codes | what the number is above the last one (pairs); town (triples); latitude, longitude (hundredths) |
//!
//! The months are five blocks: mean temperature (0.1 °C), vapor pressure (Pa), daily range (0.1 °C), and
//! the standard deviations from year to year of temperature (0.1 °C) and vapor pressure (Pa). In a block
//! each station has twelve signed numbers, each less the one before it, the first as it is. The last
//! three blocks may have gaps: there an unsigned number comes first whose bit 0 says that January is
//! there, bit 11 December, and only those months follow.

use std::borrow::Cow;
use std::ops::RangeInclusive;

use flate2::{Crc, Decompress, FlushDecompress, Status};

/// No section unpacks to more than this, in bytes: a damaged size must not take all memory.
const LARGEST: usize = 4_000_000;

/// A table that comes with the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Table {
    /// Weather stations.
    Stations,
    /// Towns.
    Towns,
    /// US ZIP codes.
    Zips,
}

impl Table {
    /// The first four bytes of its file.
    const fn magic(self) -> [u8; 4] {
        match self {
            Self::Stations => *b"GWS2",
            Self::Towns => *b"GWT2",
            Self::Zips => *b"GWZ2",
        }
    }
}

/// What is wrong with a table's file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// It does not start like this table.
    OtherFile,
    /// It is cut off, or its bytes are not what was written.
    Damaged,
}

/// A table that cannot be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AssetError {
    /// Which.
    pub table: Table,
    /// Why.
    pub fault: Fault,
}

/// Something is not as the layout says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Damaged;

/// Checks a table's file and reads it with `read`, which must come to its end.
pub(super) fn open<T>(
    file: &[u8],
    table: Table,
    read: impl FnOnce(&mut Sections<'_>) -> Result<T, Damaged>,
) -> Result<T, AssetError> {
    let Some(guarded) = file.strip_prefix(&table.magic()) else {
        return Err(AssetError { table, fault: Fault::OtherFile });
    };
    let parse = || {
        let (sum, body) = guarded.split_first_chunk().ok_or(Damaged)?;
        let mut crc = Crc::new();
        crc.update(body);
        if crc.sum() != u32::from_le_bytes(*sum) {
            return Err(Damaged);
        }
        let mut sections = Sections { rest: body };
        let read = read(&mut sections)?;
        if sections.rest.is_empty() { Ok(read) } else { Err(Damaged) }
    };
    parse().map_err(|Damaged| AssetError { table, fault: Fault::Damaged })
}

/// Reads the sections of a table one after the other.
pub(super) struct Sections<'a> {
    rest: &'a [u8],
}

impl<'a> Sections<'a> {
    /// The next section as it is.
    pub fn bytes(&mut self) -> Result<Cow<'a, [u8]>, Damaged> {
        let (packed, size) = (self.size()?, self.size()?);
        let (section, rest) = self.rest.split_at_checked(packed).ok_or(Damaged)?;
        self.rest = rest;
        if packed == size { Ok(Cow::Borrowed(section)) } else { unpack(section, size).map(Cow::Owned) }
    }

    fn size(&mut self) -> Result<usize, Damaged> {
        let (size, rest) = self.rest.split_first_chunk().ok_or(Damaged)?;
        self.rest = rest;
        let size = usize::try_from(u32::from_le_bytes(*size)).map_err(|_too_large| Damaged)?;
        if size > LARGEST { Err(Damaged) } else { Ok(size) }
    }

    /// The next section's numbers, each of `N` bytes.
    fn numbers<const N: usize, T>(&mut self, number: impl Fn([u8; N]) -> T) -> Result<Vec<T>, Damaged> {
        let bytes = self.bytes()?;
        let (chunks, rest) = bytes.as_chunks();
        if rest.is_empty() { Ok(chunks.iter().map(|chunk| number(*chunk)).collect()) } else { Err(Damaged) }
    }

    /// Numbers of two bytes.
    pub fn pairs(&mut self) -> Result<Vec<u16>, Damaged> {
        self.numbers(u16::from_le_bytes)
    }

    /// Numbers of two bytes, of which each finds one of `count` things.
    pub fn places_of(&mut self, count: usize) -> Result<Vec<u16>, Damaged> {
        let places = self.pairs()?;
        let last = places.iter().max().copied().unwrap_or(0);
        if usize::from(last) < count { Ok(places) } else { Err(Damaged) }
    }

    /// Numbers of three bytes.
    pub fn triples(&mut self) -> Result<Vec<u32>, Damaged> {
        self.numbers(|[low, middle, high]| u32::from_le_bytes([low, middle, high, 0]))
    }

    /// Signed numbers of two bytes, within `range`.
    pub fn signed(&mut self, range: RangeInclusive<i16>) -> Result<Vec<i16>, Damaged> {
        let values = self.numbers(i16::from_le_bytes)?;
        // Without a branch: there are hundreds of thousands.
        let outside = values.iter().fold(false, |outside, value| outside | !range.contains(value));
        if outside { Err(Damaged) } else { Ok(values) }
    }

    /// Latitudes.
    pub fn latitudes(&mut self) -> Result<Vec<i16>, Damaged> {
        self.signed(-9_000..=9_000)
    }

    /// Longitudes.
    pub fn longitudes(&mut self) -> Result<Vec<i16>, Damaged> {
        self.signed(-18_000..=18_000)
    }

    /// Lines of text.
    pub fn lines(&mut self) -> Result<Lines, Damaged> {
        let text = String::from_utf8(self.bytes()?.into_owned()).map_err(|_no_text| Damaged)?;
        let mut end = 0_usize;
        let ends: Vec<usize> = self
            .bytes()?
            .iter()
            .map(|size| {
                end += usize::from(*size);
                end
            })
            .collect();
        if end == text.len() { Ok(Lines { text, ends }) } else { Err(Damaged) }
    }
}

fn unpack(packed: &[u8], size: usize) -> Result<Vec<u8>, Damaged> {
    let mut section = Vec::with_capacity(size);
    let mut zlib = Decompress::new(true);
    let status = zlib.decompress_vec(packed, &mut section, FlushDecompress::Finish);
    let whole = matches!(status, Ok(Status::StreamEnd)) && section.len() == size;
    if whole { Ok(section) } else { Err(Damaged) }
}

/// Reads numbers of differing length one after the other.
pub(super) struct Varints<'a> {
    rest: &'a [u8],
}

impl<'a> Varints<'a> {
    /// From the start of a section.
    pub const fn new(section: &'a [u8]) -> Self {
        Self { rest: section }
    }

    /// The next unsigned number, of at most 32 bits.
    pub fn unsigned(&mut self) -> Result<u32, Damaged> {
        let mut value = 0_u32;
        for shift in (0..32).step_by(7) {
            let (&byte, rest) = self.rest.split_first().ok_or(Damaged)?;
            self.rest = rest;
            let bits = u32::from(byte & 0x7f);
            value |= bits.checked_mul(1 << shift).ok_or(Damaged)?;
            if byte < 0x80 {
                return Ok(value);
            }
        }
        Err(Damaged)
    }

    /// The next signed number.
    pub fn signed(&mut self) -> Result<i32, Damaged> {
        let stored = self.unsigned()?;
        let half = i32::try_from(stored / 2).map_err(|_too_large| Damaged)?;
        Ok(if stored % 2 == 0 { half } else { -half - 1 })
    }

    /// That nothing is left.
    pub const fn end(&self) -> Result<(), Damaged> {
        if self.rest.is_empty() { Ok(()) } else { Err(Damaged) }
    }
}

/// Lines of text, found by their number.
#[derive(Debug)]
pub(super) struct Lines {
    text: String,
    /// Where each ends.
    ends: Vec<usize>,
}

impl Lines {
    /// How many.
    pub const fn len(&self) -> usize {
        self.ends.len()
    }

    /// The line of this number, from 0; nothing if there are not so many.
    pub fn get(&self, number: usize) -> &str {
        let start = if number == 0 { Some(&0) } else { self.ends.get(number - 1) };
        let line = start.zip(self.ends.get(number)).and_then(|(start, end)| self.text.get(*start..*end));
        line.unwrap_or_default()
    }

    /// All of them in turn.
    pub fn iter(&self) -> impl Iterator<Item = &str> {
        (0..self.len()).map(|number| self.get(number))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_as_the_layout_says() {
        let mut numbers = Varints::new(&[0x00, 0x7f, 0x80, 0x01, 0xff, 0xff, 0xff, 0xff, 0x0f]);
        assert_eq!([0; 4].map(|_| numbers.unsigned()), [Ok(0), Ok(127), Ok(128), Ok(u32::MAX)]);
        assert_eq!((numbers.unsigned(), numbers.end()), (Err(Damaged), Ok(())));
        let mut numbers = Varints::new(&[0, 1, 2, 3, 0xff, 0xff, 0xff, 0xff, 0x0f]);
        assert_eq!([0; 4].map(|_| numbers.signed()), [Ok(0), Ok(-1), Ok(1), Ok(-2)]);
        assert_eq!(numbers.signed(), Ok(i32::MIN));
        assert_eq!(section(&[1, 2, 3, 4, 5, 6]).triples(), Ok(vec![0x03_02_01, 0x06_05_04]));
        assert_eq!(section(&[0xff, 0xff]).signed(-1..=1), Ok(vec![-1]));
    }

    #[test]
    fn what_the_layout_does_not_allow_is_damage() {
        assert_eq!(Varints::new(&[0xff, 0xff, 0xff, 0xff, 0x1f]).unsigned(), Err(Damaged));
        assert_eq!(Varints::new(&[0x80; 9]).unsigned(), Err(Damaged));
        assert_eq!(Varints::new(&[0x80]).unsigned(), Err(Damaged));
        assert_eq!(section(&[1, 2, 3]).pairs(), Err(Damaged));
        assert_eq!(section(&[1, 0]).places_of(1), Err(Damaged));
        assert_eq!(section(&[2, 0]).signed(-1..=1), Err(Damaged));
    }

    #[test]
    fn lines_are_found_by_number() {
        let lines = lines(b"abc", &[1, 0, 2]).unwrap();
        assert_eq!(lines.iter().collect::<Vec<_>>(), ["a", "", "bc"]);
        assert_eq!(lines.get(3), "");
        assert_eq!(self::lines(b"ab", &[1]).unwrap_err(), Damaged);
        assert_eq!(self::lines(b"\xff", &[1]).unwrap_err(), Damaged);
        // Sizes that cut a letter in two give no line, and no panic.
        assert_eq!(self::lines("é".as_bytes(), &[1, 1]).unwrap().get(0), "");
    }

    fn lines(text: &[u8], sizes: &[u8]) -> Result<Lines, Damaged> {
        Sections { rest: &[plain(text), plain(sizes)].concat() }.lines()
    }

    fn section(bytes: &[u8]) -> Sections<'static> {
        Sections { rest: plain(bytes).leak() }
    }

    /// A section that is not packed.
    fn plain(bytes: &[u8]) -> Vec<u8> {
        let size = u32::try_from(bytes.len()).unwrap().to_le_bytes();
        [&size, &size, bytes].concat()
    }
}
