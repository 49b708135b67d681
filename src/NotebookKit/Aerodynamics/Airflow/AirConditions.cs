using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>
/// The air a body moves through: pressure and temperature, and what follows from them.
/// Source: U.S. Standard Atmosphere 1976, eq. 33 (molar mass of air), 42 (density), 50 (speed of sound), 51 (viscosity).
/// </summary>
/// <param name="Pressure">Static pressure; 1 kPa to 120 kPa absolute.</param>
/// <param name="Temperature">Static temperature; -90 to 60 °C.</param>
public sealed record AirConditions(AbsolutePressure Pressure, Temperature Temperature)
{
    internal const double SutherlandK = 110.4;

    private const double GasConstant = 8314.32 / 28.9644;
    private const double HeatRatio = StandardConstants.AirHeatCapacityRatio;

    private static readonly ValidRange<AbsolutePressure> Pressures = new(AbsolutePressure.FromPascals(1000),
        AbsolutePressure.FromPascals(120_000));
    private static readonly ValidRange<Temperature> Temperatures = new(Temperature.FromDegreesCelsius(-90),
        Temperature.FromDegreesCelsius(60));

    /// <summary>The standard day at sea level: 101 325 Pa, 15 °C.</summary>
    public static AirConditions SeaLevel { get; } = new(AbsolutePressure.StandardSeaLevel, Temperature.FromDegreesCelsius(15));

    /// <summary>Static pressure.</summary>
    public AbsolutePressure Pressure { get; init => field = CheckPressure(value); } = CheckPressure(Pressure);

    /// <summary>Static temperature.</summary>
    public Temperature Temperature { get; init => field = CheckTemperature(value); } = CheckTemperature(Temperature);

    /// <summary>Density, p M / (R T).</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(DensityKgM3);

    /// <summary>Speed of sound, √(γ R T / M).</summary>
    public Speed SpeedOfSound => Speed.FromMetersPerSecond(SoundMps);

    /// <summary>Dynamic viscosity by Sutherland's law with the standard's constants.</summary>
    public DynamicViscosity Viscosity => DynamicViscosity.FromPascalSeconds(ViscosityPaS);

    internal double DensityKgM3 => Pressure.Pascals / (GasConstant * Temperature.Kelvins);

    internal double SoundMps => Math.Sqrt(HeatRatio * GasConstant * Temperature.Kelvins);

    internal double ViscosityPaS
    {
        get
        {
            var kelvin = Temperature.Kelvins;
            return 1.458e-6 * kelvin * Math.Sqrt(kelvin) / (kelvin + SutherlandK);
        }
    }

    /// <summary>Mach number of a speed in this air [-].</summary>
    /// <param name="speed">Speed through the air; zero or above.</param>
    public double Mach(Speed speed) => speed.MetersPerSecond / SoundMps;

    /// <summary>Dynamic pressure ρ v² / 2 at a speed in this air.</summary>
    /// <param name="speed">Speed through the air; zero or above.</param>
    public Pressure DynamicPressure(Speed speed) => UnitsNet.Pressure.FromPascals(0.5 * DensityKgM3 * speed.MetersPerSecond *
        speed.MetersPerSecond);

    private static AbsolutePressure CheckPressure(AbsolutePressure value) =>
        Pressures.Check(value, "air pressure", "The drag and stability models are for flight below some 30 km.");

    private static Temperature CheckTemperature(Temperature value) =>
        Temperatures.Check(value, "air temperature", "Give the temperature of the day at the height flown.");
}
