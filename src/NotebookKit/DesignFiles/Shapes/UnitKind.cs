using System.Globalization;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A kind of value with a unit: which units may stand in a file. What they mean is told by <see cref="UnitText"/> alone.</summary>
internal sealed class UnitKind
{
    private const string NumberPattern = @"[-+]?[0-9]+(\.[0-9]+)?([eE][-+]?[0-9]+)?";

    private readonly Type _quantity;
    private readonly string _word;
    private readonly Dictionary<string, Func<double, object?>> _meant;

    private UnitKind(Type type, string noun, string example, params string[] units)
    {
        (Type, Noun, Example, Units) = (type, noun, example, units);
        _quantity = type == typeof(GaugePressure) || type == typeof(AbsolutePressure) ? typeof(Pressure) : type;
        _word = type == typeof(GaugePressure) ? UnitText.Gauge : type == typeof(AbsolutePressure) ? UnitText.Absolute : "";
        // A dictionary that is frozen is made by much more code, all of which runs only once.
        _meant = units.ToDictionary(u => u, Meaning, StringComparer.Ordinal);
    }

    public Type Type { get; }

    /// <summary>What it is called: "length".</summary>
    public string Noun { get; }

    public string Example { get; }

    public IReadOnlyList<string> Units { get; }

    /// <summary>What a text of this kind looks like, as an expression that a JSON Schema understands, too.</summary>
    public string Pattern => $"^{NumberPattern} ?({string.Join('|', Units.Select(Plain))}){(_word.Length > 0 ? " " + _word : "")}$";

    public static IReadOnlyList<UnitKind> All { get; } =
    [
        new(typeof(Length), "length", "66 mm", "µm", "mm", "cm", "m", "km", "in", "ft"),
        new(typeof(Mass), "mass", "62 g", "g", "kg", "oz", "lb"),
        new(typeof(GaugePressure), "gauge pressure", "36 bar gauge", "bar", "psi", "kPa", "MPa"),
        new(typeof(AbsolutePressure), "absolute pressure", "1013 hPa absolute", "bar", "psi", "kPa", "hPa"),
        new(typeof(Pressure), "stress or modulus", "230 GPa", "Pa", "kPa", "MPa", "GPa", "N/mm²", "bar", "psi", "ksi", "Msi"),
        new(typeof(Angle), "angle", "90°", "°", "deg", "rad"),
        new(typeof(Ratio), "share", "32 %", "%"),
        new(typeof(Temperature), "temperature", "15 °C", "°C", "K", "°F"),
        new(typeof(Duration), "time", "0.5 s", "ms", "s", "min", "h"),
        new(typeof(Speed), "speed", "3 m/s", "m/s", "km/h", "mph", "kn", "ft/s"),
        new(typeof(Volume), "volume", "12 mL", "mL", "L", "cm³", "m³", "in³"),
        new(typeof(Density), "density", "1150 kg/m³", "kg/m³", "kg/m3", "g/cm³", "g/cm3", "lb/in³", "lb/in3"),
        new(typeof(AreaDensity), "areal weight", "150 g/m²", "g/m²", "g/m2", "kg/m²", "gsm", "oz/yd²", "oz/yd2"),
        new(typeof(LinearDensity), "linear density", "400 tex", "tex", "g/km", "g/m", "kg/m"),
        new(typeof(Force), "force", "120 N", "N", "kN", "lbf", "kgf"),
        new(typeof(ForcePerLength), "stiffness", "800 N/m", "N/m", "N/mm"),
        new(typeof(SonicConductance), "sonic conductance", "0.125 dm³/(s·bar)", "dm³/(s·bar)", "L/(s·bar)"),
        new(typeof(Irradiance), "sunlight", "900 W/m²", "W/m²", "kW/m²"),
        new(typeof(CoefficientOfThermalExpansion), "thermal expansion", "24 ppm/K", "1/K", "ppm/K"),
    ];

    public static UnitKind Of<T>() => All.First(k => k.Type == typeof(T));

    /// <summary>The value of a text; none where it is none of this kind.</summary>
    public object? Read(string text)
    {
        // No number has so many digits; what is longer isn't looked at.
        if (text.Length > 60 || text.EndsWith('\n')) return null;
        var end = NumberEnd(text);
        if (end == 0) return null;
        var unit = text.AsSpan(end < text.Length && text[end] == ' ' ? end + 1 : end);
        if (_word.Length > 0)
        {
            if (unit.Length <= _word.Length + 1 || !unit.EndsWith(_word, StringComparison.Ordinal) || unit[^(_word.Length + 1)] != ' ')
                return null;
            unit = unit[..^(_word.Length + 1)];
        }

        return _meant.TryGetValue(unit.ToString(), out var of) && UnitText.Number(text[..end]) is { } number ? of(number) : null;
    }

    // So many letters at the start are a number as the pattern has it; 0 where they aren't one.
    private static int NumberEnd(string text)
    {
        int Digits(int from)
        {
            while (from < text.Length && char.IsAsciiDigit(text[from])) from++;
            return from;
        }

        var first = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        var end = Digits(first);
        if (end == first) return 0;
        if (end < text.Length && text[end] == '.' && Digits(end + 1) is var decimals && decimals > end + 1) end = decimals;
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            var power = end + 1 < text.Length && text[end + 1] is '-' or '+' ? end + 2 : end + 1;
            if (Digits(power) is var after && after > power) end = after;
        }

        return end;
    }

    // What so much of a unit means; the unit's name is looked up once.
    private Func<double, object?> Meaning(string unit)
    {
        if (Type == typeof(SonicConductance)) return v => v > 0 ? SonicConductance.FromLitresPerSecondBar(v) : null;
        var make = UnitText.Maker(_quantity, unit)!;
        return v =>
        {
            var quantity = make(v);
            if (!double.IsFinite(Base(quantity))) return null;
            return quantity is not Pressure pressure || _word.Length == 0 ? quantity
                : _word == UnitText.Gauge ? GaugePressure.FromDifference(pressure)
                : pressure.Pascals >= 0 ? AbsolutePressure.FromDifference(pressure) : null;
        };
    }

    /// <summary>A value as a file has it, every digit kept.</summary>
    public static string Write(object value) => value switch
    {
        GaugePressure gauge => $"{Digits(gauge.Bar)} bar gauge",
        AbsolutePressure absolute => $"{Digits(absolute.Bar)} bar absolute",
        SonicConductance conductance => $"{Digits(conductance.LitresPerSecondBar)} dm³/(s·bar)",
        LinearDensity linear => $"{Digits(linear.KilogramsPerMeter)} kg/m",
        CoefficientOfThermalExpansion expansion => $"{Digits(expansion.PerKelvin)} 1/K",
        IQuantity quantity when quantity.UnitSymbol() is "°" => $"{Digits((double)quantity.Value)}°",
        IQuantity quantity => $"{Digits((double)quantity.Value)} {quantity.UnitSymbol()}",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    /// <summary>A value and so much more, in the value's unit; none for temperatures and absolute pressures, which don't add up.</summary>
    public static object? Sum(object value, int sign, object more) => (value, more) switch
    {
        (GaugePressure a, GaugePressure b) => a + b.AsDifference() * sign,
        (Temperature, _) => null,
        (IQuantity a, IQuantity b) => UnitText.Of(a.GetType(), (double)a.Value + sign * b.As(a.Unit), a.UnitSymbol())
            ?? Quantity.From((double)a.Value + sign * b.As(a.Unit), a.Unit),
        _ => null,
    };

    /// <summary>Why a text is none of this kind, a sentence.</summary>
    public string Refusal(string what, string text)
    {
        var shown = text.Length > 60 ? $"{text[..60]}..." : text;
        if (text.Contains(',', StringComparison.Ordinal)) return DesignFilesFindings.Comma(what, shown, Example);
        if (UnitText.Number(text) is not null) return DesignFilesFindings.NoUnit(what, shown, Article(Noun), Shown, Example);
        if (_word.Length > 0 && Read($"{text} {_word}") is not null) return DesignFilesFindings.GaugeOrAbsolute(what, shown, Example);
        return All.FirstOrDefault(k => k != this && k.Read(text) is not null) is { } other
            ? DesignFilesFindings.OtherKind(what, shown, other.Type == typeof(Pressure) ? "a pressure or stress" : Article(other.Noun),
                Article(Noun), Example)
            : DesignFilesFindings.NotOfKind(what, shown, Article(Noun), Shown, Example);
    }

    private static double Base(IQuantity quantity) => quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value);

    private IReadOnlyList<string> Shown => [.. Units.Select(u => _word.Length > 0 ? $"{u} {_word}" : u)];

    private static string Digits(double number) => number.ToString("R", CultureInfo.InvariantCulture).Replace("E+", "E",
        StringComparison.Ordinal);

    private static string Plain(string unit) => unit.Replace("/", @"\/", StringComparison.Ordinal)
        .Replace("(", @"\(", StringComparison.Ordinal).Replace(")", @"\)", StringComparison.Ordinal);

    private static string Article(string noun) => $"{("aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an" : "a")} {noun}";
}
