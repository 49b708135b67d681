using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Fins;

/// <summary>The outline of one fin outside the body.</summary>
public abstract record FinPlanform
{
    private protected FinPlanform()
    {
    }

    /// <summary>Area of one face.</summary>
    public Area Area => Area.FromSquareMeters(Integrals.AreaM2);

    /// <summary>Mean aerodynamic chord, ∫ c² dy / area.</summary>
    public Length MeanChord => Length.FromMeters(Integrals.MeanChordM);

    /// <summary>Chord at the body.</summary>
    public Length RootLength => Length.FromMeters(Strips[0].ChordInnerM);

    /// <summary>Body surface to tip.</summary>
    public Length Reach => Length.FromMeters(Integrals.SpanM);

    /// <summary>Corners of the outline in order: root leading edge, along the leading edge to the tip, back to the root trailing
    /// edge.</summary>
    public abstract IReadOnlyList<PlanformPoint> Corners { get; }

    internal abstract IReadOnlyList<FinStrip> Strips { get; }

    internal double LongestChordM => Strips.Max(s => Math.Max(s.ChordInnerM, s.ChordOuterM));

    internal FinIntegrals Integrals => FinIntegrals.Of(Strips);

    /// <summary>The same shape, larger or smaller in both directions.</summary>
    /// <param name="factor">Factor on every length [-]; above 0.</param>
    public abstract FinPlanform Scaled(double factor);

    /// <summary>The same shape stretched along the span alone.</summary>
    /// <param name="factor">Factor on the span [-]; above 0.</param>
    public abstract FinPlanform Stretched(double factor);

    /// <summary>Everything that is wrong with the outline.</summary>
    public abstract IReadOnlyList<Finding> Validate();
}

/// <summary>A part of a fin between two spanwise stations with straight leading and trailing edges; all lengths [m].</summary>
internal readonly record struct FinStrip(double InnerM, double OuterM, double LeadInnerM, double LeadOuterM, double ChordInnerM,
    double ChordOuterM)
{
    public double WidthM => OuterM - InnerM;

    public double AreaM2 => WidthM * (ChordInnerM + ChordOuterM) / 2;
}

/// <summary>A corner of a fin's outline.</summary>
/// <param name="Aft">Distance aft of the root leading edge; any finite value.</param>
/// <param name="Out">Distance out from the body surface; 0 or above.</param>
public readonly record struct PlanformPoint(Length Aft, Length Out);
