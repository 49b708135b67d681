using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>
/// Shear stiffness of a fin's sheet from its plies. Source: R. M. Jones, Mechanics of Composite Materials, classical laminate theory, Q̄66,
/// A66 and D66. Plates twist by D66, so the outer plies rule: a 0/90 face on a ±45 core is close to 0/90.
/// </summary>
/// <param name="Plies">Plies from one face to the other; 1 to 200.</param>
public sealed record SheetLayup(IReadOnlyList<SheetPly> Plies)
{
    /// <summary>Thickness of the sheet.</summary>
    public Length Thickness => Length.FromMeters(Plies.Sum(p => p.Thickness.Meters));

    /// <summary>Shear modulus in the plane, A66 / h. Source: Jones, ch. 4.</summary>
    /// <exception cref="InvalidDesignException">The layup can't be computed; carries all findings.</exception>
    public Pressure ShearModulus
    {
        get
        {
            InvalidDesignException.ThrowIfAny("Fin sheet", Validate());
            return Pressure.FromPascals(Plies.Sum(p => p.Q66 * p.Thickness.Meters) / Thickness.Meters);
        }
    }

    /// <summary>Shear modulus that twisting sees, 12 D66 / h³; the one for flutter and divergence. Source: Jones, ch. 4.</summary>
    /// <exception cref="InvalidDesignException">The layup can't be computed; carries all findings.</exception>
    public Pressure TorsionModulus
    {
        get
        {
            InvalidDesignException.ThrowIfAny("Fin sheet", Validate());
            var h = Thickness.Meters;
            var (sum, z) = (0.0, -h / 2);
            foreach (var ply in Plies)
            {
                var top = z + ply.Thickness.Meters;
                sum += ply.Q66 * ((top * top * top) - (z * z * z)) / 3;
                z = top;
            }

            return Pressure.FromPascals(12 * sum / (h * h * h));
        }
    }

    /// <summary>Everything that is wrong with the layup.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Plies.Count is < 1 or > 200)
        {
            findings.Add(AerodynamicsFindings.SheetPlyCountOutOfRange(Plies.Count));
            return findings;
        }

        for (var i = 0; i < Plies.Count; i++)
        {
            var (ply, name) = (Plies[i], $"ply {i + 1}");
            findings.AddIf(Moduli(1, 1000).Find(ply.LongitudinalModulus, $"{name}: modulus along the fibre",
                "Carbon in epoxy is near 130 GPa, glass 40 GPa."));
            findings.AddIf(Moduli(0.5, 1000).Find(ply.TransverseModulus, $"{name}: modulus across the fibre",
                "A tenth of the other for unidirectional plies, equal for balanced cloth."));
            findings.AddIf(Moduli(0.2, 400).Find(ply.Shear, $"{name}: shear modulus", "Some 4 to 5 GPa in epoxy."));
            findings.AddIf(new ValidRange<double>(0, 0.6).Find(ply.PoissonRatio, $"{name}: Poisson's ratio",
                "0.3 for unidirectional plies, 0.05 for cloth."));
            findings.AddIf(new ValidRange<Angle>((-90).Degrees(), 90.Degrees()).Find(ply.Angle, $"{name}: angle",
                "Measure it from the span."));
            findings.AddIf(new ValidRange<Length>(0.01.Millimetres(), 20.Millimetres()).Find(ply.Thickness, $"{name}: thickness",
                "Give the cured thickness."));
        }

        return findings;
    }

    private static ValidRange<Pressure> Moduli(double fromGpa, double toGpa)
        => new(Pressure.FromGigapascals(fromGpa), Pressure.FromGigapascals(toGpa));
}
