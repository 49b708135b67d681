using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>Roll of a finned body.</summary>
public static class BodyRoll
{
    /// <summary>
    /// Roll forcing and damping of all fin sets together. Source: J. S. Barrowman, M.S. thesis, 1967, strip theory (unverified).
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="InvalidDesignException">The body can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the model.</exception>
    public static RollDerivatives Roll(this FinnedBody body, double mach = 0)
    {
        Ranges.CheckMach(mach);
        InvalidDesignException.ThrowIfAny($"Body of {body.Name}", body.Validate());
        double forcing = 0, damping = 0, twoDimensional = 0;
        foreach (var fins in body.Fins)
        {
            var fin = fins.Planform.Integrals;
            var radius = body.RadiusUnderM(fins);
            var panel = NormalForceModel.PanelSlope(fin, body.ReferenceM2, mach);
            var second = FinIntegrals.SecondMoment(fins.Planform.Strips,
                radius) * fins.Count / (body.ReferenceM2 * body.ReferenceM * body.ReferenceM);
            forcing += fins.Count * panel * (fin.MeanChordOutM + radius) / body.ReferenceM;
            damping -= 2 * panel * body.ReferenceM2 / fin.AreaM2 * second;
            twoDimensional -= 2 * 2 * Math.PI * second;
        }

        return new RollDerivatives(forcing, damping, twoDimensional);
    }
}
