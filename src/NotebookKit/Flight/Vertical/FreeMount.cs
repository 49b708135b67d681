using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Vertical;

/// <summary>A vehicle going straight up through an atmosphere with drag.</summary>
internal struct FreeMount<TDrag>(double dryMassKg, AtmosphereLaw air, double elevationM, double dragAreaM2, TDrag drag) : IMount
    where TDrag : struct, IDragLaw
{
    public bool IsHeld => false;

    public double DryMassKg => dryMassKg;

    public double Gravity => StandardConstants.Gravity;

    public double Surroundings(double heightM, double speed, bool jetOn, out double dragN)
    {
        var pressure = air.Pressure(elevationM + heightM, out var temperature);
        var density = pressure / (air.SpecificGasConstant * temperature);
        var mach = drag.NeedsMach ? speed / SpeedOfSound(temperature) : 0;
        dragN = 0.5 * density * drag.Coefficient(mach, pressure, temperature, jetOn) * dragAreaM2 * speed * Math.Abs(speed);
        return pressure;
    }

    public double Ambient(double heightM) => air.Pressure(elevationM + heightM, out _);

    public double SpeedOfSoundAt(double heightM)
    {
        air.Pressure(elevationM + heightM, out var temperature);
        return SpeedOfSound(temperature);
    }

    public double SpeedOfSound(double temperatureK) =>
        Math.Sqrt(StandardConstants.AirHeatCapacityRatio * air.SpecificGasConstant * temperatureK);
}
