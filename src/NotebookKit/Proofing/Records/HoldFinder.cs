using MathNet.Numerics.Statistics;
using NotebookKit.Proofing.Plans;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>Finds the planned holds in a gauge log and reads each of them: how long, how far it fell, what fell suddenly.</summary>
internal static class HoldFinder
{
    private const int Neighbours = 4;

    /// <summary>First and last row of each planned hold in order; none where a step isn't in the log.</summary>
    public static IReadOnlyList<(int First, int Last)?> Rows(IReadOnlyList<ProofStep> steps, int proofStep, double[] seconds, double[] bar,
        double gaugeErrorBar)
    {
        var found = new (int First, int Last)?[steps.Count];
        var start = 0;
        for (var s = 0; s < steps.Count; s++)
        {
            var wanted = steps[s].Pressure.Bar;
            var band = HoldBand.Bar(wanted, s > proofStep, gaugeErrorBar);
            (int First, int Last)? longest = null;
            for (var i = start; i < bar.Length;)
            {
                if (Math.Abs(bar[i] - wanted) > band)
                {
                    i++;
                    continue;
                }

                var first = i;
                while (i < bar.Length && Math.Abs(bar[i] - wanted) <= band) i++;
                if (longest is not { } l || seconds[i - 1] - seconds[first] > seconds[l.Last] - seconds[l.First]) longest = (first, i - 1);

                // On the way up the next step comes after this one: the first stay of half the planned time is it.
                if (seconds[i - 1] - seconds[first] >= 0.5 * steps[s].Hold.Seconds) break;
            }

            if (longest is not { } hold || hold.Last - hold.First < 2 * Neighbours) continue;
            found[s] = Trim(hold, bar, gaugeErrorBar);
            start = hold.Last + 1;
        }

        return found;
    }

    /// <summary>Reads one hold.</summary>
    public static HoldReading Read(ProofStep step, (int First, int Last) rows, double[] seconds, double[] bar, double[]? celsius,
        FilledVessel filled, double gaugeErrorBar)
    {
        var n = rows.Last - rows.First + 1;
        double[] t = seconds[rows.First..(rows.Last + 1)], p = bar[rows.First..(rows.Last + 1)];
        var warming = celsius is null ? 0 : celsius[rows.Last] - celsius[rows.First];
        if (celsius is not null)
        {
            // A straight line through the thermometer: its own noise would only be added to the gauge's.
            var line = Line(t, celsius[rows.First..(rows.Last + 1)]);
            warming = line.Slope * (t[^1] - t[0]);
        }

        var lowest = StayedAbove(t, p, (step.Hold - HoldReading.Allowance).Seconds);
        var drops = Drops(t, p, step.Pressure, filled, gaugeErrorBar);
        var level = (double[])p.Clone();
        foreach (var drop in drops)
            for (var i = 0; i < n; i++)
                if (t[i] >= drop.At.Seconds) level[i] += drop.Fall.Bars;

        var (slope, error) = Line(t, level);
        var span = t[^1] - t[0];
        var warmth = filled.RiseFor(TemperatureDelta.FromKelvins(warming), step.Pressure).Bars;
        return new(
            step, Duration.FromSeconds(t[0]), Duration.FromSeconds(span), lowest.BarGauge(),
            Pressure.FromBars(warmth - slope * span), Pressure.FromBars(error * span), TemperatureDelta.FromKelvins(warming), drops);
    }

    // The maximum pressure that it stayed at or above for the planned time: a reading of the pump's last stroke or of the depressurising,
    // taken before or after that time, takes nothing away. Of a hold that was too short it is the lowest reading.
    private static double StayedAbove(double[] t, double[] p, double seconds)
    {
        var best = double.NegativeInfinity;
        for (var i = 0; i < t.Length; i++)
        {
            var (j, lowest) = (i, p[i]);
            while (j + 1 < t.Length && t[j] - t[i] < seconds - 1e-9) lowest = Math.Min(lowest, p[++j]);
            if (t[j] - t[i] >= seconds - 1e-9) best = Math.Max(best, lowest);
        }

        return double.IsNegativeInfinity(best) ? p.Min() : best;
    }

    // The pump's last stroke and the first opening of the valve belong to no hold: an end that stands off from its neighbours is left out.
    private static (int First, int Last) Trim((int First, int Last) rows, double[] bar, double gaugeErrorBar)
    {
        var (first, last) = rows;
        while (last - first > 2 * Neighbours && Math.Abs(bar[first] - bar[(first + 1)..(first + 1
            + Neighbours)].Median()) > 2 * gaugeErrorBar) first++;
        while (last - first > 2 * Neighbours && Math.Abs(bar[last] - bar[(last - Neighbours)..last].Median()) > 2 * gaugeErrorBar) last--;
        return (first, last);
    }

    private static List<SuddenDrop> Drops(double[] t, double[] p, GaugePressure at, FilledVessel filled, double gaugeErrorBar)
    {
        List<SuddenDrop> drops = [];
        for (var i = Neighbours; i + Neighbours <= p.Length; i++)
        {
            double Fall(int k) => p[(k - Neighbours)..k].Median() - p[k..(k + Neighbours)].Median();
            var fall = Fall(i);
            if (fall < 2.5 * gaugeErrorBar) continue;

            // The sharpest of a run of candidates is the drop itself.
            var best = i;
            for (var k = i; k < Math.Min(i + Neighbours, p.Length - Neighbours + 1); k++)
                if (Fall(k) > fall + 1e-12 || (Fall(k) > fall - 1e-12 && p[k - 1] - p[k] > p[best - 1] - p[best]))
                    (best, fall) = (k, Fall(k));
            var size = Pressure.FromBars(fall);
            drops.Add(new(Duration.FromSeconds(t[best]), size, filled.LossFor(size, at)));
            i = best + Neighbours - 1;
        }

        return drops;
    }

    private static (double Slope, double Error) Line(double[] x, double[] y)
    {
        double mx = x.Mean(), my = y.Mean(), sxx = 0, sxy = 0;
        for (var i = 0; i < x.Length; i++)
        {
            sxx += (x[i] - mx) * (x[i] - mx);
            sxy += (x[i] - mx) * (y[i] - my);
        }

        var slope = sxy / sxx;
        var rest = 0.0;
        for (var i = 0; i < x.Length; i++)
        {
            var r = y[i] - my - slope * (x[i] - mx);
            rest += r * r;
        }

        return (slope, Math.Sqrt(rest / Math.Max(1, x.Length - 2) / sxx));
    }
}
