using NotebookKit.Filling.Restrictors;

namespace NotebookKit.Filling.Networks;

/// <summary>Water that moves: out of vessels and lines, back into hoses, and past them.</summary>
internal sealed partial class NetworkModel
{
    // Where the water of a node stands among the unknowns; -1 where it leaves the network. Its warmth stands behind it.
    private int WaterOf(int node) => StoreOf[node] is >= 0 and var s ? PerStore * s + Water : -1;

    // Into a vessel, or into hoses; past these where they are full, or where gas comes behind the water that stands in them.
    private void RunBack(int l, NetworkLine line, double from, double to)
    {
        if (line.OneWay) return;
        if (line.ToIsWet && !line.IsFull)
        {
            if (line.WaterAt >= 0 || WaterOf(line.From) >= 0) _waterFlow[l] = -Liquid(line.WaterM2, to - from);
        }
        else if (line.Beyond is { } way)
        {
            var drop = to - _pascals[way.Node] - way.HeadPa - way.CrackingPa;
            if (drop > 0) _waterFlow[l] = -Liquid(way.AreaM2, drop);
        }
    }

    // Water and its warmth from where it is to where it goes.
    private void Carry(NetworkLine line, double flow, ReadOnlySpan<double> y, Span<double> dydt)
    {
        if (flow == 0) return;
        var past = flow < 0 && (line.IsFull || !line.ToIsWet);
        var source = flow < 0 && line.ToIsWet ? WaterOf(line.To) : line.LineIsWet ? line.WaterAt : WaterOf(line.From);
        var goal = flow > 0 ? WaterOf(line.To) : past ? WaterOf(line.Beyond!.Node)
            : line.WaterAt >= 0 ? line.WaterAt : WaterOf(line.From);
        double volume = Math.Abs(flow), warmth = y[source] > 0 ? volume * y[source + 1] / y[source] : 0;
        dydt[source] -= volume;
        dydt[source + 1] -= warmth;
        if (past) dydt[line.WaterAt + NetworkLine.Past] += volume;
        if (goal >= 0)
        {
            dydt[goal] += volume;
            dydt[goal + 1] += warmth;
            return;
        }

        dydt[TotalsAt + WaterOut] += volume;
        dydt[TotalsAt + EnthalpyIn] -= warmth;
    }

    // Where water goes that runs back past a line's hoses: into what the line begins at, or on from a junction to the place of the lowest
    // pressure that a way leads to. Hoses on that way count as full.
    private WaterWay? WayBeyond(NetworkLine line)
    {
        if (Pad.Nodes[line.From] is not JunctionNode) return new(line.From, null, line.WaterM2, 0);
        WaterWay? best = null;
        Walk(line.From, line, line.Passage, 0);
        return best;

        void Walk(int junction, NetworkLine by, IRestrictor passage, double cracking)
        {
            foreach (var next in _lines)
            {
                if (next == by || !next.Open || (next.From != junction && next.To != junction)) continue;
                var forward = next.From == junction;
                if (forward ? next.Link.Parts.Any(p => p is ReliefPart or RegulatorPart) : next.OneWay) continue;
                var node = forward ? next.To : next.From;
                var (held, cracks) = (new RestrictorChain(passage, next.Passage), cracking + (forward ? next.CrackingPa : 0));
                if (Pad.Nodes[node] is JunctionNode) Walk(node, next, held, cracks);
                else if (best is null || _pascals[node] + cracks < _pascals[best.Node] + best.CrackingPa)
                    best = new(node, next, NetworkLine.AreaFor(held), cracks);
            }
        }
    }

    // The last pascals before water stands still: less than the root, without a corner at nothing and where it meets the root.
    private static double Liquid(double areaM2, double drop)
    {
        var share = drop / StillWaterPa;
        return areaM2 * (share < 1 ? share * share * (2.5 - 1.5 * share) * Math.Sqrt(2 * StillWaterPa / WaterDensity)
            : Math.Sqrt(2 * drop / WaterDensity));
    }
}
