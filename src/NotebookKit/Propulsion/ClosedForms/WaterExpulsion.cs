using MathNet.Numerics;
using MathNet.Numerics.Integration;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Propulsion.ClosedForms;

/// <summary>Closed forms for water driven out of a vessel at rest: to check a computation against, and to teach with.</summary>
/// <remarks>
/// Frictionless, quasi-steady unless said. Source: Bernoulli's equation and the momentum theorem, F. M. White, Fluid Mechanics; emptying
/// times by integration of p Vⁿ = const (own derivation, equal to quadrature to 1e-13).
/// </remarks>
public static class WaterExpulsion
{
    private static readonly ValidRange<double> AreaRatios = new(0, 0.95);
    private static readonly ValidRange<double> Exponents = new(1, 1.7);
    private static readonly ValidRange<Area> Jets = new(1e-4.SquareMillimetres(), 1.SquareMetres());
    private static readonly ValidRange<AbsolutePressure> Pressures = new(AbsolutePressure.FromPascals(100), 2000.BarAbsolute());

    /// <summary>Jet speed √(2 Δp/(ρ (1 − φ²))). Source: Bernoulli.</summary>
    /// <param name="difference">Gas pressure above ambient; 0 or above.</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <param name="areaRatio">Jet area over bore area φ [-]; 0 to 0.95.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Speed JetSpeed(GaugePressure difference, Density water, double areaRatio = 0)
    {
        AreaRatios.Check(areaRatio, "area ratio of jet and bore", "A nozzle narrows.");
        return Math.Sqrt(2 * NotNegative(difference) / (Dense(water) * (1 - areaRatio * areaRatio))).MetresPerSecond();
    }

    /// <summary>Jet speed with a head of water, √(2 (Δp + ρ (g + a) h)/ρ). Source: Bernoulli in an accelerated frame; effect described by
    /// C. J. Gommes, Am. J. Phys. 78 (2010) 236.</summary>
    /// <param name="difference">Gas pressure above ambient; 0 or above.</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <param name="head">Height of the water above the nozzle; 0 to 100 m.</param>
    /// <param name="acceleration">Acceleration of the vehicle, up positive, gravity not included; −9.806 to 1e6 m/s².</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Speed JetSpeedWithHead(GaugePressure difference, Density water, Length head, Acceleration acceleration)
    {
        var density = Dense(water);
        new ValidRange<Length>(Length.Zero, 100.Metres()).Check(head, "height of the water", "Check its unit.");
        new ValidRange<Acceleration>(Acceleration.FromMetersPerSecondSquared(-9.806), Acceleration.FromMetersPerSecondSquared(1e6)).Check(
            acceleration, "acceleration of the vehicle", "In free fall and beyond, the water leaves the nozzle end.");
        var total = NotNegative(difference) + density * (StandardConstants.Gravity + acceleration.MetersPerSecondSquared) * head.Meters;
        return Math.Sqrt(2 * Math.Max(0, total) / density).MetresPerSecond();
    }

    /// <summary>Thrust of the jet, ρ A u² = 2 A Δp/(1 − φ²). Source: momentum theorem.</summary>
    /// <param name="difference">Gas pressure above ambient; 0 or above.</param>
    /// <param name="jet">Area of the jet; 0.0001 mm² to 1 m².</param>
    /// <param name="areaRatio">Jet area over bore area φ [-]; 0 to 0.95.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Force Thrust(GaugePressure difference, Area jet, double areaRatio = 0)
    {
        AreaRatios.Check(areaRatio, "area ratio of jet and bore", "A nozzle narrows.");
        Jets.Check(jet, JetName, CheckUnit);
        return (2 * jet.SquareMeters * NotNegative(difference) / (1 - areaRatio * areaRatio)).Newtons();
    }

    /// <summary>Time to drive water out at constant pressure, V/(A u). Source: continuity.</summary>
    /// <param name="water">Volume of the water; 0 to 10 m³.</param>
    /// <param name="jet">Area of the jet; 0.0001 mm² to 1 m².</param>
    /// <param name="speed">Jet speed; 1 mm/s to 2000 m/s.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Duration TimeAtConstantPressure(Volume water, Area jet, Speed speed)
    {
        new ValidRange<Volume>(Volume.Zero, 10.CubicMetres()).Check(water, "volume of the water", CheckUnit);
        Jets.Check(jet, JetName, CheckUnit);
        new ValidRange<Speed>(1e-3.MetresPerSecond(), 2000.MetresPerSecond()).Check(speed, "jet speed", "A jet at rest empties nothing.");
        return (water.CubicMeters / (jet.SquareMeters * speed.MetersPerSecond)).Seconds();
    }

    /// <summary>
    /// Time to drive the water out while the gas expands as p Vⁿ: K/(n A c) ΔB(x; 1/n + 1/2, 1/2), with K = V₀ (p₀/pa)^(1/n), c = √(2
    /// pa/ρ), x = (V/K)ⁿ and B the incomplete beta function; φ neglected. Source: own derivation from Bernoulli and p Vⁿ = const.
    /// </summary>
    /// <param name="start">Gas pressure at the start; above ambient, to 2000 bar absolute.</param>
    /// <param name="gasAtStart">Gas volume at the start; 1 mL to 10 m³.</param>
    /// <param name="gasAtEnd">Gas volume when the water is out; above that at the start.</param>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <param name="jet">Area of the jet; 0.0001 mm² to 1 m².</param>
    /// <param name="ambient">Air pressure outside; 100 Pa to the gas pressure.</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <exception cref="OutOfRangeException">An input is outside, or the gas would be spent before the water is out.</exception>
    public static Duration EmptyingTime(
        AbsolutePressure start, Volume gasAtStart, Volume gasAtEnd, double exponent, Area jet, AbsolutePressure ambient, Density water)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        Growing(gasAtStart, gasAtEnd);
        Driving(start, ambient);
        Jets.Check(jet, JetName, CheckUnit);
        var full = SpentM3(start, gasAtStart, n, ambient);
        var c = Math.Sqrt(2 * ambient.Pascals / Dense(water));
        double from = Math.Pow(gasAtStart.CubicMeters / full, n), to = Math.Pow(gasAtEnd.CubicMeters / full, n);
        if (!(to < 1))
            throw new OutOfRangeException("gas volume when the water is out", gasAtEnd.Show(4), gasAtStart.Show(4),
                Volume.FromLiters(full * 1e3).Show(4), "Beyond it the gas is at ambient pressure and drives nothing.");
        double a = 1 / n + 0.5, beta = SpecialFunctions.Beta(a, 0.5);
        var difference = beta * (SpecialFunctions.BetaRegularized(a, 0.5, to) - SpecialFunctions.BetaRegularized(a, 0.5, from));
        return (full / (n * jet.SquareMeters * c) * difference).Seconds();
    }

    /// <summary>Time to drive the water out against vacuum. Source: own derivation from Bernoulli and p Vⁿ = const.</summary>
    /// <param name="start">Gas pressure at the start; 100 Pa to 2000 bar absolute.</param>
    /// <param name="gasAtStart">Gas volume at the start; 1 mL to 10 m³.</param>
    /// <param name="gasAtEnd">Gas volume when the water is out; above that at the start.</param>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <param name="jet">Area of the jet; 0.0001 mm² to 1 m².</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Duration EmptyingTimeInVacuum(AbsolutePressure start, Volume gasAtStart, Volume gasAtEnd, double exponent, Area jet,
        Density water)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        Growing(gasAtStart, gasAtEnd);
        Pressures.Check(start, StartName, StartWhy);
        Jets.Check(jet, JetName, CheckUnit);
        var u = Math.Sqrt(2 * start.Pascals / Dense(water));
        return (gasAtStart.CubicMeters / (jet.SquareMeters * u) * (Math.Pow(gasAtEnd / gasAtStart, 1 + n / 2) - 1) / (1 + n / 2)).Seconds();
    }

    /// <summary>
    /// Impulse of the water while the gas expands as p Vⁿ: ∫ √(2 ρ (p − pa)) dV, on whatever nozzle; φ neglected. Water that the gas is too
    /// weak for stays and gives none. Source: momentum theorem; quadrature.
    /// </summary>
    /// <param name="start">Gas pressure at the start; above ambient, to 2000 bar absolute.</param>
    /// <param name="gasAtStart">Gas volume at the start; 1 mL to 10 m³.</param>
    /// <param name="gasAtEnd">Gas volume when the water is out; above that at the start.</param>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <param name="ambient">Air pressure outside; 0 or above.</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Impulse WaterImpulse(
        AbsolutePressure start, Volume gasAtStart, Volume gasAtEnd, double exponent, AbsolutePressure ambient, Density water)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        Growing(gasAtStart, gasAtEnd);
        Pressures.Check(start, StartName, StartWhy);
        double v0 = gasAtStart.CubicMeters, p0 = start.Pascals, pa = ambient.Pascals, density = Dense(water);
        if (pa >= p0) return Impulse.Zero;
        var v1 = pa > 0 ? Math.Min(gasAtEnd.CubicMeters, SpentM3(start, gasAtStart, n, ambient)) : gasAtEnd.CubicMeters;
        var integral = GaussLegendreRule.Integrate(
            v => Math.Sqrt(2 * density * Math.Max(0, p0 * Math.Pow(v0 / v, n) - pa)), v0, v1, 64);
        return Impulse.FromNewtonSeconds(integral);
    }

    /// <summary>Work that the gas does beyond pushing the outside air back, from one volume to another. Source: ∫ (p − pa) dV for p Vⁿ =
    /// const.</summary>
    /// <param name="start">Gas pressure at the start; 100 Pa to 2000 bar absolute.</param>
    /// <param name="gasAtStart">Gas volume at the start; 1 mL to 10 m³.</param>
    /// <param name="gasAtEnd">Gas volume at the end; at or above that at the start.</param>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <param name="ambient">Air pressure outside; 0 or above.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Energy ExpansionWork(AbsolutePressure start, Volume gasAtStart, Volume gasAtEnd, double exponent,
        AbsolutePressure ambient)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        Growing(gasAtStart, gasAtEnd);
        Pressures.Check(start, StartName, StartWhy);
        double v0 = gasAtStart.CubicMeters, v1 = gasAtEnd.CubicMeters, energy = start.Pascals * v0;
        var work = n == 1 ? energy * Math.Log(v1 / v0) : energy / (n - 1) * (1 - Math.Pow(v0 / v1, n - 1));
        return (work - ambient.Pascals * (v1 - v0)).Joules();
    }

    /// <summary>Work that the gas could do at most by expanding down to ambient. Source: as <see cref="ExpansionWork"/>, to the volume at
    /// ambient pressure.</summary>
    /// <param name="start">Gas pressure at the start; above ambient, to 2000 bar absolute.</param>
    /// <param name="gas">Gas volume at the start; 1 mL to 10 m³.</param>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <param name="ambient">Air pressure outside; 100 Pa to the gas pressure.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Energy StoredEnergy(AbsolutePressure start, Volume gas, double exponent, AbsolutePressure ambient)
    {
        Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        Driving(start, ambient);
        return ExpansionWork(start, gas, gas * Math.Pow(start / ambient, 1 / exponent), exponent, ambient);
    }

    /// <summary>Speed gained by throwing out all water at one jet speed, without gravity and drag: u ln((m_dry + m_w)/m_dry). Source: K. E.
    /// Tsiolkovsky 1903.</summary>
    /// <param name="jet">Jet speed; 0 to 2000 m/s.</param>
    /// <param name="dry">Mass without water; 1 g to 10 t.</param>
    /// <param name="water">Mass of the water; 0 to 10 t.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Speed IdealSpeedGain(Speed jet, Mass dry, Mass water)
    {
        new ValidRange<Speed>(Speed.Zero, 2000.MetresPerSecond()).Check(jet, "jet speed", CheckUnit);
        new ValidRange<Mass>(1.Grams(), 10_000.Kilograms()).Check(dry, "mass without water", CheckUnit);
        new ValidRange<Mass>(Mass.Zero, 10_000.Kilograms()).Check(water, "mass of the water", CheckUnit);
        return (jet.MetersPerSecond * Math.Log((dry.Kilograms + water.Kilograms) / dry.Kilograms)).MetresPerSecond();
    }

    /// <summary>
    /// Time constant of a jet that starts from rest under constant pressure, u = u∞ tanh(t/τ), τ = 2 φ h/(u∞ (1 − φ²)).
    /// Source: unsteady Bernoulli equation; C. J. Gommes, Am. J. Phys. 78 (2010) 236.
    /// </summary>
    /// <param name="difference">Gas pressure above ambient; 100 Pa to 1000 bar.</param>
    /// <param name="water">Density of the water; 500 to 2000 kg/m³.</param>
    /// <param name="head">Height of the water above the nozzle; 0 to 100 m.</param>
    /// <param name="areaRatio">Jet area over bore area φ [-]; above 0, at most 0.95.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static Duration StartingTimeConstant(GaugePressure difference, Density water, Length head, double areaRatio)
    {
        new ValidRange<double>(1e-6, 0.95).Check(areaRatio, "area ratio of jet and bore", "Without flow area nothing starts.");
        new ValidRange<GaugePressure>(GaugePressure.FromPascals(100), 1000.BarGauge()).Check(difference, "pressure above ambient",
            "Without it no jet starts.");
        new ValidRange<Length>(Length.Zero, 100.Metres()).Check(head, "height of the water", CheckUnit);
        var final = JetSpeed(difference, water, areaRatio).MetersPerSecond;
        return (2 * areaRatio * head.Meters / (final * (1 - areaRatio * areaRatio))).Seconds();
    }

    /// <summary>Gas share of the volume that gives the greatest water impulse at a given pressure and no ambient: (n/2)^(1/(1 − n/2)).
    /// Source: derivative of the impulse in vacuum.</summary>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <exception cref="OutOfRangeException">The exponent is outside.</exception>
    public static Ratio GasShareForMaximumImpulseInVacuum(double exponent)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        return Ratio.FromDecimalFractions(Math.Pow(n / 2, 1 / (1 - n / 2)));
    }

    /// <summary>Gas share of the volume that gives the greatest expansion work at a given pressure and no ambient: n^(−1/(n − 1)). Source:
    /// derivative of the work.</summary>
    /// <param name="exponent">Polytropic exponent n [-]; 1 to 1.7.</param>
    /// <exception cref="OutOfRangeException">The exponent is outside.</exception>
    public static Ratio GasShareForMaximumWork(double exponent)
    {
        var n = Exponents.Check(exponent, "polytropic exponent", "1 is isothermal, 1.4 adiabatic air.");
        return Ratio.FromDecimalFractions(n == 1 ? Math.Exp(-1) : Math.Pow(n, -1 / (n - 1)));
    }

    private const string CheckUnit = "Check its unit.", JetName = "area of the jet", StartName = "gas pressure at the start",
        StartWhy = "It is absolute; a vacuum drives nothing.";

    // Volume to which the gas grows until it is at ambient pressure, m³.
    private static double SpentM3(AbsolutePressure start, Volume gas, double exponent, AbsolutePressure ambient) =>
        gas.CubicMeters * Math.Pow(start / ambient, 1 / exponent);

    private static double Dense(Density water) =>
        new ValidRange<Density>(500.KilogramsPerCubicMetre(), 2000.KilogramsPerCubicMetre()).Check(water, "density of the water",
            CheckUnit).KilogramsPerCubicMeter;

    private static void Growing(Volume start, Volume end)
    {
        new ValidRange<Volume>(1.Millilitres(), 10.CubicMetres()).Check(start, "gas volume at the start", CheckUnit);
        new ValidRange<Volume>(start, 100_000.CubicMetres()).Check(end, "gas volume at the end",
            "Water that leaves makes room for the gas.");
    }

    private static void Driving(AbsolutePressure start, AbsolutePressure ambient)
    {
        Pressures.Check(start, StartName, StartWhy);
        new ValidRange<AbsolutePressure>(Pressures.Minimum, start).Check(ambient, "air pressure outside",
            "It is absolute and below the gas pressure; against a vacuum there is a closed form of its own.");
    }

    private static double NotNegative(GaugePressure difference) =>
        new ValidRange<GaugePressure>(GaugePressure.Zero, 1000.BarGauge()).Check(difference, "pressure above ambient",
            "Water doesn't leave against a higher pressure.").Pascals;
}
