using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Factors by which a burst becomes a rating.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Proof">Proof pressure over maximum expected pressure [-]; 1 to 3.</param>
/// <param name="Burst">Burst pressure over maximum expected pressure [-]; above the proof factor, up to 10.</param>
/// <param name="Source">Where the factors come from, and how far that carries.</param>
/// <param name="Covers">What vessels it was written for.</param>
public sealed record RuleSet(string Name, double Proof, double Burst, Source Source, string Covers)
{
    /// <summary>Maximum expected pressure over working pressure [-]: regulator creep, warming in the sun; 1 to 1.5. Common practice, no
    /// source.</summary>
    public double Overshoot { get; init; } = 1.05;

    /// <summary>Largest share of its strength that any part or ply may be proved at; 30 to 95 %. Common practice, no source.</summary>
    public Ratio MaximumProofUse { get; init; } = 67.Percent();

    /// <summary>Highest maximum expected pressure that the rules were written for; none where they set none.</summary>
    public GaugePressure? MaximumPressure { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        Add(new ValidRange<double>(1, 3).Find(Proof, $"{Name}: proof factor", "1.25 to 1.67 is usual."));
        Add(new ValidRange<double>(1, 10).Find(Burst, $"{Name}: burst factor", "2.25 to 3.65 is usual, 5 to 6 for contact-moulded walls."));
        if (!(Burst > Proof)) findings.Add(VesselsFindings.BurstFactorBelowProofFactor(Name, Burst, Proof));
        Add(new ValidRange<double>(1, 1.5).Find(Overshoot, $"{Name}: overshoot", "5 % is common practice."));
        if (MaximumPressure is { } most) Add(new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge()).Find(most,
            $"{Name}: maximum pressure", "Leave it out where the rules set none."));
        Add(new ValidRange<Ratio>(30.Percent(), 95.Percent()).Find(MaximumProofUse, $"{Name}: highest use in a proof",
            "Two thirds is common practice."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
