using NotebookKit.Materials.Fluids;

namespace NotebookKit.Propulsion.Flow;

/// <summary>Heat from the wall to the gas as numbers.</summary>
internal readonly struct WallLaw
{
    private readonly double _fixedFilm;
    private readonly double _factor;
    private readonly double _areaM2;
    private readonly double _boreM;
    private readonly FilmLaw _law;

    /// <summary>Creates the law for a closed cylinder.</summary>
    public WallLaw(WallWarming heat, double chamberM3, double boreM, double startKelvins)
    {
        var section = Math.PI / 4 * boreM * boreM;
        _areaM2 = Math.PI * boreM * (chamberM3 / section) + 2 * section;
        _boreM = boreM;
        _law = heat.Law;
        StartKelvins = startKelvins;
        _fixedFilm = heat.FilmCoefficient?.WattsPerSquareMeterKelvin ?? double.NaN;
        _factor = heat.FilmFactor;
        PerHeatCapacity = heat.Wall is { } wall
            ? 1 / (_areaM2 * wall.Thickness.Meters * wall.Density.KilogramsPerCubicMeter * wall.HeatCapacity.JoulesPerKilogramKelvin)
            : 0;
    }

    /// <summary>Temperature of the wall at the start [K].</summary>
    public double StartKelvins { get; }

    /// <summary>One over the heat capacity of the wall [K/J]; 0 for a wall that keeps its temperature.</summary>
    public double PerHeatCapacity { get; }

    /// <summary>Heat flow [W], positive where the wall is the warmer.</summary>
    public double HeatToGas(RealGas gas, in GasPoint point, double wallKelvins)
    {
        var difference = wallKelvins - point.Kelvins;
        if (!double.IsNaN(_fixedFilm)) return _fixedFilm * _areaM2 * difference;
        var film = gas.Point(0.5 * (wallKelvins + point.Kelvins), 2 * point.Density * point.Kelvins / (wallKelvins + point.Kelvins));
        var (viscosity, conductivity) = gas.Transport(film.Kelvins, film.Density);
        return _factor * FreeConvection.Coefficient(_law, film, viscosity, conductivity, difference, _boreM, 0) * _areaM2 * difference;
    }
}
