using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>A stack of plies by classical laminate theory: plane stress, plies bonded, straight normals.</summary>
/// <param name="Plies">Plies from the first face on; z runs the same way, from the middle of the stack.</param>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, ch. 4; Jones, Mechanics of Composite Materials, 2nd ed. 1999, ch.
/// 4.</remarks>
public sealed record Laminate(IReadOnlyList<LaminatePly> Plies)
{
    /// <summary>Total thickness.</summary>
    public Length Thickness => Length.FromMeters(Plies.Sum(p => p.Thickness.Meters));

    /// <summary>All that is wrong with the stack.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Plies.Count == 0) findings.Add(VesselsFindings.LaminateHasNoPly());
        for (var i = 0; i < Plies.Count; i++)
        {
            var ply = Plies[i];
            if (new ValidRange<Length>(1.Micrometres(), 100.Millimetres()).Find(ply.Thickness, $"thickness of ply {i + 1}",
                "A wetted ply is 0.1 to 1 mm.") is { } thickness)
                findings.Add(thickness);
            if (new ValidRange<Angle>((-90).Degrees(), 90.Degrees()).Find(ply.Angle, $"angle of ply {i + 1}", "Measure it from the axis.")
                is { } angle)
                findings.Add(angle);
            if (!ply.Lamina.IsSound) findings.Add(VesselsFindings.PlyStiffnessRefused(i + 1, ply.Lamina.ToString()));
        }

        return findings;
    }

    /// <summary>Extension, coupling and bending stiffness. Source: Kaw 2006, Eq. 4.28.</summary>
    /// <exception cref="InvalidDesignException">The stack isn't valid.</exception>
    public LaminateStiffness Stiffness()
    {
        InvalidDesignException.ThrowIfAny("Laminate", Validate());
        PlaneStiffness a = default, b = default, d = default;
        var z = -Thickness.Meters / 2;
        foreach (var ply in Plies)
        {
            var q = PlaneStiffness.Of(ply.Lamina).Rotated(ply.Angle.Radians);
            var next = z + ply.Thickness.Meters;
            a += q * (next - z);
            b += q * ((next * next - z * z) / 2);
            d += q * ((next * next * next - z * z * z) / 3);
            z = next;
        }

        return new LaminateStiffness(a, b, d, Thickness.Meters);
    }

    /// <summary>Strain, curvatures and the stresses of every ply under forces and moments. Source: Kaw 2006, Eq. 4.29.</summary>
    /// <param name="load">Forces and moments a width; what isn't given is none.</param>
    /// <exception cref="InvalidDesignException">The stack isn't valid.</exception>
    public LaminateResponse Under(LaminateLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return LaminateResponse.Of(this, load);
    }

    /// <summary>In-plane moduli of the whole stack, no bending allowed, as in the wall of a tube. Source: Kaw 2006, §4.4; Jones 1999, ch.
    /// 4.</summary>
    /// <exception cref="InvalidDesignException">The stack isn't valid.</exception>
    public OffAxisConstants Constants()
    {
        var stiffness = Stiffness();
        var compliance = (stiffness.InPlane * (1 / Thickness.Meters)).Inverse();
        return OffAxisConstants.Of(compliance, Plies[0].Lamina.Longitudinal.Pascals);
    }
}

/// <summary>One ply of a laminate.</summary>
/// <param name="Lamina">Its stiffness.</param>
/// <param name="Angle">Angle of its fibres from the x axis; −90° to 90°.</param>
/// <param name="Thickness">Cured thickness; above 0.</param>
public sealed record LaminatePly(Lamina Lamina, Angle Angle, Length Thickness);
