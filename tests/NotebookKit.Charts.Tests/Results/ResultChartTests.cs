using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Results;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Results;

public sealed class ResultChartTests
{
    public static TheoryData<string> ChartNames => [.. Charts.Keys];

    public static TheoryData<string> DrawingNames => [.. Drawings.Keys];

    public static IReadOnlyDictionary<string, Func<EngineeringChart>> Charts { get; } = new Dictionary<string,
        Func<EngineeringChart>>(StringComparer.Ordinal)
    {
        ["flight"] = Curlew.Flight.Chart,
        ["flight, thrust"] = Curlew.Flight.ChartThrust,
        ["flight, acceleration"] = Curlew.Flight.ChartAcceleration,
        ["full flight"] = Curlew.FullFlight.Chart,
        ["track"] = Curlew.FullFlight.ChartTrack,
        ["path"] = Curlew.FullFlight.ChartPath,
        ["full flight, margin"] = () => Curlew.FullFlight.ChartMargin(),
        ["loads"] = Curlew.FullFlight.ChartLoads,
        ["attitude"] = () => Curlew.SixDegreesFlight.ChartAttitude(),
        ["firing"] = Curlew.Firing.Chart,
        ["gas"] = Curlew.Firing.Curve.ChartPressure,
        ["fill"] = Curlew.Fill.Chart,
        ["vent"] = Curlew.Vent.Chart,
        ["map of water and throat"] = () => new FlightMap(Curlew.Flight.Flight, MapAxis.WaterFraction(10.Percent(), 60.Percent(), 12),
            MapAxis.Throat(8.Millimetres(), 16.Millimetres(), 12)).Compute().Chart(),
        ["map of water and pressure"] = () => new FlightMap(Curlew.Flight.Flight, MapAxis.WaterFraction(10.Percent(), 60.Percent(), 12),
            MapAxis.Pressure(5.BarGauge(), 20.BarGauge(), 12)).Compute().Chart(),
        ["best fill"] = () => new BestFill(Curlew.Flight.Flight).Find().Chart(),
        ["layups"] = () => Curlew.Layups.Chart(),
        ["flight log"] = () => Curlew.LoggedFlight.Chart(),
        ["flight log, left over"] = () => Curlew.LoggedFlight.ChartResidual(),
        ["margin"] = Curlew.Stability.Chart,
        ["centres"] = Curlew.Stability.ChartCentres,
        ["drag"] = () => Curlew.Body.ChartDrag(20.MetresPerSecond(), 60.MetresPerSecond(), 100.MetresPerSecond()),
        ["drag by part"] = () => Curlew.Body.Drag(60.MetresPerSecond()).Chart(),
        ["drag curve"] = () => Curlew.Body.DragCurves().Chart(),
        ["burst"] = Curlew.Burst.Chart,
        ["rating"] = Curlew.Rating.Chart,
        ["proof"] = Curlew.Proof.Chart,
        ["proof, water"] = Curlew.Proof.ChartWater,
        ["proof, energy"] = Curlew.Proof.ChartEnergy,
        ["normal force"] = () => Curlew.Body.NormalForce().Chart(),
        ["margin at angles"] = () => Curlew.Body.AtAngles(850.Millimetres()).Chart(),
        ["flutter map"] = () => Curlew.Body.Fins[0].ChartFlutter(Pressure.FromGigapascals(5), 60.MetresPerSecond()),
        ["cant"] = () => Curlew.Alignment.Cant.Chart(),
        ["alignment"] = Curlew.Alignment.Chart,
        ["whole flight"] = Curlew.WholeFlight.Chart,
        ["whole flight, path"] = Curlew.WholeFlight.ChartPath,
        ["whole flight, from above"] = Curlew.WholeFlight.ChartTrack,
        ["whole flight, margin"] = () => Curlew.WholeFlight.ChartMargin(),
        ["whole flight, attitude"] = () => Curlew.SixDegrees.ChartAttitude(),
        ["opening by a timer"] = Curlew.Opening.Chart,
        ["wind"] = () => Curlew.Site.Wind.Chart(150.Metres()),
    };

    public static IReadOnlyDictionary<string, Func<Drawing>> Drawings { get; } = new Dictionary<string,
        Func<Drawing>>(StringComparer.Ordinal)
    {
        ["body"] = Curlew.Body.Draw,
        ["vehicle"] = Curlew.Vehicle.Draw,
        ["airframe"] = () => Curlew.Airframe.Draw(32.Percent(), 60.Grams()),
        ["layup"] = Curlew.Burst.Layup.Draw,
        ["proof"] = Curlew.Proof.Draw,
        ["cutting plan"] = () => Curlew.Nest.Draw(),
        ["build calendar"] = Curlew.Calendar.Draw,
    };

    [Theory]
    [MemberData(nameof(ChartNames))]
    public void Every_result_has_a_chart_with_units(string name)
    {
        var chart = Charts[name]();
        Assert.Empty(chart.Validate());
        foreach (var axis in new[] { chart.X, chart.Y }.Where(a => a.Scale != AxisScale.Categories)) Assert.Matches(@" \[[^\]]+\]$",
            axis.Title);
        Assert.NotEmpty(chart.ToFigureJson());
        _ = XElement.Parse(chart.ToSvg());
    }

    [Theory]
    [MemberData(nameof(DrawingNames))]
    public void Every_drawing_is_well_formed(string name) => _ = XElement.Parse(Drawings[name]().Svg);

    [Fact]
    public void The_flight_marks_what_happens() =>
        Assert.Equal(["end of jet", "apogee"], Curlew.Flight.Chart().Events.Select(e => e.Label));

    [Fact]
    public void The_vehicle_is_drawn_as_long_and_as_balanced_as_it_is()
    {
        var svg = XElement.Parse(Curlew.Airframe.Draw(32.Percent(), 60.Grams()).Svg);
        var body = svg.Descendants().Single(e => e.Attribute("class")?.Value == "body");
        Assert.Equal(Curlew.Body.Length.Millimeters, Number(body, "data-length-mm"), 0.001);
        var centres = svg.Descendants().Where(e => e.Attribute("class")?.Value == "centre-of-gravity").Select(e => Number(e,
            "data-station-mm")).Order();
        Assert.Equal(new[] { Curlew.Stability.CentreOfGravity[0], Curlew.Stability.CentreOfGravity.Values[^1] }.Order(), centres,
            (a, b) => Math.Abs(a - b) < 0.001);
        Assert.Equal(Curlew.Stability.CentreOfPressure[0], Number(svg.Descendants().Single(e => e.Attribute("class")?.Value ==
            "centre-of-pressure"), "data-station-mm"), 0.001);

        static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_rating_names_the_weakest_part_of_its_prediction() =>
        Assert.Contains($"\"{Curlew.Burst.WeakestPart.Name}\"]", Curlew.Rating.Chart().ToFigureJson(), StringComparison.Ordinal);

    [Fact]
    public void Drag_at_no_speed_is_refused() => Assert.Throws<InvalidDesignException>(() => Curlew.Body.ChartDrag());

    [Fact]
    public void The_flutter_map_has_the_fins_own_margin_in_its_middle()
    {
        var fins = Curlew.Body.Fins[0];
        var map = fins.ChartFlutter(Pressure.FromGigapascals(5), 60.MetresPerSecond()).Marks.OfType<Field>().Single();
        Assert.Equal(fins.Flutter(Pressure.FromGigapascals(5), 60.MetresPerSecond()).Margin, map.Z[map.Z.Count / 2], 1e-9);
        Assert.Equal(fins.Thickness.Millimeters * 1.5, map.X[^1], 1e-9);
        // Flutter speed goes with thickness to the power of one and a half; the middle column is twice as thick as the first.
        Assert.Equal(Math.Pow(2, 1.5), map.Z[20] / map.Z[0], 1e-9);
    }

    [Fact]
    public void A_speed_above_the_criterion_has_no_flutter_map() =>
        Assert.Throws<InvalidDesignException>(() => Curlew.Body.Fins[0].ChartFlutter(Pressure.FromGigapascals(5), 290.MetresPerSecond()));

    [Fact]
    public void Resonance_is_shaded_both_ways_round_and_in_view()
    {
        var chart = Curlew.Alignment.Chart();
        Assert.Equal(2, chart.Spans.Count);
        Assert.Equal(chart.Spans[1].From, -chart.Spans[0].To);
        Assert.All(chart.Spans, s => Assert.True(s.From >= chart.X.From && s.To <= chart.X.To));
    }

    [Fact]
    public void A_circular_field_is_drawn_as_wide_as_it_is()
    {
        var edge = Curlew.WholeFlight.ChartTrack().Marks.OfType<Curve>().Single(c => c.Name == "edge of the field");
        Assert.All(Enumerable.Range(0, edge.X.Count), i => Assert.Equal(250, Math.Sqrt((edge.X[i] * edge.X[i]) + (edge.Y[i] * edge.Y[i])),
            1e-9));
        Assert.Equal(edge.X[0], edge.X[^1]);
    }

    [Fact]
    public void A_field_with_corners_is_drawn_through_them()
    {
        FieldCorner[] corners = [new(-50.Metres(), -40.Metres()), new(200.Metres(), -40.Metres()), new(200.Metres(), 90.Metres())];
        Assert.Equal([(-50, -40), (200, -40), (200, 90)], FieldOutline.Of(FlyingField.Outline(corners)));
    }

    [Fact]
    public void The_attitude_is_drawn_up_to_the_time_asked()
    {
        var chart = Curlew.SixDegrees.ChartAttitude(1.Seconds());
        Assert.InRange(((Curve)chart.Marks[0]).X.Values[^1], 0.8, 1);
        Assert.Equal(["off the rail", "end of the jet"], chart.Events.Select(e => e.Label));
    }

    [Fact]
    public void A_flight_without_attitude_has_no_chart_of_it()
        => Assert.Throws<InvalidDesignException>(() => Curlew.WholeFlight.ChartAttitude());

    [Fact]
    public void The_layup_is_drawn_from_the_liner_out() =>
        Assert.StartsWith("Bore 66 mm; from inside out: PET liner 0.5 mm, carbon sleeve", Curlew.Burst.Layup.Draw().Description,
            StringComparison.Ordinal);

    [Fact]
    public void A_flight_can_be_explored_and_the_explorer_agrees_with_a_flight_it_never_computed()
    {
        var flight = Curlew.Flight.Flight;
        var explorer = flight.Explore(25.Percent(), 40.Percent(), 12.Millimetres(), 14.Millimetres(), flight.Charge.Pressure * 0.9,
            flight.Charge.Pressure * 1.1);
        var state = explorer.At(33.3, 12.71, flight.Charge.Pressure.Bar * 1.03);
        var truth = (flight with
        {
            Charge = flight.Charge with { WaterFraction = 33.3.Percent(), Pressure = flight.Charge.Pressure * 1.03 },
            Nozzle = flight.Nozzle with { Throat = 12.71.Millimetres() },
        }).Fly();
        Assert.InRange(Math.Abs(state.Numbers[0] - truth.Apogee.Meters), 0, Math.Max(1e-3, 1.5 * explorer.Error.Numbers[0]));
        Assert.Equal(truth.Curve.PeakThrust.Newtons, state.Numbers[2], 0.2);
        Assert.NotEmpty(explorer.Cautions);
    }

    [Fact]
    public void An_explorer_refuses_what_the_vessel_is_not_rated_for()
    {
        var flight = Curlew.Flight.Flight;
        var explorer = flight.Explore(25.Percent(), 40.Percent(), 12.Millimetres(), 14.Millimetres(), flight.Charge.Pressure * 0.9,
            flight.Charge.Chamber.RatedPressure * 1.5);
        var refused = explorer.At(33, 13, flight.Charge.Chamber.RatedPressure.Bar * 1.4);
        Assert.Contains("rated", refused.RefusedBecause, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(refused.Numbers);
    }

    [Fact]
    public void Three_degrees_of_freedom_have_no_attitude_to_draw() =>
        Assert.Contains("FlySixDegrees", Assert.Throws<InvalidDesignException>(() => Curlew.FullFlight.ChartAttitude()).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_track_shows_the_edge_of_the_field_to_the_same_scale()
    {
        var chart = Curlew.FullFlight.ChartTrack();
        Assert.True(chart.EqualScale);
        Assert.Contains(chart.Marks, m => m.Name == "edge of the field");
        Assert.Contains("\"scaleanchor\":\"x\"", chart.ToFigureJson(), StringComparison.Ordinal);
    }
}
