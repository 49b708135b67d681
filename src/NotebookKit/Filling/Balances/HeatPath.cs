using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Balances;

/// <summary>A wall in SI, ready for integrations.</summary>
internal readonly struct HeatPath
{
    private readonly GasLaw _gas;
    private readonly FilmLaw _law;
    private readonly double _surfaceM2;
    private readonly double _boreM;
    private readonly double _inletM;
    private readonly double _fixedFilm;
    private readonly double _factor;
    private readonly double _outside;

    public HeatPath(FillWall wall, GasLaw gas)
    {
        _gas = gas;
        _law = wall.Law;
        _surfaceM2 = wall.Surface.SquareMeters;
        _boreM = wall.Bore.Meters;
        _inletM = wall.Inlet?.Meters ?? double.PositiveInfinity;
        _fixedFilm = wall.Film?.WattsPerSquareMeterKelvin ?? double.NaN;
        _factor = wall.FilmFactor;
        _outside = wall.Outside.WattsPerSquareMeterKelvin;
        WallJoulesPerKelvin = wall.HeatCapacity?.JoulesPerKelvin ?? double.PositiveInfinity;
    }

    /// <summary>Heat capacity of the wall, J/K; infinite where it keeps its temperature.</summary>
    public double WallJoulesPerKelvin { get; }

    /// <summary>Heat to the gas, W.</summary>
    public double ToGas(double gasK, double density, double wallK, double inflowKgPerS)
    {
        var film = _fixedFilm;
        if (double.IsNaN(film))
        {
            // The film is thin, so it has the gas's pressure; its density goes with its temperature.
            var filmK = 0.5 * (gasK + wallK);
            var filmDensity = density * gasK / filmK;
            var (viscosity, conductivity) = _gas.Transport(filmK, filmDensity);
            var stirring = inflowKgPerS > 0 ? 0.56 * Math.Pow(4 * inflowKgPerS / (Math.PI * _inletM * viscosity), 0.67) : 0;
            film = FreeConvection.Coefficient(_law, _gas.At(filmK, filmDensity), viscosity, conductivity, wallK - gasK, _boreM, stirring);
        }

        return _factor * film * _surfaceM2 * (wallK - gasK);
    }

    /// <summary>Rise of the wall's temperature, K/s.</summary>
    public double WallRate(double heatToGas, double wallK, double ambientK) =>
        (_outside * _surfaceM2 * (ambientK - wallK) - heatToGas) / WallJoulesPerKelvin;
}
