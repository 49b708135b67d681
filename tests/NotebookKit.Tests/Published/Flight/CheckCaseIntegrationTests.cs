namespace NotebookKit.Tests.Published.Flight;

/// <summary>
/// The check cases whose time histories aren't printed here, against a plain integration in Earth-fixed axes that shares no line with the
/// library: Runge-Kutta at 10 ms, Coriolis and centrifugal terms written out, latitude by fixed-point iteration.
/// </summary>
[PublishedCase("F40", "Murri, Jackson, Shelton, NASA/TM-2015-218675, 2015, vol. II: set-up of cases 4, 5, 7, 8, 10; U.S. Standard "
    + "Atmosphere 1976; integrated independently")]
public class CheckCaseIntegrationTests
{
    private const double Equator = 6_378_137.0, Flattening = 1 / 298.257223563, Mu = 3.986004418e14, J2 = 0.00108262982,
        Mean = 6_371_007.1809;
    private const double DragArea = 0.1 * 0.1963495 * Foot * Foot, Mass = 14.593903, Foot = 0.3048;

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    public void The_path_is_that_of_a_plain_integration(int number)
    {
        var result = CheckCases.Case(number).Run();
        var isRound = number is 4 or 5;
        var spin = number == 4 ? 0 : 7.292115e-5;
        double[] y = [(isRound ? Mean : Equator) + (number >= 9 ? 0 : 9144), 0, 0, number >= 9 ? 304.8 : 0, number == 9 ? 304.8 : 0,
            number == 10 ? 304.8 : 0];
        const int PerSecond = 100;
        for (var second = 1; second <= 30; second++)
        {
            for (var i = 0; i < PerSecond; i++) y = Step(y, 1.0 / PerSecond);
            var (latitude, longitude, altitude) = Geodetic(y);
            var (north, east, down) = Local(y, latitude, longitude);
            Tolerance.Absolute(altitude, result.Altitude[second], 2e-5);
            Tolerance.Absolute(latitude * 180 / Math.PI, result.Latitude[second], 1e-8);
            Tolerance.Absolute(longitude * 180 / Math.PI, result.Longitude[second], 1e-8);
            Tolerance.Absolute(north, result.North[second], 2e-5);
            Tolerance.Absolute(east, result.East[second], 2e-5);
            Tolerance.Absolute(down, result.Down[second], 2e-5);
        }

        double[] Step(double[] s, double h)
        {
            var k1 = Rates(s);
            var k2 = Rates(Add(s, k1, h / 2));
            var k3 = Rates(Add(s, k2, h / 2));
            var k4 = Rates(Add(s, k3, h));
            return [.. s.Select((v, i) => v + (h / 6 * (k1[i] + (2 * k2[i]) + (2 * k3[i]) + k4[i])))];
        }

        double[] Rates(double[] s)
        {
            var (x, yy, z) = (s[0], s[1], s[2]);
            var r = Math.Sqrt((x * x) + (yy * yy) + (z * z));
            var bulge = isRound ? 0 : 1.5 * J2 * Math.Pow(Equator / r, 2);
            var polar = 5 * z * z / (r * r);
            var pull = -Mu / (r * r * r);
            double[] g = [pull * (1 + (bulge * (1 - polar))) * x, pull * (1 + (bulge * (1 - polar))) * yy,
                pull * (1 + (bulge * (3 - polar))) * z];

            var (_, longitude, altitude) = Geodetic(s);
            // Wind from the west blows to the east.
            var wind = number == 7 ? 20 * Foot : number == 8 ? ((0.003 * altitude / Foot) - 20) * Foot : 0;
            double[] u = [s[3] + (wind * Math.Sin(longitude)), s[4] - (wind * Math.Cos(longitude)), s[5]];
            var drag = 0.5 * Density(altitude) * DragArea / Mass * Math.Sqrt((u[0] * u[0]) + (u[1] * u[1]) + (u[2] * u[2]));
            return
            [
                s[3], s[4], s[5],
                g[0] - (drag * u[0]) + (2 * spin * s[4]) + (spin * spin * x),
                g[1] - (drag * u[1]) - (2 * spin * s[3]) + (spin * spin * yy),
                g[2] - (drag * u[2]),
            ];
        }

        (double Latitude, double Longitude, double Altitude) Geodetic(double[] s)
        {
            var across = Math.Sqrt((s[0] * s[0]) + (s[1] * s[1]));
            var longitude = Math.Atan2(s[1], s[0]);
            if (isRound) return (Math.Atan2(s[2], across), longitude, Math.Sqrt((across * across) + (s[2] * s[2])) - Mean);
            var e2 = Flattening * (2 - Flattening);
            var latitude = Math.Atan2(s[2], across * (1 - e2));
            for (var i = 0; i < 8; i++)
            {
                var normal = Equator / Math.Sqrt(1 - (e2 * Math.Pow(Math.Sin(latitude), 2)));
                latitude = Math.Atan2(s[2] + (e2 * normal * Math.Sin(latitude)), across);
            }

            var radius = Equator / Math.Sqrt(1 - (e2 * Math.Pow(Math.Sin(latitude), 2)));
            return (latitude, longitude, (across / Math.Cos(latitude)) - radius);
        }
    }

    // The ball's three inertias are equal: without a moment it turns about one axis at one rate, by Rodrigues' rotation. Over the Earth at
    // rest it falls straight down, so that north, east and down stay where they are.
    [Fact]
    public void A_ball_that_turns_keeps_its_rates_and_turns_as_Rodrigues_has_it()
    {
        foreach (var number in new[] { 4, 5 })
        {
            var result = CheckCases.Case(number).Run();
            Assert.All(result.RollRate.Values, p => Assert.Equal(10, p, 1e-7));
            Assert.All(result.PitchRate.Values, q => Assert.Equal(20, q, 1e-7));
            Assert.All(result.YawRate.Values, r => Assert.Equal(30, r, 1e-7));
        }

        var still = CheckCases.Case(4).Run();
        var rate = Math.Sqrt(100 + 400 + 900);
        double[] n = [10 / rate, 20 / rate, 30 / rate];
        for (var t = 1; t <= 30; t++)
        {
            var (sin, cos) = Math.SinCos(rate * t * Math.PI / 180);
            double Turned(int i, int j, double cross) => (i == j ? cos : 0) + ((1 - cos) * n[i] * n[j]) + (sin * cross);
            // Body to north, east, down.
            var (xx, yx, zx) = (Turned(0, 0, 0), Turned(1, 0, n[2]), Turned(2, 0, -n[1]));
            var (zy, zz) = (Turned(2, 1, n[0]), Turned(2, 2, 0));
            Close(Math.Atan2(yx, xx), still.Yaw[t]);
            Close(Math.Asin(-zx), still.Pitch[t]);
            Close(Math.Atan2(zy, zz), still.Roll[t]);
        }

        static void Close(double expected, double actual) => Tolerance.Absolute(0,
            Math.IEEERemainder((expected * 180 / Math.PI) - actual, 360), 1e-6);
    }

    private static double[] Add(double[] s, double[] rates, double h) => [.. s.Select((v, i) => v + (h * rates[i]))];

    private static (double North, double East, double Down) Local(double[] s, double latitude, double longitude)
    {
        var ((sinB, cosB), (sinL, cosL)) = (Math.SinCos(latitude), Math.SinCos(longitude));
        return (
            (-sinB * cosL * s[3]) - (sinB * sinL * s[4]) + (cosB * s[5]),
            (-sinL * s[3]) + (cosL * s[4]),
            (-cosB * cosL * s[3]) - (cosB * sinL * s[4]) - (sinB * s[5]));
    }

    private static double Density(double altitude)
    {
        const double Gas = 8314.32 / 28.9644;
        var h = 6_356_766.0 * altitude / (6_356_766.0 + altitude);
        var kelvin = 288.15 - (0.0065 * h);
        return 101_325 * Math.Pow(kelvin / 288.15, 9.80665 / (Gas * 0.0065)) / (Gas * kelvin);
    }
}
