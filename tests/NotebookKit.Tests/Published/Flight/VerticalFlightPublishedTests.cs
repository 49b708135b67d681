using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

/// <summary>Whole flights of an independent program of the same equations, seven printed digits; agreement to 1e-6 with everything
/// recorded.</summary>
[PublishedCase("P35", "Reference flights F1 to F3: an independent integration (Python) of the plain model, 2025, seven digits; a "
    + "separate fixed-step code agrees with it on ten other flights")]
public class VerticalFlightPublishedTests
{
    private const double SevenDigits = 1e-6;

    private static VerticalFlight F1 => new(
        new Charge(new Chamber(2.5.Litres(), 95.Millimetres(), 40.BarGauge()), 32.Percent(), 35.BarGauge(), 293.15.Kelvins()),
        new Nozzle(13.Millimetres()) { WaterContractionCoefficient = 0.97, AirDischargeCoefficient = 0.95 },
        1.05.Kilograms(), DragCurve.Constant(0.33, 95.Millimetres()), Sea) { Flow = FlowModel.Plain };

    private static VerticalFlight F2 => new(
        new Charge(new Chamber(1.5.Litres(), 90.Millimetres(), 8.BarGauge()), 30.Percent(), 6.BarGauge(), 288.15.Kelvins()),
        new Nozzle(21.7.Millimetres()) { WaterContractionCoefficient = 0.97, AirDischargeCoefficient = 0.95 },
        140.Grams(), DragCurve.Constant(0.4, 90.Millimetres()), Sea) { Flow = FlowModel.Plain };

    private static VerticalFlight F3 => new(
        new Charge(new Chamber(3.Litres(), 100.Millimetres(), 40.BarGauge()), 0.Percent(), 40.BarGauge(), 293.15.Kelvins()),
        new Nozzle(12.Millimetres()) { AirDischargeCoefficient = 0.95 },
        1.2.Kilograms(), DragCurve.Constant(0.35, 100.Millimetres()), Sea) { Flow = FlowModel.Plain };

    private static LaunchSite Sea => new("sea level", 0.Metres(), Atmosphere.LinearLapse);

    [Fact]
    public void F1_a_mid_size_vehicle_at_35_bar()
    {
        var flight = F1.Fly();
        Assert.Equal(ResultStatus.Completed, flight.Status);
        Tolerance.Relative(901.5497, flight.Curve.PeakThrust.Newtons, SevenDigits);
        Tolerance.Relative(459.0778, flight.FirstAcceleration.MetersPerSecondSquared, SevenDigits);
        Tolerance.Relative(0.08644023, flight.WaterOut!.Time.Seconds, SevenDigits);
        Tolerance.Relative(37.55039, flight.WaterOut.Speed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(1.629195, flight.WaterOut.Height.Meters, SevenDigits);
        var atWaterOut = flight.Curve.Time.Values.ToList().IndexOf(flight.WaterOut.Time.Seconds);
        Tolerance.Relative(20.98818, flight.Curve.Pressure[atWaterOut], SevenDigits);
        Tolerance.Relative(251.2427, flight.Curve.Temperature[atWaterOut] + 273.15, SevenDigits);
        Tolerance.Relative(0.3062817, Event(flight, "flow unchoked"), SevenDigits);
        Tolerance.Relative(0.4089413, flight.EndOfJet.Time.Seconds, SevenDigits);
        Tolerance.Relative(55.24669, flight.EndOfJet.Speed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(57.88145, flight.Curve.WaterPhase!.Impulse.NewtonSeconds, SevenDigits);
        Tolerance.Relative(24.14904, flight.Curve.GasPhase!.Impulse.NewtonSeconds, SevenDigits);
        Tolerance.Relative(56.05856, flight.MaximumSpeed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(0.3169609, flight.MaximumSpeedTime.Seconds, 1e-5);
        Tolerance.Relative(148.6047, flight.Apogee.Meters, SevenDigits);
        Tolerance.Relative(5.409469, flight.ApogeeTime.Seconds, SevenDigits);
    }

    [Fact]
    public void F1_with_the_unsteady_jet()
    {
        var flight = (F1 with { Flow = FlowModel.Plain with { Water = WaterFlow.Unsteady } }).Fly();
        // The printed figures stop with a millionth of the water left. The same equations by an implicit method (SciPy 1.10, Radau, 1e-10),
        // stopped at 1e-6 and 1e-7 of it, give 0.0860931732 s and 0.0860932616 s, 37.5476303 m/s and 37.5476690 m/s: the limit is
        // 0.0860932715 s, 37.547673 m/s.
        Tolerance.Relative(0.08609317, flight.WaterOut!.Time.Seconds, 2e-6);
        Tolerance.Relative(0.0860932715, flight.WaterOut!.Time.Seconds, 2e-8);
        Tolerance.Relative(37.54763, flight.WaterOut.Speed.MetersPerSecond, 2e-6);
        Tolerance.Relative(37.547673, flight.WaterOut.Speed.MetersPerSecond, 3e-7);
        Tolerance.Relative(148.6159, flight.Apogee.Meters, 2e-6);

        // The water hammer of the first tenths of a millisecond is in the curve, not in the peak.
        Assert.True(flight.Thrust.Values.Max() > 10_000);
        Assert.InRange(flight.Curve.PeakThrust.Newtons, 800, 1100);
    }

    [Fact]
    public void F2_a_soda_bottle_at_6_bar()
    {
        var flight = F2.Fly();
        Tolerance.Relative(431.8625, flight.Curve.PeakThrust.Newtons, SevenDigits);
        Tolerance.Relative(0.04259039, flight.WaterOut!.Time.Seconds, SevenDigits);
        Tolerance.Relative(39.38039, flight.WaterOut.Speed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(0.07425698, flight.EndOfJet.Time.Seconds, SevenDigits);
        Tolerance.Relative(49.66261, flight.MaximumSpeed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(62.70369, flight.Apogee.Meters, SevenDigits);
        Tolerance.Relative(3.217771, flight.ApogeeTime.Seconds, SevenDigits);
    }

    [Fact]
    public void F3_air_only_at_40_bar()
    {
        var flight = F3.Fly();
        Assert.Null(flight.WaterOut);
        Tolerance.Relative(547.8113, flight.Curve.PeakThrust.Newtons, SevenDigits);
        Tolerance.Relative(0.3859844, Event(flight, "flow unchoked"), SevenDigits);
        Tolerance.Relative(0.5332721, flight.EndOfJet.Time.Seconds, SevenDigits);
        Tolerance.Relative(57.34458, flight.Curve.GasPhase!.Impulse.NewtonSeconds, SevenDigits);
        Tolerance.Relative(39.59911, flight.MaximumSpeed.MetersPerSecond, SevenDigits);
        Tolerance.Relative(86.21931, flight.Apogee.Meters, SevenDigits);
        Tolerance.Relative(4.217273, flight.ApogeeTime.Seconds, SevenDigits);
    }

    [Theory]
    [InlineData(1, 148.6047, 5.409469, 56.05856)]
    [InlineData(2, 62.70369, 3.217771, 49.66261)]
    [InlineData(3, 86.21931, 4.217273, 39.59911)]
    public void The_fast_path_agrees_to_its_own_tolerance(int number, double apogee, double time, double speed)
    {
        // Local errors of 1e-6 add up over some forty steps.
        var peak = (number switch { 1 => F1, 2 => F2, _ => F3 }).Peak();
        Tolerance.Relative(apogee, peak.ApogeeMetres, 1e-5);
        Tolerance.Relative(time, peak.ApogeeSeconds, 1e-5);
        Tolerance.Relative(speed, peak.MaximumSpeedMetresPerSecond, 1e-5);
    }

    private static double Event(VerticalFlightResult flight, string name) => flight.Events.Single(e => e.Name == name).Time.Seconds;
}
