using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>A hose: gas enters it smoothly from rest, is held back by friction, and chokes at its end where it can go no faster.</summary>
/// <remarks>
/// Adiabatic flow with friction (Fanno) from a reservoir; a dynamic pressure at the end is lost. Source: A. H. Shapiro, The Dynamics and
/// Thermodynamics of Compressible Fluid Flow, 1953, ch. 6.
/// </remarks>
/// <param name="Bore">Internal diameter; 0.5 mm to 50 mm.</param>
/// <param name="Length">Length; 0.01 m to 200 m.</param>
/// <param name="DarcyFriction">Darcy friction factor [-], four times Fanning's; 0.005 to 0.1, about 0.02 for a smooth hose.</param>
public sealed record Hose(Length Bore, Length Length, double DarcyFriction = 0.02) : IRestrictor
{
    /// <summary>Friction length f L/D [-].</summary>
    public double FrictionLength => DarcyFriction * (Length / Bore);

    /// <summary>Downstream over upstream absolute pressure below which the flow of air no longer rises [-]. Source: Shapiro 1953.</summary>
    public double CriticalRatio => CriticalRatioAt(Gas.Air.HeatCapacityRatio);

    /// <inheritdoc/>
    public Area EffectiveArea => Area.FromSquareMeters(AreaM2 *
        ChokedShare(Gas.Air.HeatCapacityRatio)).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <inheritdoc/>
    public SonicConductance Conductance => FlowCapacity.ConductanceOf(EffectiveArea);

    /// <summary>
    /// Friction factor of turbulent flow from Reynolds number and roughness. Source: S. E. Haaland, Simple and explicit formulas for the
    /// friction factor in turbulent pipe flow, J. Fluids Eng. 105 (1983) 89; within 2 % of Colebrook's.
    /// </summary>
    /// <param name="reynolds">Reynolds number on the bore [-]; 4000 to 1e8.</param>
    /// <param name="relativeRoughness">Roughness over bore [-]; 0 to 0.05.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double FrictionFactor(double reynolds, double relativeRoughness)
    {
        new ValidRange<double>(4000, 1e8).Check(reynolds, "Reynolds number", "Below 4000 the flow isn't turbulent.");
        new ValidRange<double>(0, 0.05).Check(relativeRoughness, "relative roughness", "A drawn tube has 1e-4, a braided hose 1e-3.");
        var root = -1.8 * Math.Log10(Math.Pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (root * root);
    }

    /// <summary>Flow at constant temperature from the pressures inside its two ends; none where they are equal or reversed. Source: Shapiro
    /// 1953, isothermal flow with friction.</summary>
    /// <param name="from">Pressure at the start; 100 Pa to 2000 bar absolute.</param>
    /// <param name="temperature">Temperature; 50 K to 2000 K.</param>
    /// <param name="to">Pressure at the end; from where the flow no longer rises (ṁ √(R T) = A p) to that at the start.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="InvalidDesignException">The hose itself is refused.</exception>
    /// <exception cref="OutOfRangeException">A pressure, the temperature or a constant of the gas is outside.</exception>
    public MassFlow IsothermalFlow(AbsolutePressure from, Temperature temperature, AbsolutePressure to, Gas gas)
    {
        InvalidDesignException.ThrowIfAny("Hose", Validate());
        GasChecks.AtRest(from, temperature, gas);
        double p1 = from.Pascals, p2 = to.Pascals;
        if (p2 >= p1) return MassFlow.Zero;
        // Lower pressures at the end don't reach into the hose: the formula would have the flow fall again. There p1² − p2² = p2² (f L/D +
        // 2 ln(p1/p2)).
        BracketedRoot.TrySolve(r => 1 / (r * r) - 1 - FrictionLength + 2 * Math.Log(r), 1e-6, 1, 1e-12, out var lowest);
        new ValidRange<AbsolutePressure>(AbsolutePressure.FromPascals(lowest.Root * p1), from).Check(to, "pressure at the end of the hose",
            "Lower, the hose is choked: the flow is that at the lower end of the range.");
        var resistance = gas.GasConstant.JoulesPerKilogramKelvin * temperature.Kelvins * (FrictionLength + 2 * Math.Log(p1 / p2));
        return MassFlow.FromKilogramsPerSecond(AreaM2 * Math.Sqrt((p1 * p1 - p2 * p2) / resistance));
    }

    /// <summary>Fall in pressure of a small flow, density taken as constant. Source: H. Darcy, J. Weisbach: Δp = f (L/D) ρ v²/2.</summary>
    /// <param name="flow">Mass flow; 0 to what loses a fifth of the pressure.</param>
    /// <param name="pressure">Pressure at the start; 100 Pa to 2000 bar absolute.</param>
    /// <param name="temperature">Temperature; 50 K to 2000 K.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="InvalidDesignException">The hose itself is refused.</exception>
    /// <exception cref="OutOfRangeException">Flow, pressure, temperature or a constant of the gas is outside.</exception>
    public Pressure DarcyDrop(MassFlow flow, AbsolutePressure pressure, Temperature temperature, Gas gas)
    {
        InvalidDesignException.ThrowIfAny("Hose", Validate());
        GasChecks.AtRest(pressure, temperature, gas);
        var density = pressure.Pascals / (gas.GasConstant.JoulesPerKilogramKelvin * temperature.Kelvins);
        var most = AreaM2 * Math.Sqrt(2 * density * MostDarcyShare * pressure.Pascals / FrictionLength);
        new ValidRange<MassFlow>(MassFlow.Zero, MassFlow.FromKilogramsPerSecond(most)).Check(
            flow.ToUnit(UnitsNet.Units.MassFlowUnit.KilogramPerSecond), "flow through the hose",
                "With more, the density changes along the hose: take the flow with friction.");
        var speed = flow.KilogramsPerSecond / (density * AreaM2);
        return Pressure.FromPascals(FrictionLength * density * speed * speed / 2).ToUnit(UnitsNet.Units.PressureUnit.Bar);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Length>(0.5.Millimetres(), 50.Millimetres()).Find(Bore, "bore of the hose", "Check the unit it was given in."),
            new ValidRange<Length>(0.01.Metres(), 200.Metres()).Find(Length, "length of the hose", "Check the unit it was given in."),
            new ValidRange<double>(0.005, 0.1).Find(DarcyFriction, "Darcy friction factor", "About 0.02; Fanning's is a quarter of it."),
        }.OfType<Finding>().ToList();

    /// <summary>For example "hose 6 mm × 10 m, f 0.02".</summary>
    public override string ToString() => $"hose {Digits.Round(Bore.Millimeters)} mm × {Digits.Round(Length.Meters)} m, f "
        + $"{Digits.Round(DarcyFriction)}";

    double IRestrictor.CriticalRatioFor(Gas gas) => CriticalRatioAt(gas.HeatCapacityRatio);

    double IRestrictor.KilogramsPerSecond(double upstreamPa, double upstreamK, double downstreamPa, Gas gas)
    {
        if (downstreamPa >= upstreamPa) return 0;
        var g = gas.HeatCapacityRatio;
        var ratio = downstreamPa / upstreamPa;
        var highest = FannoFlow.MachAt(FrictionLength, g);
        var mach = highest;
        if (ratio > EndRatio(highest, FrictionLength, g))
        {
            var function = new EndExcess(ratio, FrictionLength, g);
            // Pressures so nearly equal that even Mach 1e-9 is too much: nothing flows.
            if (!BracketedRoot.TrySolve(ref function, 1e-9, highest, 1e-14, out var root)) return 0;
            mach = root.Root;
        }

        return AreaM2 * upstreamPa / Math.Sqrt(gas.GasConstant.JoulesPerKilogramKelvin * upstreamK) * MassFunction(mach, g);
    }

    // Constant density is wrong by half the share of pressure that is lost.
    private const double MostDarcyShare = 0.2;

    private double AreaM2 => Math.PI / 4 * Bore.Meters * Bore.Meters;

    private double CriticalRatioAt(double g) => EndRatio(FannoFlow.MachAt(FrictionLength, g), FrictionLength, g);

    private double ChokedShare(double g) => MassFunction(FannoFlow.MachAt(FrictionLength, g), g) / MassFunction(1, g);

    // Mass flow over A p0 / sqrt(R T0) for isentropic entry to a Mach number.
    private static double MassFunction(double m, double g) => Math.Sqrt(g) * m * Math.Pow(1 + (g - 1) / 2 * m * m,
        -(g + 1) / (2 * (g - 1)));

    // Pressure at the end over the pressure at rest ahead, for a Mach number at the start.
    private static double EndRatio(double m1, double frictionLength, double g)
    {
        var entry = Math.Pow(1 + (g - 1) / 2 * m1 * m1, -g / (g - 1));
        var left = FannoFlow.Length(m1, g) - frictionLength;
        var m2 = left <= 0 ? 1 : m1 < 1e-3 ? EndMachOfSlowFlow(m1, frictionLength, g) : FannoFlow.MachAt(left, g);
        return entry * FannoFlow.Pressure(m2, g) / FannoFlow.Pressure(m1, g);
    }

    // Far below the speed of sound p² falls along the hose as γ M² f L/D p1² does.
    private static double EndMachOfSlowFlow(double m1, double frictionLength, double g) => m1 / Math.Sqrt(1 - g * m1 * m1 * frictionLength);

    private readonly struct EndExcess(double ratio, double frictionLength, double g) : IScalarFunction
    {
        public double Value(double x) => EndRatio(x, frictionLength, g) - ratio;
    }
}
