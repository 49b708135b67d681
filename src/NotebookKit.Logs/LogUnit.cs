using NotebookKit.Numerics;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>A unit that a log may be written in, and the one that its numbers are handed on in: number / Divisor · Factor +
/// Offset.</summary>
/// <param name="Text">As the unit is written.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Canonical">Unit that the numbers are handed on in.</param>
/// <param name="Factor">Canonical units in one of this.</param>
/// <param name="Divisor">Units of this in one canonical, where that is whole; 1 otherwise.</param>
/// <param name="Offset">Where its zero lies, in the canonical unit.</param>
internal sealed record LogUnit(string Text, string Kind, string Canonical, double Factor, double Divisor, double Offset)
{
    /// <summary>A pressure that isn't said to be gauge or absolute.</summary>
    public const string Unreferenced = "bar";

    public const string Clock = "clock";

    /// <summary>Largest number that is taken for a reading, in the canonical unit: far beyond every sensor and clock, and so small that no
    /// sum or difference of two overflows.</summary>
    public const double Largest = 1e15;

    private static readonly LogUnit[] Plain =
    [
        .. Of<Duration>("time", "s", "s", "ms", "µs", "min", "h"),
        .. Of<Temperature>("temperature", "°C", "°C", "K", "°F"),
        .. Of<Volume>("volume", "mL", "mL", "L", "cm³"),
        .. Of<Length>("length", "m", "m", "mm", "cm", "km", "ft", "in"),
        .. Of<Mass>("mass", "g", "g", "kg", "oz", "lb"),
        .. Of<Force>("force", "N", "N", "kN", "kgf", "lbf"),
        .. Of<Speed>("speed", "m/s", "m/s", "ft/s", "km/h", "mph"),
        .. Of<Acceleration>("acceleration", "m/s²", "m/s²"),
        .. Of<Ratio>("number", "-", "-", "%"),
    ];

    private static readonly LogUnit[] Pressures =
        [.. Of<Pressure>("pressure", "bar", "Pa", "hPa", "kPa", "MPa", "mbar", "bar", "psi", "inHg", "mmHg", "atm", "kgf/cm²")];

    // How loggers write them.
    private static readonly Dictionary<string, string> Written = new(StringComparer.Ordinal)
    {
        ["sec"] = "s", ["secs"] = "s", ["second"] = "s", ["seconds"] = "s", ["msec"] = "ms", ["millis"] = "ms", ["milliseconds"] = "ms",
        ["us"] = "µs", ["μs"] = "µs", ["minutes"] = "min", ["hours"] = "h", ["hr"] = "h",
        ["C"] = "°C", ["degC"] = "°C", ["deg C"] = "°C", ["\uFFFDC"] = "°C", ["º\u0043"] = "°C", ["celsius"] = "°C",
        ["F"] = "°F", ["degF"] = "°F", ["deg F"] = "°F", ["\uFFFDF"] = "°F", ["º\u0046"] = "°F", ["fahrenheit"] = "°F", ["kelvin"] = "K",
        ["ml"] = "mL", ["l"] = "L", ["cc"] = "cm³", ["cm3"] = "cm³", ["litres"] = "L",
        ["metres"] = "m", ["meters"] = "m", ["feet"] = "ft", ["foot"] = "ft", ["inches"] = "in", ["inch"] = "in",
        ["grams"] = "g", ["gram"] = "g", ["kilograms"] = "kg", ["ounces"] = "oz", ["lbs"] = "lb", ["pounds"] = "lb",
        ["newton"] = "N", ["newtons"] = "N", ["fps"] = "ft/s", ["kph"] = "km/h", ["m/s2"] = "m/s²", ["m/s^2"] = "m/s²",
        ["PSI"] = "psi", ["Psi"] = "psi", ["Bar"] = "bar", ["BAR"] = "bar", ["mb"] = "mbar", ["millibar"] = "mbar", ["KPA"] = "kPa",
        ["kpa"] = "kPa", ["Kpa"] = "kPa", ["KPa"] = "kPa", ["hpa"] = "hPa", ["HPA"] = "hPa", ["pa"] = "Pa", ["PA"] = "Pa", ["MPA"] = "MPa",
        ["inhg"] = "inHg", ["InHg"] = "inHg", ["inHG"] = "inHg", ["in Hg"] = "inHg", ["mmhg"] = "mmHg", ["torr"] = "mmHg",
        ["Torr"] = "mmHg", ["kgf/cm2"] = "kgf/cm²", ["pascal"] = "Pa", ["pascals"] = "Pa", ["percent"] = "%",
    };

    /// <summary>All that a header may say.</summary>
    public static string Allowed =>
        $"{string.Join(", ", Plain.Select(u => u.Text))}, or {string.Join(", ", Pressures.Select(u => u.Text))} "
        + $"with '{UnitText.Gauge}' or '{UnitText.Absolute}' behind it";

    /// <summary>Whether it is a pressure, of whatever reference.</summary>
    public bool IsPressure => Kind.StartsWith("pressure", StringComparison.Ordinal);

    /// <summary>A number of this unit in the canonical one; may overflow.</summary>
    public double Convert(double number) => number / Divisor * Factor + Offset;

    /// <summary>Finds the unit of a header; says why where there is none.</summary>
    /// <param name="text">The unit as written: "psi", "bar gauge", "psig", "kPa(a)".</param>
    /// <param name="problem">What is wrong with it; empty where nothing is.</param>
    /// <param name="needsReference">Whether a pressure has to say what it is read against.</param>
    public static LogUnit? Find(string text, out string problem, bool needsReference = true)
    {
        problem = "";
        var unit = text.Trim();
        if (Named(Plain, unit) is { } plain) return plain;
        var (bare, reference) = Split(unit);
        if (Named(Pressures, bare) is not { } pressure)
        {
            problem = $"the unit is '{Excerpt.Of(unit)}'";
            return null;
        }

        if (reference is not null || !needsReference) return reference is null ? pressure with { Text = bare }
            : pressure.Against(reference);
        problem = $"the unit is '{Excerpt.Of(unit)}', a pressure that doesn't say what it is read against";
        return null;
    }

    /// <summary>The known unit nearest to a mistyped one; none where nothing is near.</summary>
    public static string? Nearest(string text)
    {
        if (text.Length is 0 or > 12) return null;
        var (unit, edits) = Plain.Concat(Pressures).Select(u => u.Text).Where(u => u.Length > 1)
            .Select(u => (u, EditDistance.Between(u, text))).MinBy(u => u.Item2);
        return edits <= Math.Max(1, text.Length / 3) && edits < text.Length ? unit : null;
    }

    /// <summary>This pressure, read against vacuum or against the surrounding air.</summary>
    public LogUnit Against(string reference) => this with { Text = $"{Text} {reference}", Kind = "pressure " + reference,
        Canonical = "bar " + reference };

    private static LogUnit? Named(LogUnit[] units, string text)
    {
        var name = Written.GetValueOrDefault(text, text);
        return units.FirstOrDefault(u => u.Text == name);
    }

    private static (string Unit, string? Reference) Split(string text)
    {
        var bare = text.Replace("(", " ", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).TrimEnd();
        var space = bare.LastIndexOfAny([' ', '_', '-']);
        if (space > 0 && Reference(bare[(space + 1)..]) is { } word) return (bare[..space].TrimEnd(), word);
        // barg, psia: the trade's short forms.
        return bare.Length > 2 && Named(Pressures, bare) is null && Named(Pressures, bare[..^1]) is not null
            && Reference(bare[^1..]) is { } letter ? (bare[..^1], letter) : (bare, null);
    }

    /// <summary>"gauge" or "absolute", as a word or its short form says it.</summary>
    public static string? Reference(string word) => word.ToUpperInvariant() switch
    {
        "GAUGE" or "GAGE" or "G" => UnitText.Gauge,
        "ABSOLUTE" or "ABS" or "A" => UnitText.Absolute,
        _ => null,
    };

    private static IEnumerable<LogUnit> Of<T>(string kind, string canonical, params IEnumerable<string> texts) =>
        texts.Select(text =>
        {
            var convert = UnitText.Converter(typeof(T), text, canonical);
            var (zero, one) = (convert(0), convert(1));
            var (factor, inverse) = (one - zero, Math.Round(1 / (one - zero)));
            // A power of ten stays exact: 4100 ms are 4.1 s.
            var whole = zero == 0 && inverse > 1 && Math.Abs(inverse * factor - 1) < 1e-12;
            return new LogUnit(text, kind, canonical, whole ? 1 : factor, whole ? inverse : 1, zero);
        });
}
