using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

[PublishedCase("P85", "Piston phase of a launch tube: F = (p − pa) A, W − M g L = M v²/2; closed form and integration, 2025")]
public class LaunchTubePublishedTests
{
    [Theory]
    [InlineData(1.4, 10.770922, 0.055470744, 40.058623)]
    [InlineData(1, 10.790452, 0.055437099, double.NaN)]
    public void A_vehicle_leaves_the_tube_with_the_work_of_the_gas(double exponent, double speed, double time, double endBar)
    {
        // 2 L of gas at 40 bar gauge, tube 12 mm x 0.30 m, 2.2 kg in all. Water and drag are none of the case: the mass is put into the dry
        // vehicle.
        var tube = new LaunchTube(12.Millimetres(), 0.3.Metres());
        var volume = 2.Litres() + tube.Displaced;
        var gas = (40e5 + 101_325) * 2e-3 / (287.05287 * 293.15);
        var flight = new VerticalFlight(
            new Charge(new Chamber(volume, 90.Millimetres(), 50.BarGauge()), 0.Percent(), 40.BarGauge(), 293.15.Kelvins()),
            new Nozzle(12.Millimetres()), (2.2 - gas).Kilograms(), DragCurve.Constant(0, 90.Millimetres()),
            new("sea level", 0.Metres(), Atmosphere.LinearLapse))
        {
            LaunchTube = tube,
            Flow = FlowModel.Plain with { WaterPhase = Expansion.Polytropic(exponent) },
        };
        var result = flight.Fly();
        var phase = result.Curve.TubePhase!;
        Tolerance.Relative(452.389342, result.Thrust[0], 1e-8);
        // Ambient falls by 4e-5 over 0.3 m, a millionth of the difference.
        Tolerance.Relative(time, phase.End.Seconds, 2e-6);
        var left = result.Time.Values.ToList().IndexOf(phase.End.Seconds);
        Tolerance.Relative(speed, result.Speed[left], 2e-6);
        if (!double.IsNaN(endBar)) Tolerance.Relative(endBar, result.Pressure[left], 1e-7);
    }
}
