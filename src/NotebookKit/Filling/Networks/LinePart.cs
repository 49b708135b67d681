using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>A part of the line between two places of a network.</summary>
/// <param name="Name">What it is called: "hose", "check valve".</param>
public abstract record LinePart(string Name)
{
    /// <summary>Pressure that its maker or a test rates it to; none where that isn't given.</summary>
    public GaugePressure? RatedTo { get; init; }

    /// <summary>Day of its last proof or test; none where that isn't given.</summary>
    public DateOnly? ProvedOn { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public abstract IReadOnlyList<Finding> Validate();

    /// <summary>What the gas has to squeeze through in it; none where the part doesn't narrow the line.</summary>
    internal abstract IRestrictor? Narrowest { get; }
}
