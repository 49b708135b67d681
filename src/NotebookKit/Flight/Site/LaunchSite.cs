using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>Where a flight starts.</summary>
/// <param name="Name">Name of the field.</param>
/// <param name="Elevation">Height of the pad above mean sea level; −500 m to 6000 m.</param>
/// <param name="Atmosphere">The air above it.</param>
/// <remarks>Source of the pressure at the pad: the atmosphere's own.</remarks>
public sealed partial record LaunchSite(string Name, Length Elevation, Atmosphere Atmosphere)
{
    /// <summary>At sea level in the standard atmosphere.</summary>
    public static LaunchSite SeaLevel { get; } = new("sea level", 0.Metres(), Atmosphere.Standard);

    /// <summary>Air pressure at the pad, the ambient of every gauge there.</summary>
    public AbsolutePressure Pressure => AbsolutePressure.FromPascals(Atmosphere.Law.Pressure(Elevation.Meters, out _));

    /// <summary>Air temperature at the pad.</summary>
    public Temperature Temperature
    {
        get
        {
            Atmosphere.Law.Pressure(Elevation.Meters, out var kelvins);
            return kelvins.Kelvins();
        }
    }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var wrong = new ValidRange<Length>((-500).Metres(), 6000.Metres()).Find(Elevation, "elevation of the launch site",
            "It is counted from mean sea level.");
        return [.. wrong is null ? Array.Empty<Finding>() : [wrong], .. FieldFindings()];
    }
}
