namespace NotebookKit.Numerics.Ode;

/// <summary>Collects states along one or more integrations, in one growing block of memory.</summary>
internal sealed class TrajectoryBuilder
{
    private readonly int _dimension;
    private readonly int _capacity;
    private double[] _rows = [];

    /// <summary>Creates an empty collection.</summary>
    /// <param name="dimension">Number of unknowns; 1 or more.</param>
    /// <param name="capacity">Rows expected; 1 or more.</param>
    public TrajectoryBuilder(int dimension, int capacity = 128)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimension, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(capacity, 1);
        _dimension = dimension;
        _capacity = capacity;
    }

    /// <summary>Rows collected.</summary>
    public int Count { get; private set; }

    /// <summary>Independent variable of a row [unit of t].</summary>
    /// <param name="row">Row; 0 to Count - 1.</param>
    public double Time(int row)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)row, (uint)Count, nameof(row));
        return _rows[row * (_dimension + 1)];
    }

    /// <summary>State of a row [unit of each unknown].</summary>
    /// <param name="row">Row; 0 to Count - 1.</param>
    public ReadOnlySpan<double> State(int row)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)row, (uint)Count, nameof(row));
        return _rows.AsSpan(row * (_dimension + 1) + 1, _dimension);
    }

    /// <summary>Adds a row.</summary>
    /// <param name="t">Independent variable [unit of t].</param>
    /// <param name="y">State [unit of each unknown].</param>
    public void Add(double t, ReadOnlySpan<double> y) => y.CopyTo(Next(t));

    internal Span<double> Next(double t)
    {
        var width = _dimension + 1;
        if ((Count + 1) * width > _rows.Length) Array.Resize(ref _rows, Math.Max(_capacity * width, 2 * _rows.Length));
        var row = _rows.AsSpan(Count * width, width);
        row[0] = t;
        Count++;
        return row[1..];
    }
}
