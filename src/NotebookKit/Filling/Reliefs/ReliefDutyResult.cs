using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Reliefs;

/// <summary>What a relief valve passes, what may come in, and whether the vessel stays below its highest expected pressure.</summary>
/// <remarks>Source: as <see cref="ReliefDuty"/>.</remarks>
public sealed record ReliefDutyResult : Result
{
    internal ReliefDutyResult(ReliefDuty duty, IReadOnlyList<Finding> findings)
    {
        Duty = duty;
        Relieving = duty.Valve.Relieving(duty.Ambient);
        var cylinder = duty.Cylinder.ToAbsolute(duty.Ambient);
        var ideal = Relieving < cylinder ? duty.Passage.Flow(cylinder, duty.Temperature, Relieving, duty.Gas) : MassFlow.Zero;
        // A real gas chokes at a higher flow than an ideal one: 8 % for air at 200 bar.
        var scale = duty.Gas.Real is null ? 1 : new FlowScale(new GasLaw(duty.Gas, GasProperties.Real), cylinder.Pascals,
            duty.Temperature.Kelvins).At(cylinder.Pascals);
        Inflow = (ideal * Math.Max(1, scale)).ToUnit(UnitsNet.Units.MassFlowUnit.GramPerSecond);
        Capacity = duty.Valve.Capacity(duty.Gas, duty.Temperature, duty.Ambient);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The duty.</summary>
    public ReliefDuty Duty { get; }

    /// <summary>Pressure at which the valve is open in full.</summary>
    public AbsolutePressure Relieving { get; }

    /// <summary>The most that comes in with everything failed open.</summary>
    public MassFlow Inflow { get; }

    /// <summary>What the valve passes at the relieving pressure.</summary>
    public MassFlow Capacity { get; }

    /// <summary>Area that the inflow needs with this valve's coefficient.</summary>
    public Area RequiredArea => (Duty.Valve.FlowArea * (Inflow / Capacity)).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>Whether the vessel stays at or below its highest expected pressure whatever has failed ahead of the passage.</summary>
    public bool Protects => Capacity >= Inflow && Relieving.ToGauge(Duty.Ambient) <= Duty.Chamber.MaximumExpectedPressure
        && Duty.Valve.Set <= Duty.Chamber.RatedPressure;

    /// <inheritdoc/>
    public override string Title => $"Relief valve set to {Duty.Valve.Set}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Relief capacity against the worst inflow",
        ["Cylinder full, regulator failed open, fill valve left open; the smallest passage is whole.",
            "Gas in the vessel is as warm as what comes in: warmer gas carries out more energy through the same opening.",
            "Flow of gas alone: water at the relief valve passes slower and isn't covered, so fit the valve above the water.",
            "Pressure lost in the pipe to the valve isn't counted: at most 3 % of the set pressure is common practice."],
        "To 300 bar gauge; outlet to the open air.",
        [ReliefSources.Iso4126, ReliefSources.Api520, ReliefSources.Un]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Comes in at the most", Inflow.Show(), $"from {Duty.Cylinder} through {Duty.Passage}"),
        new("The valve passes", Capacity.Show(), $"at {Relieving.ToGauge(Duty.Ambient)}"),
        new("Area that is needed", RequiredArea.Show(), $"it has {Duty.Valve.FlowArea.Show()}"),
        new("Vessel stays below its highest expected pressure", Protects ? "yes" : "no", Duty.Chamber.MaximumExpectedPressure.ToString()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Capacity", @"q_m = p_0\,C\,A\,K_{dr}\sqrt{\frac{M}{Z\,T}}",
            $"{Relieving} × {Digits.Round(ReliefValve.IsoCoefficient(Duty.Gas.HeatCapacityRatio), 4)} × {Duty.Valve.FlowArea.Show()} × "
                + $"{Digits.Round(Duty.Valve.Discharge)} × √({Digits.Round(ReliefValve.MolarMass(Duty.Gas), 4)} g/mol / "
                + $"({Digits.Round(Duty.Valve.Compressibility)} × {Digits.Round(Duty.Temperature.Kelvins, 4)} K))",
            $"{Digits.Round(Capacity.KilogramsPerHour, 4)} kg/h", ReliefSources.Iso4126),
    ]);

    private IEnumerable<Finding> Say()
    {
        var most = Duty.Chamber.MaximumExpectedPressure;
        if (Duty.Valve.Set > Duty.Chamber.RatedPressure)
            yield return FillingFindings.ReliefSetAboveRating(Duty.Valve.Set, Duty.Chamber.RatedPressure);
        if (Relieving.ToGauge(Duty.Ambient) > most)
            yield return FillingFindings.ReliefOpensTooLate(Relieving.ToGauge(Duty.Ambient), most);
        if (Capacity < Inflow) yield return FillingFindings.ReliefTooSmall(Capacity, Inflow, RequiredArea);
        if (Duty.FillsTo is { } fills && fills.Pascals > 0.9 * Duty.Valve.Set.Pascals)
            yield return FillingFindings.ReliefTooNearToFill(fills, Duty.Valve.Set);
    }
}
