using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Resins;

/// <summary>The rounded fillets of adhesive along both sides of every fin root.</summary>
/// <remarks>
/// Cross-section between a plane fin that stands on the axis and a round body, bounded by an arc that touches both. Source: plane geometry;
/// on a flat body it is (1 − π/4) r².
/// </remarks>
/// <param name="Body">Outer diameter of the body; 10 mm to 1 m.</param>
/// <param name="FinThickness">Thickness of the fin; 0.1 to 30 mm, below half of the body.</param>
/// <param name="Root">Length of the root; 5 mm to 2 m.</param>
/// <param name="Radius">Radius of the fillet; 1 to 100 mm.</param>
/// <param name="Fins">Number of fins; 1 to 12.</param>
public sealed record FinFillets(Length Body, Length FinThickness, Length Root, Length Radius, int Fins)
{
    /// <summary>Left in the cup and wiped off, over what stays; 0 to 200 %, 30 % unless given (common practice).</summary>
    public Ratio Waste { get; init; } = 30.Percent();

    /// <summary>Area of one fillet across the root. Source: as the type.</summary>
    public Area Section
    {
        get
        {
            double body = Body.Meters / 2, half = FinThickness.Meters / 2, r = Radius.Meters;
            // Centre of the arc; where it touches the fin; where it touches the body; the corner between them.
            var (cx, cy) = (half + r, Math.Sqrt((body + r) * (body + r) - (half + r) * (half + r)));
            var (bx, by) = (cx * body / (body + r), cy * body / (body + r));
            var corner = Math.Sqrt(body * body - half * half);
            (double X, double Y)[] outline = [(half, corner), (half, cy), (cx, cy), (bx, by)];
            double twice = 0;
            for (var i = 0; i < outline.Length; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
                twice += a.X * b.Y - b.X * a.Y;
            }

            var sector = r * r / 2 * Math.Acos(Math.Clamp(cx / (body + r), -1, 1));
            var angle = Math.Atan2(bx, by) - Math.Atan2(half, corner);
            var segment = body * body / 2 * (angle - Math.Sin(angle));
            return Area.FromSquareMillimeters(1e6 * (Math.Abs(twice) / 2 - sector - segment));
        }
    }

    /// <summary>Adhesive in all fillets, nothing wasted. Source: as the type.</summary>
    public Volume Volume => Volume.FromMilliliters(1e6 * Section.SquareMeters * Root.Meters * 2 * Fins);

    /// <summary>Adhesive to mix, its waste in it.</summary>
    /// <param name="adhesive">The adhesive.</param>
    /// <exception cref="InvalidDesignException">Something is out of range; all reasons are in it.</exception>
    public Mass ToMix(Adhesive adhesive)
    {
        ArgumentNullException.ThrowIfNull(adhesive);
        InvalidDesignException.ThrowIfAny("Fillets", [.. Validate(), .. adhesive.Validate()]);
        return Mass.FromGrams(1000 * Volume.CubicMeters * adhesive.Density.Value.KilogramsPerCubicMeter * (1 + Waste.DecimalFractions));
    }

    /// <summary>Everything wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            new ValidRange<Length>(10.Millimetres(), 1.Metres()).Find(Body, "diameter of the body", "Check its unit."),
            new ValidRange<Length>(0.1.Millimetres(), 30.Millimetres()).Find(FinThickness, "thickness of the fin", "Check its unit."),
            new ValidRange<Length>(5.Millimetres(), 2.Metres()).Find(Root, "length of the root", "Check its unit."),
            new ValidRange<Length>(1.Millimetres(), 100.Millimetres()).Find(Radius, "radius of the fillet",
                "A tenth of the root chord is usual."),
            new ValidRange<double>(1, 12).Find(Fins, "number of fins", "Three or four are usual."),
            new ValidRange<Ratio>(0.Percent(), 200.Percent()).Find(Waste, "adhesive wasted", "A third is common practice."),
            FinThickness < Body / 2 ? null : BuildingFindings.FinTooThickForBody(FinThickness, Body),
        ];
        return [.. findings.OfType<Finding>()];
    }
}
