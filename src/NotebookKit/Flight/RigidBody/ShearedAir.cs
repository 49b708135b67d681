using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.RigidBody;

/// <summary>The air of an atmosphere with a wind in proportion to altitude.</summary>
internal readonly struct ShearedAir(AtmosphereLaw law, Vector atZeroMps, Vector perMetre) : IAir
{
    private const double HeatCapacityRatio = StandardConstants.AirHeatCapacityRatio;

    public AirSample At(double t, double altitudeM)
    {
        var pressure = law.Pressure(altitudeM, out var temperature);
        var density = pressure / (law.SpecificGasConstant * temperature);
        return new(density, Math.Sqrt(HeatCapacityRatio * pressure / density), pressure, atZeroMps + (altitudeM * perMetre));
    }
}
