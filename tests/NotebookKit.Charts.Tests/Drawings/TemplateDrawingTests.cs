using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Drawings;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Drawings;

public sealed class TemplateDrawingTests
{
    // Both sheets less margins of 10 mm.
    private const double A4Width = 190, LetterHeight = 259.4;

    private static readonly TemplateSheet Curlew = Of(AllDrawings.Read("curlew.json").Stage.Body!);

    private static readonly TemplateSheet Large = Of(new([new BodyTube(900.Millimetres(), 300.Millimetres())],
        [FinSet.Trapezoidal(4, 520.Millimetres(), 300.Millimetres(), 400.Millimetres(), 100.Millimetres(), 4.Millimetres(),
            300.Millimetres())]));

    public static TheoryData<bool> Sizes => [false, true];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Pieces_cover_each_pattern_whole_and_lie_over_each_other(bool large)
    {
        var set = large ? Large : Curlew;
        var tiles = TemplateDrawing.Pages(set).SelectMany(p => p.Tiles).ToList();
        foreach (var template in set.Templates)
        {
            var own = tiles.Where(t => t.Template == template.Name).ToList();
            Covers(own.Select(t => (t.FromMm.Along, t.SizeMm.Along)).Distinct(), template.Length.Millimeters);
            Covers(own.Select(t => (t.FromMm.Across, t.SizeMm.Across)).Distinct(), template.Width.Millimeters);
            // A grid without a gap: as many pieces as rows times columns.
            Assert.Equal(own.Max(t => t.Row) * own.Max(t => t.Column), own.Count);
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Pages_fit_A4_and_letter_and_bear_their_number(bool large)
    {
        var pages = TemplateDrawing.Pages(large ? Large : Curlew);
        Assert.All(pages, p =>
        {
            var svg = XElement.Parse(p.Svg);
            Assert.True(Mm(svg.Attribute("width")!.Value) <= A4Width && Mm(svg.Attribute("height")!.Value) <= LetterHeight);
            Assert.Contains($"page {p.Number} of {pages.Count}", svg.Value, StringComparison.Ordinal);
            Assert.All(p.Tiles, t => Assert.True(t.AtMm.X + t.SizeMm.Along <= A4Width && t.AtMm.Y + t.SizeMm.Across <= Mm(svg.Attribute(
                "height")!.Value), t.ToString()));
        });
        Assert.Equal(Enumerable.Range(1, pages.Count), pages.Select(p => p.Number));
    }

    [Fact]
    public void Lengths_on_paper_are_those_of_the_design()
    {
        var pages = TemplateDrawing.Pages(Curlew).Select(p => XElement.Parse(p.Svg)).ToList();
        var fin = Points(pages[0].Descendants().First(e => e.Attribute("class")?.Value == "template").Descendants().First(e =>
            e.Name.LocalName == "polygon"));
        Assert.Equal(130, fin.Max(p => p.X) - fin.Min(p => p.X), 0.1);
        Assert.Equal(80, fin.Max(p => p.Y) - fin.Min(p => p.Y), 0.1);
        var holes = pages.SelectMany(p => p.Descendants()).Where(e => e.Name.LocalName == "circle").Select(e => 2 * double.Parse(
            e.Attribute("r")!.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Contains(holes, d => Math.Abs(d - 71.5) < 0.1);
        var ruler = pages[0].Descendants().First(e => e.Attribute("class")?.Value == "ruler-mm").Elements().First();
        Assert.Equal(100, double.Parse(ruler.Attribute("x2")!.Value, CultureInfo.InvariantCulture) - double.Parse(
            ruler.Attribute("x1")!.Value, CultureInfo.InvariantCulture), 0.01);
        var inches = pages[0].Descendants().First(e => e.Attribute("class")?.Value == "ruler-in").Elements().First();
        Assert.Equal(4 * 25.4, double.Parse(inches.Attribute("x2")!.Value, CultureInfo.InvariantCulture) - double.Parse(
            inches.Attribute("x1")!.Value, CultureInfo.InvariantCulture), 0.01);
    }

    // The cut mark of a long strip, on whichever piece it is, stands where the cut list has it.
    [Fact]
    public void A_mark_on_a_later_piece_keeps_its_place()
    {
        var cut = CutList.Of(AllDrawings.Read("curlew.json").Vessel.Layup()).Pieces[0].Along.Millimeters;
        var found = TemplateDrawing.Pages(Curlew).SelectMany(p => XElement.Parse(p.Svg).Descendants().Where(e =>
            e.Attribute("class")?.Value == "template").Zip(p.Tiles)).Where(t => t.Second.Template.StartsWith("strip",
            StringComparison.Ordinal) && t.Second.FromMm.Along <= cut && t.Second.FromMm.Along + t.Second.SizeMm.Along >= cut).ToList();
        Assert.NotEmpty(found);
        Assert.All(found, t => Assert.Contains(t.First.Descendants().Where(e => e.Name.LocalName == "polyline").Select(Points),
            l => l.All(p => Math.Abs(p.X - t.Second.AtMm.X + t.Second.FromMm.Along - cut) < 0.1)));
    }

    private static TemplateSheet Of(FinnedBody body) => TemplateSheet.Of("Curlew",
        CutList.Of(AllDrawings.Read("curlew.json").Vessel.Layup()), body);

    private static void Covers(IEnumerable<(double From, double Size)> pieces, double whole)
    {
        var reach = 0.0;
        foreach (var (from, size) in pieces.OrderBy(p => p.From))
        {
            Assert.True(from == 0 || Math.Abs(reach - from - 10) < 1e-6, $"from {from}, reached {reach}");
            reach = from + size;
        }

        Assert.Equal(whole, reach, 1e-6);
    }

    private static double Mm(string text) => double.Parse(text.Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    private static List<(double X, double Y)> Points(XElement line) => [.. line.Attribute("points")!.Value.Split(' ').Select(p =>
        p.Split(',')).Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];
}
