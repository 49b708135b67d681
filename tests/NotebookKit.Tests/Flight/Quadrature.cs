namespace NotebookKit.Tests.Flight;

/// <summary>Area under a smooth recorded column: a cubic through four neighbours in every interval.</summary>
internal static class Quadrature
{
    public static double Sum(double[] x, double[] y)
    {
        double sum = 0, gauss = 1 / Math.Sqrt(3);
        for (var i = 0; i + 1 < x.Length; i++)
        {
            var first = Math.Clamp(i - 1, 0, Math.Max(0, x.Length - 4));
            var count = Math.Min(4, x.Length);
            double half = (x[i + 1] - x[i]) / 2, middle = (x[i + 1] + x[i]) / 2;
            sum += half * (At(middle - gauss * half) + At(middle + gauss * half));

            double At(double where)
            {
                double value = 0;
                for (var j = first; j < first + count; j++)
                {
                    var weight = 1.0;
                    for (var k = first; k < first + count; k++)
                        if (k != j) weight *= (where - x[k]) / (x[j] - x[k]);
                    value += weight * y[j];
                }

                return value;
            }
        }

        return sum;
    }
}
