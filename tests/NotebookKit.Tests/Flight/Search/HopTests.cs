using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Search;

/// <summary>Vehicles that lift, come to rest and come down with water and pressure aboard.</summary>
public class HopTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_vertical_flight_that_comes_to_rest_charged_is_an_error_with_what_is_still_aboard(bool real)
    {
        var result = (SampleHops.Vertical with { Flow = real ? FlowModel.Real : FlowModel.Plain }).Fly();
        Assert.True(result.ComesDownCharged);
        var error = Assert.Single(result.Findings, f => f.Severity == FindingSeverity.Error).Message;
        Assert.Contains($"{Digits.Round(result.Water.Values[^1] / 1000)} kg of water", error, StringComparison.Ordinal);
        Assert.Contains($"{Digits.Round(result.Pressure.Values[^1] - Ambient(result))} bar gauge", error, StringComparison.Ordinal);
        Assert.Contains($"{result.ApogeeTime.Show()} after release, at {result.Apogee.Show()}", error, StringComparison.Ordinal);
        Assert.Contains("Use less water", error, StringComparison.Ordinal);
        Assert.Null(result.WaterOut);
        Assert.Equal(["maximum speed", "comes to rest"], result.Events.Select(e => e.Name));
        Assert.DoesNotContain(result.Curve.Events, e => e.Name is "water out" or "end of jet");
        Assert.DoesNotContain(result.Lines, l => l.Name is "Water out" or "End of jet" or "Apogee above pad");
        Assert.All(result.Lines, l => Assert.DoesNotContain("NaN", l.Value + l.Note, StringComparison.Ordinal));
    }

    private static double Ambient(VerticalFlightResult result) => result.Flight.Site.Atmosphere.At(result.Apogee).Pressure.Bar;

    [Fact]
    public void A_hop_is_said_before_the_flight_with_the_way_out()
    {
        var warning = Assert.Single(SampleHops.Vertical.Validate());
        Assert.Equal(FindingSeverity.Warning, warning.Severity);
        Assert.Contains("this flight is a hop", warning.Message, StringComparison.Ordinal);
        Assert.Contains("Use less water, more pressure, a wider nozzle", warning.Message, StringComparison.Ordinal);
        Assert.Contains(SampleHops.Vehicle.Validate(), f => f.Message.Contains("this flight is a hop", StringComparison.Ordinal));
        // Each of the three remedies by itself.
        Assert.Empty(SampleHops.At(15).Validate());
        Assert.Empty((SampleHops.Vertical with { Nozzle = new(9.Millimetres()) }).Validate());
        Assert.Empty((SampleHops.Vertical with { Charge = SampleHops.Charge with { WaterFraction = 40.Percent() } }).Validate());
    }

    // The look ahead marches without drag in even steps; the flight integrates to 1e-9. Where one sees a hop, so does the other, but for a
    // narrow band.
    [Fact]
    public void The_look_ahead_and_the_flight_agree_on_what_is_a_hop()
    {
        var (hops, flights) = (0, 0);
        foreach (var bar in new[] { 6.5, 8, 10, 11, 11.25, 11.75, 12, 13, 15, 20 })
        {
            var flight = SampleHops.At(bar);
            var result = flight.Fly();
            Assert.Equal(result.ComesDownCharged, flight.Validate().Count == 1);
            if (result.ComesDownCharged) hops++;
            else flights++;
        }

        Assert.True(hops >= 4 && flights >= 4);
    }

    [Fact]
    public void Thrust_below_weight_is_no_hop_where_the_vehicle_coasts_upward_while_the_rest_leaves()
    {
        var result = SampleHops.At(14).Fly();
        var least = Enumerable.Range(0, result.Time.Count).Where(i => result.Water[i] > 1).Min(i => result.Thrust[i] / (result.Mass[i] *
            9.80665));
        Assert.InRange(least, 0.5, 0.97);
        Assert.False(result.ComesDownCharged);
        Assert.NotNull(result.WaterOut);
        Assert.DoesNotContain(result.Findings, f => f.Severity == FindingSeverity.Error);
        Assert.Equal(ResultStatus.Completed, SampleHops.At(14).Peak().Status);
    }

    [Fact]
    public void A_vehicle_that_turns_over_under_its_jet_and_empties_in_the_air_is_a_warning()
    {
        var result = SampleHops.At(11.75).Fly();
        Assert.False(result.ComesDownCharged);
        Assert.Null(result.WaterOut);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("turns over while its jet drives it", StringComparison.Ordinal));
        var flown = (SampleHops.Vehicle with { Charge = SampleHops.Charge with { Pressure = 11.75.BarGauge() } }).Fly(SampleHops.ShortRail);
        Assert.Equal(ResultStatus.Completed, flown.Status);
        Assert.Contains(flown.Findings, f => f.Message.Contains("turns over while its jet drives it", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void A_flight_that_comes_down_charged_has_failed_and_says_with_what(bool sixDegrees, bool canopy)
    {
        var vehicle = canopy ? SampleHops.Vehicle with { Deployment = Deployment.ByApogeeSensor() } : SampleHops.Vehicle;
        var site = SampleHops.ShortRail with { Wind = WindProfile.Uniform(0.5.MetresPerSecond()) };
        var flight = sixDegrees ? vehicle.FlySixDegrees(site) : vehicle.Fly(site);
        Assert.Equal(ResultStatus.Failed, flight.Status);
        Assert.Empty(flight.Lines);
        Assert.Equal(0, flight.Time.Count);
        var error = Assert.Single(flight.Findings, f => f.Severity == FindingSeverity.Error).Message;
        Assert.Contains("comes down under pressure", error, StringComparison.Ordinal);
        Assert.Contains("kg of water", error, StringComparison.Ordinal);
        Assert.Contains("bar gauge still aboard", error, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", error, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => flight.Apogee);
    }

    // Two codes over one jet: the straight flight stops at its top; the other flies on down, nose first, to what is aboard there.
    [Fact]
    public void The_marks_of_a_hop_are_those_of_the_vertical_flight_at_its_top_and_have_no_water_out()
    {
        var numbers = SampleHops.Vehicle.Numbers(SampleHops.ShortRail);
        var marks = FlightRun.Fly(numbers, null, FlightAccuracy.Recorded);
        var (jetOn, jetOff) = SampleHops.Vehicle.Drag(SampleHops.ShortRail);
        var vertical = (SampleHops.Vertical with { Drag = jetOff, DragUnderThrust = jetOn, Flow = SampleHops.Vehicle.Flow,
            DryMass = SampleHops.Vehicle.MassProperties().Mass }).Fly();
        Tolerance.Relative(vertical.Apogee.Meters, marks.ApogeeM, 1e-5);
        Tolerance.Relative(vertical.ApogeeTime.Seconds, marks.ApogeeTime, 1e-5);
        Assert.True(double.IsNaN(marks.WaterOutTime) && double.IsNaN(marks.JetEndTime));
        Assert.InRange(marks.WaterLeftKg, 0.05, vertical.Water.Values[^1] / 1000);
        Assert.InRange(marks.LeftGaugePa, ChargedLanding.GonePa, 1e5 * vertical.Pressure.Values[^1] - 101_000);
    }

    [Fact]
    public void A_vehicle_that_stops_on_its_rail_says_what_is_still_aboard()
    {
        var flight = SampleHops.Vehicle.Fly(SampleVehicles.Calm with { Rail = new(4.Metres()) });
        var error = Assert.Single(flight.Findings, f => f.Severity == FindingSeverity.Error).Message;
        Assert.Contains("stops on the rail", error, StringComparison.Ordinal);
        Assert.Contains("kg of water and", error, StringComparison.Ordinal);
        Assert.Contains("bar gauge still aboard", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_landing_while_gas_still_leaves_is_said_and_one_with_the_gas_out_is_not()
    {
        var vehicle = SampleVehicles.Trainer with { Deployment = Deployment.None };
        Assert.DoesNotContain(vehicle.Fly(SampleVehicles.Calm).Findings,
            f => f.Message.Contains("gas still leaves", StringComparison.Ordinal));
        var narrow = vehicle with { Nozzle = new(2.2.Millimetres()),
            Charge = vehicle.Charge with { WaterFraction = Ratio.Zero, Pressure = 60.BarGauge() } };
        var flight = narrow.Fly(SampleHops.ShortRail);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("lands while gas still leaves", StringComparison.Ordinal));
        Assert.True(flight.Gas[^1] < flight.Gas[0]);
    }

    [Fact]
    public void Dispersion_counts_a_hop_as_failed_and_not_as_landed()
    {
        var vehicle = SampleHops.Vehicle with { Charge = SampleHops.Charge with { Pressure = 11.4.BarGauge() } };
        var result = vehicle.Disperse(SampleHops.ShortRail, Spread.None with { Pressure = 10.Percent() }, 40, 1);
        Assert.InRange(result.Failed, 1, 39);
        Assert.Equal(40 - result.Failed, result.Landings!.Count);
        Assert.Contains(result.Findings, f => f.Message.Contains("with water and pressure still aboard", StringComparison.Ordinal));
        var pressures = result.Inputs.Single(s => s.Name.Contains("ressure", StringComparison.Ordinal));
        var flown = Enumerable.Range(0, 40).Where(i => double.IsFinite(result.Apogee[i])).Min(i => pressures[i]);
        Assert.All(Enumerable.Range(0, 40).Where(i => !double.IsFinite(result.Apogee[i])), i => Assert.True(pressures[i] < flown));
    }

    [Fact]
    public void A_hop_is_no_answer_of_a_map_or_a_search()
    {
        Assert.Equal(ResultStatus.Failed, SampleHops.Vertical.Peak().Status);
        var map = new FlightMap(SampleHops.Vertical,
            MapAxis.WaterFraction(20.Percent(), 80.Percent(), 7), MapAxis.Pressure(8.BarGauge(), 20.BarGauge(), 4)).Compute();
        for (var row = 0; row < 4; row++)
        {
            for (var column = 0; column < 7; column++)
            {
                var flight = FlightVariant.WithWater(SampleHops.At(map.Y[row]), map.X[column] / 100);
                var isAnswer = flight.Validate().All(f => f.Severity != FindingSeverity.Error) && !flight.Fly().ComesDownCharged;
                Assert.Equal(isAnswer, double.IsFinite(map.Apogee[(row * 7) + column]));
            }
        }

        Assert.InRange(map.Refused, 1, 27);
        Assert.False(SampleHops.Vertical.BestFill().Flight.ComesDownCharged);
        var none = new BestFill(SampleHops.At(8)) { WaterFractions = new(68.Percent(), 72.Percent()) };
        Assert.Throws<InvalidDesignException>(() => none.Find());
    }
}
