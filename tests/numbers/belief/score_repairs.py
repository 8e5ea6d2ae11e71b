#!/usr/bin/env python3
"""How the program does on what came of repairs: the chance of a callback it gives against the callbacks there were.

    python3 tests/numbers/belief/score_repairs.py BINARY              on houses.jsonl and repairs.jsonl beside this script
    python3 tests/numbers/belief/score_repairs.py BINARY --dir DIR    on what houses.py --out DIR wrote
      --procs 2        so many programs at once (1 unless told)
      --years 1 2      lengths of the warranty (1 and 2 unless told)
      --save FILE      every chance and every outcome, a line of JSON each

Puts the plan of each house into its job, runs `assess --json` and prints tables in Markdown. Intervals in parentheses
are nine in ten, from a bootstrap that draws whole jobs. Lines, strips and `nothing` count from a week after the visit, all else from the day of sealing.

Needs Python 3.11 and numpy.
"""

import argparse
import json
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import numpy as np

from answers import run
from scores import bootstrap, share, table

HERE = Path(__file__).resolve().parent
WEEKS_A_YEAR = 365 / 7
EDGES = [0.0, 0.1, 0.3, 0.5, 0.7, 0.9, 1.0]
BEADS = ("reseal", "reseal_on_tongue", "reveal")
KINDS = ("with paint", "without paint")


def load(folder):
    """Triples of job, truth and repair."""
    def lines(path):
        return [json.loads(line) for line in path.read_text(encoding="utf8").splitlines()]

    if folder is None:
        houses = lines(HERE / "houses.jsonl")
        return [(house["job"], house["truth"], repair) for house, repair in zip(houses, lines(HERE / "repairs.jsonl"), strict=True)]
    return [(json.loads((folder / truth["file"]).read_text(encoding="utf8")), truth, truth["repair"])
            for truth in lines(folder / "truths.jsonl")]


def chances(binary, job, plan, years):
    """By option the chances of a callback with and without the paint's part, for a warranty of so many years."""
    planned = job | {"plan": plan | {"warranty_years": years}}
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "job.json"
        path.write_text(json.dumps(planned), encoding="utf8")
        assessed = json.loads(run(binary, ["assess", path, "--json"]))
    return {option["method"]: (option["callback_pct"] / 100.0, option["callback_without_paint_pct"] / 100.0)
            for option in assessed["options"] if option.get("callback_pct") is not None}


def records(binary, index, triple, years):
    """A record for each option, kind of chance and warranty."""
    job, truth, repair = triple
    found = []
    about = {key: value for key, value in truth.items() if key not in ("sections", "repair")}
    about |= {"species": job["surfaces"][0]["sections"][0]["board"]["species"], "readings": len(job["survey"].get("moistures", [])),
              "gaps": len(job["survey"]["gaps"]), "sealant": repair["plan"]["sealant"]}
    about |= {key: value for key, value in repair["truth"].items() if key != "weeks"}
    for term in years:
        given = chances(binary, job, repair["plan"], term)
        for option, weeks in repair["truth"]["weeks"].items():
            if option not in given:
                continue
            for kind, chance, week in zip(KINDS, given[option], weeks, strict=True):
                called = week is not None and week <= WEEKS_A_YEAR * term
                found.append({"job": index, "years": term, "option": option, "kind": kind, "given": chance, "true": called,
                              "about": about})
    return found


def scores(all_records):
    rows = []
    for term in sorted({r["years"] for r in all_records}):
        for option in dict.fromkeys(r["option"] for r in all_records):
            for kind in KINDS if option in BEADS else KINDS[:1]:
                own = [r for r in all_records if (r["years"], r["option"], r["kind"]) == (term, option, kind)]
                rows.append([term, option, kind if option in BEADS else "", *score_cells(own)])
    table(["years", "option", "", "jobs", "mean given", "true", "Brier", "of the rate", "less the rate's"], rows)


def score_cells(own):
    given, true = (np.array([r[key] for r in own], float) for key in ("given", "true"))
    jobs = [r["job"] for r in own]

    def gain(at):
        return np.mean((given[at] - true[at]) ** 2) - np.mean((true[at].mean() - true[at]) ** 2)

    low, high = bootstrap(jobs, gain)
    rate = true.mean()
    return [len(own), f"{100 * given.mean():.1f} %", share(jobs, true), f"{np.mean((given - true) ** 2):.4f}",
            f"{rate * (1 - rate):.4f}", f"{gain(np.arange(len(own))):+.4f} ({low:+.4f} to {high:+.4f})"]


def reliability(own):
    rows = []
    for low, high in zip(EDGES[:-1], EDGES[1:], strict=True):
        inside = [r for r in own if low <= r["given"] < high or (high == 1.0 and r["given"] >= 1.0)]
        if inside:
            rows.append([f"{100 * low:.0f} to {100 * high:.0f} %", len(inside), f"{100 * np.mean([r['given'] for r in inside]):.1f} %",
                         share([r["job"] for r in inside], [r["true"] for r in inside])])
    table(["given", "times", "mean given", "true"], rows)


SLICES = [
    *((name, lambda a, name=name: a["sealant"] == name) for name in
      ("latex-no-class", "acrylic-latex-12", "siliconized-acrylic-25", "elastomeric-acrylic-35", "hybrid-50")),
    ("under 90 days old", lambda a: a["age_days"] < 90), ("90 days to 2 years", lambda a: 90 <= a["age_days"] < 730),
    ("over 2 years old", lambda a: a["age_days"] >= 730),
    ("bonded", lambda a: "bonded_groups" in a["causes"]), ("not bonded", lambda a: "bonded_groups" not in a["causes"]),
    ("wetted", lambda a: "wetted_and_dried" in a["causes"]), ("moved", lambda a: "framing_moved" in a["causes"]),
    ("wet at install", lambda a: "wet_at_install" in a["causes"]), ("seasonal", lambda a: "seasonal" in a["causes"]),
    ("cooled", lambda a: a["cooled"]), ("not cooled", lambda a: not a["cooled"]),
    ("sealed within four months", lambda a: a["sealed_days"] < 120), ("sealed later", lambda a: a["sealed_days"] >= 120),
    ("tears come through", lambda a: a["come_through"]), ("tears stay", lambda a: not a["come_through"]),
    ("no meter", lambda a: a["readings"] == 0), ("meter", lambda a: a["readings"] > 0),
    ("under six gaps", lambda a: a["gaps"] < 6), ("six gaps or more", lambda a: a["gaps"] >= 6),
    ("ten joints or fewer worked on", lambda a: a["worked"] <= 10), ("over ten", lambda a: a["worked"] > 10),
]


def slices(own):
    rows = []
    for name, keep in SLICES:
        part = [r for r in own if keep(r["about"])]
        if part:
            rows.append([name, *score_cells(part)])
    table(["", "jobs", "mean given", "true", "Brier", "of the rate", "less the rate's"], rows)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("binary", type=Path)
    parser.add_argument("--dir", type=Path)
    parser.add_argument("--procs", type=int, default=1)
    parser.add_argument("--years", type=int, nargs="+", default=[1, 2])
    parser.add_argument("--save", type=Path)
    arguments = parser.parse_args()
    triples, binary = load(arguments.dir), arguments.binary.resolve()
    with ThreadPoolExecutor(arguments.procs) as pool:
        found = pool.map(lambda at: records(binary, at, triples[at], arguments.years), range(len(triples)))
    all_records = [record for own in found for record in own]
    if arguments.save:
        arguments.save.write_text("\n".join(json.dumps(record) for record in all_records) + "\n", encoding="utf8")
    print(f"{len(triples)} jobs\n\n### Chance of a callback\n")
    scores(all_records)
    for option in BEADS:
        for kind in KINDS:
            print(f"### {option}, {kind}, all warranties\n")
            own = [r for r in all_records if (r["option"], r["kind"]) == (option, kind)]
            reliability(own)
            if option != "reveal":
                slices(own)


if __name__ == "__main__":
    sys.exit(main())
