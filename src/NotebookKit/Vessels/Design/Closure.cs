using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>What closes an end of the vessel: a flat plate, a hemisphere, an ellipsoid.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its wall; 0.1 to 100 mm.</param>
/// <remarks>Source: geometry; what it holds is the floor above.</remarks>
public abstract record Closure(IsotropicMaterial Material, Length Wall)
{
    /// <summary>Hole through its middle: nozzle or filling port; 0 to below the bore.</summary>
    public Length Opening { get; init; } = 0.Millimetres();

    /// <summary>Whether it yields and goes on holding before it breaks, as ductile metal does; a plastic, a print or a laminate is taken
    /// to break where it first yields.</summary>
    public virtual bool IsDuctile => Material.IsMetal;

    /// <summary>What its shape is called.</summary>
    public abstract string Shape { get; }

    /// <summary>Volume it adds to the straight part of the vessel.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public abstract Volume VolumeInside(Length bore);

    /// <summary>Volume of its own material.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public abstract Volume Solid(Length bore);

    /// <summary>How far it stands out past the straight part, inside.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public abstract Length DepthInside(Length bore);

    /// <summary>Length of its surface from the equator to the middle, which a sleeve carried over it has to cover.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public abstract Length Meridian(Length bore);

    /// <summary>All that is wrong with it.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public virtual IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. Material.Validate()];
        if (new ValidRange<Length>(0.1.Millimetres(), 100.Millimetres()).Find(Wall, $"wall of the {Shape}",
            "Turned closures are 3 to 10 mm.") is { } wall) findings.Add(wall);
        if (new ValidRange<Length>(0.Millimetres(), bore * 0.95).Find(Opening, $"opening in the {Shape}",
            "A hole has to leave a rim inside the bore.") is { } opening) findings.Add(opening);
        return findings;
    }
}
