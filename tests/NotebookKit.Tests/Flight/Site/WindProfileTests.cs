using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Site;

public class WindProfileTests
{
    private static WindProfile Turning { get; } = WindProfile.Table(
    [
        new WindLayer(0.Metres(), 2.MetresPerSecond(), 270.Degrees()),
        new WindLayer(100.Metres(), 6.MetresPerSecond(), 270.Degrees()),
        new WindLayer(300.Metres(), 8.MetresPerSecond(), 180.Degrees()),
    ]);

    [Fact]
    public void A_west_wind_carries_east_and_a_south_wind_north()
    {
        var west = Drift.Descending(100.Metres(), 5.MetresPerSecond(), WindProfile.Uniform(4.MetresPerSecond()));
        Tolerance.Absolute(80, west.East.Meters, 1e-9);
        Tolerance.Absolute(0, west.North.Meters, 1e-9);
        var south = Drift.Descending(100.Metres(), 5.MetresPerSecond(), WindProfile.Uniform(4.MetresPerSecond(), 180.Degrees()));
        Tolerance.Absolute(0, south.East.Meters, 1e-9);
        Tolerance.Absolute(80, south.North.Meters, 1e-9);
    }

    [Fact]
    public void A_table_is_straight_between_rows_and_held_beyond()
    {
        Tolerance.Absolute(4, Turning.At(50.Metres()).MetersPerSecond, 1e-9);
        Tolerance.Absolute(8, Turning.At(900.Metres()).MetersPerSecond, 1e-9);
        // Halfway in height between 6 m/s from the west and 8 m/s from the south: components 3 and 4.
        Tolerance.Absolute(5, Turning.At(200.Metres()).MetersPerSecond, 1e-9);
    }

    // Closed-form integrals against a plain sum over slices of the profile itself.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void The_integral_is_the_sum_of_slices(int which)
    {
        WindProfile[] winds =
        [
            Turning,
            WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(), 0.2, 200.Degrees()),
            WindProfile.LogLaw(5.MetresPerSecond(), 10.Metres(), 0.5.Metres(), 30.Degrees()),
        ];
        const double Height = 450;
        const int Slices = 200_000;
        double east = 0, north = 0;
        for (var i = 0; i < Slices; i++)
        {
            winds[which].Velocity(Height * (i + 0.5) / Slices, out var e, out var n);
            east += e * Height / Slices;
            north += n * Height / Slices;
        }

        winds[which].Integral(Height, out var closedEast, out var closedNorth);
        Tolerance.Absolute(east, closedEast, 2e-4);
        Tolerance.Absolute(north, closedNorth, 2e-4);
    }

    [Fact]
    public void Twice_the_wind_drifts_twice_as_far() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[10, 1000], Gen.Double[2, 20]).Sample((wind, height, descent) =>
        {
            var once = Drift.Descending(height.Metres(), descent.MetresPerSecond(),
                WindProfile.PowerLaw(wind.MetresPerSecond(), 10.Metres()));
            var twice = Drift.Descending(height.Metres(), descent.MetresPerSecond(),
                WindProfile.PowerLaw((2 * wind).MetresPerSecond(), 10.Metres()));
            return Math.Abs(twice.Distance / once.Distance - 2) < 1e-9;
        });

    [Fact]
    public void Bad_profiles_are_refused()
    {
        Assert.Throws<OutOfRangeException>(() => WindProfile.Uniform((-1).MetresPerSecond()));
        Assert.Throws<OutOfRangeException>(() => WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(), 0.9));
        Assert.Throws<OutOfRangeException>(() => WindProfile.LogLaw(5.MetresPerSecond(), 10.Metres(), 2.Metres()));
        Assert.Throws<ArgumentException>(() => WindProfile.Table([]));
        var unsorted = Assert.Throws<ArgumentException>(() => WindProfile.Table(
            [new WindLayer(10.Metres(), 2.MetresPerSecond(), 0.Degrees()), new WindLayer(5.Metres(), 2.MetresPerSecond(), 0.Degrees())]));
        Assert.Contains("sort the rows", unsorted.Message, StringComparison.Ordinal);
    }
}
