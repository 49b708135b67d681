using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace NotebookKit.Numerics.Functions;

/// <summary>One quantity over an even grid from 0, joined by cubics that meet in value and slope.</summary>
internal sealed class EvenTable
{
    private readonly double[] _coefficients;
    private readonly double _perCell;
    private readonly int _cells;

    private EvenTable(double perCell, double[] coefficients)
    {
        (_perCell, _coefficients) = (perCell, coefficients);
        _cells = coefficients.Length / 4;
    }

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

    /// <summary>The weighted sum of tables over one grid.</summary>
    /// <param name="owners">What has the tables; 1 or more.</param>
    /// <param name="table">The table of each.</param>
    /// <param name="weights">Weight of each [-].</param>
    public static EvenTable Blend<TOwner>(ReadOnlySpan<TOwner> owners, Func<TOwner, EvenTable> table, ReadOnlySpan<double> weights)
    {
        var first = table(owners[0]);
        var sum = new double[first._coefficients.Length];
        for (var k = 0; k < owners.Length; k++) Add(sum, weights[k], table(owners[k])._coefficients);
        return new(first._perCell, sum);
    }

    /// <summary>Last point of the grid.</summary>
    public double End => _cells / _perCell;

    /// <summary>Value at a point between 0 and the end; beyond them the outer cubic goes on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double At(double x)
    {
        var c = Cell(x, out var u);
        return c[0] + u * (c[1] + u * (c[2] + u * c[3]));
    }

    /// <summary>Value and slope at a point.</summary>
    public double At(double x, out double slope)
    {
        var c = Cell(x, out var u);
        slope = (c[1] + u * (2 * c[2] + u * 3 * c[3])) * _perCell;
        return c[0] + u * (c[1] + u * (c[2] + u * c[3]));
    }

    /// <summary>Slope at a point.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double SlopeAt(double x)
    {
        var c = Cell(x, out var u);
        return (c[1] + u * (2 * c[2] + u * 3 * c[3])) * _perCell;
    }

    // Cells have four coefficients, so that the groups leave nothing over. A product and a sum either way: the same bits.
    private static void Add(Span<double> sum, double weight, ReadOnlySpan<double> values)
    {
        if (!Vector256.IsHardwareAccelerated)
        {
            for (var i = 0; i < sum.Length; i++) sum[i] += weight * values[i];
            return;
        }

        var groups = MemoryMarshal.Cast<double, Vector256<double>>(sum);
        var terms = MemoryMarshal.Cast<double, Vector256<double>>(values);
        for (var i = 0; i < groups.Length; i++) groups[i] += weight * terms[i];
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private ReadOnlySpan<double> Cell(double x, out double u)
    {
        var position = x * _perCell;
        var cell = position > 0 ? Math.Min((int)position, _cells - 1) : 0;
        u = position - cell;
        return _coefficients.AsSpan(4 * cell, 4);
    }
}
