using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Flights;

/// <summary>What was made ready once and flown at both ends of the drag band flies as if it had been made ready for each.</summary>
public class ReadyFlightTests
{
    private static readonly Vehicle OnTube = SampleVehicles.Trainer with { LaunchTube = new(9.Millimetres(), 200.Millimetres()) };

    [Theory]
    [InlineData(DragEnd.Low)]
    [InlineData(DragEnd.Middle)]
    [InlineData(DragEnd.High)]
    public void One_vehicle(DragEnd end)
    {
        // Nobody gives the wind, which the flight says.
        var site = LaunchSite.SeaLevel with { Rail = new(2.Metres()) };
        var fresh = (SampleVehicles.Trainer with { DragEnd = end }).Fly(site);
        var again = new ReadyFlight(SampleVehicles.Trainer, site).At(end).Fly();
        Same(fresh.Figures, again.Figures);
        Assert.Equal(fresh.Findings, again.Findings);
        Assert.Equal(end, again.Vehicle.DragEnd);
        Assert.NotEmpty(again.Findings);
    }

    public static TheoryData<string> Variants => ["as flown", "drag of its own", "on a tube", "from its high end"];

    [Theory]
    [MemberData(nameof(Variants))]
    public void One_vehicle_with_what_else_drag_and_start_may_come_from(string variant)
    {
        var vehicle = variant switch
        {
            "as flown" => SampleVehicles.Trainer with
            {
                DragCalibration = new(1.13, 7.Percent(), Source.CommonPractice("invented: a flight of the test")),
            },
            "drag of its own" => SampleVehicles.Trainer with { MeasuredDrag = SampleVehicles.Trainer.Drag(SampleVehicles.Calm).JetOff },
            "on a tube" => OnTube,
            _ => SampleVehicles.Trainer with { DragEnd = DragEnd.High },
        };
        var ready = new ReadyFlight(vehicle, SampleVehicles.Breezy);
        foreach (var end in Enum.GetValues<DragEnd>())
        {
            var fresh = (vehicle with { DragEnd = end }).Fly(SampleVehicles.Breezy);
            Same(fresh.Figures, ready.At(end).Fly().Figures);
            Assert.Equal(fresh.Findings, ready.At(end).Fly().Findings);
        }
    }

    [Fact]
    public void Two_stages_in_six_degrees_of_freedom()
    {
        var (pair, site) = (SampleVehicles.TwoStages, SampleVehicles.Breezy);
        var fresh = (pair with
        {
            Booster = pair.Booster with { DragEnd = DragEnd.Low }, Sustainer = pair.Sustainer with { DragEnd = DragEnd.Low },
        }).FlySixDegrees(site);
        var again = new ReadyStages(pair, site, isSixDegrees: true).At(DragEnd.Low).Fly();
        Assert.Equal(fresh.Findings, again.Findings);
        Same(fresh.Sustainer.Figures, again.Sustainer.Figures);
        Same(fresh.Booster.Figures, again.Booster.Figures);
    }

    [Theory]
    [InlineData(DragEnd.Low, SeparationTrigger.PressureLatch)]
    [InlineData(DragEnd.High, SeparationTrigger.PressureLatch)]
    [InlineData(DragEnd.Low, SeparationTrigger.Drag)]
    public void Two_stages(DragEnd end, SeparationTrigger trigger)
    {
        var site = SampleVehicles.Breezy;
        var pair = SampleVehicles.TwoStages with
        {
            Separation = trigger == SeparationTrigger.Drag ? Separation.ByDrag(50.Millimetres()) : Separation.ByPressureLatch(),
        };
        var fresh = (pair with
        {
            Booster = pair.Booster with { DragEnd = end }, Sustainer = pair.Sustainer with { DragEnd = end },
        }).Fly(site);
        var again = new ReadyStages(pair, site).At(end).Fly();
        Same(fresh.Sustainer.Figures, again.Sustainer.Figures);
        Same(fresh.Booster.Figures, again.Booster.Figures);
        Assert.Equal(fresh.Findings, again.Findings);
        Assert.NotEqual(pair.Fly(site).Sustainer.Apogee, again.Sustainer.Apogee);
    }

    [Fact]
    public void Gas_weighed_without_the_tables_of_a_firing_is_the_firings_to_the_last_digit()
    {
        var site = SampleVehicles.Calm;
        foreach (var vehicle in new[] { SampleVehicles.Trainer, OnTube })
            foreach (var flow in new[] { FlowModel.Plain, FlowModel.Real, FlowModel.Moist })
            {
                var own = vehicle with { Flow = flow };
                Assert.Equal(own.Setup(own.Charge, site).GasKg, own.GasKg(site));
                Assert.Equal(own.Setup(own.Charge, site).GasKg,
                    FiringSetup.GasAboardKg(own.Charge, flow, site.Pressure.Pascals, own.LaunchTube));
            }
    }

    [Fact]
    public void Gas_that_has_no_state_is_refused_without_tables_as_with_them()
    {
        var site = SampleVehicles.Calm;
        var hot = SampleVehicles.Trainer with { Charge = SampleVehicles.Trainer.Charge with { GasTemperature = 900.Celsius() } };
        var with = Assert.Throws<InvalidDesignException>(() => hot.Setup(hot.Charge, site));
        var without = Assert.Throws<InvalidDesignException>(() => hot.GasKg(site));
        Assert.Equal(with.Message, without.Message);
    }

    private static void Same(FlightFigures? fresh, FlightFigures? again)
    {
        Assert.NotNull(fresh);
        Assert.NotNull(again);
        // The load at opening is a result with its working; its number is what has to be the same.
        Assert.Equal(fresh with { Opening = null }, again with { Opening = null });
        Assert.Equal(fresh.Opening?.DesignLoad, again.Opening?.DesignLoad);
    }
}
