using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Columns;
using NotebookKit.Quantities.Numbers;
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
        Vehicle vehicle, LaunchSite site, in FlightMarks marks, FlightRows rows, bool hasAttitude,
            IReadOnlyList<Finding> findings,
        Vehicle? offRail = null, bool isSpent = false)
    {
        var failure = marks.Failure ?? (marks.IsPastApogee ? null
            : "the vehicle reaches the ground without ever having risen; look at thrust, rail and margin.");
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
            Findings = [.. findings, .. isSpent ? [] : Say(site, figures),
                .. isSpent || figures.RailExitMargin <= 0 ? [] : SayOfMargin(vehicle, rows, marks),
                .. SayOfLanding(vehicle, site, marks, figures), .. hasAttitude ? SayOfAttitude(rows, marks) : []],
        };
    }

    public static AttitudeSeries Attitudes(Lazy<IReadOnlyList<FlightRow>> rows)
    {
        const double Degrees = 180 / Math.PI;
        return new(
            LazyColumn<FlightRow>.Of("Time from release", "s", rows, r => r.Time),
            LazyColumn<FlightRow>.Of("Angle of attack", "°", rows, r => r.AngleOfAttack * Degrees),
            LazyColumn<FlightRow>.Of("Nose above the horizon", "°", rows, r => Math.Asin(Math.Clamp(-r.Nose.Z, -1, 1)) * Degrees),
            LazyColumn<FlightRow>.Of("Nose towards", "°", rows, r => Math.Atan2(r.Nose.Y, r.Nose.X) * Degrees),
            LazyColumn<FlightRow>.Of("Roll rate", "rev/s", rows, r => r.Rates.X / (2 * Math.PI)),
            LazyColumn<FlightRow>.Of("Pitch rate", "°/s", rows, r => r.Rates.Y * Degrees),
            LazyColumn<FlightRow>.Of("Yaw rate", "°/s", rows, r => r.Rates.Z * Degrees),
            LazyColumn<FlightRow>.Of("Pitch frequency", "Hz", rows, r => r.PitchFrequency / (2 * Math.PI)));
    }

    private static FlightFigures Figures(Vehicle vehicle, Vehicle offRail, LaunchSite site, in FlightMarks marks,
        FlightRows rows, bool hasAttitude)
    {
        var opening = marks.OpeningTime;
        // Where the wind changes with height, the dynamic pressure peaks a little beside where it was looked for.
        var (load, hardestPa) = (0.0, marks.HardestPa);
        for (var i = 0; i < rows.Count; i++)
        {
            ref readonly var row = ref rows.At(i);
            if (!(row.Time > opening)) (load, hardestPa) = (Math.Max(load, row.LoadG), Math.Max(hardestPa, row.DynamicPressurePa));
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
            MaximumDynamicPressure = hardestPa.Pascals(),
            MaximumLoad = load,
            MaximumAngleOfAttack = hasAttitude ? Angle.FromDegrees(1e2 * Clean(Ascent(rows,
                marks).Select(r => r.AngleOfAttack).DefaultIfEmpty().Max() * 1.8 / Math.PI)) : null,
            MaximumRollRate = hasAttitude ? RotationalSpeed.FromRevolutionsPerSecond(Ascent(rows,
                marks).Select(r => Math.Abs(r.Rates.X)).DefaultIfEmpty().Max() / (2 * Math.PI)) : null,
            OpeningTime = isOpened ? opening.Seconds() : null,
            OpeningHeight = isOpened ? marks.OpeningM.Metres() : null,
            OpeningSpeed = isOpened ? Clean(marks.OpeningSpeed).MetresPerSecond() : null,
            Opening = isOpened && marks.OpeningSpeed >= 1 && marks.OpeningSpeed <= FastestOpening.MetersPerSecond
                ? vehicle.Canopy!.Open(massKg.Kilograms(), marks.OpeningSpeed.MetresPerSecond(),
                    Density(site, marks.OpeningM).KilogramsPerCubicMetre())
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
            yield return FlightFindings.VehicleLeavesRailTooSlowly(figures.RailExitSpeed, figures.RailWind, needed);
        if (figures.RailExitAngle.Degrees > RailExitVerbs.SteepestModelled.Degrees)
            yield return FlightFindings.RelativeWindBeyondModels(figures.RailExitAngle, RailExitVerbs.SteepestModelled);
        else if (figures.RailExitAngle.Degrees > SteepestDegrees)
            yield return FlightFindings.RelativeWindNearStall(figures.RailExitAngle, SteepestDegrees);
        if (figures.RailExitMargin is { } margin && margin < LowestMargin)
            yield return margin <= 0
                ? FlightFindings.UnstableOffRail(figures.RailExitAngle, margin)
                : FlightFindings.MarginOffRailTooSmall(figures.RailExitAngle, margin);
        if (figures.MaximumMach > 0.8)
            yield return FlightFindings.VehicleReachesMach(figures.MaximumMach);
        if (site.Ceiling is { } ceiling && figures.Apogee > ceiling)
            yield return FlightFindings.ApogeeIsAboveCeiling(figures.Apogee, ceiling);
        else if (site.Ceiling is { } near && figures.Apogee > near * 0.9)
            yield return FlightFindings.ApogeeIsWithinTenthOfCeiling(figures.Apogee, near);
    }

    // Three degrees of freedom fly the unstable as well as the stable: the margin has to be looked at. At rest the centre of pressure lies
    // furthest forward, and some forty rows tell the water's way out.
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
            yield return FlightFindings.UnstableOnWayUp(at.Seconds(), least);
    }

    private static IEnumerable<Finding> SayOfLanding(Vehicle vehicle, LaunchSite site, FlightMarks marks, FlightFigures figures)
    {
        if (site.Field is { } field && !field.Contains(figures.LandingEast, figures.LandingNorth))
            yield return FlightFindings.LandsOffField(figures.Drift, figures.LandingEast, figures.LandingNorth);
        foreach (var finding in SayOfCanopy(vehicle, marks, figures)) yield return finding;
        if (marks.WaterOutTime > marks.ApogeeTime)
            yield return FlightFindings.WaterIsOutOnlyAfterApogee((marks.WaterOutTime - marks.ApogeeTime).Seconds(), ChargedRest.Remedy);
        if (double.IsNaN(marks.OpeningTime) && marks.LeftGaugePa >= ChargedLanding.GonePa)
            yield return FlightFindings.LandsWhileGasStillLeaves(ChargedLanding.Aboard(0, marks.LeftGaugePa));
        if (marks.WaterLeftKg > 0 && !marks.IsCharged)
            yield return FlightFindings.WaterStaysAboard(marks.WaterLeftKg * 1000);
    }

    /// <summary>Rows off the rail and on the way up, while the air still matters.</summary>
    private static IEnumerable<FlightRow> Ascent(IReadOnlyList<FlightRow> rows, FlightMarks marks) =>
        rows.Where(r => r.Time >= marks.ExitTime && r.Time <= marks.ApogeeTime && r.DynamicPressurePa >= 0.1 * marks.HardestPa);

    private static IEnumerable<Finding> SayOfAttitude(IReadOnlyList<FlightRow> rows, FlightMarks marks)
    {
        var ascent = Ascent(rows, marks).ToList();
        var attack = ascent.Select(r => r.AngleOfAttack).DefaultIfEmpty().Max() * 180 / Math.PI;
        if (attack > 45)
            yield return FlightFindings.VehicleTurnsOverOnWayUp(attack);
        else if (attack > 20)
            yield return FlightFindings.AngleOfAttackBeyondModels(attack);

        var near = 0.0;
        for (var i = 1; i < ascent.Count; i++)
        {
            var ratio = Math.Abs(ascent[i].Rates.X) / Math.Max(1e-9, ascent[i].PitchFrequency);
            if (ratio is > PitchRollResult.BandFrom and < PitchRollResult.BandTo) near += ascent[i].Time - ascent[i - 1].Time;
        }

        if (near > 0.2)
            yield return FlightFindings.RollRateLiesNearPitchFrequency(PitchRollResult.BandFrom, PitchRollResult.BandTo, near);
    }

    // A canopy that opens on the way up cuts the climb short: the top it then has is not the one to set a timer to.
    private static string FarFromApogee(Vehicle vehicle, FlightMarks marks, FlightFigures figures)
        => (marks.OpeningDown, vehicle.Deployment.Trigger) switch
    {
        ( < 0, _) => "on the way up, and cuts the climb short. Set it later: the time of apogee is that of a flight with "
            + "Deployment.ByApogeeSensor().",
        (_, DeploymentTrigger.Timer) => $"{Digits.Round(marks.OpeningTime - marks.ApogeeTime, 2)} s after apogee. Set the timer to "
            + $"{figures.ApogeeTime.Show()}.",
        _ => $"{Digits.Round(marks.OpeningTime - marks.ApogeeTime, 2)} s after apogee. Shorten the delay.",
    };

    private static IEnumerable<Finding> SayOfCanopy(Vehicle vehicle, FlightMarks marks, FlightFigures figures)
    {
        if (figures.OpeningTime is not { } opening)
        {
            if (vehicle.Deployment.Trigger != DeploymentTrigger.None && vehicle.Canopy is not null)
                yield return FlightFindings.CanopyComesOutTooLate(figures.LandingTime, vehicle.Deployment.ToString());
            yield return FlightFindings.ComesDownWithoutCanopy(figures.LandingSpeed, figures.LandingEnergy);
            yield break;
        }

        if (double.IsNaN(marks.JetEndTime))
            yield return FlightFindings.CanopyComesOutWhileJetRuns(
                opening, marks.LeftGaugePa >= ChargedLanding.GonePa ? ChargedLanding.Aboard(marks.WaterLeftKg, marks.LeftGaugePa) : null);
        if (Math.Abs(marks.OpeningDown) > StandardConstants.Gravity * FarFromTopS)
            yield return FlightFindings.CanopyComesOutFarFromApogee(figures.OpeningSpeed!.Value, FarFromApogee(vehicle, marks, figures));
        if (marks.OpeningSpeed > FastestOpening.MetersPerSecond)
            yield return FlightFindings.CanopyComesOutTooFast(figures.OpeningSpeed!.Value, FastestOpening);
        foreach (var load in (figures.Opening?.Findings ?? []).Where(f => f.Severity != FindingSeverity.Note)) yield return load
            with { Message = $"canopy: {load.Message}" };
        if (figures.DescentSpeed.MetersPerSecond > 9)
            yield return FlightFindings.ComesDownTooFast(figures.DescentSpeed);
    }
}
