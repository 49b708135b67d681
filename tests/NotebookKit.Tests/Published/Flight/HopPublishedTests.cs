using NotebookKit.Tests.Flight;

namespace NotebookKit.Tests.Published.Flight;

// tests/side-by-side/hop.py: SciPy's solve_ivp, DOP853, relative tolerance 1e-12, digits as printed.
[PublishedCase("Hop", "Independent integration of the plain model with SciPy's solve_ivp (DOP853, 1e-12): 3.4 L, 68 %, 10.4 bar gauge, "
    + "6.6 mm, 1.46 kg, no drag")]
public class HopPublishedTests
{
    [Fact]
    public void A_vehicle_that_comes_to_rest_with_its_charge_aboard_does_so_where_another_integration_has_it()
    {
        var result = SampleHops.Vertical.Fly();
        Tolerance.Relative(1.62442651, result.ApogeeTime.Seconds, 1e-7);
        Tolerance.Relative(2.03508787, result.Apogee.Meters, 1e-7);
        Tolerance.Relative(0.73668232, result.Water.Values[^1] / 1000, 1e-7);
        var ambient = result.Flight.Site.Atmosphere.At(result.Apogee).Pressure.Bar;
        Tolerance.Relative(2.24609398, result.Pressure.Values[^1] - ambient, 1e-7);
    }
}
