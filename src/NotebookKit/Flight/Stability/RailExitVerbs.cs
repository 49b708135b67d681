using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Flight.Design;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>Whether an airframe leaves its rail fast enough for the wind.</summary>
public static class RailExitVerbs
{
    /// <summary>Angle off the axis beyond which no model of lift and margin holds.</summary>
    internal static Angle SteepestModelled { get; } = 20.Degrees();

    /// <summary>
    /// Whether it leaves the rail fast enough for the wind, judged with the margin at the angle the wind makes.
    /// Source: v = √(2 a L); NACA TR 1048, 1951, for the margin at an angle (unverified).
    /// </summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="rail">Length along which it is guided, up to the last guide's leaving; 0.1 to 20 m.</param>
    /// <param name="acceleration">Mean net acceleration along it, weight and friction taken off; 1 to 5000 m/s².</param>
    /// <param name="wind">Crosswind at rail height; 0 to 60 m/s.</param>
    /// <param name="water">Water aboard as it leaves; 0 to what the vessel holds.</param>
    /// <param name="gas">Gas aboard as it leaves; 0 to 10 kg.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static RailExitResult LeaveRail(this Airframe airframe, Length rail, Acceleration acceleration, Speed wind, Mass water, Mass gas)
    {
        new ValidRange<Length>(0.1.Metres(), 20.Metres()).Check(rail, "rail length", "Count up to where the last guide leaves.");
        new ValidRange<Acceleration>(Acceleration.FromMetersPerSecondSquared(1), Acceleration.FromMetersPerSecondSquared(5000))
            .Check(acceleration, "net acceleration along the rail", "Thrust less weight and friction, over the mass.");
        var exit = RailSpeed(rail.Meters, acceleration.MetersPerSecondSquared);
        return LeaveRail(airframe, Speed.FromMetersPerSecond(exit), wind, water, gas,
            new WorkingStep("Speed off the rail", @"v = \sqrt{2\,a\,L}",
            $"√(2 × {acceleration.Show(AccelerationUnit.MeterPerSecondSquared, 4)} × {rail.Show(4)})", $"{Digits.Round(exit, 4)} m/s",
                MassLiterature.RangeSafety));
    }

    /// <summary>The same for a speed off the rail that is known, from a flight computation or a video.</summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="exit">Speed off the rail; 1 to 300 m/s.</param>
    /// <param name="wind">Crosswind at rail height; 0 to 60 m/s.</param>
    /// <param name="water">Water aboard as it leaves; 0 to what the vessel holds.</param>
    /// <param name="gas">Gas aboard as it leaves; 0 to 10 kg.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static RailExitResult LeaveRail(this Airframe airframe, Speed exit, Speed wind, Mass water, Mass gas)
        => LeaveRail(airframe, exit, wind, water, gas, null);

    internal static double RailSpeed(double railM, double accelerationMps2) => Math.Sqrt(2 * accelerationMps2 * railM);

    private static RailExitResult LeaveRail(Airframe airframe, Speed exit, Speed wind, Mass water, Mass gas, WorkingStep? first)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        new ValidRange<Speed>(1.MetresPerSecond(), 300.MetresPerSecond()).Check(exit, "speed off the rail",
            "Take it from the flight computation.");
        new ValidRange<Speed>(Speed.Zero, 60.MetresPerSecond()).Check(wind, "crosswind", "No one flies in more.");
        InvalidDesignException.ThrowIfAny($"Airframe {airframe.Body.Name}", airframe.Validate());
        var gravity = Length.FromMeters(airframe.Loaded(water, gas).CentreM);
        var angle = Angle.FromDegrees(Math.Atan2(wind.MetersPerSecond, exit.MetersPerSecond) * 180 / Math.PI);
        var atZero = airframe.Body.MarginAt(gravity, Angle.Zero);
        double? atAngle = angle <= SteepestModelled ? airframe.Body.MarginAt(gravity, angle) : null;
        var limit = Speed.FromMetersPerSecond(WindLimit(airframe, gravity, exit.MetersPerSecond));
        var steps = new List<WorkingStep>();
        if (first is not null) steps.Add(first);
        steps.Add(new WorkingStep("Angle of attack", @"\alpha = \arctan\frac{w}{v}",
            $"atan({wind.Show(4)} / {exit.Show(SpeedUnit.MeterPerSecond, 4)})", angle.Show(4), MassLiterature.RangeSafety));
        if (atAngle is not null) steps.AddRange(airframe.Body.AtAngles(gravity, angle < 1.Degrees() ? 1.Degrees() : angle).Working.Steps);
        return new RailExitResult
        {
            Title = $"Leaving the rail, {airframe.Body.Name}",
            Exit = exit,
            Wind = wind,
            AngleOfAttack = angle,
            MarginAtZero = atZero,
            MarginAtAngle = atAngle,
            WindLimit = limit,
            Findings = RailFindings(exit, wind, angle, atAngle, limit),
            Working = new Working("Rail exit", steps),
        };
    }

    /// <summary>Largest wind with at most 15° and at least one calibre there [m/s].</summary>
    private static double WindLimit(Airframe airframe, Length gravity, double exitMps)
    {
        const double Steepest = 15;
        double Spare(double degrees) => airframe.Body.MarginAt(gravity, degrees.Degrees()) - 1;
        if (Spare(0) < 0) return 0;
        var angle = Spare(Steepest) >= 0 ? Steepest : BracketedRoot.TrySolve(Spare, 0, Steepest, 0, out var found) ? found.Root : 0;
        return exitMps * Math.Tan(angle * Math.PI / 180);
    }

    private static List<Finding> RailFindings(Speed exit, Speed wind, Angle angle, double? margin, Speed limit)
    {
        var findings = new List<Finding>();
        var remedy = $"Fly in at most {limit.Show()} of wind, or leave the rail faster: a longer rail or more thrust.";
        if (margin is null)
            findings.Add(FlightFindings.WindAngleBeyondModels(angle, SteepestModelled, remedy));
        else if (margin < 0)
            findings.Add(FlightFindings.UnstableAsItLeavesRail(angle, margin.Value, remedy));
        else if (margin < 1)
            findings.Add(FlightFindings.MarginBelowOneAsItLeavesRail(angle, margin.Value, remedy));
        if (exit.MetersPerSecond < RailExitResult.RequiredRatio * wind.MetersPerSecond)
            findings.Add(FlightFindings.LeavesRailTooSlowForWind(exit / wind, remedy));
        return findings;
    }
}
