using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>The wall of a long closed tube as bare laminate, no liner and no ends: what published tube tests are compared with.</summary>
/// <param name="Radius">Mean radius; 2 to 5000 mm.</param>
/// <param name="Plies">Plies from the inside out.</param>
/// <remarks>
/// Source: thin closed tube, N_hoop = p·R and N_axial = p·R/2 (Timoshenko); plies degraded one by one as Jones, Mechanics of
/// Composite Materials, 2nd ed. 1999, §4.5.
/// </remarks>
public sealed record TubeWall(Length Radius, IReadOnlyList<TubePly> Plies)
{
    /// <summary>Share of its stiffness across and in shear that a ply keeps when its resin has cracked; 0.01 to 100 %.</summary>
    public Ratio CrackedStiffness { get; init; } = 1.Percent();

    /// <summary>Total thickness.</summary>
    public Length Thickness => Length.FromMeters(Plies.Sum(p => p.Thickness.Meters));

    /// <summary>All that is wrong with the wall.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings =
        [
            .. new Laminate([.. Plies.Select(p => new LaminatePly(p.Lamina, p.Angle, p.Thickness))]).Validate(),
        ];
        if (new ValidRange<Length>(2.Millimetres(), 5000.Millimetres()).Find(Radius, "radius", "Give the mean radius of the wall.")
            is { } radius) findings.Add(radius);
        if (new ValidRange<Ratio>(0.01.Percent(), 100.Percent()).Find(CrackedStiffness, "cracked stiffness", "1 % is the usual choice.")
            is { } cracked) findings.Add(cracked);
        foreach (var ply in Plies)
        {
            if (new ValidRange<Angle>(0.Degrees(), 90.Degrees()).Find(ply.Angle, $"angle of {ply.Name}",
                "Both signs are laid; give the angle from the axis.") is { } angle)
                findings.Add(angle);
            if (!ply.Strength.IsSound) findings.Add(VesselsFindings.PlyStrengthRefused(ply.Name, ply.Strength.ToString()));
        }

        return findings;
    }

    /// <summary>Moduli of the whole wall, sound. Source: Jones 1999, ch. 4.</summary>
    /// <exception cref="InvalidDesignException">The wall isn't valid.</exception>
    public OffAxisConstants Constants()
    {
        Check();
        var a = default(PlaneStiffness);
        foreach (var ply in Plies)
        {
            // Both signs are laid, so the shear couplings cancel.
            var q = PlaneStiffness.Of(ply.Lamina).Rotated(ply.Angle.Radians);
            a += (q with { S16 = 0, S26 = 0 }) * (ply.Thickness.Meters / Thickness.Meters);
        }

        return OffAxisConstants.Of(a.Inverse(), Plies[0].Lamina.Longitudinal.Pascals);
    }

    /// <summary>Pressure at which the closed tube first fails in a ply and bursts. Source: as the type.</summary>
    /// <param name="criterion">Failure criterion of the sound ply.</param>
    /// <exception cref="InvalidDesignException">The wall isn't valid.</exception>
    public WallFailure Burst(FailureCriterion criterion = FailureCriterion.MaximumStress) => Fail(WallLoad.ClosedTube, criterion);

    /// <summary>Load at which the wall fails under hoop and axial stress in a fixed ratio, fibres not turning. Source: as the
    /// type.</summary>
    /// <param name="hoop">Share around [-]; 0 or above.</param>
    /// <param name="axial">Share along [-]; 0 or above, one of the two above 0.</param>
    /// <param name="criterion">Failure criterion of the sound ply.</param>
    /// <exception cref="InvalidDesignException">The wall isn't valid.</exception>
    /// <exception cref="OutOfRangeException">A share is out of range.</exception>
    public WallFailure Fail(double hoop, double axial, FailureCriterion criterion = FailureCriterion.MaximumStress)
    {
        var range = new ValidRange<double>(0, 1e6);
        range.Check(hoop, "hoop share", "Give the ratio of the stresses, for example 2 to 1.");
        range.Check(axial, "axial share", "Give the ratio of the stresses, for example 2 to 1.");
        if (hoop + axial <= 0) throw new OutOfRangeException("hoop and axial share together", "0", "above 0", "any",
            "A wall without load doesn't fail.");
        return Fail(new WallLoad(hoop, axial, false), criterion);
    }

    /// <summary>Strain of the sound closed tube under pressure, small strains. Source: Timoshenko; Jones 1999, ch. 4.</summary>
    /// <param name="pressure">Gauge pressure; any.</param>
    /// <exception cref="InvalidDesignException">The wall isn't valid.</exception>
    public TubeStrain Expand(GaugePressure pressure)
    {
        var state = Engine(WallLoad.ClosedTube, FailureCriterion.MaximumStress).Sound(pressure.Pascals * Radius.Meters);
        return TubeStrain.Of(state.Hoop, state.Axial);
    }

    /// <summary>Stress in each ply's own axes in the sound closed tube under pressure, plies in order. Source: Kaw 2006, ch. 4.</summary>
    /// <param name="pressure">Gauge pressure; any.</param>
    /// <exception cref="InvalidDesignException">The wall isn't valid.</exception>
    public IReadOnlyList<PlyStress> Stresses(GaugePressure pressure)
    {
        var engine = Engine(WallLoad.ClosedTube, FailureCriterion.MaximumStress);
        var sound = engine.Sound(pressure.Pascals * Radius.Meters);
        return
        [
            .. Enumerable.Range(0, Plies.Count).Select(i => engine.Stress(i, sound)).Select(s => new PlyStress(
                Pressure.FromPascals(s.Along), Pressure.FromPascals(s.Across), Pressure.FromPascals(s.Shear))),
        ];
    }

    internal WallEngine Engine(in WallLoad load, FailureCriterion criterion)
    {
        Check();
        var engine = new WallEngine(Plies.Count);
        engine.Set([.. Plies.Select((p, i) => p.ToLayer(i))], default, load, criterion, CrackedStiffness.DecimalFractions);
        return engine;
    }

    private void Check() => InvalidDesignException.ThrowIfAny("Tube wall", Validate());

    private WallFailure Fail(in WallLoad load, FailureCriterion criterion)
    {
        var engine = Engine(load, criterion);
        var trace = new List<WallEvent>();
        var outcome = engine.Run(trace);
        return WallFailure.Of(this, load, outcome, trace);
    }
}
