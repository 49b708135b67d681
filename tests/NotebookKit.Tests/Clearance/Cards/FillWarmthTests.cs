namespace NotebookKit.Tests.Clearance.Cards;

public class FillWarmthTests
{
    // The heat equation by finite volumes: 2 mm of 0.2 W/(m K) and 1.56 MJ/(m³ K), 3 kW/m² into one side and nothing off the other, until
    // the profile no longer changes its form. The middle of the first cell lies below the surface by the flux over half a cell.
    [Fact]
    public void The_heated_side_is_as_much_warmer_than_the_mean_as_the_heat_equation_says()
    {
        const int Cells = 100;
        const double ThicknessM = 0.002, Conductivity = 0.2, HeatPerVolume = 1.56e6, FluxWPerM2 = 3000, Width = ThicknessM / Cells;
        var kelvins = new double[Cells];
        var flow = new double[Cells + 1];
        const double Step = 0.4 * Width * Width * HeatPerVolume / Conductivity;
        for (var t = 0.0; t < 60; t += Step)
        {
            flow[0] = FluxWPerM2;
            for (var i = 1; i < Cells; i++) flow[i] = Conductivity * (kelvins[i - 1] - kelvins[i]) / Width;
            for (var i = 0; i < Cells; i++) kelvins[i] += Step * (flow[i] - flow[i + 1]) / (HeatPerVolume * Width);
        }

        var surface = kelvins[0] + FluxWPerM2 * 0.5 * Width / Conductivity;
        Tolerance.Relative(surface - kelvins.Average(), FillWarmth.AboveMean(FluxWPerM2, ThicknessM), 1e-3);
    }
}
