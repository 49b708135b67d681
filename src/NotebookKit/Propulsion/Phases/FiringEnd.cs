using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Where water and gas left off: the marks of all phases and the state that a coast starts from. Times [s], SI
/// throughout.</summary>
internal struct FiringEnd
{
    public FiringEnd()
    {
    }

    public OdeStatus Status = OdeStatus.Completed;
    public string? Failure;
    public int Steps, Rejected, Evaluations;

    public bool HadWater, HadAir, WaterSpent, TopReached, StoppedOnTube;
    public double TubeEndTime = double.NaN, TubeEndSpeed;
    public double JetStartTime, EstablishedTime, HandOverTime;
    public double WaterOutTime = double.NaN, WaterOutHeight, WaterOutSpeed, WaterOutVolume, WaterLeftKg;
    public double UnchokedTime = double.NaN;
    public double EndTime, EndHeight, EndSpeed, EndGasKg, EndPressure, EndTemperature;
    public double StartEnergy, EndEnergy, ClosedEnergyGivenUp, Available;
    public double FastestTime = double.NaN, FastestSpeed = double.NegativeInfinity, FastestHeight;
    public FiringBudget Budget;

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
    public void Account(in OdeResult result, string phase, bool endsByEvent = true)
    {
        Steps += result.AcceptedSteps;
        Rejected += result.RejectedSteps;
        Evaluations += result.Evaluations;
        Status = result.Status;
        if (result.Status != (endsByEvent ? OdeStatus.EndedByEvent : OdeStatus.Completed)) Failure = phase;
    }
}
