namespace NotebookKit.Propulsion.Phases;

/// <summary>Pressure and temperature of the closed gas against its volume.</summary>
internal interface IExpansionLaw<TSelf>
    where TSelf : struct
{
    /// <summary>Pressure [Pa] at a volume [m³].</summary>
    double Pressure(double volumeM3);

    /// <summary>Temperature [K] at a volume [m³].</summary>
    double Temperature(double volumeM3);

    /// <summary>Internal energy given up since the start, had none entered as heat [J]; NaN where the law has heat entering.</summary>
    double EnergyGivenUp(double volumeM3);

    /// <summary>Work beyond pushing back the outside air that the gas could do without heat down to a pressure [J].</summary>
    double Available(double ambientPa);

    /// <summary>The same law for another amount of the same gas, given by the volume it had at the start [m³].</summary>
    TSelf ForStartVolume(double startVolumeM3);
}
