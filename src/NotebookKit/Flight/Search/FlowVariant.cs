using NotebookKit.Flight.Vertical;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Search;

/// <summary>One vehicle flown with one way of describing water and gas.</summary>
/// <param name="Name">What differs from the default.</param>
/// <param name="Flow">The equations.</param>
/// <param name="Flight">The flight; none where the vehicle is outside what the equations hold for.</param>
/// <param name="Refused">Why there is no flight; empty where there is one.</param>
public sealed record FlowVariant(string Name, FlowModel Flow, VerticalFlightResult? Flight, string Refused)
{
    internal static FlowVariant Of(VerticalFlight flight, string name, FlowModel flow)
    {
        var own = flight with { Flow = flow };
        var wrong = own.Validate().FirstOrDefault(f => f.Severity == FindingSeverity.Error);
        return wrong is null ? new(name, flow, own.Fly(), "") : new(name, flow, null, wrong.Message);
    }
}
