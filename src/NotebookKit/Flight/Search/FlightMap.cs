using NotebookKit.Flight.Vertical;
using NotebookKit.Numerics;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Search;

/// <summary>Height and speed over two variables at once.</summary>
/// <remarks>One fast flight a cell, on all cores. Source: the flight's own model.</remarks>
/// <param name="Flight">The vehicle; what the axes don't change is taken from it.</param>
/// <param name="X">The horizontal variable.</param>
/// <param name="Y">The vertical variable; not the same as the horizontal one.</param>
public sealed record FlightMap(VerticalFlight Flight, MapAxis X, MapAxis Y)
{
    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        X.Variable == Y.Variable ? [FlightFindings.AxesOfMapAreSame(X.Values.Name)] : [];

    /// <summary>Computes the map. Source: the flight's own model.</summary>
    /// <exception cref="InvalidDesignException">The axes are the same, or no cell can be computed.</exception>
    public FlightMapResult Compute()
    {
        InvalidDesignException.ThrowIfAny("map of flights", Validate());
        int columns = X.Values.Count, rows = Y.Values.Count;
        var apogee = new double[columns * rows];
        var speed = new double[columns * rows];
        Array.Fill(apogee, double.NaN);
        Array.Fill(speed, double.NaN);
        var tables = PressureTables();

        var run = WorkRun.Current;
        Parallel.For(0, rows, run.Parallel(), row =>
        {
            var line = Y.Apply(Flight, row);
            for (var column = 0; column < columns; column++)
            {
                run.ThrowIfStopped();
                var flight = X.Apply(line, column);
                if (flight.Validate().Any(f => f.Severity == FindingSeverity.Error)) continue;
                var peak = flight.PeakUnchecked(tables[X.Variable == MapVariable.Pressure ? column : Y.Variable == MapVariable.Pressure
                    ? row : 0]);
                if (peak.Status == ResultStatus.Failed) continue;
                apogee[row * columns + column] = peak.ApogeeMetres;
                speed[row * columns + column] = peak.MaximumSpeedMetresPerSecond;
            }
        });

        return Array.TrueForAll(apogee, double.IsNaN)
            ? throw new InvalidDesignException("map of flights", [Finding.Error(Reason())])
            : new(this, apogee, speed);
    }

    private string Reason()
    {
        var first = X.Apply(Y.Apply(Flight, 0), 0).Validate().FirstOrDefault(f => f.Severity == FindingSeverity.Error)?.Message
            ?? "The flight fails, or the vehicle comes down with water and pressure aboard.";
        return $"no cell of the map can be computed. In its first corner: {first}";
    }

    /// <summary>A table of the gas depends on pressure alone: one, or one for each pressure of an axis.</summary>
    private FiringTables[] PressureTables()
    {
        var axis = X.Variable == MapVariable.Pressure ? X : Y.Variable == MapVariable.Pressure ? Y : null;
        if (axis is null) return [Flight.Tables];
        var tables = new FiringTables[axis.Values.Count];
        var run = WorkRun.Current;
        Parallel.For(0, tables.Length, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            tables[i] = TablesOf(axis.Apply(Flight, i));
        });
        return tables;
    }

    // A charge without a state makes its cells invalid, and leaves the others as they are.
    private static FiringTables TablesOf(VerticalFlight flight)
    {
        try
        {
            return flight.Tables;
        }
        catch (InvalidDesignException)
        {
            return FiringTables.None;
        }
    }
}
