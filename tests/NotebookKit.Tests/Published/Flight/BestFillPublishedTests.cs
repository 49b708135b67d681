using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

[PublishedCase("Optimum table", "Independent integration of the plain model in Python, 2 L, nozzle 12 mm, body 90 mm, Cd 0.35, step 0.01 "
    + "on a flat maximum, 2025; 0.02")]
public class BestFillPublishedTests
{
    [Theory]
    [InlineData(0.25, 0.34, 0.33, 0.28, 0.25)]
    [InlineData(0.5, 0.39, 0.40, 0.36, 0.32)]
    [InlineData(1.0, 0.43, 0.46, 0.44, 0.39)]
    [InlineData(2.0, 0.44, 0.50, 0.50, 0.46)]
    public void Water_fraction_for_height(double dryKg, params double[] shares)
    {
        double[] pressures = [5, 10, 30, 60];
        for (var i = 0; i < 4; i++)
        {
            var flight = new VerticalFlight(
                new Charge(new Chamber(2.Litres(), 90.Millimetres(), 60.BarGauge()), 30.Percent(), pressures[i].BarGauge(),
                    293.15.Kelvins()),
                new Nozzle(12.Millimetres()), dryKg.Kilograms(), DragCurve.Constant(0.35, 90.Millimetres()),
                new("sea level", 0.Metres(), Atmosphere.LinearLapse)) { Flow = FlowModel.Plain };
            Tolerance.Absolute(shares[i], flight.BestFill().WaterFraction.DecimalFractions, 0.02);
        }
    }
}
