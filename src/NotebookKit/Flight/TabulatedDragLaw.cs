namespace NotebookKit.Flight;

/// <summary>Coefficients over an even grid of Mach numbers, joined smoothly and without overshoot.</summary>
/// <remarks>
/// Piecewise cubic with limited slopes, so that the step loop sees a continuous first derivative. Held constant beyond the last Mach number.
/// Source: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300.
/// </remarks>
internal readonly struct TabulatedDragLaw : IDragLaw
{
    private readonly double[] _jetOn;
    private readonly double[] _jetOff;
    private readonly double _cellsPerMach;
    private readonly int _cells;

    public TabulatedDragLaw(DragCurve curve)
    {
        _cells = curve.Mach.Count - 1;
        _cellsPerMach = _cells / curve.Mach[^1];
        _jetOn = Coefficients(curve.JetOn);
        _jetOff = Coefficients(curve.JetOff);
    }

    public bool NeedsMach => true;

    public double Coefficient(double mach, bool jetOn)
    {
        var table = jetOn ? _jetOn : _jetOff;
        var position = Math.Min(Math.Abs(mach) * _cellsPerMach, _cells);
        var cell = Math.Min((int)position, _cells - 1);
        var x = position - cell;
        var c = table.AsSpan(4 * cell, 4);
        return c[0] + x * (c[1] + x * (c[2] + x * c[3]));
    }

    private static double[] Coefficients(IReadOnlyList<double> values)
    {
        var n = values.Count;
        var slopes = new double[n];
        for (var i = 1; i < n - 1; i++)
        {
            double before = values[i] - values[i - 1], after = values[i + 1] - values[i];
            slopes[i] = before * after <= 0 ? 0 : 2 * before * after / (before + after);
        }

        slopes[0] = values[1] - values[0];
        slopes[^1] = values[^1] - values[^2];
        var table = new double[4 * (n - 1)];
        for (var i = 0; i < n - 1; i++)
        {
            var rise = values[i + 1] - values[i];
            table[4 * i] = values[i];
            table[4 * i + 1] = slopes[i];
            table[4 * i + 2] = 3 * rise - 2 * slopes[i] - slopes[i + 1];
            table[4 * i + 3] = slopes[i] + slopes[i + 1] - 2 * rise;
        }

        return table;
    }
}
