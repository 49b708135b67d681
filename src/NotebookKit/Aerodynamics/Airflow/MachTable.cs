namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>A function of Mach number from 0 to 0.9, tabulated; smooth in value and slope. Cubic Hermite with central differences.</summary>
internal sealed class MachTable
{
    public const int Intervals = 90;
    public const double Step = Ranges.MaximumMach / Intervals;

    private readonly double[] _values;
    private readonly double[] _slopes;

    private MachTable(double[] values)
    {
        _values = values;
        _slopes = new double[values.Length];
        for (var i = 1; i < Intervals; i++) _slopes[i] = (values[i + 1] - values[i - 1]) / 2;
        _slopes[0] = values[1] - values[0];
        _slopes[Intervals] = values[Intervals] - values[Intervals - 1];
    }

    public bool IsConstant => Array.TrueForAll(_values, v => v == _values[0]);

    public static MachTable From(Func<double, double> function)
    {
        var values = new double[Intervals + 1];
        for (var i = 0; i <= Intervals; i++) values[i] = function(i * Step);
        return new MachTable(values);
    }

    public MachTable Times(double factor) => new(Array.ConvertAll(_values, v => v * factor));

    /// <summary>Value at a Mach number from 0 to 0.9, which isn't checked.</summary>
    public double At(double mach)
    {
        var u = mach / Step;
        var i = Math.Min((int)u, Intervals - 1);
        u -= i;
        var (v0, v1, s0, s1) = (_values[i], _values[i + 1], _slopes[i], _slopes[i + 1]);
        var d = v1 - v0;
        return v0 + (u * (s0 + (u * ((3 * d) - (2 * s0) - s1 + (u * (s0 + s1 - (2 * d)))))));
    }
}
