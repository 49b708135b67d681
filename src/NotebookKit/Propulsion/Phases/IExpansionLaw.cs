namespace NotebookKit.Propulsion.Phases;

/// <summary>Pressure and temperature of the closed gas against its volume.</summary>
internal interface IExpansionLaw
{
    /// <summary>Pressure [Pa] at a volume [m³].</summary>
    double Pressure(double volumeM3);

    /// <summary>Temperature [K] at a volume [m³].</summary>
    double Temperature(double volumeM3);

    /// <summary>Internal energy given up since the start, had none entered as heat [J]; NaN where the law has heat entering.</summary>
    double EnergyGivenUp(double volumeM3);
}
