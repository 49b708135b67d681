using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Blast;

/// <summary>How far everybody stays from a vessel that holds a given energy, by a published method for gas pressure tests.</summary>
/// <remarks>
/// The distance is the larger of a floor and of R = Rs (k · TNT)^(1/3), k = 2 in the current form and 1 in that of 2008. Up to 135.5 MJ the
/// floor is 30 m, up to 271 MJ it is 60 m: for every vessel a club builds the floor governs. Blast only: fragments, jets of water and
/// a vessel that flies off aren't covered, so cover is needed besides distance.
/// Source: ASME PCC-2-2008, Appendices 501-II and 501-III; factor 2 of the current form unverified.
/// </remarks>
public sealed record StandOff : Result
{
    private StandOff(Energy energy, StandOffEdition edition)
    {
        Energy = energy;
        Edition = edition;
        TntMass = TntEquivalent.Of(energy);
        Floor = energy.Megajoules <= SmallEnergyMegajoules ? 30.Metres() : 60.Metres();
        ByFormula = At(BlastEffect.GlassBreakage.Within);
        Distance = ByFormula > Floor ? ByFormula : Floor;
    }

    private const double SmallEnergyMegajoules = 135.5;

    /// <summary>Energies that the method is written for.</summary>
    public static ValidRange<Energy> EnergyRange => new(Energy.Zero, Energy.FromMegajoules(271));

    /// <summary>Stored energy.</summary>
    public Energy Energy { get; }

    /// <summary>Printing of the formula that was followed.</summary>
    public StandOffEdition Edition { get; }

    /// <summary>The energy as a mass of TNT.</summary>
    public Mass TntMass { get; }

    /// <summary>Distance by the cube-root formula alone, for 20 m/kg^(1/3).</summary>
    public Length ByFormula { get; }

    /// <summary>Least distance that the method allows whatever the formula says.</summary>
    public Length Floor { get; }

    /// <summary>The distance to keep: the larger of formula and floor.</summary>
    public Length Distance { get; }

    /// <summary>Whether the floor, not the formula, sets the distance.</summary>
    public bool FloorGoverns => Floor >= ByFormula;

    /// <summary>Stand-off for a stored energy. Source: ASME PCC-2, Appendix 501-III.</summary>
    /// <param name="energy">Stored energy; 0 to 271 MJ.</param>
    /// <param name="edition">Printing of the formula.</param>
    /// <exception cref="OutOfRangeException">The energy is outside the method.</exception>
    public static StandOff ForEnergy(Energy energy, StandOffEdition edition = StandOffEdition.AsmeLater) =>
        new(EnergyRange.Check(energy.ToUnit(UnitsNet.Units.EnergyUnit.Megajoule), "stored energy",
            "The method asks for a barrier designed for the case above it."), edition);

    /// <summary>Distance by the formula for another scaled distance, without the floor: where which harm is to be expected.</summary>
    /// <param name="scaled">Scaled distance; above 0.</param>
    public Length At(ScaledDistance scaled) =>
        Length.FromMeters(scaled.MetresPerCubeRootKilogram * Math.Cbrt((Edition == StandOffEdition.AsmeLater ? 2 : 1) * TntMass.Kilograms));

    /// <inheritdoc/>
    public override string Title => "Stand-off distance";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Stand-off by TNT equivalence",
        ["All stored energy goes into blast.", "Nothing between vessel and people.",
            "Fragments, jets and a vessel that flies off are not covered."],
        "Stored energy up to 271 MJ.",
        [ProofingSources.StoredEnergy, DistanceSource, BlastEffect.Source]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Stored energy", ShowEnergy(Energy)),
        new("TNT equivalent", $"{Digits.Round(TntMass.Grams)} g",
            $"at {Digits.Round(TntEquivalent.SpecificEnergy.MegajoulesPerKilogram, 6)} MJ/kg"),
        new("Distance by formula", ByFormula.Show(), "20 m/kg^(1/3)"),
        new("Floor of the method", Floor.Show(), FloorGoverns ? "governs" : ""),
        new("Stand-off", Distance.Show(), FloorGoverns ? "the floor governs" : "the formula governs"),
        .. BlastEffect.All.Select(e => new ResultLine($"Blast: {e.Name} within", At(e.Within).Show(), e.Within.ToString())),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => FloorGoverns
        ? [ProofingFindings.FloorOfDistanceGoverns(Floor, ByFormula)]
        : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override Working Working => new(
        Title,
        [
            new("TNT equivalent", @"m = \frac{E}{e}", $"{ShowEnergy(Energy)} / "
                + $"{Digits.Round(TntEquivalent.SpecificEnergy.MegajoulesPerKilogram, 6)} MJ/kg", $"{Digits.Round(TntMass.Grams, 4)} g",
                ProofingSources.StoredEnergy),
            Edition == StandOffEdition.AsmeLater
                ? new("Distance by formula", @"R = R_s\,(2\,m)^{1/3}",
                    $"20 m/kg^(1/3) × (2 × {Digits.Round(TntMass.Kilograms, 4)} kg)^(1/3)", ByFormula.Show(4), DistanceSource)
                : new("Distance by formula", @"R = R_s\,m^{1/3}", $"20 m/kg^(1/3) × ({Digits.Round(TntMass.Kilograms, 4)} kg)^(1/3)",
                    ByFormula.Show(4), DistanceSource),
            new("Stand-off", @"D = \max(R,\,R_{min})", $"max({ByFormula.Show()}, {Floor.Show()})", Distance.Show(),
                ProofingSources.Distance2008),
        ]);

    private Source DistanceSource => Edition == StandOffEdition.AsmeLater ? ProofingSources.DistanceCurrent : ProofingSources.Distance2008;

    internal static string ShowEnergy(Energy energy) => Math.Abs(energy.Joules) switch
    {
        >= 1e6 => $"{Digits.Round(energy.Megajoules)} MJ",
        >= 1e3 => $"{Digits.Round(energy.Kilojoules)} kJ",
        _ => $"{Digits.Round(energy.Joules)} J",
    };
}

/// <summary>Which printing of the distance formula is followed.</summary>
public enum StandOffEdition
{
    /// <summary>Twice the TNT mass under the cube root, the larger distance. Source: ASME PCC-2, later editions (unverified: source not at
    /// hand; confirm before relying on it).</summary>
    AsmeLater,

    /// <summary>The TNT mass under the cube root. Source: ASME PCC-2-2008, Appendix 501-III.</summary>
    Asme2008,
}
