using T = NotebookKit.Numerics.Ode.DormandPrinceTableau;

namespace NotebookKit.Tests.Numerics.Ode;

/// <summary>Conditions that a Runge-Kutta pair must meet whatever its numbers (Butcher; Hairer, Nørsett, Wanner I, II.2, table
/// 2.1).</summary>
public class DormandPrinceTableauTests
{
    private static readonly double[][] A =
    [
        [], [T.A21], [T.A31, T.A32], [T.A41, T.A42, T.A43], [T.A51, T.A52, T.A53, T.A54], [T.A61, T.A62, T.A63, T.A64, T.A65],
        [T.B1, 0, T.B3, T.B4, T.B5, T.B6],
    ];

    private static readonly double[] C = [0, T.C2, T.C3, T.C4, T.C5, 1, 1];
    private static readonly double[] Fifth = [T.B1, 0, T.B3, T.B4, T.B5, T.B6, 0];
    private static readonly double[] Error = [T.E1, 0, T.E3, T.E4, T.E5, T.E6, T.E7];

    [Fact]
    public void Rows_sum_to_their_nodes()
    {
        for (var i = 0; i < 7; i++) Assert.Equal(C[i], A[i].Sum(), 13);
    }

    [Fact]
    public void Weights_meet_all_conditions_up_to_order_five()
    {
        double[] ones = [1, 1, 1, 1, 1, 1, 1];
        var ac = Apply(C);
        var ac2 = Apply(Times(C, C));
        var ac3 = Apply(Times(C, C, C));
        var aac = Apply(ac);
        (double[] Vector, double Value)[] conditions =
        [
            (ones, 1), (C, 1.0 / 2), (Times(C, C), 1.0 / 3), (ac, 1.0 / 6),
            (Times(C, C, C), 1.0 / 4), (Times(C, ac), 1.0 / 8), (ac2, 1.0 / 12), (aac, 1.0 / 24),
            (Times(C, C, C, C), 1.0 / 5), (Times(C, C, ac), 1.0 / 10), (Times(ac, ac), 1.0 / 20), (Times(C, ac2), 1.0 / 15),
            (ac3, 1.0 / 20), (Times(C, aac), 1.0 / 30), (Apply(Times(C, ac)), 1.0 / 40), (Apply(ac2), 1.0 / 60), (Apply(aac), 1.0 / 120),
        ];
        foreach (var (vector, value) in conditions) Assert.Equal(value, Dot(Fifth, vector), 13);

        // The embedded weights must meet the first eight (order 4) and miss order 5, else the error estimate would be blind.
        foreach (var (vector, value) in conditions[..8]) Assert.Equal(value, Dot(Fifth, vector) - Dot(Error, vector), 13);
        Assert.True(Math.Abs(Dot(Error, conditions[8].Vector)) > 1e-5);
    }

    private static double[] Apply(double[] v) => [.. A.Select(row => row.Zip(v, (a, b) => a * b).Sum())];

    private static double[] Times(params double[][] factors)
        => [.. Enumerable.Range(0, 7).Select(i => factors.Aggregate(1.0, (p, f) => p * f[i]))];

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
