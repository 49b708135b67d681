using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Flow;

/// <summary>Heat that the wall gives to the gas while it blows down.</summary>
/// <remarks>
/// Free convection by <see cref="FilmLaw"/>, good to ±30 %.
/// Source: see <see cref="FilmLaw"/>; effect: J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123.
/// </remarks>
public sealed record WallWarming
{
    /// <summary>Free convection from the wall of a standing vessel that keeps its temperature. Source:
    /// <see cref="FilmLaw.Vertical"/>.</summary>
    public static WallWarming FreeConvection { get; } = new();

    /// <summary>A film coefficient of one's own instead of free convection; above 0, at most 5000 W/(m² K).</summary>
    public HeatTransferCoefficient? FilmCoefficient { get; init; }

    /// <summary>By which law gas and wall exchange heat; that of a standing vessel unless given.</summary>
    public FilmLaw Law { get; init; } = FilmLaw.Vertical;

    /// <summary>Factor on the law's film coefficient [-]; 0 to 10. 1 unless given; for seeing how much it matters.</summary>
    public double FilmFactor { get; init; } = 1;

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
                ? new ValidRange<double>(0.1, 5000).Find(film.WattsPerSquareMeterKelvin, "film coefficient in W/(m² K)",
                    "Gas in a vessel has 5 to 500.")
                : null,
            new ValidRange<double>(0, 10).Find(FilmFactor, "factor on the film coefficient", "1 is the law as it stands."),
            Enum.IsDefined(Law) ? null : PropulsionFindings.FilmLawUnknown(Law.ToString(), Enum.GetNames<FilmLaw>()),
            WallTemperature is { } wall
                ? new ValidRange<Temperature>((-40).Celsius(), 80.Celsius()).Find(wall, "wall temperature", "Check its unit.")
                : null,
        ];
        return [.. all.OfType<Finding>(), .. Wall?.Validate() ?? []];
    }
}
