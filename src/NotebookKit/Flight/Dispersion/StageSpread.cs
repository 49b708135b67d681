using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;

namespace NotebookKit.Flight.Dispersion;

/// <summary>How far one vehicle varies, in SI numbers, with what the spread takes from the vehicle filled in. Shares as fractions, angles
/// in rad.</summary>
internal readonly record struct StageSpread
{
    public StageSpread(Vehicle vehicle, LaunchSite site, Spread spread)
    {
        Pressure = spread.Pressure.DecimalFractions;
        Water = spread.Water.DecimalFractions;
        Thrust = spread.Thrust.DecimalFractions;
        (Drag, DragLow, DragHigh) = DragOf(vehicle, site, spread);
        var balance = vehicle.MassProperties();
        Mass = spread.DryMass?.DecimalFractions ?? (balance.MassSpread / balance.Mass);
        CentreM = (spread.CentreOfGravity ?? balance.CentreSpread).Meters;
        Cant = spread.Cant.Radians;
        TimerS = spread.Timer.Seconds;
        (CanopyLow, CanopyHigh) = spread.CanopyBand && vehicle.Canopy is { } canopy
            ? (canopy.DragAreaLowM2 * 2 / (canopy.DragAreaLowM2 + canopy.DragAreaHighM2),
                canopy.DragAreaHighM2 * 2 / (canopy.DragAreaLowM2 + canopy.DragAreaHighM2))
            : (1, 1);
    }

    public double Pressure { get; }

    public double Water { get; }

    public double Thrust { get; }

    public double Drag { get; }

    public double DragLow { get; }

    public double DragHigh { get; }

    public double Mass { get; }

    public double CentreM { get; }

    public double Cant { get; }

    public double TimerS { get; }

    public double CanopyLow { get; }

    public double CanopyHigh { get; }

    /// <summary>Standard deviation of the factor on drag, or the ends it lies evenly between.</summary>
    private static (double Deviation, double Low, double High) DragOf(Vehicle vehicle, LaunchSite site, Spread spread)
    {
        // A measured curve, or a chosen end of the band, has a middle of its own.
        const double Measured = 0.05, Mach = 0.3;
        if (spread.Drag is { } own) return (own.DecimalFractions, 1, 1);
        if (vehicle.MeasuredDrag is not null) return (Measured, 1, 1);
        var band = vehicle.DragBand(site);
        var chosen = vehicle.Drag(site).JetOff.Coefficient(Mach);
        return (0, band.Low.Coefficient(Mach) / chosen, band.High.Coefficient(Mach) / chosen);
    }
}
