using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Area that an opening takes out of a shell against area that replaces it.</summary>
/// <param name="Opening">The opening.</param>
/// <param name="Pressure">Design pressure.</param>
/// <param name="ShellNeeds">Wall that the shell needs without an opening, tr.</param>
/// <param name="BossNeeds">Wall that the boss needs, trn.</param>
/// <param name="StrengthRatio">Allowable stress of the boss over the shell's, at most 1 [-].</param>
/// <param name="Removed">Area to be replaced, A.</param>
/// <param name="InWall">Spare area of the shell's wall, A1.</param>
/// <param name="InBoss">Spare area of the boss's wall outside the shell, A2.</param>
/// <param name="InWeld">Area of the outer fillet weld, A41.</param>
/// <remarks>Source: ASME Boiler and Pressure Vessel Code, Section VIII Division 1, UG-37, Fig. UG-37.1 (unverified).</remarks>
public sealed record ReinforcementAreas(
    OpeningReinforcement Opening, GaugePressure Pressure, Length ShellNeeds, Length BossNeeds, double StrengthRatio, Area Removed,
        Area InWall, Area InBoss, Area InWeld) : EndModeResult
{
    /// <summary>All the area that replaces.</summary>
    public Area Replaced => InWall + InBoss + InWeld;

    /// <summary>Area that is missing; none where enough is there.</summary>
    public Area Missing => UnitMath.Max(Removed - Replaced, Area.Zero);

    /// <summary>Whether enough area replaces what the opening takes out.</summary>
    public bool IsEnough => Replaced >= Removed;

    /// <inheritdoc/>
    public override string Title => "Reinforcement of an opening by area";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Area replacement, UG-37",
        ["One opening, round, square to the wall, no other near it.", "Neither a pad nor a wall inside the shell is counted."],
        "Openings up to half the inner diameter of the shell, in ductile metal.",
        [ModeSources.Openings]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("verdict", IsEnough ? "enough area" : "too little area", IsEnough ? ""
            : $"{Mm2(Missing)} missing: thicken the boss or the wall, or add a pad"),
        new("area taken out", Mm2(Removed)),
        new("spare area of the wall", Mm2(InWall)),
        new("spare area of the boss", Mm2(InBoss)),
        new("area of the weld", Mm2(InWeld)),
        new("counted along the wall from the axis", Opening.ReachAlong.Show()),
        new("counted out from the wall", Opening.ReachOut.Show()),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Wall that the shell needs", Opening.Shell == OpenedShell.Sphere ? @"t_r = \frac{p\,R}{2\,S\,E - 0.2\,p}"
            : @"t_r = \frac{p\,R}{S\,E - 0.6\,p}",
            $"{Pressure} × {Opening.InnerRadius.Show()}, {Opening.Allowable.Show()}", ShellNeeds.ToUnit(LengthUnit.Millimeter).Show(4),
                ModeSources.Openings),
        new("Area taken out", @"A = d\,t_r + 2\,t_n\,t_r\,(1-f_r)",
            $"{Opening.BossBore.Show()} × {ShellNeeds.ToUnit(LengthUnit.Millimeter).Show()}, f {Digits.Round(StrengthRatio, 4)}",
            Mm2(Removed), ModeSources.Openings),
        new("Spare area of the wall", @"A_1 = \max(d,\ 2\,(t+t_n))\,(E\,t-t_r) - 2\,t_n\,(E\,t-t_r)\,(1-f_r)",
            $"t {Opening.Wall.Show()}, tn {Opening.BossWall.Show()}", Mm2(InWall), ModeSources.Openings),
        new("Spare area of the boss", @"A_2 = 5\,\min(t,\ t_n)\,(t_n-t_{rn})\,f_r",
            $"trn {BossNeeds.ToUnit(LengthUnit.Millimeter).Show()}", Mm2(InBoss), ModeSources.Openings),
    ]);

    private static string Mm2(Area area) => area.ToUnit(AreaUnit.SquareMillimeter).Show();
}
