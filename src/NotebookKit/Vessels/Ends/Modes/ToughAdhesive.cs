using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>An adhesive's shear curve as two straight lines: elastic up to its yield, then level until it tears.</summary>
/// <param name="YieldShear">Shear at which it yields, τp; 0.1 to 5000 MPa.</param>
/// <param name="ElasticStrain">Shear strain at yield, γe; 0.01 to 100 %.</param>
/// <param name="PlasticStrain">Further shear strain until it tears, γp; 0 to 300 %, 0 for a brittle one.</param>
/// <param name="BondLine">Thickness of the layer, η; 0.01 to 5 mm.</param>
/// <remarks>Source: Hart-Smith, NASA CR-112235, 1973 (unverified).</remarks>
public sealed record ToughAdhesive(Pressure YieldShear, Ratio ElasticStrain, Ratio PlasticStrain, Length BondLine)
{
    /// <summary>Shear modulus, τp/γe. Source: the curve's first line.</summary>
    public Pressure ShearModulus => YieldShear / ElasticStrain.DecimalFractions;

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        ModeInput.Stresses.Find(YieldShear, "shear at which the adhesive yields", "Structural epoxies are 20 to 45 MPa."),
        new ValidRange<Ratio>(0.01.Percent(), 100.Percent())
            .Find(ElasticStrain, "elastic shear strain of the adhesive", "Structural epoxies are 2 to 8 %."),
        new ValidRange<Ratio>(0.Percent(), 300.Percent())
            .Find(PlasticStrain, "plastic shear strain of the adhesive", "Give 0 for a brittle one."),
        new ValidRange<Length>(0.01.Millimetres(), 5.Millimetres()).Find(BondLine, "bond line", "0.1 to 0.5 mm is usual."));
}
