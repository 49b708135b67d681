using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Design;

/// <summary>A flight takes one curve of the drag band, with jet and without of one build-up: the very numbers of the band.</summary>
public class VehicleDragTests
{
    public static TheoryData<DragEnd, bool> Ends { get; } = new()
    {
        { DragEnd.Low, false }, { DragEnd.Middle, false }, { DragEnd.High, false },
        { DragEnd.Low, true }, { DragEnd.Middle, true }, { DragEnd.High, true },
    };

    [Theory, MemberData(nameof(Ends))]
    public void The_curves_that_a_flight_takes_are_those_of_the_band_to_the_last_bit(DragEnd end, bool isFlown)
    {
        var site = SampleVehicles.Calm;
        var vehicle = SampleVehicles.Trainer with
        {
            DragEnd = end,
            DragCalibration = isFlown ? new(1.13, 7.Percent(), Source.CommonPractice("invented: a flight of the test")) : null,
        };
        var air = new AirConditions(site.Pressure, site.Temperature);
        var (on, off) = vehicle.Drag(site);
        Same(Chosen(vehicle.Body.DragCurves(air, vehicle.Surface, vehicle.Nozzle.Throat)), on);
        Same(Chosen(vehicle.Body.DragCurves(air, vehicle.Surface)), off);
        Assert.NotEqual(on.Coefficient(0.3), off.Coefficient(0.3));

        DragCurve Chosen(DragCurves band)
        {
            var flown = vehicle.DragCalibration is { } c ? c.Of(band) : band;
            return end switch { DragEnd.Low => flown.Low, DragEnd.High => flown.High, _ => flown.Middle };
        }

        void Same(DragCurve expected, DragCurve actual)
        {
            Assert.Equal(expected.Name, actual.Name);
            // At the pad and in thinner air, between the nodes of the tables too.
            for (var mach = 0.0; mach <= 0.9; mach += 0.0137)
                foreach (var pa in new[] { air.Pressure.Pascals, 80_000 })
                    Assert.Equal(expected.Coefficient(mach, pa, 280), actual.Coefficient(mach, pa, 280));
        }
    }
}
