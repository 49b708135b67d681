using NotebookKit.Quantities;

namespace NotebookKit.Tests.Materials.Fluids;

/// <summary>Limits of the laws of free convection.</summary>
public class FreeConvectionTests
{
    [Fact]
    public void Still_gas_only_conducts() => Tolerance.Absolute(0.825 * 0.825, FreeConvection.Nusselt(FilmLaw.Vertical, 0, 0.71), 1e-12);

    [Theory]
    [InlineData(FilmLaw.Vertical)]
    [InlineData(FilmLaw.Horizontal)]
    public void A_larger_difference_of_temperature_moves_the_gas_more(FilmLaw law)
    {
        var film = RealGas.Air.At(10.BarAbsolute(), 300.Kelvins());
        var point = RealGas.Air.Point(300, film.Density.KilogramsPerCubicMeter);
        double Film(double kelvins) => FreeConvection.Coefficient(law, point, 1.85e-5, 0.026, kelvins, 0.1, 0);
        Assert.True(Film(1) < Film(10) && Film(10) < Film(50));
        Assert.Equal(Film(10), Film(-10));
    }
}
