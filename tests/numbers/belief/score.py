#!/usr/bin/env python3
"""How the program does on callbacks whose truth is known.

    python3 tests/numbers/belief/score.py BINARY              on houses.jsonl beside this script
    python3 tests/numbers/belief/score.py BINARY --dir DIR    on what houses.py --out DIR wrote
      --procs 2        so many programs at once (1 unless told)
      --save FILE      every figure of every job, a line of JSON each, for a closer look
      --against FILE   figures that another binary left with --save: paired with these

Runs `assess --json` and `year --csv` on every job, and once more with its meter readings deleted. Prints
tables in Markdown. In all of them:
  * a forecast is of a section's mean gap over all its joints; its change is against its own figure for
    the day of the visit. "No change" leaves that figure as it is.
  * intervals in parentheses are nine in ten, from a bootstrap that draws whole jobs.
  * CRPS (Gneiting, Raftery 2007): of a forecast with a band, two half-normals whose 5th and 95th
    percentile are the band's ends, cut off at zero; without one it is the absolute error.
  * calm jobs are all but those with a part that is still wet: what dries there later depends on
    whether the leak is found, which nobody can know.

Needs Python 3.11 and numpy.
"""

import argparse
import json
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from answers import both
from score_tables import against_table, cause_tables, change_tables, interval_tables, slice_table
from scores import crps

HERE = Path(__file__).resolve().parent


def forecasts(answers, truths):
    """A record for each section and day of which all forecasts exist."""
    records = []
    for index, (answer, truth) in enumerate(zip(answers, truths, strict=True)):
        calm = not any(section["still_wet"] for section in truth["sections"])
        about = {key: value for key, value in truth.items() if key not in ("sections", "repair")}
        for place, true in enumerate(truth["sections"]):
            said, bare = (answer[way]["sections"][place]["days"] for way in ("with", "without"))
            for step, day in enumerate(truth["horizons_days"]):
                if any(days[k][0] is None for days in (said, bare) for k in (0, step)):
                    continue
                gap = true["mean_gap_mm"][step]
                records.append({
                    "job": index, "section": place, "day": day, "calm": calm, "meter": answer["meter"], "truth": about, **answer["place"],
                    "gaps_read": answer["gaps_read"][place], "true_gap": gap, "change": gap - true["mean_gap_mm"][0],
                    "with": said[step][0] - said[0][0], "without": bare[step][0] - bare[0][0], "none": 0.0,
                    "level": said[step][0], "band": said[step][1:3],
                    "crps_with": crps(gap, said[step][1], said[step][0], said[step][2]),
                    "crps_without": crps(gap, bare[step][1], bare[step][0], bare[step][2]),
                    "crps_none": crps(gap, said[0][1], said[0][0], said[0][2]),
                    "moisture": (said[step][3], true["moisture_pct"][step]),
                })
    return records


def install_moistures(answers, truths):
    """For each section that has an answer: job, what was said (middle, low, high), truth, % MC."""
    return [(index, *said["install"], true["install_pct"])
            for index, (answer, truth) in enumerate(zip(answers, truths, strict=True))
            for said, true in zip(answer["with"]["sections"], truth["sections"], strict=True)
            if None not in said["install"]]


def load(folder):
    """Pairs of job and truth."""
    if folder is None:
        lines = [json.loads(line) for line in (HERE / "houses.jsonl").read_text(encoding="utf8").splitlines()]
        return [(line["job"], line["truth"]) for line in lines]
    truths = [json.loads(line) for line in (folder / "truths.jsonl").read_text(encoding="utf8").splitlines()]
    return [(json.loads((folder / truth["file"]).read_text(encoding="utf8")), truth) for truth in truths]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("binary", type=Path)
    parser.add_argument("--dir", type=Path)
    parser.add_argument("--procs", type=int, default=1)
    parser.add_argument("--save", type=Path)
    parser.add_argument("--against", type=Path)
    arguments = parser.parse_args()
    pairs = load(arguments.dir)
    with ThreadPoolExecutor(arguments.procs) as pool:
        answers = list(pool.map(lambda pair: both(arguments.binary.resolve(), *pair), pairs))
    for answer, (job, truth) in zip(answers, pairs, strict=True):
        answer["meter"] = len(job["survey"].get("moistures", []))
        answer["place"] = job["air"]["FromPlace"]["site"]["coordinates"] | {"species": job["surfaces"][0]["sections"][0]["board"]["species"]}
        answer["gaps_read"] = [sum(gap["surface"] == section["surface"] for gap in job["survey"]["gaps"])
                               for section in truth["sections"]]
    truths = [truth for _, truth in pairs]
    records = forecasts(answers, truths)
    if arguments.save:
        arguments.save.write_text("\n".join(json.dumps(record) for record in records) + "\n", encoding="utf8")
    print(f"{len(pairs)} jobs, {len([r for r in records if r['day'] == 0])} sections with a forecast of "
          f"{sum(len(truth['sections']) for truth in truths)}\n")
    change_tables(records)
    interval_tables(records, install_moistures(answers, truths))
    slice_table(records)
    cause_tables(answers, truths)
    if arguments.against:
        others = [json.loads(line) for line in arguments.against.read_text(encoding="utf8").splitlines()]
        against_table(records, others, arguments.against.stem)


if __name__ == "__main__":
    sys.exit(main())
