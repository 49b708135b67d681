using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Union;
using NetTopologySuite.Operation.Valid;
using NetTopologySuite.Triangulate.Polygon;

namespace NotebookKit.Building.Nests;

/// <summary>The no-fit polygon: where one piece's reference point must not be, so that it doesn't overlap another.</summary>
/// <remarks>
/// Minkowski sum of one outline with the mirrored other, from the sums of their triangles, which are convex. In millimetres. Source: J. A.
/// Bennell, J. F. Oliveira, The geometry of nesting problems: a tutorial, Eur. J. Oper. Res. 184 (2008) 397.
/// </remarks>
internal static class NoFit
{
    private const double Millimetres = 1000;

    public static Polygon PolygonOf(IReadOnlyList<SheetPoint> outline) =>
        GeometryFactory.Default.CreatePolygon([.. outline.Append(outline[0]).Select(p => new Coordinate(p.Along.Meters * Millimetres,
            p.Across.Meters * Millimetres))]);

    public static bool IsSimple(Polygon polygon) => polygon.Area > 0 && new IsValidOp(polygon).IsValid;

    /// <summary>A piece with half of the gap all round it.</summary>
    public static Polygon Grown(Polygon polygon, double gapMm) => gapMm <= 0
        ? polygon
        : (Polygon)polygon.Buffer(gapMm / 2, new BufferParameters(4, EndCapStyle.Round, JoinStyle.Mitre, 5));

    /// <summary>Turned about the origin by quarter turns.</summary>
    public static Polygon Turned(Polygon polygon, int quarters)
        => (Polygon)AffineTransformation.RotationInstance(quarters * Math.PI / 2).Transform(polygon);

    /// <summary>Moved by a vector.</summary>
    public static Geometry Moved(Geometry geometry, Coordinate by)
        => AffineTransformation.TranslationInstance(by.X, by.Y).Transform(geometry);

    /// <summary>Where the moving piece's origin overlaps it with the fixed one.</summary>
    public static Geometry Of(Polygon still, Polygon moving)
    {
        List<Geometry> sums = [];
        var movingParts = Triangles(moving);
        foreach (var part in Triangles(still))
        {
            foreach (var other in movingParts)
            {
                var points = from a in part from b in other select new Coordinate(a.X - b.X, a.Y - b.Y);
                sums.Add(new ConvexHull([.. points], GeometryFactory.Default).GetConvexHull());
            }
        }

        return UnaryUnionOp.Union(sums);
    }

    private static List<Coordinate[]> Triangles(Polygon polygon)
    {
        var triangles = ConstrainedDelaunayTriangulator.Triangulate(polygon);
        return [.. Enumerable.Range(0, triangles.NumGeometries).Select(i => triangles.GetGeometryN(i).Coordinates[..3])];
    }
}
