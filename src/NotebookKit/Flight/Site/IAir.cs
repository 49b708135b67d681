namespace NotebookKit.Flight.Site;

/// <summary>The air a body flies through, and its motion over the ground.</summary>
internal interface IAir
{
    /// <summary>The air at a time [s] and an altitude above sea level [m].</summary>
    AirSample At(double t, double altitudeM);
}
