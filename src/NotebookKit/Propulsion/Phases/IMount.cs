namespace NotebookKit.Propulsion.Phases;

/// <summary>What holds or carries the vessel: a test stand, or a vehicle on its way up.</summary>
internal interface IMount
{
    /// <summary>Whether it keeps the vessel at rest.</summary>
    bool IsHeld { get; }

    /// <summary>Mass that moves with the vessel besides water and gas [kg].</summary>
    double DryMassKg { get; }

    /// <summary>Gravity [m/s²].</summary>
    double Gravity { get; }

    /// <summary>Air pressure around [Pa].</summary>
    double Ambient(double heightM);

    /// <summary>Air pressure around [Pa], and drag against upward motion [N].</summary>
    double Surroundings(double heightM, double speed, bool jetOn, out double dragN);
}
