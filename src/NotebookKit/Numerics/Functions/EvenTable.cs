namespace NotebookKit.Numerics.Functions;

/// <summary>One quantity over an even grid from 0, joined by cubics that meet in value and slope.</summary>
internal sealed class EvenTable
{
    private readonly double[] _coefficients;
    private readonly double _perCell;
    private readonly int _cells;

    /// <summary>Creates the table from values and their slopes.</summary>
    public EvenTable(double cell, ReadOnlySpan<double> values, ReadOnlySpan<double> slopes)
        : this(cell, values, Array.ConvertAll(slopes.ToArray(), s => s * cell))
    {
    }

    // Slopes are per cell here.
    private EvenTable(double cell, ReadOnlySpan<double> values, double[] rises)
    {
        _cells = values.Length - 1;
        _perCell = 1 / cell;
        _coefficients = new double[4 * _cells];
        for (var i = 0; i < _cells; i++)
        {
            double rise = values[i + 1] - values[i], left = rises[i], right = rises[i + 1];
            _coefficients[4 * i] = values[i];
            _coefficients[4 * i + 1] = left;
            _coefficients[4 * i + 2] = 3 * rise - 2 * left - right;
            _coefficients[4 * i + 3] = left + right - 2 * rise;
        }
    }

    /// <summary>Creates the table from values alone: slopes by central differences, at both ends by the outer cell.</summary>
    public static EvenTable Through(double cell, ReadOnlySpan<double> values)
    {
        var rises = new double[values.Length];
        for (var i = 1; i < values.Length - 1; i++) rises[i] = (values[i + 1] - values[i - 1]) / 2;
        rises[0] = values[1] - values[0];
        rises[^1] = values[^1] - values[^2];
        return new(cell, values, rises);
    }

    /// <summary>Last point of the grid.</summary>
    public double End => _cells / _perCell;

    /// <summary>Value at a point between 0 and the end; beyond them the outer cubic goes on.</summary>
    public double At(double x)
    {
        var c = Cell(x, out var u);
        return c[0] + u * (c[1] + u * (c[2] + u * c[3]));
    }

    /// <summary>Slope at a point.</summary>
    public double SlopeAt(double x)
    {
        var c = Cell(x, out var u);
        return (c[1] + u * (2 * c[2] + u * 3 * c[3])) * _perCell;
    }

    private ReadOnlySpan<double> Cell(double x, out double u)
    {
        var position = x * _perCell;
        var cell = position > 0 ? Math.Min((int)position, _cells - 1) : 0;
        u = position - cell;
        return _coefficients.AsSpan(4 * cell, 4);
    }
}
