using NotebookKit.Evidence;
using NotebookKit.Numerics.Fits;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Evidence;

/// <summary>Fits and pressure heights against certified and standard values.</summary>
public class EvidenceCases
{
    // y = b1 (1 − exp(−b2 x)); certified b1 = 238.94212918 (sd 2.7070075241), b2 = 5.5015643181e-4 (sd 7.2668688436e-6), residual sd
    // 0.10187876330.
    [Theory]
    [InlineData(500, 1e-4)]
    [InlineData(250, 5e-4)]
    [PublishedCase("E01", "NIST Statistical Reference Datasets, nonlinear regression, Misra1a (D. Misra, NIST 1978); unverified, "
        + "reproduced to all digits compared")]
    public void Misra1a_is_fitted_to_its_certified_values(double start1, double start2)
    {
        double[] y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];
        double[] x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
        var fit = CurveFit.Of(b => [.. x.Select(v => b[0] * (1 - Math.Exp(-b[1] * v)))], y, [start1, start2], [1, 1e-6], [2000, 1e-1],
            [1e-3, 1e-9]);
        Assert.True(fit.Settled);
        Tolerance.Relative(238.94212918, fit.Parameters[0], 1e-6);
        Tolerance.Relative(5.5015643181e-4, fit.Parameters[1], 1e-6);
        Tolerance.Relative(0.10187876330, fit.Scatter, 1e-6);
        // Student's t for 12 degrees of freedom, 97.5 %: 2.1788.
        Tolerance.Relative(2.7070075241 * 2.178813, fit.HalfWidths[0], 1e-4);
        Tolerance.Relative(7.2668688436e-6 * 2.178813, fit.HalfWidths[1], 1e-4);
    }

    [Theory]
    [InlineData(95_461.3, 499.961)]
    [InlineData(89_876.3, 999.843)]
    [InlineData(79_501.4, 1999.371)]
    [PublishedCase("F01", "U.S. Standard Atmosphere, 1976, Table I: pressure against geopotential height")]
    public void Height_from_pressure_is_that_of_the_standard(double pascals, double metres) =>
        Tolerance.Absolute(metres, PressureHeight.Above(AbsolutePressure.FromPascals(pascals), AbsolutePressure.FromPascals(101_325),
            15.Celsius()).Meters, 0.01);
}
