#!/usr/bin/env python3
"""One vertical flight, integrated by SciPy's solve_ivp and by NotebookKit: same equations, tolerance and machine, in one run.

Needs Debian's python3-scipy; says so and ends with status 77 where it is missing. From the repository's root:

    /usr/bin/python3 tests/side-by-side/vertical_flight.py

The equations are those of NotebookKit's plain model: ideal gas with gamma 1.4, quasi-steady water jet without head, isentropic converging nozzle,
linear-lapse air, constant drag coefficient. The vehicle is reference flight F1 of the tests: 2.5 L, 32 % water, 35 bar gauge, 13 mm.
"""
import json
import math
import pathlib
import subprocess
import sys
import time

try:
    from scipy.integrate import solve_ivp
except ImportError:
    print("SciPy is missing: install Debian's python3-scipy and run this with /usr/bin/python3.")
    sys.exit(77)

R, GAMMA, G, RHO = 287.05287, 1.4, 9.80665, 1000.0
VOLUME, WATER, GAUGE, T0 = 2.5e-3, 0.32, 35e5, 293.15
THROAT, BORE, DRY, CD, CD_WATER, CD_AIR = 0.013, 0.095, 1.05, 0.33, 0.97, 0.95
BORE_AREA = math.pi / 4 * BORE**2
WATER_AREA = CD_WATER * math.pi / 4 * THROAT**2
AIR_AREA = CD_AIR * math.pi / 4 * THROAT**2
PHI2 = (WATER_AREA / BORE_AREA) ** 2
SEA = 101325.0
P0, GAS0 = GAUGE + SEA, VOLUME * (1 - WATER)
GAS_KG = P0 * GAS0 / (R * T0)
CRITICAL = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1))
FLOW = math.sqrt(GAMMA / R) * (2 / (GAMMA + 1)) ** ((GAMMA + 1) / (2 * (GAMMA - 1)))
THRUST = 2 * (2 / (GAMMA + 1)) ** (1 / (GAMMA - 1))
EXPONENT = G / (0.0065 * R)
RELATIVE = 1e-6


def air(z):
    temperature = 288.15 - 0.0065 * z
    pressure = SEA * (temperature / 288.15) ** EXPONENT
    return pressure, pressure / (R * temperature)


def drag(density, v):
    return 0.5 * density * CD * BORE_AREA * v * abs(v)


def water(t, y):
    z, v, gas = y
    pressure = P0 * (GAS0 / gas) ** GAMMA
    ambient, density = air(z)
    u = math.sqrt(max(0.0, 2 * (pressure - ambient) / (RHO * (1 - PHI2))))
    flow = WATER_AREA * u
    mass = DRY + GAS_KG + RHO * (VOLUME - gas)
    return [v, (RHO * flow * u - drag(density, v)) / mass - G, flow]


def jet(pressure, temperature, ambient):
    if ambient <= CRITICAL * pressure:
        return AIR_AREA * FLOW * pressure / math.sqrt(temperature), AIR_AREA * (THRUST * pressure - ambient)
    if ambient >= pressure:
        return 0.0, 0.0
    exit_temperature = temperature * (ambient / pressure) ** ((GAMMA - 1) / GAMMA)
    u = math.sqrt(2 * GAMMA / (GAMMA - 1) * R * (temperature - exit_temperature))
    flow = AIR_AREA * ambient / (R * exit_temperature) * u
    return flow, flow * u


def gas(t, y):
    z, v, mass, temperature = y
    ambient, density = air(z)
    flow, thrust = jet(mass * R * temperature / VOLUME, temperature, ambient)
    return [v, (thrust - drag(density, v)) / (DRY + mass) - G, -flow, -(GAMMA - 1) * temperature * flow / mass]


def coast(mass):
    def equations(t, y):
        _, density = air(y[0])
        return [y[1], -drag(density, y[1]) / mass - G]

    return equations


def ends(function):
    function.terminal, function.direction = True, -1
    return function


def fly():
    count = 0
    water_out = ends(lambda t, y: VOLUME - y[2])
    spent = ends(lambda t, y: y[2] * R * y[3] / VOLUME - 1.001 * air(y[0])[0])
    top = ends(lambda t, y: y[1])

    first = solve_ivp(water, (0, 100), [0.0, 0.0, GAS0], rtol=RELATIVE, atol=[RELATIVE, RELATIVE, RELATIVE * GAS0], events=water_out)
    z, v, volume = first.y[:, -1]
    temperature = P0 * (GAS0 / volume) ** GAMMA * VOLUME / (GAS_KG * R)
    second = solve_ivp(
        gas, (first.t[-1], 100), [z, v, GAS_KG, temperature], rtol=RELATIVE,
        atol=[RELATIVE, RELATIVE, 1e-2 * RELATIVE * GAS_KG, 100 * RELATIVE], events=spent)
    z, v, mass, _ = second.y[:, -1]
    third = solve_ivp(coast(DRY + mass), (second.t[-1], 100), [z, v], rtol=RELATIVE, atol=RELATIVE, events=top)
    count = first.nfev + second.nfev + third.nfev
    return third.y[0, -1], third.t[-1], count


def main():
    root = pathlib.Path(__file__).resolve().parents[2]
    ours = json.loads(subprocess.run(
        ["dotnet", "run", "-c", "Release", "--project", str(root / "tests" / "NotebookKit.Benchmarks"), "--", "side-by-side"],
        capture_output=True, text=True, check=True).stdout.strip().splitlines()[-1])

    apogee, seconds, count = fly()
    best = math.inf
    for _ in range(100):
        start = time.perf_counter()
        fly()
        best = min(best, (time.perf_counter() - start) * 1e6)

    print(f"{'':12}{'apogee, m':>14}{'time, s':>12}{'evaluations':>13}{'per flight, µs':>16}")
    print(f"{'SciPy':12}{apogee:14.6f}{seconds:12.6f}{count:13d}{best:16.1f}")
    print(f"{'NotebookKit':12}{ours['apogee']:14.6f}{ours['time']:12.6f}{ours['evaluations']:13d}{ours['microseconds']:16.1f}")
    print(f"ratio {best / ours['microseconds']:.0f}; apogees differ by {abs(apogee / ours['apogee'] - 1):.1e}")
    if abs(apogee / ours["apogee"] - 1) > 1e-4:
        print("The two do not agree.")
        sys.exit(1)


if __name__ == "__main__":
    main()
