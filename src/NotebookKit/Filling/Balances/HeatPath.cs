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
    private readonly double _heightM;
    private readonly bool _stirsThroughout;
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
        _heightM = wall.Law == FilmLaw.Horizontal ? _boreM : Math.Max(_boreM, _surfaceM2 / (Math.PI * _boreM) - 0.5 * _boreM);
        _stirsThroughout = wall.Stirring == JetStirring.Throughout;
        _fixedFilm = wall.Film?.WattsPerSquareMeterKelvin ?? double.NaN;
        _factor = wall.FilmFactor;
        _outside = wall.Outside.WattsPerSquareMeterKelvin;
        WallJoulesPerKelvin = wall.HeatCapacity?.JoulesPerKelvin ?? double.PositiveInfinity;
    }

    /// <summary>Heat capacity of the wall, J/K; infinite where it keeps its temperature.</summary>
    public double WallJoulesPerKelvin { get; }

    /// <summary>Heat to the gas, W; while gas flows in, with the temperature that gas comes at.</summary>
    public double ToGas(in GasPoint gas, double wallK, double inflowKgPerS, double inflowK)
    {
        var film = _fixedFilm;
        if (double.IsNaN(film))
        {
            // The film is thin, so it has the gas's pressure; its density goes with its temperature.
            var filmK = 0.5 * (gas.Kelvins + wallK);
            var filmDensity = gas.Density * gas.Kelvins / filmK;
            var (viscosity, conductivity) = _gas.Transport(filmK, filmDensity);
            var stirring = inflowKgPerS > 0 && double.IsFinite(_inletM)
                && (_stirsThroughout || MixingNumber(gas, inflowKgPerS, inflowK) < 1)
                ? 0.56 * Math.Pow(4 * inflowKgPerS / (Math.PI * _inletM * viscosity), 0.67) : 0;
            film = FreeConvection.Coefficient(_law, _gas.At(filmK, filmDensity), viscosity, conductivity, wallK - gas.Kelvins, _boreM,
                stirring);
        }

        return _factor * film * _surfaceM2 * (wallK - gas.Kelvins);
    }

    /// <summary>Number of the mixing criterion [-], below 1 where the jet stirs; not a number where no inlet is given.</summary>
    public double MixingNumber(in GasPoint gas, double inflowKgPerS, double inflowK) => !double.IsFinite(_inletM) ? double.NaN
        : JetMixing.Number(_heightM, _inletM, 4 * inflowKgPerS / (Math.PI * _inletM * _inletM * gas.Density),
            gas.Expansivity * (gas.Kelvins - inflowK));

    /// <summary>Rise of the wall's temperature, K/s.</summary>
    public double WallRate(double heatToGas, double wallK, double ambientK) =>
        (_outside * _surfaceM2 * (ambientK - wallK) - heatToGas) / WallJoulesPerKelvin;
}
