using System.Globalization;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Provenance;
using NotebookKit.Tests.House;

namespace NotebookKit.Tests.Published.Flight;

/// <summary>The rigid-body equations against the simulations published with NASA/TM-2015-218675 (participant "SIM 5", rows at whole
/// seconds).</summary>
[PublishedCase("F40", "Murri, Jackson, Shelton, Check-cases for verification of 6-degree-of-freedom flight vehicle simulations, "
    + "NASA/TM-2015-218675, 2015, time histories of SIM 5")]
public class CheckCaseTests
{
    // The report states no limit. These lie near the spread between its participants: altitude in m, velocity in m/s, angles in degrees.
    private static readonly Dictionary<int, (double Altitude, double Velocity, double Angle, double Rate)> Allowed = new()
    {
        [1] = (0.01, 1e-3, 1e-4, 1e-4),
        [2] = (0.01, 1e-3, 0.02, 0.005),
        [3] = (0.01, 1e-3, 0.1, 0.005),
        [6] = (0.01, 1e-3, 1e-4, 1e-4),
        [9] = (0.2, 0.01, 1e-4, 1e-4),
        [10] = (0.2, 0.01, 1e-4, 1e-4),
    };

    // case, t, altitude, latitude, longitude, east, down, roll, pitch, yaw, roll rate, pitch rate, yaw rate
    public static TheoryData<int, double[]> Sampled => new()
    {
        { 1, [10, 8656.38220, 0, 2.126542e-6, 0.0711180, 97.526041, -0.0417829, 0, 0, 0, 0, 0] },
        { 1, [20, 7193.37989, 0, 1.701662e-5, 0.2845264, 195.081871, -0.0835785, 0, 0, 0, 0, 0] },
        { 1, [30, 4754.54605, 0, 5.745522e-5, 0.6403882, 292.697326, -0.1253997, 0, 0, 0, 0, 0] },
        { 2, [10, 8656.38220, 0, 2.126542e-6, 0.0711180, 97.526041, -66.01904, 3.74134, -4.32131, -2.418890, -23.552577, 28.128588] },
        { 2, [20, 7193.37989, 0, 1.701662e-5, 0.2845264, 195.081871, 4.13831, 4.05986, -6.36966, -5.422759, 22.715926, 28.608284] },
        { 2, [30, 4754.54605, 0, 5.745522e-5, 0.6403882, 292.697326, -56.15128, -3.81963, -4.28929, 12.618424, -17.397444, 31.119603] },
        { 3, [10, 8656.38220, 0, 2.126542e-6, 0.0711180, 97.526041, 14.54339, -36.55991, -142.90994, -0.122797, -0.043881, 8.426671] },
        { 3, [30, 4754.54605, 0, 5.745522e-5, 0.6403882, 292.697326, -5.15225, -38.69967, -111.35575, -0.001187, 0.003790, 0.001314] },
        { 6, [10, 8658.69227, 0, 2.111439e-6, 0.0702712, 96.594775, -0.0417829, 0, 0, 0, 0, 0] },
        { 6, [20, 7232.04070, 0, 1.651208e-5, 0.2701646, 187.128698, -0.0835780, 0, 0, 0, 0, 0] },
        { 6, [30, 4963.49876, 0, 5.337982e-5, 0.5617252, 263.350479, -0.1253956, 0, 0, 0, 0, 0] },
        { 9, [10, 2227.05271, 0, 0.0240256, 239.668301, -152.423982, 0, 0.0240256, 90, 0, -0.00417807, 0] },
        { 9, [20, 3177.21922, 0, 0.0439906, 207.881550, -41.145084, 0, 0.0439906, 90, 0, -0.00417807, 0] },
        { 9, [30, 3097.06649, 0, 0.0616478, 186.155373, 55.396969, 0, 0.0616478, 90, 0, -0.00417807, 0] },
    };

    [Theory]
    [MemberData(nameof(Sampled))]
    public void Sampled_rows_agree(int number, double[] row)
    {
        var result = CheckCases.Case(number).Run();
        var allowed = Allowed[number];
        var i = Row(result, row[0]);
        Tolerance.Absolute(row[1], result.Altitude[i], allowed.Altitude);
        Tolerance.Absolute(row[2], result.Latitude[i], 1e-6);
        Tolerance.Absolute(row[3], result.Longitude[i], 2e-6);
        Tolerance.Absolute(row[4], result.East[i], allowed.Velocity);
        Tolerance.Absolute(row[5], result.Down[i], allowed.Velocity);
        Tolerance.Absolute(row[6], result.Roll[i], allowed.Angle);
        Tolerance.Absolute(row[7], result.Pitch[i], allowed.Angle);
        Tolerance.Absolute(row[8], result.Yaw[i], allowed.Angle);
        Tolerance.Absolute(row[9], result.RollRate[i], allowed.Rate);
        Tolerance.Absolute(row[10], result.PitchRate[i], allowed.Rate);
        Tolerance.Absolute(row[11], result.YawRate[i], allowed.Rate);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    public void Every_case_runs_its_thirty_seconds(int number)
    {
        var result = CheckCases.Case(number).Run();
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.Equal(31, result.Time.Count);
        Assert.Equal(30, result.Time[^1], 12);
    }

    [Fact]
    public void A_steady_wind_carries_the_ball_of_case_7_and_a_shear_less_of_it_in_case_8()
    {
        // The published spread between cases 6, 7 and 8 lies far above the tolerance; here only the sign and the order.
        var (calm, steady, sheared) = (CheckCases.Case(6).Run(), CheckCases.Case(7).Run(), CheckCases.Case(8).Run());
        Assert.True(steady.East[^1] > calm.East[^1] + 0.5, $"{steady.East[^1]} against {calm.East[^1]}");
        Assert.True(sheared.East[^1] > steady.East[^1], $"{sheared.East[^1]} against {steady.East[^1]}");
    }

    [Theory]
    [InlineData(1, "case-01-participant-5.csv")]
    [InlineData(2, "case-02-participant-5.csv")]
    [InlineData(2, "case-02-participant-4.csv")]
    [InlineData(3, "case-03-participant-5.csv")]
    [InlineData(6, "case-06-participant-5.csv")]
    [InlineData(9, "case-09-participant-5.csv")]
    public void Every_published_row_agrees(int number, string file)
    {
        var path = Path.Combine(Repository.Root, "tests", "NotebookKit.Tests", "Published", "Flight", "CheckCases", file);
        var result = CheckCases.Case(number).Run();
        var allowed = Allowed[number];
        var lines = File.ReadAllLines(path);
        var names = lines[0].Split(',');
        Assert.Equal(32, lines.Length);
        foreach (var line in lines[1..])
        {
            var cells = line.Split(',');
            var i = Row(result, Number(cells[0]));
            Check("alt_m", result.Altitude[i], allowed.Altitude);
            Check("lat_deg", result.Latitude[i], 1e-6);
            Check("lon_deg", result.Longitude[i], 2e-6);
            Check("vN_m_s", result.North[i], allowed.Velocity);
            Check("vE_m_s", result.East[i], allowed.Velocity);
            Check("vD_m_s", result.Down[i], allowed.Velocity);
            CheckAngle("roll_deg", result.Roll[i], allowed.Angle);
            Check("pitch_deg", result.Pitch[i], allowed.Angle);
            CheckAngle("yaw_deg", result.Yaw[i], allowed.Angle);
            Check("p_deg_s", result.RollRate[i], allowed.Rate);
            Check("q_deg_s", result.PitchRate[i], allowed.Rate);
            Check("r_deg_s", result.YawRate[i], allowed.Rate);
            Check("mach", result.Mach[i], 2e-4);
            Check("rho_kg_m3", result.Density[i], 2e-5);

            void Check(string name, double actual, double tolerance)
            {
                var cell = cells[Array.IndexOf(names, name)];
                if (cell.Length > 0) Tolerance.Absolute(Number(cell), actual, tolerance);
            }

            void CheckAngle(string name, double actual, double tolerance)
            {
                var cell = cells[Array.IndexOf(names, name)];
                if (cell.Length > 0) Tolerance.Absolute(0, Math.IEEERemainder(Number(cell) - actual, 360), tolerance);
            }
        }
    }

    private static int Row(FreeBodyResult result, double t)
    {
        var i = (int)Math.Round(t);
        Assert.Equal(t, result.Time[i], 9);
        return i;
    }

    private static double Number(string cell) => double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
}
