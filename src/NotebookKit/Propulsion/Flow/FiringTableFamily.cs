using System.Collections.Concurrent;
using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Flow;

/// <summary>
/// The tables of one real gas for many fill pressures, as a dispersion draws them: every entry is interpolated in the logarithm of the
/// pressure, through tables at the Chebyshev points of panels a tenth wide. To rounding the same as tables of their own, at a tenth of
/// their cost; a panel is made when a pressure first falls into it, and is the same whoever makes it.
/// </summary>
/// <remarks>Source: Lagrange's formula at Chebyshev points, L. N. Trefethen, Approximation Theory and Approximation Practice, 2013, ch. 5
/// and 8 (unverified): the error falls by the ratio of panel to the distance of the nearest singularity with every point.</remarks>
internal sealed class FiringTableFamily(Charge charge, FlowModel model, double ambientPa)
{
    private const int Points = 9;
    private const double Width = 0.1;

    private readonly ConcurrentDictionary<int, Panel> _panels = new();
    private readonly RealGas? _gas = FiringTables.GasOf(charge, model);

    /// <summary>Tables of the charge filled to its own pressure, which alone differs from that of the family.</summary>
    public FiringTables For(Charge filled)
    {
        if (_gas is null) return FiringTables.For(filled, model, ambientPa);
        var pressure = filled.Pressure.Pascals + ambientPa;
        FiringTables.Check(pressure, filled.GasTemperature.Kelvins);
        var log = Math.Log(pressure);
        var panel = _panels.GetOrAdd((int)Math.Floor(log / Width), static (number, family) => family.Make(number), this);
        return panel.At(log) ?? FiringTables.For(filled, model, ambientPa);
    }

    private Panel Make(int number)
    {
        var tables = new FiringTables[Points];
        var logs = new double[Points];
        for (var k = 0; k < Points; k++)
        {
            // From the highest pressure down: the first table is the longest, and the others follow it.
            logs[k] = Width * (number + 0.5 + (0.5 * Math.Cos(Math.PI * ((2 * k) + 1) / (2 * Points))));
            try
            {
                tables[k] = FiringTables.Of(_gas!, Math.Exp(logs[k]), charge.GasTemperature.Kelvins, ambientPa, k == 0 ? null : tables[0]);
            }
            catch (InvalidDesignException)
            {
                return Panel.None;
            }

            // An expansion that the equation of state cuts short is of a length of its own.
            if (tables[k].Closed!.End != tables[0].Closed!.End || tables[k].Jet!.Entries != tables[0].Jet!.Entries) return Panel.None;
        }

        return new(tables, logs);
    }

    /// <summary>Tables at the points of one panel; none where they can't be had.</summary>
    private sealed class Panel(FiringTables[] tables, double[] logs)
    {
        private readonly ExpansionTable[] _closed = Array.ConvertAll(tables, t => t.Closed!);
        private readonly IsentropeJet[] _jets = Array.ConvertAll(tables, t => t.Jet!);

        public static Panel None { get; } = new([], []);

        public FiringTables? At(double log)
        {
            if (tables.Length == 0) return null;
            Span<double> weights = stackalloc double[Points];
            for (var k = 0; k < Points; k++)
            {
                weights[k] = 1;
                for (var j = 0; j < Points; j++)
                {
                    if (j != k) weights[k] *= (log - logs[j]) / (logs[k] - logs[j]);
                }
            }

            return FiringTables.Blend(tables, _closed, _jets, weights);
        }
    }
}
