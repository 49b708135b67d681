using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Firings;

/// <summary>What a vessel on a stand does. Source: see <see cref="Model"/>.</summary>
public sealed record StaticFiringResult : Result
{
    private readonly Lazy<Working> _working;

    internal StaticFiringResult(StaticFiring firing, in FiringSetup setup, FiringRecord record)
    {
        Firing = firing;
        Curve = record.Curve(setup);
        Energy = record.Energy(setup);
        Status = record.End.Failed ? ResultStatus.Failed : ResultStatus.Completed;
        Steps = record.End.Steps;
        RejectedSteps = record.End.Rejected;
        Evaluations = record.End.Evaluations;
        List<Finding> findings = [.. FiringModel.Warnings(firing.Charge, firing.Flow, record.End.WaterSpent, record.End.WaterLeftKg)];
        if (record.End.Failed) findings.Add(PropulsionFindings.DidNotReachEnd(record.End.Failure, record.End.Status.ToString()));
        Findings = findings;
        var own = setup;
        _working = new(() => FiringWorking.For("Thrust at release", firing.Charge, firing.Nozzle, firing.Ambient, own));
    }

    /// <summary>What was fired.</summary>
    public StaticFiring Firing { get; }

    /// <summary>Thrust, pressure, temperature and masses against time.</summary>
    public ThrustCurve Curve { get; }

    /// <summary>Where the energy went.</summary>
    public EnergyBudget Energy { get; }

    /// <summary>Accepted steps of the integration.</summary>
    public int Steps { get; }

    /// <summary>Rejected steps of the integration.</summary>
    public int RejectedSteps { get; }

    /// <summary>Right-hand sides computed.</summary>
    public int Evaluations { get; }

    /// <inheritdoc/>
    public override string Title => "Static firing";

    /// <inheritdoc/>
    public override ModelCard Model => FiringModel.Card(Firing.Flow, Firing.Charge);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines
    {
        get
        {
            List<ResultLine> lines =
            [
                new("Peak thrust", Curve.PeakThrust.Show()),
                new("Impulse", $"{Digits.Round(Curve.Impulse.NewtonSeconds)} N s", Split()),
                new("Mean specific impulse", Curve.SpecificImpulse.Show()),
            ];
            lines.AddRange(Curve.Events.Select(e => new ResultLine(Capital(e.Name), $"{Digits.Round(e.Time.Seconds * 1e3)} ms")));
            lines.Add(new("Stored energy", $"{Digits.Round(Energy.Available.Joules / 1e3)} kJ",
                $"{Digits.Round(Energy.WaterShare.Percent, 2)} % of it leaves with the water"));
            lines.Add(new("Rated pressure of the vessel", Firing.Charge.Chamber.RatedPressure.ToString(), Firing.Charge.Chamber.RestsOn));
            return lines;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override Working Working => _working.Value;

    private string Split() =>
        $"water {Digits.Round(Curve.WaterPhase?.Impulse.NewtonSeconds ?? 0)} N s, gas "
            + $"{Digits.Round(Curve.GasPhase?.Impulse.NewtonSeconds ?? 0)} N s";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
