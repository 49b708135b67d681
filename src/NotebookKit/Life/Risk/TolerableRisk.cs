using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;

namespace NotebookKit.Life.Risk;

/// <summary>A chance of death in a year that an authority has put a name to.</summary>
/// <param name="Name">What it is.</param>
/// <param name="PerYear">Chance of death of one person in a year [-]; 1e-12 to 0.1.</param>
/// <param name="Source">Where it is printed.</param>
/// <remarks>A burst is not a death: this compares the worst that could follow. Source: HSE, Reducing risks, protecting people,
/// 2001.</remarks>
public sealed record TolerableRisk(string Name, double PerYear, Source Source)
{
    /// <summary>Below this a risk is broadly acceptable: one in a million a year. Source: R2P2, paragraph 130.</summary>
    public static TolerableRisk BroadlyAcceptable { get; } = new("broadly acceptable", 1e-6, LifeSources.TolerableRisk);

    /// <summary>Limit for members of the public on whom it is imposed: one in ten thousand a year. Source: R2P2, paragraph 132.</summary>
    public static TolerableRisk PublicLimit { get; } = new("limit for the public", 1e-4, LifeSources.TolerableRisk);

    /// <summary>Limit for workers: one in a thousand a year. Source: R2P2, paragraph 132.</summary>
    public static TolerableRisk WorkerLimit { get; } = new("limit for workers", 1e-3, LifeSources.TolerableRisk);

    /// <summary>All of them, smallest first.</summary>
    public static IReadOnlyList<TolerableRisk> All { get; } = [BroadlyAcceptable, PublicLimit, WorkerLimit];

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[] { new ValidRange<double>(1e-12, 0.1).Find(PerYear, "chance in a year",
            "One in a million is 0.000001.") }.OfType<Finding>()];

    /// <summary>The chance that one fill may have for the year to come out so [-]. Source: independent tries.</summary>
    /// <param name="fillsPerYear">Fills in a year that one person stands by; 1 to 100 000.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    /// <exception cref="InvalidDesignException">The chance is out of range.</exception>
    public double PerFill(int fillsPerYear)
    {
        InvalidDesignException.ThrowIfAny(Name, Validate());
        new ValidRange<int>(1, 100_000).Check(fillsPerYear, "fills in a year", "A club's is some tens.");
        return NearZero.AtLeastOnce(PerYear, 1.0 / fillsPerYear);
    }

    /// <summary>The chance over several years [-]. Source: independent tries.</summary>
    /// <param name="years">Number of years; 1 to 100.</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    /// <exception cref="InvalidDesignException">The chance is out of range.</exception>
    public double OverYears(int years)
    {
        InvalidDesignException.ThrowIfAny(Name, Validate());
        return NearZero.AtLeastOnce(PerYear, new ValidRange<int>(1, 100).Check(years, "number of years", "A club's are some tens."));
    }
}
