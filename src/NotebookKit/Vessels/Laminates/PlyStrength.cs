using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Strength of one unidirectional ply in its own axes.</summary>
/// <param name="LongitudinalTension">Tension along the fibres, Xt; above 0.</param>
/// <param name="LongitudinalCompression">Compression along the fibres, Xc; above 0.</param>
/// <param name="TransverseTension">Tension across the fibres, Yt; above 0.</param>
/// <param name="TransverseCompression">Compression across the fibres, Yc; above 0.</param>
/// <param name="Shear">In-plane shear, S; above 0.</param>
public sealed record PlyStrength(Pressure LongitudinalTension, Pressure LongitudinalCompression, Pressure TransverseTension,
    Pressure TransverseCompression, Pressure Shear)
{
    /// <summary>How many times a stress may grow before the ply fails [-].</summary>
    /// <param name="stress">Stress in the ply's own axes; not all 0.</param>
    /// <param name="criterion">Failure criterion.</param>
    /// <remarks>Source: as each member of <see cref="FailureCriterion"/> names.</remarks>
    public double Reserve(PlyStress stress, FailureCriterion criterion)
    {
        ArgumentNullException.ThrowIfNull(stress);
        var strength = StrengthPascals.Of(this);
        return 1 / Utilisation.Of(criterion, strength, stress.Longitudinal.Pascals, stress.Transverse.Pascals, stress.Shear.Pascals,
            matrixIntact: true).Value;
    }

    /// <summary>For example "Xt 1 370 MPa, Xc 822 MPa, Yt 53 MPa, Yc 84 MPa, S 40 MPa".</summary>
    public override string ToString() =>
        $"Xt {Text(LongitudinalTension)}, Xc {Text(LongitudinalCompression)}, Yt {Text(TransverseTension)}, Yc "
            + $"{Text(TransverseCompression)}, S {Text(Shear)}";

    private static string Text(Pressure stress) => stress.ToUnit(PressureUnit.Megapascal).Show();
}
