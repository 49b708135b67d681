namespace NotebookKit.Flight.Vertical;

/// <summary>One coefficient for all speeds, with and without jet.</summary>
internal readonly struct ConstantDragLaw(double jetOn, double jetOff) : IDragLaw
{
    public bool NeedsMach => false;

    public double Coefficient(double mach, double pressurePa, double temperatureK, bool isJetOn) => isJetOn ? jetOn : jetOff;
}
