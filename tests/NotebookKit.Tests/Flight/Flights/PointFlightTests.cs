using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Flights;

/// <summary>Flights in three degrees of freedom.</summary>
public class PointFlightTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    [Theory]
    [InlineData(33, 40, "plain")]
    [InlineData(33, 40, "head")]
    [InlineData(33, 55, "real")]
    [InlineData(0, 10, "plain")]
    [InlineData(70, 12, "moist")]
    [InlineData(25, 20, "tube")]
    public void Straight_up_in_still_air_it_is_the_vertical_flight(double water, double bar, string flow)
    {
        // Two codes over the same jet: one integrates height and speed, the other north, east and down along a rail and off it.
        var vehicle = Trainer with
        {
            Charge = Trainer.Charge with { WaterFraction = water.Percent(), Pressure = bar.BarGauge() },
            Flow = flow switch
            {
                "plain" => FlowModel.Plain,
                "head" => FlowModel.Plain with { Water = WaterFlow.QuasiSteadyWithHead },
                "moist" => FlowModel.Moist,
                "tube" => FlowModel.Plain,
                _ => FlowModel.Real,
            },
            LaunchTube = flow == "tube" ? new LaunchTube(9.Millimetres(), 0.6.Metres()) { Hollow = 20.Millilitres() } : null,
        };
        var flight = vehicle.Fly(SampleVehicles.Calm);
        var (jetOn, jetOff) = vehicle.Drag(SampleVehicles.Calm);
        var vertical = new VerticalFlight(vehicle.Charge, vehicle.Nozzle, vehicle.MassProperties().Mass, jetOff, SampleVehicles.Calm)
        {
            DragUnderThrust = jetOn,
            Flow = vehicle.Flow,
            LaunchTube = vehicle.LaunchTube,
        }.Fly();

        Tolerance.Relative(vertical.Apogee.Meters, flight.Apogee.Meters, 1e-6);
        Tolerance.Relative(vertical.ApogeeTime.Seconds, flight.ApogeeTime.Seconds, 1e-6);
        Tolerance.Relative(vertical.MaximumSpeed.MetersPerSecond, flight.Figures.MaximumSpeed.MetersPerSecond, 1e-5);
        Tolerance.Relative(vertical.EndOfJet.Time.Seconds, flight.Figures.EndOfJet.Seconds, 1e-5);
    }

    // The drag of the height flown: the same flight with the drag of its middle height held throughout lands between pad and top.
    [Fact]
    public void Thinner_air_has_more_drag_for_its_density_and_a_club_flight_hardly_feels_it()
    {
        var vertical = new VerticalFlight(Trainer.Charge, Trainer.Nozzle, Trainer.MassProperties().Mass, Trainer.Body.DragCurves().Middle,
            SampleVehicles.Calm);
        var flown = vertical.Fly().Apogee;
        var atPad = Held(Length.Zero);
        Assert.InRange(flown / atPad, 0.99, 1);
        Assert.InRange(flown, Held(flown), atPad);

        Length Held(Length height)
        {
            var air = Atmosphere.Standard.At(height);
            return (vertical with { Drag = DragCurve.From("held", vertical.Drag.ReferenceArea,
                m => vertical.Drag.Coefficient(m, air)) }).Fly().Apogee;
        }
    }

    // Three degrees of freedom fly anything straight; what would turn over has to be said, and not as a mere warning.
    [Fact]
    public void A_vehicle_without_margin_off_the_rail_is_an_error()
    {
        var stubby = Trainer with { Body = Trainer.Body with { Fins = [.. Trainer.Body.Fins.Select(f => f.WithSpanTimes(0.1))] } };
        var flight = stubby.Fly(SampleVehicles.Breezy);
        Assert.True(flight.Figures.RailExitMargin < 0);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("the vehicle is unstable there", StringComparison.Ordinal));
    }

    [Fact]
    public void A_flight_tells_its_whole_story()
    {
        var flight = Trainer.Fly(SampleVehicles.Breezy);
        Assert.Equal(ResultStatus.Completed, flight.Status);
        var f = flight.Figures;
        Assert.InRange(f.RailExitTime.Seconds, 0.05, 0.3);
        Assert.True(f.WaterOut!.Value < f.EndOfJet);
        Assert.True(f.EndOfJet < f.ApogeeTime);
        Assert.Equal(f.ApogeeTime.Seconds, f.OpeningTime!.Value.Seconds, 12);
        Assert.True(f.LandingTime > f.ApogeeTime);
        Tolerance.Absolute(0, flight.Height[^1], 1e-9);
        Assert.True(f.LandingEast.Meters > 50);
        Tolerance.Absolute(0, f.LandingNorth.Meters, 1e-9);
        Assert.Equal(Cautions.ForFlight, flight.Cautions);
        Assert.NotEmpty(flight.Lines);
        Assert.All(flight.Working.Steps, s => Assert.NotEmpty(s.Answer));
        foreach (var series in new[] { flight.Height, flight.East, flight.North, flight.Speed, flight.VerticalSpeed, flight.Mach,
            flight.DynamicPressure, flight.Load, flight.Thrust, flight.Mass, flight.Water, flight.Gas })
        {
            Assert.Equal(flight.Time.Count, series.Count);
            Assert.All(series.Values, v => Assert.True(double.IsFinite(v)));
        }
    }

    [Fact]
    public void Time_never_runs_back_and_the_greatest_figures_are_those_of_the_curves()
    {
        var flight = Trainer.Fly(SampleVehicles.Breezy);
        for (var i = 1; i < flight.Time.Count; i++) Assert.True(flight.Time[i] >= flight.Time[i - 1]);
        Tolerance.Relative(flight.Speed.Values.Max(), flight.Figures.MaximumSpeed.MetersPerSecond, 1e-5);
        Tolerance.Relative(flight.DynamicPressure.Values.Max() * 1000, flight.Figures.MaximumDynamicPressure.Pascals, 1e-5);
        // Taken where speed or dynamic pressure is greatest, which is the same place but for the shear of the wind.
        Tolerance.Relative(flight.Mach.Values.Max(), flight.Figures.MaximumMach, 1e-4);
        Tolerance.Relative(flight.Height.Values.Max(), flight.Apogee.Meters, 1e-9);
    }

    [Fact]
    public void The_wind_turns_with_its_direction_and_the_landing_with_it()
    {
        var east = Trainer.Fly(SampleVehicles.Breezy).Figures;
        var wind = WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(), from: 180.Degrees());
        var north = Trainer.Fly(SampleVehicles.Calm with { Wind = wind }).Figures;
        Tolerance.Relative(east.LandingEast.Meters, north.LandingNorth.Meters, 1e-8);
        Tolerance.Absolute(0, north.LandingEast.Meters, 1e-8);
    }

    [Fact]
    public void A_leaning_rail_throws_it_where_it_leans_to()
    {
        var site = SampleVehicles.Calm with { Rail = new(2.Metres()) { Elevation = 80.Degrees(), Towards = 90.Degrees() } };
        var f = Trainer.Fly(site).Figures;
        Assert.True(f.LandingEast.Meters > 20);
        Tolerance.Absolute(0, f.LandingNorth.Meters, 1e-8);
        Assert.True(f.Apogee < Trainer.Fly(SampleVehicles.Calm).Apogee);
    }

    [Fact]
    public void Friction_on_a_leaning_rail_costs_speed_and_on_an_upright_one_nothing()
    {
        Rail leaning = new(2.Metres()) { Elevation = 60.Degrees() };
        var smooth = Exit(leaning with { Friction = 0 });
        var rough = Exit(leaning with { Friction = 0.5 });
        // v² = v0² − 2 μ g cos φ L to first order in the small loss.
        var loss = 2 * 0.5 * 9.80665 * 0.5 * 2;
        Tolerance.Relative(Math.Sqrt((smooth * smooth) - loss), rough, 2e-3);
        Assert.Equal(Exit(new Rail(2.Metres()) { Friction = 0 }), Exit(new Rail(2.Metres()) { Friction = 0.8 }), 12);

        static double Exit(Rail rail) => Trainer.Fly(SampleVehicles.Calm with { Rail = rail }).Figures.RailExitSpeed.MetersPerSecond;
    }

    [Fact]
    public void A_rail_longer_than_the_burn_is_left_coasting()
    {
        var vehicle = Trainer with { Charge = Trainer.Charge with { Pressure = 10.BarGauge() } };
        var f = vehicle.Fly(SampleVehicles.Calm with { Rail = new(20.Metres()) }).Figures;
        Assert.True(f.EndOfJet < f.RailExitTime);
        Assert.True(f.RailExitSpeed < f.MaximumSpeed);
    }

    [Fact]
    public void A_vehicle_that_doesnt_reach_the_end_of_its_rail_has_no_figures()
    {
        var vehicle = Trainer with { Charge = Trainer.Charge with { Pressure = 6.BarGauge(), WaterFraction = 10.Percent() } };
        var flight = vehicle.Fly(SampleVehicles.Calm with { Rail = new(20.Metres()) });
        Assert.Equal(ResultStatus.Failed, flight.Status);
        Assert.Empty(flight.Lines);
        Assert.Equal(0, flight.Time.Count);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("stops on the rail", StringComparison.Ordinal));
        Assert.Contains("stops on the rail", Assert.Throws<InvalidOperationException>(() => flight.Apogee).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_vehicle_too_heavy_to_lift_is_refused_before_it_flies()
    {
        var vehicle = Trainer with { Charge = Trainer.Charge with { Pressure = 0.5.BarGauge() } };
        var refused = Assert.Throws<InvalidDesignException>(() => vehicle.Fly(SampleVehicles.Calm));
        Assert.Contains("would not lift", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Beyond_the_drag_model_a_flight_fails_and_says_so()
    {
        var light = Trainer with
        {
            Flow = FlowModel.Plain,
            Parts = new([new("all", 0.3.Kilograms(), 0.7.Metres()) { Extent = 1.Metres() }]),
            Charge = Trainer.Charge with { Chamber = Trainer.Charge.Chamber with { RatedPressure = 200.BarGauge() },
                Pressure = 190.BarGauge() },
        };
        var flight = light.Fly(SampleVehicles.Calm);
        Assert.Equal(ResultStatus.Failed, flight.Status);
        Assert.Contains(flight.Findings, f => f.Message.Contains("Mach 0.9", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_canopy_it_comes_down_as_it_is_and_that_is_said()
    {
        var f = (Trainer with { Canopy = null, Deployment = Deployment.None }).Fly(SampleVehicles.Calm);
        Assert.Null(f.Figures.OpeningTime);
        Assert.True(f.Figures.LandingSpeed.MetersPerSecond > 40);
        Assert.Contains(f.Findings, x => x.Message.Contains("that kills", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(2.5, "on the way up, and cuts the climb short")]
    [InlineData(3.0, "on the way up, and cuts the climb short")]
    [InlineData(9.0, "after apogee")]
    public void A_timer_that_is_off_is_said_with_the_speed_it_opens_at(double seconds, string words)
    {
        var flight = (Trainer with { Deployment = Deployment.ByTimer(seconds.Seconds()) }).Fly(SampleVehicles.Calm);
        Assert.Equal(seconds, flight.Figures.OpeningTime!.Value.Seconds, 9);
        Assert.Contains(flight.Findings, f => f.Message.Contains(words, StringComparison.Ordinal));
        Assert.True(flight.Figures.OpeningSpeed!.Value.MetersPerSecond > 15);
        Assert.True(flight.Figures.Opening!.FiniteMass > flight.Figures.Opening.Weight);
    }

    // Stable off the rail with its water in, unstable once that has left: three degrees of freedom fly it all the same, and have to say so.
    [Fact]
    public void A_margin_that_goes_after_the_rail_is_an_error_of_the_flight()
    {
        var shift = Trainer.Body.NormalForce().CentreOfPressure + (0.3 * 70.Millimetres()) - Trainer.MassProperties().CentreOfGravity;
        var aft = Trainer with { NozzleEndAt = 0.95.Metres(),
            Parts = new([.. Trainer.Parts.Parts.Select(p => p with { At = p.At + shift })]) };
        var flight = aft.Fly(SampleVehicles.Calm);
        Assert.True(flight.Figures.RailExitMargin > 0);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("on the way up", StringComparison.Ordinal)
            && f.Message.Contains("unstable there", StringComparison.Ordinal));
        Assert.DoesNotContain(Trainer.Fly(SampleVehicles.Calm).Findings, f => f.Severity == FindingSeverity.Error);
    }

    // A canopy that opens on the way up makes a new, lower top: that one's time is no setting for the timer.
    [Fact]
    public void The_top_that_an_early_canopy_makes_is_not_offered_as_the_timers_setting()
    {
        var early = (Trainer with { Deployment = Deployment.ByTimer(2.Seconds()) }).Fly(SampleVehicles.Calm);
        Assert.True(early.Figures.ApogeeTime < Trainer.Fly(SampleVehicles.Calm).Figures.ApogeeTime);
        Assert.DoesNotContain(early.Findings, f => f.Message.Contains("Set the timer to", StringComparison.Ordinal));
    }

    [Fact]
    public void An_opening_far_after_the_top_is_said_with_its_load_whatever_brings_it_out()
    {
        var late = (Trainer with { Deployment = Deployment.ByApogeeSensor(4.Seconds()) }).Fly(SampleVehicles.Calm);
        Assert.Contains(late.Findings, f => f.Message.Contains("4 s after apogee. Shorten the delay", StringComparison.Ordinal));
        Assert.Contains(late.Findings, f => f.Message.Contains("times the weight", StringComparison.Ordinal));
        Assert.DoesNotContain(Trainer.Fly(SampleVehicles.Calm).Findings, f => f.Message.Contains("canopy", StringComparison.Ordinal));
    }

    [Fact]
    public void A_timer_under_the_jet_is_an_error()
    {
        var flight = (Trainer with { Deployment = Deployment.ByTimer(0.14.Seconds()) }).Fly(SampleVehicles.Calm);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("jet still runs", StringComparison.Ordinal));
        Assert.True(flight.Mass[^1] > Trainer.MassProperties().Mass.Kilograms + 0.1);
    }

    [Fact]
    public void A_timer_later_than_the_ground_is_an_error()
    {
        var flight = (Trainer with { Deployment = Deployment.ByTimer(100.Seconds()) }).Fly(SampleVehicles.Calm);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("before the canopy comes out", StringComparison.Ordinal));
    }

    [Fact]
    public void Ceiling_field_and_wind_are_watched()
    {
        var site = SampleVehicles.Breezy with
        {
            Ceiling = 150.Metres(),
            Field = FlyingField.Circle(60.Metres()),
            Wind = WindProfile.Uniform(12.MetresPerSecond()),
        };
        var flight = Trainer.Fly(site);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("above the ceiling", StringComparison.Ordinal));
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("off the field", StringComparison.Ordinal));
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("four times the wind", StringComparison.Ordinal));
    }

    [Fact]
    public void Less_drag_goes_higher()
    {
        var low = (Trainer with { DragEnd = DragEnd.Low }).Fly(SampleVehicles.Calm).Apogee;
        var middle = Trainer.Fly(SampleVehicles.Calm).Apogee;
        var high = (Trainer with { DragEnd = DragEnd.High }).Fly(SampleVehicles.Calm).Apogee;
        Assert.True(high < middle && middle < low);
        var own = (Trainer with { MeasuredDrag = DragCurve.Constant(0.5, Trainer.Body.ReferenceArea) }).Fly(SampleVehicles.Calm);
        Assert.Contains(own.Model.Assumptions, a => a.Contains("constant", StringComparison.Ordinal));
    }

    [Fact]
    public void The_margin_can_be_followed_through_the_flight()
    {
        var margin = Trainer.Fly(SampleVehicles.Calm).Stability();
        Assert.True(margin.Margin[0] < margin.Margin[^1]);
        Tolerance.Relative(Trainer.Stability().Margin[0], margin.Margin[0], 1e-3);
    }

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        var vehicle = Trainer with
        {
            Name = " ",
            Charge = Trainer.Charge with { WaterFraction = 99.Percent(), Pressure = 70.BarGauge() },
            Canopy = new Canopy(CanopyType.Cross, 0.01.Metres()),
        };
        var site = SampleVehicles.Calm with
        {
            Rail = new(0.Metres()) { Friction = double.NaN, Elevation = 30.Degrees() },
            Ceiling = 1.Metres(),
            Field = FlyingField.Outline(new FieldCorner(0.Metres(), 0.Metres())),
        };
        var errors = Assert.Throws<InvalidDesignException>(() => vehicle.Fly(site)).Findings.Where(f => f.Severity ==
            FindingSeverity.Error).ToList();
        Assert.Equal(9, errors.Count);
    }

    [Fact]
    public void A_polygon_knows_what_lies_on_it()
    {
        FieldCorner Corner(double east, double north) => new(east.Metres(), north.Metres());
        var field = FlyingField.Outline(Corner(-10, -10), Corner(100, -10), Corner(100, 50), Corner(40, 50), Corner(40, 10),
            Corner(-10, 10));
        Assert.True(field.Contains(0.Metres(), 0.Metres()));
        Assert.True(field.Contains(90.Metres(), 45.Metres()));
        Assert.False(field.Contains(0.Metres(), 45.Metres()));
        Assert.False(field.Contains(101.Metres(), 0.Metres()));
        Assert.Empty(field.Validate());
        Assert.Contains(FlyingField.Outline(Corner(10, 10), Corner(20, 10), Corner(20, 20)).Validate(),
            f => f.Message.Contains("pad doesn't lie", StringComparison.Ordinal));
    }
}
