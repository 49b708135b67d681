using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Filling.Vents;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>How a fill goes: time, heating, and what pressure is left after cooling.</summary>
/// <remarks>Source: as <see cref="PadFill"/>.</remarks>
public sealed record FillResult : Result
{
    private const double SunKelvins = 20;

    private readonly FillTrace _trace;

    internal FillResult(PadFill fill, FillTrace trace, IReadOnlyList<Finding> findings)
    {
        _trace = trace;
        Fill = fill;
        Time = new("Time", "s", trace.Seconds);
        Pressure = Gauge("Pressure", trace.Pascals);
        Temperature = Celsius("Gas temperature", trace.Kelvins);
        WallTemperature = trace.WallKelvins.Length > 0 ? Celsius("Wall temperature", trace.WallKelvins) : null;
        WaterTemperature = trace.WaterKelvins.Length > 0 ? Celsius("Water temperature", trace.WaterKelvins) : null;
        CylinderPressure = trace.CylinderPascals.Length > 0 ? Gauge("Cylinder pressure", trace.CylinderPascals) : null;
        FirstFlow = fill.Restrictor.Flow(First.ToAbsolute(fill.Ambient), fill.Temperature, fill.Start.ToAbsolute(fill.Ambient), fill.Gas);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The fill that was run.</summary>
    public PadFill Fill { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Pressure in the vessel at those times.</summary>
    public Series Pressure { get; }

    /// <summary>Temperature of the gas at those times.</summary>
    public Series Temperature { get; }

    /// <summary>Temperature of the wall at those times; none where the wall isn't followed.</summary>
    public Series? WallTemperature { get; }

    /// <summary>Temperature of the water at those times; none where it isn't followed (<see cref="FillWall.WaterSurface"/>).</summary>
    public Series? WaterTemperature { get; }

    /// <summary>Pressure in the cylinder at those times; none where the supply is endless.</summary>
    public Series? CylinderPressure { get; }

    /// <summary>Time from first opening to last shutting the valve.</summary>
    public Duration Duration => Duration.FromSeconds(_trace.Seconds[_trace.ShutAt]);

    /// <summary>
    /// Longest time that the water standing in port and line takes to be pushed into the vessel before gas comes; none where the port lies
    /// above the water or where it can't be computed. Source: as <see cref="WaterDrain"/>, at the least drop in pressure on the way.
    /// </summary>
    public Duration? WaterFirst => FillWater.TimeOf(Fill).Longest;

    /// <summary>Fill time with the water in the line going first, at the longest; none where that can't be computed.</summary>
    public Duration? DurationWithWater => WaterFirst is { } first ? Duration + first : null;

    /// <summary>
    /// Fill time at the longest where the gas bubbles up through water: the water takes all heat at once, and the water in the line goes
    /// first where that is known. None where the port lies above the water, and with a valve or a supply that changes on the way.
    /// Source: as <see cref="GasThroughWater"/>.
    /// </summary>
    public Duration? LongestThroughWater => !FillWater.Applies(Fill) || Fill.Valve is not null || Fill.SupplyRise is not null
        || Fill.MeasuredSupply is not null || Fill.Cylinder is not null ? null
        : FillSimulation.Run(Fill with { Heat = FillHeat.Isothermal, Goal = FillGoal.WhenShut, Target = ShutPressure })
            is { Trouble: null } slow ? Duration.FromSeconds(slow.Seconds[slow.ShutAt]) + (WaterFirst ?? UnitsNet.Duration.Zero) : null;

    /// <summary>Bounds of the gas that bubbles up through the water, from when the valve is shut; none where the port lies above the water
    /// or the water could be ice. Source: as <see cref="GasThroughWater"/>.</summary>
    public GasThroughWaterResult? ThroughWater => FillWater.Applies(Fill) && Materials.Fluids.Water.Range.Contains(
        Fill.Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius))
        ? new GasThroughWater
        {
            Pressure = ShutPressure.ToAbsolute(Fill.Ambient), Temperature = ShutTemperature, GasSpace = Fill.GasVolume, Gas = Fill.Gas,
            Water = (Fill.Chamber.Volume - Fill.GasVolume) * 1000.KilogramsPerCubicMetre(), WaterTemperature = Fill.Temperature,
            Flow = Lasts(Fill.Restrictor.Flow(First.ToAbsolute(Fill.Ambient), Fill.Temperature, ShutPressure.ToAbsolute(Fill.Ambient),
                Fill.Gas)),
            Depth = Upright(Fill),
        }.Run() : null;

    private GaugePressure First => Fill.Cylinder is { } cylinder && cylinder.Pressure < Fill.Supply ? cylinder.Pressure : Fill.Supply;

    // Bubbles are followed from a milligram to a kilogram a second.
    private static MassFlow? Lasts(MassFlow flow) => flow.GramsPerSecond is >= 0.001 and <= 1000 ? flow : null;

    // Depth of the water over the port of a vessel that stands on it; not known where it lies, or its port is elsewhere.
    private static Length? Upright(PadFill fill)
    {
        var along = fill.Place is { Stance: VesselStance.Standing } place ? place.AlongAxis.DecimalFractions : fill.Place is null ? 0 : 1;
        var boreM = fill.Chamber.Bore.Meters;
        var depth = Length.FromMeters((fill.WaterFraction.DecimalFractions - along) * fill.Chamber.Volume.CubicMeters
            / (Math.PI / 4 * boreM * boreM));
        return depth >= 1.Millimetres() && depth <= 10.Metres() ? depth : null;
    }

    /// <summary>Pressure when the valve is shut for good.</summary>
    public GaugePressure ShutPressure => AbsolutePressure.FromPascals(_trace.Pascals[_trace.ShutAt]).ToGauge(Fill.Ambient);

    /// <summary>Highest pressure on the way.</summary>
    public GaugePressure MaximumPressure => AbsolutePressure.FromPascals(_trace.Pascals.Max()).ToGauge(Fill.Ambient);

    /// <summary>Temperature of the gas when the valve is shut for good.</summary>
    public Temperature ShutTemperature =>
        UnitsNet.Temperature.FromKelvins(_trace.Kelvins[_trace.ShutAt]).ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius);

    /// <summary>Highest temperature of the gas on the way.</summary>
    public Temperature Hottest =>
        UnitsNet.Temperature.FromKelvins(_trace.Kelvins.Max()).ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius);

    /// <summary>Pressure after the gas has cooled to the surroundings, however long that takes.</summary>
    public GaugePressure SettledPressure => AbsolutePressure.FromPascals(_trace.SettledPascals).ToGauge(Fill.Ambient);

    /// <summary>
    /// Pressure after the settled vessel has stood in the sun and warmed by 20 K (common practice, no source: a dark tube goes from 10 °C
    /// to 30 °C and more).
    /// Source: constant volume by the gas's equation of state (air at 60 bar rises by a tenth more than an ideal gas), or as an ideal gas
    /// where there is none.
    /// </summary>
    public GaugePressure PressureInTheSun
    {
        get
        {
            var warm = Fill.Temperature + SunKelvins.KelvinsOfChange();
            var settled = AbsolutePressure.FromPascals(_trace.SettledPascals);
            var standing = Fill.Gas.Real is { } real
                ? real.AtDensity(real.At(settled, Fill.Temperature).Density, warm).Pressure
                : AbsolutePressure.FromPascals(settled.Pascals * warm.Kelvins / Fill.Temperature.Kelvins);
            return standing.ToGauge(Fill.Ambient);
        }
    }

    /// <summary>Pressure lost while cooling.</summary>
    public Pressure LostToCooling => (ShutPressure - SettledPressure).ToUnit(UnitsNet.Units.PressureUnit.Bar);

    /// <summary>Mass of gas in the vessel at the end.</summary>
    public Mass GasMass => Mass.FromKilograms(_trace.LastMass).ToUnit(UnitsNet.Units.MassUnit.Gram);

    /// <summary>Mass of gas taken from the supply.</summary>
    public Mass GasTaken => Mass.FromKilograms(_trace.LastMass - _trace.FirstMass).ToUnit(UnitsNet.Units.MassUnit.Gram);

    /// <summary>Mass flow when the valve opens, as an ideal gas from the supply, or from the cylinder where that holds less.</summary>
    public MassFlow FirstFlow { get; }

    /// <summary>
    /// Time until which the jet stirs the gas by the published criterion, the end of the fill where it stirs throughout; none where no
    /// inlet is given or a hand works the valve. Source: P. F. Peterson 1994 (unverified).
    /// </summary>
    public Duration? StirsUntil
    {
        get
        {
            if (_trace.MixingNumbers.Length == 0) return null;
            var layered = Array.FindIndex(_trace.MixingNumbers, n => n >= 1);
            return Duration.FromSeconds(_trace.Seconds[layered < 0 ? _trace.ShutAt : layered]);
        }
    }

    /// <summary>Right-hand sides computed; 0 where the fill was summed in closed form.</summary>
    public int Evaluations => _trace.Evaluations;

    /// <inheritdoc/>
    public override string Title => $"Fill to {ShutPressure}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        Fill.Heat switch
        {
            FillHeat.Adiabatic => "Adiabatic fill of a rigid vessel",
            FillHeat.Isothermal => "Isothermal fill of a rigid vessel",
            _ => "Fill of a rigid vessel with heat to its wall",
        },
        [
            Fill.Properties == GasProperties.Real ? "Real gas, mixed at every instant; choked flow raised as the real gas has it."
                : "Ideal gas with constant heat capacities, mixed at every instant.",
            Fill.MeasuredSupply is not null ? "Supply pressure as measured, straight between readings; no gas runs back."
                : Fill.Cylinder is null ? "Supply at constant pressure and temperature; only the restrictor resists."
                : "The cylinder empties and cools behind a regulator without droop; its wall gives 20 W/(m²·K).",
            Fill.Heat switch
            {
                FillHeat.Adiabatic => "No heat to wall or water: heating and the fall while cooling are upper bounds.",
                FillHeat.Isothermal => "Wall and water take all heat at once: fill time is an upper bound.",
                _ => "Free convection to the wall, ±30 %; the wall has one temperature.",
            },
            .. Fill is { Heat: FillHeat.Wall, WallOrPlain.Inlet: { } inlet } ?
                [Fill.WallOrPlain.Stirring == Balances.JetStirring.Throughout
                    ? $"The jet of {inlet.Show()} stirs throughout, whatever the published criterion says."
                    : $"The jet of {inlet.Show()} stirs while (H/d) Ri^(1/3) (1 + d/(0.283 H))^(2/3) is below 1; then free convection "
                        + "alone. Three measured fills of hydrogen agree; one of room air was stirred for longer."]
                : Array.Empty<string>(),
            "Water fills its share of the volume and gives off no vapour.",
            .. WaterTemperature is null ? Array.Empty<string>() : ["Water has one temperature and takes heat at its surface from the "
                + "gas alone; gas that comes up through it arrives as warm as the water."],
            .. FillWater.Applies(Fill) ? ["Gas that bubbles up through water lies between what is computed here and the water's "
                + "temperature, "
                + "full of vapour."] : Array.Empty<string>(),
        ],
        Fill.Properties == GasProperties.Real || Fill.Trace is not null ? PublishedTrace.Range(Fill.Trace)
            : "To 300 bar gauge; above about 100 bar air is no longer ideal and takes up to 15 % less than said.",
        [
            FillingSources.Charging, FillingSources.BlowDown, LawSource,
            .. Fill.Trace is { } trace ? [trace.Source] : Array.Empty<Source>(),
            .. Fill.Heat == FillHeat.Wall ? Fill.WallOrPlain.Sources : [],
            .. WaterTemperature is null ? Array.Empty<Source>() : [WaterBath.Source],
            .. Fill.Properties == GasProperties.Real ? [Fill.Gas.Real!.Source] : Array.Empty<Source>(),
        ]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Fill time", $"{Digits.Round(Duration.Seconds)} s", Fill.Restrictor.ToString() ?? ""),
        .. WaterFirst is { } first
            ? [new ResultLine("Water in the line first", $"up to {Digits.Round(first.Seconds)} s", Fill.WaterInLine!.Value.Show()),
                new ResultLine("Fill time with water in the line", $"up to {Digits.Round(DurationWithWater!.Value.Seconds)} s")]
            : Array.Empty<ResultLine>(),
        new("Pressure when the valve shuts", ShutPressure.ToString()),
        new("Gas temperature when the valve shuts", $"{Digits.Round(ShutTemperature.DegreesCelsius)} °C"),
        .. Hottest > ShutTemperature + 1.KelvinsOfChange() ? [new ResultLine("Hottest gas on the way",
            $"{Digits.Round(Hottest.DegreesCelsius)} °C")] : Array.Empty<ResultLine>(),
        .. CylinderPressure is { } c ? [new ResultLine("Cylinder afterwards", c[_trace.ShutAt].BarGauge().ToString(),
            Fill.Cylinder!.ToString())] : Array.Empty<ResultLine>(),
        new("Pressure after cooling", SettledPressure.ToString(), $"{Digits.Round(LostToCooling.Bars)} bar lost"),
        new("Pressure after warming in the sun", PressureInTheSun.ToString(),
            $"{SunKelvins} K warmer than when filled; {Fill.Chamber.MaximumExpectedPressure} is the highest expected"),
        new("Gas taken", $"{Digits.Round(GasTaken.Grams)} g"),
        new("Flow when the valve opens", $"{Digits.Round(FirstFlow.GramsPerSecond)} g/s"),
        new("Rated pressure of the vessel", Fill.Chamber.RatedPressure.ToString(), Fill.Chamber.RestsOn),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working
    {
        get
        {
            string Bar(AbsolutePressure p) => $"{Digits.Round(p.Bar, 4)} bar";
            var k = Digits.Round(Fill.Temperature.Kelvins, 5);
            var gamma = Fill.Gas.HeatCapacityRatio;
            var factor = Fill.Heat == FillHeat.Adiabatic ? gamma : 1;
            var ratePerSecond = factor * Fill.Gas.GasConstant.JoulesPerKilogramKelvin * Fill.Temperature.Kelvins *
                FirstFlow.KilogramsPerSecond / Fill.GasVolume.CubicMeters;
            AbsolutePressure from = Fill.Start.ToAbsolute(Fill.Ambient), to = ShutPressure.ToAbsolute(Fill.Ambient),
                settled = SettledPressure.ToAbsolute(Fill.Ambient);
            List<WorkingStep> steps =
            [
                new("Flow when the valve opens", @"\dot m = C_d\,A\,\psi\,\frac{p_s}{\sqrt{R\,T_s}}",
                    $"{Digits.Round(Fill.Restrictor.EffectiveArea.SquareMillimeters, 4)} mm² × "
                        + $"{Digits.Round(Fill.Gas.ChokedFlowFactor, 4)} × {Bar(Fill.Supply.ToAbsolute(Fill.Ambient))} / "
                        + $"√({Digits.Round(Fill.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × {k} K)",
                        $"{Digits.Round(FirstFlow.GramsPerSecond, 4)} g/s", LawSource),
                new("Rise in pressure at first", @"\frac{dp}{dt} = \frac{\kappa\,R\,T_s\,\dot m}{V}",
                    $"{Digits.Round(factor, 3)} × {Digits.Round(Fill.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × {k} K × "
                        + $"{Digits.Round(FirstFlow.GramsPerSecond, 4)} g/s / {Digits.Round(Fill.GasVolume.Liters, 4)} L",
                        $"{Digits.Round(ratePerSecond / 1e5, 4)} bar/s", FillingSources.Charging),
                Fill.IsPlain
                    ? new("Fill time", @"t = \int_{p_1}^{p_2} \frac{V\,dp}{\kappa\,R\,T_s\,\dot m(p)}",
                        $"from {Bar(from)} to {Bar(to)}, summed", $"{Digits.Round(Duration.Seconds, 4)} s", FillingSources.Charging)
                    : new("Fill time", @"\frac{d(m\,u)}{dt} = \dot m\,h_s + Q",
                        $"from {Bar(from)} to {Bar(to)}, {Evaluations} evaluations in steps of time",
                        $"{Digits.Round(Duration.Seconds, 4)} s", FillingSources.Charging),
            ];
            if (Fill.Heat == FillHeat.Adiabatic && Fill.IsPlain)
            {
                steps.Add(new("Gas temperature when the valve shuts", @"T_2 = \frac{\gamma\,T_s}{1 + \frac{p_1}{p_2}(\gamma - 1)}",
                    $"{Digits.Round(gamma)} × {k} K / (1 + {Bar(from)} / {Bar(to)} × {Digits.Round(gamma - 1)})",
                    $"{Digits.Round(ShutTemperature.Kelvins, 4)} K", FillingSources.Charging));
                steps.Add(new("Pressure after cooling", @"p_s = \frac{p_2 + (\gamma - 1)\,p_1}{\gamma}",
                    $"({Bar(to)} + {Digits.Round(gamma - 1)} × {Bar(from)}) / {Digits.Round(gamma)}", $"{Bar(settled)} absolute",
                    FillingSources.Charging));
            }

            return new(Title, steps);
        }
    }

    private Source LawSource => Fill.Restrictor is SonicRestrictor ? FillingSources.Iso6358 : FillingSources.Naca1135;

    private Series Gauge(string name, double[] pascals) => new(name, "bar gauge",
        Array.ConvertAll(pascals, p => (p - Fill.Ambient.Pascals) / 1e5));

    private static Series Celsius(string name, double[] kelvins) => new(name, "°C", Array.ConvertAll(kelvins, k => k - 273.15));

    private IEnumerable<Finding> Say()
    {
        if (Fill.Trace is { } trace) yield return FillingFindings.TraceIsForComparison(trace.Source.ToString());
        foreach (var wet in FillWater.Find(Fill)) yield return wet;
        if (StirsUntil is { } until && until < Duration)
            yield return FillingFindings.JetLeavesLayers(Fill.WallOrPlain.Inlet!.Value, until, Duration,
                Fill.WallOrPlain.Stirring == Balances.JetStirring.Throughout);
        if (Fill.Heat != FillHeat.Isothermal && Fill.Goal == FillGoal.WhenShut && LostToCooling > 0.5.Bar())
            yield return FillingFindings.GaugeFallsAsGasCools(SettledPressure, Fill.Heat == FillHeat.Adiabatic);
        var (rated, most) = (Fill.Chamber.RatedPressure, Fill.Chamber.MaximumExpectedPressure);
        var sun = $"Standing filled in the sun, {SunKelvins} K warmer, the vessel comes to {PressureInTheSun}, "
            + $"{Digits.Round(100 * (PressureInTheSun.ToAbsolute(Fill.Ambient) / SettledPressure.ToAbsolute(Fill.Ambient) - 1), 2)} % "
            + "more of absolute pressure";
        if (PressureInTheSun > most)
            yield return FillingFindings.SunTakesVesselPastRating(sun, most, rated);
        else if (PressureInTheSun > rated)
            yield return FillingFindings.SunTakesVesselAboveRated(sun, rated, most);
        if (Hottest.DegreesCelsius > 80)
            yield return FillingFindings.GasMayGetTooHot(Hottest.DegreesCelsius);
    }
}
