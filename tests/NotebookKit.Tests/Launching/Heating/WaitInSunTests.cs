using NotebookKit.Launching.Heating;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Launching.Heating;

public class WaitInSunTests
{
    private static HeatTransferCoefficient Film(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);

    // The black dry vessel of the balance: 950 W/m² at 35 °C.
    private static readonly WaitInSun Dry = new()
    {
        Filled = new(80.BarGauge(), 20.Celsius()), Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 80.BarGauge()),
        Sun = new(35.Celsius(), Irradiance.FromWattsPerSquareMeter(950), 0.9, 0.9, Film(10)), ResinLimit = 60.Celsius(), Watch = 12.Hours(),
    };

    [Fact]
    public void It_ends_where_the_balance_of_the_surface_has_it()
    {
        var result = Dry.Run();
        var balance = Dry.Sun.Warm(Dry.Filled);
        // Balance by an independent sum: 83.73 °C.
        Tolerance.Absolute(83.73, result.Wall.Values[^1], 0.01);
        Tolerance.Absolute(balance.Surface.DegreesCelsius, result.Contents.Values[^1], 1e-3);
        Tolerance.Relative(balance.Pressure!.Value.Pascals, result.Pressure.Values[^1] * 1e5, 1e-5);
    }

    // Without sun and radiation wall and contents cool together as one lump does: exp(−t h A/C) within what the film inside lets them
    // differ.
    [Fact]
    public void In_the_shade_it_follows_newton_s_cooling()
    {
        var shade = Dry with
        {
            Sun = new(0.Celsius(), Irradiance.Zero, 0, 0, Film(10)), Inside = Film(1000), Watch = 30.Minutes(), ResinLimit = null,
        };
        var result = shade.Run();
        var area = (4 * 2.5e-3 / 0.066) + (2 * Math.PI / 4 * 0.066 * 0.066);
        var capacity = (area * 0.0015 * 1200 * 1300) + (81.01325e5 * 2.5e-3 / (287.05287 * 293.15) * 717.6);
        Tolerance.Absolute(20 * Math.Exp(-1800 * 10 * area / capacity), result.Contents.Values[^1], 0.2);
    }

    [Fact]
    public void It_says_when_to_vent_so_that_venting_is_over_in_time()
    {
        var result = (Dry with { VentTime = 90.Seconds(), Filled = Dry.Filled with { Pressure = 78.BarGauge() } }).Run();
        Assert.NotNull(result.PassesExpected);
        Assert.NotNull(result.PassesResin);
        Tolerance.Absolute(Math.Min(result.PassesExpected.Value.Seconds, result.PassesResin.Value.Seconds) - 90,
            result.VentBy!.Value.Seconds,
            1e-9);
        Assert.Contains(result.Findings, f => f.Message.Contains("open the dump valve within", StringComparison.Ordinal));
        var cool = (Dry with { Sun = Dry.Sun with { Air = 15.Celsius(), Sun = Irradiance.Zero } }).Run();
        Assert.Null(cool.VentBy);
        Assert.True(cool.Pressure.Values[^1] < 80);
    }

    // Water holds far more heat than gas: the vessel warms more slowly.
    [Fact]
    public void Water_makes_it_slower_and_ice_is_told()
    {
        var wet = Dry with { Filled = Dry.Filled with { WaterFraction = 32.Percent() }, Watch = 1.Hours() };
        Assert.True(wet.Run().PassesExpected > Dry.Run().PassesExpected);
        var frost = (wet with { Sun = new((-8).Celsius(), Irradiance.Zero, 0.9, 0.9, Film(20)), Filled = new(40.BarGauge(), 4.Celsius())
            { WaterFraction = 32.Percent() }, Watch = 5.Hours() }).Run();
        Assert.NotNull(frost.LeftRange);
        Assert.Contains(frost.Findings, f => f.Message.Contains("ice blocks nozzle", StringComparison.Ordinal));
        var hot = (wet with { Watch = 24.Hours() }).Run();
        Assert.Contains(hot.Findings, f => f.Message.Contains("above 60 °C", StringComparison.Ordinal));
        Assert.All(hot.Contents.Values, c => Assert.True(c <= 60));
    }

    // A third of the surface in the sun: the mean wall stays cool, and the resin on the sunny side is as warm as the sun makes it there.
    // Patch and contents at rest by bisection of a G - h (T - Ta) - e s (T^4 - Ta^4) - hi (T - Ti) = 0.
    [Fact]
    public void The_resin_is_judged_on_the_sunny_side()
    {
        var whole = (Dry with { Watch = 1.Hours() }).Run();
        Assert.All(whole.SunnySide.Values.Zip(whole.Wall.Values), p => Tolerance.Absolute(p.Second, p.First, 1e-9));
        var third = (Dry with { ShareInSun = 1 / Math.PI, ResinLimit = 47.Celsius() }).Run();
        double inside = third.Contents.Values[^1] + 273.15, air = 308.15, low = inside, high = 400;
        for (var i = 0; i < 100; i++)
        {
            var t = 0.5 * (low + high);
            var gain = (0.9 * 950) - (10 * (t - air)) - (0.9 * 5.670374419e-8 * (Math.Pow(t, 4) - Math.Pow(air, 4))) - (100 * (t - inside));
            (low, high) = gain > 0 ? (t, high) : (low, t);
        }

        Tolerance.Absolute(low - 273.15, third.SunnySide.Values[^1], 1e-3);
        Assert.True(third.SunnySide.Values[^1] > third.Wall.Values[^1] + 3);
        Assert.NotNull(third.PassesResin);
    }

    // A gauge reads against the air outside: the same gas warmed by as much rises by less of gauge pressure where the air is thin.
    [Fact]
    public void Altitude_counts()
    {
        double Rise(double bar) => (Dry with { Filled = Dry.Filled with { Ambient = bar.BarAbsolute() }, Watch = 1.Hours() }).Run()
            .Pressure.Values[^1] - 80;
        Assert.True(Rise(0.8) < Rise(1.01325));
    }

    [Fact]
    public void A_limit_that_is_not_given_is_said_and_nonsense_is_refused()
    {
        Assert.Contains((Dry with { ResinLimit = null }).Run().Findings, f => f.Message.Contains("give it from the resin's data sheet",
            StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => (Dry with { ShareInSun = 2 }).Run());
        Assert.Contains("vent the vessel from afar", Assert.Throws<InvalidDesignException>(() => (Dry with { Filled = Dry.Filled
            with { Pressure = 90.BarGauge() } }).Run()).Message, StringComparison.Ordinal);
    }
}
