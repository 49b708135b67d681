using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;

namespace NotebookKit.Filling.Networks;

/// <summary>A line of a network in SI.</summary>
internal sealed class NetworkLine
{
    /// <summary>Share of the pressure ahead over which a valve that lets nothing back begins to pass, so that its flow has no
    /// corner.</summary>
    private const double SoftStart = 1e-6;

    private readonly FlowCurve _curve;
    private readonly RegulatorPart? _regulator;
    private readonly ReliefPart? _relief;
    private readonly double _setPa, _inletPa, _effect, _droopPa, _droopKgPerS, _reliefPa, _reliefSpanPa;

    public NetworkLine(PadLink link, PadNetwork pad, int waterAt)
    {
        Link = link;
        WaterAt = waterAt;
        List<string> names = [.. pad.Nodes.Select(n => n.Name)];
        (From, To) = (names.IndexOf(link.From), names.IndexOf(link.To));
        var passages = link.Parts.Select(p => p.Narrowest).OfType<IRestrictor>().ToList();
        _curve = passages.Skip(1).Aggregate(FlowCurve.Of(passages[0], pad.Gas), (curve, next) => curve.Then(FlowCurve.Of(next, pad.Gas)));
        // Good down to 0.1 bar.
        WaterM2 = WaterPassage.AreaM2(passages.Skip(1).Aggregate(passages[0], (chain, next) => new RestrictorChain(chain, next)), 1e4);
        Valves = [.. link.Parts.OfType<ValvePart>()];
        OneWay = link.IsOneWay;
        CrackingPa = link.Parts.OfType<CheckValvePart>().Sum(c => c.Cracking.Pascals);
        FromUnderWater = link.FromPort == PortPosition.UnderWater && pad.Nodes[From] is VesselNode;
        ToUnderWater = link.ToPort == PortPosition.UnderWater && pad.Nodes[To] is VesselNode;
        HoseM3 = HoseOf(link);
        if ((_regulator = link.Parts.OfType<RegulatorPart>().FirstOrDefault()) is { } r)
        {
            (_setPa, _effect, _inletPa) = (r.Set.Pascals, r.SupplyEffect, (r.SetAtInlet ?? r.Set).Pascals);
            (_droopPa, _droopKgPerS) = (r.Droop.Pascals, r.DroopFlow?.KilogramsPerSecond ?? 1);
        }

        if ((_relief = link.Parts.OfType<ReliefPart>().FirstOrDefault()) is { } v)
            (_reliefPa, _reliefSpanPa) = (v.Set.Pascals, v.Set.Pascals * v.Overpressure.DecimalFractions);
    }

    public PadLink Link { get; }

    public int From { get; }

    public int To { get; }

    /// <summary>Unknowns of a line's own water: its volume, its warmth, and what has gone past its hoses.</summary>
    public const int PerWater = 3, Past = 2;

    /// <summary>Where its own water stands among the unknowns; -1 where it has none.</summary>
    public int WaterAt { get; }

    public ValvePart[] Valves { get; }

    public bool OneWay { get; }

    public bool FromUnderWater { get; }

    public bool ToUnderWater { get; }

    public double CrackingPa { get; }

    /// <summary>Effective area for water, m².</summary>
    public double WaterM2 { get; }

    /// <summary>Water that its hoses hold, m³; 0 where it has none.</summary>
    public double HoseM3 { get; }

    /// <summary>Whether its hoses are full of water, so that what runs back goes on to what lies ahead of them.</summary>
    public bool IsFull { get; set; }

    /// <summary>The place that water which runs back past its hoses comes to; -1 where no way is open.</summary>
    public int Goal { get; set; } = -1;

    /// <summary>Head of the water above its port at the beginning and at the end, Pa.</summary>
    public double FromHeadPa { get; set; }

    public double ToHeadPa { get; set; }

    public bool Open { get; set; } = true;

    /// <summary>Whether it leads to a junction with no other open line.</summary>
    public bool IsDeadEnd { get; set; }

    public bool Passes => Open && !IsDeadEnd;

    public bool ShutForGood { get; set; }

    public bool LineIsWet { get; set; }

    public bool FromIsWet { get; set; }

    public bool ToIsWet { get; set; }

    /// <summary>Absolute pressure behind the regulator at a flow; that ahead where there is none.</summary>
    public double Ahead(double fromPa, double kgPerS, double ambientPa) => _regulator is null ? fromPa
        : Math.Min(fromPa, ambientPa + _setPa + _effect * (_inletPa - (fromPa - ambientPa)) - _droopPa * kgPerS / _droopKgPerS);

    /// <summary>By how much its relief valve is open [-]; 1 where it has none.</summary>
    public double Lift(double fromPa, double ambientPa) => _relief is null ? 1
        : Math.Clamp((fromPa - ambientPa - _reliefPa) / _reliefSpanPa, 0, 1);

    /// <summary>Mass flow of gas, kg/s; below 0 where it runs back.</summary>
    public double Gas(double fromPa, double fromK, double enthalpy, double toPa, double toK, double ambientPa, in FlowScale scale,
        GasLaw law)
    {
        if (fromPa <= toPa + CrackingPa)
            return OneWay || fromPa >= toPa ? 0 : -scale.At(toPa) * _curve.Flow(toPa, toK, fromPa);
        if (_relief is not null)
            return Lift(fromPa, ambientPa) is > 0 and var lift ? lift * scale.At(fromPa) * _curve.Flow(fromPa, fromK, toPa) : 0;

        var ahead = Ahead(fromPa, 0, ambientPa);
        var most = Forward(ahead, fromPa, fromK, enthalpy, toPa, scale, law);
        if (_droopPa == 0 || most == 0) return most;

        // What flows falls as the outlet droops, and the outlet droops as it flows: between nothing and the flow without droop.
        double low = 0, high = most, atLow = most,
            atHigh = Forward(Ahead(fromPa, most, ambientPa), fromPa, fromK, enthalpy, toPa, scale, law) - most;
        for (var i = 0; i < 60 && high - low > 1e-13 * most; i++)
        {
            var q = i % 3 == 2 ? 0.5 * (low + high) : low + (high - low) * atLow / (atLow - atHigh);
            var excess = Forward(Ahead(fromPa, q, ambientPa), fromPa, fromK, enthalpy, toPa, scale, law) - q;
            if (excess == 0) return q;
            if (excess > 0) (low, atLow) = (q, excess);
            else (high, atHigh) = (q, excess);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Whether water is followed in it: it stands there at the start, or runs back from a vessel into its hoses.</summary>
    public static bool FollowsWater(PadLink link, PadNetwork pad) => link.WaterInLine is not null
        || (link.ToPort == PortPosition.UnderWater && !link.IsOneWay
            && pad.Nodes.First(n => n.Name == link.To) is VesselNode && pad.Nodes.First(n => n.Name == link.From) is not VesselNode);

    private static double HoseOf(PadLink link) =>
        link.Parts.OfType<HosePart>().Sum(h => h.VolumeAt(Quantities.GaugePressure.Zero).CubicMeters);

    private double Forward(double aheadPa, double fromPa, double fromK, double enthalpy, double toPa, in FlowScale scale, GasLaw law)
    {
        var behindPa = toPa + CrackingPa;
        if (aheadPa <= behindPa) return 0;
        var kelvins = law.IsReal && aheadPa < fromPa ? law.ThrottledKelvins(fromPa, fromK, enthalpy, aheadPa) : fromK;
        var flow = scale.At(aheadPa) * _curve.Flow(aheadPa, kelvins, behindPa);
        var start = (aheadPa - behindPa) / (SoftStart * aheadPa);
        return OneWay && start < 1 ? flow * start * (2 - start) : flow;
    }
}
