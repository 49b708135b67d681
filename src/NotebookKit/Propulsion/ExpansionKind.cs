namespace NotebookKit.Propulsion;

/// <summary>The law an expansion follows.</summary>
public enum ExpansionKind
{
    /// <summary>No heat enters; the exponent is the gas' ratio of specific heats.</summary>
    Adiabatic,

    /// <summary>A stated exponent.</summary>
    Polytropic,
}
