using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>A fill worked by hand: what is done at the valve, one after the other, with the gauge and the time to expect.</summary>
/// <remarks>
/// Every action is run with the restrictor and the wall as given and at the corners of what they may be; what the gauge reads beyond the
/// corners and its own error isn't explained by them. Source: the fill's own model (<see cref="PadFill"/>).
/// </remarks>
public sealed record HandFill
{
    /// <summary>Vessel, supply, restrictor, water and wall; heat passes to the wall whatever it says, and its target is the highest that
    /// may be aimed at.</summary>
    public required PadFill Fill { get; init; }

    /// <summary>What is done, in order.</summary>
    public required IReadOnlyList<HandAction> Actions { get; init; }

    /// <summary>By how much the restrictor's conductance may be off [-]; 0 to 0.5, 0.1 unless given (common practice, no source).</summary>
    public double ConductanceSpread { get; init; } = 0.1;

    /// <summary>By how much the wall's film coefficient may be off [-]; 0 to 0.9, 0.3 unless given, as its correlation.</summary>
    public double FilmSpread { get; init; } = 0.3;

    /// <summary>Error of the gauge; 0 to 10 bar, 1 bar unless given (common practice, no source: 1 % of a scale of 100 bar).</summary>
    public Pressure GaugeError { get; init; } = 1.Bar();

    /// <summary>The fill with heat to the wall and the valve open throughout.</summary>
    internal PadFill Followed => Fill with { Heat = FillHeat.Wall, Valve = null, Goal = FillGoal.WhenShut };

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings =
        [
            .. Followed.Validate(), .. Actions.SelectMany(a => a.Validate()),
            .. new[]
            {
                Actions.Count > 0 ? null : FillingFindings.NothingIsDone(),
                new ValidRange<double>(0, 0.5).Find(ConductanceSpread, "spread of the conductance", "A drilled hole is known to a tenth."),
                new ValidRange<double>(0, 0.9).Find(FilmSpread, "spread of the film coefficient", "Its correlation is good to 0.3."),
                new ValidRange<Pressure>(0.Bar(), 10.Bar()).Find(GaugeError.ToUnit(UnitsNet.Units.PressureUnit.Bar), "error of the gauge",
                    "A gauge of class 1 has 1 % of its scale."),
            }.OfType<Finding>(),
        ];
        foreach (var action in Actions)
        {
            if (action.Gauge is { } gauge && gauge > Fill.Chamber.RatedPressure)
                findings.Add(FillingFindings.TargetAboveRatedPressure(gauge, Fill.Chamber.RatedPressure));
        }

        return findings;
    }

    /// <summary>The usual way to a settled pressure: open to it, hold until the gas has cooled, top up, as often as it takes.</summary>
    /// <param name="fill">The fill; its target is what the gauge is to read after cooling.</param>
    /// <param name="within">What may be missing after the last hold; 0.1 to 10 bar.</param>
    /// <param name="cooled">How far above the surroundings the gas may be when topping up; 0.5 to 50 K.</param>
    /// <exception cref="InvalidDesignException">The fill is refused, or ten top-ups don't do.</exception>
    /// <exception cref="OutOfRangeException">A value is outside its range.</exception>
    public static HandFill ToSettleAt(PadFill fill, Pressure within, TemperatureDelta cooled)
    {
        ArgumentNullException.ThrowIfNull(fill);
        new ValidRange<Pressure>(0.1.Bar(), 10.Bar()).Check(within.ToUnit(UnitsNet.Units.PressureUnit.Bar), "what may be missing",
            "A gauge reads to some tenths of a bar.");
        HandFill plan = new() { Fill = fill, Actions = [HandAction.OpenTo(fill.Target), HandAction.HoldUntilCooled(cooled)] };
        for (var topUp = 0; topUp < 10; topUp++)
        {
            InvalidDesignException.ThrowIfAny("Fill by hand", plan.Validate());
            var run = HandRun.Of(plan, 1, 1);
            if (run.Trouble is null && run.GaugesPa[^1] >= fill.Target.Pascals - within.Pascals) return plan;
            plan = plan with { Actions = [.. plan.Actions, HandAction.OpenTo(fill.Target), HandAction.HoldUntilCooled(cooled)] };
        }

        throw new InvalidDesignException("Fill by hand", [FillingFindings.TopUpsDoNotDo(fill.Target, within)]);
    }

    /// <summary>The plan: every action with the gauge and the time to expect. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public HandFillPlan Plan()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Fill by hand", findings);
        return new HandFillPlan(this, findings);
    }
}
