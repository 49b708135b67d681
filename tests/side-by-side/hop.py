#!/usr/bin/env python3
"""A vehicle that lifts and comes to rest with its charge aboard, against SciPy's solve_ivp: the figures of the test of a hop.

Plain model: p V^1.4 constant, quasi-steady jet by pressure alone, no drag, International Standard Atmosphere outside.
Needs Debian's python3-scipy; says so and ends with status 77 where it is missing. From the repository's root:

    /usr/bin/python3 tests/side-by-side/hop.py
"""
import math
import sys

try:
    from scipy.integrate import solve_ivp
except ImportError:
    print("SciPy is missing: install Debian's python3-scipy and run this with /usr/bin/python3.")
    sys.exit(77)

R, GAMMA, G = 287.05287, 1.4, 9.80665
CHAMBER, BORE, THROAT, CONTRACTION = 3.4e-3, 0.066, 6.6e-3, 0.97
DENSITY, DRY, SHARE, GAUGE, KELVIN = 1000.0, 1.46, 0.68, 10.4e5, 288.15
AMBIENT = 101325.0

area = CONTRACTION * math.pi / 4 * THROAT ** 2
phi = area / (math.pi / 4 * BORE ** 2)
gas0 = CHAMBER * (1 - SHARE)
p0 = GAUGE + AMBIENT
gas_kg = p0 * gas0 / (R * KELVIN)


def outside(h):
    return AMBIENT * (1 - 0.0065 * h / 288.15) ** (G / (0.0065 * R))


def rates(t, y):
    h, v, volume = y
    difference = p0 * (gas0 / volume) ** GAMMA - outside(h)
    u = math.sqrt(2 * max(0, difference) / (DENSITY * (1 - phi ** 2)))
    mass = DRY + gas_kg + DENSITY * (CHAMBER - volume)
    return [v, DENSITY * area * u * u / mass - G, area * u]


def rest(t, y):
    return y[1] + 1e-12


rest.terminal, rest.direction = True, -1
s = solve_ivp(rates, (0, 10), [0, 0, gas0], method="DOP853", rtol=1e-12, atol=1e-14, events=rest)
h, v, volume = s.y_events[0][-1]
print(f"rest after {s.t_events[0][-1]:.8f} s at {h:.8f} m, {DENSITY * (CHAMBER - volume):.8f} kg of water, "
      f"{(p0 * (gas0 / volume) ** GAMMA - outside(h)) / 1e5:.8f} bar gauge")
