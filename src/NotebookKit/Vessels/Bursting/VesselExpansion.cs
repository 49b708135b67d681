using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laminates;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Bursting;

/// <summary>How a vessel grows under a pressure, and what its plies then carry.</summary>
/// <param name="Vessel">The vessel.</param>
/// <param name="Pressure">Pressure inside.</param>
/// <param name="Strain">Strain of the straight part.</param>
/// <param name="Plies">What each family of fibres carries.</param>
/// <param name="IsSound">Whether nothing has cracked or yielded yet, so that it comes back elastically.</param>
/// <param name="Steps">What has given way on the way there.</param>
/// <param name="HoopForce">Pull around, p·R, a width.</param>
/// <remarks>
/// Sound wall: {ε} = A⁻¹{N} with N = pR around and pR/2 along; ΔV/V = (1 + εh)²(1 + εa) − 1, which is 2εh + εa for small strains. The
/// ends are taken as stiff. Source: Timoshenko; Roark, Formulas for Stress and Strain; Jones, Mechanics of Composite Materials, 2nd ed.
/// 1999, ch. 4.
/// </remarks>
public sealed record VesselExpansion(
    PressureVessel Vessel, GaugePressure Pressure, TubeStrain Strain, IReadOnlyList<PlyLoading> Plies, bool IsSound,
        IReadOnlyList<BurstStep> Steps, ForcePerLength HoopForce) : Result
{
    private static readonly ModelCard Card = new(
        "Growth of a closed tube",
        ["Straight part only; the ends are stiff.", "Before first-ply failure the wall is linear and elastic; past it, the ply-by-ply "
            + "path of the burst model.", "Short time: plastic liners creep."],
        "Up to the burst of the wall; the elastic answer up to first-ply failure or yield.",
        [VesselSources.TubeGrowth, VesselSources.Jones]);

    /// <summary>Growth of the volume of the straight part.</summary>
    public Volume ElasticExpansion => Volume.FromMilliliters(1e6 * Straight * Strain.Volume.DecimalFractions);

    /// <summary>Growth of the volume for a pressure [mL/bar]: what a proof reads on its burette. 0 at no pressure.</summary>
    public double CompliancePerBar => Pressure.Bar > 0 ? ElasticExpansion.Milliliters / Pressure.Bar : 0;

    /// <summary>Growth of the bore.</summary>
    public Length BoreIncrease => Length.FromMicrometers(Vessel.Liner.Bore.Micrometers * Strain.Hoop.DecimalFractions);

    /// <summary>Growth of the straight length; below 0 where the vessel shortens.</summary>
    public Length LengthIncrease => Length.FromMicrometers(Vessel.Length.Micrometers * Strain.Axial.DecimalFractions);

    /// <summary>The family of fibres that is used most.</summary>
    public PlyLoading? MaximumUse => Plies.MaxBy(p => p.FibreUse.DecimalFractions);

    private double Straight => Math.PI / 4 * Vessel.Liner.Bore.Meters * Vessel.Liner.Bore.Meters * Vessel.Length.Meters;

    /// <inheritdoc/>
    public override string Title => $"Growth at {Pressure}, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => [.. FindDamage(), .. Vessel.OwnValues];

    private IEnumerable<Finding> FindDamage() => IsSound
        ? []
        : [VesselsFindings.WallIsNoLongerSound(Pressure, Steps.Select(s => $"{Words(s)} at {s.Pressure}"))];

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Strain around", Strain.Hoop.Show(), $"bore grows {BoreIncrease.Show(LengthUnit.Millimeter)}"),
        new("Strain along", Strain.Axial.Show(), $"length grows {LengthIncrease.Show(LengthUnit.Millimeter)}"),
        new("Elastic expansion", ElasticExpansion.Show(), $"{Strain.Volume.Show()}, {Digits.Round(CompliancePerBar)} mL/bar"),
        .. Plies.Select(p => new ResultLine($"{p.Ply} at {p.Angle.Show()}", p.Stress.ToString(),
            $"fibres use {p.FibreUse.Show(2)} of what fabrication delivers{(p.IsCracked ? ", resin cracked" : "")}")),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Pull around and along", @"N_h = p\,R,\quad N_a = \frac{p\,R}{2}", $"{Pressure} × R",
            $"{HoopForce.ToUnit(ForcePerLengthUnit.NewtonPerMillimeter).Show()}, "
            + $"{(HoopForce / 2).ToUnit(ForcePerLengthUnit.NewtonPerMillimeter).Show()}", VesselSources.ThinWall),
        new("Strain", @"\{\varepsilon\} = A^{-1}\{N\}", "A of plies and liner together",
            $"{Strain.Hoop.Show()} around, {Strain.Axial.Show()} along", VesselSources.Jones),
        new("Elastic expansion", @"\frac{\Delta V}{V} = (1+\varepsilon_h)^2(1+\varepsilon_a)-1 \approx 2\varepsilon_h+\varepsilon_a",
            $"straight part {Volume.FromLiters(1000 * Straight).Show()}", $"{Strain.Volume.Show()}, {ElasticExpansion.Show()}",
                VesselSources.TubeGrowth),
    ]);

    private static string Words(BurstStep step) => step.Mode switch
    {
        FailureMode.Matrix => $"resin of {step.Ply} cracked",
        FailureMode.LinerYield => "liner yielded",
        FailureMode.LinerTear => "liner torn",
        _ => $"fibres of {step.Ply} broken",
    };
}
