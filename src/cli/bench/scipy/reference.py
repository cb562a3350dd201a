"""Solves the stiff cases beside this file with SciPy, from their own numbers and an independent statement of the laws.

Writes reference.json: pressures and gas fractions at the marks by LSODA at a tolerance of 1e-10 (Radau at 1e-7 agrees to 1e-6), and what SciPy's three
stiff methods cost (every call of the right-hand side, those for Jacobians by differences included) at the loosest tolerance that keeps every pressure within 0.05 % of
that. Run: python3 reference.py (needs scipy). With the word recount it instead reads cases and reference from standard input,
solves each case once more at the tolerances found and prints what that cost here. Laws: isentropic nozzle with the smooth band y/(y^2 + 1e-6)^(1/4), and
laminar slot joined to it by inverse squares, as the model states them.
"""

import json
import math
import pathlib
import sys
import time

import numpy as np
import scipy
from scipy.integrate import solve_ivp

R = 8.314463
BAND = 1e-3


def psi_flow(k, ratio):
    choke = (2 / (k + 1)) ** (k / (k - 1))
    r = max(ratio, choke)
    y = 1 - r
    exact = 2 * k / (k - 1) * (r ** (2 / k) - r ** ((k + 1) / k))
    return 0.0 if y <= 0 else math.sqrt(exact * y) / (y * y + BAND * BAND) ** 0.25


def link_flow(link, case, p1, p2, x):
    gas, air = case["gas"], case["air"]
    mass = air["molarMassKgPerMol"] + x * (gas["molarMassKgPerMol"] - air["molarMassKgPerMol"])
    rt = R * case["temperatureK"]
    area = link["cdAM2"] if link["law"] == "orifice" else link["cd"] * link["perimeterM"] * link["gapM"]
    ratio = p2 / p1
    psi = x * psi_flow(gas["heatCapacityRatio"], ratio) + (1 - x) * psi_flow(air["heatCapacityRatio"], ratio)
    nozzle = area * p1 / math.sqrt(mass * rt) * psi
    if link["law"] == "orifice" or nozzle <= 0:
        return nozzle
    mu = air["viscosityPaS"] + x * (gas["viscosityPaS"] - air["viscosityPaS"])
    laminar = link["perimeterM"] * link["gapM"] ** 3 * (p1 * p1 - p2 * p2) / (24 * mu * link["lengthM"] * rt)
    return laminar / math.sqrt(1 + (laminar / nozzle) ** 2)


def right_hand_side(case):
    cells = [c["id"] for c in case["cells"]]
    volume = np.array([c["volumeM3"] for c in case["cells"]])
    places = {b["id"]: b for b in case["boundaries"]}
    index = {name: i for i, name in enumerate(cells)}
    rt = R * case["temperatureK"]

    def rhs(_t, state):
        amounts = state.tolist()
        air, gas = amounts[: len(cells)], amounts[len(cells) :]
        total = [a + g for a, g in zip(air, gas)]
        pressure = [max(t, 1e-12) * rt / v for t, v in zip(total, volume)]
        change = [0.0] * len(amounts)
        for link in case["links"]:
            ends = []
            for name in (link["from"], link["to"]):
                if name in index:
                    i = index[name]
                    ends.append((pressure[i], min(1.0, max(0.0, gas[i] / total[i])), i))
                else:
                    ends.append((places[name]["pressureAbsPa"], places[name]["gasFraction"], None))
            (pf, xf, f), (pt, xt, t) = ends
            forward = pf >= pt
            x = xf if forward else xt
            flow = link_flow(link, case, pf, pt, x) if forward else -link_flow(link, case, pt, pf, x)
            for i, sign in ((f, -1), (t, 1)):
                if i is not None:
                    change[i] += sign * flow * (1 - x)
                    change[len(cells) + i] += sign * flow * x
        return np.array(change)

    return rhs, volume, rt


def solve(case, method, rtol, most=10**7):
    inner, volume, rt = right_hand_side(case)
    calls = [0]

    def rhs(t, state):
        calls[0] += 1
        if calls[0] > most:
            raise RuntimeError("gives up")
        return inner(t, state)

    start = np.array(case["airMol"] + case["gasMol"])
    out = solve_ivp(rhs, (0, case["marksS"][-1]), start, method=method, rtol=rtol, atol=rtol * 1e-4, t_eval=case["marksS"])
    if not out.success:
        raise RuntimeError(out.message)
    n = len(case["cells"])
    total = out.y[:n] + out.y[n:]
    return total * rt / volume[:, None], out.y[n:] / total, calls[0]


def cheapest(case, exact):
    best = {}
    for method in ("BDF", "Radau", "LSODA"):
        for rtol in (1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-6, 1e-7):
            try:
                pressure, _, calls = solve(case, method, rtol, 60000)
            except (RuntimeError, ValueError):
                continue
            if np.max(np.abs(pressure / exact - 1)) <= 5e-4:
                best[method] = {"rightHandSides": calls, "rtol": rtol}
                break
    return best


def recount(cases, reference):
    """What the methods cost on this machine, at the tolerances that were found to be exact enough."""
    counted = []
    for case, theirs in zip(cases, reference["cases"]):
        exact = np.array(theirs["pressuresAbsPa"]).T
        for method, cost in theirs["scipy"].items():
            began = time.process_time()
            pressure, _, calls = solve(case, method, cost["rtol"])
            spent = 1000 * (time.process_time() - began)
            worst = float(np.max(np.abs(pressure / exact - 1)))
            counted.append({"name": case["name"], "method": method, "rightHandSides": calls, "ms": spent, "worst": worst})
    return {"scipy": scipy.__version__, "counted": counted}


def main():
    if sys.argv[1:] == ["recount"]:
        given = json.load(sys.stdin)
        print(json.dumps(recount(given["cases"], given["reference"])))
        return
    here = pathlib.Path(__file__).parent
    cases = json.loads((here / "stiffCases.json").read_text())
    results = []
    for case in cases:
        pressure, fraction, _ = solve(case, "LSODA", 1e-10)
        other, _, _ = solve(case, "Radau", 1e-7)
        if np.max(np.abs(other / pressure - 1)) > 1e-6:
            raise RuntimeError(f"two methods disagree on {case['name']}")
        print(case["name"], file=sys.stderr)
        results.append(
            {
                "name": case["name"],
                "marksS": case["marksS"],
                "pressuresAbsPa": [[float(f"{v:.9g}") for v in row] for row in pressure.T],
                "gasFractions": [[float(f"{v:.9g}") for v in row] for row in fraction.T],
                "scipy": cheapest(case, pressure),
            }
        )
    text = json.dumps({"scipy": scipy.__version__, "cases": results}, indent=1)
    (here / "reference.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
