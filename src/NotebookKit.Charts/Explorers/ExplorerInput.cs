using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Explorers;

/// <summary>
/// What the reader moves in an explorer over a model of one's own: <c>ExplorerInput.Between("Pressure", 10.BarGauge(), 50.BarGauge())</c>
/// is dragged,
/// <c>ExplorerInput.Among("Sleeve", sleeves, s => s.Name)</c> is picked from a list.
/// </summary>
public static class ExplorerInput
{
    private const int UsualPoints = 9;

    /// <summary>A quantity to drag, shown in the unit of its least value.</summary>
    /// <typeparam name="T">Kind of quantity.</typeparam>
    /// <param name="name">What it is.</param>
    /// <param name="from">Least value.</param>
    /// <param name="to">Greatest value; above the least.</param>
    /// <param name="start">Where the reader starts; in the middle where none is given.</param>
    /// <param name="points">How many values a page without a session is given; 2 to 41.</param>
    public static ExplorerInput<T> Between<T>(string name, T from, T to, T? start = null, int points = UsualPoints)
        where T : struct, IQuantity
    {
        var (low, high) = ((double)from.Value, to.As(from.Unit));
        var unit = from.UnitSymbol() is { Length: > 0 } symbol ? symbol : "-";
        return new(new(name, unit, low, high, points, start?.As(from.Unit) ?? (low + high) / 2),
            value => (T)Quantity.From(value, from.Unit));
    }

    /// <summary>A gauge pressure to drag.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="from">Least pressure.</param>
    /// <param name="to">Greatest pressure; above the least.</param>
    /// <param name="start">Where the reader starts; in the middle where none is given.</param>
    /// <param name="points">How many values a page without a session is given; 2 to 41.</param>
    public static ExplorerInput<GaugePressure> Between(string name, GaugePressure from, GaugePressure to, GaugePressure? start = null,
        int points = UsualPoints) =>
        new(new(name, "bar gauge", from.Bar, to.Bar, points, start?.Bar ?? (from.Bar + to.Bar) / 2), GaugePressure.FromBar);

    /// <summary>A plain number to drag.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="from">Least value [-]; any finite value.</param>
    /// <param name="to">Greatest value [-]; above the least.</param>
    /// <param name="start">Where the reader starts [-]; in the middle where none is given.</param>
    /// <param name="points">How many values a page without a session is given; 2 to 41.</param>
    public static ExplorerInput<double> Between(string name, double from, double to, double? start = null, int points = UsualPoints) =>
        new(new(name, "-", from, to, points, start ?? (from + to) / 2), value => value);

    /// <summary>Alternatives to pick from.</summary>
    /// <typeparam name="T">Kind of alternative.</typeparam>
    /// <param name="name">What it is.</param>
    /// <param name="choices">The alternatives; 2 to 41.</param>
    /// <param name="naming">Name of each; its text where none is given.</param>
    /// <param name="start">Name of the one that the reader starts with; the first where none is given.</param>
    public static ExplorerInput<T> Among<T>(string name, IEnumerable<T> choices, Func<T, string>? naming = null, string? start = null)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return Build(name, [.. choices.Select(c => (naming is null ? c?.ToString() ?? "" : naming(c), c))], start);
    }

    /// <summary>Alternatives to pick from, each with its name.</summary>
    /// <typeparam name="T">Kind of alternative.</typeparam>
    /// <param name="name">What it is.</param>
    /// <param name="choices">Names and alternatives; 2 to 41. The reader starts with the first.</param>
    public static ExplorerInput<T> Among<T>(string name, params IReadOnlyList<(string Name, T Value)> choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return Build(name, choices, null);
    }

    /// <summary>Every value of an enumeration to pick from, by its name in words.</summary>
    /// <typeparam name="T">Enumeration.</typeparam>
    /// <param name="name">What it is.</param>
    public static ExplorerInput<T> Among<T>(string name)
        where T : struct, Enum =>
        Among(name, Enum.GetValues<T>(), InWords);

    private static ExplorerInput<T> Build<T>(string name, IReadOnlyList<(string Name, T Value)> choices, string? start)
    {
        List<string> names = [.. choices.Select(c => c.Name)];
        var first = start is null ? 0 : names.IndexOf(start);
        var parameter = ExplorerParameter.Choice(name, names, Math.Max(first, 0));
        IReadOnlyList<Finding> findings = first < 0 ? [Finding.Error($"There is no alternative '{start}' of '{name}'; there are "
            + $"{string.Join("; ", names)}.")] : [.. parameter.Validate()];
        InvalidDesignException.ThrowIfAny($"ExplorerInput '{name}'", findings);
        return new(parameter, value => choices[parameter.Nearest(value)].Value);
    }

    // FlatCircular becomes "flat circular".
    private static string InWords<T>(T value)
        where T : struct, Enum =>
        string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));
}
