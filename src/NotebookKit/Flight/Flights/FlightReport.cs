using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Flights;

/// <summary>Turns the numbers of a flight into its result, with what has to be said about them.</summary>
internal static class FlightReport
{
    // Common practice of range safety, no source: off the rail four times the wind, some 15 degrees.
    private const double WindShare = 4, SteepestDegrees = 15, LowestMargin = 1;

    // A second of free fall from the top, common practice; and where the published fill times end.
    private const double FarFromTopS = 1;

    private static readonly Speed FastestOpening = 150.MetresPerSecond();

    /// <summary>The result of a flight.</summary>
    /// <param name="vehicle">What flew.</param>
    /// <param name="site">Where it flew.</param>
    /// <param name="marks">Its main numbers.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="hasAttitude">Whether they have an attitude.</param>
    /// <param name="findings">What was said before it flew.</param>
    /// <param name="offRail">What left the rail, where that was a stack of stages.</param>
    /// <param name="isSpent">Whether it is a booster coming down, of which only the landing matters.</param>
    public static FlightResult For(
        Vehicle vehicle, LaunchSite site, in FlightMarks marks, IReadOnlyList<FlightRow> rows, bool hasAttitude, IReadOnlyList<Finding> findings,
        Vehicle? offRail = null, bool isSpent = false)
    {
        var failure = marks.Failure ?? (marks.IsPastApogee ? null : "the vehicle reaches the ground without ever having risen; look at thrust, rail and margin.");
        if (failure is not null)
        {
            // A flight that broke off shows no half of its curves.
            return new FlightResult(vehicle, site, null, failure, [], hasAttitude)
            {
                Evaluations = marks.Evaluations,
                Findings = [.. findings, Finding.Error(failure)],
            };
        }

        var figures = Figures(vehicle, offRail ?? vehicle, site, marks, rows, hasAttitude);
        return new FlightResult(vehicle, site, figures, "", rows, hasAttitude)
        {
            Evaluations = marks.Evaluations,
            Findings = [.. findings, .. isSpent ? [] : Say(site, figures), .. isSpent || figures.RailExitMargin <= 0 ? [] : SayOfMargin(vehicle, rows, marks), .. SayOfLanding(vehicle, site, marks, figures), .. hasAttitude ? SayOfAttitude(rows, marks) : []],
        };
    }

    public static AttitudeSeries Attitudes(IReadOnlyList<FlightRow> rows)
    {
        const double Degrees = 180 / Math.PI;
        return new(
            FlightResult.Column("Time from release", "s", rows, r => r.Time),
            FlightResult.Column("Angle of attack", "°", rows, r => r.AngleOfAttack * Degrees),
            FlightResult.Column("Nose above the horizon", "°", rows, r => Math.Asin(Math.Clamp(-r.Nose.Z, -1, 1)) * Degrees),
            FlightResult.Column("Nose towards", "°", rows, r => Math.Atan2(r.Nose.Y, r.Nose.X) * Degrees),
            FlightResult.Column("Roll rate", "rev/s", rows, r => r.Rates.X / (2 * Math.PI)),
            FlightResult.Column("Pitch rate", "°/s", rows, r => r.Rates.Y * Degrees),
            FlightResult.Column("Yaw rate", "°/s", rows, r => r.Rates.Z * Degrees),
            FlightResult.Column("Pitch frequency", "Hz", rows, r => r.PitchFrequency / (2 * Math.PI)));
    }

    private static FlightFigures Figures(Vehicle vehicle, Vehicle offRail, LaunchSite site, in FlightMarks marks, IReadOnlyList<FlightRow> rows, bool hasAttitude)
    {
        var opening = marks.OpeningTime;
        var load = 0.0;
        foreach (var row in rows)
        {
            if (!(row.Time > opening)) load = Math.Max(load, row.LoadG);
        }

        var massKg = vehicle.Parts.State().MassKg + marks.WaterLeftKg + marks.GasLeftKg;
        var isOpened = !double.IsNaN(opening);
        return new FlightFigures
        {
            Apogee = marks.ApogeeM.Metres(),
            ApogeeTime = marks.ApogeeTime.Seconds(),
            RailExitSpeed = marks.ExitSpeed.MetresPerSecond(),
            RailExitTime = marks.ExitTime.Seconds(),
            RailExitAngle = Angle.FromRadians(marks.ExitAngle).ToUnit(AngleUnit.Degree),
            RailExitMargin = Margin(offRail, site, marks),
            RailWind = marks.ExitWind.MetresPerSecond(),
            WaterOut = double.IsNaN(marks.WaterOutTime) ? null : marks.WaterOutTime.Seconds(),
            EndOfJet = (!double.IsNaN(marks.JetEndTime) ? marks.JetEndTime : isOpened ? opening : marks.LandingTime).Seconds(),
            MaximumSpeed = marks.FastestSpeed.MetresPerSecond(),
            MaximumSpeedTime = marks.FastestTime.Seconds(),
            MaximumMach = marks.MaximumMach,
            MaximumDynamicPressure = marks.HardestPa.Pascals(),
            MaximumLoad = load,
            MaximumAngleOfAttack = hasAttitude ? Angle.FromDegrees(1e2 * Clean(Ascent(rows, marks).Select(r => r.AngleOfAttack).DefaultIfEmpty().Max() * 1.8 / Math.PI)) : null,
            MaximumRollRate = hasAttitude ? RotationalSpeed.FromRevolutionsPerSecond(Ascent(rows, marks).Select(r => Math.Abs(r.Rates.X)).DefaultIfEmpty().Max() / (2 * Math.PI)) : null,
            OpeningTime = isOpened ? opening.Seconds() : null,
            OpeningHeight = isOpened ? marks.OpeningM.Metres() : null,
            OpeningSpeed = isOpened ? Clean(marks.OpeningSpeed).MetresPerSecond() : null,
            Opening = isOpened && marks.OpeningSpeed >= 1 && marks.OpeningSpeed <= FastestOpening.MetersPerSecond
                ? vehicle.Canopy!.Open(massKg.Kilograms(), marks.OpeningSpeed.MetresPerSecond(), Density(site, marks.OpeningM).KilogramsPerCubicMetre())
                : null,
            LandingTime = marks.LandingTime.Seconds(),
            DescentSpeed = marks.LandingVelocity.Z.MetresPerSecond(),
            LandingSpeed = marks.LandingSpeed.MetresPerSecond(),
            LandingEnergy = (0.5 * massKg * marks.LandingSpeed * marks.LandingSpeed).Joules(),
            LandingEast = Clean(marks.LandingAt.Y).Metres(),
            LandingNorth = Clean(marks.LandingAt.X).Metres(),
        };
    }

    // Rounding leaves nanometres where there is nothing; nobody wants to read them.
    private static double Clean(double value) => Math.Abs(value) < 1e-6 ? 0 : value;

    private static double? Margin(Vehicle vehicle, LaunchSite site, in FlightMarks marks)
    {
        var degrees = marks.ExitAngle * 180 / Math.PI;
        if (!(degrees <= RailExitVerbs.SteepestModelled.Degrees)) return null;
        var centre = vehicle.Airframe.StateWith(marks.ExitWaterKg, marks.ExitGasKg).CentreM;
        var mach = Math.Min(0.9, marks.ExitSpeed / site.Temperature.SoundMps());
        return vehicle.Body.MarginAt(centre.Metres(), degrees.Degrees(), mach);
    }

    private static double SoundMps(this Temperature temperature) =>
        Math.Sqrt(StandardConstants.AirHeatCapacityRatio * AtmosphereLaw.GasConstant * temperature.Kelvins);

    /// <summary>Density of the air at a height above the pad [kg/m³].</summary>
    internal static double Density(LaunchSite site, double heightM)
    {
        var pressure = site.Atmosphere.Law.Pressure(site.Elevation.Meters + heightM, out var temperature);
        return pressure / (site.Atmosphere.Law.SpecificGasConstant * temperature);
    }

    private static IEnumerable<Finding> Say(LaunchSite site, FlightFigures figures)
    {
        var needed = WindShare * figures.RailWind.MetersPerSecond;
        if (figures.RailExitSpeed.MetersPerSecond < needed)
            yield return Finding.Warning($"the vehicle leaves the rail at {figures.RailExitSpeed.Show()}; in {figures.RailWind.Show()} of wind it should have {Digits.Round(needed)} m/s, four times the wind (common practice). Use a longer rail, more pressure, or wait for less wind.");
        if (figures.RailExitAngle.Degrees > RailExitVerbs.SteepestModelled.Degrees)
            yield return Finding.Error($"the relative wind off the rail comes from {figures.RailExitAngle.Show()} off the axis; no model holds beyond {RailExitVerbs.SteepestModelled.Show()} and the vehicle will turn over. Don't fly in this wind.");
        else if (figures.RailExitAngle.Degrees > SteepestDegrees)
            yield return Finding.Warning($"the relative wind off the rail comes from {figures.RailExitAngle.Show()} off the axis; above {SteepestDegrees}° fins stall. Don't fly in this wind.");
        if (figures.RailExitMargin is { } margin && margin < LowestMargin)
            yield return margin <= 0
                ? Finding.Error($"off the rail, at {figures.RailExitAngle.Show()}, the margin is {Digits.Round(margin)} calibres: it is unstable there, whatever it is at 0°, and no height or drift here holds. Don't fly it so: leave the rail faster or move the centre of gravity forward.")
                : Finding.Warning($"off the rail, at {figures.RailExitAngle.Show()}, the margin is only {Digits.Round(margin)} calibres; one calibre is the usual least.");
        if (figures.MaximumMach > 0.8)
            yield return Finding.Warning($"the vehicle reaches Mach {Digits.Round(figures.MaximumMach)}: above 0.8 drag rises steeply, and no flutter check passes there.");
        if (site.Ceiling is { } ceiling && figures.Apogee > ceiling)
            yield return Finding.Error($"apogee is at {figures.Apogee.Show()}, above the ceiling of {ceiling.Show()}. Don't fly it so: use less pressure or less water, or add mass.");
        else if (site.Ceiling is { } near && figures.Apogee > near * 0.9)
            yield return Finding.Warning($"apogee is at {figures.Apogee.Show()}, within a tenth of the ceiling of {near.Show()}; scatter will pass it now and then. Look at the dispersion.");
    }

    // Three degrees of freedom fly the unstable as well as the stable: the margin has to be looked at. At rest the centre of pressure lies furthest
    // forward, and some forty rows tell the water's way out.
    internal static IEnumerable<Finding> SayOfMargin(Vehicle vehicle, IReadOnlyList<FlightRow> rows, FlightMarks marks)
    {
        const int Looks = 40;
        var (dry, tank) = (vehicle.Parts.State(), new ChamberNumbers(vehicle.Airframe.Chamber));
        var (reference, pressure) = (vehicle.Body.ReferenceDiameter.Meters, vehicle.Body.NormalForce().CentreOfPressure.Meters);
        var (least, at) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < rows.Count; i += 1 + (rows.Count / Looks))
        {
            if (rows[i].Time < marks.ExitTime || rows[i].Time > marks.ApogeeTime) continue;
            var margin = (pressure - dry.With(tank.Contents(rows[i].WaterKg, rows[i].GasKg)).CentreM) / reference;
            if (margin < least) (least, at) = (margin, rows[i].Time);
        }

        if (least <= 0)
            yield return Finding.Error($"on the way up, at {at.Seconds().Show()}, the margin is {Digits.Round(least)} calibres: it is unstable there, and no height or drift here holds. Don't fly it so: move the centre of gravity forward or enlarge the fins.");
    }

    private static IEnumerable<Finding> SayOfLanding(Vehicle vehicle, LaunchSite site, FlightMarks marks, FlightFigures figures)
    {
        if (site.Field is { } field && !field.Contains(figures.LandingEast, figures.LandingNorth))
            yield return Finding.Error($"it lands {figures.Drift.Show()} from the pad ({figures.LandingEast.Show()} east, {figures.LandingNorth.Show()} north), off the field. Turn the rail into the wind, deploy lower, or wait.");
        foreach (var finding in SayOfCanopy(vehicle, marks, figures)) yield return finding;
        if (marks.WaterOutTime > marks.ApogeeTime)
            yield return Finding.Warning($"the water is out only {(marks.WaterOutTime - marks.ApogeeTime).Seconds().Show()} after apogee: the vehicle turns over while its jet drives it towards the ground. {ChargedRest.Remedy}");
        if (double.IsNaN(marks.OpeningTime) && marks.LeftGaugePa >= ChargedLanding.GonePa)
            yield return Finding.Warning($"it lands while gas still leaves, with {ChargedLanding.Aboard(0, marks.LeftGaugePa)} aboard. Stay away until the gas is out; a wider nozzle empties the vehicle sooner.");
        if (marks.WaterLeftKg > 0 && !marks.IsCharged)
            yield return Finding.Warning($"{Digits.Round(marks.WaterLeftKg * 1000)} g of water stay aboard when the pressure is spent. Use less water or more pressure.");
    }

    /// <summary>Rows off the rail and on the way up, while the air still matters.</summary>
    private static IEnumerable<FlightRow> Ascent(IReadOnlyList<FlightRow> rows, FlightMarks marks) =>
        rows.Where(r => r.Time >= marks.ExitTime && r.Time <= marks.ApogeeTime && r.DynamicPressurePa >= 0.1 * marks.HardestPa);

    private static IEnumerable<Finding> SayOfAttitude(IReadOnlyList<FlightRow> rows, FlightMarks marks)
    {
        var ascent = Ascent(rows, marks).ToList();
        var attack = ascent.Select(r => r.AngleOfAttack).DefaultIfEmpty().Max() * 180 / Math.PI;
        if (attack > 45)
            yield return Finding.Error($"the vehicle swings {Digits.Round(attack, 2)}° across its path on the way up: it turns over, unstable or far too slow off the rail. Don't fly it.");
        else if (attack > 20)
            yield return Finding.Warning($"the angle of attack reaches {Digits.Round(attack)}°; above 20° no model here holds, and fins stall from 15°.");

        var near = 0.0;
        for (var i = 1; i < ascent.Count; i++)
        {
            var ratio = Math.Abs(ascent[i].Rates.X) / Math.Max(1e-9, ascent[i].PitchFrequency);
            if (ratio is > PitchRollResult.BandFrom and < PitchRollResult.BandTo) near += ascent[i].Time - ascent[i - 1].Time;
        }

        if (near > 0.2)
            yield return Finding.Warning($"the roll rate lies between {PitchRollResult.BandFrom} and {PitchRollResult.BandTo} of the pitch frequency for {Digits.Round(near, 2)} s on the way up: roll and pitch can lock in. Cant the fins less, or more.");
    }

    // A canopy that opens on the way up cuts the climb short: the top it then has is not the one to set a timer to.
    private static string FarFromApogee(Vehicle vehicle, FlightMarks marks, FlightFigures figures) => (marks.OpeningDown, vehicle.Deployment.Trigger) switch
    {
        ( < 0, _) => "on the way up, and cuts the climb short. Set it later: the time of apogee is that of a flight with Deployment.ByApogeeSensor().",
        (_, DeploymentTrigger.Timer) => $"{Digits.Round(marks.OpeningTime - marks.ApogeeTime, 2)} s after apogee. Set the timer to {figures.ApogeeTime.Show()}.",
        _ => $"{Digits.Round(marks.OpeningTime - marks.ApogeeTime, 2)} s after apogee. Shorten the delay.",
    };

    private static IEnumerable<Finding> SayOfCanopy(Vehicle vehicle, FlightMarks marks, FlightFigures figures)
    {
        if (figures.OpeningTime is not { } opening)
        {
            if (vehicle.Deployment.Trigger != DeploymentTrigger.None && vehicle.Canopy is not null)
                yield return Finding.Error($"it reaches the ground at {figures.LandingTime.Show()}, before the canopy comes out ({vehicle.Deployment}). Shorten the delay.");
            yield return Finding.Warning($"it comes down without a canopy, at {figures.LandingSpeed.Show()} and {figures.LandingEnergy.Show()}: that kills. Nobody may stand under the flight path.");
            yield break;
        }

        if (double.IsNaN(marks.JetEndTime))
            yield return Finding.Error($"the canopy comes out at {opening.Show()}, while the jet still runs{(marks.LeftGaugePa >= ChargedLanding.GonePa ? $" and with {ChargedLanding.Aboard(marks.WaterLeftKg, marks.LeftGaugePa)} aboard" : "")}. Set the timer later.");
        if (Math.Abs(marks.OpeningDown) > StandardConstants.Gravity * FarFromTopS)
            yield return Finding.Warning($"the canopy comes out at {figures.OpeningSpeed!.Value.Show()} through the air, {FarFromApogee(vehicle, marks, figures)}");
        if (marks.OpeningSpeed > FastestOpening.MetersPerSecond)
            yield return Finding.Error($"the canopy comes out at {figures.OpeningSpeed!.Value.Show()}; opening loads are published to {FastestOpening.Show()} and none is given here. Don't fly it so: open near apogee.");
        foreach (var load in (figures.Opening?.Findings ?? []).Where(f => f.Severity != FindingSeverity.Note)) yield return load with { Message = $"canopy: {load.Message}" };
        if (figures.DescentSpeed.MetersPerSecond > 9)
            yield return Finding.Warning($"it comes down at {figures.DescentSpeed.Show()}; above some 9 m/s fins and fillets break and people get hurt. Use a larger canopy.");
    }
}
