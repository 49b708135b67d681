using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Fins;

/// <summary>Equal fins spaced evenly round the body.</summary>
/// <param name="Count">Number of fins; 3 to 6.</param>
/// <param name="Planform">Outline of one fin outside the body.</param>
/// <param name="Thickness">Plate thickness; 0.1 to 50 mm and below a quarter of the root chord.</param>
/// <param name="LeadingEdgeAt">Root leading edge, aft of the nose tip; 0 to the body's length less the root.</param>
public sealed record FinSet(int Count, FinPlanform Planform, Length Thickness, Length LeadingEdgeAt)
{
    /// <summary>What the set is called in tables.</summary>
    public string Name { get; init; } = "Fins";

    /// <summary>Finish of the leading edge.</summary>
    public FinEdge LeadingEdge { get; init; } = FinEdge.Rounded;

    /// <summary>Finish of the trailing edge.</summary>
    public FinEdge TrailingEdge { get; init; } = FinEdge.Square;

    /// <summary>Angle of every fin to the body axis, all the same way round; −5 to 5°.</summary>
    public Angle Cant { get; init; } = Angle.Zero;

    /// <summary>Fins with straight edges and a tip parallel to the body.</summary>
    /// <param name="count">Number of fins; 3 to 6.</param>
    /// <param name="root">Chord at the body; 1 mm to 2 m.</param>
    /// <param name="tip">Chord at the tip; 0 to 2 m.</param>
    /// <param name="span">Body surface to tip; 1 mm to 2 m.</param>
    /// <param name="sweep">How far the tip leading edge lies aft of the root leading edge; any, negative where it lies forward.</param>
    /// <param name="thickness">Plate thickness; 0.1 to 50 mm.</param>
    /// <param name="leadingEdgeAt">Root leading edge, aft of the nose tip; 0 to the body's length less the root.</param>
    public static FinSet Trapezoidal(int count, Length root, Length tip, Length span, Length sweep, Length thickness,
        Length leadingEdgeAt) =>
        new(count, new TrapezoidPlanform(root, tip, span, sweep), thickness, leadingEdgeAt);

    /// <summary>The same set with its span stretched.</summary>
    /// <param name="factor">Factor on the span [-]; above 0.</param>
    public FinSet WithSpanTimes(double factor) => this with { Planform = Planform.Stretched(factor) };

    /// <summary>Everything that is wrong with the set by itself.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>(Planform.Validate());
        if (Count is < 3 or > 6)
            findings.Add(AerodynamicsFindings.FinCountOutOfRange(Count));
        findings.AddIf(Ranges.Thickness.Find(Thickness, "fin thickness", "Measure the bare plate."));
        findings.AddIf(new ValidRange<Angle>((-5).Degrees(), 5.Degrees()).Find(Cant, "fin cant",
            "The roll model is linear in cant; a larger angle stalls the fins."));
        if (findings.Count == 0 && Thickness > Planform.RootLength / 4)
            findings.Add(AerodynamicsFindings.FinThicknessOutOfRange(Thickness, Planform.RootLength));
        return findings;
    }
}

/// <summary>How the edge of a fin is finished.</summary>
public enum FinEdge
{
    /// <summary>Left square, as sawn.</summary>
    Square,

    /// <summary>Rounded over the whole thickness.</summary>
    Rounded,

    /// <summary>Tapered to an edge.</summary>
    Sharp,
}
