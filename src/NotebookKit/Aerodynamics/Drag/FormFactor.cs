using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Factors from flat-plate friction to profile drag. Source: S. F. Hoerner, 1965; J. S. Barrowman, 1967; USAF DATCOM (unverified).
/// </summary>
public static class FormFactor
{
    /// <summary>Factor on the friction of a body of revolution [-].</summary>
    /// <param name="fineness">Length over diameter [-]; 2 to 150.</param>
    /// <param name="law">Which published form.</param>
    /// <exception cref="OutOfRangeException">The fineness is outside.</exception>
    public static double Body(double fineness, FormFactorLaw law = FormFactorLaw.Barrowman)
    {
        new ValidRange<double>(2, 150).Check(fineness, "body fineness (length over diameter)", "The form factors are for slender bodies.");
        return law switch
        {
            FormFactorLaw.Hoerner => 1 + (1.5 * Math.Pow(fineness, -1.5)) + (7 * Math.Pow(fineness, -3)),
            FormFactorLaw.Datcom => 1 + (60 * Math.Pow(fineness, -3)) + (0.0025 * fineness),
            _ => 1 + (0.5 / fineness),
        };
    }

    /// <summary>Factor on the friction of a plate fin, 1 + 2 t / c [-]. Source: S. F. Hoerner, 1965, ch. VI (unverified).</summary>
    /// <param name="thicknessToChord">Thickness over chord [-]; 0 to 0.25.</param>
    /// <exception cref="OutOfRangeException">The ratio is outside.</exception>
    public static double Plate(double thicknessToChord) =>
        1 + (2 * new ValidRange<double>(0, 0.25).Check(thicknessToChord, "fin thickness over chord", "The factor is for thin plates."));
}
