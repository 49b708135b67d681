using NotebookKit.Provenance;
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
    /// <exception cref="OutOfRangeException">A strength isn't above 0, or a stress is beyond every material's.</exception>
    public double Reserve(PlyStress stress, FailureCriterion criterion)
    {
        ArgumentNullException.ThrowIfNull(stress);
        foreach (var (value, name) in new[] { (LongitudinalTension, "longitudinal tension"),
            (LongitudinalCompression, "longitudinal compression"), (TransverseTension, "transverse tension"),
            (TransverseCompression, "transverse compression"), (Shear, "shear") })
            Allowed.Check(value, $"strength in {name}", "Give every strength as a positive number.");
        foreach (var value in new[] { stress.Longitudinal, stress.Transverse, stress.Shear })
            Stresses.Check(value, "stress of the ply", "Check the load and its unit.");
        var strength = StrengthPascals.Of(this);
        return 1 / Utilisation.Of(criterion, strength, stress.Longitudinal.Pascals, stress.Transverse.Pascals, stress.Shear.Pascals,
            matrixIntact: true).Value;
    }

    /// <summary>For example "Xt 1 370 MPa, Xc 822 MPa, Yt 53 MPa, Yc 84 MPa, S 40 MPa".</summary>
    public override string ToString() =>
        $"Xt {Text(LongitudinalTension)}, Xc {Text(LongitudinalCompression)}, Yt {Text(TransverseTension)}, Yc "
            + $"{Text(TransverseCompression)}, S {Text(Shear)}";

    /// <summary>Whether every strength is one: 1 Pa to 10 000 GPa.</summary>
    internal bool IsSound => Allowed.Contains(LongitudinalTension) && Allowed.Contains(LongitudinalCompression)
        && Allowed.Contains(TransverseTension) && Allowed.Contains(TransverseCompression) && Allowed.Contains(Shear);

    private static string Text(Pressure stress) => stress.Show(PressureUnit.Megapascal);

    private static ValidRange<Pressure> Allowed => new(1.Pascals(), 10_000.Gigapascals());

    private static ValidRange<Pressure> Stresses => new((-1e6).Gigapascals(), 1e6.Gigapascals());
}
