using NotebookKit.Flight.Vertical;
using NotebookKit.Numerics;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Search;

/// <summary>The water fraction, and where wanted the nozzle bore, that take a vehicle highest or make it fastest, at its own mass and
/// pressure.</summary>
/// <remarks>
/// A scan finds the hill, a bracketed search its top. Source: the flight's own model; R. P. Brent, Algorithms for Minimization without
/// Derivatives, 1973.
/// </remarks>
/// <param name="Flight">The vehicle; its own water fraction and, where searched for, throat don't matter.</param>
/// <param name="Goal">What for.</param>
public sealed record BestFill(VerticalFlight Flight, FlightGoal Goal = FlightGoal.Apogee)
{
    private const int Scan = 16, CurvePoints = 61;
    private const double WaterTolerance = 1e-4, ThroatTolerance = 2e-6, Flat = 0.01;

    /// <summary>Water fractions searched; 0 % to 80 % unless given.</summary>
    public ValidRange<Ratio> WaterFractions { get; init; } = new(0.Percent(), 80.Percent());

    /// <summary>Throats searched; the flight's own unless given.</summary>
    public ValidRange<Length>? Throats { get; init; }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> all =
        [
            .. FlightVariant.WithWater(Flight, 0.3).InputFindings(),
            new ValidRange<Ratio>(0.Percent(), 95.Percent()).Find(WaterFractions.Minimum, "least water fraction of the search",
                "More leaves no gas to drive it."),
            new ValidRange<Ratio>(0.Percent(), 95.Percent()).Find(WaterFractions.Maximum, "greatest water fraction of the search",
                "More leaves no gas to drive it."),
            WaterFractions.Minimum < WaterFractions.Maximum
                ? null
                : FlightFindings.WaterFractionsOfSearchOutOfRange(WaterFractions.ToString()),
        ];
        if (Throats is { } throats)
        {
            var bore = Flight.Charge.Chamber.Bore;
            all.Add(new ValidRange<Length>(0.5.Millimetres(), bore).Find(throats.Minimum, "narrowest throat of the search",
                "It ends at the vessel's bore."));
            all.Add(new ValidRange<Length>(0.5.Millimetres(), bore).Find(throats.Maximum, "widest throat of the search",
                "It ends at the vessel's bore."));
            if (throats.Minimum >= throats.Maximum) all.Add(FlightFindings.ThroatsOfSearchOutOfRange(throats.ToString()));
        }

        return [.. all.OfType<Finding>()];
    }

    /// <summary>Searches. Source: the flight's own model.</summary>
    /// <exception cref="InvalidDesignException">Something is out of range, or no fill of the range lifts the vehicle.</exception>
    public BestFillResult Find()
    {
        InvalidDesignException.ThrowIfAny("best fill", Validate());
        var tables = Flight.Tables;
        var count = 0;
        var best = Throats is { } throats ? WithThroat(throats, tables, ref count)
            : (Flight.Nozzle.Throat.Meters, Water(Flight, tables, ref count));
        if (!double.IsFinite(best.Item2.Value) || best.Item2.Value == double.MinValue)
        {
            throw new InvalidDesignException("best fill", [FlightFindings.NoWaterFractionLiftsVehicle()]);
        }

        var flight = FlightVariant.WithWater(FlightVariant.WithThroat(Flight, best.Item1), best.Item2.Location);
        return new(this, flight.Fly(), Edge(flight, tables, best.Item2, -1), Edge(flight, tables, best.Item2, 1), count + CurvePoints)
        {
            Water = new("Water fraction", "%", [.. Enumerable.Range(0, CurvePoints).Select(i => 100 * CurveAt(i))]),
            GoalValue = new(Goal == FlightGoal.Apogee ? "Apogee above pad" : "Maximum speed", Goal == FlightGoal.Apogee ? "m" : "m/s",
                [.. Enumerable.Range(0, CurvePoints).Select(i => FlightVariant.Value(FlightVariant.WithWater(flight, CurveAt(i)), tables,
                    Goal))]),
        };
    }

    private double CurveAt(int point)
    {
        double low = WaterFractions.Minimum.DecimalFractions, high = WaterFractions.Maximum.DecimalFractions;
        return low + (high - low) * point / (CurvePoints - 1);
    }

    private (double Throat, MaximumResult Water) WithThroat(ValidRange<Length> throats, FiringTables tables, ref int count)
    {
        double low = throats.Minimum.Meters, high = throats.Maximum.Meters, step = (high - low) / Scan;
        var values = new MaximumResult[Scan + 1];
        var run = WorkRun.Current;
        Parallel.For(0, Scan + 1, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            var own = 0;
            values[i] = Water(FlightVariant.WithThroat(Flight, low + i * step), tables, ref own);
            values[i] = values[i] with { Evaluations = own };
        });
        count += values.Sum(v => v.Evaluations);
        var top = Enumerable.Range(0, Scan + 1).MaxBy(i => values[i].Value);

        var evaluated = 0;
        var throat = BracketedMaximum.Search(
            d => Water(FlightVariant.WithThroat(Flight, d), tables, ref evaluated).Value,
            low + Math.Max(0, top - 1) * step, low + Math.Min(Scan, top + 1) * step, ThroatTolerance);
        count += evaluated;
        return throat.Value >= values[top].Value
            ? (throat.Location, Water(FlightVariant.WithThroat(Flight, throat.Location), tables, ref count))
            : (low + top * step, values[top]);
    }

    private MaximumResult Water(VerticalFlight flight, FiringTables tables, ref int count)
    {
        double low = WaterFractions.Minimum.DecimalFractions, high = WaterFractions.Maximum.DecimalFractions, step = (high - low) / Scan;
        var bestAt = 0;
        var best = double.MinValue;
        for (var i = 0; i <= Scan; i++)
        {
            var value = GoalValueOf(flight, low + i * step, tables);
            if (value > best) (best, bestAt) = (value, i);
        }

        var found = BracketedMaximum.Search(
            w => GoalValueOf(flight, w, tables), low + Math.Max(0, bestAt - 1) * step, low + Math.Min(Scan, bestAt + 1) * step,
                WaterTolerance);
        count += found.Evaluations + Scan + 1;
        return found.Value >= best ? found : new(low + bestAt * step, best, found.Evaluations);
    }

    /// <summary>Where the goal has lost 1 % on one side, or the end of the search.</summary>
    private double Edge(VerticalFlight flight, FiringTables tables, MaximumResult best, int side)
    {
        var end = side < 0 ? WaterFractions.Minimum.DecimalFractions : WaterFractions.Maximum.DecimalFractions;
        double Excess(double w) => GoalValueOf(flight, w, tables) - (1 - Flat) * best.Value;
        if (Math.Abs(end - best.Location) < WaterTolerance || Excess(end) >= 0) return end;
        return BracketedRoot.TrySolve(Excess, best.Location, end, WaterTolerance, out var edge) ? edge.Root : best.Location;
    }

    private double GoalValueOf(VerticalFlight flight, double water, FiringTables tables)
    {
        WorkRun.Current.ThrowIfStopped();
        var value = FlightVariant.Value(FlightVariant.WithWater(flight, water), tables, Goal);
        return double.IsNaN(value) ? double.MinValue : value;
    }
}

/// <summary>What a fill or a nozzle is chosen for.</summary>
public enum FlightGoal
{
    /// <summary>Height of the top above the pad.</summary>
    Apogee,

    /// <summary>Maximum speed.</summary>
    MaximumSpeed,
}
