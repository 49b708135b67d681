using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Fires with everything recorded and turns the record into rows, a thrust curve and an energy budget.</summary>
internal sealed class FiringRecord
{
    private const int PointsPerStep = 4;

    private readonly List<FiringRow> _rows = [];

    public IReadOnlyList<FiringRow> Rows => _rows;

    public FiringEnd End { get; private set; } = new();

    public double GasConstant { get; private init; }

    public static FiringRecord Fire<TExpansion, TMount>(in FiringSetup setup, TExpansion expansion, TMount mount, OdeSettings settings)
        where TExpansion : struct, IExpansionLaw
        where TMount : struct, IMount
    {
        var record = new FiringRecord { GasConstant = setup.GasConstant };
        var water = new TrajectoryBuilder(WaterPhase<TExpansion, TMount>.Core + WaterPhase<TExpansion, TMount>.Ledger);
        var air = new TrajectoryBuilder(AirPhase<TMount>.Core + AirPhase<TMount>.Ledger);
        var waterRecorder = new TrajectoryRecorder(water, PointsPerStep);
        var airRecorder = new TrajectoryRecorder(air, PointsPerStep);
        var end = new FiringEnd();
        Firing.Run(setup, expansion, mount, ref waterRecorder, ref airRecorder, withLedger: true, settings, ref end);
        record.End = end;
        record.AddWater(setup, expansion, mount, water);
        record.AddAir(setup, mount, air, end);
        return record;
    }

    public ThrustCurve Curve(in FiringSetup setup)
    {
        List<FiringEvent> events = [];
        if (End.HadWater) events.Add(new(End.WaterSpent ? "pressure spent" : "water out", End.WaterOutTime.Seconds()));
        if (!double.IsNaN(End.UnchokedTime)) events.Add(new("flow unchoked", End.UnchokedTime.Seconds()));
        events.Add(new("end of jet", End.EndTime.Seconds()));
        var firstGas = End.HadWater ? End.WaterOutTime : 0;
        var jet = _rows.Where(r => r.JetOn).ToList();
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
            WaterPhase = End.HadWater
                ? new("water", Duration.Zero, End.WaterOutTime.Seconds(), Impulse.FromNewtonSeconds(End.Ledger.WaterImpulse), (setup.WaterKg - End.WaterLeftKg).Kilograms())
                : null,
            GasPhase = End.EndTime > firstGas
                ? new("gas", firstGas.Seconds(), End.EndTime.Seconds(), Impulse.FromNewtonSeconds(End.Ledger.AirImpulse), (setup.GasKg - End.EndGasKg).Kilograms())
                : null,
            PeakThrust = jet.Max(r => r.Thrust).Newtons(),
        };
    }

    public EnergyBudget Energy(in FiringSetup setup, double ambientPa)
    {
        var cv = setup.GasConstant / (setup.Gamma - 1);
        var ledger = End.Ledger;
        var start = setup.PressurePa * setup.GasM3 / (setup.Gamma - 1);
        var end = End.EndGasKg * cv * End.EndTemperature;

        // A polytropic law other than the adiabatic one implies heat: the part of the gas' work that its own cooling doesn't explain.
        var afterWater = setup.GasKg * cv * (End.HadWater ? End.WaterOutTemperature : setup.TemperatureK);
        var heat = (setup.WaterExponent == setup.Gamma ? 0 : ledger.GasWork - (start - afterWater)) + ledger.HeatIn;
        var phi2 = setup.WaterJet.AreaRatio * setup.WaterJet.AreaRatio;
        var loss = ledger.WaterJetEnergy * (setup.WaterJet.Loss - (1 - phi2));
        var expanded = setup.GasM3 * Math.Pow(setup.PressurePa / ambientPa, 1 / setup.Gamma);
        var available = (setup.PressurePa * setup.GasM3 - ambientPa * expanded) / (setup.Gamma - 1) - ambientPa * (expanded - setup.GasM3);
        return new(
            start.Joules(), heat.Joules(), (ledger.HeadWork + phi2 * ledger.WaterJetEnergy).Joules(), ledger.WaterJetEnergy.Joules(), loss.Joules(),
            ledger.OutsideWork.Joules(), ledger.EnthalpyOut.Joules(), ledger.AirJetEnergy.Joules(), end.Joules(), available.Joules());
    }

    public void Add(FiringRow row) => _rows.Add(row);

    public static Series Column(string name, string unit, IReadOnlyList<FiringRow> rows, Func<FiringRow, double> value)
    {
        var numbers = new double[rows.Count];
        for (var i = 0; i < numbers.Length; i++) numbers[i] = value(rows[i]);
        return new(name, unit, numbers);
    }

    private void AddWater<TExpansion, TMount>(in FiringSetup setup, TExpansion expansion, TMount mount, TrajectoryBuilder trajectory)
        where TExpansion : struct, IExpansionLaw
        where TMount : struct, IMount
    {
        if (!End.HadWater) return;
        var phase = Firing.WaterPhase(setup, expansion, mount, withLedger: false);
        Span<double> slope = stackalloc double[phase.Dimension];
        Span<double> start = [0, 0, setup.GasM3];
        Row(phase, 0, start, slope, setup.GasKg);
        for (var i = 0; i < trajectory.Count; i++) Row(phase, trajectory.Time(i), trajectory.State(i)[..phase.Dimension], slope, setup.GasKg);

        void Row(WaterPhase<TExpansion, TMount> phase, double t, ReadOnlySpan<double> y, Span<double> slope, double gasKg)
        {
            phase.Derivatives(t, y, slope);
            phase.Jet(y, out var pressure, out var thrust);
            var waterKg = phase.WaterKg(y[2]);
            _rows.Add(new(t, y[0], y[1], slope[1], thrust, pressure, expansion.Temperature(y[2]), waterKg, gasKg, slope[2] * phase.Density, true));
        }
    }

    private void AddAir<TMount>(in FiringSetup setup, TMount mount, TrajectoryBuilder trajectory, in FiringEnd end)
        where TMount : struct, IMount
    {
        if (trajectory.Count == 0) return;
        var phase = Firing.AirPhase(setup, mount, end.WaterLeftKg, withLedger: false);
        Span<double> slope = stackalloc double[phase.Dimension];
        Span<double> start = end.HadWater
            ? [end.WaterOutHeight, end.WaterOutSpeed, setup.GasKg, end.WaterOutTemperature]
            : [0, 0, setup.GasKg, setup.TemperatureK];
        Row(phase, end.HadWater ? end.WaterOutTime : 0, start, slope, end.WaterLeftKg);
        for (var i = 0; i < trajectory.Count; i++) Row(phase, trajectory.Time(i), trajectory.State(i)[..phase.Dimension], slope, end.WaterLeftKg);

        void Row(AirPhase<TMount> phase, double t, ReadOnlySpan<double> y, Span<double> slope, double waterKg)
        {
            phase.Derivatives(t, y, slope);
            phase.Jet(y, out var pressure, out var thrust);
            _rows.Add(new(t, y[0], y[1], slope[1], thrust, pressure, y[3], waterKg, y[2], -slope[2], true));
        }
    }
}
