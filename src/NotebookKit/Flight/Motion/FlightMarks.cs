using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

/// <summary>The main numbers of a flight, filled as it goes. SI; NaN for what hasn't come to pass.</summary>
internal struct FlightMarks
{
    public FlightMarks()
    {
    }

    public string? Failure;
    public int Steps, Rejected, Evaluations;

    public double ExitTime = double.NaN, ExitSpeed = double.NaN, ExitAngle = double.NaN, ExitWind, ExitWaterKg, ExitGasKg;
    public double WaterOutTime = double.NaN, JetEndTime = double.NaN, WaterLeftKg, GasLeftKg;

    /// <summary>Gauge pressure aboard where the jet still ran as the canopy came out or the ground was reached [Pa]; NaN where it had
    /// ended.</summary>
    public double LeftGaugePa = double.NaN;
    public double FastestTime, FastestSpeed, MaximumMach, HardestTime, HardestPa;
    public double ApogeeTime = double.NaN, ApogeeM = double.NaN, ApogeeSpeed = double.NaN;
    public double OpeningTime = double.NaN, OpeningM = double.NaN, OpeningSpeed = double.NaN, OpeningDown = double.NaN;
    public double LandingTime = double.NaN, LandingSpeed = double.NaN;
    public Vector LandingAt = new(double.NaN, double.NaN, double.NaN), LandingVelocity;

    public readonly bool Failed => Failure is not null;

    public readonly bool HasLanded => !double.IsNaN(LandingTime);

    /// <summary>Whether water and pressure were still aboard then.</summary>
    public readonly bool IsCharged => ChargedLanding.IsCharged(WaterLeftKg, LeftGaugePa);

    public readonly bool IsPastApogee => !double.IsNaN(ApogeeTime);

    /// <summary>Keeps speed, Mach number and dynamic pressure where they are the greatest so far.</summary>
    public void Offer(double t, double speed, in AirSample air, double throughAir)
    {
        var pressure = 0.5 * air.DensityKgM3 * throughAir * throughAir;
        if (speed > FastestSpeed) (FastestSpeed, FastestTime) = (speed, t);
        if (throughAir / air.SoundMps > MaximumMach) MaximumMach = throughAir / air.SoundMps;
        if (pressure > HardestPa) (HardestPa, HardestTime) = (pressure, t);
    }
}
