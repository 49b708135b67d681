using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Limits;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>How well the vessel is made: what share of the fibre's strength it delivers, how much fibre the plies hold, and how far both
/// scatter.</summary>
/// <remarks>
/// Source: strength against fibre in a flat coupon 0.83 to 0.88, from a fibre maker's data sheet (T300 class, 1760 to 1860 MPa at 60 %
/// of 3530 MPa); two-dimensional braid 10 to 30 % below tape, Cox and Flanagan, NASA CR-4750, 1997, §3.4.2. Their product is 0.58 to
/// 0.79. The default of 0.60 sits at its low end, until the club's own bursts replace it.
/// </remarks>
public sealed record Fabrication
{
    /// <summary>Laid up by hand, wet, squeezed out: the default.</summary>
    public static Fabrication HandLaid { get; } = new();

    /// <summary>Share of the fibre's strength that arrives in the wall, mean; 20 to 110 %.</summary>
    public Ratio Efficiency { get; init; } = 60.Percent();

    /// <summary>Low end of what the efficiency may turn out to be: one in twenty is below; 20 to 110 %.</summary>
    public Ratio EfficiencyLow { get; init; } = 45.Percent();

    /// <summary>High end of what the efficiency may turn out to be: one in twenty is above; 20 to 110 %.</summary>
    public Ratio EfficiencyHigh { get; init; } = 80.Percent();

    /// <summary>
    /// Scatter from one vessel to the next made the same way [-], beyond what materials, angle and fibre fraction bring; 0 to 0.4.
    /// Source: hand-made vessels 8 to 15 % in all, unverified, a design assumption and not data.
    /// </summary>
    public double VesselSpread { get; init; } = 0.08;

    /// <summary>Fibre volume fraction of the plies, mean; 5 to 78.5 %. Source: wet hand lay-up 30 to 45 %, unverified.</summary>
    public Ratio FibreFraction { get; init; } = 40.Percent();

    /// <summary>Standard deviation of the fibre volume fraction; 0 to 15 %.</summary>
    public Ratio FibreFractionSpread { get; init; } = 3.Percent();

    /// <summary>Standard deviation of a sleeve's angle about what its diameter gives; 0° to 10°.</summary>
    public Angle AngleSpread { get; init; } = 1.5.Degrees();

    /// <summary>Share of its stiffness across and in shear that a ply keeps when its resin has cracked; 0.01 to 100 %.</summary>
    public Ratio CrackedStiffness { get; init; } = 1.Percent();

    /// <summary>Whether the liner's share of the load is counted.</summary>
    public bool CountsLiner { get; init; } = true;

    /// <summary>What of it was measured on a vessel that was built, beside what was designed; none for a design. Results show it.</summary>
    public string? AsBuilt { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        Add(CompositeLimits.FindEfficiency(Efficiency));
        Add(CompositeLimits.FindEfficiency(EfficiencyLow));
        Add(CompositeLimits.FindEfficiency(EfficiencyHigh));
        if (!(EfficiencyLow <= Efficiency && Efficiency <= EfficiencyHigh))
            findings.Add(VesselsFindings.FabricationEfficiencyOutOfOrder(EfficiencyLow, Efficiency, EfficiencyHigh));
        Add(new ValidRange<double>(0, 0.4).Find(VesselSpread, "spread from vessel to vessel",
            "It is the coefficient of variation, 0.10 for 10 %."));
        Add(CompositeLimits.FindFibreFraction(FibreFraction, "fibre volume fraction"));
        Add(new ValidRange<Ratio>(0.Percent(), 15.Percent()).Find(FibreFractionSpread, "spread of the fibre volume fraction",
            "3 % is usual by hand."));
        Add(new ValidRange<Angle>(0.Degrees(), 10.Degrees()).Find(AngleSpread, "spread of the angle", "1° to 2° is usual by hand."));
        Add(new ValidRange<Ratio>(0.01.Percent(), 100.Percent()).Find(CrackedStiffness, "cracked stiffness", "1 % is the usual choice."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
