using NotebookKit.Charts.Results;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Explorers;

/// <summary>A model's answer to one setting: a curve and, beside it, numbers. <c>Explored.Curve(time, height).With("Apogee",
/// flight.Apogee)</c>.</summary>
public sealed record Explored
{
    // More points than that nobody sees, and a page holds every setting's.
    private const int MostPoints = 160;

    private Explored(Series x, Series y) => (X, Y) = (x, y);

    /// <summary>Horizontal values.</summary>
    public Series X { get; }

    /// <summary>Vertical values, as many as the horizontal ones.</summary>
    public Series Y { get; }

    internal IReadOnlyList<Number> Numbers { get; private init; } = [];

    /// <summary>An answer's curve.</summary>
    /// <param name="x">Horizontal values, rising.</param>
    /// <param name="y">Vertical values, as many as the horizontal ones.</param>
    public static Explored Curve(Series x, Series y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        return new(x, y);
    }

    /// <summary>The answer with one more number.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value; shown in the unit that the first setting has.</param>
    public Explored With(string name, IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return Add(new(name, value.UnitSymbol() is { Length: > 0 } symbol ? symbol : "-", (double)value.Value, value));
    }

    /// <summary>The answer with one more number.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    public Explored With(string name, GaugePressure value) => Add(new(name, "bar gauge", value.Bar, null));

    /// <summary>The answer with one more number.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    public Explored With(string name, AbsolutePressure value) => Add(new(name, "bar absolute", value.Bar, null));

    /// <summary>The answer with one more plain number.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value [-]; any finite value.</param>
    public Explored With(string name, double value) => Add(new(name, "-", value, null));

    /// <summary>How many points every curve of an explorer gets that starts with this one.</summary>
    internal int Points => Math.Min(X.Count, MostPoints);

    /// <summary>The answer in the form of the one that an explorer starts with.</summary>
    internal ExplorerState In(Explored first)
    {
        var names = Numbers.Select(n => n.Name);
        if (!names.SequenceEqual(first.Numbers.Select(n => n.Name)))
            return ExplorerState.Refused($"The model gives the numbers '{string.Join(", ", names)}' here and "
                + $"'{string.Join(", ", first.Numbers.Select(n => n.Name))}' at the start; give the same ones everywhere.");
        if (X.Count != Y.Count || X.Count < 2)
            return ExplorerState.Refused($"The curve has {X.Count} horizontal and {Y.Count} vertical values; it needs as many of "
                + "both, 2 or more.");
        // Point i of every curve has to mean the same: the same share of its extent.
        var (x, y) = X.Count == first.Points ? (X.Values, Y.Values) : Sampled(first.Points);
        return new ExplorerState { X = x, Y = y, Numbers = [.. Numbers.Zip(first.Numbers, (n, f) => n.In(f))] };
    }

    private (IReadOnlyList<double> X, IReadOnlyList<double> Y) Sampled(int points)
        => CurveSampling.Between(X, Y, X[0], X[X.Count - 1], points);

    private Explored Add(Number number) => this with { Numbers = [.. Numbers, number] };

    internal sealed record Number(string Name, string Unit, double Value, IQuantity? Quantity)
    {
        public double In(Number first) => Quantity is not null && first.Quantity is not null && Unit != first.Unit
            ? Quantity.As(first.Quantity.Unit) : Value;
    }
}
