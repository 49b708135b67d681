using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>How the filled vehicle waits in the sun on its pad, as a design has it.</summary>
/// <param name="Sunlight">Sunlight on a surface square to it; 0 to 1400 W/m².</param>
/// <param name="Absorptance">Share of the sunlight that the coat takes up [-]; 0.01 to 1.</param>
/// <param name="Wait">How long it may wait; 1 min to 24 hours.</param>
public sealed record SunAtPad(Irradiance Sunlight, double Absorptance, Duration Wait)
{
    /// <summary>Emittance of the coat for heat radiation [-]; 0.01 to 1.</summary>
    public required double Emittance { get; init; }

    /// <summary>Heat transfer to the air [W/(m² K)]; 1 to 200.</summary>
    public required double Film { get; init; }

    /// <summary>Share of the surface that the sun meets square on [-]; 0.1 to 1.</summary>
    public required double ShareInSun { get; init; }

    /// <summary>Highest temperature of the resin; none where it isn't given.</summary>
    public Temperature? ResinLimit { get; init; }
}
