using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A regulator: brings the inlet down to its set pressure, less its droop with the flow, and more by its supply effect as the
/// inlet falls; never passes gas back.</summary>
/// <remarks>
/// p_out = p_set + SPE (p_in,set − p_in) − droop × flow/flow of the droop. Source: makers' definition of the supply-pressure effect
/// (unverified: source not at hand; confirm before relying on it).
/// </remarks>
/// <param name="Name">What it is called.</param>
/// <param name="Set">Pressure set at no flow; 0 to 300 bar gauge.</param>
public sealed record RegulatorPart(string Name, GaugePressure Set) : LinePart(Name)
{
    /// <summary>Rise of the outlet for a fall of the inlet [-]; 0 to 0.2, 0 unless given. One stage has about 0.01.</summary>
    public double SupplyEffect { get; init; }

    /// <summary>Inlet at which it was set; needed where a supply effect is given.</summary>
    public GaugePressure? SetAtInlet { get; init; }

    /// <summary>Fall of the outlet at <see cref="DroopFlow"/>; 0 to 50 bar, 0 unless given.</summary>
    public Pressure Droop { get; init; }

    /// <summary>Flow at which the outlet has fallen by <see cref="Droop"/>; needed where a droop is given.</summary>
    public MassFlow? DroopFlow { get; init; }

    /// <summary>By how much the outlet may creep up behind a shut valve; not known unless given.</summary>
    public Pressure? Creep { get; init; }

    /// <summary>Pressure at which its own relief holds the outlet; none unless given.</summary>
    public GaugePressure? RelievesAt { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(Set, $"set pressure of the {Name}",
                "It is gauge, above the air outside."),
            new ValidRange<double>(0, 0.2).Find(SupplyEffect, $"supply effect of the {Name}", "One stage has about 0.01."),
            new ValidRange<Pressure>(0.Bar(), 50.Bar()).Find(Droop.ToUnit(UnitsNet.Units.PressureUnit.Bar), $"droop of the {Name}",
                "Some bar at full flow are usual."),
            SupplyEffect > 0 && SetAtInlet is null ? FillingFindings.SupplyEffectNeedsInlet(Name) : null,
            Droop > Pressure.Zero && !(DroopFlow > MassFlow.Zero) ? FillingFindings.DroopNeedsFlow(Name) : null,
        }.OfType<Finding>().ToList();

    /// <summary>Outlet at an inlet and a flow. Source: as the type.</summary>
    /// <param name="inlet">Inlet; 0 to 300 bar gauge.</param>
    /// <param name="flow">Flow; 0 or above, 0 where nothing flows.</param>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public GaugePressure OutletAt(GaugePressure inlet, MassFlow flow)
    {
        InvalidDesignException.ThrowIfAny("Regulator", Validate());
        var outletPa = LockUp(inlet).Pascals - (DroopFlow is { } full ? Droop.Pascals * (flow / full) : 0);
        return GaugePressure.FromPascals(Math.Min(outletPa, inlet.Pascals));
    }

    internal override IRestrictor? Narrowest => null;

    /// <summary>Outlet at no flow.</summary>
    internal GaugePressure LockUp(GaugePressure inlet) =>
        GaugePressure.FromPascals(Set.Pascals + SupplyEffect * ((SetAtInlet ?? inlet).Pascals - inlet.Pascals));

    /// <summary>The most that may stand behind it while it works: the cylinder run empty, and crept up.</summary>
    internal GaugePressure Most
    {
        get
        {
            var most = LockUp(GaugePressure.Zero) + (Creep ?? Pressure.Zero);
            return RelievesAt is { } held && held < most ? held : most;
        }
    }
}
