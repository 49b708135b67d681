namespace NotebookKit.Charts.Pictures;

/// <summary>Maps the values of an axis to places on paper and finds round values to mark.</summary>
internal sealed class PlotScale
{
    private readonly double _from;
    private readonly double _to;
    private readonly double _start;
    private readonly double _end;
    private readonly bool _log;

    /// <summary>Creates the mapping.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="values">Values it has to show; those that aren't finite are passed over.</param>
    /// <param name="start">Place of the low end on paper.</param>
    /// <param name="end">Place of the high end on paper.</param>
    /// <param name="exact">Whether the axis ends exactly at the outermost values.</param>
    public PlotScale(Axis axis, IEnumerable<double> values, double start, double end, bool exact)
    {
        (_start, _end, _log) = (start, end, axis.Scale == AxisScale.Logarithmic);
        var finite = values.Where(v => double.IsFinite(v) && (!_log || v > 0)).DefaultIfEmpty(_log ? 1 : 0).ToList();
        var (low, high) = (finite.Min(), finite.Max());
        if (_log) (low, high) = (Math.Log10(low), Math.Log10(high));
        if (high - low <= 1e-12 * Math.Max(1, Math.Abs(high))) (low, high) = (low - (_log ? 0.5 : Half(low)),
            high + (_log ? 0.5 : Half(high)));
        else if (!exact) (low, high) = (low == 0 ? 0 : low - (0.05 * (high - low)), high + (0.05 * (high - low)));
        if (axis is { From: { } from, To: { } to }) (low, high) = _log ? (Math.Log10(from), Math.Log10(to)) : (from, to);
        (_from, _to) = (low, high);

        static double Half(double value) => value == 0 ? 0.5 : 0.1 * Math.Abs(value);
    }

    public double Low => Math.Min(_start, _end);

    public double High => Math.Max(_start, _end);

    /// <summary>Where the axis begins and ends; powers of ten on an axis of ratios.</summary>
    public (double From, double To) Ends => (_from, _to);

    /// <summary>What stands at a place on paper; a power of ten on an axis of ratios.</summary>
    public double From(double place) => _from + ((_to - _from) * ((place - _start) / (_end - _start)));

    /// <summary>Place on paper of a value.</summary>
    public double At(double value) => _start + ((_end - _start) * (((_log ? Math.Log10(value) : value) - _from) / (_to - _from)));

    /// <summary>Round values inside the range, about as many as asked.</summary>
    public IReadOnlyList<double> Ticks(int about = 7)
    {
        var (low, high) = (Math.Min(_from, _to), Math.Max(_from, _to));
        if (_log)
        {
            double[] steps = high - low > 3 ? [1] : [1, 2, 5];
            return [.. Enumerable.Range((int)Math.Floor(low),
                (int)(Math.Ceiling(high) - Math.Floor(low)) + 1).SelectMany(p => steps.Select(s => s * Math.Pow(10, p))).Where(v
                => Math.Log10(v) >= low - 1e-9 && Math.Log10(v) <= high + 1e-9)];
        }
        var raw = (high - low) / about;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step = power * ((raw / power) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 });
        var first = Math.Ceiling((low / step) - 1e-9);
        return [.. Enumerable.Range(0, (int)(Math.Floor((high / step) + 1e-9) - first) + 1).Select(i => (first + i) * step)];
    }

    /// <summary>A value as it stands at the axis: no digits beyond the step.</summary>
    public static string Label(double value)
    {
        var text = Math.Abs(value) is >= 1e6 or (> 0 and < 1e-4)
            ? value.ToString("0.##E+0", System.Globalization.CultureInfo.InvariantCulture)
            : ((double)(decimal)value).ToString("#,0.######", Grouped);
        return text.Replace('-', '−');
    }

    private static readonly System.Globalization.NumberFormatInfo Grouped = new() { NumberGroupSeparator = "\u202F",
        NumberDecimalSeparator = "." };
}
