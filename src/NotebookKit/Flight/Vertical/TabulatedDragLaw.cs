using NotebookKit.Aerodynamics.Drag;

namespace NotebookKit.Flight.Vertical;

/// <summary>
/// Coefficients by table. Beyond the table's last Mach number its end value is held, so that a trial step may overshoot; a flight that
/// really gets there is refused when it is over.
/// </summary>
internal readonly struct TabulatedDragLaw(DragCurve jetOn, DragCurve jetOff) : IDragLaw
{
    public bool NeedsMach => true;

    public double Coefficient(double mach, double pressurePa, double temperatureK, bool isJetOn)
    {
        var size = Math.Abs(mach);
        return (isJetOn ? jetOn : jetOff).Coefficient(size < DragCurve.MaximumMach ? size : DragCurve.MaximumMach, pressurePa,
            temperatureK);
    }
}
