using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Filling.Networks;

/// <summary>What fills or empties a store: mass and energy rates of its gas, and gas that blows in, in SI.</summary>
internal readonly record struct StoreFlows(double MassRate, double EnergyRate, double Inflow, double InflowK, double AmbientK);

/// <summary>A cylinder or a vessel of a network in SI.</summary>
internal sealed class NetworkStore
{
    // A bare bottle of metal keeps its gas near ambient: 20 W/(m²·K) on the surface of a plump cylinder of that volume (typical).
    private const double CylinderFilm = 20, PlumpSurface = 6.5;

    private readonly double _volumeM3, _startPa, _startWaterM3, _startK, _wattsPerKelvin, _density;
    private readonly HeatPath? _heat;
    private readonly bool _isothermal;
    private GasPoint _last;

    public NetworkStore(PadNode node, PadNetwork pad, GasLaw law)
    {
        Node = node;
        _startK = pad.Temperature.Kelvins;
        if (node is CylinderNode { Cylinder: var cylinder })
        {
            (_volumeM3, _startPa) = (cylinder.Volume.CubicMeters, cylinder.Pressure.ToAbsolute(pad.Ambient).Pascals);
            _wattsPerKelvin = CylinderFilm * PlumpSurface * Math.Pow(_volumeM3, 2.0 / 3);
        }
        else if (node is VesselNode vessel)
        {
            (_volumeM3, _startPa) = (vessel.Chamber.Volume.CubicMeters, vessel.Start.ToAbsolute(pad.Ambient).Pascals);
            _startWaterM3 = _volumeM3 - (vessel.Chamber.Volume * (1 - vessel.WaterFraction.DecimalFractions)).CubicMeters;
            _heat = vessel.Heat == FillHeat.Wall ? new HeatPath(vessel.WallOrPlain, law) : null;
            _isothermal = vessel.Heat == FillHeat.Isothermal;
            var boreM = vessel.Chamber.Bore.Meters;
            HeadPaPerM3 = vessel.Standing ? WaterPassage.Density * StandardConstants.Gravity / (Math.PI / 4 * boreM * boreM) : 0;
            RatedPa = vessel.Chamber.RatedPressure.ToAbsolute(pad.Ambient).Pascals;
        }

        _density = law.AtPressure(_startPa, _startK).Density;
    }

    public PadNode Node { get; }

    /// <summary>Absolute pressure that it is rated to; infinite for a cylinder, which only empties.</summary>
    public double RatedPa { get; } = double.PositiveInfinity;

    /// <summary>Whether its wall has a temperature of its own.</summary>
    public bool HeatsWall => _heat is not null;

    /// <summary>Whether its water has a temperature of its own.</summary>
    public bool FollowsWater => _heat is { FollowsWater: true };

    /// <summary>Head of its water at its foot over the water's volume, Pa/m³; 0 where it isn't said to stand.</summary>
    public double HeadPaPerM3 { get; }

    public void Start(Span<double> own)
    {
        own[NetworkModel.Mass] = _density * (_volumeM3 - _startWaterM3);
        own[NetworkModel.Kelvins] = own[NetworkModel.Wall] = _startK;
        own[NetworkModel.Water] = _startWaterM3;
    }

    /// <summary>Its gas; of a difference of one unknown in many, most stores stand as they stood.</summary>
    public GasPoint Gas(GasLaw law, ReadOnlySpan<double> own)
    {
        double kelvins = own[NetworkModel.Kelvins], density = own[NetworkModel.Mass] / GasM3(own);
        return _last.Kelvins == kelvins && _last.Density == density ? _last : _last = law.At(kelvins, density);
    }

    /// <summary>Temperature of its water, K.</summary>
    public double WaterKelvins(ReadOnlySpan<double> own) =>
        WaterBath.Kelvins(own[NetworkModel.Warmth], own[NetworkModel.Water], _startK);

    /// <summary>The most that the surface of its water may have been warmed to, K: its own temperature where that is followed, and that of
    /// the wall that it counts as where it isn't.</summary>
    public double SurfaceKelvins(ReadOnlySpan<double> own) => FollowsWater ? WaterKelvins(own)
        : Math.Max(_startK, _heat is null ? _startK : own[NetworkModel.Wall]);

    /// <summary>Pressure after cooling to a temperature, Pa.</summary>
    public double SettledPa(GasLaw law, ReadOnlySpan<double> own, double kelvins) =>
        law.At(kelvins, own[NetworkModel.Mass] / GasM3(own)).Pascals;

    public double GasM3(ReadOnlySpan<double> own) => _volumeM3 - own[NetworkModel.Water];

    /// <summary>Rates of its unknowns, and what it adds to the sums over the network; water that comes and goes, and its warmth, stand in
    /// the rates before. First law: m cv dT = Σ ṁ h − u Σ ṁ + Q − p dV −
    /// m (∂u/∂ρ) dρ.</summary>
    public void Rates(in GasPoint gas, ReadOnlySpan<double> own, Span<double> rates, Span<double> totals, in StoreFlows flows)
    {
        double volumeM3 = GasM3(own), wallK = own[NetworkModel.Wall], mass = gas.Density * volumeM3, waterRate = rates[NetworkModel.Water],
            fromWater = 0;
        rates[NetworkModel.Mass] = flows.MassRate;
        var work = -gas.Pascals * waterRate;
        var densityRate = (flows.MassRate + gas.Density * waterRate) / volumeM3;
        var kept = flows.EnergyRate - gas.Energy * flows.MassRate - work - mass * gas.EnergyByDensity * densityRate;
        var heat = _isothermal ? -kept : _heat is { } path ? path.ToGas(gas, wallK, flows.Inflow, flows.InflowK)
            : _wattsPerKelvin * (flows.AmbientK - gas.Kelvins);
        if (_heat is { FollowsWater: true } water)
        {
            fromWater = water.FromWater(gas, WaterKelvins(own), own[NetworkModel.Water], flows.Inflow, flows.InflowK);
            rates[NetworkModel.Warmth] -= fromWater;
        }

        if (!_isothermal) rates[NetworkModel.Kelvins] = (kept + heat + fromWater) / (mass * gas.Cv);
        if (_heat is { } wall) rates[NetworkModel.Wall] = wall.WallRate(heat, wallK, flows.AmbientK);
        totals[NetworkModel.Heat] += heat;
        totals[NetworkModel.WaterWork] += work;
    }
}
