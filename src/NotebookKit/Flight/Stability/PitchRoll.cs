namespace NotebookKit.Flight.Stability;

/// <summary>Small oscillation in pitch and steady roll, in SI numbers.</summary>
internal static class PitchRoll
{
    /// <summary>Natural frequency in pitch, √(−q A d Cmα / I) [rad/s]; NaN where unstable.</summary>
    public static double Frequency(double dynamicPa, double areaM2, double diameterM, double momentSlope, double pitchKgM2) =>
        Math.Sqrt(-dynamicPa * areaM2 * diameterM * momentSlope / pitchKgM2);

    /// <summary>Share of critical damping by pitch rate alone [-].</summary>
    public static double RotationalDamping(
        double dynamicPa, double areaM2, double diameterM, double speedMps, double pitchDamping, double pitchKgM2, double frequency) =>
        -dynamicPa * areaM2 * diameterM * pitchDamping * diameterM / (2 * speedMps) / (2 * pitchKgM2 * frequency);

    /// <summary>Share of critical damping by the sideways drift that goes with the angle [-].</summary>
    public static double HeaveDamping(double dynamicPa, double areaM2, double speedMps, double normalSlope, double massKg,
        double frequency) =>
        normalSlope * dynamicPa * areaM2 / (massKg * speedMps) / (2 * frequency);

    /// <summary>Steady roll rate from cant, where forcing and damping cancel [rad/s].</summary>
    public static double SteadyRoll(double speedMps, double diameterM, double forcing, double damping, double cant) =>
        -2 * speedMps * forcing * cant / (diameterM * damping);

    /// <summary>Roll rate that locks in with pitching, ω / √(1 − Ix / I) [rad/s].</summary>
    public static double Resonance(double frequency, double rollKgM2, double pitchKgM2)
        => frequency / Math.Sqrt(1 - (rollKgM2 / pitchKgM2));
}
