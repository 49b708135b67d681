using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Wording;

/// <summary>What to write where a value has no unit, or the wrong kind of unit.</summary>
internal static partial class UnitWords
{
    private static readonly string[] Numbers = ["int", "double", "float", "decimal", "long", "Int32", "Double"];

    // The unit that the bench speaks in, where the library has several.
    private static readonly Dictionary<string, string> Usual = new(StringComparer.Ordinal)
    {
        ["Length"] = "Millimetres", ["GaugePressure"] = "BarGauge", ["AbsolutePressure"] = "BarAbsolute", ["Mass"] = "Grams",
        ["Pressure"] = "Megapascals", ["Volume"] = "Litres", ["Ratio"] = "Percent", ["Angle"] = "Degrees", ["Duration"] = "Seconds",
        ["Temperature"] = "Celsius", ["Speed"] = "MetresPerSecond",
    };

    /// <summary>What to write for one type in place of another; none where units aren't what is wrong.</summary>
    /// <param name="from">Type that was given.</param>
    /// <param name="to">Type that is wanted.</param>
    /// <param name="written">The code that gives it; empty where it isn't known.</param>
    public static string? Of(string from, string to, string written)
    {
        var (given, wanted) = (Simple(from), Simple(to));
        if (given == "Pressure" && wanted is "GaugePressure" or "AbsolutePressure")
            return $"A pressure must say gauge or absolute: {Pressure(written, wanted)}.";
        if ((given, wanted) is ("GaugePressure", "AbsolutePressure") or ("AbsolutePressure", "GaugePressure"))
            return $"{Noun(given)} was given and {Noun(wanted).ToLowerInvariant()} is wanted: {Pressure(written, wanted)}.";
        if (LibraryTypes.LiteralsOf(wanted) is not { Count: > 0 } units) return null;
        var usual = Usual.TryGetValue(wanted, out var known) && units.Contains(known) ? known : units[0];
        var others = units.Where(u => u != usual).Take(4).ToList();
        var or = others.Count == 0 ? "" : $" (or {string.Join(", ", others.Select(o => o + "()"))})";
        if (Numbers.Contains(given))
            return $"{Noun(wanted)} is wanted and this number has no unit: write {Receiver(written)}.{usual}(){or}.";
        return LibraryTypes.LiteralsOf(given).Count > 0
            ? $"{Noun(wanted)} is wanted and {Noun(given).ToLowerInvariant()} was given: write a number with such a unit, "
                + $"for example 12.{usual}(){or}." : null;
    }

    /// <summary>Last part of a type's name: "UnitsNet.Pressure?" is Pressure.</summary>
    /// <param name="type">Type as the compiler writes it.</param>
    public static string Simple(string type) => type.TrimEnd('?', '>').Split('.', '<')[^1];

    /// <summary>"GaugePressure" is "A gauge pressure".</summary>
    /// <param name="type">Simple name of a type.</param>
    public static string Noun(string type)
    {
        var words = Capital().Replace(type, m => m.Index == 0 ? m.Value.ToLowerInvariant() : " " + m.Value.ToLowerInvariant());
        return $"{("aeiou".Contains(words[0], StringComparison.Ordinal) ? "An" : "A")} {words}";
    }

    // 500.Psi() becomes 500.PsiGauge(), where the library has such a literal.
    private static string Pressure(string written, string wanted)
    {
        var ending = wanted == "GaugePressure" ? "Gauge" : "Absolute";
        var units = LibraryTypes.LiteralsOf(wanted);
        if (PressureLiteral().Match(written) is { Success: true } literal)
        {
            var unit = literal.Groups["unit"].Value + ending;
            return $"write {literal.Groups["number"].Value}.{(units.Contains(unit) ? unit : "Bar" + ending)}()";
        }

        if (PressureFactory().Match(written) is { Success: true } made)
            return $"write {made.Groups["number"].Value}.{(made.Groups["unit"].Value.StartsWith("Pound", StringComparison.Ordinal) ? "Psi"
                : "Bar")}{ending}()";
        return written.Length > 0 && Name().IsMatch(written) && wanted is not null
            ? $"write {written}.{ending}() if {written} is {(ending == "Gauge" ? "above ambient" : "above vacuum")}, or a number such as "
                + $"500.Psi{ending}()"
            : $"write a number such as 500.Psi{ending}() or 35.Bar{ending}()";
    }

    private static string Receiver(string written) =>
        written.Length == 0 ? "12" : Name().IsMatch(written) || Number().IsMatch(written) ? written : $"({written})";

    [GeneratedRegex(@"^(?<number>[\w.]+?)\.(?<unit>Psi|Bar|Kilopascals?|Megapascals?|Pascals?)\(\)$")]
    private static partial Regex PressureLiteral();

    [GeneratedRegex(@"^Pressure\.From(?<unit>Bars?|PoundsForcePerSquareInch)\((?<number>[^()]+)\)$")]
    private static partial Regex PressureFactory();

    [GeneratedRegex(@"^[A-Za-z_][\w.]*$")]
    private static partial Regex Name();

    [GeneratedRegex(@"^\d[\d_]*(\.\d+)?$")]
    private static partial Regex Number();

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capital();
}
