using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>What a fin is cut from.</summary>
/// <param name="Name">What it is.</param>
/// <param name="ShearModulus">Shear modulus that twisting sees; 0.1 to 100 GPa. A layup's torsion modulus, or measured.</param>
/// <param name="FlexuralStrength">Bending stress at which it breaks, across the fin root; 1 to 3000 MPa.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record FinSheet(string Name, Pressure ShearModulus, Pressure FlexuralStrength, Source Source)
{
    internal static readonly ValidRange<Pressure> ShearModuli = new(Pressure.FromGigapascals(0.1), Pressure.FromGigapascals(100));

    /// <summary>Everything that is wrong with the sheet.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(ShearModuli.Find(ShearModulus, $"{Name}: shear modulus", "5 GPa for a 0/90 carbon sheet, 30 GPa for ±45 cloth."));
        findings.AddIf(new ValidRange<Pressure>(Pressure.FromMegapascals(1), Pressure.FromMegapascals(3000))
            .Find(FlexuralStrength, $"{Name}: flexural strength", "Bend a strip to failure."));
        return findings;
    }
}
