"""Writes media.json: seven titrations under the Davies equation (0.3 I), some with constants measured in a salt medium.

A concentration constant at ionic strength Im is brought to zero ionic strength with the same equation:

    pK0 = pK' + 0.509 * (sqrt(Im)/(1 + sqrt(Im)) - 0.3 * Im) * (1 + z_base^2 - z_acid^2)

Everything else is oracle.py's: both routes, and their agreement. Run: python3 media.py (about five minutes).
"""

import json

from mpmath import mp, mpf

import oracle
from oracle import Family, Ion, System, read

PKW = "13.995"
EDTA = ("EDTA", 2, ["0.00", "1.50", "2.00", "2.69", "6.13", "10.37"], ["1.0", "0.1", "0.1", "0.1", "0.1", "0.1"])
BORIC = ("boric acid", 0, ["9.237"], ["0"])
OXALIC = ("oxalic acid", 0, ["1.27", "4.266"], ["0", "0"])
AMMONIUM = ("ammonium", 1, ["9.245"], ["0"])
CARBONIC = ("carbonic acid", 0, ["6.351", "10.329"], ["0", "0"])
PHTHALIC = ("phthalic acid", 0, ["2.950", "5.408"], ["0", "0"])
CITRIC = ("citric acid", 0, ["3.128", "4.761", "6.396"], ["0", "0", "0"])
GLYCINE = ("glycine", 1, ["2.351", "9.780"], ["0", "0"])
TRIS = ("tris", 1, ["8.072"], ["0"])

# title, mL of sample, families (with mol/L in sample and titrant), ions (name, charge, mol/L in sample and titrant), volumes
CASES = [
    ("disodium EDTA in 0.07 mol/L KCl with NaOH", "50", [(EDTA, "0.01", "0")],
     [("Na+", 1, "0.02", "0.1"), ("K+", 1, "0.07", "0"), ("Cl-", -1, "0.07", "0")],
     ["0", "1", "2.5", "4", "5", "6", "7.5", "10", "11"]),
    ("borax with HCl", "25", [(BORIC, "0.2", "0")], [("Na+", 1, "0.1", "0"), ("Cl-", -1, "0", "0.1")],
     ["0", "5", "12.5", "24", "25", "26"]),
    ("ammonium oxalate and oxalic acid with NaOH", "25", [(OXALIC, "0.05", "0"), (AMMONIUM, "0.04", "0")],
     [("Na+", 1, "0", "0.1")], ["0", "5", "10", "15", "20", "25", "30"]),
    ("potassium hydrogen phthalate with carbonated NaOH", "25",
     [(PHTHALIC, "0.1", "0"), (CARBONIC, "0", "0.002")],
     [("K+", 1, "0.1", "0"), ("Na+", 1, "0", "0.1")], ["0", "10", "20", "25", "25.5", "26", "30"]),
    ("citric acid with NaOH", "20", [(CITRIC, "0.05", "0")], [("Na+", 1, "0", "0.1")],
     ["0", "5", "10", "15", "20", "25", "30", "31"]),
    ("glycine hydrochloride with NaOH", "20", [(GLYCINE, "0.1", "0")],
     [("Cl-", -1, "0.1", "0"), ("Na+", 1, "0", "0.1")], ["0", "10", "20", "30", "40", "41"]),
    ("tris and carbonate with HCl", "20", [(TRIS, "0.05", "0"), (CARBONIC, "0.03", "0")],
     [("Na+", 1, "0.06", "0"), ("Cl-", -1, "0", "0.1")], ["0", "3", "6", "11", "16", "20", "22"]),
]


def at_zero(z0, pKa, media):
    out = []
    for k, (pK, medium) in enumerate(zip(pKa, media)):
        Im, acid, base = read(medium), z0 - k, z0 - k - 1
        root = mp.sqrt(Im)
        f = oracle.DAVIES_A * (root / (1 + root) - oracle.DAVIES_B * Im)
        out.append(read(pK) + f * (1 + base * base - acid * acid))
    return tuple(out)


def point(case, volume):
    _, v0, families, ions, _ = case
    v0, v = read(v0), read(volume)
    mixed = lambda a, b: (read(a) * v0 + read(b) * v) / (v0 + v)
    system = System(
        read(PKW),
        tuple(Family(z0, at_zero(z0, pKa, media), mixed(a, b)) for (_, z0, pKa, media), a, b in families),
        tuple(Ion(z, mixed(a, b)) for _, z, a, b in ions),
    )
    I, h, gamma1, difference = oracle.solve_davies(system)
    assert difference < mpf(10) ** -30
    return {"V": volume, "pH": mp.nstr(-mp.log10(gamma1 * h), 30), "I": mp.nstr(I, 30)}


def main():
    cases = []
    for number, case in enumerate(CASES, 1):
        title, v0, families, ions, volumes = case
        cases.append({
            "id": "M-%03d" % number, "title": title,
            "input": {
                "pKw": PKW, "V0": v0,
                "families": [{"name": name, "z0": z0, "pKa": pKa, "media": media, "C_sample": a, "C_titrant": b}
                             for (name, z0, pKa, media), a, b in families],
                "strong_ions": [{"name": name, "z": z, "C_sample": a, "C_titrant": b} for name, z, a, b in ions],
            },
            "points": [point(case, volume) for volume in volumes],
        })
    with open("media.json", "w") as file:
        json.dump({"group": "M", "cases": cases}, file, indent=1)
        file.write("\n")


if __name__ == "__main__":
    main()
