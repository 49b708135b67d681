using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>A straight length of body: a vessel, a fairing, a recovery bay.</summary>
/// <param name="Length">Length along the axis; 1 mm to 10 m.</param>
/// <param name="Diameter">Outside diameter; 5 mm to 1 m.</param>
public sealed record BodyTube(Length Length, Length Diameter) : BodyPart
{
    /// <inheritdoc/>
    public override string Name { get; init; } = "Body";

    internal override double ForeM => Diameter.Meters;

    internal override double AftM => Diameter.Meters;

    internal override double WettedM2 => Math.PI * Diameter.Meters * LengthM;

    internal override double VolumeM3 => AftAreaM2 * LengthM;

    internal override double PlanformM2 => Diameter.Meters * LengthM;

    internal override double PlanformCentroidM => LengthM / 2;

    internal override double WallAngle => 0;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(Ranges.PartLength.Find(Length, $"{Name} length", "Measure along the axis."));
        findings.AddIf(Ranges.Diameter.Find(Diameter, $"{Name} diameter", "Give the outside diameter."));
        return findings;
    }

    internal override double DiameterAtM(double fromForeM) => Diameter.Meters;
}
