using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Fills;

/// <summary>Runs a fill: by a sum over pressure where that is exact, else in steps of time.</summary>
internal static class FillSimulation
{
    private const double HorizonSeconds = 3600;

    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-8 };

    /// <summary>Errors allowed per step whatever the size of each unknown.</summary>
    public static readonly double[] Tolerances = [1e-10, 1e-6, 1e-6, 1e-10, 1e-6, 1e-6];

    public static FillTrace Run(PadFill fill) => fill.IsPlain ? Sum(fill) : Integrate(fill);

    /// <summary>Steps of time, whatever the fill asks for.</summary>
    public static FillTrace Integrate(PadFill fill)
    {
        var supplyPa = fill.Supply.ToAbsolute(fill.Ambient).Pascals;
        var cylinderM3 = fill.Cylinder?.Volume.CubicMeters ?? 0;
        var system = SystemOf(fill);
        Span<double> y = StateOf(fill);
        Span<double> tolerance = Tolerances;
        var rows = new TrajectoryBuilder(FillSystem.Unknowns);
        rows.Add(0, y);
        var firstMass = y[FillSystem.Mass];
        // The very last pascals before the supply's own pressure take for ever in steps of time; nobody sees them on a gauge.
        double goalPa = Math.Min(fill.Target.ToAbsolute(fill.Ambient).Pascals, supplyPa - 2 * FillEvents.StallPa),
            ratedPa = fill.Chamber.RatedPressure.ToAbsolute(fill.Ambient).Pascals;
        var observer = new TrajectoryRecorder(rows, 3);
        var nothing = new NoEvents();
        double t = 0;
        var evaluations = 0;
        string? trouble = null;
        while (trouble is null)
        {
            if (fill.Valve is { } held && system.Gas(y).Pascals >= ratedPa)
            {
                // Nobody opens the valve again at the rating: it stays shut as long as the gauge still falls.
                var before = system.Gas(y).Pascals;
                system.Open = false;
                var waited = OdeDriver.Integrate(ref system, ref nothing, ref observer, t, t + held.Shut.Seconds, y, Settings, tolerance);
                evaluations += waited.Evaluations;
                t = waited.Time;
                if (!waited.Succeeded) trouble = waited.Message;
                else if (t >= HorizonSeconds || system.Gas(y).Pascals > before - FillEvents.StallPa) trouble = StaysAtRating(fill);
                continue;
            }

            system.Open = true;
            var events = new FillEvents(system, goalPa, fill.Goal == FillGoal.AfterCooling, ratedPa);
            var until = fill.Valve is { } pulses ? t + pulses.Open.Seconds : HorizonSeconds;
            var result = OdeDriver.Integrate(ref system, ref events, ref observer, t, until, y, Settings, tolerance);
            evaluations += result.Evaluations;
            t = result.Time;
            if (!result.Succeeded) trouble = result.Message;
            else if (result.TerminalEvent == FillEvents.Goal) break;
            else if (result.TerminalEvent == FillEvents.Rating && fill.Valve is null) trouble = PassedRating(fill);
            else if (fill.Valve is null || result.TerminalEvent == FillEvents.Stalled || t >= HorizonSeconds) trouble = NotReached(fill, t,
                system.Gas(y).Pascals);
            else
            {
                // A hand shuts the valve when its time is up, and at the rating in any case.
                system.Open = false;
                result = OdeDriver.Integrate(ref system, ref nothing, ref observer, t, t + fill.Valve.Shut.Seconds, y, Settings, tolerance);
                evaluations += result.Evaluations;
                t = result.Time;
                if (!result.Succeeded) trouble = result.Message;
            }
        }

        var shutAt = rows.Count - 1;
        var settledPa = system.SettledPa(y);
        var lastMass = y[FillSystem.Mass];
        // Gas from a cylinder that empties fast comes cold, and warms up behind the shut valve.
        if (trouble is null && settledPa > ratedPa * (1 + 1e-6))
            trouble = $"Shut at {AbsolutePressure.FromPascals(system.Gas(y).Pascals).ToGauge(fill.Ambient)}, the gas is cold from the "
                + $"emptying cylinder; it warms up to {AbsolutePressure.FromPascals(settledPa).ToGauge(fill.Ambient)}, above the "
                + $"vessel's rated pressure of {fill.Chamber.RatedPressure}. Fill more slowly or from a larger cylinder, or set the goal "
                + "after cooling.";
        if (trouble is null && Highest(rows, system) is var highest && highest > ratedPa * (1 + 1e-6))
            trouble = $"On its way the gauge reads {AbsolutePressure.FromPascals(highest).ToGauge(fill.Ambient)}, above the vessel's "
                + $"rated pressure of {fill.Chamber.RatedPressure}. Fill more slowly or lower the target.";
        if (trouble is null && fill.Heat == FillHeat.Wall && fill.Watch.Seconds > 0)
        {
            system.Open = false;
            evaluations += OdeDriver.Integrate(ref system, ref nothing, ref observer, t, t + fill.Watch.Seconds, y, Settings,
                tolerance).Evaluations;
        }

        return Trace(rows, system, cylinderM3 > 0) with
        {
            MixingNumbers = fill.Valve is null && fill.Heat == FillHeat.Wall && fill.WallOrPlain.Inlet is not null
                ? [.. Enumerable.Range(0, shutAt + 1).Select(i => system.MixingNumber(rows.Time(i), rows.State(i)))] : [],
            ShutAt = shutAt, FirstMass = firstMass, LastMass = lastMass, SettledPascals = settledPa, Evaluations = evaluations,
                Trouble = trouble,
        };
    }

    /// <summary>The equations of a fill.</summary>
    public static FillSystem SystemOf(PadFill fill)
    {
        var law = new GasLaw(fill.Gas, fill.Properties);
        double ambientK = fill.Temperature.Kelvins, startPa = fill.Start.ToAbsolute(fill.Ambient).Pascals,
            supplyPa = fill.Supply.ToAbsolute(fill.Ambient).Pascals;
        var gasM3 = fill.GasVolume.CubicMeters;
        var highestPa = fill.Cylinder is { } c ? Math.Min(supplyPa, c.Pressure.ToAbsolute(fill.Ambient).Pascals) : supplyPa;
        var cylinderM3 = fill.Cylinder?.Volume.CubicMeters ?? 0;
        return new FillSystem(law, fill.Restrictor, new FlowScale(law, highestPa, ambientK), gasM3, supplyPa, ambientK, ambientK)
        {
            Heat = fill.Heat == FillHeat.Wall ? new HeatPath(fill.WallOrPlain, law) : null,
            WaterM3 = (fill.Chamber.Volume - fill.GasVolume).CubicMeters,
            Bubbles = fill.PortInEffect == PortPosition.UnderWater,
            Isothermal = fill.Heat == FillHeat.Isothermal,
            RisePaPerS = fill.SupplyRise?.PascalsPerSecond ?? 0,
            Measured = fill.MeasuredSupply,
            AmbientPa = fill.Ambient.Pascals,
            RiseFromPa = Math.Min(startPa, supplyPa),
            CylinderM3 = cylinderM3,
            // A bare bottle of metal keeps its gas near ambient: 20 W/(m²·K) on the surface of a plump cylinder of that volume (typical).
            CylinderWattsPerKelvin = 20 * 6.5 * Math.Pow(cylinderM3, 2.0 / 3),
        };
    }

    /// <summary>What a fill begins with.</summary>
    public static double[] StateOf(PadFill fill)
    {
        var law = new GasLaw(fill.Gas, fill.Properties);
        var ambientK = fill.Temperature.Kelvins;
        var first = law.AtPressure(fill.Start.ToAbsolute(fill.Ambient).Pascals, ambientK);
        var cylinder = fill.Cylinder is { } bottle ? law.AtPressure(bottle.Pressure.ToAbsolute(fill.Ambient).Pascals, ambientK) : default;
        return [first.Density * fill.GasVolume.CubicMeters, ambientK, ambientK,
            cylinder.Density * (fill.Cylinder?.Volume.CubicMeters ?? 0), fill.Cylinder is null ? 0 : ambientK, 0];
    }

    // Time is a plain sum over pressure, temperature a closed form.
    private static FillTrace Sum(PadFill fill)
    {
        double startPa = fill.Start.ToAbsolute(fill.Ambient).Pascals, endPa = fill.ShutPressure.ToAbsolute(fill.Ambient).Pascals;
        double supplyPa = fill.Supply.ToAbsolute(fill.Ambient).Pascals, kelvin = fill.Temperature.Kelvins,
            gasM3 = fill.GasVolume.CubicMeters;
        var constant = fill.Gas.GasConstant.JoulesPerKilogramKelvin;
        var adiabatic = fill.Heat == FillHeat.Adiabatic;
        var rise = (adiabatic ? fill.Gas.HeatCapacityRatio : 1) * constant * kelvin / gasM3;
        var (pressures, seconds) = PressureClock.Run(
            p => 1 / (rise * fill.Restrictor.KilogramsPerSecond(supplyPa, kelvin, p, fill.Gas)), startPa, endPa, supplyPa,
                fill.Restrictor.CriticalRatioFor(fill.Gas) * supplyPa, 40);
        var kelvins = Array.ConvertAll(pressures, p => adiabatic
            ? Charging.KelvinsAfter(startPa, p, kelvin, kelvin, fill.Gas.HeatCapacityRatio) : kelvin);
        return new(seconds, pressures, kelvins, [], [])
        {
            FirstMass = startPa * gasM3 / (constant * kelvin),
            LastMass = endPa * gasM3 / (constant * kelvins[^1]),
            SettledPascals = endPa * kelvin / kelvins[^1],
        };
    }

    private static FillTrace Trace(TrajectoryBuilder rows, FillSystem system, bool hasCylinder)
    {
        double[] seconds = new double[rows.Count], pascals = new double[rows.Count], kelvins = new double[rows.Count],
            wall = new double[rows.Count], water = system.Heat is { FollowsWater: true } ? new double[rows.Count] : [];
        var cylinder = hasCylinder ? new double[rows.Count] : [];
        for (var i = 0; i < rows.Count; i++)
        {
            var y = rows.State(i);
            seconds[i] = rows.Time(i);
            pascals[i] = system.Gas(y).Pascals;
            kelvins[i] = y[FillSystem.Kelvins];
            wall[i] = y[FillSystem.Wall];
            if (water.Length > 0) water[i] = system.WaterKelvins(y);
            if (hasCylinder) cylinder[i] = system.CylinderGas(y).Pascals;
        }

        return new(seconds, pascals, kelvins, system.Heat is null ? [] : wall, cylinder) { WaterKelvins = water };
    }

    private static string PassedRating(PadFill fill) =>
        $"To settle at {fill.Target} in one go the gas would have to pass the vessel's rated pressure of {fill.Chamber.RatedPressure} "
            + "while it is hot. Fill slowly or in pulses, or fill to the rating, let it cool and top up.";

    private static string StaysAtRating(PadFill fill) =>
        $"To settle at {fill.Target} the gas would have to pass the vessel's rated pressure of {fill.Chamber.RatedPressure}, and shut it "
            + $"doesn't cool below it{(fill.Heat == FillHeat.Wall ? "" : ", as no heat to the wall is computed")}. Fill to the rating, "
            + "let it cool for longer and top up.";

    private static double Highest(TrajectoryBuilder rows, FillSystem system)
    {
        double highest = 0;
        for (var i = 0; i < rows.Count; i++) highest = Math.Max(highest, system.Gas(rows.State(i)).Pascals);
        return highest;
    }

    private static string NotReached(PadFill fill, double seconds, double pascals) =>
        $"After {Digits.Round(seconds)} s the gauge reads {AbsolutePressure.FromPascals(pascals).ToGauge(fill.Ambient)}; "
            + $"{fill.Target}{(fill.Goal == FillGoal.AfterCooling ? " after cooling" : "")} isn't reached and won't be. "
            + $"{NotReachedRemedy(fill, seconds, pascals)}";

    private static string NotReachedRemedy(PadFill fill, double seconds, double pascals)
    {
        if (seconds >= HorizonSeconds) return "Open the restrictor.";
        if (pascals < fill.Supply.ToAbsolute(fill.Ambient).Pascals - 1000) return "The cylinder is too empty: use a fuller cylinder.";
        // The vessel is at the regulator's pressure, and hot.
        return "Fill more slowly or in pulses, so that the wall takes the "
            + $"heat{(fill.Supply < fill.Chamber.RatedPressure ?
                $", or set the regulator higher, at most to the rated {fill.Chamber.RatedPressure}" : "")}.";
    }
}
