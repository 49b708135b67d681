namespace NotebookKit.Filling;

/// <summary>A wall in SI, ready for integrations.</summary>
internal readonly struct HeatPath
{
    private const double Gravity = 9.80665;

    private readonly GasLaw _law;
    private readonly double _surfaceM2;
    private readonly double _boreM;
    private readonly double _inletM;
    private readonly double _fixedFilm;
    private readonly double _factor;
    private readonly double _outside;

    public HeatPath(FillWall wall, GasLaw law)
    {
        _law = law;
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
    public double ToGas(double gasK, double density, double cp, double expansivity, double wallK, double inflowKgPerS)
    {
        var film = _fixedFilm;
        if (double.IsNaN(film))
        {
            // Properties at the mean of gas and wall, as the correlation asks; the film is thin, so it has the gas's pressure.
            var filmK = 0.5 * (gasK + wallK);
            var filmDensity = density * gasK / filmK;
            var (viscosity, conductivity) = _law.Transport(filmK, filmDensity);
            var rayleigh = Gravity * expansivity * gasK / filmK * Math.Abs(wallK - gasK) * _boreM * _boreM * _boreM * filmDensity * filmDensity * cp / (viscosity * conductivity);
            var nusselt = Math.Max(0.59 * Math.Pow(rayleigh, 0.25), 0.13 * Math.Cbrt(rayleigh));
            if (inflowKgPerS > 0) nusselt += 0.56 * Math.Pow(4 * inflowKgPerS / (Math.PI * _inletM * viscosity), 0.67);
            film = nusselt * conductivity / _boreM;
        }

        return _factor * film * _surfaceM2 * (wallK - gasK);
    }

    /// <summary>Rise of the wall's temperature, K/s.</summary>
    public double WallRate(double heatToGas, double wallK, double ambientK) =>
        (_outside * _surfaceM2 * (ambientK - wallK) - heatToGas) / WallJoulesPerKelvin;
}
