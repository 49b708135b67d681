using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Design;

/// <summary>A seal, and what it is known to hold. A pressure that isn't given is not assumed.</summary>
/// <param name="Kind">What seals.</param>
/// <remarks>Source: none; a seal's pressure comes from its maker or from a test.</remarks>
public sealed record Seal(SealKind Kind)
{
    /// <summary>Pressure that it is known to hold, by its maker or by a test; none where that isn't given. 0.5 to 2000 bar.</summary>
    public GaugePressure? HoldsTo { get; init; }

    /// <summary>What it is called in results.</summary>
    public string Name => Kind switch { SealKind.ORing => "O-ring", SealKind.Bonded => "bonded seal", _ => "sealing tape" };

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => HoldsTo is { } held && new ValidRange<GaugePressure>(0.5.BarGauge(), 2000.BarGauge())
        .Find(held, $"pressure that the {Name} holds", "Give what its maker or a test says, or leave it out.") is { } finding
            ? [finding] : [];
}

/// <summary>What keeps the water in between two parts.</summary>
public enum SealKind
{
    /// <summary>A ring of rubber in a groove.</summary>
    ORing,

    /// <summary>The adhesive that holds the parts together.</summary>
    Bonded,

    /// <summary>Tape wound round a thread.</summary>
    Tape,
}
