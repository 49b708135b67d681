using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels;

public class ChamberTests
{
    [Fact]
    public void Is_a_value() =>
        Assert.Equal(
            new Chamber(2.Litres(), 70.Millimetres(), 30.BarGauge()),
            new Chamber(2.Litres(), 70.Millimetres(), 25.BarGauge()) with { RatedPressure = 30.BarGauge() });
}
