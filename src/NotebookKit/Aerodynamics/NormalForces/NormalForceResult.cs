using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>
/// Normal force and centre of pressure at a small angle of attack, part by part.
/// Source: J. S. Barrowman, M.S. thesis, 1967, ch. 3; F. W. Diederich, NACA TN 2335, 1951; M. M. Munk, NACA TR 184, 1924 (all unverified).
/// </summary>
public sealed record NormalForceResult : StatedResult
{
    /// <summary>Mach number it holds for [-]; 0 to 0.9.</summary>
    public required double Mach { get; init; }

    /// <summary>Diameter that a calibre stands for.</summary>
    public required Length ReferenceDiameter { get; init; }

    /// <summary>Every part that carries normal force.</summary>
    public required IReadOnlyList<NormalForceComponent> Components { get; init; }

    /// <summary>Sum of the slopes CNα on the reference area [1/rad].</summary>
    public double TotalSlope => Components.Sum(c => c.Slope);

    /// <summary>Centre of pressure of the whole, aft of the nose tip.</summary>
    public Length CentreOfPressure => Length.FromMeters(Components.Sum(c => c.Slope * c.At.Meters) / TotalSlope);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Component method for slender finned bodies",
        [
            "Small angle of attack, attached flow, slender body, thin rigid fins evenly spaced.",
            "A body part acts through its change of cross section; a straight tube adds nothing at a small angle.",
            "Fin-body interference by one factor; one set of fins doesn't feel another's wake.",
            "Prandtl-Glauert correction on the fins, none on the body.",
        ],
        "Mach 0 to 0.9, 3 to 6 fins, angle of attack below about 5°. The literature claims about 10 %; no measured finned body stands "
            + "behind it here, so keep a calibre of margin for the method.",
        [Literature.BarrowmanThesis, Literature.BarrowmanReport, Literature.Diederich, Literature.Munk]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Centre of pressure", CentreOfPressure.Show(LengthUnit.Millimeter, 4), "aft of the nose tip"),
        new("Normal-force slope", $"{Digits.Round(TotalSlope, 4)} /rad", $"on {ReferenceDiameter.Show(LengthUnit.Millimeter)} diameter"),
        new("Mach number", Digits.Round(Mach, 2)),
        .. Components.Select(c => new ResultLine(c.Name, $"{Digits.Round(c.Slope, 4)} /rad at {c.At.Show(LengthUnit.Millimeter, 4)}",
            $"{c.Share.Show()} of the slope")),
    ];

    /// <summary>Static margin: how far the centre of pressure lies aft of the centre of gravity [calibres]; positive is stable.</summary>
    /// <param name="centreOfGravity">Centre of gravity, aft of the nose tip; 0 to the vehicle's length.</param>
    public double Margin(Length centreOfGravity) => (CentreOfPressure - centreOfGravity) / ReferenceDiameter;

    /// <summary>Pitching-moment slope Cmα about a centre of gravity, on reference area and diameter [1/rad]; negative is stable.</summary>
    /// <param name="centreOfGravity">Centre of gravity, aft of the nose tip; 0 to the vehicle's length.</param>
    public double MomentSlope(Length centreOfGravity) => -Components.Sum(c => c.Slope * ((c.At - centreOfGravity) / ReferenceDiameter));

    /// <summary>
    /// Pitch-damping derivative Cmq by the pitch rate as q d / 2V [-]; negative damps. Each part sees the sideways speed of its own
    /// station.
    /// </summary>
    /// <param name="centreOfGravity">Centre of gravity, aft of the nose tip; 0 to the vehicle's length.</param>
    public double PitchDamping(Length centreOfGravity) =>
        -2 * Components.Sum(c => c.Slope * Math.Pow((c.At - centreOfGravity) / ReferenceDiameter, 2));
}

/// <summary>What one part adds to the normal force. Source: J. S. Barrowman, M.S. thesis, 1967, ch. 3 (unverified).</summary>
/// <param name="Name">Part.</param>
/// <param name="Slope">Normal-force slope CNα on the reference area [1/rad]; negative for a boat-tail.</param>
/// <param name="At">Its centre of pressure, aft of the nose tip.</param>
/// <param name="Share">Its part of the total slope; the shares add up to 100 %.</param>
public sealed record NormalForceComponent(string Name, double Slope, Length At, Ratio Share);
