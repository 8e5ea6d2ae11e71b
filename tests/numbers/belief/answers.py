"""What the program says of a job: run from the command line, read from its JSON and CSV."""

import csv
import datetime
import json
import subprocess
import tempfile
from pathlib import Path


def run(binary, arguments):
    """What the program prints; stops with its message if it fails. Its exit code is 1 for a job with errors,
    too, and houses.py writes none of these."""
    done = subprocess.run([binary, *arguments], capture_output=True, text=True, check=False)
    if done.returncode != 0 or not done.stdout:
        raise SystemExit(f"{' '.join(map(str, arguments))}: exit {done.returncode}\n{done.stderr[-2000:]}")
    return done.stdout


def number(cell):
    """A cell of a CSV as a float; None where it is blank or missing."""
    return float(cell) if cell not in (None, "") else None


def ask(binary, job, truth):
    """What the program says of a job: for each section its days, and the odds of the causes."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "job.json"
        path.write_text(json.dumps(job), encoding="utf8")
        assessed = json.loads(run(binary, ["assess", path, "--json"]))
        year = list(csv.DictReader(run(binary, ["year", path, "--csv"]).splitlines()))
    rows = {row["date"]: row for row in year}
    visit = datetime.date.fromisoformat(job["visited"])
    sections = []
    for true in truth["sections"]:
        key = f"{true['surface']}/{true['section']}"
        said = {"days": []}
        for day in truth["horizons_days"]:
            row = rows.get((visit + datetime.timedelta(day)).isoformat(), {})
            said["days"].append([number(row.get(f"{key} {column}")) for column in
                                 ("mean_gap_mm", "gap_low_mm", "gap_high_mm", "moisture_pct")])
        report = next((s for s in assessed["sections"] if (s["surface"], s["section"]) == (true["surface"], true["section"])), {})
        said["install"] = [report.get(f"installed_at_{part}pct") for part in ("", "low_", "high_")]
        sections.append(said)
    odds = {entry["cause"]: entry["chance_pct"] / 100.0 for entry in (assessed.get("causes") or {}).get("odds", [])}
    return {"sections": sections, "odds": odds}


def both(binary, job, truth):
    """With meter readings and without."""
    said = {"with": ask(binary, job, truth)}
    bare = json.loads(json.dumps(job))
    said["without"] = said["with"] if not bare["survey"].pop("moistures", None) else ask(binary, bare, truth)
    return said
