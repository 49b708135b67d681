using NotebookKit.Provenance;
using ColumnOfNumbers = NotebookKit.Quantities.Series;

namespace NotebookKit.Logs;

/// <summary>Which column of a table is the pressure, the height, the mass: the one the mapping names, the one of that name, or the only one
/// that can be it.</summary>
/// <param name="Name">What the column is called where a log is written for this library.</param>
/// <param name="Units">Units a column of the kind is handed on in.</param>
/// <param name="Hints">Parts of names that choose among several, in capitals.</param>
/// <param name="Allowed">What to say of its unit.</param>
internal sealed record LogRole(string Name, string[] Units, string[] Hints, string Allowed)
{
    public static LogRole GaugePressure { get; } = new("pressure", ["bar gauge", "bar absolute", LogUnit.Unreferenced], ["PRESS"],
        "a pressure column is in bar, psi, kPa ... with 'gauge' or 'absolute'.");

    public static LogRole StaticPressure { get; } = new("pressure", ["bar absolute", LogUnit.Unreferenced], ["PRESS", "BARO"],
        "an altimeter reads absolute pressure: Pa, hPa, mbar ... with 'absolute'.");

    public static LogRole Height { get; } = new("height", ["m"], ["HEIGHT", "ALT", "AGL"], "a height is in m or ft.");

    public static LogRole Temperature { get; } = new("temperature", ["°C"], ["TEMP"], "'temperature' must be in °C or a unit of the "
        + "same kind.");

    public static LogRole Expansion { get; } = new("expansion", ["mL"], ["EXPAN", "BURETTE", "WATER"],
        "'expansion' must be in mL or a unit of the same kind.");

    public static LogRole Mass { get; } = new("mass", ["g"], ["MASS", "WEIGHT", "SCALE"], "'mass' must be in g or a unit of the same "
        + "kind.");

    public static LogRole Force { get; } = new("force", ["N"], ["FORCE", "THRUST", "LOAD"],
        "'force' must be in N or a unit of the same kind.");

    /// <summary>Whether a log of these roles wants a column of a unit.</summary>
    public static Func<LogUnit, bool> Wanted(params LogRole[] roles) => unit => roles.Any(r => r.Units.Contains(unit.Canonical));

    /// <summary>The column; none where no column can be it.</summary>
    /// <param name="table">The log.</param>
    /// <param name="findings">Told what was guessed.</param>
    /// <exception cref="LogFormatException">Two columns can be it, or the one of its name is in another kind of unit.</exception>
    public ColumnOfNumbers? Find(LogTable table, ICollection<Finding> findings)
    {
        if (table.Roles.TryGetValue(Name, out var mapped)) return Checked(table, table.Column(mapped));
        if (table.Has(Name)) return Checked(table, table.Column(Name));
        if (table.Skipped.FirstOrDefault(s => string.Equals(s.Name, Name, StringComparison.OrdinalIgnoreCase)) is { } skipped)
            throw new LogFormatException(table.File, skipped.Line, skipped.Name, skipped.Found, skipped.Allowed);
        // A column put beside from another log isn't this log's own.
        var fitting = table.Columns.Where(c => Units.Contains(c.Unit)).ToList();
        var hinted = fitting.Where(IsHinted).ToList();
        var chosen = hinted.Count > 0 ? hinted : fitting;
        if (chosen.Count == 0) return null;
        if (chosen.Count > 1) throw new LogFormatException(table.File, 0, "", $"{Excerpt.Names(chosen.Select(c => c.Name))} could each be "
            + $"the {Name}", $"{MappingFile.Write(table.File, MappingFile.Member(MappingFile.KeyOf(this),
                chosen[0].Name))}, with the column that is meant.");
        findings.Add(Finding.Note($"The {Name} was taken from column '{Excerpt.Of(chosen[0].Name)}', read as {chosen[0].Unit}. "
            + $"Where another is meant, {MappingFile.Write(table.File, $"\"{MappingFile.KeyOf(this)}\": \"its name\"")}."));
        return chosen[0];
    }

    /// <summary>The column, which has to be there.</summary>
    public ColumnOfNumbers Require(LogTable table, ICollection<Finding> findings)
    {
        if (Find(table, findings) is { } found) return found;
        if (table.Skipped.FirstOrDefault(s => Hints.Any(h => s.Name.Contains(h, StringComparison.OrdinalIgnoreCase))) is { } skipped)
            throw new LogFormatException(table.File, skipped.Line, skipped.Name, skipped.Found, skipped.Allowed);
        if (table.Columns.FirstOrDefault(IsHinted) is { } other) return Checked(table, other);
        return table.Column(Name);
    }

    /// <summary>Whether a column's name says that it is of this role.</summary>
    public bool IsHinted(ColumnOfNumbers column) => Hints.Any(h => column.Name.Contains(h, StringComparison.OrdinalIgnoreCase));

    private ColumnOfNumbers Checked(LogTable table, ColumnOfNumbers column) => Units.Contains(column.Unit) ? column
        : throw new LogFormatException(table.File, 0, column.Name, $"the unit is {column.Unit}", Allowed);
}
