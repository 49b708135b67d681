using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Drawings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Drawings;

public sealed class VehicleDrawingTests
{
    [Fact]
    public void The_body_is_drawn_to_scale()
    {
        var body = Part(Svg(Vehicles.Trainer()), "body");
        var scale = Number(body, "data-scale");
        var points = Points(body.Elements().First(e => e.Name.LocalName == "polygon"));
        Assert.Equal(10, scale);
        // Coordinates have two decimals.
        Assert.Equal(1262, (points.Max(p => p.X) - points.Min(p => p.X)) * scale, 0.02 * scale);
        Assert.Equal(70, (points.Max(p => p.Y) - points.Min(p => p.Y)) * scale, 0.02 * scale);
    }

    [Fact]
    public void Centres_water_and_dimensions_stand_where_the_model_says()
    {
        var svg = Svg(Vehicles.Trainer());
        var body = Part(svg, "body");
        var (scale, nose) = (Number(body, "data-scale"), Points(body.Elements().First()).Min(p => p.X));
        double Station(double x) => (x - nose) * scale;

        var cg = svg.Descendants().Where(e => e.Attribute("class")?.Value == "centre-of-gravity").Select(e =>
            Station(Points(e.Elements().First()).MinBy(p => p.Y).X)).Order().ToList();
        Assert.Equal(655, cg[0], 0.2);
        Assert.Equal(742, cg[1], 0.2);
        Assert.Equal(905, Station(Points(Part(svg, "centre-of-pressure").Elements().First()).MaxBy(p => p.Y).X), 0.2);
        Assert.Equal(935, Station(Points(Part(svg, "water").Elements().First()).Min(p => p.X)), 0.2);
        var texts = svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
        foreach (var text in new[] { "1262", "CG filled 742", "CG empty 655", "CP 905", "⌀ 70", "90", "160", "water level",
            "CG centre of gravity", "CP centre of pressure" }) Assert.Contains(text, texts);
        var said = string.Join(' ', texts);
        Assert.Contains("Scale 1:10", said, StringComparison.Ordinal);
        Assert.Contains("filled 2.3, empty 3.6", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Dimension_lines_are_as_long_as_they_say()
    {
        var svg = Svg(Vehicles.Trainer());
        var scale = Number(Part(svg, "body"), "data-scale");
        var overall = svg.Descendants().Single(e => e.Attribute("class")?.Value == "dimension" && e.Elements().Any(t => t.Value == "1262"));
        var heads = overall.Elements().Where(e => e.Name.LocalName == "polygon").Select(e => Points(e).First().X).ToList();
        Assert.Equal(1262, (heads[1] - heads[0]) * scale, 0.02 * scale);
    }

    [Fact]
    public void A_long_thin_body_is_broken_and_says_so()
    {
        var drawing = VehicleDrawing.Draw(Vehicles.LongAndThin());
        var svg = XElement.Parse(drawing.Svg);
        Assert.NotNull(Part(svg, "break"));
        Assert.Contains("between the wavy lines", svg.Value, StringComparison.Ordinal);
        // The number is the true length, whatever is left out.
        Assert.Contains(svg.Descendants(), e => e.Name.LocalName == "text" && e.Value == "2600");
    }

    [Fact]
    public void An_unstable_vehicle_is_called_so() => Assert.Contains("UNSTABLE", VehicleDrawing.Draw(Vehicles.LongAndThin()).ToString(),
        StringComparison.Ordinal);

    [Fact]
    public void Every_number_of_fins_is_drawn()
    {
        foreach (var count in new[] { 2, 3, 4, 5, 6, 8 })
        {
            var trainer = Vehicles.Trainer();
            var svg = Svg(trainer with { Fins = [trainer.Fins[0] with { Count = count }] });
            Assert.Equal(count, svg.Descendants().Count(e => e.Attribute("class")?.Value == "fin"));
            Assert.Equal(count, Part(svg, "front").Elements().Count(e => e.Name.LocalName == "polygon"));
        }
    }

    [Fact]
    public void A_bare_body_is_enough() => Assert.DoesNotContain("NaN",
        VehicleDrawing.Draw(new DrawingModel("tube", [Vehicles.P(0, 20), Vehicles.P(300, 20)])).Svg, StringComparison.Ordinal);

    [Fact]
    public void Hostile_names_stay_text()
    {
        var svg = Svg(Vehicles.Trainer() with { Title = "<script>alert(1)</script>",
            Labels = [new StationMark("<img onerror=x>", 100.Millimetres())] });
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "img");
    }

    [Fact]
    public void Everything_wrong_is_reported_at_once()
    {
        var model = Vehicles.Trainer() with { CentreOfPressure = 2.Metres(),
            CentresOfGravity = [new StationMark("filled", (-5).Millimetres())], Vessel = [], Fins = [new FinOutline(1, [], Length.Zero)] };
        var refusal = Assert.Throws<InvalidDesignException>(() => VehicleDrawing.Draw(model));
        Assert.Equal(6, refusal.Findings.Count);
        Assert.Contains("Centre of pressure is at 2 m, off the body", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(100, -1)]
    [InlineData(5000, 35)]
    public void A_bad_outline_is_refused(double station, double radius)
    {
        var trainer = Vehicles.Trainer();
        Assert.Throws<InvalidDesignException>(() => VehicleDrawing.Draw(trainer
            with { Outline = [new OutlinePoint(Length.FromMillimeters(station), Length.FromMillimeters(radius)), .. trainer.Outline] }));
    }

    [Fact]
    public void The_same_model_is_the_same_drawing() => Assert.Equal(VehicleDrawing.Draw(Vehicles.Trainer()).Svg,
        VehicleDrawing.Draw(Vehicles.Trainer()).Svg);

    private static XElement Svg(DrawingModel model) => XElement.Parse(VehicleDrawing.Draw(model).Svg);

    private static XElement Part(XElement svg, string name) => svg.Descendants().Single(e => e.Attribute("class")?.Value == name);

    private static double Number(XElement element, string name)
        => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static List<(double X, double Y)> Points(XElement polygon) =>
        [.. polygon.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',')).Select(p => (double.Parse(p[0],
            CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];
}
