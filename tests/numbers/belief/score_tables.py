"""The tables of score.py, in Markdown."""

import numpy as np

from scores import bootstrap, less, rms, share

CAUSES = ["wet_at_install", "seasonal", "weak_sealant", "framing_moved", "wetted_and_dried", "bonded_groups"]
EDGES = [0.0, 0.05, 0.2, 0.4, 0.6, 0.8, 0.95, 1.0]
AHEAD = [60, 180, 360]
WAYS = ("with", "without", "none")
SPECIES = ["pine-eastern-white", "pine-western-white", "pine-ponderosa", "douglas-fir-coast", "cedar-western-redcedar",
           "fir-white", "spruce-sitka", "yellow-poplar"]
SLIVER = 5e-4
"""Figures are printed to 0.001 mm."""

SLICES = [
    ("all", lambda r: True), ("calm", lambda r: r["calm"]), ("with meter", lambda r: r["meter"] > 0),
    ("hygrometer", lambda r: r["truth"]["hygrometer"]), ("no hygrometer", lambda r: not r["truth"]["hygrometer"]),
    ("under 90 days old", lambda r: r["truth"]["age_days"] < 90), ("90 days to 2 years", lambda r: 90 <= r["truth"]["age_days"] < 730),
    ("over 2 years old", lambda r: r["truth"]["age_days"] >= 730), ("wide joints picked", lambda r: r["truth"]["picked_wide"]),
    ("joints picked at random", lambda r: not r["truth"]["picked_wide"]), ("bonded", lambda r: "bonded_groups" in r["truth"]["causes"]),
    ("not bonded", lambda r: "bonded_groups" not in r["truth"]["causes"]), ("wet at install", lambda r: "wet_at_install" in r["truth"]["causes"]),
    ("seasonal", lambda r: "seasonal" in r["truth"]["causes"]), ("section without a gap read", lambda r: r["gaps_read"] == 0),
    ("one or two gaps read", lambda r: 0 < r["gaps_read"] < 3), ("six gaps or more", lambda r: r["gaps_read"] >= 6),
    ("wetted", lambda r: "wetted_and_dried" in r["truth"]["causes"]), ("line moved", lambda r: "framing_moved" in r["truth"]["causes"]),
    ("weak sealant", lambda r: "weak_sealant" in r["truth"]["causes"]),
    ("no meter", lambda r: r["meter"] == 0), ("one or two meter readings", lambda r: 0 < r["meter"] < 3),
    ("three or more", lambda r: r["meter"] >= 3),
    ("Europe", lambda r: r["longitude"] > -30), ("America, north of 44", lambda r: r["longitude"] < -30 and r["latitude"] >= 44),
    ("America, 36 to 44", lambda r: r["longitude"] < -30 and 36 <= r["latitude"] < 44),
    ("America, south of 36", lambda r: r["longitude"] < -30 and r["latitude"] < 36),
    ("room keeps wood under 7.5 %", lambda r: r["truth"]["settles_at_pct"] < 7.5),
    ("over 9.5 %", lambda r: r["truth"]["settles_at_pct"] > 9.5),
    ("cooled", lambda r: r["truth"]["cooled"]), ("not cooled", lambda r: not r["truth"]["cooled"]),
    *((name, lambda r, name=name: r["species"] == name) for name in SPECIES),
    ("back open", lambda r: r["truth"]["back"] == "open"), ("back tight", lambda r: r["truth"]["back"] == "tight"),
]


def table(head, rows):
    print("| " + " | ".join(head) + " |\n|" + "---|" * len(head))
    for row in rows:
        print("| " + " | ".join(str(cell) for cell in row) + " |")
    print()


def change_tables(records):
    """Error of the change, and CRPS of the gap, for all jobs and for two parts of them."""
    for title, keep in (("all jobs", lambda r: True), ("jobs with meter readings", lambda r: r["meter"] > 0),
                        ("calm jobs", lambda r: r["calm"])):
        kept = [r for r in records if keep(r)]
        print(f"### Change of the mean gap, mm: {title} ({len({r['job'] for r in kept})} jobs, "
              f"{len([r for r in kept if r['day'] == 0])} sections)\n")
        rows, crps_rows = [], []
        for day in [*AHEAD, "pooled"]:
            part = [r for r in kept if r["day"] == day or (day == "pooled" and r["day"] > 0)]
            jobs = [r["job"] for r in part]
            name = day if day == "pooled" else f"{day} days"
            off = {way: np.array([r[way] - r["change"] for r in part]) for way in WAYS}
            rows.append([name, *(f"{rms(off[way]):.3f}" for way in WAYS), *(less(jobs, off["with"], off[way], rms) for way in WAYS[1:]),
                         *(f"{np.median(np.abs(off[way])):.3f}" for way in WAYS)])
            score = {way: np.array([r[f"crps_{way}"] for r in part]) for way in WAYS}
            crps_rows.append([name, *(f"{np.mean(score[way]):.3f}" for way in WAYS),
                              *(less(jobs, score["with"], score[way], np.mean) for way in WAYS[1:])])
        table(["ahead", "rms", "rms, no meter", "rms, no change", "less that without meter", "less no change",
               "median error", "no meter", "no change"], rows)
        print("CRPS of the mean gap, mm:\n")
        table(["ahead", "CRPS", "no meter", "today's, kept", "less that without meter", "less today's"], crps_rows)


def interval_tables(records, installs):
    """How often intervals hold the truth, how wide they are, and how far off the middle is."""
    print("### Nine-in-ten intervals\n")
    rows = []
    for day in [0, *AHEAD]:
        part = [(r["job"], *r["band"], r["true_gap"]) for r in records if r["day"] == day and None not in r["band"]]
        rows.append(_interval_row(f"gap after {day} days", part, "mm"))
    rows.append(_interval_row("moisture at install", [(job, low, high, true) for job, _, low, high, true in installs], "% MC"))
    table(["interval of", "sections", "holds the truth", "truth below / above it", "mean width", "median width"], rows)
    off = [middle - true for _, middle, _, _, true in installs]
    print(f"Moisture at install: rms error {rms(off):.2f} % MC, mean {np.mean(off):+.2f}.\n" if off else "")
    print("### Levels: moisture (% MC) and mean gap (mm)\n")
    rows = []
    for day in [0, *AHEAD]:
        for name, keep in (("all", lambda r: True), ("calm", lambda r: r["calm"])):
            part = [r for r in records if r["day"] == day and keep(r)]
            wet = [r["moisture"][0] - r["moisture"][1] for r in part if r["moisture"][0] is not None]
            gap = [r["level"] - r["true_gap"] for r in part]
            rows.append([f"{day} days", name, f"{rms(wet):.2f}", f"{np.mean(wet):+.2f}", f"{rms(gap):.3f}", f"{np.mean(gap):+.3f}"])
    table(["after", "jobs", "moisture rms", "mean error", "gap rms", "mean error"], rows)


def _interval_row(name, part, unit):
    """`part`: job, low, high, truth."""
    if not part:
        return [name, 0, "none given", "", "", ""]
    jobs = [p[0] for p in part]
    low, high, true = (np.array([p[k] for p in part]) for k in (1, 2, 3))
    under, over = true < low - SLIVER, true > high + SLIVER
    return [name, len(part), share(jobs, ~(under | over)), f"{100 * under.mean():.1f} % / {100 * over.mean():.1f} %",
            f"{np.mean(high - low):.2f} {unit}", f"{np.median(high - low):.2f} {unit}"]


def slice_table(records):
    """Kinds of jobs and sections, all three horizons together and each alone: where a fault sits."""
    _slices(records, "60 to 360 days", lambda day: day > 0)
    for ahead in AHEAD:
        _slices(records, f"{ahead} days", lambda day, ahead=ahead: day == ahead)


def _slices(records, title, when):
    print(f"### By kind of job or section, {title}\n")
    rows = []
    for name, keep in SLICES:
        part = [r for r in records if when(r["day"]) and keep(r)]
        if not part:
            continue
        jobs = [r["job"] for r in part]
        off = {way: np.array([r[way] - r["change"] for r in part]) for way in WAYS}
        banded = [(r["job"], *r["band"], r["true_gap"]) for r in part if None not in r["band"]]
        rows.append([name, len(set(jobs)), *(f"{rms(off[way]):.3f}" for way in WAYS),
                     *(f"{np.mean([r[f'crps_{way}'] for r in part]):.3f}" for way in WAYS), *_interval_row("", banded, "mm")[2:5]])
    table(["", "jobs", "rms of the change", "no meter", "no change", "CRPS of the gap", "no meter", "today's", "band holds",
           "truth below / above", "mean width"], rows)


def cause_tables(answers, truths):
    """Reliability of each cause's odds, and their scores."""
    print("### Causes\n")
    scores, together = [], []
    for cause in CAUSES:
        triples = [(answer["with"]["odds"][cause], cause in truth["causes"], index)
                   for index, (answer, truth) in enumerate(zip(answers, truths, strict=True)) if cause in answer["with"]["odds"]]
        if not triples:
            continue
        together += triples
        scores.append([cause, *_score_cells(triples)])
        print(f"{cause}:\n")
        _reliability(triples)
    print("all causes together:\n")
    _reliability(together)
    scores.append(["all", *_score_cells(together)])
    table(["cause", "jobs", "mean given", "true", "Brier", "Brier of the rate", "skill", "log loss", "log loss of the rate"], scores)


def _score_cells(triples):
    given, true = np.array([t[0] for t in triples]), np.array([t[1] for t in triples], float)
    rate = np.full_like(given, true.mean())
    brier, base = np.mean((given - true) ** 2), np.mean((rate - true) ** 2)

    def log_loss(p):
        # Odds are printed to 0.1 %.
        p = np.clip(p, 0.0005, 0.9995)
        return float(-np.mean(true * np.log(p) + (1 - true) * np.log(1 - p)))

    return [len(triples), f"{100 * given.mean():.1f} %", f"{100 * true.mean():.1f} %", f"{brier:.4f}", f"{base:.4f}",
            f"{1 - brier / base:+.2f}" if base > 0 else "", f"{log_loss(given):.4f}", f"{log_loss(rate):.4f}"]


def _reliability(triples):
    rows = []
    for low, high in zip(EDGES[:-1], EDGES[1:], strict=True):
        inside = [t for t in triples if low <= t[0] < high or (high == 1.0 and t[0] >= 1.0)]
        if inside:
            rows.append([f"{100 * low:.0f} to {100 * high:.0f} %", len(inside), f"{100 * np.mean([t[0] for t in inside]):.1f} %",
                         share([t[2] for t in inside], [t[1] for t in inside])])
    table(["given", "times", "mean given", "true"], rows)


def against_table(records, others, name):
    """This program against another on the same sections."""
    print(f"### Against {name}\n")
    other = {(r["job"], r["section"], r["day"]): r for r in others}
    rows = []
    for day in [*AHEAD, "pooled"]:
        pairs = [(r, other[r["job"], r["section"], r["day"]]) for r in records
                 if (r["day"] == day or (day == "pooled" and r["day"] > 0)) and (r["job"], r["section"], r["day"]) in other]
        jobs = [r["job"] for r, _ in pairs]
        mine, theirs = (np.array([r["with"] - r["change"] for r in side]) for side in zip(*pairs, strict=True))
        my_crps, their_crps = (np.array([r["crps_with"] for r in side]) for side in zip(*pairs, strict=True))
        rows.append([day, len(pairs), f"{rms(mine):.3f}", f"{rms(theirs):.3f}", less(jobs, mine, theirs, rms),
                     f"{my_crps.mean():.3f}", f"{their_crps.mean():.3f}", less(jobs, my_crps, their_crps, np.mean)])
    table(["days ahead", "sections", "rms of the change", "the other's", "less the other's",
           "CRPS of the gap", "the other's", "less the other's"], rows)
