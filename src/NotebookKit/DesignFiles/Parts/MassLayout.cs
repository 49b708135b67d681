using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Flight.Design;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>Puts masses where the layout has them: the vessel at its nozzle's station, fins and body parts where the body has
/// them.</summary>
/// <remarks>Source: centroids of a polygon and of a thin even shell of small slope (geometry).</remarks>
internal static class MassLayout
{
    public const string Vessel = "vessel", Fins = "fins";

    /// <summary>The mass budget of lines.</summary>
    public static MassBudget Of(IReadOnlyList<MassLine> lines, PressureVessel vessel, FinnedBody body, Length? nozzleAt)
    {
        Layup? layup = null;
        return new([.. lines.Select(line => Part(line, line.Of == Vessel ? layup ??= vessel.Layup() : null, vessel, body, nozzleAt))]);
    }

    /// <summary>What a line says it is the mass of, but the layout doesn't have; none where it has it.</summary>
    public static string? Unknown(MassLine line, FinnedBody? body) => line.Of switch
    {
        null or Vessel => null,
        Fins => body?.Fins.Count > 0 ? null : Fins,
        _ => body?.Parts.Any(p => p.Name == line.Of) == true ? null : line.Of,
    };

    private static MassPart Part(MassLine line, Layup? layup, PressureVessel vessel, FinnedBody body, Length? nozzleAt)
    {
        var (at, extent, diameter) = line.Of switch
        {
            null => (line.At, Length.Zero, Length.Zero),
            Vessel => (line.At ?? nozzleAt - layup!.CentreOfMass, vessel.Length, layup!.OuterDiameter),
            Fins => OfFins(body),
            _ => OfBody(body, line.Of),
        };
        var mass = line.Weighed ?? line.Estimated ?? layup!.Mass;
        return new(line.Name, mass, line.At ?? at!.Value)
        {
            Extent = line.Extent ?? extent,
            Diameter = line.Diameter ?? diameter,
            Solid = line.IsSolid,
            Basis = line.Weighed is null ? MassBasis.Estimated : MassBasis.Weighed,
            Spread = line.Spread,
        };
    }

    private static (Length? At, Length Extent, Length Diameter) OfFins(FinnedBody body)
    {
        var fins = body.Fins[0];
        var (aft, reach) = Centroid(fins.Planform.Corners);
        var radius = body.RadiusUnderM(fins);
        return (fins.LeadingEdgeAt + Length.FromMeters(aft), fins.Planform.RootLength, Length.FromMeters(2 * (radius + reach)));
    }

    private static (Length? At, Length Extent, Length Diameter) OfBody(FinnedBody body, string name)
    {
        var (part, fore) = body.Placed().First(p => p.Part.Name == name);
        return (Length.FromMeters(fore + part.PlanformCentroidM), part.Length, Length.FromMeters(Math.Max(part.ForeM, part.AftM)));
    }

    private static (double AftM, double OutM) Centroid(IReadOnlyList<PlanformPoint> corners)
    {
        double area = 0, aft = 0, reach = 0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var cross = (a.Aft.Meters * b.Out.Meters) - (b.Aft.Meters * a.Out.Meters);
            area += cross / 2;
            aft += (a.Aft.Meters + b.Aft.Meters) * cross / 6;
            reach += (a.Out.Meters + b.Out.Meters) * cross / 6;
        }

        return (aft / area, reach / area);
    }
}
