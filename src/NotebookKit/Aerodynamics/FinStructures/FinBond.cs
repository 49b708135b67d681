using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>Two adhesive fillets along a fin root.</summary>
/// <param name="FilletLeg">Leg of the fillet along fin and body, about its radius; 1 to 50 mm.</param>
/// <param name="Strength">Stress that the adhesive's weakest surface takes, in shear or peel; 0.5 to 60 MPa.</param>
/// <param name="Source">Where the strength comes from.</param>
public sealed record FinBond(Length FilletLeg, Pressure Strength, Source Source)
{
    /// <summary>Everything that is wrong with the bond.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(new ValidRange<Length>(1.Millimetres(), 50.Millimetres()).Find(FilletLeg, "fillet leg",
            "A tenth of the root chord is usual."));
        findings.AddIf(new ValidRange<Pressure>(Pressure.FromMegapascals(0.5), Pressure.FromMegapascals(60)).Find(Strength,
            "adhesive strength", "Filled epoxy on sanded laminate holds some 10 to 20 MPa; pull a sample."));
        return findings;
    }
}
