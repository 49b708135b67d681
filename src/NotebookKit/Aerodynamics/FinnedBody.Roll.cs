using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics;

public sealed partial record FinnedBody
{
    /// <summary>
    /// Roll forcing and damping of all fin sets together. Source: J. S. Barrowman, M.S. thesis, 1967, strip theory (from memory).
    /// </summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="InvalidDesignException">The body can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the model.</exception>
    public RollDerivatives Roll(double mach = 0)
    {
        Ranges.CheckMach(mach);
        InvalidDesignException.ThrowIfAny($"Body of {Name}", Validate());
        double forcing = 0, damping = 0, twoDimensional = 0;
        foreach (var fins in Fins)
        {
            var fin = fins.Planform.Integrals;
            var radius = RadiusUnderM(fins);
            var panel = NormalForceModel.PanelSlope(fin, ReferenceM2, mach);
            var second = FinIntegrals.SecondMoment(fins.Planform.Strips, radius) * fins.Count / (ReferenceM2 * ReferenceM * ReferenceM);
            forcing += fins.Count * panel * (fin.MeanChordOutM + radius) / ReferenceM;
            damping -= 2 * panel * ReferenceM2 / fin.AreaM2 * second;
            twoDimensional -= 2 * 2 * Math.PI * second;
        }

        return new RollDerivatives(forcing, damping, twoDimensional);
    }
}
