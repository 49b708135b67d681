using NotebookKit.Numerics.Functions;

namespace NotebookKit.Tests.Published.Numerics;

public class FirstOrderPublishedTests
{
    // l = ls + d − ls (δα θ + αs δθ), the end gauge; components 25, 9.7, 2.9 and 16.6 nm are printed, 32 nm together.
    [Fact]
    [PublishedCase("U01", "JCGM 100:2008 (GUM), Annex H.1, end-gauge calibration: 50 000 838 nm, combined standard uncertainty 32 nm "
        + "(inputs recalled, unverified)")]
    public void End_gauge_calibration()
    {
        double[] inputs = [50_000_623, 215, 0, -0.1, 11.5e-6, 0];
        double?[] standard = [25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029];
        var (value, u) = FirstOrder.Of(x => x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]), inputs, standard);
        Tolerance.Absolute(50_000_838, value, 0.5);
        Tolerance.Absolute(32, u!.Value, 0.5);
    }
}
