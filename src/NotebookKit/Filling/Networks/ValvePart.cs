using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A valve that somebody opens and shuts: at times, or until a gauge reads so much.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Passage">What the gas has to squeeze through while it is open.</param>
public sealed record ValvePart(string Name, IRestrictor Passage) : LinePart(Name)
{
    /// <summary>When it is open, in rising order; open throughout where none is given.</summary>
    public IReadOnlyList<ValveOpening> Openings { get; init; } = [];

    /// <summary>Pressure at which it is shut for good; never by pressure unless given.</summary>
    public GaugePressure? ShutsAt { get; init; }

    /// <summary>Vessel whose gauge <see cref="ShutsAt"/> is read on; the link's own end unless given.</summary>
    public string? Watches { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Passage.Validate()];
        var last = Duration.Zero;
        foreach (var opening in Openings)
        {
            if (opening.From < last || opening.To <= opening.From) findings.Add(FillingFindings.OpeningsOutOfOrder(Name));
            last = opening.To;
        }

        return findings;
    }

    internal override IRestrictor Narrowest => Passage;

    internal bool IsOpenAt(double seconds)
    {
        if (Openings.Count == 0) return true;
        foreach (var opening in Openings)
        {
            if (seconds >= opening.From.Seconds - 1e-12 && seconds < opening.To.Seconds - 1e-12) return true;
        }

        return false;
    }
}

/// <summary>One opening of a valve.</summary>
/// <param name="From">When it is opened; 0 or above.</param>
/// <param name="To">When it is shut; after it was opened.</param>
public sealed record ValveOpening(Duration From, Duration To);
