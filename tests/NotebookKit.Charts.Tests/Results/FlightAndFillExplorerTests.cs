using NotebookKit.Charts.Results;

namespace NotebookKit.Charts.Tests.Results;

public sealed class FlightAndFillExplorerTests
{
    [Fact]
    public void A_fill_can_be_explored()
    {
        var explorer = Curlew.Fill.Fill.Explore();
        var start = explorer.At([.. explorer.Parameters.Select(p => p.Start)]);
        Assert.Equal(Curlew.Fill.Duration.Seconds, start.Numbers[0], 0.02 * Curlew.Fill.Duration.Seconds);
        Assert.Equal(Curlew.Fill.ShutPressure.Bar, start.Y[^1], 1e-6);
        // Twice the conductance, half the time.
        var conductance = explorer.Parameters[0].Start;
        double Time(double c) => explorer.At(c, explorer.Parameters[1].Start, explorer.Parameters[2].Start).Numbers[0];
        Assert.Equal(2, Time(conductance) / Time(2 * conductance), 0.03);
    }

    [Fact]
    public void A_whole_flight_can_be_explored()
    {
        var explorer = Curlew.Vehicle.Explore(Curlew.Windy);
        var start = explorer.At([.. explorer.Parameters.Select(p => p.Start)]);
        Assert.Equal(Curlew.FullFlight.Apogee.Meters, start.Numbers[0], 0.02 * Curlew.FullFlight.Apogee.Meters);
        Assert.Equal(0, start.Y[^1], 0.05);
    }
}
