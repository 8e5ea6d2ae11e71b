"""Drawings from and for an independent DXF library.

With ezdxf 1.4.5, `pip install ezdxf==1.4.5`:

    python3 tests/numbers/outlines/outlines.py make tests/numbers/outlines/made.dxf
    python3 tests/numbers/outlines/outlines.py check tests/numbers/outlines/written.dxf

`make` draws three rooms in centimetres: one of loose lines, one with a round end, one old-style.
The areas in `tests/numbers/outlines.rs` are worked by hand; this prints what the library makes of them.
`check` reads what our writer wrote and compares each layer with what was to be written, in
millimetres. `written.dxf` comes from `cargo test --test numbers outlines -- --ignored`.
"""

import sys

import ezdxf
from ezdxf import units
from ezdxf.math import area
from ezdxf.path import make_path

# Layer: areas of its rings in m2, lengths of its lines in m.
EXPECTED = {
    "Küche": ([12.0], []),
    "Gable _1_": ([3.0, 0.25], []),
    "Joints": ([], [5.0, 1.0]),
}


def make(path):
    doc = ezdxf.new("R2010", units=units.CM)
    space = doc.modelspace()
    hall = [(0, 0), (620, 0), (620, 250), (400, 250), (400, 480), (0, 480)]
    for start, end in zip(hall, hall[1:] + hall[:1]):
        space.add_line(start, end, dxfattribs={"layer": "Hall"})
    # A wall of 300 with a half circle of radius 150 on its right.
    end = [(700, 0), (1000, 0, 0, 0, 1), (1000, 300), (700, 300)]
    space.add_lwpolyline(end, format="xyseb", close=True, dxfattribs={"layer": "Größe"})
    space.add_polyline2d([(0, 600), (200, 600), (0, 750)], close=True, dxfattribs={"layer": "Stair"})
    space.add_line((0, 900), (100, 900), dxfattribs={"layer": "Stair"})
    doc.saveas(path)
    for shape in space.query("LWPOLYLINE POLYLINE"):
        square = area(make_path(shape).flattening(0.001))
        print(f"{shape.dxf.layer}: {abs(square) / 1e4:.6f} m2")
    print(f"Hall: {abs(area(hall)) / 1e4:.6f} m2")


def check(path):
    doc = ezdxf.readfile(path)
    assert doc.units == units.MM, doc.units
    problems = doc.audit().errors
    assert not problems, [problem.message for problem in problems]
    found = {layer: ([], []) for layer in EXPECTED}
    for shape in doc.modelspace():
        rings, lines = found[shape.dxf.layer]
        if shape.dxftype() == "LWPOLYLINE":
            assert shape.closed
            rings.append(abs(area(shape.vertices())) / 1e6)
        else:
            lines.append(shape.dxf.start.distance(shape.dxf.end) / 1e3)
    for layer, expected in EXPECTED.items():
        print(layer, found[layer])
        for got, want in zip(found[layer], expected, strict=True):
            assert len(got) == len(want)
            assert all(abs(a - b) < 1e-9 for a, b in zip(got, want)), (layer, got, want)


if __name__ == "__main__":
    {"make": make, "check": check}[sys.argv[1]](sys.argv[2])
