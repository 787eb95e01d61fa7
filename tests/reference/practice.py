"""Practice readings by another route: writes practice.json beside it.

25 mL of 0.1 mol/L HCl with 0.1 mol/L NaOH, ideal, pKw 14. There h - Kw/h = c(HCl) - c(NaOH) has a closed form, so no
solver takes part. The errors come from random-numbers.py; each fault is written down here from its definition.
"""

import importlib
import itertools
import json
import math
import pathlib

normals = importlib.import_module("random-numbers").normals
VOLUMES = [0, 5, 10, 15, 20, 23, 24, 24.5, 24.9, 25.1, 25.5, 26, 27, 30, 35]


def ph_at(volume, sample=1, strength=1):
    excess = (2.5 * sample - 0.1 * strength * volume) / (25 + volume)
    larger = (abs(excess) + math.sqrt(excess * excess + 4e-14)) / 2
    return -math.log10(larger) if excess >= 0 else 14 + math.log10(larger)


def run(seed, noise, fault):
    size = {key: value for key, value in fault.items() if key != "kind"}
    kind = fault.get("kind")
    poured = VOLUMES
    if kind == "overshoot":
        beyond = 25 + size["mL"]
        poured = [v for v in VOLUMES if v < 25] + [beyond] + [v for v in VOLUMES if v > beyond]
    draw = normals(seed)
    errors = [(noise["mL"] * next(draw), noise["pH"] * next(draw)) for _ in poured]
    delivered = sorted(0 if v == 0 else abs(v + e) for v, (e, _) in zip(poured, errors))
    vessels = {"sampleAmount": {"sample": size.get("ratio")}, "titrantConcentration": {"strength": size.get("ratio")}}
    ph = [ph_at(v, **vessels.get(kind, {})) for v in delivered]
    if kind == "readTooSoon":
        lag = math.exp(-size["wait"])
        ph = list(itertools.accumulate(ph, lambda before, settled: settled + (before - settled) * lag))
    if kind == "probeSlope":
        ph = [7 + (x - 7) * size["percent"] / 100 for x in ph]
    if kind == "probeOffset":
        ph = [x + size["pH"] for x in ph]
    if kind == "probeDrift":
        ph = [x + size["pH"] * k / (len(ph) - 1) for k, x in enumerate(ph)]
    read = poured
    if kind == "airBubble":
        read = [v + size["mL"] if v > size["after"] else v for v in read]
    if kind == "initialReading":
        read = [v + size["mL"] for v in read]
    if kind == "incrementsAsTotals":
        read = [b - a for a, b in zip([0, *read], read)]
    shown = [math.floor(1000 * (x + e) + 0.5) / 1000 for x, (_, e) in zip(ph, errors)]
    return {"mL": [round(v, 6) for v in read], "pH": shown}


faults = [
    {},
    {"kind": "sampleAmount", "ratio": 0.97},
    {"kind": "titrantConcentration", "ratio": 1.05},
    {"kind": "overshoot", "mL": 0.8},
    {"kind": "readTooSoon", "wait": 0.7},
    {"kind": "probeSlope", "percent": 90},
    {"kind": "probeOffset", "pH": -0.25},
    {"kind": "probeDrift", "pH": 0.2},
    {"kind": "airBubble", "mL": 0.4, "after": 10},
    {"kind": "initialReading", "mL": 1.35},
    {"kind": "incrementsAsTotals"},
]
noises = [{"pH": 0, "mL": 0}, {"pH": 0.02, "mL": 0.02}, {"pH": 0.05, "mL": 0.3}]
rows = [
    {"seed": seed, "noise": noise, "faults": [fault] if fault else [], **run(seed, noise, fault)}
    for fault in faults
    for seed, noise in zip((1, 2, 3), noises)
]
data = {"volumes": VOLUMES, "rows": rows}
pathlib.Path(__file__).with_suffix(".json").write_text(json.dumps(data) + "\n")
