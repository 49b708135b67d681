using UnitsNet;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>What one part adds to the drag, as a band. Source: see <see cref="DragResult"/>.</summary>
/// <param name="Name">Part and kind.</param>
/// <param name="Low">Low end, on the reference area [-].</param>
/// <param name="High">High end, on the reference area [-].</param>
/// <param name="Share">Its part of the middle of the band; the shares add up to 100 %.</param>
public sealed record DragComponent(string Name, double Low, double High, Ratio Share)
{
    /// <summary>Middle of the band, on the reference area [-].</summary>
    public double Middle => (Low + High) / 2;
}
