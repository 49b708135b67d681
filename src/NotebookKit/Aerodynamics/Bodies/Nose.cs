using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>
/// A nose that starts at a point and widens to the body. Source of the profiles: J. S. Barrowman, M.S. thesis, 1967, and the usual
/// definitions of the parabolic, power and Haack series (unverified).
/// </summary>
public sealed record Nose : BodyPart
{
    private Nose(NoseShape shape, Length length, Length baseDiameter, double parameter = 0)
    {
        Shape = shape;
        Length = length;
        BaseDiameter = baseDiameter;
        Parameter = parameter;
    }

    /// <summary>Family of the profile.</summary>
    public NoseShape Shape { get; }

    /// <summary>Tip to base; 1 mm to 10 m.</summary>
    public override Length Length { get; init; }

    /// <summary>Outside diameter at the base; 5 mm to 1 m.</summary>
    public Length BaseDiameter { get; init; }

    // K' of the parabolic series, n of the power series, C of the Haack series; not used by the others.
    internal double Parameter { get; }

    /// <inheritdoc/>
    public override string Name { get; init; } = "Nose";

    internal override double ForeM => 0;

    internal override double AftM => BaseDiameter.Meters;

    internal override double WettedM2 => new NoseProfile(this).WettedM2;

    internal override double VolumeM3 => new NoseProfile(this).VolumeM3;

    internal override double PlanformM2 => new NoseProfile(this).PlanformM2;

    internal override double PlanformCentroidM => new NoseProfile(this).PlanformCentroidM;

    internal override double WallAngle
    {
        get
        {
            // Slope where the nose meets the body: zero for every profile that is tangent there.
            var straight = BaseDiameter.Meters / 2 / Length.Meters;
            return Shape switch
            {
                NoseShape.Cone => Math.Atan(straight),
                NoseShape.Parabolic => Math.Atan(straight * (2 - (2 * Parameter)) / (2 - Parameter)),
                NoseShape.Power => Math.Atan(straight * Parameter),
                _ => 0,
            };
        }
    }

    /// <summary>A cone.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    public static Nose Cone(Length length, Length baseDiameter) => new(NoseShape.Cone, length, baseDiameter);

    /// <summary>A tangent ogive: a circular arc tangent to the body.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m, at least half the diameter.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    public static Nose TangentOgive(Length length, Length baseDiameter) => new(NoseShape.TangentOgive, length, baseDiameter);

    /// <summary>Half an ellipsoid.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    public static Nose Ellipsoid(Length length, Length baseDiameter) => new(NoseShape.Ellipsoid, length, baseDiameter);

    /// <summary>The parabolic series.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    /// <param name="bluntness">K' [-]; 0 (cone) to 1 (tangent to the body).</param>
    public static Nose Parabolic(Length length, Length baseDiameter, double bluntness)
        => new(NoseShape.Parabolic, length, baseDiameter, bluntness);

    /// <summary>The power series r ∝ xⁿ.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    /// <param name="exponent">n [-]; 0.5 (paraboloid) to 1 (cone).</param>
    public static Nose Power(Length length, Length baseDiameter, double exponent) => new(NoseShape.Power, length, baseDiameter, exponent);

    /// <summary>The Haack series of least wave drag.</summary>
    /// <param name="length">Tip to base; 1 mm to 10 m.</param>
    /// <param name="baseDiameter">Diameter at the base; 5 mm to 1 m.</param>
    /// <param name="volumeWeight">C [-]; 0 for given length and diameter, 1/3 for given length and volume; 0 to 2/3.</param>
    public static Nose Haack(Length length, Length baseDiameter, double volumeWeight = 0)
        => new(NoseShape.Haack, length, baseDiameter, volumeWeight);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(Ranges.PartLength.Find(Length, $"{Name} length", "Measure from tip to base."));
        findings.AddIf(Ranges.Diameter.Find(BaseDiameter, $"{Name} base diameter", "Give the outside diameter."));
        switch (Shape)
        {
            case NoseShape.TangentOgive when Length < BaseDiameter / 2:
                findings.Add(AerodynamicsFindings.TangentOgiveTooShort(Name, Length, BaseDiameter / 2));
                break;
            case NoseShape.Parabolic:
                findings.AddIf(new ValidRange<double>(0, 1).Find(Parameter, $"{Name} parameter K'",
                    "0 is a cone, 1 is tangent to the body."));
                break;
            case NoseShape.Power:
                findings.AddIf(new ValidRange<double>(0.5, 1).Find(Parameter, $"{Name} exponent n", "0.5 is a paraboloid, 1 a cone."));
                break;
            case NoseShape.Haack:
                findings.AddIf(new ValidRange<double>(0, 2.0 / 3).Find(Parameter, $"{Name} parameter C",
                    "0 or 1/3 are the usual choices."));
                break;
        }

        return findings;
    }

    internal override double DiameterAtM(double fromForeM) =>
        BaseDiameter.Meters * new NoseProfile(this).Radius(Math.Clamp(fromForeM / Length.Meters, 0, 1));
}
