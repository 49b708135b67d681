namespace NotebookKit.Quantities.Numbers;

/// <summary>Constants of nature and of the standard atmosphere that more than one model counts with, SI without prefix.</summary>
internal static class StandardConstants
{
    /// <summary>Standard acceleration of free fall g_n [m/s²], exact. Source: BIPM, 3rd CGPM 1901, resolution 2; ISO
    /// 80000-3:2019.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Molar gas constant R [J/(mol K)], exact but for the digits cut off. Source: CODATA 2018.</summary>
    public const double MolarGas = 8.314462618;

    /// <summary>Specific gas constant of dry air [J/(kg K)]. Source: ISO 2533:1975; U.S. Standard Atmosphere, 1976.</summary>
    public const double DryAirGas = 287.05287;

    /// <summary>Ratio of the heat capacities of air, γ [-]. Source: U.S. Standard Atmosphere, 1976.</summary>
    public const double AirHeatCapacityRatio = 1.4;

    /// <summary>Pressure of the standard atmosphere at sea level [Pa]. Source: ISO 2533:1975; U.S. Standard Atmosphere, 1976.</summary>
    public const double SeaLevelPressurePa = 101_325;

    /// <summary>Temperature of the standard atmosphere at sea level [K]. Source: ISO 2533:1975; U.S. Standard Atmosphere, 1976.</summary>
    public const double SeaLevelTemperatureK = 288.15;
}
