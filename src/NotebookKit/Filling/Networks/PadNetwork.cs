using NotebookKit.Filling.Balances;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>The pad as a system: cylinders, junctions, vessels and the air outside, joined by lines of parts; any tree of them.</summary>
/// <remarks>
/// Gas in every cylinder and vessel is mixed at every instant; lines and junctions hold none. Water stands still below a port above it and
/// moves first through a port under it, through the same parts. The last thousandth of the pressure ahead is passed in proportion to the
/// drop. Source: energy and mass balance of open systems (Y. A. Cengel, M. A. Boles, Thermodynamics, 2006, unverified) with each part's own
/// flow law; water by Torricelli and Bernoulli.
/// </remarks>
public sealed record PadNetwork
{
    private static readonly ValidRange<Duration> Durations = new(0.1.Seconds(), 2.Hours());

    /// <summary>Cylinders, supplies, junctions, vessels, and the outside where something opens to it.</summary>
    public required IReadOnlyList<PadNode> Nodes { get; init; }

    /// <summary>The lines between them.</summary>
    public required IReadOnlyList<PadLink> Links { get; init; }

    /// <summary>Temperature of everything at the start and of the surroundings; −20 °C to 50 °C.</summary>
    public Temperature Temperature { get; init; } = 20.Celsius();

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>By which law it is computed.</summary>
    public GasProperties Properties { get; init; }

    /// <summary>Error allowed per step over each unknown [-]; 1e-12 to 1e-4, 1e-7 unless given.</summary>
    public double Tolerance { get; init; } = 1e-7;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => NetworkChecks.Of(this);

    /// <summary>Runs the network for a time, from everything as it stands. Source: as the type.</summary>
    /// <param name="duration">How long it is watched; 0.1 s to 2 hours.</param>
    /// <exception cref="InvalidDesignException">Something in the design is refused; all reasons are in it.</exception>
    /// <exception cref="OutOfRangeException">The duration is outside.</exception>
    public PadNetworkResult Fill(Duration duration)
    {
        Durations.Check(duration, "time that the network is watched", "Valves are worked within minutes.");
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Network of the pad", findings);
        return new PadNetworkResult(this, new NetworkModel(this), duration.Seconds, findings);
    }
}
