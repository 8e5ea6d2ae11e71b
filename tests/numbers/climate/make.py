#!/usr/bin/env python3
"""Packs the climate tables into assets/climate, and unpacks them again.

    python3 tests/numbers/climate/make.py pack FOLDER     FOLDER/*.csv -> assets/climate/*.bin
    python3 tests/numbers/climate/make.py unpack FOLDER   assets/climate/*.bin -> FOLDER/*.csv

`unpack` and then `pack` give the same bytes, so a value can be corrected without the tables they
were first made from. Needs nothing but Python 3.11.

The tables (sources, method and licenses: assets/climate/README.md):
    stations_wide.csv  a line a station: monthly temperature, vapor pressure, daily range, scatter
    places.csv         US towns: name, state, country, lat, lon, population
    places_world.csv   cities abroad: name, region, country, lat, lon, population
    zips.csv           zip, place, state, lat, lon
    names.csv          beside this script: names and codes of countries, states and provinces

What is decided here and not in the tables:
  * Post offices that no town of places.csv stands for become towns without population, at the mean
    of their ZIP codes.
  * A ZIP code belongs to the nearest town of its name and state; one without a name, or whose namesake
    is over 60 km away, to the nearest town of its state (of the US where the state is blank).
  * Puerto Rico, Guam and the other territories are states of the US.
  * Of two towns of one name and state less than 20 km apart, the more populous is kept: most are one
    town listed twice.
  * Coordinates are rounded to 0.01 degree (about 1 km), populations to three digits.

The layout of the files is described in src/air/places/format.rs.
"""

import csv
import math
import struct
import sys
import unicodedata
import zlib
from collections import defaultdict
from itertools import accumulate
from pathlib import Path

HERE = Path(__file__).resolve().parent
ASSETS = HERE.parents[2] / "assets" / "climate"
MONTHS = [f"{month:02d}" for month in range(1, 13)]
TERRITORIES = {"PR", "GU", "VI", "AS", "MP"}
# column of stations_wide.csv, and whether it may be blank
BLOCKS = [("t{}_dC", False), ("e{}_Pa", False), ("r{}_dC", True), ("st{}_dC", True), ("se{}_Pa", True)]
LETTERS = {"ø": "o", "đ": "d", "ð": "d", "ł": "l", "ħ": "h", "ı": "i", "ß": "ss", "æ": "ae", "œ": "oe",
           "þ": "th", "ə": "e", "ŋ": "n"}


def fold(text):
    """The key that names are sorted and found by: src/air/places/fold.rs does the same."""
    out = []
    for char in unicodedata.normalize("NFKD", text).lower():
        char = LETTERS.get(char, char)
        if char.isascii() and char.isalnum() or len(char) == 2:
            out.append(char)
        elif unicodedata.combining(char) or char in ".'`’‘ʻʼ":
            continue
        else:
            out.append(" ")
    return " ".join("".join(out).split())


WORDS = {"saint": "st", "sainte": "ste", "fort": "ft", "mount": "mt"}
# What the post calls a town otherwise than its own people do.
POSTAL = {("new york", "NY"): "new york city"}


def same_name(name, state):
    """The key by which a post office's name and a town's are the same."""
    key = POSTAL.get((fold(name), state), fold(name))
    return " ".join(WORDS.get(word, word) for word in key.split()), state


def read(path):
    with open(path, encoding="utf8", newline="") as file:
        return list(csv.DictReader(file))


def varint(value):
    assert value >= 0
    out = bytearray()
    while value >= 0x80:
        out.append(value & 0x7F | 0x80)
        value >>= 7
    out.append(value)
    return bytes(out)


def zigzag(value):
    return varint(value * 2 if value >= 0 else -value * 2 - 1)


def text(lines):
    """The lines' text, and the size of each."""
    encoded = [line.encode() for line in lines]
    return [b"".join(encoded), bytes(map(len, encoded))]


def pairs(values, signed):
    return b"".join(struct.pack("<h" if signed else "<H", value) for value in values)


def triples(values):
    return b"".join(value.to_bytes(3, "little") for value in values)


def short(people):
    """A population to three digits: what is below a thousand, times ten to the power of the thousands."""
    power = max(0, len(str(people)) - 3)
    digits = round(people / 10**power)
    if digits == 1000:
        digits, power = 100, power + 1
    return 1000 * power + digits


def full(stored):
    return stored % 1000 * 10 ** (stored // 1000)


def write(name, magic, sections):
    """A section is packed if that saves three fifths of it: unpacking takes time, room on a disk hardly any."""
    body = b""
    for section in sections:
        packed = zlib.compress(section, 9)
        if 5 * len(packed) > 2 * len(section):
            packed = section
        body += struct.pack("<II", len(packed), len(section)) + packed
        print(f"    {len(section):,} as {len(packed):,}")
    (ASSETS / name).write_bytes(magic + struct.pack("<I", zlib.crc32(body)) + body)
    print(f"{name}: {len(body) + 8:,} bytes")


def cents(degrees):
    return round(float(degrees) * 100)


def kilometers(a, b):
    """Between two pairs of hundredths of degrees; good enough for choosing the nearest."""
    north = (a[0] - b[0]) / 100
    east = (a[1] - b[1]) / 100 * math.cos(math.radians((a[0] + b[0]) / 200))
    return 111.2 * math.hypot(north, east)


def pack_stations(folder):
    rows = read(folder / "stations_wide.csv")
    regions = sorted({(row["country"], row["region"]) for row in rows})
    number = {region: index for index, region in enumerate(regions)}
    for row in rows:
        assert (row["station_id"][0] == "W") == (row["source"] == "CLIMAT")
        digits = 5 if row["source"] == "CLIMAT" else 6
        assert len(row["station_id"]) == 1 + digits, row["station_id"]
    months = b""
    for column, optional in BLOCKS:
        for row in rows:
            values = [row[column.format(month)] for month in MONTHS]
            if optional:
                months += varint(sum(1 << month for month, value in enumerate(values) if value != ""))
            last = 0
            for value in values:
                if value != "":
                    months += zigzag(int(value) - last)
                    last = int(value)
    write("stations.bin", b"GWS2", [
        *text([row["station"] for row in rows]),
        *text(["\t".join(region) for region in regions]),
        pairs((number[row["country"], row["region"]] for row in rows), False),
        triples(int(row["station_id"][1:]) for row in rows),
        bytes(int(row["source"] == "CLIMAT") for row in rows),
        bytes(int(row["n_years"]) for row in rows),
        pairs((cents(row["lat"]) for row in rows), True),
        pairs((cents(row["lon"]) for row in rows), True),
        pairs((int(row["elev_m"]) for row in rows), True),
        months,
    ])


def without_doubles(towns):
    kept = defaultdict(list)
    for town in sorted(towns, key=lambda town: (-town[4], town[2], town[3])):
        namesakes = kept[fold(town[0]), town[1]]
        if all(kilometers(town[2:4], other[2:4]) >= 20 for other in namesakes):
            namesakes.append(town)
    return [town for namesakes in kept.values() for town in namesakes]


def gather_towns(folder):
    """Towns as [name, (country, region), lat, lon, population], and ZIP codes as
    (zip, town, lat, lon)."""
    towns = []
    for row in read(folder / "places.csv"):
        country = "US" if row["country"] in TERRITORIES else row["country"]
        towns.append([row["name"], (country, row["state"]), cents(row["lat"]), cents(row["lon"]), full(short(int(row["population"])))])
    towns = without_doubles(towns)
    by_name, by_state = defaultdict(list), defaultdict(list)
    for town in towns:
        by_name[same_name(town[0], town[1][1])].append(town)
        by_state[town[1][1]].append(town)
    towns_of_us = list(towns)
    abroad = []
    for row in read(folder / "places_world.csv"):
        region = (row["country"], row["region"])
        abroad.append([row["name"], region, cents(row["lat"]), cents(row["lon"]), full(short(int(row["population"])))])
    towns += without_doubles(abroad)

    zips, post_offices = [], defaultdict(list)
    for row in sorted(read(folder / "zips.csv"), key=lambda row: row["zip"]):
        here = (cents(row["lat"]), cents(row["lon"]))
        distance = lambda town: kilometers(here, town[2:4])
        town = None
        if row["place"]:
            town = min(by_name[same_name(row["place"], row["state"])], key=distance, default=None)
            if town and distance(town) > 60:
                town = None
            if town is None:
                post_offices[row["place"], row["state"]].append((row["zip"], here))
                continue
        near = by_state[row["state"]] if row["state"] else towns_of_us
        zips.append([row["zip"], town or min(near, key=distance), *here])
    for (name, state), codes in sorted(post_offices.items()):
        lat = round(sum(here[0] for _, here in codes) / len(codes))
        lon = round(sum(here[1] for _, here in codes) / len(codes))
        town = [name, ("US", state), lat, lon, 0]
        towns.append(town)
        zips += [[code, town, *here] for code, here in codes]
    return towns, sorted(zips, key=lambda row: row[0])


def pack_towns(folder):
    towns, zips = gather_towns(folder)
    towns.sort(key=lambda town: (fold(town[0]), town[1], -town[4], town[2], town[3]))
    for town in towns:
        assert fold(town[0]), town
    names = read(HERE / "names.csv")
    codes = {(row["country"], row["name"]): row["code"] for row in names if row["kind"] == "region"}
    states = {row["code"]: row["name"] for row in names if row["kind"] == "region" and row["country"] == "US"}
    regions = sorted({town[1] for town in towns})
    number = {region: index for index, region in enumerate(regions)}
    lines = []
    for country, region in regions:
        if country == "US":
            lines.append(f"{country}\t{states[region]}\t{region}")
        else:
            lines.append(f"{country}\t{region}\t{codes.get((country, region), '')}")
    used = {country for country, _ in regions}
    countries = defaultdict(list)
    for row in names:
        if row["kind"] in ("country", "also") and row["country"] in used:
            countries[row["country"]].append(row["name"])
    assert used == set(countries), used - set(countries)

    print(f"{len(towns):,} towns, {len(regions):,} regions, {len(zips):,} ZIP codes")
    write("towns.bin", b"GWT2", [
        *text([town[0] for town in towns]),
        *text(["\t".join([code, *known]) for code, known in sorted(countries.items())]),
        *text(lines),
        pairs((number[town[1]] for town in towns), False),
        pairs((town[2] for town in towns), True),
        pairs((town[3] for town in towns), True),
        pairs((short(town[4]) for town in towns), False),
    ])

    place = {id(town): index for index, town in enumerate(towns)}
    numbers = [int(row[0]) for row in zips]
    assert len(set(numbers)) == len(numbers)
    write("zips.bin", b"GWZ2", [
        pairs((b - a for a, b in zip([0, *numbers], numbers)), False),
        triples(place[id(row[1])] for row in zips),
        pairs((row[2] for row in zips), True),
        pairs((row[3] for row in zips), True),
    ])


class Reader:
    """The inverse of the packing, written apart from it."""

    def __init__(self, name, magic):
        raw = (ASSETS / name).read_bytes()
        assert raw[:4] == magic and struct.unpack("<I", raw[4:8])[0] == zlib.crc32(raw[8:])
        self.raw, self.at = raw, 8

    def section(self):
        packed, size = struct.unpack("<II", self.raw[self.at:self.at + 8])
        body = self.raw[self.at + 8:self.at + 8 + packed]
        self.at += 8 + packed
        body = zlib.decompress(body) if packed != size else body
        assert len(body) == size
        return body

    def text(self):
        body, sizes = self.section(), self.section()
        lines, at = [], 0
        for size in sizes:
            lines.append(body[at:at + size].decode())
            at += size
        assert at == len(body)
        return lines

    def numbers(self, form):
        return [value for (value,) in struct.iter_unpack(form, self.section())]

    def degrees(self):
        return [value / 100 for value in self.numbers("<h")]

    def triples(self):
        body = self.section()
        return [int.from_bytes(body[at:at + 3], "little") for at in range(0, len(body), 3)]


class Varints:
    def __init__(self, body):
        self.body, self.at = body, 0

    def varint(self):
        value, shift = 0, 0
        while True:
            byte = self.body[self.at]
            self.at += 1
            value |= (byte & 0x7F) << shift
            if byte < 0x80:
                return value
            shift += 7

    def zigzag(self):
        value = self.varint()
        return value // 2 if value % 2 == 0 else -(value + 1) // 2


def save(path, head, rows):
    with open(path, "w", encoding="utf8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(head)
        writer.writerows(rows)


def station_table():
    """The head and the rows of stations_wide.csv."""
    reader = Reader("stations.bin", b"GWS2")
    names, regions = reader.text(), [line.split("\t") for line in reader.text()]
    place = [regions[number] for number in reader.numbers("<H")]
    numbers, climat, years = reader.triples(), reader.section(), reader.section()
    lat, lon, elevation = reader.degrees(), reader.degrees(), reader.numbers("<h")
    rows = []
    for index, name in enumerate(names):
        ident = f"W{numbers[index]:05d}" if climat[index] else f"U{numbers[index]:06d}"
        country, region = place[index]
        rows.append([ident, name, region, country, f"{lat[index]:.2f}", f"{lon[index]:.2f}",
                     elevation[index], years[index], "CLIMAT" if climat[index] else "TMY3adj"])
    months = Varints(reader.section())
    for _, optional in BLOCKS:
        for row in rows:
            present = months.varint() if optional else 0xFFF
            value = 0
            for month in range(12):
                if present >> month & 1:
                    value += months.zigzag()
                    row.append(value)
                else:
                    row.append("")
    assert reader.at == len(reader.raw) and months.at == len(months.body)
    head = ["station_id", "station", "region", "country", "lat", "lon", "elev_m", "n_years", "source"]
    return head + [column.format(month) for column, _ in BLOCKS for month in MONTHS], rows


def unpack(folder):
    save(folder / "stations_wide.csv", *station_table())

    reader = Reader("towns.bin", b"GWT2")
    names, _, regions = reader.text(), reader.text(), [line.split("\t") for line in reader.text()]
    place = [regions[number] for number in reader.numbers("<H")]
    lat, lon = reader.degrees(), reader.degrees()
    people = [full(value) for value in reader.numbers("<H")]
    assert reader.at == len(reader.raw)
    towns = list(zip(names, place, lat, lon, people, strict=True))

    reader = Reader("zips.bin", b"GWZ2")
    numbers = list(accumulate(reader.numbers("<H")))
    town = [towns[number] for number in reader.triples()]
    zips = list(zip(numbers, town, reader.degrees(), reader.degrees(), strict=True))
    assert reader.at == len(reader.raw)

    us = [[name, code, "US", f"{y:.2f}", f"{x:.2f}", p] for name, (c, _, code), y, x, p in towns if c == "US" and p]
    abroad = [[name, region, c, f"{y:.2f}", f"{x:.2f}", p] for name, (c, region, _), y, x, p in towns if c != "US"]
    save(folder / "places.csv", ["name", "state", "country", "lat", "lon", "population"], us)
    save(folder / "places_world.csv", ["name", "region", "country", "lat", "lon", "population"], abroad)
    save(folder / "zips.csv", ["zip", "place", "state", "lat", "lon"],
         [[f"{number:05d}", t[0], t[1][2], f"{y:.2f}", f"{x:.2f}"] for number, t, y, x in zips])


if __name__ == "__main__":
    if len(sys.argv) != 3 or sys.argv[1] not in ("pack", "unpack"):
        sys.exit(__doc__)
    if sys.argv[1] == "pack":
        pack_stations(Path(sys.argv[2]))
        pack_towns(Path(sys.argv[2]))
    else:
        unpack(Path(sys.argv[2]))
