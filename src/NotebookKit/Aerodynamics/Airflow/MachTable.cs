using NotebookKit.Numerics.Functions;

namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>A function of Mach number from 0 to 0.9, tabulated; smooth in value and slope. Cubic Hermite with central
/// differences.</summary>
internal sealed class MachTable
{
    public const int Intervals = 90;
    public const double Step = Ranges.MaximumMach / Intervals;

    private readonly double[] _values;
    private readonly EvenTable _table;

    private MachTable(double[] values)
    {
        _values = values;
        _table = EvenTable.Through(Step, values);
    }

    public bool IsConstant => Array.TrueForAll(_values, v => v == _values[0]);

    public static MachTable From(Func<double, double> function)
    {
        var values = new double[Intervals + 1];
        for (var i = 0; i <= Intervals; i++) values[i] = function(i * Step);
        return new MachTable(values);
    }

    /// <summary>A table of its values at the Mach numbers of the grid.</summary>
    public static MachTable Of(double[] values) => new(values);

    public MachTable Times(double factor) => new(Array.ConvertAll(_values, v => v * factor));

    /// <summary>Value at a Mach number from 0 to 0.9, which isn't checked.</summary>
    public double At(double mach) => _table.At(mach);
}
