namespace NotebookKit.Flight.Drive;

/// <summary>
/// What drives a vehicle during one phase of its flight: water leaving, gas leaving, or nothing. It is coupled to the flight both ways: the
/// flight tells it the pressure outside and what resists the motion, it answers with thrust and with the rates of its own unknowns.
/// </summary>
internal interface IDrive
{
    /// <summary>Number of its own unknowns; 0 to <see cref="DriveState.MostUnknowns"/>.</summary>
    int Unknowns { get; }

    /// <summary>Whether a jet leaves.</summary>
    bool IsJetOn { get; }

    /// <summary>Number of ways in which the phase can end of itself.</summary>
    int Ends { get; }

    /// <summary>Mass of water and gas aboard [kg].</summary>
    double ContentsKg(ReadOnlySpan<double> own);

    /// <summary>Thrust and what is aboard; fills the rates of its own unknowns.</summary>
    /// <param name="ambientPa">Air pressure outside [Pa].</param>
    /// <param name="resistanceN">What resists the motion along the axis, apart from weight [N].</param>
    /// <param name="speedMps">Speed along the axis [m/s].</param>
    /// <param name="dryKg">Mass of all that isn't water or gas of this drive [kg].</param>
    /// <param name="own">Its own unknowns.</param>
    /// <param name="ownRates">Receives their rates.</param>
    DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own, Span<double> ownRates);

    /// <summary>A number that falls through zero where the phase ends in one of its ways.</summary>
    double End(int way, double ambientPa, ReadOnlySpan<double> own);
}

/// <summary>Thrust [N], water and gas aboard [kg], what leaves [kg/s], and the gas inside [Pa].</summary>
internal readonly record struct DriveState(double ThrustN, double WaterKg, double GasKg, double OutKgS, double GasPa)
{
    /// <summary>Most unknowns that any drive has.</summary>
    public const int MostUnknowns = 2;

    public double ContentsKg => WaterKg + GasKg;
}
