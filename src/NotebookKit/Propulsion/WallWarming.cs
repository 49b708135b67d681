using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion;

/// <summary>Heat that the wall gives to the gas while it blows down.</summary>
/// <remarks>
/// Natural convection without a length of its own, Nu = C Ra^(1/3), with C = 0.13 for turbulent flow along walls.
/// Source: W. H. McAdams, Heat Transmission, 3rd ed. 1954 (from memory: confirm); effect: J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123.
/// </remarks>
public sealed record WallWarming
{
    /// <summary>Natural convection from a wall that keeps its temperature. Source: McAdams 1954 (from memory).</summary>
    public static WallWarming NaturalConvection { get; } = new();

    /// <summary>A film coefficient of one's own instead of natural convection; above 0, at most 5000 W/(m² K).</summary>
    public HeatTransferCoefficient? FilmCoefficient { get; init; }

    /// <summary>The factor C of natural convection [-]; 0.02 to 0.5. 0.13 unless given.</summary>
    public double NaturalConvectionFactor { get; init; } = 0.13;

    /// <summary>What the wall is; one that keeps its temperature unless given.</summary>
    public ThermalWall? Wall { get; init; }

    /// <summary>Temperature of the wall at the start; that of the gas unless given.</summary>
    public Temperature? WallTemperature { get; init; }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] all =
        [
            FilmCoefficient is { } film
                ? new ValidRange<double>(0.1, 5000).Find(film.WattsPerSquareMeterKelvin, "film coefficient in W/(m² K)", "Gas in a vessel has 5 to 500.")
                : null,
            new ValidRange<double>(0.02, 0.5).Find(NaturalConvectionFactor, "factor of natural convection", "The turbulent law has 0.13."),
            WallTemperature is { } wall
                ? new ValidRange<Temperature>((-40).Celsius(), 80.Celsius()).Find(wall, "wall temperature", "Check its unit.")
                : null,
        ];
        return [.. all.OfType<Finding>(), .. Wall?.Validate() ?? []];
    }
}
