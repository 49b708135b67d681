using NotebookKit.DesignFiles;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Sheets;
using NotebookKit.Tests.DesignFiles;
using UnitsNet;

namespace NotebookKit.Tests.Recovery;

/// <summary>Gores against closed forms: circles and areas of the flat circle and of the hemisphere, and the area of a polygon.</summary>
public class CanopyGoreTests
{
    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(24)]
    public void Gores_of_a_flat_circle_make_its_circumference_and_its_area(int count)
    {
        var gore = CanopyGore.Of(new(CanopyType.FlatCircular, 0.9.Metres()) { Gores = count })!;
        Tolerance.Relative(0.45, gore.Height.Meters, 1e-12);
        Tolerance.Relative(Math.PI * 0.9, count * gore.SkirtWidth.Meters, 1e-12);
        Tolerance.Relative(2 * Math.PI * 0.2, count * gore.WidthAt(0.2.Metres()).Meters, 1e-12);
        Tolerance.Relative(Math.PI / 4 * 0.81, count * AreaOf(gore.Outline(400)), 1e-4);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    public void Gores_of_a_hemisphere_make_its_equator_and_its_area(int count)
    {
        // 2 π r² is the nominal area π/4 D².
        var (gore, r) = (CanopyGore.Of(new(CanopyType.Hemispherical, 1.2.Metres()) { Gores = count })!, 1.2 / Math.Sqrt(8));
        Tolerance.Relative(2 * Math.PI * r * r, Math.PI / 4 * 1.44, 1e-12);
        Tolerance.Relative(Math.PI * r / 2, gore.Height.Meters, 1e-12);
        Tolerance.Relative(2 * Math.PI * r, count * gore.SkirtWidth.Meters, 1e-12);
        // Half-way from apex to skirt the circle of latitude is smaller by the root of a half.
        Tolerance.Relative(2 * Math.PI * r * Math.Sqrt(0.5), count * gore.WidthAt(gore.Height / 2).Meters, 1e-12);
        Tolerance.Relative(2 * Math.PI * r * r, count * AreaOf(gore.Outline(400)), 1e-4);
    }

    [Fact]
    public void Other_types_and_canopies_without_a_number_of_gores_have_no_pattern()
    {
        Assert.Null(CanopyGore.Of(new(CanopyType.FlatCircular, 0.9.Metres())));
        Assert.Null(CanopyGore.Of(new(CanopyType.Conical, 0.9.Metres()) { Gores = 8 }));
        Assert.Contains("4 to 32", Assert.Throws<InvalidDesignException>(() => CanopyGore.Of(new(CanopyType.FlatCircular, 0.9.Metres())
            { Gores = 3 })).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CanopyType.FlatCircular, 4)]
    [InlineData(CanopyType.FlatCircular, 8)]
    [InlineData(CanopyType.Hemispherical, 10)]
    public void The_pattern_is_cut_a_seam_outside_the_line_that_is_sewn(CanopyType type, int count)
    {
        var design = Design.Parse(DesignFixture.CurlewText, "curlew.json");
        var sheet = TemplateSheet.Of("Curlew", CutList.Of(design.Vessel.Layup()), null, canopy: new(type, 0.9.Metres()) { Gores = count });
        var gore = sheet.Templates.Single(t => t.Name == $"gore of the canopy, cut {count}");
        var (cut, sewn) = (Points(gore.Lines.First(l => l.Kind == TemplateLineKind.Cut)),
            Points(gore.Lines.First(l => l.Kind == TemplateLineKind.Mark)));
        // Every corner of the cut is a seam from the sewn outline, and the other way round.
        foreach (var (line, corners) in new[] { (sewn, cut), (cut, sewn) })
            foreach (var corner in corners)
                Assert.InRange(Enumerable.Range(0, line.Count).Min(i => Distance(corner, line[i], line[(i + 1) % line.Count])), 9.99, 16);
        Assert.Equal(0, cut.Min(p => p.X), 1e-9);
        Assert.Equal(gore.Width.Millimeters, cut.Max(p => p.Y), 1e-9);
        Assert.DoesNotContain(sheet.LeftOut, l => l.Contains("gore", StringComparison.OrdinalIgnoreCase));
    }

    private static List<(double X, double Y)> Points(TemplateLine line) => [.. line.Points.Select(p => (p.Along.Millimeters,
        p.Across.Millimeters))];

    // Shoelace formula.
    private static double AreaOf(IReadOnlyList<(Length Along, Length Across)> outline) => Math.Abs(outline.Select((p, i) =>
    {
        var next = outline[(i + 1) % outline.Count];
        return (p.Along.Meters * next.Across.Meters) - (next.Along.Meters * p.Across.Meters);
    }).Sum()) / 2;

    private static double Distance((double X, double Y) p, (double X, double Y) a, (double X, double Y) b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var t = Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return double.Hypot(p.X - a.X - (t * dx), p.Y - a.Y - (t * dy));
    }
}
