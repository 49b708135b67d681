using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>One length of a body of revolution, from its fore end to its aft end. Source: areas and volumes of solids of
/// revolution.</summary>
public abstract record BodyPart
{
    private protected BodyPart()
    {
    }

    /// <summary>What the part is called in tables.</summary>
    public abstract string Name { get; init; }

    /// <summary>Length along the axis; above 0.</summary>
    public abstract Length Length { get; init; }

    /// <summary>Outer surface swept by the flow.</summary>
    public Area WettedArea => Area.FromSquareMeters(WettedM2);

    /// <summary>Volume inside the outer surface.</summary>
    public Volume Volume => Volume.FromCubicMeters(VolumeM3);

    /// <summary>Area of the side view.</summary>
    public Area PlanformArea => Area.FromSquareMeters(PlanformM2);

    internal double LengthM => Length.Meters;

    /// <summary>Outside diameter at the fore end, zero at a tip [m].</summary>
    internal abstract double ForeM { get; }

    /// <summary>Outside diameter at the aft end [m].</summary>
    internal abstract double AftM { get; }

    internal double ForeAreaM2 => Circle(ForeM);

    internal double AftAreaM2 => Circle(AftM);

    internal abstract double WettedM2 { get; }

    internal abstract double VolumeM3 { get; }

    internal abstract double PlanformM2 { get; }

    /// <summary>Centroid of the side view, from the part's fore end [m].</summary>
    internal abstract double PlanformCentroidM { get; }

    /// <summary>Angle of the wall to the axis at the aft end of a widening part, of the whole wall of a cone [rad].</summary>
    internal abstract double WallAngle { get; }

    /// <summary>Outside diameter at a distance from the fore end [m].</summary>
    internal abstract double DiameterAtM(double fromForeM);

    /// <summary>Outside diameter at a distance from the fore end, for drawing.</summary>
    /// <param name="fromFore">Distance from the part's fore end; 0 to its length, held to that.</param>
    public Length DiameterAt(Length fromFore) => Length.FromMeters(Finite.Check(DiameterAtM(fromFore.Meters), "diameter", "m"));

    /// <summary>Everything that is wrong with the part.</summary>
    public abstract IReadOnlyList<Finding> Validate();

    internal static double Circle(double diameterM) => Math.PI / 4 * diameterM * diameterM;
}
