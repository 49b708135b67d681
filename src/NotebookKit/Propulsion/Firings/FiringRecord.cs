using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>A recorded firing: rows, and the thrust curve and energy budget made from them.</summary>
internal sealed class FiringRecord
{
    private readonly List<FiringRow> _rows = [];

    public IReadOnlyList<FiringRow> Rows => _rows;

    public FiringEnd End { get; private set; } = new();

    public static FiringRecord Fire<TMount>(in FiringSetup setup, TMount mount, OdeSettings settings)
        where TMount : struct, IMount
    {
        var record = new FiringRecord();
        var rows = new FiringRows<TMount>(record._rows, settings);
        FiringDispatch.Run(setup, mount, ref rows);
        record.End = rows.End;
        return record;
    }

    public void Add(FiringRow row) => _rows.Add(row);

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
        var jet = _rows.Where(r => r.Stage != FiringStage.Coast).ToList();
        return new()
        {
            Time = Column("Time from release", "s", jet, r => r.Time),
            Thrust = Column("Thrust", "N", jet, r => r.Thrust),
            Pressure = Column("Gas pressure", "bar absolute", jet, r => r.Pressure / 1e5),
            Temperature = Column("Gas temperature", "°C", jet, r => r.Temperature - 273.15),
            Water = Column("Water left", "g", jet, r => r.WaterKg * 1e3),
            Gas = Column("Gas left", "g", jet, r => r.GasKg * 1e3),
            MassFlow = Column("Mass flow", "kg/s", jet, r => r.MassFlow),
            Events = events,
            TubePhase = double.IsNaN(End.TubeEndTime) ? null : Phase("launch tube", 0, End.TubeEndTime, End.Budget.TubeImpulse, 0),
            WaterPhase = double.IsFinite(End.WaterOutTime)
                ? Phase("water", End.JetStartTime, End.WaterOutTime, End.Budget.WaterImpulse, setup.WaterKg - End.WaterLeftKg)
                : null,
            GasPhase = End.HadAir ? Phase("gas", gasStart, End.EndTime, End.Budget.AirImpulse, setup.GasKg - End.EndGasKg) : null,
            PeakThrust = jet.Where(r => r.Stage is FiringStage.Water
                or FiringStage.Gas).Select(r => r.Thrust).DefaultIfEmpty().Max().Newtons(),
        };
    }

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

    public static Series Column(string name, string unit, IReadOnlyList<FiringRow> rows, Func<FiringRow, double> value)
    {
        var numbers = new double[rows.Count];
        for (var i = 0; i < numbers.Length; i++) numbers[i] = value(rows[i]);
        return new(name, unit, numbers);
    }

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
