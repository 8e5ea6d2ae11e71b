"""Layout areas, counts and lengths from an independent polygon library.

Run as

    python3 tests/numbers/layout/oracle.py > tests/numbers/layout/oracle.json

with shapely 2.2.0 (GEOS 3.14.1), `pip install shapely==2.2.0`. The output holds each surface as
the job file would and what must follow from it; `tests/numbers/layout.rs` lays the same surfaces out
and compares.

Nothing here follows the Rust code. It works from the definitions:

- A section's clear region is its region (or the whole outline) inside the trim, less openings and
  dividing boards.
- A point's *along* and *across* are its products with the direction of the boards and with that
  turned by 90 degrees counter-clockwise. Course lines stand one face width apart from the clear
  region's least across; a ripped starter comes first. A rest thinner than 0.1 mm is no course.
- The boards of a course are the parts of the clear region between two lines. Where such a part is
  longer than the longest board it is butted, at whole boards from the section's least along, and
  half a board earlier in every second course.
- A board-edge joint is the part of a course line with wood on both sides: inside the clear region
  and not on its boundary. A course line's parts are lettered in the direction of the boards.
- What is left of a clear region's boundary lies against dividing boards, against other sections
  (one joint for the two of them, named by the first), or against the perimeter.
"""

import json
import math

from shapely import LineString, MultiPoint, Point, Polygon, union_all
from shapely.ops import substring

INCH = 0.0254
FACE = 5.125 * INCH
LEG = 0.125 * INCH
NEAR = 1e-8  # points closer than this are one point, metres
DUST = 1e-7  # m2; corners this small are rounding, and none of the cases has one
THINNEST = 1e-4  # of a course, metres
HAIR = 1e-6  # metres


# Geometry


def parts(shape, kind):
    """The members of `shape` that are of `kind`, however deep."""
    if hasattr(shape, "geoms"):
        return [part for member in shape.geoms for part in parts(member, kind)]
    return [shape] if isinstance(shape, kind) and not shape.is_empty else []


def axes(section):
    angle = math.radians(section["direction"])
    return (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))


def extent(shape, axis):
    """Least and greatest product of the corners of `shape` with `axis`."""
    corners = MultiPoint([xy for part in parts(shape, Polygon) for xy in part.exterior.coords])
    products = [p.x * axis[0] + p.y * axis[1] for p in corners.geoms]
    return min(products), max(products)


def place(along, across, u, v):
    return (along[0] * u + across[0] * v, along[1] * u + across[1] * v)


def rectangle(divider):
    (x1, y1), (x2, y2) = divider["from"], divider["to"]
    # A flat-capped buffer of the centre line is the board.
    return LineString([(x1, y1), (x2, y2)]).buffer(divider["width"] / 2, cap_style="flat")


def clear_region(surface, section):
    region = Polygon(surface["outline"])
    if surface["trim"] > 0:
        region = region.buffer(-surface["trim"], join_style="mitre", mitre_limit=20)
    if section["region"]:
        region = region.intersection(Polygon(section["region"]))
    holes = [Polygon(o["corners"]) for o in surface["openings"]]
    holes += [rectangle(d) for d in surface["dividers"]]
    return region.difference(union_all(holes)) if holes else region


def shared(boundary, other):
    """Length of `boundary` that runs along `other`."""
    met = boundary.intersection(other.buffer(NEAR, cap_style="flat"))
    # Where the two only cross, the buffer cuts off a crumb.
    return sum(part.length for part in parts(met, LineString) if part.length > 100 * NEAR)


def inside_spans(line, clear):
    """Stretches of `line` with `clear` on both sides, as distances along it."""
    edge = clear.boundary
    # The line can only change sides where it meets the boundary or passes one of its corners.
    met = edge.intersection(line)
    stops = [Point(xy) for shape in parts(met, (Point, LineString)) for xy in shape.coords]
    rings = [ring for part in parts(clear, Polygon) for ring in (part.exterior, *part.interiors)]
    corners = [Point(xy) for ring in rings for xy in ring.coords]
    stops += [corner for corner in corners if line.distance(corner) < NEAR]
    places = sorted([0, line.length, *(line.project(stop) for stop in stops)])
    spans = []
    for start, end in zip(places, places[1:]):
        middle = line.interpolate((start + end) / 2)
        if end - start < 2 * NEAR or not clear.contains(middle):
            continue
        if edge.distance(middle) < 10 * NEAR:  # along an edge, with wood on one side
            continue
        if spans and start - spans[-1][1] < 2 * NEAR:
            spans[-1] = (spans[-1][0], end)
        else:
            spans.append((start, end))
    return spans


# Layout of one section


def course_lines(section, clear):
    """Across positions of the lines between courses, and of the two outer sides."""
    _, across = axes(section)
    low, high = extent(clear, across)
    face = section["board"]["face_width"]
    first = section["start"] if 0 < section["start"] < face else face
    lines = [low]
    while low + first + (len(lines) - 1) * face < high - THINNEST:
        lines.append(low + first + (len(lines) - 1) * face)
    return [*lines, high]


def line_at(section, clear, v):
    along, across = axes(section)
    left, right = extent(clear, along)
    return LineString([place(along, across, left - 1, v), place(along, across, right + 1, v)])


def strip(section, clear, low, high):
    """The clear region between two course lines."""
    bottom, top = line_at(section, clear, low), line_at(section, clear, high)
    return clear.intersection(Polygon([*bottom.coords, *reversed(top.coords)]))


def butts(section, clear, course):
    """Along positions at which this course may be butted."""
    longest = section["board"].get("longest")
    if not longest:
        return []
    left, right = extent(clear, axes(section)[0])
    first = left + (longest if course % 2 == 0 else longest / 2)
    count = math.ceil((right - first) / longest - 1e-9)
    return [first + longest * n for n in range(max(count, 0))]


def lay_course(section, clear, course, low, high):
    """Number of the course's boards, their area, and lengths of its butts."""
    along, across = axes(section)
    boards, ends = 0, []
    whole = strip(section, clear, low, high)
    # What hangs together by less than a hair, by rounding, is two boards.
    for run in parts(whole.buffer(-HAIR), Polygon):
        left, right = extent(run, along)
        longest = section["board"].get("longest") or math.inf
        cuts = butts(section, clear, course) if right - left > longest else []
        stops = [left - 1, *cuts, right + 1]
        for start, end in zip(stops, stops[1:]):
            corners = [(start, low - 1), (end, low - 1), (end, high + 1), (start, high + 1)]
            piece = run.intersection(Polygon([place(along, across, *c) for c in corners]))
            boards += sum(part.area > DUST for part in parts(piece, Polygon))
        for cut in cuts:
            line = LineString([place(along, across, cut, v) for v in (low, high)])
            spans = inside_spans(line, clear)
            ends += [b - a for a, b in spans if run.contains(line.interpolate((a + b) / 2))]
    return boards, whole.area, ends


def letter(piece):
    return "" if piece == 0 else chr(ord("a") + piece)


def edge_joints(section, clear, lines):
    """Label and length of each joint between courses."""
    joints = {}
    for number, v in enumerate(lines[1:-1], start=1):
        line = line_at(section, clear, v)
        for piece, (start, end) in enumerate(inside_spans(line, clear)):
            label = f"{section['name']} {number}{letter(piece)}"
            joints[label] = substring(line, start, end).length
    return joints


def lay_section(section, clear):
    lines = course_lines(section, clear)
    courses = [
        lay_course(section, clear, course, low, high)
        for course, (low, high) in enumerate(zip(lines, lines[1:]))
    ]
    return {
        "area": clear.area,
        "courses": len(lines) - 1,
        "boards": sum(boards for boards, _, _ in courses),
        "boards_area": sum(area for _, area, _ in courses),
        "edges": edge_joints(section, clear, lines),
        "butts": sum(end for _, _, ends in courses for end in ends),
    }


def boundary_of(surface, clears, index):
    """Lengths of a section's boundary: against each divider and later section, and the rest.

    What lies against an earlier section is that section's joint.
    """
    edge = clears[index].boundary
    own = surface["sections"][index]["name"]
    against = {}
    for divider in surface["dividers"]:
        against[f"{own} {divider['name']}"] = ("Divider", shared(edge, rectangle(divider).boundary))
    seams = 0.0
    for other, clear in enumerate(clears):
        if other == index:
            continue
        seam = shared(edge, clear.boundary)
        seams += seam
        if other > index:
            name = surface["sections"][other]["name"]
            against[f"{own} to {name}"] = ("BoardEnd", seam)
    rest = edge.length - seams
    rest -= sum(length for kind, length in against.values() if kind == "Divider")
    for opening in surface["openings"]:
        ring = Polygon(opening["corners"]).boundary
        against[f"{own} {opening['name']}"] = ("Opening", shared(edge, ring))
    return against, rest


# Whole surfaces


def groove(profile):
    """How much more face than plan a metre of joint has."""
    if "VGroove" in profile:  # two slopes at 45 degrees in place of their two plan widths
        return 2 * (math.hypot(LEG, LEG) - LEG)
    return profile["Bead"] * (math.pi / 2 - 1)  # half a circle in place of its diameter


def expected(surface):
    clears = [clear_region(surface, section) for section in surface["sections"]]
    laid = [lay_section(*pair) for pair in zip(surface["sections"], clears)]
    lengths = dict.fromkeys(("BoardEdge", "BoardEnd", "Divider", "Perimeter"), 0.0)
    plan = Polygon(surface["outline"])
    for opening in surface["openings"]:
        plan = plan.difference(Polygon(opening["corners"]))
    painted = plan.area
    against = {}
    for index, section in enumerate(laid):
        edges = sum(section["edges"].values())
        painted += edges * groove(surface["sections"][index]["board"]["profile"])
        lengths["BoardEdge"] += edges
        lengths["BoardEnd"] += section.pop("butts")
        ends, rest = boundary_of(surface, clears, index)
        lengths["Perimeter"] += rest
        for label, (kind, length) in ends.items():
            if kind in lengths:
                lengths[kind] += length
            if length > 0:
                against[label] = length
    edges = {label: length for section in laid for label, length in section.pop("edges").items()}
    return {
        "plan_area": plan.area,
        "painted_area": painted,
        "outline_length": Polygon(surface["outline"]).length,
        "sections": laid,
        "lengths": lengths,
        "edges": edges,
        "against": against,
    }


# Cases


def box(width, height):
    return [(0, 0), (width, 0), (width, height), (0, height)]


def board(face=FACE, **more):
    return {"face_width": face, "profile": {"VGroove": LEG}, **more}


def section(name="A", direction=0.0, start=0.0, region=None, **more):
    return {
        "name": name,
        "region": region,
        "board": board(**more),
        "direction": direction,
        "start": start,
    }


def surface(name, outline, sections, trim=0.0, openings=(), dividers=()):
    return {
        "name": name,
        "outline": outline,
        "trim": trim,
        "openings": [{"name": n, "corners": c} for n, c in openings],
        "dividers": [{"name": n, "from": f, "to": t, "width": w} for n, f, t, w in dividers],
        "sections": sections,
    }


L_SHAPE = [(0, 0), (4.4, 0), (4.4, 1.7), (2.1, 1.7), (2.1, 3.3), (0, 3.3)]
U_SHAPE = [(0, 0), (3.8, 0), (3.8, 4.7), (2, 4.7), (2, 1.5), (1.5, 1.5), (1.5, 4.7), (0, 4.7)]
NOTCHED = [(0, 0), (3, 0), (3, 1), (1.2, 1), (1.2, 2), (0, 2)]


def window(x, y, width, height):
    return [(x, y), (x + width, y), (x + width, y + height), (x, y + height)]


def quarters_at_dividers(width, height, divider):
    x, y = width / 2, height / 2
    quarters = [
        section("A", 45.0, region=[(0, 0), (x, 0), (x, y), (0, y)]),
        section("B", 135.0, region=[(x, 0), (width, 0), (width, y), (x, y)]),
        section("C", 45.0, region=[(x, y), (width, y), (width, height), (x, height)]),
        section("D", 135.0, region=[(0, y), (x, y), (x, height), (0, height)]),
    ]
    crossing = [
        ("upright", (x, 0), (x, height), divider),
        ("level", (0, y), (width, y), divider),
    ]
    return surface("quarters at dividers", box(width, height), quarters, dividers=crossing)


def quarters_on_diagonals(width, height):
    corners, middle = box(width, height), (width / 2, height / 2)
    quarters = [
        section(name, 90.0 * (n % 2), region=[corners[n], corners[(n + 1) % 4], middle])
        for n, name in enumerate("ABCD")
    ]
    return surface("quarters on diagonals", corners, quarters)


def chevron(width, height, stripes, rise):
    each = width / stripes
    sections = [
        section(
            "ABCDEFG"[n],
            rise if n % 2 == 0 else 180 - rise,
            region=[(x, 0), (x + each, 0), (x + each, height), (x, height)],
        )
        for n, x in enumerate(each * n for n in range(stripes))
    ]
    return surface("chevron", box(width, height), sections)


def surfaces():
    raked = [(0, 0), (5.2, 0), (5.2, 2.35), (0, 3.45)]
    windows = [
        ("window 1", window(0.71, 0.9, 1.05, 1.2)),
        ("window 2", window(3.13, 0.9, 1.32, 1.1)),
    ]
    # An outline with a sharp corner that points into the room, where the mitre is long.
    wedged = [(0, 0), (4, 0), (4.5, 3), (2.4, 3), (2, 1.8), (1.6, 3), (-0.3, 2.8)]
    skylights = [
        ("skylight 1", window(6.3, 4.2, 2.4, 1.7)),
        ("skylight 2", window(19.1, 11.6, 2.4, 1.7)),
    ]
    return [
        surface("straight run", box(4.2, 3.1), [section()]),
        surface("ripped starter", box(4.2, 3.1), [section(start=0.047, direction=90.0)]),
        surface("diagonal", box(4.2, 3.1), [section(direction=45.0)]),
        surface("odd angle", box(4.2, 3.1), [section(direction=31.7, start=0.06)]),
        surface("L outline", L_SHAPE, [section(direction=20.0)]),
        surface("wall with windows", raked, [section(direction=90.0)], openings=windows),
        quarters_at_dividers(4.8, 3.9, 3.5 * INCH),
        quarters_on_diagonals(4.8, 3.6),
        chevron(4.5, 2.9, 3, 38.0),
        surface("trim", L_SHAPE, [section(direction=20.0)], trim=0.09),
        surface("trim around a wedge", wedged, [section(profile={"Bead": 0.006})], trim=0.11),
        surface("butt joints", box(5.3, 1.6), [section(longest=2.0)]),
        surface("butts by an opening", box(5.3, 1.6), [section(longest=2.0)],
                openings=[("hatch", window(1.85, 0.5, 0.9, 0.55))]),
        surface("nothing to butt", box(3.0, 1.1), [section(longest=4.0)]),
        surface("butts on a slant", box(3.4, 2.6), [section(direction=40.0, longest=1.5)]),
        surface("divider through a section", box(3.6, 2.4), [section(direction=-25.0)],
                dividers=[("bar", (0.4, 0.5), (3.1, 1.9), 0.08)]),
        # Drawn clockwise; a door down to the floor, and a light over it that overlaps it.
        surface("door and light", box(3.7, 2.6)[::-1], [section(direction=90.0)],
                openings=[("door", window(1.3, 0, 0.9, 2.05)),
                          ("light", window(1.1, 1.9, 1.3, 0.4)[::-1])]),
        # Here the inner edge lies in a course line, where only one side has wood.
        surface("notch on a course line", NOTCHED, [section(face=0.1)]),
        surface("upright notch on a course line", NOTCHED, [section(direction=90.0, face=0.1)]),
        # Here both sides of the cut reach down to a course line, and no further.
        surface("cut down to a course line", U_SHAPE, [section(face=0.1)], trim=0.05),
        # Here an opening's edges lie where courses are butted.
        surface("butts in line with an opening", box(3.2, 3.3),
                [section(direction=270.0, longest=1.0)],
                openings=[("hatch", window(0.9, 1.3, 0.7, 0.5))]),
        surface("hall with a notch", [(8 * x, 8 * y) for x, y in NOTCHED],
                [section(direction=90.0, face=0.1)]),
        surface("hall with butts", box(26.0, 17.0), [section(direction=31.7, longest=4.8)],
                trim=0.12),
        surface("hall", box(26.0, 17.0), [section(direction=31.7)], trim=0.12, openings=skylights),
    ]


# Writing


def length_text(metres):
    """A length as job files hold it."""
    text = repr(round(float(metres), 9))
    assert "e" not in text, text
    return f"{text} m"


def point_text(point):
    return [length_text(part) for part in point]


def in_file_form(surface):
    """The surface as a job file holds it: lengths with their unit."""
    return {
        "name": surface["name"],
        "outline": [point_text(p) for p in surface["outline"]],
        "trim": length_text(surface["trim"]),
        "openings": [
            {"name": o["name"], "corners": [point_text(p) for p in o["corners"]]}
            for o in surface["openings"]
        ],
        "dividers": [
            {
                "name": d["name"],
                "from": point_text(d["from"]),
                "to": point_text(d["to"]),
                "width": length_text(d["width"]),
            }
            for d in surface["dividers"]
        ],
        "sections": [section_in_file_form(s) for s in surface["sections"]],
    }


def section_in_file_form(section):
    board = {"face_width": length_text(section["board"]["face_width"])}
    board["profile"] = {k: length_text(v) for k, v in section["board"]["profile"].items()}
    if "longest" in section["board"]:
        board["longest"] = length_text(section["board"]["longest"])
    region = section["region"] and [point_text(p) for p in section["region"]]
    return {
        "name": section["name"],
        "region": region,
        "board": board,
        "direction": section["direction"],
        "start": length_text(section["start"]),
    }


def rounded(value):
    if isinstance(value, dict):
        return {key: rounded(part) for key, part in value.items()}
    if isinstance(value, list):
        return [rounded(part) for part in value]
    return round(value, 9) if isinstance(value, float) else value


def main():
    cases = [{"surface": in_file_form(s), "expected": rounded(expected(s))} for s in surfaces()]
    print("[\n" + ",\n".join(json.dumps(case) for case in cases) + "\n]")


if __name__ == "__main__":
    main()
