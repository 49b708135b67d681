namespace NotebookKit.Flight.Design;

/// <summary>Mass, centre and principal inertias of a body of revolution, in SI numbers.</summary>
/// <param name="MassKg">Mass [kg].</param>
/// <param name="CentreM">Centre of gravity aft of the nose tip [m].</param>
/// <param name="RollKgM2">Inertia about the axis [kg m²].</param>
/// <param name="PitchKgM2">Inertia across the axis, about the centre of gravity [kg m²].</param>
internal readonly record struct MassState(double MassKg, double CentreM, double RollKgM2, double PitchKgM2)
{
    /// <summary>Both together, by the parallel-axis theorem.</summary>
    public MassState With(in MassState other)
    {
        var mass = MassKg + other.MassKg;
        if (mass == 0) return this;
        var centre = ((MassKg * CentreM) + (other.MassKg * other.CentreM)) / mass;
        var apart = CentreM - other.CentreM;
        return new MassState(mass, centre, RollKgM2 + other.RollKgM2,
            PitchKgM2 + other.PitchKgM2 + (MassKg * other.MassKg / mass * apart * apart));
    }
}
