using NotebookKit.Proofing.Blast;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>A planned proof: what to pump to, how long to hold, what water it should take, what energy is in it, where to stand.</summary>
/// <remarks>Source: ASME PCC-2-2008, Appendices 501-II and 501-III; Kell 1975; Roark 2002; Gere and Timoshenko 1997.</remarks>
public sealed record ProofPlan : Result
{
    /// <summary>Share of the axial stress from pressure that bending between supports may add (common practice, no source).</summary>
    private static readonly Ratio BendingShare = 1.Percent();

    internal ProofPlan(Proof proof, IReadOnlyList<ProofStep> steps, IReadOnlyList<Finding> findings)
    {
        Proof = proof;
        Steps = steps;
        var p = proof.ProofPressure;
        EnergyInWater = StoredEnergy.OfWater(p, proof.Volume, proof.Water);
        EnergyInWall = StoredEnergy.OfWall(p, proof.Filled.WallExpansion(p));
        EnergyInTrappedAir = proof.TrappedAir > Volume.Zero ? StoredEnergy.OfGas(p, proof.Filled.AirLeft(p), proof.Ambient) : Energy.Zero;
        EnergyIfAir = StoredEnergy.OfGas(p, proof.Volume, proof.Ambient);
        StandOff = StandOff.ForEnergy(EnergyInWater + EnergyInWall + EnergyInTrappedAir, proof.StandOffEdition);
        StandOffIfAir = StandOff.ForEnergy(EnergyIfAir, proof.StandOffEdition);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The proof that was planned.</summary>
    public Proof Proof { get; }

    /// <summary>The steps in order; after the proof itself the hold at working pressure for leaks.</summary>
    public IReadOnlyList<ProofStep> Steps { get; }

    /// <summary>Proof pressure.</summary>
    public GaugePressure ProofPressure => Proof.ProofPressure;

    /// <summary>Water the pump has to bring to reach proof pressure.</summary>
    public Volume WaterToPump => Proof.Filled.WaterToPump(ProofPressure);

    /// <summary>Elastic energy of the water at proof pressure.</summary>
    public Energy EnergyInWater { get; }

    /// <summary>Elastic energy of the wall at proof pressure.</summary>
    public Energy EnergyInWall { get; }

    /// <summary>Energy of the trapped air at proof pressure, isentropic.</summary>
    public Energy EnergyInTrappedAir { get; }

    /// <summary>Energy at proof pressure if the vessel were full of air, isentropic: what is not done, and why.</summary>
    public Energy EnergyIfAir { get; }

    /// <summary>Stand-off for the energy that is in the vessel.</summary>
    public StandOff StandOff { get; }

    /// <summary>Stand-off if the vessel were full of air.</summary>
    public StandOff StandOffIfAir { get; }

    /// <summary>Largest distance between supports for which bending adds 1 % to the axial stress; none where no support was
    /// given.</summary>
    public Length? LongestSpan => Proof.Support?.LongestSpan(ProofPressure, BendingShare);

    /// <summary>Fall in pressure at working pressure for a millilitre of water lost.</summary>
    public Pressure DropPerMillilitre => Proof.Filled.DropFor(1.Millilitres(),
        Proof.WorkingPressure).ToUnit(UnitsNet.Units.PressureUnit.Bar);

    /// <summary>Rise in pressure at working pressure for a kelvin of warming.</summary>
    public Pressure RisePerKelvin => Proof.Filled.RiseFor(1.KelvinsOfChange(),
        Proof.WorkingPressure).ToUnit(UnitsNet.Units.PressureUnit.Bar);

    /// <summary>The plan to print and tick.</summary>
    public IReadOnlyList<string> Checklist => ProofChecklist.For(this);

    /// <inheritdoc/>
    public override string Title => $"Proof plan, {Proof.Vessel}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Hydrostatic proof",
        [
            "Water, wall and trapped air are springs side by side; the wall answers in proportion to pressure.",
            "Trapped air stays at the water's temperature while it is compressed.",
            "Energy of air is that of an isentropic expansion of an ideal gas.",
            "Stand-off covers blast only, not fragments.",
        ],
        "Working pressure 1 to 200 bar gauge, water 0 to 60 °C.",
        [ProofingSources.StoredEnergy, ProofingSources.Distance2008, Materials.Fluids.Water.Source, ProofingSources.Cylinder,
            Proof.Wall.Source, Proof.Rule.Source, ProofingSources.Steps]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Working pressure", Proof.WorkingPressure.ToString()),
        new("Proof pressure", ProofPressure.ToString(), $"{Digits.Round(Proof.Rule.Factor)} × working, {Proof.Rule.Name}"),
        new("Total expansion of the vessel at proof", Millilitres(Proof.Filled.WallExpansion(ProofPressure))),
        new("Water to pump to proof", Millilitres(WaterToPump),
            $"wall {Millilitres(Proof.Filled.WallExpansion(ProofPressure))}, water "
            + $"{Millilitres(Proof.Filled.WaterCompressed(ProofPressure))}, air {Millilitres(Proof.Filled.AirCompressed(ProofPressure))}"),
        new("Energy in water, wall and trapped air", StandOff.ShowEnergy(EnergyInWater + EnergyInWall + EnergyInTrappedAir),
            $"wall {StandOff.ShowEnergy(EnergyInWall)}"),
        new("Energy if it were air", StandOff.ShowEnergy(EnergyIfAir),
            $"{Digits.Round(EnergyIfAir / (EnergyInWater + EnergyInWall + EnergyInTrappedAir))} times as much: never proof with air"),
        new("Stand-off", StandOff.Distance.Show(), StandOff.FloorGoverns ? $"the floor governs; formula {StandOff.ByFormula.Show()}"
            : "the formula governs"),
        new("Fall in pressure per millilitre lost", $"{Digits.Round(DropPerMillilitre.Bars)} bar", "at working pressure"),
        new("Rise in pressure per kelvin", $"{Digits.Round(RisePerKelvin.Bars)} bar", "at working pressure, all valves shut"),
        .. LongestSpan is { } span ? [new ResultLine("Longest span between supports", Centimetres(span),
            "bending adds 1 % to the axial stress")] : Array.Empty<ResultLine>(),
        .. Steps.Select((s, i) => new ResultLine($"Step {i + 1}", $"{s.Pressure}, hold {Seconds(s.Hold)}",
            $"{Millilitres(s.WaterToPump)} pumped since no pressure")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override Working Working
    {
        get
        {
            var p = ProofPressure;
            var filled = Proof.Filled;
            var bulk = Proof.Water.BulkModulus.Gigapascals;
            return new(Title,
            [
                new("Proof pressure", @"p_{proof} = k\,p_{work}", $"{Digits.Round(Proof.Rule.Factor, 4)} × {Proof.WorkingPressure}",
                    p.ToString(), Proof.Rule.Source),
                new("Total expansion of the vessel", @"\Delta V_{wall} = V\,\epsilon_V\,\frac{p}{p_\epsilon}",
                    $"{Millilitres(Proof.Volume)} × {Digits.Round(Proof.Wall.VolumeRatio.Percent, 4)} % × {Digits.Round(p.Bar, 4)} bar / "
                    + $"{Digits.Round(Proof.Wall.At.Bar, 4)} bar", Millilitres(filled.WallExpansion(p)), Proof.Wall.Source),
                new("Compression of the water", @"\Delta V_{water} = \frac{V\,p}{K}",
                    $"{Millilitres(Proof.Volume)} × {Digits.Round(p.Bar / 1e4, 4)} GPa / {Digits.Round(bulk, 4)} GPa",
                    Millilitres(filled.WaterCompressed(p)), Materials.Fluids.Water.Source),
                new("Compression of trapped air", @"\Delta V_{air} = V_{air}\,(1 - \frac{p_a}{p + p_a})",
                    $"{Millilitres(Proof.TrappedAir)} × (1 − {Digits.Round(Proof.Ambient.Bar, 4)} / "
                    + $"{Digits.Round(p.ToAbsolute(Proof.Ambient).Bar, 4)})", Millilitres(filled.AirCompressed(p)),
                    ProofingSources.IdealGas),
                new("Water to pump", @"\Delta V = \Delta V_{wall} + \Delta V_{water} + \Delta V_{air}",
                    $"{Millilitres(filled.WallExpansion(p))} + {Millilitres(filled.WaterCompressed(p))} + "
                    + $"{Millilitres(filled.AirCompressed(p))}", Millilitres(WaterToPump), ProofingSources.Spring),
                new("Energy in the water", @"E = \frac{p^2\,V}{2\,K}",
                    $"({Digits.Round(p.Bar / 10, 4)} MPa)² × {Millilitres(Proof.Volume)} / (2 × {Digits.Round(bulk, 4)} GPa)",
                    StandOff.ShowEnergy(EnergyInWater), ProofingSources.Spring),
                new("Energy in the wall", @"E = \frac{1}{2}\,p\,\Delta V_{wall}",
                    $"½ × {Digits.Round(p.Bar / 10, 4)} MPa × {Millilitres(filled.WallExpansion(p))}", StandOff.ShowEnergy(EnergyInWall),
                    ProofingSources.Spring),
                new("Energy if it were air", @"E = \frac{p_t\,V}{\gamma - 1}\,(1 - (\frac{p_a}{p_t})^{(\gamma - 1)/\gamma})",
                    $"{Digits.Round(p.ToAbsolute(Proof.Ambient).Bar / 10, 4)} MPa × {Millilitres(Proof.Volume)} / 0.4 × (1 − "
                    + $"({Digits.Round(Proof.Ambient.Bar, 4)} / {Digits.Round(p.ToAbsolute(Proof.Ambient).Bar, 4)})^0.2857)",
                    StandOff.ShowEnergy(EnergyIfAir), ProofingSources.StoredEnergy),
                .. StandOff.Working.Steps,
            ]);
        }
    }

    internal static string Millilitres(Volume volume) => $"{Digits.Round(volume.Milliliters)} mL";

    internal static string Centimetres(Length length) => $"{Digits.Round(length.Centimeters)} cm";

    internal static string Seconds(Duration duration) => duration >= Duration.FromMinutes(2) ? $"{Digits.Round(duration.Minutes)} min"
        : $"{Digits.Round(duration.Seconds)} s";

    private IEnumerable<Finding> Say()
    {
        foreach (var finding in StandOff.Findings) yield return finding;
        if (Proof.TrappedAir > Volume.Zero && EnergyInTrappedAir > EnergyInWater)
            yield return ProofingFindings.TrappedAirHoldsMoreThanWater(
                StandOff.ShowEnergy(EnergyInTrappedAir), StandOff.ShowEnergy(EnergyInWater));
        if (Proof.Support is { } support && LongestSpan is { } span && support.Span > span)
            yield return ProofingFindings.SupportsStandTooFarApart(Centimetres(support.Span), Centimetres(span), BendingShare);
        if (Proof.Rule.Source.Kind == SourceKind.Unverified)
            yield return ProofingFindings.FactorsAreUnverified(Proof.Rule.Name);
    }
}
