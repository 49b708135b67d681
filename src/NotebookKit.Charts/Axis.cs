using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts;

/// <summary>What an axis measures and in which unit. An axis of numbers without a unit is refused: "-" says that there is none.</summary>
public sealed record Axis
{
    /// <summary>Creates an axis of numbers.</summary>
    /// <param name="name">What it measures: "Thrust".</param>
    /// <param name="unit">Its unit: "N", "bar gauge"; "-" for a plain ratio.</param>
    /// <exception cref="InvalidDesignException">Name or unit is empty.</exception>
    public Axis(string name, string unit)
        : this(name, unit, AxisScale.Linear)
    {
    }

    private Axis(string name, string unit, AxisScale scale)
    {
        List<Finding> findings = [];
        if (string.IsNullOrWhiteSpace(name))
            findings.Add(Finding.Error($"An axis has no name (its unit is '{unit}'). Say what it measures, for example \"Thrust\"."));
        if (scale != AxisScale.Categories && string.IsNullOrWhiteSpace(unit))
            findings.Add(Finding.Error($"Axis '{name}' has no unit. Give one, for example \"N\"; \"-\" says that the number is a "
                + "plain ratio."));
        InvalidDesignException.ThrowIfAny("Chart axis", findings);
        Name = name.Trim();
        Unit = unit.Trim();
        Scale = scale;
    }

    /// <summary>What it measures.</summary>
    public string Name { get; }

    /// <summary>Its unit; empty only on an axis of names.</summary>
    public string Unit { get; }

    /// <summary>How it runs.</summary>
    public AxisScale Scale { get; private init; }

    /// <summary>Where it starts [the axis' own unit]; none lets the data decide.</summary>
    public double? From { get; private init; }

    /// <summary>Where it ends [the axis' own unit]; none lets the data decide.</summary>
    public double? To { get; private init; }

    /// <summary>Name and unit as they stand at the axis: "Thrust [N]".</summary>
    public string Title => Unit.Length == 0 ? Name : $"{Name} [{Unit}]";

    /// <summary>The axis a column of numbers belongs to.</summary>
    /// <param name="series">A named column with its unit.</param>
    public static Axis For(Series series)
    {
        ArgumentNullException.ThrowIfNull(series);
        return new Axis(series.Name, series.Unit);
    }

    /// <summary>An axis of names, which needs no unit.</summary>
    /// <param name="name">What the names are: "Part".</param>
    /// <param name="unit">Their unit where the names are numbers written out: "m/s"; else empty.</param>
    public static Axis OfNames(string name, string unit = "") => new(name, unit, AxisScale.Categories);

    /// <summary>The same axis running in equal ratios.</summary>
    public Axis Logarithmic() => this with { Scale = AxisScale.Logarithmic };

    /// <summary>The same axis over a fixed range.</summary>
    /// <param name="from">Start [the axis' own unit]; any finite value, above zero on a logarithmic axis.</param>
    /// <param name="to">End [the axis' own unit]; any finite value other than the start.</param>
    /// <exception cref="InvalidDesignException">The ends are equal or not finite.</exception>
    public Axis Over(double from, double to)
    {
        if (!double.IsFinite(from) || !double.IsFinite(to) || from == to)
            throw new InvalidDesignException("Chart axis", [Finding.Error($"Axis '{Title}' can't run from {Digits.Round(from)} to "
                + $"{Digits.Round(to)}; both ends must be finite and differ.")]);
        if (Scale == AxisScale.Logarithmic && Math.Min(from, to) <= 0)
            throw new InvalidDesignException("Chart axis", [Finding.Error($"Logarithmic axis '{Title}' can't run from "
                + $"{Digits.Round(from)} to {Digits.Round(to)}; both ends must be above 0.")]);
        return this with { From = from, To = to };
    }
}

/// <summary>How an axis runs.</summary>
public enum AxisScale
{
    /// <summary>Equal steps.</summary>
    Linear,

    /// <summary>Equal ratios; values above zero only.</summary>
    Logarithmic,

    /// <summary>Names instead of numbers: parts, layups, phases.</summary>
    Categories,
}
