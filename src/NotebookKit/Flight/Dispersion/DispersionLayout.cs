namespace NotebookKit.Flight.Dispersion;

/// <summary>What stands in a row of a dispersion, in order: what the flight differs by, then what came of it.</summary>
internal sealed class DispersionLayout
{
    private DispersionLayout(IReadOnlyList<(string, string)> inputs, IReadOnlyList<(string, string)> outputs)
        => (Inputs, Outputs) = (inputs, outputs);

    /// <summary>Names and units of the inputs.</summary>
    public IReadOnlyList<(string Name, string Unit)> Inputs { get; }

    /// <summary>Names and units of the outputs.</summary>
    public IReadOnlyList<(string Name, string Unit)> Outputs { get; }

    public int RowLength => Inputs.Count + Outputs.Count;

    private static DispersionLayout One { get; } = new([.. StageDraw.Columns, .. DayDraw.Columns], FlightOutputs.Columns);

    private static DispersionLayout Two { get; } = new(
        [.. Of("Booster", StageDraw.Columns), .. DayDraw.Columns, .. Of("Sustainer", StageDraw.Columns), ("Time of separation", "s")],
        [.. FlightOutputs.Columns, .. SeparationOutputs.Columns]);

    /// <summary>The layout for a number of stages: 1 or 2.</summary>
    public static DispersionLayout For(int stages) => stages == 2 ? Two : One;

    private static IEnumerable<(string Name, string Unit)> Of(string stage, IReadOnlyList<(string Name, string Unit)> columns) =>
        columns.Select(c => ($"{stage}'s {char.ToLowerInvariant(c.Name[0])}{c.Name[1..]}", c.Unit));
}
