using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Balances;

/// <summary>A wall in SI, ready for integrations.</summary>
internal readonly struct HeatPath
{
    // The last of the water is no bath: its surface breaks up.
    private const double FadesM3 = 1e-6;

    private readonly GasLaw _gas;
    private readonly FilmLaw _law;
    private readonly double _surfaceM2, _waterM2, _waterDiameterM;
    private readonly double _boreM;
    private readonly double _inletM;
    private readonly double _heightM;
    private readonly bool _stirsThroughout;
    private readonly double _fixedFilm;
    private readonly double _factor;
    private readonly double _outside;
    private readonly LastFilm _lastAtWall = new(), _lastAtWater = new();

    /// <summary>A wall in SI; where the water's surface is given, it is taken out of the wall's.</summary>
    public HeatPath(FillWall wall, GasLaw gas)
    {
        _gas = gas;
        _law = wall.Law;
        _waterM2 = wall.WaterSurface?.SquareMeters ?? 0;
        _waterDiameterM = Math.Sqrt(4 / Math.PI * _waterM2);
        _surfaceM2 = wall.Surface.SquareMeters - _waterM2;
        _boreM = wall.Bore.Meters;
        _inletM = wall.Inlet?.Meters ?? double.PositiveInfinity;
        _heightM = wall.Law == FilmLaw.Horizontal ? _boreM : Math.Max(_boreM,
            wall.Surface.SquareMeters / (Math.PI * _boreM) - 0.5 * _boreM);
        _stirsThroughout = wall.Stirring == JetStirring.Throughout;
        _fixedFilm = wall.Film?.WattsPerSquareMeterKelvin ?? double.NaN;
        _factor = wall.FilmFactor;
        _outside = wall.Outside.WattsPerSquareMeterKelvin;
        WallJoulesPerKelvin = wall.HeatCapacity?.JoulesPerKelvin ?? double.PositiveInfinity;
    }

    /// <summary>Heat capacity of the wall, J/K; infinite where it keeps its temperature.</summary>
    public double WallJoulesPerKelvin { get; }

    /// <summary>Whether the water below the gas has a temperature of its own.</summary>
    public bool FollowsWater => _waterM2 > 0;

    /// <summary>Heat from the wall to the gas, W; while gas flows in, with the temperature that gas comes at.</summary>
    public double ToGas(in GasPoint gas, double wallK, double inflowKgPerS, double inflowK) =>
        Film(gas, wallK, inflowKgPerS, inflowK, false) * _surfaceM2 * (wallK - gas.Kelvins);

    /// <summary>Heat from the water's surface to the gas, W; it fades away with the last millilitre.</summary>
    public double FromWater(in GasPoint gas, double waterK, double waterM3, double inflowKgPerS, double inflowK) =>
        _waterM2 == 0 || waterM3 < 1e-12 ? 0 : Film(gas, waterK, inflowKgPerS, inflowK, true) * _waterM2 * (waterK - gas.Kelvins)
            * Math.Clamp(waterM3 / FadesM3, 0, 1);

    private double Film(in GasPoint gas, double surfaceK, double inflowKgPerS, double inflowK, bool isWater)
    {
        if (!double.IsNaN(_fixedFilm)) return _factor * _fixedFilm;
        // The film is thin, so it has the gas's pressure; its density goes with its temperature.
        var filmK = 0.5 * (gas.Kelvins + surfaceK);
        var filmDensity = gas.Density * gas.Kelvins / filmK;
        // Of a difference of one unknown in many, most films stand as they stood.
        var last = isWater ? _lastAtWater : _lastAtWall;
        if (last.Kelvins != filmK || last.Density != filmDensity)
        {
            (last.Kelvins, last.Density, last.Point) = (filmK, filmDensity, _gas.At(filmK, filmDensity));
            (last.Viscosity, last.Conductivity) = _gas.Transport(filmK, filmDensity);
        }

        var (viscosity, conductivity) = (last.Viscosity, last.Conductivity);
        var stirring = inflowKgPerS > 0 && double.IsFinite(_inletM)
            && (_stirsThroughout || MixingNumber(gas, inflowKgPerS, inflowK) < 1)
            ? 0.56 * Math.Pow(4 * inflowKgPerS / (Math.PI * _inletM * viscosity), 0.67) : 0;
        return _factor * (isWater
            ? FreeConvection.OverSurface(last.Point, viscosity, conductivity, surfaceK - gas.Kelvins, _waterDiameterM, _boreM, stirring)
            : FreeConvection.Coefficient(_law, last.Point, viscosity, conductivity, surfaceK - gas.Kelvins, _boreM, stirring));
    }

    /// <summary>Number of the mixing criterion [-], below 1 where the jet stirs; not a number where no inlet is given.</summary>
    public double MixingNumber(in GasPoint gas, double inflowKgPerS, double inflowK) => !double.IsFinite(_inletM) ? double.NaN
        : JetMixing.Number(_heightM, _inletM, 4 * inflowKgPerS / (Math.PI * _inletM * _inletM * gas.Density),
            gas.Expansivity * (gas.Kelvins - inflowK));

    /// <summary>Rise of the wall's temperature, K/s.</summary>
    public double WallRate(double heatToGas, double wallK, double ambientK) =>
        (_outside * _surfaceM2 * (ambientK - wallK) - heatToGas) / WallJoulesPerKelvin;

    private sealed class LastFilm
    {
        public double Kelvins, Density, Viscosity, Conductivity;
        public GasPoint Point;
    }
}
