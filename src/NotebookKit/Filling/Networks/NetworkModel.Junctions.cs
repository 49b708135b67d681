using NotebookKit.Numerics;

namespace NotebookKit.Filling.Networks;

/// <summary>Pressures of the junctions, which hold nothing and give away what they get.</summary>
internal sealed partial class NetworkModel
{
    private readonly List<(int Junction, int Line)> _deadEnds = [];
    private readonly List<int> _roots = [];
    private readonly int[][] _next;
    private bool _looped;
    private double _lowestPa, _highestPa;

    // Which junctions are solved one inside the other in the stretch that begins now, and which stand at the end of a single line.
    private void Branch()
    {
        _deadEnds.Clear();
        _roots.Clear();
        _looped = false;
        List<int> left = [.. _junctions];
        foreach (var line in _lines) line.IsDeadEnd = false;
        List<int> LinesAt(int j) => [.. Enumerable.Range(0, _lines.Length).Where(l => _lines[l].Passes
            && (_lines[l].From == j || _lines[l].To == j))];
        for (var at = left.FindIndex(j => LinesAt(j).Count < 2); at >= 0; at = left.FindIndex(j => LinesAt(j).Count < 2))
        {
            var single = LinesAt(left[at]) is [var only] ? only : -1;
            if (single >= 0) _lines[single].IsDeadEnd = true;
            _deadEnds.Add((left[at], single));
            left.RemoveAt(at);
        }

        _deadEnds.Reverse();
        HashSet<int> seen = [];
        foreach (var root in left.Where(j => !seen.Contains(j)))
        {
            _roots.Add(root);
            Visit(root, -1);
        }

        void Visit(int j, int by)
        {
            seen.Add(j);
            List<int> next = [];
            foreach (var l in LinesAt(j).Where(l => l != by))
            {
                var other = _lines[l].From == j ? _lines[l].To : _lines[l].From;
                if (!left.Contains(other)) continue;
                if (seen.Contains(other))
                {
                    _looped = true;
                    continue;
                }

                next.Add(other);
                Visit(other, l);
            }

            _next[j] = [.. next];
        }
    }

    private void SettleAll()
    {
        (_lowestPa, _highestPa) = (double.MaxValue, 0);
        foreach (var line in _lines)
        {
            if (!line.Passes) continue;
            var (from, to) = (Pad.Nodes[line.From] is JunctionNode, Pad.Nodes[line.To] is JunctionNode);
            if (from == to) continue;
            var there = from ? _pascals[line.To] + line.ToHeadPa : _pascals[line.From] + line.FromHeadPa;
            (_lowestPa, _highestPa) = (Math.Min(_lowestPa, there), Math.Max(_highestPa, there));
        }

        // Junctions that nothing leads to keep what they have.
        for (var sweep = 0; sweep < 200 && _highestPa > 0; sweep++)
        {
            var moved = 0.0;
            foreach (var j in _roots) moved = Math.Max(moved, Settle(j));
            if (!_looped || moved < 1e-12) break;
        }

        foreach (var (junction, l) in _deadEnds)
        {
            _waterShare[junction] = 0;
            if (l < 0) continue;
            var line = _lines[l];
            _pascals[junction] = line.From == junction ? _pascals[line.To] + line.ToHeadPa : _pascals[line.From] + line.FromHeadPa;
        }
    }

    // The pressure at which a junction, with those beyond it, gives away what it gets; how far it moved, over itself.
    private double Settle(int junction)
    {
        var before = _pascals[junction];
        var balance = new JunctionBalance(this, junction);
        var root = _highestPa <= _lowestPa ? _highestPa : Near(ref balance, junction, _lowestPa, _highestPa);
        if (double.IsNaN(root))
            root = BracketedRoot.TrySolve(ref balance, _lowestPa, _highestPa, _highestPa * 1e-13, out var found) ? found.Root : before;
        balance.Value(root);
        return Math.Abs(root - before) / _highestPa;
    }

    // A stage further it lies near where it lay: secant steps from there, by the slope that was found last; not a number where they leave
    // the bracket.
    private double Near(ref JunctionBalance balance, int junction, double low, double high)
    {
        double x = _pascals[junction], slope = _slope[junction];
        if (!(x > low && x < high && slope < 0)) (x, slope) = (0.5 * (low + high), 0);
        var value = balance.Value(x);
        for (var i = 0; i < 12 && value != 0; i++)
        {
            var next = slope < 0 ? x - value / slope : x + (value > 0 ? 1e-4 : -1e-4) * (high - low);
            if (!(next > low && next < high)) return double.NaN;
            if (Math.Abs(next - x) <= 1e-13 * high) return next;
            var there = balance.Value(next);
            var found = (there - value) / (next - x);
            // Rounding alone is left where a step finds no slope.
            if (!(found < 0)) return Math.Abs(next - x) <= 1e-11 * high ? next : double.NaN;
            (x, value, slope, _slope[junction]) = (next, there, found, found);
        }

        return value == 0 ? x : double.NaN;
    }

    private void SettleBeyond(int junction)
    {
        foreach (var next in _next[junction]) Settle(next);
    }

    private readonly struct JunctionBalance(NetworkModel model, int junction) : IScalarFunction
    {
        public double Value(double x)
        {
            model._pascals[junction] = x;
            model.SettleBeyond(junction);
            double gas = 0, water = 0, enthalpy = 0, kelvins = 0, outflow = 0, before = model._kelvins[junction],
                share = model._waterShare[junction];
            foreach (var line in model._lines)
            {
                if (!line.Passes || (line.From != junction && line.To != junction)) continue;
                var q = model.Through(line);
                if ((q.Gas == 0 && q.Water == 0) || !Meets(line, q.Water, line.From == junction)) continue;
                if (q.Gas + q.Water > 0 == (line.From == junction))
                {
                    outflow += Math.Abs(q.Gas) + WaterDensity * Math.Abs(q.Water);
                    continue;
                }

                var other = line.From == junction ? line.To : line.From;
                gas += Math.Abs(q.Gas);
                water += WaterDensity * Math.Abs(q.Water);
                enthalpy += Math.Abs(q.Gas) * model._enthalpy[other];
                kelvins += Math.Abs(q.Gas) * model._kelvins[other];
            }

            model._waterShare[junction] = water == 0 ? 0 : water / (water + gas);
            if (gas + water == 0) return -outflow;
            if (gas > 0)
            {
                model._enthalpy[junction] = enthalpy / gas;
                model._kelvins[junction] = model._law.IsReal
                    ? model._law.KelvinsAtEnthalpy(x, enthalpy / gas, kelvins / gas)
                    : kelvins / gas;
            }

            if (Math.Abs(model._kelvins[junction] - before) < 1e-9 && model._waterShare[junction] == share) return gas + water - outflow;

            // What leaves does so at the temperature of what comes, and as wet.
            model.SettleBeyond(junction);
            outflow = 0;
            foreach (var line in model._lines)
            {
                if (!line.Passes || (line.From != junction && line.To != junction)) continue;
                var q = model.Through(line);
                if (q.Gas + q.Water > 0 == (line.From == junction) && Meets(line, q.Water, line.From == junction))
                    outflow += Math.Abs(q.Gas) + WaterDensity * Math.Abs(q.Water);
            }

            return gas + water - outflow;
        }
    }
}
