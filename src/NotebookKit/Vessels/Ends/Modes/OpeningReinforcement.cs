using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// An opening with its boss in a metal shell, judged by replacing the area that it takes out of the wall. For comparison: the code's
/// metal rules don't cover a composite wall.
/// </summary>
/// <param name="Shell">Shape of the shell.</param>
/// <param name="InnerRadius">Inner radius of the shell, R; 5 to 2000 mm.</param>
/// <param name="Wall">Wall of the shell, t; 0.1 to 500 mm.</param>
/// <param name="BossOuter">Outer diameter of the boss; above its bore, below the inner diameter of the shell.</param>
/// <param name="BossBore">Bore of the boss, which is the opening, d; 0.5 to 2000 mm and at most half the inner diameter of the
/// shell.</param>
/// <param name="Allowable">Allowable stress of the shell, S; 0.1 to 5000 MPa.</param>
/// <remarks>
/// A wall inside the shell and a pad aren't counted. Source: ASME Boiler and Pressure Vessel Code, Section VIII Division 1, UG-36, UG-37,
/// UG-40 (unverified).
/// </remarks>
public sealed record OpeningReinforcement(OpenedShell Shell, Length InnerRadius, Length Wall, Length BossOuter, Length BossBore,
    Pressure Allowable)
{
    /// <summary>Allowable stress of the boss; the shell's where none is given. 0.1 to 5000 MPa.</summary>
    public Pressure? BossAllowable { get; init; }

    /// <summary>Leg of the outer fillet weld, none where it isn't given; 0 to 100 mm. A fillet of glue doesn't count.</summary>
    public Length FilletLeg { get; init; } = 0.Millimetres();

    /// <summary>Joint efficiency of the shell [-]; 0.1 to 1.</summary>
    public double JointEfficiency { get; init; } = 1;

    /// <summary>Wall of the boss. Source: half the outer diameter less the bore.</summary>
    public Length BossWall => (BossOuter - BossBore) / 2;

    /// <summary>
    /// How far from the opening's axis metal of the shell counts: the larger of d and d/2 + t + tn. Source: UG-40 (unverified).
    /// </summary>
    public Length ReachAlong => UnitMath.Max(BossBore, BossBore / 2 + Wall + BossWall);

    /// <summary>How far from the shell metal of the boss counts: the smaller of 2.5·t and 2.5·tn. Source: UG-40 (unverified).</summary>
    public Length ReachOut => UnitMath.Min(Wall, BossWall) * 2.5;

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        new ValidRange<Length>(5.Millimetres(), 2000.Millimetres())
            .Find(InnerRadius, "inner radius of the shell", "Measure the bore of the vessel."),
        new ValidRange<Length>(0.1.Millimetres(), 500.Millimetres()).Find(Wall, "wall of the shell", "Turned domes are 3 to 10 mm."),
        new ValidRange<Length>(0.5.Millimetres(), InnerRadius).Find(
            BossBore, "bore of the boss",
            "Above half the shell's diameter replacing the area doesn't hold; compute the dome as a ring, or make the opening smaller."),
        ModeInput.Below(BossBore, BossOuter, "bore of the boss", "boss's outside", "The boss needs a wall."),
        ModeInput.Below(BossOuter, InnerRadius * 2, "outer diameter of the boss", "shell's bore", "The boss has to fit in the shell."),
        ModeInput.Stresses.Find(Allowable, "allowable stress of the shell", "Give what the rule set allows, not the strength."),
        BossAllowable is { } boss
            ? ModeInput.Stresses.Find(boss, "allowable stress of the boss", "Give what the rule set allows, not the strength.") : null,
        new ValidRange<Length>(0.Millimetres(), 100.Millimetres())
            .Find(FilletLeg, "leg of the fillet weld", "Give 0 where there is no weld."),
        new ValidRange<double>(0.1, 1).Find(JointEfficiency, "joint efficiency", "1 is a seamless shell."));

    /// <summary>Area taken out of the wall against area that replaces it. Source: UG-37, Fig. UG-37.1 (unverified).</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <exception cref="InvalidDesignException">The opening isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pressure is out of range, or above what shell or boss hold at their stress without an
    /// opening.</exception>
    public ReinforcementAreas AreasAt(GaugePressure pressure)
    {
        InvalidDesignException.ThrowIfAny("Opening", Validate());
        double p = ModeInput.Pressure(pressure), s = Allowable.Pascals, sn = (BossAllowable ?? Allowable).Pascals;
        double t = Wall.Meters, tn = BossWall.Meters, d = BossBore.Meters, r = InnerRadius.Meters;
        var needed = Shell == OpenedShell.Sphere ? p * r / (2 * s * JointEfficiency - 0.2 * p) : p * r / (s * JointEfficiency - 0.6 * p);
        var neededBoss = p * d / 2 / (sn - 0.6 * p);
        Check(needed, t, Wall, "wall of the shell");
        Check(neededBoss, tn, BossWall, "wall of the boss");
        var strength = Math.Min(sn / s, 1);
        var removed = d * needed + 2 * tn * needed * (1 - strength);
        var spare = JointEfficiency * t - needed;
        var lost = 2 * tn * spare * (1 - strength);
        var inWall = Math.Max(d * spare - lost, 2 * (t + tn) * spare - lost);
        var inBoss = 5 * Math.Min(t, tn) * (tn - neededBoss) * strength;
        var inWeld = FilletLeg.Meters * FilletLeg.Meters * strength;
        return new ReinforcementAreas(this, pressure, Length.FromMeters(needed), Length.FromMeters(neededBoss), strength,
            Area.FromSquareMeters(removed), Area.FromSquareMeters(inWall), Area.FromSquareMeters(inBoss), Area.FromSquareMeters(inWeld))
        {
            Findings = [VesselsFindings.RuleIsForWeldedMetalShells()],
        };

        void Check(double least, double there, Length shown, string name)
        {
            if (!(least > 0 && least <= there) && p > 0)
            {
                throw new OutOfRangeException(name, shown.Show(4), least > 0 ? Length.FromMillimeters(1000 * least).Show(4)
                    : "thicker than any wall", "500 mm",
                    $"Even without an opening it takes that much at {pressure}; lower the pressure or thicken the wall.");
            }
        }
    }
}

/// <summary>Shape of the shell that an opening is cut into.</summary>
public enum OpenedShell
{
    /// <summary>A cylinder: the wall of the body.</summary>
    Cylinder,

    /// <summary>A sphere: a hemispherical dome.</summary>
    Sphere,
}
