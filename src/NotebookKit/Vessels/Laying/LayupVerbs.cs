using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Laying;

/// <summary>Lays the plies of a vessel. Source: <see cref="Layup"/>.</summary>
public static class LayupVerbs
{
    /// <summary>What the plies come to on this diameter: angles, thickness, cut lengths, masses. Source: see the result's model
    /// card.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    public static Layup Layup(this PressureVessel vessel)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        var findings = vessel.Validate();
        InvalidDesignException.ThrowIfAny(vessel.Name, findings);
        return LayupModel.Lay(vessel, findings);
    }
}
