using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Networks;

/// <summary>A network in SI, ready for integrations. Holds what one right-hand side writes, so one run has one model.</summary>
internal sealed partial class NetworkModel
{
    public const int PerStore = 4, Mass = 0, Kelvins = 1, Wall = 2, Water = 3;

    /// <summary>Sums over the whole network: heat taken up, enthalpy and mass that came in from supplies less what went out, work done on
    /// water, water that went out.</summary>
    public const int Totals = 5, Heat = 0, EnthalpyIn = 1, MassIn = 2, WaterWork = 3, WaterOut = 4;

    private const double WaterDensity = WaterPassage.Density, LinearWaterPa = 100, Dry = 1e-9, Wetted = 1e-6;

    private const double UsualTolerance = 1e-7;

    private readonly NetworkStore[] _stores;
    private readonly NetworkLine[] _lines;
    private readonly FlowScale _scale;
    private readonly GasLaw _law;
    private readonly double _ambientPa, _ambientK;
    private readonly int[] _junctions;
    private int[] _coupled = [];
    private readonly double[] _pascals, _kelvins, _enthalpy, _flow, _waterFlow, _massRate, _inflow, _warmIn, _heatIn, _slope;

    public NetworkModel(PadNetwork pad)
    {
        Pad = pad;
        _law = new GasLaw(pad.Gas, pad.Properties);
        (_ambientPa, _ambientK) = (pad.Ambient.Pascals, pad.Temperature.Kelvins);
        _stores = [.. pad.Nodes.Where(n => n is VesselNode or CylinderNode).Select(n => new NetworkStore(n, pad, _law))];
        Nodes = pad.Nodes.Count;
        StoreOf = [.. pad.Nodes.Select(n => Array.FindIndex(_stores, s => s.Node == n))];
        _junctions = [.. Enumerable.Range(0, Nodes).Where(i => pad.Nodes[i] is JunctionNode)];
        var at = PerStore * _stores.Length + Totals;
        _lines = [.. pad.Links.Select(l => new NetworkLine(l, pad, NetworkLine.FollowsWater(l, pad) ? at++ : -1))];
        Unknowns = at;
        (_pascals, _kelvins, _enthalpy) = (new double[Nodes], new double[Nodes], new double[Nodes]);
        (_massRate, _inflow, _warmIn, _heatIn) = (new double[Nodes], new double[Nodes], new double[Nodes], new double[Nodes]);
        _slope = new double[Nodes];
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
        PerStore * pad.Nodes.Count(n => n is VesselNode or CylinderNode) + Totals + pad.Links.Count(l => NetworkLine.FollowsWater(l, pad));

    public double[] Start()
    {
        var y = new double[Unknowns];
        for (var s = 0; s < _stores.Length; s++) _stores[s].Start(y.AsSpan(PerStore * s, PerStore));
        foreach (var line in _lines.Where(l => l.WaterAt >= 0)) y[line.WaterAt] = line.Link.WaterInLine?.CubicMeters ?? 0;
        return y;
    }

    /// <summary>What is asked of a step's estimate for an error: the estimate is of order 3, the step of order 5 and far better.</summary>
    public static double StepTolerance(double tolerance) => Math.Max(1e-13, 0.05 * Math.Pow(tolerance, 2.0 / 3));

    public double[] Tolerances()
    {
        var tolerance = new double[Unknowns];
        Array.Fill(tolerance, 1e-9);
        for (var s = 0; s < _stores.Length; s++)
        {
            double[] own = [1e-10, 1e-6, 1e-6, 1e-10];
            own.CopyTo(tolerance, PerStore * s);
        }

        double[] totals = [1e-3, 1e-3, 1e-10, 1e-3, 1e-9];
        totals.CopyTo(tolerance, TotalsAt);
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
            line.IsFull = line.LineIsWet && line.Link.WaterInLine is null && y[line.WaterAt] >= line.HoseM3 - Dry;
            line.FromIsWet = line.FromUnderWater && y[PerStore * StoreOf[line.From] + Water] > Wetted;
            line.ToIsWet = line.ToUnderWater && y[PerStore * StoreOf[line.To] + Water] > Wetted;
        }

        var water = _lines.Any(l => l.LineIsWet || l.FromUnderWater || l.ToUnderWater);
        _coupled = [.. Enumerable.Range(0, _stores.Length).SelectMany(s => new[] { (Mass, true), (Kelvins, true),
            (Wall, _stores[s].HeatsWall), (Water, water) }.Where(u => u.Item2).Select(u => PerStore * s + u.Item1))];
    }

    /// <summary>Unknowns that rates depend on in the stretch that begins now: what a store holds, its wall where heat passes to it, and
    /// water where any may move.</summary>
    public ReadOnlySpan<int> Coupled => _coupled;

    /// <summary>When the water ahead of a line is used up, or has come to it, or has filled its hoses: rises through zero.</summary>
    public double WaterEvent(int line, ReadOnlySpan<double> y)
    {
        var l = _lines[line];
        if (l.WaterAt < 0) return VesselEvent(l, y);
        var water = y[l.WaterAt];
        if (!l.LineIsWet) return Math.Max(VesselEvent(l, y), water - 2 * Dry);
        var used = l.IsFull ? Dry - water : Math.Max(Dry - water, water - l.HoseM3);
        return l.ToUnderWater && !l.OneWay ? Math.Max(used, VesselEvent(l, y)) : used;
    }

    private double VesselEvent(NetworkLine l, ReadOnlySpan<double> y) =>
        l.FromUnderWater ? FromEvent(l.FromIsWet, y[PerStore * StoreOf[l.From] + Water])
        : l.ToUnderWater && !l.OneWay ? FromEvent(l.ToIsWet, y[PerStore * StoreOf[l.To] + Water]) : -1;

    /// <summary>Moves on the last of the water where an event said that it is used up; whether hoses are full of water now.</summary>
    public bool Empty(int line, Span<double> y)
    {
        var l = _lines[line];
        if (l.LineIsWet && y[l.WaterAt] <= 1.5 * Dry) Pour(l.WaterAt, l.To, y);
        else if (l.FromIsWet && y[PerStore * StoreOf[l.From] + Water] <= 1.5 * Dry) Pour(PerStore * StoreOf[l.From] + Water, l.To, y);
        else if (l.ToIsWet && !l.OneWay && y[PerStore * StoreOf[l.To] + Water] <= 1.5 * Dry)
        {
            var at = PerStore * StoreOf[l.To] + Water;
            if (l.WaterAt < 0) Pour(at, l.From, y);
            else (y[l.WaterAt], y[at]) = (y[l.WaterAt] + y[at], 0);
        }

        return l.WaterAt >= 0 && l.Link.WaterInLine is null && y[l.WaterAt] >= l.HoseM3 - Dry;
    }

    private void Pour(int from, int node, Span<double> y)
    {
        y[StoreOf[node] is >= 0 and var store ? PerStore * store + Water : TotalsAt + WaterOut] += y[from];
        y[from] = 0;
    }

    private static double FromEvent(bool wet, double water) => wet ? Dry - water : water - 2 * Wetted;

    /// <summary>Pressures of all nodes and flows of all lines.</summary>
    public bool Solve(ReadOnlySpan<double> y)
    {
        for (var i = 0; i < Nodes; i++)
        {
            if (StoreOf[i] is not (>= 0 and var s)) continue;
            if (!(y[PerStore * s] > 0 && y[PerStore * s + Kelvins] > 1 && y[PerStore * s + Kelvins] < 5000)) return false;
            var gas = Gas(s, y);
            (_pascals[i], _kelvins[i], _enthalpy[i]) = (gas.Pascals, gas.Kelvins, gas.Enthalpy);
        }

        foreach (var line in _lines)
        {
            line.FromHeadPa = line.FromIsWet ? HeadOf(line.From, y) : 0;
            line.ToHeadPa = line.ToIsWet ? HeadOf(line.To, y) : 0;
        }

        for (var sweep = 0; sweep < (_junctions.Length > 1 ? 200 : 1); sweep++)
        {
            var moved = 0.0;
            foreach (var j in _junctions) moved = Math.Max(moved, Settle(j));
            if (moved < 1e-12) break;
        }

        for (var l = 0; l < _lines.Length; l++) Pass(l);
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
        Span<double> waterRate = stackalloc double[_stores.Length];
        waterRate.Clear();
        var totals = dydt[TotalsAt..];
        for (var l = 0; l < _lines.Length; l++)
        {
            var line = _lines[l];
            Move(line, _flow[l], totals);
            if (_waterFlow[l] == 0) continue;
            // Out of the line or of what it begins at; back into what it begins at where that is a vessel, else into its hoses.
            var ahead = StoreOf[line.From];
            if (line.WaterAt >= 0 && (_waterFlow[l] < 0 || line.LineIsWet)) dydt[line.WaterAt] -= _waterFlow[l];
            else if (ahead >= 0) waterRate[ahead] -= _waterFlow[l];
            if (StoreOf[line.To] is >= 0 and var to) waterRate[to] += _waterFlow[l];
            else totals[WaterOut] += _waterFlow[l];
        }

        for (var i = 0; i < Nodes; i++)
        {
            if (StoreOf[i] is not (>= 0 and var s)) continue;
            var at = PerStore * s;
            _stores[s].Rates(_law, y.Slice(at, PerStore), dydt.Slice(at, PerStore), totals,
                new(_massRate[i], _heatIn[i], _inflow[i], _inflow[i] > 0 ? _warmIn[i] / _inflow[i] : _kelvins[i], waterRate[s], _ambientK));
        }
    }

    // Mass and enthalpy from one end of a line to the other.
    private void Move(NetworkLine line, double flow, Span<double> totals)
    {
        if (flow == 0) return;
        var (up, down) = flow > 0 ? (line.From, line.To) : (line.To, line.From);
        double mass = Math.Abs(flow), energy = mass * _enthalpy[up];
        _massRate[up] -= mass;
        _massRate[down] += mass;
        _heatIn[up] -= energy;
        _heatIn[down] += energy;
        _inflow[down] += mass;
        _warmIn[down] += mass * _kelvins[up];
        Outside(up, mass, energy, totals);
        Outside(down, -mass, -energy, totals);
    }

    private void Outside(int node, double mass, double energy, Span<double> totals)
    {
        if (StoreOf[node] >= 0 || Pad.Nodes[node] is JunctionNode) return;
        totals[MassIn] += mass;
        totals[EnthalpyIn] += energy;
    }

    // Gas or water through one line at the pressures of its ends.
    private void Pass(int l)
    {
        var line = _lines[l];
        (_flow[l], _waterFlow[l]) = (0, 0);
        if (!line.Open) return;
        double from = _pascals[line.From] + line.FromHeadPa, to = _pascals[line.To] + line.ToHeadPa;
        if (line.LineIsWet || (from >= to && line.FromIsWet))
        {
            var drop = line.Ahead(from, 0, _ambientPa) - to - line.CrackingPa;
            if (drop > 0) _waterFlow[l] = Liquid(line, drop);
            else if (from < to && line.ToIsWet) RunBack(l, line, to - from);
        }
        else if (from < to && line.ToIsWet)
        {
            RunBack(l, line, to - from);
        }
        else
        {
            _flow[l] = line.Gas(from, _kelvins[line.From], to, _kelvins[line.To], _ambientPa, _scale, _law);
        }
    }

    // Into a vessel, or into hoses until these are full; a line without either isn't followed, and its findings say so.
    private void RunBack(int l, NetworkLine line, double drop)
    {
        if (line.OneWay || line.IsFull) return;
        if (line.WaterAt >= 0 || Pad.Nodes[line.From] is VesselNode) _waterFlow[l] = -Liquid(line, drop);
    }

    private static double Liquid(NetworkLine line, double drop) => line.WaterM2 * (drop < LinearWaterPa
        ? drop / LinearWaterPa * Math.Sqrt(2 * LinearWaterPa / WaterDensity) : Math.Sqrt(2 * drop / WaterDensity));
}
