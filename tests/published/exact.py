"""Writes exact.json: the worked examples of this folder solved to 20 digits.

    python3 exact.py

Needs mpmath, and ../reference/vectors/oracle.py, which solves each equilibrium
by two routes and shares no code with the product. The inputs stand here and,
in the trade's own terms, in the tests: a slip in either shows as a difference.

Each answer is [V, pH, condition]: V in mL (0 for a single solution), condition
as in ../reference/vectors/README.md. pKw is 14.00 unless a case says otherwise.
"""

import json
import sys
from pathlib import Path

here = Path(__file__).resolve().parent
sys.path.insert(0, str(here.parent / "reference" / "vectors"))
import oracle  # noqa: E402
from oracle import MixedFamily, MixedIon, Titration, mp, mpf, read  # noqa: E402


def pk(text):
    """'Ka 1.8e-5', 'Kb 6.3e-5' (of the conjugate base) or a pKa, as text."""
    kind, _, value = text.rpartition(" ")
    number = read(value)
    if kind == "Ka":
        return -mp.log10(number)
    if kind == "Kb":
        return 14 + mp.log10(number)
    return number


# name: (charge of the most protonated form, constants)
acids = {
    "acetic": (0, ["Ka 1.8e-5"]),
    "formic": (0, ["Ka 1.8e-4"]),
    "hydrogensulfate": (-1, ["Ka 1.2e-2"]),
    "trimethylammonium": (1, ["Kb 6.3e-5"]),
    "caffeine": (1, ["Kb 2.5e-4"]),
    "anilinium": (1, ["Kb 4.3e-10"]),
    "ammonium": (1, ["Kb 1.8e-5"]),
    "hydrocyanic": (0, ["Ka 4.9e-10"]),
    "carbonic 2e": (0, ["Ka 4.3e-7", "Ka 4.7e-11"]),
    "phthalic": (0, ["Ka 1.1e-3", "Ka 3.9e-6"]),
    "carbonic school": (0, ["6.3", "10.32"]),
    "phosphoric school": (0, ["2.12", "7.2"]),
    "phosphate school": (-1, ["7.2", "12.3"]),
    "phosphoric exam": (0, ["2.15", "7.20", "12.35"]),
    "carbonic manual": (0, ["6.352", "10.329"]),
    "carbonic": (0, ["6.351", "10.329"]),
    "maleic": (0, ["Ka 1.3e-2", "Ka 5.9e-7"]),
    "phosphoric": (0, ["2.148", "7.198", "12.35"]),
}

# name: acids with mol/L, net charge of the strong ions in mol/L
solutions = {
    "1 acetic acid": ({"acetic": "0.100"}, "0"),
    "2 formic acid": ({"formic": "0.534"}, "0"),
    "3 sodium hydrogen sulfate": ({"hydrogensulfate": "0.50"}, "0.50"),
    "4 trimethylamine": ({"trimethylammonium": "0.25"}, "0"),
    "4 caffeine": ({"caffeine": "0.010"}, "0"),
    "5 anilinium chloride": ({"anilinium": "0.233"}, "-0.233"),
    "5 ammonium nitrate": ({"ammonium": "0.100"}, "-0.100"),
    "5 sodium cyanide": ({"hydrocyanic": "0.083"}, "0.083"),
    "6 carbon dioxide": ({"carbonic 2e": "0.033"}, "0"),
    "7 phthalic acid": ({"phthalic": "0.010"}, "0"),
    "8 potassium hydrogencarbonate": ({"carbonic school": "0.877"}, "0.877"),
    "8 potassium dihydrogenphosphate": ({"phosphoric school": "0.64"}, "0.64"),
    "8 dipotassium hydrogenphosphate": ({"phosphate school": "0.328"}, "0.656"),
    "9 sodium dihydrogenphosphate": ({"phosphoric exam": "0.010"}, "0.010"),
}

# name: V0, analyte (acids, charge), titrant's charge, volumes, pKw
book = ["0", "10", "20", "24", "24.9", "25", "25.1", "26", "30", "50"]
carbonate = ["0", "2.5", "5", "7.5", "10", "12.5", "15", "17.5", "20", "22"]
titrations = {
    "11 hydrochloric acid": ("25.00", {}, "-0.100", "0.100", book, "14.00"),
    "11 acetic acid": ("25.00", {"acetic": "0.100"}, "0", "0.100", book, "14.00"),
    "12 nitric acid": ("50.0", {}, "-0.100", "0.200", ["0", "15.0", "25.0", "40.0"], "14.00"),
    "13 formic acid": ("50.0", {"formic": "0.100"}, "0", "0.200", ["0", "15.0", "25.0", "30.0"], "14.00"),
    "15 sodium carbonate": ("20.00", {"carbonic manual": "0.10"}, "0.20", "-0.20", carbonate, "14.00"),
    "15 sodium carbonate, 13.995": ("25", {"carbonic": "0.100"}, "0.200", "-0.100",
                                    ["0", "12.5", "25", "37.5", "50", "60"], "13.995"),
    "16 maleic acid": ("25.00", {"maleic": "0.1000"}, "0", "0.1000",
                       ["0", "5.00", "25.00", "25.50", "50.00", "51.00"], "14.00"),
    "17 phosphoric acid": ("50", {"phosphoric": "0.100"}, "0", "0.100", ["0", "50", "75", "100", "125"], "14.00"),
}


def answers():
    for name, (own, charge) in solutions.items():
        yield name, titration(("1", own, charge, "0", ["0"], "14.00"))
    for name, case in titrations.items():
        yield name, titration(case)


def titration(case):
    V0, own, charge, titrant, volumes, pKw = case
    families = tuple(
        MixedFamily(acids[name][0], tuple(map(pk, acids[name][1])), read(C), mpf(0)) for name, C in own.items()
    )
    t = Titration(read(pKw), read(V0), families, (MixedIon(1, read(charge), read(titrant)),))
    rows = []
    for V in volumes:
        h, _ = oracle.solve(oracle.mix(t, read(V)))
        condition = oracle.condition_titration(t, read(V), h)
        rows.append([V, mp.nstr(oracle.pH_of(h), 20), mp.nstr(condition, 3)])
    return rows


text = json.dumps(dict(answers()), indent=1)
(here / "exact.json").write_text(text + "\n")
