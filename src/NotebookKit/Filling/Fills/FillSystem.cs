using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Filling.Supply;
using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Fills;

/// <summary>A vessel being filled: gas mass, gas temperature, wall temperature; of the cylinder, where there is one, mass and temperature;
/// and the warmth of its water, where that is followed.</summary>
internal struct FillSystem(GasLaw law, IRestrictor restrictor, FlowScale scale, double gasM3, double supplyPa, double supplyK,
    double ambientK) : IOdeSystem
{
    public const int Mass = 0, Kelvins = 1, Wall = 2, CylinderMass = 3, CylinderKelvins = 4, WaterWarmth = 5, Unknowns = 6;

    private readonly double _supplyEnthalpy = law.AtPressure(supplyPa, supplyK).Enthalpy;

    /// <summary>The path of heat; none where the gas keeps its heat.</summary>
    public HeatPath? Heat { get; init; }

    /// <summary>Water below the gas, m³.</summary>
    public double WaterM3 { get; init; }

    /// <summary>Whether the gas comes up through that water.</summary>
    public bool Bubbles { get; init; }

    /// <summary>Volume of the cylinder, m³; 0 where the supply never ends.</summary>
    public double CylinderM3 { get; init; }

    /// <summary>Heat that the cylinder's wall gives its gas, W/K.</summary>
    public double CylinderWattsPerKelvin { get; init; }

    /// <summary>How fast the regulator is wound up, Pa/s; 0 where it is set before the valve opens.</summary>
    public double RisePaPerS { get; init; }

    /// <summary>Pressure it is wound up from, Pa.</summary>
    public double RiseFromPa { get; init; }

    /// <summary>Pressure ahead of the restrictor as measured; none where a regulator gives it.</summary>
    public SupplyTrace? Measured { get; init; }

    /// <summary>Surrounding air pressure, Pa; what the measured gauge pressures count from.</summary>
    public double AmbientPa { get; init; }

    /// <summary>Whether the valve is open.</summary>
    public bool Open { get; set; }

    /// <summary>Whether gas and wall keep the ambient temperature.</summary>
    public bool Isothermal { get; init; }

    public readonly int Dimension => Unknowns;

    public readonly double GasM3 => gasM3;

    public readonly GasPoint Gas(ReadOnlySpan<double> y) => law.At(y[Kelvins], y[Mass] / gasM3);

    public readonly GasPoint CylinderGas(ReadOnlySpan<double> y) => law.At(y[CylinderKelvins], y[CylinderMass] / CylinderM3);

    /// <summary>Temperature of the water, K; that of the start where it isn't followed.</summary>
    public readonly double WaterKelvins(ReadOnlySpan<double> y) =>
        Heat is { FollowsWater: true } ? WaterBath.Kelvins(y[WaterWarmth], WaterM3, ambientK) : ambientK;

    /// <summary>Pressure after cooling to ambient if the valve were shut now, Pa.</summary>
    public readonly double SettledPa(ReadOnlySpan<double> y) => law.At(ambientK, y[Mass] / gasM3).Pascals;

    /// <summary>Pressure ahead of the restrictor, Pa.</summary>
    public readonly double UpstreamPa(double t, ReadOnlySpan<double> y)
    {
        var regulated = RegulatedPa(t);
        return CylinderM3 > 0 ? Math.Min(regulated, CylinderGas(y).Pascals) : regulated;
    }

    /// <summary>What is still to come before the fill stalls, Pa: while the regulator is wound up, all that it will give.</summary>
    public readonly double HeadroomPa(double t, ReadOnlySpan<double> y)
        => (Measured is { } trace ? t < trace.Time[trace.Time.Count - 1] ? double.MaxValue : RegulatedPa(t)
            : RegulatedPa(t) < supplyPa ? supplyPa : UpstreamPa(t, y)) - Gas(y).Pascals;

    /// <summary>Number of the criterion by which the jet stirs [-], below 1 where it does; not a number where no inlet is given.</summary>
    public readonly double MixingNumber(double t, ReadOnlySpan<double> y)
    {
        if (Heat is not { } path) return double.NaN;
        var gas = Gas(y);
        double upPa = UpstreamPa(t, y), upK = CylinderM3 > 0 ? law.ThrottledKelvins(CylinderGas(y), upPa) : supplyK;
        return path.MixingNumber(gas, scale.At(upPa) * restrictor.KilogramsPerSecond(upPa, upK, gas.Pascals, law.Gas), upK);
    }

    private readonly double RegulatedPa(double t) => Measured is { } trace ? AmbientPa + 1e5 * trace.BarAt(t) : RisePaPerS > 0
        ? Math.Min(supplyPa, RiseFromPa + RisePaPerS * t) : supplyPa;

    public readonly void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt.Clear();
        if (!(y[Mass] > 0 && y[Kelvins] > 1 && y[Kelvins] < 5000))
        {
            dydt[Mass] = double.NaN;
            return;
        }

        var gas = Gas(y);
        double flow = 0, enthalpy = 0, upK = supplyK;
        GasPoint cylinder = default;
        if (Open)
        {
            var upPa = RegulatedPa(t);
            enthalpy = upPa < supplyPa ? law.AtPressure(upPa, supplyK).Enthalpy : _supplyEnthalpy;
            if (CylinderM3 > 0)
            {
                cylinder = CylinderGas(y);
                upPa = Math.Min(upPa, cylinder.Pascals);
                upK = law.ThrottledKelvins(cylinder, upPa);
                enthalpy = cylinder.Enthalpy;
            }

            flow = scale.At(upPa) * restrictor.KilogramsPerSecond(upPa, upK, gas.Pascals, law.Gas);
        }

        double fromWater = 0, inEnthalpy = enthalpy;
        if (Heat is { FollowsWater: true } water)
        {
            var waterK = WaterKelvins(y);
            // Gas that comes up through water arrives as warm as the water.
            if (Bubbles && flow > 0) (inEnthalpy, upK) = (law.AtPressure(gas.Pascals, waterK).Enthalpy, waterK);
            fromWater = water.FromWater(gas, waterK, WaterM3, flow, upK);
            dydt[WaterWarmth] = -fromWater - flow * (inEnthalpy - enthalpy);
        }

        var heat = Heat is { } path ? path.ToGas(gas, y[Wall], flow, upK) : 0;
        dydt[Mass] = flow;
        if (!Isothermal)
        {
            dydt[Kelvins] = VesselBalance.TemperatureRate(gas, gasM3, flow, inEnthalpy, 0, heat + fromWater);
            if (Heat is { } wall) dydt[Wall] = wall.WallRate(heat, y[Wall], ambientK);
        }

        if (CylinderM3 > 0 && Open)
        {
            dydt[CylinderMass] = -flow;
            dydt[CylinderKelvins] = VesselBalance.TemperatureRate(cylinder, CylinderM3, 0, 0, flow,
                CylinderWattsPerKelvin * (ambientK - y[CylinderKelvins]));
        }
    }
}
