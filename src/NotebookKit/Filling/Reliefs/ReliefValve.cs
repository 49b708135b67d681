using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Filling.Reliefs;

/// <summary>A relief valve by its flow area and certified coefficient, and what it passes.</summary>
/// <remarks>
/// Critical flow; where the outlet is above about half of the relieving pressure, less by K_b. Source: ISO 4126-1 (q_m = p₀ C A K_dr K_b
/// √(M/(Z T)), C = 3.948 √(k (2/(k+1))^((k+1)/(k−1))), K_b = √(2k/(k−1) (r^(2/k) − r^((k+1)/k)))/√(k (2/(k+1))^((k+1)/(k−1))),
/// unverified); API 520-1 (the same with K_d, K_b, K_c, unverified); values of the function: UN Model
/// Regulations, 6.7.2.12.2.1.
/// </remarks>
/// <param name="Set">Set pressure; 0.5 to 300 bar gauge.</param>
/// <param name="FlowArea">Area of its narrowest cross-section; 0.1 to 10 000 mm².</param>
/// <param name="Discharge">Certified coefficient of discharge, K_dr [-]; 0.1 to 0.975. It is the measured one times 0.9.</param>
public sealed record ReliefValve(GaugePressure Set, Area FlowArea, double Discharge)
{
    /// <summary>3600 s/h over 10 √R with the molar gas constant in J/(kmol K), the standard's rounded 3.948 [-].</summary>
    private const double IsoConstant = 3.948;

    /// <summary>Pressure above the set one at which it is open in full, over the set one; 1 to 25 %, 10 % unless given.</summary>
    public Ratio Overpressure { get; init; } = 10.Percent();

    /// <summary>Compressibility factor of the gas at the relieving pressure [-]; 0.3 to 1.3, 1 unless given.</summary>
    public double Compressibility { get; init; } = 1;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<GaugePressure>(0.5.BarGauge(), 300.BarGauge()).Find(Set, "set pressure of the relief valve",
                "It is gauge, above the air outside."),
            new ValidRange<Area>(Area.FromSquareMillimeters(0.1), Area.FromSquareMillimeters(10_000)).Find(
                FlowArea.ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter), "flow area of the relief valve", "An 8 mm seat has 50 mm²."),
            new ValidRange<double>(0.1, 0.975).Find(Discharge, "coefficient of discharge", "Certified valves have 0.6 to 0.85; without a "
                + "certificate take 0.6 or less."),
            new ValidRange<Ratio>(1.Percent(), 25.Percent()).Find(Overpressure.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "overpressure of the relief valve", "10 % is usual."),
            new ValidRange<double>(0.3, 1.3).Find(Compressibility, "compressibility factor", "Air at a pad has 0.98 to 1.08."),
        }.OfType<Finding>().ToList();

    /// <summary>Pressure at which it passes its capacity: the overpressure counts on the gauge set pressure, ambient is added then. Source:
    /// ISO 4126-1.</summary>
    /// <param name="ambient">Surrounding air pressure; 0.5 to 1.2 bar absolute.</param>
    /// <exception cref="InvalidDesignException">The valve is refused; all reasons are in it.</exception>
    /// <exception cref="OutOfRangeException">The ambient pressure is outside.</exception>
    public AbsolutePressure Relieving(AbsolutePressure ambient)
    {
        InvalidDesignException.ThrowIfAny("Relief valve", Validate());
        new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Check(ambient, "ambient pressure",
            "Was a gauge pressure meant?");
        return (Set * (1 + Overpressure.DecimalFractions)).ToAbsolute(ambient);
    }

    /// <summary>Function of the ratio of heat capacities, √(k (2/(k+1))^((k+1)/(k−1))) [-]; 1/√e at k = 1. Source: UN Model Regulations,
    /// 6.7.2.12.2.1.</summary>
    /// <param name="ratio">Ratio of heat capacities k [-]; 1 to 2.2.</param>
    /// <exception cref="OutOfRangeException">The ratio is outside.</exception>
    public static double FlowFunction(double ratio)
    {
        var k = new ValidRange<double>(1, 2.2).Check(ratio, "ratio of heat capacities", "Air has 1.40.");
        return k - 1 < 1e-9 ? Math.Exp(-0.5) : Math.Sqrt(k * Math.Pow(2 / (k + 1), (k + 1) / (k - 1)));
    }

    /// <summary>Coefficient C of the standard for flow in kg/h, bar and mm² [-]. Source: ISO 4126-1.</summary>
    /// <param name="ratio">Ratio of heat capacities k [-]; 1 to 2.2.</param>
    /// <exception cref="OutOfRangeException">The ratio is outside.</exception>
    public static double IsoCoefficient(double ratio) => IsoConstant * FlowFunction(ratio);

    /// <summary>Share of the critical flow that is left where the outlet isn't choked [-]; 1 where it is. Source: ISO 4126-1; isentropic
    /// flow through a nozzle.</summary>
    /// <param name="outletOverRelieving">Absolute pressure behind the valve over the relieving one [-]; 0 to 1.</param>
    /// <param name="ratio">Ratio of heat capacities k [-]; 1.01 to 2.2.</param>
    /// <exception cref="OutOfRangeException">A value is outside its range.</exception>
    public static double Subcritical(double outletOverRelieving, double ratio)
    {
        var r = new ValidRange<double>(0, 1).Check(outletOverRelieving, "outlet over relieving pressure", "Both are absolute.");
        var k = new ValidRange<double>(1.01, 2.2).Check(ratio, "ratio of heat capacities", "Air has 1.40.");
        return r <= Math.Pow(2 / (k + 1), k / (k - 1)) ? 1
            : Math.Sqrt(2 * k / (k - 1) * Math.Max(0, Math.Pow(r, 2 / k) - Math.Pow(r, (k + 1) / k))) / FlowFunction(k);
    }

    /// <summary>Certified flow to the open air. Source: ISO 4126-1, q_m = p₀ C A K_dr K_b √(M/(Z T)).</summary>
    /// <param name="gas">The gas.</param>
    /// <param name="temperature">Its temperature; 50 K to 2000 K.</param>
    /// <param name="ambient">Surrounding air pressure; 0.5 to 1.2 bar absolute.</param>
    /// <exception cref="InvalidDesignException">The valve is refused; all reasons are in it.</exception>
    /// <exception cref="OutOfRangeException">The temperature or the ambient pressure is outside.</exception>
    public MassFlow Capacity(Gas gas, Temperature temperature, AbsolutePressure ambient)
    {
        ArgumentNullException.ThrowIfNull(gas);
        GasChecks.Warm(temperature);
        return MassFlow.FromKilogramsPerHour(Relieving(ambient).Bar * IsoCoefficient(gas.HeatCapacityRatio) * FlowArea.SquareMillimeters
            * Discharge * Subcritical(ambient / Relieving(ambient), gas.HeatCapacityRatio)
            * Math.Sqrt(MolarMass(gas) / (Compressibility * temperature.Kelvins))).ToUnit(
            UnitsNet.Units.MassFlowUnit.GramPerSecond);
    }

    /// <summary>Area that a flow needs. Source: API 520-1, A = W/(C K_d P₁ K_b K_c) √(T Z/M), C = 0.03948 √(k (2/(k+1))^((k+1)/(k−1))),
    /// in mm², kg/h, kPa.</summary>
    /// <param name="flow">Flow; above 0.</param>
    /// <param name="relieving">Relieving pressure; 1 to 400 bar absolute.</param>
    /// <param name="temperature">Temperature of the gas; 50 K to 2000 K.</param>
    /// <param name="molarMass">Molar mass; 1 to 300 g/mol.</param>
    /// <param name="ratio">Ratio of heat capacities k [-]; 1 to 2.2.</param>
    /// <param name="compressibility">Compressibility factor Z [-]; 0.3 to 1.3.</param>
    /// <param name="discharge">Coefficient of discharge K_d [-]; 0.1 to 0.975. The standard's 0.975 is for its own first sizing.</param>
    /// <exception cref="OutOfRangeException">A value is outside its range.</exception>
    public static Area AreaFor(MassFlow flow, AbsolutePressure relieving, Temperature temperature, MolarMass molarMass, double ratio,
        double compressibility, double discharge)
    {
        new ValidRange<MassFlow>(MassFlow.FromKilogramsPerHour(1e-6), MassFlow.FromKilogramsPerHour(1e7)).Check(
            flow.ToUnit(UnitsNet.Units.MassFlowUnit.KilogramPerHour), "flow to relieve", "Nothing to relieve needs no valve.");
        new ValidRange<AbsolutePressure>(1.BarAbsolute(), 400.BarAbsolute()).Check(relieving, "relieving pressure", "It is absolute.");
        GasChecks.Warm(temperature);
        var gramsPerMol = new ValidRange<double>(1, 300).Check(molarMass.GramsPerMole, "molar mass in g/mol", "Air has 28.96.");
        var z = new ValidRange<double>(0.3, 1.3).Check(compressibility, "compressibility factor", "An ideal gas has 1.");
        var kd = new ValidRange<double>(0.1, 0.975).Check(discharge, "coefficient of discharge", "0.975 at the most.");
        return Area.FromSquareMillimeters(flow.KilogramsPerHour / (IsoConstant / 100 * FlowFunction(ratio) * kd * relieving.Pascals / 1000)
            * Math.Sqrt(temperature.Kelvins * z / gramsPerMol));
    }

    internal static double MolarMass(Gas gas) => 1000 * StandardConstants.MolarGas / gas.GasConstant.JoulesPerKilogramKelvin;
}
