using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Columns;
using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>A recorded firing: rows, and the thrust curve and energy budget made from them.</summary>
internal sealed class FiringRecord
{
    private readonly List<Action<List<FiringRow>>> _writers = [];
    private readonly Lazy<IReadOnlyList<FiringRow>> _rows, _jet;

    private FiringRecord()
    {
        _rows = new(Write);
        _jet = new(() => Rows.Where(r => r.Stage != FiringStage.Coast).ToList());
    }

    /// <summary>The rows, made from the recorded states when they are first asked for.</summary>
    public IReadOnlyList<FiringRow> Rows => _rows.Value;

    public FiringEnd End { get; private set; } = new();

    public static FiringRecord Fire<TMount>(in FiringSetup setup, TMount mount, OdeSettings settings)
        where TMount : struct, IMount
    {
        var record = new FiringRecord();
        var rows = new FiringRows<TMount>(settings);
        FiringDispatch.Run(setup, mount, ref rows);
        record.End = rows.End;
        if (rows.Writer is { } writer) record._writers.Add(writer);
        return record;
    }

    /// <summary>Has rows written behind those there are; before the first row is asked for.</summary>
    public void Then(Action<List<FiringRow>> writer) => _writers.Add(writer);

    private List<FiringRow> Write()
    {
        var rows = new List<FiringRow>(512);
        foreach (var writer in _writers) writer(rows);
        return rows;
    }

    public ThrustCurve Curve(in FiringSetup setup)
    {
        List<FiringEvent> events = [];
        if (!double.IsNaN(End.TubeEndTime)) events.Add(new(End.StoppedOnTube ? "stopped on launch tube" : "launch tube left",
            End.TubeEndTime.Seconds()));
        // A vehicle that comes to rest with its jet on ends the phase, not the water or the jet.
        if (double.IsFinite(End.WaterOutTime) && End.WaterLeftKg <= 0) events.Add(new("water out", End.WaterOutTime.Seconds()));
        else if (End.WaterSpent) events.Add(new("pressure spent", End.WaterOutTime.Seconds()));
        if (!double.IsNaN(End.UnchokedTime)) events.Add(new("flow unchoked", End.UnchokedTime.Seconds()));
        if (double.IsFinite(End.EndTime) && !End.TopReached) events.Add(new("end of jet", End.EndTime.Seconds()));
        var gasStart = End.HadWater ? End.WaterOutTime : End.JetStartTime;
        return new((name, unit, value) => LazyColumn<FiringRow>.Of(name, unit, _jet, value), new(Peak), events)
        {
            TubePhase = double.IsNaN(End.TubeEndTime) ? null : Phase("launch tube", 0, End.TubeEndTime, End.Budget.TubeImpulse, 0),
            WaterPhase = double.IsFinite(End.WaterOutTime)
                ? Phase("water", End.JetStartTime, End.WaterOutTime, End.Budget.WaterImpulse, setup.WaterKg - End.WaterLeftKg)
                : null,
            GasPhase = End.HadAir ? Phase("gas", gasStart, End.EndTime, End.Budget.AirImpulse, setup.GasKg - End.EndGasKg) : null,
        };
    }

    private Force Peak() => _jet.Value.Where(r => r.Stage is FiringStage.Water or FiringStage.Gas).Select(r => r.Thrust)
        .DefaultIfEmpty().Max().Newtons();

    public EnergyBudget Energy(in FiringSetup setup)
    {
        var ledger = End.Budget;

        // Where the law itself implies heat (isothermal, polytropic), that is the work not explained by the gas' own cooling.
        var givenUp = End.ClosedEnergyGivenUp;
        var start = End.StartEnergy + givenUp;
        var heat = ledger.HeatIn;
        if (double.IsNaN(givenUp))
        {
            start = setup.PressurePa * setup.StartM3 * (End.StoppedOnTube ? 1 : setup.AboardShare) / (setup.Gamma - 1);
            heat += ledger.GasWork - (start - End.StartEnergy);
        }

        var phi2 = setup.WaterJet.AreaRatio * setup.WaterJet.AreaRatio;
        var loss = ledger.WaterJetEnergy * (setup.WaterJet.Loss - (1 - phi2));
        return new(
            start.Joules(), heat.Joules(), ledger.TubeWork.Joules(), (ledger.ColumnWork + phi2 * ledger.WaterJetEnergy).Joules(),
                ledger.WaterJetEnergy.Joules(), loss.Joules(),
            ledger.OutsideWork.Joules(), ledger.EnthalpyOut.Joules(), ledger.AirJetEnergy.Joules(), End.EndEnergy.Joules(),
                End.Available.Joules());
    }

    /// <summary>A column of the rows.</summary>
    public Series Column(string name, string unit, Func<FiringRow, double> value) => LazyColumn<FiringRow>.Of(name, unit, _rows, value);

    private static FiringPhase Phase(string name, double from, double to, double impulse, double kilograms) =>
        new(name, from.Seconds(), to.Seconds(), Impulse.FromNewtonSeconds(impulse), kilograms.Kilograms());
}

/// <summary>One moment of a firing in SI.</summary>
internal readonly record struct FiringRow(
    FiringStage Stage, double Time, double Height, double Speed, double Acceleration, double Thrust, double Pressure, double Temperature,
        double WaterKg,
    double GasKg, double MassFlow);

/// <summary>What a vessel is doing.</summary>
internal enum FiringStage
{
    Tube,
    Start,
    Water,
    Gas,
    Coast,
}
