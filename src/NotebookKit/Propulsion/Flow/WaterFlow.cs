namespace NotebookKit.Propulsion.Flow;

/// <summary>How the water's motion inside the vessel is treated.</summary>
public enum WaterFlow
{
    /// <summary>The jet has at every moment the speed that the pressure alone would give it; weight and inertia of the water column are
    /// left out.</summary>
    QuasiSteady,

    /// <summary>As quasi-steady, with the head of the water column under gravity and acceleration added to the pressure.</summary>
    QuasiSteadyWithHead,

    /// <summary>
    /// The whole unsteady equation: the column needs time to gather speed, feels gravity and acceleration, and its momentum inside the
    /// vessel counts.
    /// The thrust of the first tenths of a millisecond is a water hammer, not a thrust to design for: it is left out of the peak.
    /// </summary>
    Unsteady,
}
