using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Life.Damage;

/// <summary>How the life of a fibre under sustained load falls with the load and scatters.</summary>
/// <param name="Material">Fibre and resin that they were measured on.</param>
/// <param name="Exponent">Exponent of the stress, ρ [-]; 1 to 200.</param>
/// <param name="Shape">Weibull shape of the life, β [-]; 0.05 to 10.</param>
/// <param name="Reference">Reference time; 0.000001 to 1 000 000 h.</param>
/// <param name="Source">Where they are printed. Without a published source a result warns, and may only shorten a life.</param>
public sealed record StressRuptureParameters(string Material, double Exponent, double Shape, Duration Reference, Source Source)
{
    /// <summary>Like those of aramid, recalled: for learning the arithmetic, not for a vessel. Never to be taken for carbon.</summary>
    public static StressRuptureParameters LikeAramid { get; } = new("like aramid, for learning only", 24, 1.2, 1.Hours(),
        LifeSources.StressRupture);

    /// <summary>Why there are none for carbon here.</summary>
    public static Finding NoDataForCarbon { get; } = LifeFindings.NoStressRuptureParametersForCarbon();

    /// <summary>Whether they come from a standard or a publication that is named with author, title and year.</summary>
    public bool IsPublished => SourceCheck.IsPublished(Source);

    /// <summary>Everything that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. new[]
        {
            new ValidRange<double>(1, 200).Find(Exponent, "exponent of the stress", "Aramid is near 24; stiffer fibres are higher."),
            new ValidRange<double>(0.05, 10).Find(Shape, "Weibull shape of the life", "About 1 is usual; below 1 early failures dominate."),
            new ValidRange<double>(1e-6, 1e6).Find(Reference.Hours, "reference time in h", "Check its unit."),
        }.OfType<Finding>()];
        if (!IsPublished)
            findings.Add(LifeFindings.StressRuptureParametersHaveNoSource(Material));
        return findings;
    }
}
