namespace NotebookKit.Propulsion.Flow;

/// <summary>The law an expansion follows.</summary>
public enum ExpansionKind
{
    /// <summary>No heat enters; the exponent is the gas' ratio of specific heats.</summary>
    Adiabatic,

    /// <summary>A stated exponent.</summary>
    Polytropic,

    /// <summary>No heat enters; the gas follows its reference equation of state.</summary>
    RealGas,

    /// <summary>Air saturated with vapour over the water: vapour condenses while it cools and gives up its heat.</summary>
    MoistAir,
}
