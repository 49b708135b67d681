using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>Both truths about a proof: it screens weak vessels out, and it uses up life of those that pass.</summary>
/// <param name="Screening">Strengths, proof and fill.</param>
/// <param name="ProofHold">Time at proof pressure; above 0 to 1000 h.</param>
/// <param name="Fills">Fills that follow; 1 to 1 000 000.</param>
/// <param name="FillHold">Time that each stands filled; above 0 to 1000 h.</param>
/// <remarks>Source: <see cref="ScreeningByProof"/>, <see cref="StressRupture"/> and <see cref="FatigueSlope"/>.</remarks>
public sealed record ProofEffect(ScreeningByProof Screening, Duration ProofHold, int Fills, Duration FillHold)
{
    /// <summary>Name of the vessel, for the heading; may be empty.</summary>
    public string Vessel { get; init; } = "";

    /// <summary>Share of the strength that is left at a fill, after knocks, heat and wear; 5 to 100 %, none where it is not
    /// known.</summary>
    public Ratio? Kept { get; init; }

    /// <summary>Stress-rupture parameters of the fibre; none where there are none, as for carbon here.</summary>
    public StressRuptureParameters? Rupture { get; init; }

    /// <summary>Fatigue slope of the vessel; none where there is none.</summary>
    public FatigueSlope? Slope { get; init; }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. Screening.Validate(), .. Rupture?.Validate() ?? [], .. Slope?.Validate() ?? [], .. new[]
        {
            new ValidRange<double>(1e-4, 1000).Find(ProofHold.Hours, "time at proof pressure in h", "A few minutes are usual."),
            new ValidRange<double>(1e-4, 1000).Find(FillHold.Hours, "time that a fill stands in h", "A quarter of an hour is usual."),
            new ValidRange<int>(1, 1_000_000).Find(Fills, "number of fills", "A hundred is a long life for a hand-laid vessel."),
            Kept is { } kept ? new ValidRange<Ratio>(5.Percent(), 100.Percent()).Find(kept.ToUnit(RatioUnit.Percent),
                "share of the strength that is left", "A vessel that has lost more is scrap.") : null,
            Rupture is not null && Screening.Proof > Screening.Median
                ? LifeFindings.ProofPressureOutOfRange(Screening.Proof, Screening.Median)
                : null,
        }.OfType<Finding>()];

    /// <summary>Both effects in numbers. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public ProofEffectResult Evaluate()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Effect of a proof", findings);
        return new ProofEffectResult(this, findings);
    }
}
