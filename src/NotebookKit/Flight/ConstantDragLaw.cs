namespace NotebookKit.Flight;

/// <summary>One coefficient for all speeds.</summary>
internal readonly struct ConstantDragLaw(double coefficient) : IDragLaw
{
    public bool NeedsMach => false;

    public double Coefficient(double mach, bool jetOn) => coefficient;
}
