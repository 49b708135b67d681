using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Propulsion.Phases;

/// <summary>A stand that holds the vessel still.</summary>
internal readonly struct HeldMount(double ambientPa) : IMount
{
    public bool IsHeld => true;

    public double DryMassKg => 0;

    public double Gravity => StandardConstants.Gravity;

    public double Ambient(double heightM) => ambientPa;

    public double Surroundings(double heightM, double speed, bool jetOn, out double dragN)
    {
        dragN = 0;
        return ambientPa;
    }
}
