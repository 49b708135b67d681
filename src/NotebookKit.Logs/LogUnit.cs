using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>A unit that a log may be written in, and the one that its numbers are handed on in.</summary>
/// <param name="Text">As the header says it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Canonical">Unit that the numbers are handed on in.</param>
/// <param name="Convert">From the header's unit to that one.</param>
internal sealed record LogUnit(string Text, string Kind, string Canonical, Func<double, double> Convert)
{
    private static readonly LogUnit[] Plain =
    [
        .. Of<Duration>("time", "s", "s", "ms", "min"),
        .. Of<Temperature>("temperature", "°C", "°C", "degC", "K", "°F"),
        .. Of<Volume>("volume", "mL", "mL", "L", "cm³"),
        .. Of<Length>("length", "m", "m", "mm", "ft"),
        .. Of<Mass>("mass", "g", "g", "kg", "oz", "lb"),
        .. Of<Force>("force", "N", "N", "kgf", "lbf"),
        .. Of<Speed>("speed", "m/s", "m/s"),
        .. Of<Acceleration>("acceleration", "m/s²", "m/s²"),
        .. Of<Ratio>("number", "-", "-", "%"),
    ];

    private static readonly LogUnit[] Pressures = [.. Of<Pressure>("pressure", "bar", "Pa", "hPa", "kPa", "MPa", "mbar", "bar", "psi")];

    /// <summary>All that a header may say.</summary>
    public static string Allowed =>
        $"{string.Join(", ", Plain.Select(u => u.Text))}, or {string.Join(", ", Pressures.Select(u => u.Text))} "
        + $"with '{UnitText.Gauge}' or '{UnitText.Absolute}' behind it";

    /// <summary>Finds the unit of a header; says why where there is none.</summary>
    public static LogUnit? Find(string text, out string problem)
    {
        problem = "";
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 1 && Plain.FirstOrDefault(u => u.Text == words[0]) is { } plain) return plain;
        var pressure = words.Length > 0 ? Pressures.FirstOrDefault(u => u.Text == words[0]) : null;
        if (pressure is null)
        {
            problem = $"the unit is '{text}'";
            return null;
        }

        if (words.Length == 2 && words[1] is UnitText.Gauge or UnitText.Absolute)
            return pressure with { Text = text, Kind = "pressure " + words[1], Canonical = "bar " + words[1] };
        problem = $"the unit is '{text}', a pressure that doesn't say what it is read against";
        return null;
    }

    private static IEnumerable<LogUnit> Of<T>(string kind, string canonical, params IEnumerable<string> texts) =>
        texts.Select(text => new LogUnit(text, kind, canonical, UnitText.Converter(typeof(T), text, canonical)));
}
