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
        new("s", "time", "s", v => v),
        new("ms", "time", "s", v => v / 1000),
        new("min", "time", "s", v => v * 60),
        new("°C", "temperature", "°C", v => v),
        new("degC", "temperature", "°C", v => v),
        new("K", "temperature", "°C", v => v - 273.15),
        new("°F", "temperature", "°C", v => Temperature.FromDegreesFahrenheit(v).DegreesCelsius),
        new("mL", "volume", "mL", v => v),
        new("L", "volume", "mL", v => v * 1000),
        new("cm³", "volume", "mL", v => v),
        new("m", "length", "m", v => v),
        new("mm", "length", "m", v => v / 1000),
        new("ft", "length", "m", v => Length.FromFeet(v).Meters),
        new("g", "mass", "g", v => v),
        new("kg", "mass", "g", v => v * 1000),
        new("oz", "mass", "g", v => Mass.FromOunces(v).Grams),
        new("lb", "mass", "g", v => Mass.FromPounds(v).Grams),
        new("N", "force", "N", v => v),
        new("kgf", "force", "N", v => Force.FromKilogramsForce(v).Newtons),
        new("lbf", "force", "N", v => Force.FromPoundsForce(v).Newtons),
        new("m/s", "speed", "m/s", v => v),
        new("m/s²", "acceleration", "m/s²", v => v),
        new("-", "number", "-", v => v),
        new("%", "number", "-", v => v / 100),
    ];

    private static readonly LogUnit[] Pressures =
    [
        new("Pa", "pressure", "bar", v => v / 1e5),
        new("hPa", "pressure", "bar", v => v / 1e3),
        new("kPa", "pressure", "bar", v => v / 100),
        new("MPa", "pressure", "bar", v => v * 10),
        new("mbar", "pressure", "bar", v => v / 1e3),
        new("bar", "pressure", "bar", v => v),
        new("psi", "pressure", "bar", v => Pressure.FromPoundsForcePerSquareInch(v).Bars),
    ];

    /// <summary>All that a header may say.</summary>
    public static string Allowed =>
        string.Join(", ", Plain.Select(u => u.Text)) + ", or " + string.Join(", ", Pressures.Select(u => u.Text)) + " with 'gauge' or 'absolute' behind it";

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

        if (words.Length == 2 && words[1] is "gauge" or "absolute") return pressure with { Text = text, Kind = "pressure " + words[1], Canonical = "bar " + words[1] };
        problem = $"the unit is '{text}', a pressure that doesn't say what it is read against";
        return null;
    }
}
