using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Flight.Staging;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>Flies in more and more wind until something fails; the limit is the most wind that was still right, so it errs low.</summary>
internal static class WindLimitSearch
{
    private const int Steps = 16, Halvings = 10;

    private static readonly int[] AllRound = [0, 45, 90, 135, 180, 225, 270, 315];
    private static readonly int[] AboutToday = [0, -30, 30];

    /// <summary>The limits of one stage.</summary>
    public static WindLimits Of(Vehicle vehicle, LaunchSite site, FlightResult flight, RecoveryCheck? gear)
    {
        var figures = flight.Figures;
        var exit = 0;
        while (flight.Time[exit] < figures.RailExitTime.Seconds && exit < flight.Time.Count - 1) exit++;
        var rail = RailLimit(vehicle.Airframe, figures.RailExitSpeed, figures.RailWind, flight.Water[exit].Kilograms(),
            flight.Gas[exit].Kilograms());
        var light = LaunchStandOff.WithLightDrag(vehicle);
        var numbers = light.Numbers(site);
        return Search(vehicle.Name, site, rail, gear is not null, (wind, factor, turn) =>
        {
            var marks = FlightRun.Fly(numbers with { Air = Air(site, wind, numbers, factor, turn) }, null, FlightAccuracy.Fast);
            return new(marks.ExitWind, Inside(site, marks), gear is null || Within(vehicle, site, gear, marks));
        });
    }

    /// <summary>The limits of two stages: both landings, both canopies.</summary>
    public static WindLimits Of(TwoStageVehicle vehicle, LaunchSite site, TwoStageResult flight, RecoveryCheck? booster,
        RecoveryCheck? sustainer)
    {
        var figures = flight.Sustainer.Figures;
        var stack = vehicle.Stack(site);
        var left = FlightRun.FlyStack(stack.Numbers(site), null, vehicle.Numbers(site), FlightAccuracy.Fast, null, out _);
        var rail = RailLimit(stack.Airframe, figures.RailExitSpeed, figures.RailWind, left.ExitWaterKg.Kilograms(),
            left.ExitGasKg.Kilograms());
        var light = LaunchStandOff.WithLightDrag(vehicle);
        var (both, upper, lower, separation) = (light.Stack(site).Numbers(site), light.Sustainer.Numbers(site),
            light.Booster.Numbers(site), light.Numbers(site));
        return Search(vehicle.Name, site, rail, booster is not null && sustainer is not null, (wind, factor, turn) =>
        {
            var air = Air(site, wind, both, factor, turn);
            var marks = FlightRun.FlyStack(both with { Air = air }, null, separation, FlightAccuracy.Fast, null, out var start);
            if (StageSeparation.Fault(marks, start) != SeparationFault.None) return new(marks.ExitWind, false, false);
            var parted = StageSeparation.Marks(marks);
            var top = FlightRun.Continue(upper with { Air = air }, null, FlightAccuracy.Fast, start, isDriven: true, parted);
            var spent = FlightRun.Continue(lower with { Air = air }, null, FlightAccuracy.Fast, start, isDriven: false,
                parted with { JetEndTime = marks.JetEndTime });
            return new(marks.ExitWind, Inside(site, top) && Inside(site, spent),
                (sustainer is null || Within(vehicle.Sustainer, site, sustainer, top))
                    && (booster is null || Within(vehicle.Booster, site, booster, spent)));
        });
    }

    private static (Speed Limit, string By) RailLimit(Airframe airframe, Speed exit, Speed wind, Mass water, Mass gas)
    {
        var rail = airframe.LeaveRail(exit, wind, water, gas);
        var quarter = exit / RailExitResult.RequiredRatio;
        return rail.WindLimit < quarter ? (rail.WindLimit, "margin at the wind's angle off the rail") : (quarter, "speed off the rail");
    }

    private static WindLimits Search(string name, LaunchSite site, (Speed Limit, string By) rail, bool hasGear, Func<WindProfile, double,
        double, WindTrial> fly)
    {
        var wind = site.Wind.At(10.Metres()) > Speed.Zero ? site.Wind : WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres());
        var turns = Turns(site);
        var unit = fly(wind, 1, 0).RailWindMps;
        double drift = double.PositiveInfinity, opening = double.PositiveInfinity;
        foreach (var turn in turns)
        {
            WindTrial At(double mps) => fly(wind, mps / unit, turn * Math.PI / 180);
            if (site.Field is not null) drift = Math.Min(drift,
                Lowest(At, t => t.LandsInside, Math.Min(drift, rail.Limit.MetersPerSecond)));
            if (hasGear) opening = Math.Min(opening, Lowest(At, t => t.OpensWithin, Math.Min(opening, rail.Limit.MetersPerSecond)));
        }

        return new(name, rail.Limit, rail.By, Found(drift), site.Field is not null, Found(opening), hasGear,
            turns.Length == 1 ? ["one side, as the field is a circle about the pad and the rail is vertical"]
            : turns.Length == AllRound.Length ? ["eight sides"]
            : ["the planned side and 30° to both sides of it, as the rail leans"]);

        static Speed? Found(double mps) => double.IsFinite(mps) ? mps.MetresPerSecond() : null;
    }

    // Most wind below the first failure; infinite where nothing fails up to the highest that matters.
    private static double Lowest(Func<double, WindTrial> fly, Predicate<WindTrial> holds, double highest)
    {
        double right = 0, wrong = double.PositiveInfinity;
        for (var i = 0; i <= Steps; i++)
        {
            var wind = highest * i / Steps;
            if (holds(fly(wind)))
            {
                right = wind;
                continue;
            }

            wrong = wind;
            break;
        }

        if (double.IsInfinity(wrong)) return wrong;
        // By halving: a flight holds or it doesn't, and there is no number whose zero could be sought.
        for (var i = 0; i < Halvings && wrong > 0; i++)
        {
            var middle = (right + wrong) / 2;
            if (holds(fly(middle))) right = middle;
            else wrong = middle;
        }

        return wrong > 0 ? right : 0;
    }

    /// <summary>Whether the rail leans, so that the limits hold for wind from about the planned side alone.</summary>
    public static bool IsAboutToday(LaunchSite site) => site.Rail.Elevation.Degrees < 89.5;

    private static int[] Turns(LaunchSite site) =>
        IsAboutToday(site) ? AboutToday : site.Field?.Radius is not null ? [0] : AllRound;

    private static SiteAir Air(LaunchSite site, WindProfile wind, FlightNumbers numbers, double factor, double turn) =>
        new(site.Atmosphere.Law, site.Elevation.Meters, wind, -numbers.RailM * numbers.RailDirection.Z, null, factor, turn);

    private static bool Inside(LaunchSite site, in FlightMarks marks) =>
        !marks.Failed && marks.HasLanded && (site.Field is null || site.Field.Contains(marks.LandingAt.Y, marks.LandingAt.X));

    private static bool Within(Vehicle vehicle, LaunchSite site, RecoveryCheck gear, in FlightMarks marks)
    {
        if (marks.Failed || vehicle.Canopy is not { } canopy || double.IsNaN(marks.OpeningTime)) return false;
        if (marks.OpeningSpeed > 150) return false;
        var mass = vehicle.Parts.State().MassKg + marks.WaterLeftKg + marks.GasLeftKg;
        var density = FlightReport.Density(site, marks.OpeningM);
        return canopy.Open(mass.Kilograms(), Math.Max(1, marks.OpeningSpeed).MetresPerSecond(),
            density.KilogramsPerCubicMetre()).DesignLoad <= gear.AllowedLoad;
    }
}

/// <summary>One flight in some wind, as the search for the limit sees it.</summary>
/// <param name="RailWindMps">Wind at the end of the rail [m/s].</param>
/// <param name="LandsInside">Whether it was flown to the ground and everything came down on the field.</param>
/// <param name="OpensWithin">Whether every canopy opened within what its gear takes.</param>
internal readonly record struct WindTrial(double RailWindMps, bool LandsInside, bool OpensWithin);
