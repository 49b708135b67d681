using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Vents;

public class VentOverWaterTests
{
    private static readonly Vent Abort = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(), WaterFraction = 32.Percent(), Port = PortPosition.AboveWater, Temperature = 293.15.Kelvins(),
    };

    private static readonly FillWall Plain = new()
    {
        Surface = Area.FromSquareMeters(0.12), Bore = 66.Millimetres(), HeatCapacity = Entropy.FromJoulesPerKelvin(250),
        Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(60),
    };

    private static readonly FillWall Wet = Plain with { WaterSurface = Area.FromSquareMeters(0.05) };

    // The same equations in SciPy, DOP853 at 1e-12 and Radau at 1e-11, which agree to eleven digits.
    [Fact]
    public void Water_that_stays_gives_the_gas_heat_as_in_another_program()
    {
        var result = (Abort with { Wall = Wet }).Run();
        var curve = result.WithWall!;
        Tolerance.Relative(51.4495702544, curve.Time[^1], 1e-7);
        Tolerance.Absolute(13.54223147, curve.Temperature[^1], 1e-4);
        Tolerance.Absolute(19.21316957, curve.WaterTemperature!.Values[^1], 1e-6);
        Tolerance.Absolute(-12.8478826, result.ColdestGas.DegreesCelsius, 2e-2);
        Assert.Contains(result.Model.Sources, s => s.ToString().Contains("4182", StringComparison.Ordinal));
        Assert.Null(result.Adiabatic.WaterTemperature);
        // All of it wall.
        var dry = (Abort with { Wall = Plain }).Run();
        Tolerance.Relative(51.5532036534, dry.WithWall!.Time[^1], 1e-7);
        Tolerance.Absolute(2.89162357, dry.WithWall.Temperature[^1], 1e-4);
        Assert.Null(dry.WithWall.WaterTemperature);
    }

    // Water that takes all heat at once, twenty times the gas's volume of it, keeps the gas at its temperature: t = V/(A ψ √(R T)) ln(p₀/p)
    // while choked. The water cools by 0.02 K.
    [Fact]
    public void Without_any_film_in_the_way_the_gas_stays_as_warm_as_the_water()
    {
        var result = (Abort with { From = 20.BarGauge(), SafePressure = 5.BarGauge(), WaterFraction = 95.Percent(), Wall = Wet with
            { Surface = Area.FromSquareMeters(2) + Area.FromSquareMillimeters(1), WaterSurface = Area.FromSquareMeters(2), FilmFactor = 10,
                Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(5000) } }).Run();
        var psi = Math.Sqrt(1.4) * Math.Pow(2 / 2.4, 3);
        var tau = 0.125e-3 / (0.8 * Math.PI / 4 * 1e-6 * psi * Math.Sqrt(287.05287 * 293.15));
        Tolerance.Relative(tau * Math.Log(21.01325 / 6.01325), result.WithWall!.Time[^1], 5e-5);
    }

    // A vent under water leaves no surface: what was the water's is wall, so the time is that with the plain wall.
    [Fact]
    public void A_surface_whose_water_has_left_is_wall()
    {
        double Seconds(FillWall wall) => (Abort with { Port = PortPosition.UnderWater, Wall = wall }).Run().WaterFirst!.Total.Seconds;
        Tolerance.Relative(Seconds(Plain), Seconds(Wet), 1e-12);
        Assert.Contains("has no water", Assert.Throws<InvalidDesignException>(() => (Abort with { WaterFraction = Ratio.Zero, Wall = Wet })
            .Run()).Message, StringComparison.Ordinal);
    }

    // With 60 W/(m²·K) the gas alone comes to −14.674 °C, in SciPy as above. Driving 0.8 L of water out first without heat cools it to
    // 293.15 K × 0.68^0.4 = 251.2427 K, −21.9073 °C, and from there on the wall warms it.
    [Theory]
    [InlineData(PortPosition.AboveWater, -14.674074, 2e-2)]
    [InlineData(PortPosition.UnderWater, -21.9072933, 1e-5)]
    [InlineData(PortPosition.NotGiven, -21.9072933, 1e-5)]
    public void The_coldest_gas_is_that_of_the_coldest_way_with_a_wall(PortPosition port, double celsius, double within) =>
        Tolerance.Absolute(celsius, (Abort with { Port = port, Wall = Plain }).Run().ColdestGas.DegreesCelsius, within);

    // No way with a wall: 293.15 K × (1.11325/41.01325)^(2/7) = 104.6085 K, with water first or without.
    [Theory]
    [InlineData(PortPosition.AboveWater)]
    [InlineData(PortPosition.UnderWater)]
    public void Without_a_wall_the_coldest_gas_is_that_of_the_adiabat(PortPosition port) => Tolerance.Absolute(104.6085 - 273.15,
        (Abort with { Port = port, Gas = Gas.Air with { Real = null } }).Run().ColdestGas.DegreesCelsius, 2e-4);

    // Both ways by quadrature in another program, and water first as in the tests of vents through water.
    [Theory]
    [InlineData(PortPosition.AboveWater, false, 47.12716989, 50.16403346, null)]
    [InlineData(PortPosition.NotGiven, false, 47.12716989, 90.0836127, "where the vent lies isn't given")]
    [InlineData(PortPosition.UnderWater, false, 81.349254, 90.0836127, "The vent lies under water")]
    [InlineData(PortPosition.NotGiven, true, 81.349254, 90.0836127, "The vent lies under water")]
    public void Times_go_by_where_the_vent_lies(PortPosition port, bool atFoot, double fastest, double slowest, string? says)
    {
        var result = (Abort with { Port = port, Place = atFoot ? new(0.Percent(), VesselStance.Standing) : null,
            Gas = Gas.Air with { Real = null } }).Run();
        Tolerance.Relative(fastest, result.Fastest.Seconds, 1e-6);
        Tolerance.Relative(slowest, result.Slowest.Seconds, 1e-6);
        Tolerance.Relative(90.0836127, result.WorstState.Seconds, 1e-6);
        string[] all = ["where the vent lies isn't given", "The vent lies under water"];
        Assert.All(all, s => Assert.Equal(s == says, result.Findings.Any(f => f.Message.Contains(s, StringComparison.Ordinal))));
    }

    // Laminar in 50 m of 1 mm at the least drop of the way that counts: 750 v² + 32 μ L/d² v = Δp. From 40 bar 41.01325 × 0.68^1.4 − 1.013
    // = 22.889 bar are left; from 6 bar the water stops at the safe 5 bar.
    [Theory]
    [InlineData(40, 0.1, 32, 0.00927520054)]
    [InlineData(6, 5, 45, 0.00433577781)]
    public void A_hose_holds_the_water_back_as_at_the_least_drop(double from, double safe, double percent, double squareMillimetres)
    {
        var result = (Abort with { Port = PortPosition.UnderWater, From = from.BarGauge(), SafePressure = safe.BarGauge(),
            WaterFraction = percent.Percent(), Restrictor = new Hose(1.Millimetres(), 50.Metres()), Gas = Gas.Air with { Real = null } })
            .Run();
        Tolerance.Relative(squareMillimetres, result.WaterFirst!.Drain.Drain.EffectiveArea.SquareMillimeters, 1e-7);
    }
}
