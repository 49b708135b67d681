using NotebookKit.Charts.Drawings;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Ends of a vessel in section, as assembled: <c>vessel.DrawNozzleEnd()</c>, <c>vessel.DrawForwardEnd()</c>.</summary>
public static class EndDrawings
{
    /// <summary>The nozzle end in section.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="throat">Throat of the nozzle, where it is drawn.</param>
    public static Drawing DrawNozzleEnd(this PressureVessel vessel, Length? throat = null)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        return EndDrawing.Draw($"Nozzle end, {vessel.Name}", vessel.NozzleEnd, vessel.Layup(), throat);
    }

    /// <summary>The forward end in section.</summary>
    /// <param name="vessel">The vessel.</param>
    public static Drawing DrawForwardEnd(this PressureVessel vessel)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        return EndDrawing.Draw($"Forward end, {vessel.Name}", vessel.ForwardEnd, vessel.Layup());
    }
}
