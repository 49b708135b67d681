using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Pictures;

public sealed class ChartPictureTests
{
    [Fact]
    public void A_curve_stands_where_its_axis_marks_say()
    {
        var svg = XElement.Parse(LineChart.Draw("t", new Series("Time", "s", [0, 10]), new Series("Height", "m", [0, 100])).ToSvg());
        var line = svg.Descendants().Single(e => e.Name.LocalName == "polyline" && e.Attribute("stroke")?.Value == Palette.At(0));
        var ends = line.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',').Select(v => double.Parse(v,
            CultureInfo.InvariantCulture)).ToArray()).ToList();
        Assert.Equal(Mark("0", vertical: false), ends[0][0], 1.0);
        Assert.Equal(Mark("10", vertical: false), ends[^1][0], 1.0);
        Assert.Equal(Mark("100", vertical: true), ends[^1][1] + 4.5, 1.0);

        double Mark(string text, bool vertical) => svg.Descendants().Where(e => e.Name.LocalName == "text" && e.Value == text
            && e.Attribute("text-anchor")!.Value == (vertical ? "end" : "middle"))
            .Select(e => double.Parse(e.Attribute(vertical ? "y" : "x")!.Value, CultureInfo.InvariantCulture)).Single();
    }

    [Fact]
    public void Hostile_text_stays_text()
    {
        const string hostile = "</text><script>alert(1)</script>\u0001";
        var svg = XElement.Parse(LineChart.Draw(hostile, new Series(hostile, "s", [0, 1]), new Series("Height", "m", [0, 1])).ToSvg());
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script");
    }
}
