namespace NotebookKit.Numerics.Functions;

/// <summary>Propagates uncertainty to first order through any function of independent inputs.</summary>
/// <remarks>Source: JCGM 100:2008 (GUM), eq. 10, sensitivities by half the difference of ± one standard uncertainty (5.1.3, note
/// 2).</remarks>
internal static class FirstOrder
{
    private const double Probe = 1e-6;

    /// <summary>The value, and its standard uncertainty; none where an input that matters has none.</summary>
    /// <param name="function">The function of all inputs.</param>
    /// <param name="inputs">Values of the inputs.</param>
    /// <param name="standard">Standard uncertainties of the inputs; none where it isn't known.</param>
    public static (double Value, double? Standard) Of(Func<double[], double> function, double[] inputs, double?[] standard)
    {
        var value = function(inputs);
        var sum = 0.0;
        for (var i = 0; i < inputs.Length; i++)
        {
            if (standard[i] is not { } own)
            {
                if (Difference(function, inputs, i, Probe * Math.Max(Math.Abs(inputs[i]), 1e-12)) != 0) return (value, null);
                continue;
            }

            if (own == 0) continue;
            var part = Difference(function, inputs, i, own) / 2;
            sum += part * part;
        }

        return (value, Math.Sqrt(sum));
    }

    private static double Difference(Func<double[], double> function, double[] inputs, int index, double step)
    {
        var moved = (double[])inputs.Clone();
        moved[index] = inputs[index] + step;
        var up = function(moved);
        moved[index] = inputs[index] - step;
        return up - function(moved);
    }
}
