using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Networks;

/// <summary>A network in SI, ready for integrations. Holds what one right-hand side writes, so one run has one model.</summary>
internal sealed partial class NetworkModel
{
    public const int PerStore = 5, Mass = 0, Kelvins = 1, Wall = 2, Water = 3, Warmth = 4;

    /// <summary>Sums over the whole network: heat taken up, enthalpy and mass that came in from supplies less what went out, work done on
    /// water, water that went out.</summary>
    public const int Totals = 5, Heat = 0, EnthalpyIn = 1, MassIn = 2, WaterWork = 3, WaterOut = 4;

    private const double WaterDensity = WaterPassage.Density, StillWaterPa = 100, Dry = 1e-9, Wetted = 1e-6, Slack = 1e-7;

    private const double UsualTolerance = 1e-7;

    private readonly NetworkStore[] _stores;
    private readonly NetworkLine[] _lines;
    private readonly FlowScale _scale;
    private readonly GasLaw _law;
    private readonly double _ambientPa, _ambientK;
    private readonly int[] _junctions;
    private readonly GasPoint[] _gas;
    private int[] _coupled = [];
    private readonly double[] _pascals, _kelvins, _enthalpy, _flow, _waterFlow, _massRate, _inflow, _warmIn, _heatIn, _slope,
        _waterShare, _waterWarmth;

    public NetworkModel(PadNetwork pad)
    {
        Pad = pad;
        _law = new GasLaw(pad.Gas, pad.Properties);
        (_ambientPa, _ambientK) = (pad.Ambient.Pascals, pad.Temperature.Kelvins);
        _stores = [.. pad.Nodes.Where(n => n is VesselNode or CylinderNode).Select(n => new NetworkStore(n, pad, _law))];
        _gas = new GasPoint[_stores.Length];
        Nodes = pad.Nodes.Count;
        StoreOf = [.. pad.Nodes.Select(n => Array.FindIndex(_stores, s => s.Node == n))];
        _junctions = [.. Enumerable.Range(0, Nodes).Where(i => pad.Nodes[i] is JunctionNode)];
        var at = PerStore * _stores.Length + Totals;
        _lines = new NetworkLine[pad.Links.Count];
        for (var l = 0; l < _lines.Length; l++)
        {
            var follows = NetworkLine.FollowsWater(pad.Links[l], pad);
            _lines[l] = new NetworkLine(pad.Links[l], pad, follows ? at : -1);
            if (follows) at += NetworkLine.PerWater;
        }

        Unknowns = at;
        _next = new int[Nodes][];
        (_pascals, _kelvins, _enthalpy) = (new double[Nodes], new double[Nodes], new double[Nodes]);
        (_massRate, _inflow, _warmIn, _heatIn) = (new double[Nodes], new double[Nodes], new double[Nodes], new double[Nodes]);
        (_slope, _waterShare, _waterWarmth) = (new double[Nodes], new double[Nodes], new double[Nodes]);
        (_flow, _waterFlow) = (new double[_lines.Length], new double[_lines.Length]);
        var highest = pad.Nodes.Max(n => n switch
        {
            CylinderNode c => c.Cylinder.Pressure.Pascals, SupplyNode s => s.Pressure.Pascals,
                VesselNode v => v.Chamber.RatedPressure.Pascals,
            _ => 0,
        });
        _scale = new FlowScale(_law, highest + _ambientPa, _ambientK);
        for (var i = 0; i < Nodes; i++)
        {
            var fixedPa = pad.Nodes[i] is SupplyNode supply ? supply.Pressure.Pascals + _ambientPa : _ambientPa;
            (_pascals[i], _kelvins[i], _enthalpy[i]) = (fixedPa, _ambientK, _law.AtPressure(fixedPa, _ambientK).Enthalpy);
        }
    }

    public PadNetwork Pad { get; }

    public int Nodes { get; }

    public int Unknowns { get; }

    /// <summary>Which store a node is; -1 for one that stores nothing.</summary>
    public int[] StoreOf { get; }

    public IReadOnlyList<NetworkStore> Stores => _stores;

    public IReadOnlyList<NetworkLine> Lines => _lines;

    public int TotalsAt => PerStore * _stores.Length;

    public static int UnknownsOf(PadNetwork pad) =>
        PerStore * pad.Nodes.Count(n => n is VesselNode or CylinderNode) + Totals
            + NetworkLine.PerWater * pad.Links.Count(l => NetworkLine.FollowsWater(l, pad));

    public double[] Start()
    {
        var y = new double[Unknowns];
        for (var s = 0; s < _stores.Length; s++) _stores[s].Start(y.AsSpan(PerStore * s, PerStore));
        foreach (var line in _lines.Where(l => l.WaterAt >= 0)) y[line.WaterAt] = line.Link.WaterInLine?.CubicMeters ?? 0;
        return y;
    }

    /// <summary>What is asked of a step's estimate for an error: the estimate is of order 3, the step of order 5 and far better; it is a
    /// mean over all unknowns, of which some stand still.</summary>
    public static double StepTolerance(double tolerance) => Math.Max(1e-13, 0.044 * Math.Pow(tolerance, 2.0 / 3));

    public double[] Tolerances()
    {
        var tolerance = new double[Unknowns];
        Array.Fill(tolerance, 1e-9);
        for (var s = 0; s < _stores.Length; s++)
        {
            double[] own = [1e-10, 1e-6, 1e-6, 1e-10, 1e-4];
            own.CopyTo(tolerance, PerStore * s);
        }

        double[] totals = [1e-3, 1e-3, 1e-10, 1e-3, 1e-9];
        totals.CopyTo(tolerance, TotalsAt);
        foreach (var line in _lines.Where(l => l.WaterAt >= 0)) tolerance[line.WaterAt + 1] = 1e-4;
        // A tighter run is tighter in small numbers, too.
        var share = Math.Min(1, Pad.Tolerance / UsualTolerance) * StepTolerance(Pad.Tolerance) / Pad.Tolerance;
        return Array.ConvertAll(tolerance, t => t * share);
    }

    public GasPoint Gas(int store, ReadOnlySpan<double> y) => _stores[store].Gas(_law, y.Slice(PerStore * store, PerStore));

    /// <summary>Absolute pressure of a node at a state, after <see cref="Solve"/>, Pa.</summary>
    public double PascalsOf(int node) => _pascals[node];

    /// <summary>Mass flow of gas through a line, after <see cref="Solve"/>, kg/s; below 0 where it runs back.</summary>
    public double FlowOf(int line) => _flow[line];

    /// <summary>Says of every line whether its valves are open and whether water comes first, for the stretch that begins now.</summary>
    public void Prepare(double t, Span<double> y)
    {
        foreach (var line in _lines)
        {
            line.Open = !line.ShutForGood && line.Valves.All(v => v.IsOpenAt(t));
            line.LineIsWet = line.WaterAt >= 0 && y[line.WaterAt] > 1.5 * Dry;
            line.IsFull = line.LineIsWet && y[line.WaterAt] >= line.HoseM3 - (line.IsFull ? 0.99 * Slack : Dry);
            line.FromIsWet = line.FromUnderWater && y[PerStore * StoreOf[line.From] + Water] > Wetted;
            line.ToIsWet = line.ToUnderWater && y[PerStore * StoreOf[line.To] + Water] > Wetted;
        }

        if (_junctions.Length > 0) Branch();
        var water = _lines.Any(l => l.LineIsWet || l.FromUnderWater || l.ToUnderWater);
        var warm = _stores.Any(s => s.FollowsWater);
        _coupled = [.. Enumerable.Range(0, _stores.Length).SelectMany(s => new[] { (Mass, true), (Kelvins, true),
            (Wall, _stores[s].HeatsWall), (Water, water), (Warmth, _stores[s].FollowsWater || (warm && water)) }
            .Where(u => u.Item2).Select(u => PerStore * s + u.Item1))];
        if (!_lines.Any(l => l.LineIsWet) || !Solve(y)) return;
        foreach (var line in _lines.Where(l => l.LineIsWet && !l.OneWay))
        {
            if (GoalOf(line.From, line) is >= 0 and var goal) line.Goal = goal;
        }
    }

    /// <summary>Unknowns that rates depend on in the stretch that begins now: what a store holds, its wall where heat passes to it, and
    /// water where any may move.</summary>
    public ReadOnlySpan<int> Coupled => _coupled;

    /// <summary>Events of water a line has: of its own water, of its hoses, of the vessel that its port lies in.</summary>
    public const int WaterEvents = 3;

    /// <summary>When a line's own water is used up or has come, its hoses have filled or aren't full any more, or the water over its port
    /// is used up or has come: rises through zero; below it throughout where there is no such water.</summary>
    public double WaterEvent(int line, int kind, ReadOnlySpan<double> y)
    {
        var l = _lines[line];
        if (kind == 2)
        {
            return l.FromUnderWater ? FromEvent(l.FromIsWet, y[WaterOf(l.From)])
                : l.ToUnderWater && !l.OneWay ? FromEvent(l.ToIsWet, y[WaterOf(l.To)]) : -1;
        }

        if (l.WaterAt < 0) return -1;
        var water = y[l.WaterAt];
        if (kind == 0) return l.LineIsWet ? Dry - water : water - 2 * Dry;
        return !l.LineIsWet ? -1 : l.IsFull ? l.HoseM3 - Slack - water : water - l.HoseM3;
    }

    /// <summary>Moves on the last of the water where an event said that it is used up; whether hoses are full of water now.</summary>
    public bool Empty(int line, Span<double> y)
    {
        var l = _lines[line];
        if (l.LineIsWet && y[l.WaterAt] <= 1.5 * Dry)
        {
            var back = _waterFlow[line] < 0;
            var goal = GoalOf(back ? l.From : l.To, l);
            if (back && goal >= 0) y[l.WaterAt + NetworkLine.Past] += y[l.WaterAt];
            Pour(l.WaterAt, goal, y);
        }
        else if (l.FromIsWet && y[PerStore * StoreOf[l.From] + Water] <= 1.5 * Dry)
        {
            Pour(PerStore * StoreOf[l.From] + Water, GoalOf(l.To, l), y);
        }
        else if (l.ToIsWet && !l.OneWay && y[PerStore * StoreOf[l.To] + Water] <= 1.5 * Dry)
        {
            var at = PerStore * StoreOf[l.To] + Water;
            if (l.WaterAt < 0) Pour(at, l.From, y);
            else PourInto(at, l.WaterAt, y);
        }

        return _waterFlow[line] < 0 && l.WaterAt >= 0 && y[l.WaterAt] >= l.HoseM3 - Dry;
    }

    // What no way is open to stays where it is.
    private void Pour(int from, int node, Span<double> y)
    {
        if (node >= 0) PourInto(from, WaterOf(node), y);
    }

    private void PourInto(int from, int to, Span<double> y)
    {
        if (to >= 0) (y[to], y[to + 1]) = (y[to] + y[from], y[to + 1] + y[from + 1]);
        else
        {
            y[TotalsAt + WaterOut] += y[from];
            y[TotalsAt + EnthalpyIn] -= y[from + 1];
        }

        (y[from], y[from + 1]) = (0, 0);
    }

    private static double FromEvent(bool wet, double water) => wet ? Dry - water : water - 2 * Wetted;

    /// <summary>Pressures of all nodes and flows of all lines.</summary>
    public bool Solve(ReadOnlySpan<double> y)
    {
        for (var i = 0; i < Nodes; i++)
        {
            if (StoreOf[i] is not (>= 0 and var s)) continue;
            if (!(y[PerStore * s] > 0 && y[PerStore * s + Kelvins] > 1 && y[PerStore * s + Kelvins] < 5000)) return false;
            var gas = _gas[s] = Gas(s, y);
            (_pascals[i], _kelvins[i], _enthalpy[i]) = (gas.Pascals, gas.Kelvins, gas.Enthalpy);
        }

        foreach (var line in _lines)
        {
            line.FromHeadPa = line.FromIsWet ? HeadOf(line.From, y) : 0;
            line.ToHeadPa = line.ToIsWet ? HeadOf(line.To, y) : 0;
        }

        if (_junctions.Length > 0) SettleAll();
        for (var l = 0; l < _lines.Length; l++) (_flow[l], _waterFlow[l]) = _lines[l].Passes ? Through(_lines[l]) : (0, 0);
        PassOn(y);
        return true;
    }

    private double HeadOf(int node, ReadOnlySpan<double> y) => StoreOf[node] is >= 0 and var s
        ? _stores[s].HeadPaPerM3 * y[PerStore * s + Water] : 0;

    public void Derivatives(ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt.Clear();
        if (!Solve(y))
        {
            dydt[0] = double.NaN;
            return;
        }

        Array.Clear(_massRate);
        Array.Clear(_inflow);
        Array.Clear(_warmIn);
        Array.Clear(_heatIn);
        var totals = dydt[TotalsAt..];
        for (var l = 0; l < _lines.Length; l++)
        {
            Move(_lines[l], _flow[l], y, dydt);
            Carry(l, y, dydt);
        }

        for (var i = 0; i < Nodes; i++)
        {
            if (StoreOf[i] is not (>= 0 and var s)) continue;
            var at = PerStore * s;
            _stores[s].Rates(_gas[s], y.Slice(at, PerStore), dydt.Slice(at, PerStore), totals,
                new(_massRate[i], _heatIn[i], _inflow[i], _inflow[i] > 0 ? _warmIn[i] / _inflow[i] : _kelvins[i], _ambientK));
        }
    }

    // Mass and enthalpy from one end of a line to the other.
    private void Move(NetworkLine line, double flow, ReadOnlySpan<double> y, Span<double> dydt)
    {
        if (flow == 0) return;
        var (up, down, wet) = flow > 0 ? (line.From, line.To, line.ToIsWet) : (line.To, line.From, line.FromIsWet);
        double mass = Math.Abs(flow), energy = mass * _enthalpy[up], arrives = energy, kelvins = _kelvins[up];
        _massRate[up] -= mass;
        _massRate[down] += mass;
        _heatIn[up] -= energy;
        _inflow[down] += mass;
        if (wet && StoreOf[down] is >= 0 and var s && _stores[s].FollowsWater)
        {
            // Gas that comes up through water arrives as warm as the water.
            kelvins = _stores[s].WaterKelvins(y.Slice(PerStore * s, PerStore));
            arrives = mass * _law.AtPressure(_pascals[down], kelvins).Enthalpy;
            dydt[PerStore * s + Warmth] -= arrives - energy;
        }

        _heatIn[down] += arrives;
        _warmIn[down] += mass * kelvins;
        Outside(up, mass, energy, dydt[TotalsAt..]);
        Outside(down, -mass, -energy, dydt[TotalsAt..]);
    }

    private void Outside(int node, double mass, double energy, Span<double> totals)
    {
        if (StoreOf[node] >= 0 || Pad.Nodes[node] is JunctionNode) return;
        totals[MassIn] += mass;
        totals[EnthalpyIn] += energy;
    }
}
