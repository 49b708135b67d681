using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Vents;

/// <summary>A vessel vented through a port under water: the water goes first, then the gas, from a lower pressure and a larger
/// volume.</summary>
/// <remarks>
/// Followed with the gas at constant temperature and without heat while the water leaves, and from there each way that the gas may go; the
/// longest counts.
/// Source: <see cref="WaterDrain"/>; Dutton and Coverdill 1997.
/// </remarks>
public sealed record WaterFirst
{
    private WaterFirst(WaterDrainResult drain, VentCurve curve, double shortestSeconds, double coldest)
    {
        Drain = drain;
        Curve = curve;
        Fastest = Duration.FromSeconds(shortestSeconds);
        ColdestGas = Temperature.FromDegreesCelsius(coldest);
    }

    /// <summary>The water's part of the longest way.</summary>
    public WaterDrainResult Drain { get; }

    /// <summary>The longest way, water and gas one after the other.</summary>
    public VentCurve Curve { get; }

    /// <summary>Time until the water is out, or the safe pressure is reached with water left.</summary>
    public Duration WaterTime => Drain.Duration;

    /// <summary>Time of the gas after that; 0 where the safe pressure was reached before.</summary>
    public Duration GasTime => Total - WaterTime;

    /// <summary>Longest time to the safe pressure, water and gas.</summary>
    public Duration Total => Duration.FromSeconds(Curve.Time[^1]);

    /// <summary>Shortest time to the safe pressure, water and gas.</summary>
    public Duration Fastest { get; }

    /// <summary>Coldest gas on any way with heat from the wall; without where that isn't computed.</summary>
    public Temperature ColdestGas { get; }

    internal static WaterFirst? Of(Vent vent, IReadOnlyList<FillHeat> ways)
    {
        if (vent.WaterFraction <= Ratio.Zero || vent.PortInEffect == PortPosition.AboveWater) return null;
        List<(WaterDrainResult Drain, VentCurve Curve)> paths = [];
        foreach (var exponent in (double[])[1, vent.Gas.HeatCapacityRatio])
        {
            var drain = DrainOf(vent, exponent);
            var hot = vent.Temperature.Kelvins;
            var cooled = Array.ConvertAll([.. drain.Pressure.Values],
                bar => hot * Math.Pow(bar.BarGauge().ToAbsolute(vent.Ambient) / vent.From.ToAbsolute(vent.Ambient), 1 - 1 / exponent));
            if (drain.PressureThen.Pascals <= vent.SafePressure.Pascals + 1)
            {
                paths.Add((drain, Join(exponent == 1 ? FillHeat.Isothermal : FillHeat.Adiabatic, drain, cooled, null)));
                continue;
            }

            var stays = vent.WaterFraction - vent.WaterThatLeaves;
            var rest = vent with { From = drain.PressureThen, WaterFraction = stays, Place = null, Port = PortPosition.AboveWater,
                GasAtStart = Temperature.FromKelvins(cooled[^1]),
                // Where no water stays, what was its surface is wall.
                Wall = stays > Ratio.Zero ? vent.Wall : vent.Wall is { } wall ? wall with { WaterSurface = null } : null };
            paths.AddRange(ways.Select(way => (drain, Join(way, drain, cooled, VentSimulation.Run(LawFor(rest, way), way)))));
        }

        var longest = paths.MaxBy(p => p.Curve.Time[^1]);
        var warmed = paths.Where(p => p.Curve.Heat == FillHeat.Wall).ToList();
        return new WaterFirst(longest.Drain, longest.Curve, paths.Min(p => p.Curve.Time[^1]),
            (warmed.Count > 0 ? warmed : paths).Min(p => p.Curve.Temperature.Values.Min()));
    }

    // Below 200 K at the start the flow that chokes is outside what the equation of state covers: ideal there.
    internal static Vent LawFor(Vent vent, FillHeat way) =>
        way == FillHeat.Wall && !(vent.GasAtStart is { Kelvins: < 200 }) ? vent : vent with { Properties = GasProperties.Ideal };

    private static WaterDrainResult DrainOf(Vent vent, double exponent)
    {
        double start = vent.From.ToAbsolute(vent.Ambient).Pascals, 
            share = vent.GasVolume / (vent.GasVolume + (vent.Chamber.Volume * vent.WaterThatLeaves.DecimalFractions));
        var least = Math.Max(start * Math.Pow(share, exponent), vent.SafePressure.ToAbsolute(vent.Ambient).Pascals) - vent.Ambient.Pascals;
        return new WaterDrain
        {
            From = vent.From, GasVolume = vent.GasVolume, WaterVolume = vent.Chamber.Volume * vent.WaterThatLeaves.DecimalFractions,
                Exponent = exponent,
                StopAt = vent.SafePressure,
            Ambient = vent.Ambient, EffectiveArea = Area.FromSquareMeters(WaterPassage.AreaM2(vent.Restrictor, least)),
            WaterDensity = Density.FromKilogramsPerCubicMeter(WaterPassage.Density),
        }.Run();
    }

    private static VentCurve Join(FillHeat way, WaterDrainResult drain, double[] kelvins, VentCurve? gas)
    {
        var after = drain.Time[^1];
        var celsius = kelvins.Select(k => k - 273.15);
        return new VentCurve(
            way,
            new("Time", "s", [.. drain.Time.Values, .. gas?.Time.Values.Skip(1).Select(t => t + after) ?? []]),
            new("Pressure", "bar gauge", [.. drain.Pressure.Values, .. gas?.Pressure.Values.Skip(1) ?? []]),
            new("Gas temperature", "°C", [.. celsius, .. gas?.Temperature.Values.Skip(1) ?? []]));
    }
}
