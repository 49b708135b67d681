using MathNet.Numerics.Statistics;
using NotebookKit.Numerics.Functions;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What is kept of a block of flights that go by one after the other, whatever their number.</summary>
internal sealed class FlightTally(DispersionPlan plan)
{
    private readonly DispersionLayout _layout = DispersionLayout.For(plan.Stages);
    private readonly double _ceilingM = plan.Ceiling?.Meters ?? double.PositiveInfinity;

    private RunningCovariance _landings, _boosters;

    /// <summary>Moments and extremes of every column, over the flights that have it.</summary>
    public RunningStatistics[] Moments { get; private set; } = Empty(plan);

    public RunningCovariance Landings => _landings;

    public RunningCovariance Boosters => _boosters;

    public int Failed { get; private set; }

    public int Unparted { get; private set; }

    public int AboveCeiling { get; private set; }

    public int OffField { get; private set; }

    public int BoostersOffField { get; private set; }

    /// <summary>Takes a flight in.</summary>
    public void Add(ReadOnlySpan<double> row)
    {
        for (var i = 0; i < row.Length; i++)
        {
            if (double.IsFinite(row[i])) Moments[i].Push(row[i]);
        }

        var outputs = row[_layout.Inputs.Count..];
        if (!double.IsFinite(outputs[FlightOutputs.Apogee])) Failed++;
        else if (outputs[FlightOutputs.Apogee] > _ceilingM) AboveCeiling++;
        OffField += Landed(ref _landings, outputs[FlightOutputs.East], outputs[FlightOutputs.North]);
        if (plan.Stages != 2) return;
        if (!double.IsFinite(outputs[SeparationOutputs.Time])) Unparted++;
        BoostersOffField += Landed(ref _boosters, outputs[SeparationOutputs.East], outputs[SeparationOutputs.North]);
    }

    /// <summary>Takes in the block that follows.</summary>
    public void Add(FlightTally next)
    {
        for (var i = 0; i < Moments.Length; i++) Moments[i] = RunningStatistics.Combine(Moments[i], next.Moments[i]);
        _landings.Add(next._landings);
        _boosters.Add(next._boosters);
        Failed += next.Failed;
        Unparted += next.Unparted;
        AboveCeiling += next.AboveCeiling;
        OffField += next.OffField;
        BoostersOffField += next.BoostersOffField;
    }

    private int Landed(ref RunningCovariance landings, double east, double north)
    {
        if (!double.IsFinite(east)) return 0;
        landings.Add(east, north);
        return plan.Field is { } field && !field.Contains(east, north) ? 1 : 0;
    }

    private static RunningStatistics[] Empty(DispersionPlan plan)
    {
        var moments = new RunningStatistics[DispersionLayout.For(plan.Stages).RowLength];
        for (var i = 0; i < moments.Length; i++) moments[i] = new();
        return moments;
    }
}
