using NotebookKit.Numerics;

namespace NotebookKit.Filling.Networks;

/// <summary>Pressures of the junctions, which hold nothing and give away what they get.</summary>
internal sealed partial class NetworkModel
{
    // The pressure at which a junction gives away what it gets; how far it moved, over itself.
    private double Settle(int junction)
    {
        double low = double.MaxValue, high = 0;
        foreach (var line in _lines)
        {
            if (!line.Open || (line.From != junction && line.To != junction)) continue;
            var there = line.From == junction ? _pascals[line.To] + line.ToHeadPa : _pascals[line.From] + line.FromHeadPa;
            (low, high) = (Math.Min(low, there), Math.Max(high, there));
        }

        var before = _pascals[junction];
        if (high <= low)
        {
            if (high > 0) _pascals[junction] = high;
            return 0;
        }

        var balance = new JunctionBalance(this, junction);
        var root = Near(ref balance, junction, low, high);
        if (double.IsNaN(root))
            root = BracketedRoot.TrySolve(ref balance, low, high, high * 1e-13, out var found) ? found.Root : before;
        balance.Value(root);
        return Math.Abs(root - before) / high;
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

    private readonly struct JunctionBalance(NetworkModel model, int junction) : IScalarFunction
    {
        public double Value(double x)
        {
            model._pascals[junction] = x;
            double inflow = 0, enthalpy = 0, kelvins = 0, outflow = 0, before = model._kelvins[junction];
            foreach (var line in model._lines)
            {
                if (!line.Open || (line.From != junction && line.To != junction)) continue;
                var q = model.Through(line);
                if (q == 0) continue;
                if (q > 0 == (line.From == junction))
                {
                    outflow += Math.Abs(q);
                    continue;
                }

                var other = line.From == junction ? line.To : line.From;
                inflow += Math.Abs(q);
                enthalpy += Math.Abs(q) * model._enthalpy[other];
                kelvins += Math.Abs(q) * model._kelvins[other];
            }

            if (inflow == 0) return -outflow;
            model._enthalpy[junction] = enthalpy / inflow;
            model._kelvins[junction] = model._law.IsReal
                ? model._law.KelvinsAtEnthalpy(x, enthalpy / inflow, kelvins / inflow)
                : kelvins / inflow;
            if (Math.Abs(model._kelvins[junction] - before) < 1e-9) return inflow - outflow;

            // What leaves does so at the temperature of what comes.
            outflow = 0;
            foreach (var line in model._lines)
            {
                if (!line.Open || (line.From != junction && line.To != junction)) continue;
                var q = model.Through(line);
                if (q > 0 == (line.From == junction)) outflow += Math.Abs(q);
            }

            return inflow - outflow;
        }
    }

    // Gas alone; none where water stands in its way.
    private double Through(NetworkLine line)
    {
        double from = _pascals[line.From] + line.FromHeadPa, to = _pascals[line.To] + line.ToHeadPa;
        return line.LineIsWet || (from < to && line.ToIsWet) ? 0
            : line.Gas(from, _kelvins[line.From], _enthalpy[line.From], to, _kelvins[line.To], _ambientPa, _scale, _law);
    }
}
