using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>
/// Leaving the rail in a crosswind: speed, angle of attack, and the margin at that angle. Source: v = √(2 a L), α = atan(w / v); body lift
/// by H. J. Allen and E. W. Perkins, NACA TR 1048, 1951 (unverified).
/// </summary>
public sealed record RailExitResult : StatedResult
{
    /// <summary>Ratio of exit speed to wind that is wanted [-]; common practice.</summary>
    public const double RequiredRatio = 4;

    /// <summary>Speed off the rail.</summary>
    public required Speed Exit { get; init; }

    /// <summary>Crosswind.</summary>
    public required Speed Wind { get; init; }

    /// <summary>Angle of attack as it leaves.</summary>
    public required Angle AngleOfAttack { get; init; }

    /// <summary>Margin at no angle of attack [calibres].</summary>
    public required double MarginAtZero { get; init; }

    /// <summary>Margin at the angle of attack [calibres]; none beyond 20°, where no model holds.</summary>
    public required double? MarginAtAngle { get; init; }

    /// <summary>Most wind at which the angle is at most 15° and the margin there at least one calibre.</summary>
    public required Speed WindLimit { get; init; }

    /// <summary>Whether speed, angle and margin all hold.</summary>
    public bool Holds => Exit.MetersPerSecond >= RequiredRatio * Wind.MetersPerSecond && MarginAtAngle is >= 1;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Rail exit in a crosswind",
        ["Even acceleration along the rail, friction included in it.",
            "The wind blows across at once as the last guide leaves; the vehicle hasn't turned yet.",
            "Margin with the body's own cross-flow lift."],
        "Angles up to 20°; a rule of thumb, not a simulation of the turn into the wind.",
        [MassLiterature.RangeSafety, MassLiterature.Barrowman]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Speed off the rail", Exit.Show(SpeedUnit.MeterPerSecond),
            Wind > Speed.Zero ? $"{Digits.Round(Exit / Wind)} times the wind; required {RequiredRatio}" : "no wind"),
        new("Angle of attack", AngleOfAttack.Show(AngleUnit.Degree), $"in {Wind.Show()} of wind"),
        new("Margin at that angle", MarginAtAngle is { } margin ? $"{Digits.Round(margin)} calibres" : "none given beyond 20°",
            $"{Digits.Round(MarginAtZero)} calibres at zero"),
        new("Maximum wind", WindLimit.Show(SpeedUnit.MeterPerSecond), "for at most 15° and at least one calibre"),
    ];
}
