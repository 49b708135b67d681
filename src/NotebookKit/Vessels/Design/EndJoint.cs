using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>What holds a closure in the vessel against the pressure's thrust on it.</summary>
public abstract record EndJoint
{
    /// <summary>What it is called in results.</summary>
    public abstract string Name { get; }

    /// <summary>How far it reaches past the straight part of the vessel, and the wall with it.</summary>
    public virtual Length Reach => Length.FromMillimeters(0);

    /// <summary>All that is wrong with it.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public abstract IReadOnlyList<Finding> Validate(Length bore);
}
