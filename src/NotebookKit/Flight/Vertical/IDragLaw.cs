namespace NotebookKit.Flight.Vertical;

/// <summary>Drag coefficient as step loops ask for it.</summary>
internal interface IDragLaw
{
    /// <summary>Whether the coefficient depends on Mach number; a constant false spares its computation.</summary>
    bool NeedsMach { get; }

    /// <summary>Coefficient [-] at a Mach number [-] in air of a pressure [Pa] and a temperature [K].</summary>
    double Coefficient(double mach, double pressurePa, double temperatureK, bool isJetOn);
}
