using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>A gas by its published reference equation of state: what an ideal gas gets wrong above some 50 bar.</summary>
/// <remarks>
/// Gas and supercritical states only. Density of air within 0.1 %, speed of sound 0.2 %, heat capacity 1 % as its authors state.
/// Source: Lemmon et al. 2000 (air), Span et al. 2000 (nitrogen), Leachman et al. 2009 (hydrogen), Ortiz Vega et al. 2023 (helium).
/// </remarks>
public sealed record RealGas
{
    private readonly HelmholtzEquation _equation;
    private readonly GasTransport _transport;
    private readonly double _lowestK;

    private RealGas(string name, HelmholtzEquation equation, GasTransport transport, double lowestK, Source source)
    {
        Name = name;
        _equation = equation;
        _transport = transport;
        _lowestK = lowestK;
        Source = source;
    }

    /// <summary>Dry air. Source: Lemmon et al. 2000.</summary>
    public static RealGas Air { get; } = new("air", AirEquation.Create(), GasTransport.Air, 135, new(
        "E. W. Lemmon, R. T. Jacobsen, S. G. Penoncello, D. G. Friend",
            "Thermodynamic properties of air and mixtures of nitrogen, argon, and oxygen, J. Phys. Chem. Ref. Data 29, 331", 2000,
            "Tables 12 and 13"));

    /// <summary>Nitrogen. Source: Span et al. 2000.</summary>
    public static RealGas Nitrogen { get; } = new("nitrogen", NitrogenEquation.Create(), GasTransport.Nitrogen, 128, new(
        "R. Span, E. W. Lemmon, R. T. Jacobsen, W. Wagner, A. Yokozeki",
            "A reference equation of state for nitrogen, J. Phys. Chem. Ref. Data 29, 1361", 2000));

    /// <summary>Normal hydrogen. Source: Leachman et al. 2009.</summary>
    public static RealGas Hydrogen { get; } = new("hydrogen", HydrogenEquation.Create(), GasTransport.Hydrogen, 60, new(
        "J. W. Leachman, R. T. Jacobsen, S. G. Penoncello, E. W. Lemmon",
            "Fundamental equations of state for normal hydrogen, J. Phys. Chem. Ref. Data 38, 721", 2009));

    /// <summary>Helium. Source: Ortiz Vega et al. 2023, unverified; viscosity and conductivity recalled, 200 to 500 K.</summary>
    public static RealGas Helium { get; } = new("helium", HeliumEquation.Create(), GasTransport.Helium, 20, new(
        "D. O. Ortiz Vega, K. R. Hall, J. C. Holste, A. H. Harvey, E. W. Lemmon",
            "An equation of state for the thermodynamic properties of helium, NISTIR 8474", 2023, "", SourceKind.Unverified));

    /// <summary>Name of the gas.</summary>
    public string Name { get; }

    /// <summary>Where the equation of state comes from.</summary>
    public Source Source { get; }

    /// <summary>Specific gas constant of the equation.</summary>
    public SpecificEntropy GasConstant => SpecificEntropy.FromJoulesPerKilogramKelvin(_equation.GasConstant);

    /// <summary>Temperatures that are allowed.</summary>
    public ValidRange<Temperature> TemperatureRange => new(_lowestK.Kelvins(), 900.Kelvins());

    /// <summary>Pressures that are allowed.</summary>
    public static ValidRange<AbsolutePressure> PressureRange => new(AbsolutePressure.FromPascals(1), 1000.BarAbsolute());

    /// <summary>The state at a pressure and temperature. Source: the gas's equation of state.</summary>
    /// <param name="pressure">Pressure; 1 Pa to 1000 bar absolute.</param>
    /// <param name="temperature">Temperature; above the critical one to 900 K.</param>
    /// <exception cref="OutOfRangeException">Pressure or temperature is outside its range.</exception>
    public RealGasState At(AbsolutePressure pressure, Temperature temperature)
    {
        PressureRange.Check(pressure, $"pressure of {Name}", "The equation is used for gas and supercritical states only.");
        CheckTemperature(temperature);
        return State(PointAtPressure(pressure.Pascals, temperature.Kelvins));
    }

    /// <summary>The state at a density and temperature. Source: the gas's equation of state.</summary>
    /// <param name="density">Density; above 0 to twice the reducing density.</param>
    /// <param name="temperature">Temperature; above the critical one to 900 K.</param>
    /// <exception cref="OutOfRangeException">Density or temperature is outside its range.</exception>
    public RealGasState AtDensity(Density density, Temperature temperature)
    {
        new ValidRange<Density>(Density.FromKilogramsPerCubicMeter(1e-6), Density.FromKilogramsPerCubicMeter(2 * _equation.ReducingDensity))
            .Check(density.ToUnit(UnitsNet.Units.DensityUnit.KilogramPerCubicMeter), $"density of {Name}",
                "The equation is used for gas and supercritical states only.");
        CheckTemperature(temperature);
        return State(_equation.At(temperature.Kelvins, density.KilogramsPerCubicMeter));
    }

    /// <summary>The state after a drop of pressure in a regulator: same enthalpy. Source: the gas's equation of state; Joule-Thomson
    /// throttling.</summary>
    /// <param name="before">State ahead of the regulator.</param>
    /// <param name="pressure">Pressure behind it; 1 Pa to the pressure ahead.</param>
    /// <exception cref="ArgumentException">The state is of another gas.</exception>
    /// <exception cref="OutOfRangeException">The pressure or the temperature reached is outside its range.</exception>
    public RealGasState Throttled(RealGasState before, AbsolutePressure pressure)
    {
        Own(before);
        new ValidRange<AbsolutePressure>(PressureRange.Minimum, before.Pressure).Check(pressure,
            $"pressure of {Name} behind the regulator", "A regulator lowers the pressure.");
        var enthalpy = before.Point.Enthalpy;
        return State(AtTemperatureWhere(k => PointAtPressure(pressure.Pascals, k), p => p.Enthalpy - enthalpy, "throttling"));
    }

    /// <summary>The state after an isentropic expansion to a larger volume. Source: the gas's equation of state.</summary>
    /// <param name="before">State at the start.</param>
    /// <param name="volumeRatio">Volume after over volume before [-]; 0.2 to 100.</param>
    /// <exception cref="OutOfRangeException">The ratio or the temperature reached is outside its range.</exception>
    public RealGasState Expanded(RealGasState before, double volumeRatio)
    {
        Own(before);
        new ValidRange<double>(0.2, 100).Check(volumeRatio, "volume ratio", "Larger expansions of air end as liquid.");
        double entropy = before.Point.Entropy, density = before.Point.Density / volumeRatio;
        return State(AtTemperatureWhere(k => _equation.At(k, density), p => p.Entropy - entropy, "isentropic expansion"));
    }

    /// <summary>The state after an isentropic expansion or compression to a pressure. Source: the gas's equation of state.</summary>
    /// <param name="before">State at the start.</param>
    /// <param name="pressure">Pressure at the end; 1 Pa to 1000 bar absolute.</param>
    /// <exception cref="OutOfRangeException">The pressure or the temperature reached is outside its range.</exception>
    public RealGasState ExpandedTo(RealGasState before, AbsolutePressure pressure)
    {
        Own(before);
        PressureRange.Check(pressure, $"pressure of {Name}", "The equation is used for gas and supercritical states only.");
        var entropy = before.Point.Entropy;
        return State(AtTemperatureWhere(k => PointAtPressure(pressure.Pascals, k), p => p.Entropy - entropy, "isentropic expansion"));
    }

    /// <summary>
    /// The state of a rigid vessel charged without loss of heat to a pressure, from a line at constant enthalpy: m₂ u₂ = m₁ u₁ + (m₂ − m₁)
    /// h.
    /// Source: energy balance of charging (Cengel and Boles 2006); the gas's equation of state.
    /// </summary>
    /// <param name="before">State in the vessel at the start; a few pascals for an evacuated one.</param>
    /// <param name="line">State of the supply at rest.</param>
    /// <param name="pressure">Pressure at the end; that at the start to that of the line.</param>
    /// <exception cref="ArgumentException">A state is of another gas.</exception>
    /// <exception cref="OutOfRangeException">The pressure or the temperature reached is outside its range.</exception>
    public RealGasState Charged(RealGasState before, RealGasState line, AbsolutePressure pressure)
    {
        Own(before);
        Own(line);
        // The line's pressure is that of a rounded density: a millionth of it is none.
        new ValidRange<AbsolutePressure>(before.Pressure, AbsolutePressure.FromPascals(line.Point.Pascals * (1 + 1e-6))).Check(
            pressure, $"pressure of {Name} after charging", "Charging raises the pressure, at most to that of the line.");
        GasPoint start = before.Point, source = line.Point;
        return State(AtTemperatureWhere(
            k => PointAtPressure(pressure.Pascals, k),
            p => p.Energy - source.Enthalpy - start.Density / p.Density * (start.Energy - source.Enthalpy), "charging"));
    }

    /// <summary>The state after cooling or warming at constant volume. Source: the gas's equation of state.</summary>
    /// <param name="before">State at the start.</param>
    /// <param name="temperature">Temperature at the end; above the critical one to 900 K.</param>
    /// <exception cref="OutOfRangeException">The temperature is outside its range.</exception>
    public RealGasState Settled(RealGasState before, Temperature temperature)
    {
        Own(before);
        return AtDensity(before.Density, temperature);
    }

    /// <summary>
    /// Choked mass flow per throat area, inlet pressure and 1/√(R T) [-]: 0.685 for an ideal diatomic gas, 2.4 % more for air at 60 bar.
    /// Found where the flow along the isentrope reaches the speed of sound. Source: the gas's equation of state; ISO 9300, 2005 (definition
    /// of C*, unverified).
    /// </summary>
    /// <param name="inlet">State at rest ahead of the nozzle; to 1000 bar absolute, as long as the gas stays above its lowest temperature
    /// on its way to the throat.</param>
    /// <exception cref="ArgumentException">The state is of another gas.</exception>
    /// <exception cref="OutOfRangeException">The gas turns liquid on its way to the throat, or is so dense that no throat is
    /// found.</exception>
    public double CriticalFlowFactor(RealGasState inlet)
    {
        Own(inlet);
        var stagnation = inlet.Point;
        if (Throat(stagnation) is { } quick)
            return quick.Density * quick.SoundSpeed * Math.Sqrt(_equation.GasConstant * stagnation.Kelvins) / stagnation.Pascals;
        GasPoint At(double pressureRatio) =>
            AtTemperatureWhere(k => PointAtPressure(stagnation.Pascals * pressureRatio, k), p => p.Entropy - stagnation.Entropy,
                "critical flow");
        double Excess(double ratio)
        {
            var p = At(ratio);
            return 2 * (stagnation.Enthalpy - p.Enthalpy) - p.SoundSpeed * p.SoundSpeed;
        }

        // Near an ideal gas the throat has about half of the pressure; a dense gas chokes only at less.
        if (!BracketedRoot.TrySolve(Excess, 0.4, 0.65, 1e-12, out var root) && !BracketedRoot.TrySolve(Excess, 0.2, 0.4, 1e-12, out root))
            throw new OutOfRangeException($"pressure of {Name} ahead of the nozzle", inlet.Pressure.ToString(),
                PressureRange.Minimum.ToString(), "some 700 bar absolute, more where it is warmer", "Denser gas flows as a liquid does.");
        var throat = At(root.Root);
        return throat.Density * throat.SoundSpeed * Math.Sqrt(_equation.GasConstant * stagnation.Kelvins) / stagnation.Pascals;
    }

    /// <summary>The name of the gas.</summary>
    public override string ToString() => $"real {Name}";

    /// <inheritdoc/>
    public bool Equals(RealGas? other) => other is not null && Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    internal double LowestKelvins => _lowestK;

    internal GasPoint Point(double kelvins, double density) => _equation.At(kelvins, density);

    internal (double Viscosity, double Conductivity) Transport(double kelvins, double density)
    {
        double tau = _equation.ReducingKelvins / kelvins, delta = density / _equation.ReducingDensity;
        return _transport.At(kelvins, tau, delta);
    }

    /// <summary>Above the critical temperature pressure rises with density all the way: Newton from the ideal gas, never past twice the
    /// last density.</summary>
    internal GasPoint PointAtPressure(double pascals, double kelvins)
    {
        var density = pascals / (_equation.GasConstant * kelvins);
        for (var i = 0; i < 60; i++)
        {
            var point = _equation.At(kelvins, density);
            var step = (pascals - point.Pascals) / point.PressureByDensity;
            if (Math.Abs(step) < 1e-13 * density) return point;
            density = Math.Clamp(density + step, 0.5 * density, 2 * density);
        }

        return _equation.At(kelvins, density);
    }

    /// <summary>Temperature at a pressure and an enthalpy, K, by Newton's method in temperature and density at once, from values near
    /// them; how both go with pressure and enthalpy there.</summary>
    internal double KelvinsAtEnthalpy(double pascals, double enthalpy, double kelvins, ref double density, out EnthalpySlopes slopes)
    {
        slopes = default;
        for (var i = 0; i < 60; i++)
        {
            var p = _equation.At(kelvins, density);
            double lacksP = pascals - p.Pascals, lacksH = enthalpy - p.Enthalpy, byT = p.Cv + p.PressureByTemperature / density,
                byD = p.EnergyByDensity + p.PressureByDensity / density - p.Pascals / (density * density);
            var determinant = p.PressureByTemperature * byD - p.PressureByDensity * byT;
            slopes = new(byD / determinant, -p.PressureByDensity / determinant, -byT / determinant, p.PressureByTemperature / determinant);
            double warmer = lacksP * slopes.KelvinsByPascals + lacksH * slopes.KelvinsByEnthalpy,
                denser = lacksP * slopes.DensityByPascals + lacksH * slopes.DensityByEnthalpy;
            kelvins = Math.Clamp(kelvins + warmer, 0.8 * kelvins, 1.25 * kelvins);
            density = Math.Clamp(density + denser, 0.5 * density, 2 * density);
            // What is left after such a step is of the order of its square.
            if (Math.Abs(warmer) < 1e-5 && Math.Abs(denser) < 1e-7 * density) break;
        }

        return kelvins;
    }

    // The throat of a choked flow from rest, by secants in temperature along the isentrope from where an ideal gas has it; none where they
    // don't settle near there.
    private GasPoint? Throat(in GasPoint rest)
    {
        double kelvins = 0.835 * rest.Kelvins, density = 0.635 * rest.Density, before = 0, excessBefore = 0;
        for (var i = 0; i < 30 && kelvins > _lowestK; i++)
        {
            var point = _equation.At(kelvins, density);
            for (var k = 0; k < 20; k++)
            {
                var step = (point.Entropy - rest.Entropy) * density * density / point.PressureByTemperature;
                if (!(Math.Abs(step) < 0.5 * density)) return null;
                density += step;
                point = _equation.At(kelvins, density);
                if (Math.Abs(step) < 1e-7 * density) break;
            }

            var excess = 2 * (rest.Enthalpy - point.Enthalpy) - point.SoundSpeed * point.SoundSpeed;
            var next = i == 0 ? 0.99 * kelvins : kelvins - excess * (kelvins - before) / (excess - excessBefore);
            if (i > 0 && !(Math.Abs(next - kelvins) < 0.1 * kelvins)) return null;
            if (i > 0 && Math.Abs(next - kelvins) < 1e-10 * kelvins)
                return point.Pascals > 0.2 * rest.Pascals && point.Pascals < 0.65 * rest.Pascals ? point : null;
            density += (next - kelvins) * point.Cv * density * density / (kelvins * point.PressureByTemperature);
            (before, excessBefore, kelvins) = (kelvins, excess, next);
        }

        return null;
    }

    private void Own(RealGasState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!Equals(state.Gas)) throw new ArgumentException($"The state is of {state.Gas.Name}; it must be of {Name}, whose "
            + "equation this is.", nameof(state));
    }

    private RealGasState State(GasPoint point) => new(this, point);

    private GasPoint AtTemperatureWhere(Func<double, GasPoint> point, Func<GasPoint, double> excess, string what)
    {
        if (!BracketedRoot.TrySolve(k => excess(point(k)), _lowestK, 900, 1e-10, out var root))
            throw new OutOfRangeException($"temperature after {what} of {Name}", "outside", $"{_lowestK} K", "900 K",
                "Outside it the gas turns liquid or the equation isn't used: take a smaller change of pressure.");
        return point(root.Root);
    }

    private void CheckTemperature(Temperature temperature) =>
        TemperatureRange.Check(temperature.ToUnit(UnitsNet.Units.TemperatureUnit.Kelvin), $"temperature of {Name}",
            "The equation is used for gas and supercritical states only.");
}

/// <summary>How temperature and density go with pressure at one enthalpy and with enthalpy at one pressure, in SI.</summary>
internal readonly record struct EnthalpySlopes(double KelvinsByPascals, double KelvinsByEnthalpy, double DensityByPascals,
    double DensityByEnthalpy);
