using System.Collections;

namespace NotebookKit.Quantities.Columns;

/// <summary>A column of rows that are at hand, or are made when first needed: its numbers are taken out when one of them is first asked
/// for. Most columns of a recorded flight never are.</summary>
internal sealed class LazyColumn<TRow>(Lazy<IReadOnlyList<TRow>> rows, Func<TRow, double> value) : IReadOnlyList<double>
{
    private double[]? _values;

    public int Count => Values.Length;

    public double this[int index] => Values[index];

    // Two threads that ask at once take out the same numbers twice.
    private double[] Values => _values ??= Taken();

    public static Series Of(string name, string unit, Lazy<IReadOnlyList<TRow>> rows, Func<TRow, double> value) =>
        new(name, unit, new LazyColumn<TRow>(rows, value));

    public IEnumerator<double> GetEnumerator() => ((IEnumerable<double>)Values).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private double[] Taken()
    {
        var all = rows.Value;
        var values = new double[all.Count];
        for (var i = 0; i < values.Length; i++) values[i] = value(all[i]);
        return values;
    }
}
