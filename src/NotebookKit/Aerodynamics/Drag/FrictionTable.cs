using NotebookKit.Aerodynamics.Airflow;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Friction part of a drag curve. At one Mach number the air enters friction through the Reynolds number alone, so the friction in thinner
/// air is the friction, in the air of the table, of the Mach number that has this Reynolds number there; a factor for compressibility goes
/// by the true Mach number.
/// </summary>
internal sealed class FrictionTable
{
    private readonly MachTable _atOnce;
    private readonly double _compressibility;
    private readonly double _scale;

    /// <summary>Friction in one air.</summary>
    /// <param name="atOnce">Coefficient without compressibility.</param>
    /// <param name="compressibility">What M² takes off, as a share [-].</param>
    /// <param name="air">The air it is for.</param>
    public FrictionTable(MachTable atOnce, double compressibility, AirConditions air)
        : this(atOnce, compressibility, 1 / ReynoldsPerMach(air.Pressure.Pascals, air.Temperature.Kelvins))
    {
    }

    private FrictionTable(MachTable atOnce, double compressibility, double scale)
    {
        _atOnce = atOnce;
        _compressibility = compressibility;
        _scale = scale;
    }

    public FrictionTable Times(double factor) => new(_atOnce.Times(factor), _compressibility, _scale);

    /// <summary>Reynolds number at a Mach number, over that of the same Mach number in the air of the table [-].</summary>
    public double Share(double pressurePa, double temperatureK) => _scale * ReynoldsPerMach(pressurePa, temperatureK);

    /// <summary>Coefficient at a Mach number from 0 to 0.9, which isn't checked, and a share of the Reynolds number.</summary>
    public double At(double mach, double share) =>
        (1 - (_compressibility * mach * mach)) * _atOnce.At(Math.Min(mach * share, Ranges.MaximumMach));

    /// <summary>ρ a / μ but for constants: p / T × √T over T^1.5 / (T + S).</summary>
    private static double ReynoldsPerMach(double pressurePa, double temperatureK) =>
        pressurePa * (temperatureK + AirConditions.SutherlandK) / (temperatureK * temperatureK);
}
