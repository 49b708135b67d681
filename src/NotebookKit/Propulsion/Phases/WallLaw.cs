using NotebookKit.Materials;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Heat from the wall to the gas as numbers.</summary>
internal readonly struct WallLaw
{
    private const double Gravity = 9.80665;

    private readonly double _coefficient;
    private readonly double _factor;
    private readonly double _areaM2;

    /// <summary>Creates the law for a closed cylinder.</summary>
    public WallLaw(WallWarming heat, double chamberM3, double boreM, double startKelvins)
    {
        var section = Math.PI / 4 * boreM * boreM;
        _areaM2 = Math.PI * boreM * (chamberM3 / section) + 2 * section;
        StartKelvins = startKelvins;
        _coefficient = heat.FilmCoefficient?.WattsPerSquareMeterKelvin ?? 0;
        _factor = heat.FilmCoefficient is null ? heat.NaturalConvectionFactor : 0;
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
        if (_factor == 0) return _coefficient * _areaM2 * difference;

        // Nu = C Ra^(1/3) is free of length: h = C k (g β |ΔT| ρ² cp/(µ k))^(1/3), properties half-way between gas and wall.
        var film = gas.Point(0.5 * (wallKelvins + point.Kelvins), 2 * point.Density * point.Kelvins / (wallKelvins + point.Kelvins));
        var (viscosity, conductivity) = gas.Transport(film.Kelvins, film.Density);
        var grashof = Gravity * Math.Abs(film.Expansivity * difference) * film.Density * film.Density * film.Cp / (viscosity * conductivity);
        return _factor * conductivity * Math.Cbrt(grashof) * _areaM2 * difference;
    }
}
