using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Built;

/// <summary>Turns a design into the vessel that was built. Source: <see cref="AsBuilt"/>.</summary>
public static class AsBuiltVerbs
{
    /// <summary>What the scale and the calliper say of a vessel: fibre share, voids, resin, thickness; and the vessel as built, for every
    /// later answer. Source: see the result's model card.</summary>
    /// <param name="vessel">The vessel as designed.</param>
    /// <param name="readings">What was weighed and measured.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid, a reading is out of range, or the readings don't add up; all
    /// reasons are in it.</exception>
    public static AsBuilt AsBuilt(this PressureVessel vessel, AsBuiltReadings readings)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        ArgumentNullException.ThrowIfNull(readings);
        return AsBuiltModel.Of(vessel, readings);
    }
}
