using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Numerics.Bits;

namespace NotebookKit.Flight.Dispersion;

/// <summary>The mark of a vehicle on a site in its wind: the bits of its one expected flight, so that a scatter can be told from that of
/// another.</summary>
internal static class DispersionSubject
{
    /// <summary>The mark of one stage.</summary>
    public static string Of(Vehicle vehicle, LaunchSite site) => Mark([FlightRun.Fly(vehicle.Numbers(site), null, FlightAccuracy.Fast)]);

    /// <summary>The mark of two stages.</summary>
    public static string Of(TwoStageVehicle vehicle, LaunchSite site)
    {
        var marks = FlightRun.FlyStack(vehicle.Stack(site).Numbers(site), null, vehicle.Numbers(site), FlightAccuracy.Fast, null,
            out var parting);
        if (StageSeparation.Fault(marks, parting) != SeparationFault.None) return Mark([marks]);
        var parted = StageSeparation.Marks(marks);
        return Mark(
        [
            marks,
            FlightRun.Continue(vehicle.Sustainer.Numbers(site), null, FlightAccuracy.Fast, parting, isDriven: true, parted),
            FlightRun.Continue(vehicle.Booster.Numbers(site), null, FlightAccuracy.Fast, parting, isDriven: false,
                parted with { JetEndTime = marks.JetEndTime }),
        ]);
    }

    private static string Mark(ReadOnlySpan<FlightMarks> flights)
    {
        var mark = new BitMark();
        foreach (var marks in flights)
        {
            foreach (var number in (ReadOnlySpan<double>)[marks.ExitSpeed, marks.ApogeeM, marks.ApogeeTime, marks.FastestSpeed,
                marks.LandingTime, marks.LandingAt.X, marks.LandingAt.Y])
                mark.Add(number);
        }

        return mark.ToString();
    }
}
