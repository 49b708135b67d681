namespace NotebookKit.Aerodynamics.Fins;

/// <summary>A part of a fin between two spanwise stations with straight leading and trailing edges; all lengths [m].</summary>
internal readonly record struct FinStrip(double InnerM, double OuterM, double LeadInnerM, double LeadOuterM, double ChordInnerM, double ChordOuterM)
{
    public double WidthM => OuterM - InnerM;

    public double AreaM2 => WidthM * (ChordInnerM + ChordOuterM) / 2;
}
