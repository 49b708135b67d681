using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Vents;

/// <summary>How long an aborted vessel takes to be safe, at the two limits of heat and with the wall's heat.</summary>
/// <remarks>Source: J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123: measured discharges from 8 bar lie between the
/// adiabatic and the isothermal curve.</remarks>
public sealed record VentResult : Result
{
    private readonly Lazy<Duration> _worst;

    internal VentResult(Vent vent, IReadOnlyList<FillHeat> ways, IReadOnlyList<Finding> findings)
    {
        Vent = vent;
        Curves = [.. ways.Select(w => VentSimulation.Run(Filling.Vents.WaterFirst.LawFor(vent, w), w))];
        WaterFirst = Filling.Vents.WaterFirst.Of(vent, ways);
        _worst = new(() =>
        {
            if (vent.WaterFraction <= Ratio.Zero || (vent.Place is null && vent.Port != PortPosition.AboveWater)) return Slowest;
            var wet = Filling.Vents.WaterFirst.Of(vent with { Place = null, Port = PortPosition.UnderWater }, ways)!.Total;
            return wet > Slowest ? wet : Slowest;
        });
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The vent that was run.</summary>
    public Vent Vent { get; }

    /// <summary>Water first and then gas, where the vent lies under water or where it lies isn't given; none where the vent lies above it
    /// or there is none.</summary>
    public WaterFirst? WaterFirst { get; }

    /// <summary>The ways it may go with gas alone: without heat, with heat from the wall where that can be computed, at constant
    /// temperature.</summary>
    public IReadOnlyList<VentCurve> Curves { get; }

    /// <summary>The curve without heat from the wall.</summary>
    public VentCurve Adiabatic => Curves[0];

    /// <summary>The curve with heat from the wall; none where the gas's conductivity isn't known.</summary>
    public VentCurve? WithWall => Curves.FirstOrDefault(c => c.Heat == FillHeat.Wall);

    /// <summary>The curve at constant temperature.</summary>
    public VentCurve Isothermal => Curves[^1];

    /// <summary>Longest time to the safe pressure with gas alone.</summary>
    public Duration SlowestGasAlone => Duration.FromSeconds(Curves.Max(c => c.Time[^1]));

    /// <summary>Shortest time to the safe pressure; with the water first where the vent is known to lie under it.</summary>
    public Duration Fastest => WaterFirst is { } wet && Vent.PortInEffect == PortPosition.UnderWater ? wet.Fastest
        : Duration.FromSeconds(Curves.Min(c => c.Time[^1]));

    /// <summary>
    /// Longest time to the safe pressure, water first where the vent lies under it or where it lies isn't given: the one to wait, and then
    /// as long again by the gauge.
    /// </summary>
    public Duration Slowest => WaterFirst is not { } wet ? SlowestGasAlone
        : Vent.PortInEffect == PortPosition.UnderWater || wet.Total > SlowestGasAlone ? wet.Total : SlowestGasAlone;

    /// <summary>
    /// Longest time to the safe pressure whatever the vessel's state: with all of its water at the vent, wherever the vent is said to lie,
    /// as after a fall. Never shorter than <see cref="Slowest"/>; what a sheet tells people to wait.
    /// </summary>
    public Duration WorstState => _worst.Value;

    /// <summary>Lowest temperature of the gas: with heat from the wall where that was computed, else without. Ice at the vent is to be
    /// expected.</summary>
    public Temperature ColdestGas
    {
        get
        {
            var alone = Temperature.FromDegreesCelsius((WithWall ?? Adiabatic).Temperature.Values.Min());
            return WaterFirst is { } wet && wet.ColdestGas < alone ? wet.ColdestGas : alone;
        }
    }

    /// <summary>
    /// Pressure that comes back at most where the vent is shut at the safe pressure: gas that grew cold on its way down warms up to where
    /// it was, at constant volume. The bound without heat from the wall. Source: ideal gas law.
    /// </summary>
    public GaugePressure ReturnsTo
    {
        get
        {
            var safe = Vent.SafePressure.ToAbsolute(Vent.Ambient).Pascals;
            return AbsolutePressure.FromPascals(safe * Vent.Temperature.Kelvins / (Adiabatic.Temperature[^1]
                + 273.15)).ToGauge(Vent.Ambient);
        }
    }

    /// <inheritdoc/>
    public override string Title => $"Vent from {Vent.From}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Blow-down of a rigid vessel at the limits of heat",
        [
            Vent.Properties == GasProperties.Real ? "Real gas with heat from the wall; ideal gas for the two limits."
                : "Ideal gas, mixed at every instant.",
            "Only the vent resists.", "From high pressure the time may be longer than at either limit: cold gas flows slowly, and a warm "
                + "wall keeps the pressure up.", WaterFirst is null
                ? "Gas alone leaves; water stays below the vent."
                : "Water leaves first, driven by an ideal gas at constant temperature or without heat, without head; a hose that rises "
                    + "above the vessel takes longer. Then gas alone.",
            Vent.Wall?.WaterSurface is null ? "Free convection from the wall, ±30 %."
                : "Free convection from the wall and from the surface of water that stays, ±30 %; that water has one temperature.",
        ],
        PublishedTrace.Range(Vent.Trace),
        [FillingSources.BlowDown, .. Vent.Trace is { } trace ? [trace.Source] : Array.Empty<Source>(), .. Vent.WallOrPlain.Sources,
            .. Vent.Wall?.WaterSurface is null ? Array.Empty<Source>() : [WaterBath.Source],
            Vent.Restrictor is SonicRestrictor ? FillingSources.Iso6358 : FillingSources.Naca1135,
            .. WaterFirst is null ? [] : (Source[])[FillingSources.Torricelli,
                .. WaterPassage.IsUnsourced(Vent.Restrictor) ? [WaterPassage.Unsourced] : Array.Empty<Source>()]]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Time to vented", $"{Digits.Round(Fastest.Seconds)} s to {Digits.Round(Slowest.Seconds)} s",
            $"from {Vent.From} to {Vent.SafePressure}"),
        .. WorstState > Slowest ? [new ResultLine("Longest in any state", $"{Digits.Round(WorstState.Seconds)} s",
            "with all the water at the vent, as after a fall")] : Array.Empty<ResultLine>(),
        new("Minimum wait", $"{Digits.Round(2 * WorstState.Seconds)} s", "twice the longest time, then only if the gauge reads zero"),
        .. WaterFirst is { } wet
            ?
            [
                new ResultLine("Water first", $"{Digits.Round(wet.WaterTime.Seconds)} s",
                    $"{wet.Drain.WaterOut.Show()} through {Digits.Round(wet.Drain.Drain.EffectiveArea.SquareMillimeters)} mm², down to "
                    + $"{wet.Drain.PressureThen}"),
                new ResultLine("Then gas", $"{Digits.Round(wet.GasTime.Seconds)} s"),
                new ResultLine("Water first, then gas", $"{Digits.Round(wet.Total.Seconds)} s", "the longest time"),
                new ResultLine("Gas alone", $"{Digits.Round(SlowestGasAlone.Seconds)} s", "if the vent were above the water"),
            ]
            : Array.Empty<ResultLine>(),
        .. WithWall is { } w ? [new ResultLine(WaterFirst is null ? "With heat from the wall" : "Gas alone, with heat from the wall",
            $"{Digits.Round(w.Time[^1])} s")] : Array.Empty<ResultLine>(),
        new("Coldest gas", $"{Digits.Round(ColdestGas.DegreesCelsius)} °C",
            WithWall is null ? "if the wall gave no heat" : "with heat from the wall"),
        new("Maximum pressure after warming, vent shut", ReturnsTo.ToString(), "cold gas warms up again: leave the vent open"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working
    {
        get
        {
            var start = Vent.From.ToAbsolute(Vent.Ambient);
            var tau = Vent.GasVolume.CubicMeters / (Vent.Restrictor.EffectiveArea.SquareMeters * Vent.Gas.ChokedFlowFactor *
                Math.Sqrt(Vent.Gas.GasConstant.JoulesPerKilogramKelvin * Vent.Temperature.Kelvins));
            return new(Title,
            [
                new("Time constant while choked", @"\tau = \frac{V}{C_d\,A\,\psi\,\sqrt{R\,T_0}}",
                    $"{Digits.Round(Vent.GasVolume.Liters, 4)} L / ({Digits.Round(Vent.Restrictor.EffectiveArea.SquareMillimeters, 4)} "
                        + $"mm² × {Digits.Round(Vent.Gas.ChokedFlowFactor, 4)} × "
                        + $"√({Digits.Round(Vent.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × "
                        + $"{Digits.Round(Vent.Temperature.Kelvins, 5)} K))", $"{Digits.Round(tau, 4)} s", FillingSources.BlowDown),
                new("Time at constant temperature", @"t = \int \frac{V\,dp}{R\,T_0\,\dot m(p)}",
                    $"from {start} to {Vent.SafePressure.ToAbsolute(Vent.Ambient)}, summed", $"{Digits.Round(Isothermal.Time[^1], 4)} s",
                    FillingSources.BlowDown),
                new("Time without heat from the wall", @"t = \int \frac{V\,dp}{\gamma\,R\,T(p)\,\dot m(p)}",
                    $"from {start} to {Vent.SafePressure.ToAbsolute(Vent.Ambient)}, summed", $"{Digits.Round(Adiabatic.Time[^1], 4)} s",
                    FillingSources.BlowDown),
                .. WaterFirst is { } wet ? wet.Drain.Working.Steps : [],
            ]);
        }
    }

    private IEnumerable<Finding> Say()
    {
        if (Vent.Trace is { } trace) yield return FillingFindings.TraceIsForComparison(trace.Source.ToString());
        if (WaterFirst is { } wet)
        {
            var times = $"{wet.Drain.WaterOut.Show()} of water goes out first, in {Digits.Round(wet.WaterTime.Seconds)} s, then the gas, "
                + $"in {Digits.Round(wet.GasTime.Seconds)} s: {Digits.Round(wet.Total.Seconds)} s together, against "
                + $"{Digits.Round(SlowestGasAlone.Seconds)} s with gas alone";
            yield return Vent.PortInEffect == PortPosition.UnderWater
                ? FillingFindings.VentLiesUnderWater(times)
                : FillingFindings.PositionOfVentIsNotGiven(times);
            if (wet.Drain.WaterLeft > UnitsNet.Volume.Zero)
                yield return FillingFindings.WaterStaysInVessel(Vent.SafePressure, wet.Drain.WaterLeft);
            if (WaterPassage.IsUnsourced(Vent.Restrictor))
                yield return FillingFindings.WaterFlowOfRestrictorUnknown();
        }

        if (ReturnsTo > Vent.SafePressure)
            yield return FillingFindings.LeaveVentOpen(Vent.SafePressure, ReturnsTo);
    }
}
