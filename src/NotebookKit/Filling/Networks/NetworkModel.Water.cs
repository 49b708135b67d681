using NotebookKit.Filling.Restrictors;

namespace NotebookKit.Filling.Networks;

/// <summary>Water that moves: out of vessels and lines, back into hoses, past them, and through junctions.</summary>
/// <remarks>A junction passes on what it gets: see <see cref="JunctionNode"/>.</remarks>
internal sealed partial class NetworkModel
{
    // Where the water of a node stands among the unknowns; -1 where it leaves the network. Its warmth stands behind it.
    private int WaterOf(int node) => StoreOf[node] is >= 0 and var s ? PerStore * s + Water : -1;

    // Gas, kg/s, and water, m³/s, through one line at the pressures of its ends; below 0 where they run back.
    private (double Gas, double Water) Through(NetworkLine line)
    {
        double from = _pascals[line.From] + line.FromHeadPa, to = _pascals[line.To] + line.ToHeadPa;
        var forward = from >= to;
        if (line.LineIsWet || (forward ? line.FromIsWet : line.ToIsWet)) return (0, WaterAlone(line, from, to));
        var gas = line.Gas(from, _kelvins[line.From], _enthalpy[line.From], to, _kelvins[line.To], _ambientPa, _scale, _law);
        var share = _waterShare[forward ? line.From : line.To];
        if (share == 0) return (gas, 0);
        var water = WaterDensity * WaterAlone(line, from, to);
        var mixture = (forward ? 1 : -1) * WetGas.KilogramsPerSecond(share, Math.Abs(gas), Math.Abs(water), _law.Gas);
        return ((1 - share) * mixture, share * mixture / WaterDensity);
    }

    private double WaterAlone(NetworkLine line, double from, double to)
    {
        if (from < to) return line.OneWay ? 0 : -Liquid(line.WaterM2, to - from);
        var drop = line.Ahead(from, 0, _ambientPa) - to - line.CrackingPa;
        return drop > 0 ? Liquid(line.WaterM2 * line.Lift(from, _ambientPa), drop) : 0;
    }

    // Whether what flows through a line comes from the junction at that end, or gets there: not where the line's own water moves, or hoses
    // fill.
    private static bool Meets(NetworkLine line, double water, bool atFrom) => water == 0 || (atFrom
        ? water > 0 ? !line.LineIsWet : line.IsFull || !line.ToIsWet
        : water > 0 || !line.LineIsWet);

    // Water of junctions, from the highest pressure down: what comes goes on to the last digit, as warm as it comes.
    private void PassOn(ReadOnlySpan<double> y)
    {
        if (_junctions.Length == 0 || Array.TrueForAll(_junctions, j => _waterShare[j] == 0)) return;
        Array.Sort(_junctions, (a, b) => _pascals[b].CompareTo(_pascals[a]));
        foreach (var j in _junctions)
        {
            double waterIn = 0, gasIn = 0, warmth = 0, waterOut = 0, gasOut = 0;
            for (var l = 0; l < _lines.Length; l++)
            {
                if (!Touches(l, j)) continue;
                double water = Math.Abs(_waterFlow[l]), gas = Math.Abs(_flow[l]);
                if (Leaves(l, j)) (waterOut, gasOut) = (waterOut + water, gasOut + gas);
                else (waterIn, gasIn, warmth) = (waterIn + water, gasIn + gas, warmth + water * WarmthOf(l, y));
            }

            _waterWarmth[j] = waterIn > 0 ? warmth / waterIn : 0;
            for (var l = 0; l < _lines.Length; l++)
            {
                if (!Touches(l, j)) continue;
                if (Leaves(l, j))
                {
                    if (waterOut > 0) _waterFlow[l] *= waterIn / waterOut;
                    if (gasOut > 0 && _waterShare[j] > 0) _flow[l] *= gasIn / gasOut;
                }
                else if (waterOut == 0) _waterFlow[l] = 0;
            }
        }
    }

    private bool Touches(int l, int junction) => (_lines[l].From == junction || _lines[l].To == junction)
        && (_flow[l] != 0 || _waterFlow[l] != 0) && Meets(_lines[l], _waterFlow[l], _lines[l].From == junction);

    private bool Leaves(int l, int junction) => _flow[l] + _waterFlow[l] > 0 == (_lines[l].From == junction);

    // Warmth of the water that a line carries, J/m³.
    private double WarmthOf(int l, ReadOnlySpan<double> y)
    {
        var (source, node) = SourceOf(_lines[l], _waterFlow[l]);
        return source < 0 ? _waterWarmth[node] : y[source] > 0 ? y[source + 1] / y[source] : 0;
    }

    // Where water comes from: its place among the unknowns, or -1 and the junction.
    private (int Source, int Node) SourceOf(NetworkLine line, double flow)
    {
        var wetEnd = flow > 0 ? line.FromIsWet : line.ToIsWet;
        var node = flow > 0 ? line.From : line.To;
        return (line.LineIsWet && (flow > 0 || !wetEnd) ? line.WaterAt : wetEnd ? WaterOf(node) : -1, node);
    }

    // Water and its warmth from where it is to where it goes.
    private void Carry(int l, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var (line, flow) = (_lines[l], _waterFlow[l]);
        if (flow == 0) return;
        double volume = Math.Abs(flow), warmth = volume * WarmthOf(l, y);
        if (SourceOf(line, flow).Source is >= 0 and var source)
        {
            dydt[source] -= volume;
            dydt[source + 1] -= warmth;
        }

        var past = flow < 0 && line.WaterAt >= 0 && (line.IsFull || !line.ToIsWet);
        if (past) dydt[line.WaterAt + NetworkLine.Past] += volume;
        var node = flow > 0 ? line.To : line.From;
        var goal = flow < 0 && !past && line.WaterAt >= 0 ? line.WaterAt : WaterOf(node);
        if (goal >= 0)
        {
            dydt[goal] += volume;
            dydt[goal + 1] += warmth;
        }
        else if (Pad.Nodes[node] is not JunctionNode)
        {
            dydt[TotalsAt + WaterOut] += volume;
            dydt[TotalsAt + EnthalpyIn] -= warmth;
        }
    }

    // Where water comes to that reaches a node by a line: on from a junction by the line that most flows through; -1 where none does.
    private int GoalOf(int node, NetworkLine by)
    {
        for (var steps = 0; Pad.Nodes[node] is JunctionNode; steps++)
        {
            var (most, next) = (0.0, -1);
            for (var l = 0; l < _lines.Length; l++)
            {
                if (_lines[l] == by || !Touches(l, node) || !Leaves(l, node)) continue;
                var flow = Math.Abs(_flow[l]) + WaterDensity * Math.Abs(_waterFlow[l]);
                if (flow > most) (most, next) = (flow, l);
            }

            if (next < 0 || steps > Nodes) return -1;
            by = _lines[next];
            node = by.From == node ? by.To : by.From;
        }

        return node;
    }

    // The last pascals before water stands still: less than the root, without a corner at nothing and where it meets the root.
    private static double Liquid(double areaM2, double drop)
    {
        var share = drop / StillWaterPa;
        return areaM2 * (share < 1 ? share * share * (2.5 - 1.5 * share) * Math.Sqrt(2 * StillWaterPa / WaterDensity)
            : Math.Sqrt(2 * drop / WaterDensity));
    }
}
