using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>
/// The outside of a vehicle as the air sees it: body parts from the tip aft, and fins. Stations are measured from the nose tip, aft
/// positive.
/// Source of its models: J. S. Barrowman, M.S. thesis, 1967; see each verb.
/// </summary>
/// <param name="Parts">Body parts from the tip aft; a nose first, diameters matching where parts meet.</param>
/// <param name="Fins">Fin sets; none for a bare body.</param>
public sealed record FinnedBody(IReadOnlyList<BodyPart> Parts, IReadOnlyList<FinSet> Fins)
{
    private const double JointToleranceM = 0.5e-3;

    /// <summary>What the vehicle is called in titles.</summary>
    public string Name { get; init; } = "vehicle";

    /// <summary>A reference diameter of one's own choice; the largest body diameter where none is given.</summary>
    public Length? Reference { get; init; }

    /// <summary>The length a calibre stands for; the circle of this diameter is the area of every coefficient.</summary>
    public Length ReferenceDiameter => Reference ?? Length.FromMeters(Parts.Max(p => Math.Max(p.ForeM, p.AftM)));

    /// <summary>Area that coefficients refer to.</summary>
    public Area ReferenceArea => Area.FromSquareMeters(ReferenceM2);

    /// <summary>Tip to base of the body.</summary>
    public Length Length => Length.FromMeters(LengthM);

    internal double LengthM => Parts.Sum(p => p.LengthM);

    internal double ReferenceM => ReferenceDiameter.Meters;

    internal double ReferenceM2 => BodyPart.Circle(ReferenceM);

    internal double BaseM => Parts[^1].AftM;

    internal double PlanformM2 => Parts.Sum(p => p.PlanformM2);

    /// <summary>Station of the centroid of the side view [m].</summary>
    internal double PlanformCentroidM
    {
        get
        {
            double moment = 0, area = 0;
            foreach (var (part, fore) in Placed())
            {
                area += part.PlanformM2;
                moment += part.PlanformM2 * (fore + part.PlanformCentroidM);
            }

            return moment / area;
        }
    }

    /// <summary>Everything that is wrong with the body and its fins.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Parts.Count == 0)
        {
            findings.Add(AerodynamicsFindings.BodyHasNoParts());
            return findings;
        }

        if (Parts[0] is not Nose) findings.Add(AerodynamicsFindings.FirstBodyPartIsNotNose(Parts[0].Name));
        foreach (var part in Parts) findings.AddRange(part.Validate());
        for (var i = 1; i < Parts.Count; i++)
        {
            var (fore, aft) = (Parts[i - 1].AftM, Parts[i].ForeM);
            if (Parts[i] is Nose)
                findings.Add(AerodynamicsFindings.NoseIsNotFirstBodyPart(i + 1));
            else if (!(Math.Abs(fore - aft) <= JointToleranceM))
                findings.Add(AerodynamicsFindings.BodyPartsDoNotMeetInDiameter(
                    Parts[i].Name, Length.FromMeters(aft), Parts[i - 1].Name, Length.FromMeters(fore)));
        }

        if (Reference is { } reference) findings.AddIf(Ranges.Diameter.Find(reference, "reference diameter", "Use the body diameter."));
        foreach (var fins in Fins)
        {
            var own = fins.Validate();
            findings.AddRange(own);
            if (own.Count == 0) findings.AddRange(Placement(fins));
        }

        return findings;
    }

    /// <summary>Body parts with the station of their fore end [m].</summary>
    internal IEnumerable<(BodyPart Part, double ForeM)> Placed()
    {
        var fore = 0.0;
        foreach (var part in Parts)
        {
            yield return (part, fore);
            fore += part.LengthM;
        }
    }

    /// <summary>Body radius under the middle of a fin root [m].</summary>
    internal double RadiusUnderM(FinSet fins) => RadiusAtM(fins.LeadingEdgeAt.Meters + (fins.Planform.RootLength.Meters / 2));

    /// <summary>Body radius at a station, held to the body's ends [m].</summary>
    internal double RadiusAtM(double stationM)
    {
        foreach (var (part, fore) in Placed())
            if (stationM < fore + part.LengthM) return part.DiameterAtM(stationM - fore) / 2;
        return BaseM / 2;
    }

    private IEnumerable<Finding> Placement(FinSet fins)
    {
        var lead = fins.LeadingEdgeAt.Meters;
        var trail = lead + fins.Planform.RootLength.Meters;
        if (!(lead >= 0) || !(trail <= LengthM + JointToleranceM))
        {
            yield return AerodynamicsFindings.FinRootLiesOffBody(fins.Name, Length.FromMeters(lead), Length.FromMeters(trail), Length);
            yield break;
        }

        if (Math.Abs(RadiusAtM(lead) - RadiusAtM(trail)) > 0.02 * BaseM)
            yield return AerodynamicsFindings.BodyChangesDiameterUnderFinRoot(fins.Name);
    }
}
