using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>
/// A vehicle's shape, its masses and its vessel together: what stability and motion need.
/// Source: J. S. Barrowman, M.S. thesis, 1967, for the forces; parallel-axis theorem for the masses.
/// </summary>
/// <param name="Body">The outside, as the air sees it.</param>
/// <param name="MassBudget">The parts, empty of water and gas.</param>
/// <param name="Chamber">The vessel's inside.</param>
public sealed record Airframe(FinnedBody Body, MassBudget MassBudget, WaterChamber Chamber)
{
    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>([.. Body.Validate(), .. MassBudget.Validate(), .. Chamber.Validate()]);
        if (findings.Any(f => f.Severity == FindingSeverity.Error)) return findings;
        var tip = Chamber.NozzleEndAt - Chamber.InsideLength;
        if (Chamber.NozzleEndAt > Body.Length + 0.5.Metres() || tip < Length.Zero)
            findings.Add(FlightFindings.VesselLiesOutsideBody(tip, Chamber.NozzleEndAt, Body.Length));
        if (Chamber.Bore > Body.Parts.Max(p => p.DiameterAt(p.Length)))
            findings.Add(FlightFindings.VesselBoreWiderThanBody(Chamber.Bore));
        return findings;
    }

    internal MassState StateWith(double waterKg, double gasKg) => MassBudget.State().With(Chamber.Contents(waterKg, gasKg));

    /// <summary>The same with what is aboard held to what the vessel holds.</summary>
    internal MassState Loaded(Mass? water, Mass? gas)
    {
        var liquid = new ValidRange<Mass>(Mass.Zero, Chamber.Water(100.Percent())).Check(water ?? Mass.Zero, "water aboard",
            "The vessel holds no more.");
        var vapour = new ValidRange<Mass>(Mass.Zero, 10.Kilograms()).Check(gas ?? Mass.Zero, "gas aboard",
            "It is the vessel's volume times the density of the gas.");
        return StateWith(liquid.Kilograms, vapour.Kilograms);
    }
}
