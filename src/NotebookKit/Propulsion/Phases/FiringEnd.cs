using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Where water and gas left off: the marks of both phases and the state that a coast starts from. Times [s], SI throughout.</summary>
internal struct FiringEnd
{
    public FiringEnd()
    {
    }

    public OdeStatus Status = OdeStatus.Completed;
    public string? Failure;
    public int Steps, Rejected, Evaluations;

    public bool HadWater, WaterSpent, TopReached;
    public double WaterOutTime = double.NaN, WaterOutHeight, WaterOutSpeed, WaterOutPressure, WaterOutTemperature, WaterOutVolume, WaterLeftKg;
    public double UnchokedTime = double.NaN;
    public double EndTime, EndHeight, EndSpeed, EndGasKg, EndTemperature;
    public double FastestTime = double.NaN, FastestSpeed = double.NegativeInfinity, FastestHeight;
    public FiringLedger Ledger;

    public readonly bool Failed => Failure is not null;

    /// <summary>Keeps a speed if it is the greatest so far.</summary>
    public void Offer(double time, double speed, double height)
    {
        if (!(speed > FastestSpeed)) return;
        FastestHeight = height;
        FastestTime = time;
        FastestSpeed = speed;
    }

    /// <summary>Adds what an integration cost; keeps how it failed.</summary>
    public void Account(in OdeResult result, string phase)
    {
        Steps += result.AcceptedSteps;
        Rejected += result.RejectedSteps;
        Evaluations += result.Evaluations;
        Status = result.Status;
        if (result.Status != OdeStatus.EndedByEvent) Failure = phase;
    }
}
