using NotebookKit.Provenance;

namespace NotebookKit.Life.Damage;

/// <summary>How fast the number of fills to failure falls with pressure: N ~ p^(−m).</summary>
/// <param name="Exponent">Slope m of the line of stress against cycles, both in logarithms [-]; 1 to 60.</param>
/// <param name="Source">Where it is printed. Without a published source it may shorten a life and never lengthen it.</param>
/// <remarks>Source: O. H. Basquin, Proc. ASTM 10 (1910) 625 (unverified).</remarks>
public sealed record FatigueSlope(double Exponent, Source Source)
{
    /// <summary>Whether it comes from a standard or a publication that is named with author, title and year.</summary>
    public bool IsPublished => SourceCheck.IsPublished(Source);

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. new[] { new ValidRange<double>(1, 60).Find(Exponent, "slope of stress against cycles",
            "Glass is near 10, carbon is higher.") }.OfType<Finding>()];
        if (!IsPublished)
            findings.Add(LifeFindings.FatigueSlopeHasNoSource());
        return findings;
    }

    /// <summary>Fills that one load uses up as much life as [-]: ratio^m; without a published source never less than 1. Source: Basquin
    /// 1910.</summary>
    /// <param name="overFill">Pressure of the load over pressure of a fill [-]; 0.1 to 3.</param>
    /// <exception cref="InvalidDesignException">The slope is out of range.</exception>
    /// <exception cref="OutOfRangeException">The ratio is out of range.</exception>
    public double FillsFor(double overFill)
    {
        InvalidDesignException.ThrowIfAny("Fatigue slope", Validate());
        new ValidRange<double>(0.1, 3).Check(overFill, "pressure over fill pressure", "A proof is 1.25 to 1.67.");
        var fills = Math.Pow(overFill, Exponent);
        return IsPublished ? fills : Math.Max(1, fills);
    }
}
