namespace NotebookKit.Filling.Balances;

/// <summary>By which law the gas is computed.</summary>
public enum GasProperties
{
    /// <summary>Ideal gas with constant heat capacities: good to 1 % below 60 bar, 16 % too much gas at 300 bar.</summary>
    Ideal,

    /// <summary>The gas's reference equation of state.</summary>
    Real,
}
