using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>A conical change of diameter: a shoulder where it widens, a boat-tail where it narrows.</summary>
/// <param name="Length">Length along the axis; 1 mm to 10 m.</param>
/// <param name="ForeDiameter">Diameter at the fore end; 5 mm to 1 m.</param>
/// <param name="AftDiameter">Diameter at the aft end; 5 mm to 1 m.</param>
public sealed record Transition(Length Length, Length ForeDiameter, Length AftDiameter) : BodyPart
{
    /// <inheritdoc/>
    public override string Name { get; init; } = "Transition";

    internal override double ForeM => ForeDiameter.Meters;

    internal override double AftM => AftDiameter.Meters;

    internal override double WettedM2
    {
        get
        {
            var rise = (AftM - ForeM) / 2;
            return Math.PI / 2 * (ForeM + AftM) * Math.Sqrt((LengthM * LengthM) + (rise * rise));
        }
    }

    internal override double VolumeM3 => LengthM / 3 * (ForeAreaM2 + AftAreaM2 + Math.Sqrt(ForeAreaM2 * AftAreaM2));

    internal override double PlanformM2 => LengthM * (ForeM + AftM) / 2;

    internal override double PlanformCentroidM =>
        LengthM / 3 * (ForeM + (2 * AftM)) / (ForeM + AftM);

    internal override double WallAngle => Math.Atan(Math.Abs(AftM - ForeM) / 2 / LengthM);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(Ranges.PartLength.Find(Length, $"{Name} length", "Measure along the axis."));
        findings.AddIf(Ranges.Diameter.Find(ForeDiameter, $"{Name} fore diameter", "Give the outside diameter."));
        findings.AddIf(Ranges.Diameter.Find(AftDiameter, $"{Name} aft diameter", "Give the outside diameter."));
        return findings;
    }

    internal override double DiameterAtM(double fromForeM) =>
        ForeM + ((AftM - ForeM) * Math.Clamp(fromForeM / LengthM, 0, 1));
}
