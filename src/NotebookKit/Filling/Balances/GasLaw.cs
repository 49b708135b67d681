using NotebookKit.Materials.Fluids;

namespace NotebookKit.Filling.Balances;

/// <summary>One gas by one law, for the inside of integrations: the ideal gas dressed as an equation of state, or the equation
/// itself.</summary>
internal sealed class GasLaw
{
    private readonly RealGas? _real;
    private readonly double _cv;
    private double _lastK = double.NaN, _lastDensity, _lastPascals, _lastEnthalpy;
    private EnthalpySlopes _slopes;

    public GasLaw(Gas gas, GasProperties properties)
    {
        Gas = gas;
        Constant = gas.GasConstant.JoulesPerKilogramKelvin;
        _cv = Constant / (gas.HeatCapacityRatio - 1);
        _real = properties == GasProperties.Real ? gas.Real : null;
    }

    public Gas Gas { get; }

    public double Constant { get; }

    public bool IsReal => _real is not null;

    /// <summary>The gas at a temperature and density.</summary>
    public GasPoint At(double kelvins, double density) => _real is not null
        ? _real.Point(kelvins, density)
        : new(kelvins, density, density * Constant * kelvins, _cv * kelvins, 0, _cv, _cv + Constant,
            Math.Sqrt(Gas.HeatCapacityRatio * Constant * kelvins), density * Constant, Constant * kelvins);

    /// <summary>The gas at a pressure and temperature.</summary>
    public GasPoint AtPressure(double pascals, double kelvins) =>
        _real is not null ? _real.PointAtPressure(pascals, kelvins) : At(kelvins, pascals / (Constant * kelvins));

    /// <summary>The temperature behind a regulator that drops the pressure of a gas at rest.</summary>
    public double ThrottledKelvins(in GasPoint before, double pascals) => _real is null ? before.Kelvins
        : ThrottledKelvins(before.Pascals, before.Kelvins, before.Enthalpy, pascals);

    /// <summary>The same by the enthalpy ahead, J/kg.</summary>
    public double ThrottledKelvins(double fromPa, double fromK, double enthalpy, double pascals) =>
        _real is null || pascals >= fromPa ? fromK : KelvinsAtEnthalpy(pascals, enthalpy, fromK);

    /// <summary>Temperature at a pressure and an enthalpy, K, from one near it; the search begins where the last one ended.</summary>
    public double KelvinsAtEnthalpy(double pascals, double enthalpy, double kelvins)
    {
        if (_real is null) return enthalpy / (_cv + Constant);
        if (pascals == _lastPascals && enthalpy == _lastEnthalpy) return _lastK;
        double more = pascals - _lastPascals, richer = enthalpy - _lastEnthalpy,
            nearK = _lastK + more * _slopes.KelvinsByPascals + richer * _slopes.KelvinsByEnthalpy,
            nearDensity = _lastDensity + more * _slopes.DensityByPascals + richer * _slopes.DensityByEnthalpy;
        // Along its slopes where it moved little, else from where the gas is ideal.
        if (Math.Abs(nearK - _lastK) < 5 && Math.Abs(nearDensity - _lastDensity) < 0.05 * _lastDensity)
            (_lastK, _lastDensity) = (nearK, nearDensity);
        if (!(Math.Abs(_lastK - kelvins) < 100)) (_lastK, _lastDensity) = (kelvins, pascals / (Constant * kelvins));
        (_lastPascals, _lastEnthalpy) = (pascals, enthalpy);
        return _lastK = _real.KelvinsAtEnthalpy(pascals, enthalpy, _lastK, ref _lastDensity, out _slopes);
    }

    /// <summary>Viscosity, Pa·s, and conductivity, W/(m·K); of the real gas in either case.</summary>
    public (double Viscosity, double Conductivity) Transport(double kelvins, double density) => Gas.Real!.Transport(kelvins, density);

    /// <summary>By how much a choked flow of the real gas passes that of the ideal one, at pressures up to a highest one and one
    /// temperature.</summary>
    public double[] FlowFactors(double highestPa, double kelvins, int count)
    {
        var factors = new double[count];
        for (var i = 0; i < count; i++)
        {
            var pascals = highestPa * (i + 1) / count;
            factors[i] = _real is null ? 1 : _real.CriticalFlowFactor(new RealGasState(_real,
                _real.PointAtPressure(pascals, kelvins))) / Gas.ChokedFlowFactor;
        }

        return factors;
    }
}

/// <summary>By which law the gas is computed.</summary>
public enum GasProperties
{
    /// <summary>Ideal gas with constant heat capacities: good to 1 % below 60 bar, 16 % too much gas at 300 bar.</summary>
    Ideal,

    /// <summary>The gas's reference equation of state.</summary>
    Real,
}
