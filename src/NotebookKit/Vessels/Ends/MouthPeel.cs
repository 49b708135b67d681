using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// Pull across a plug's bond at its mouth, where the free wall grows and the bonded one can't: σ = p·(√(1 + s) − 1), s the free wall's
/// growth a pressure over the give of adhesive and liner. The bond lets go where that comes to what the same adhesive bore in its
/// lap-shear coupon.
/// </summary>
/// <remarks>
/// The wall is a beam on an elastic foundation: its own hoop stiffness and, over the plug, where nothing presses on it, the adhesive's as
/// well. Its bending stiffness drops out. The plug is rigid and the overlap long, which errs low. A flat lap's moment (Goland and Reissner)
/// isn't the tube's, whose hoop stiffness holds its mouth round, but it is the coupon's. Source: Hetényi, Beams on Elastic Foundation, 1946
/// (unverified; worked out here); the coupon, Goland and Reissner, J. Appl. Mech. 11, 1944. Poisson's ratio of the adhesive, 0.35, is
/// common practice, no source.
/// </remarks>
internal static class MouthPeel
{
    public const string Formula = @"p = \frac{\sigma_{coupon}}{\sqrt{1+s}-1},\ s = \frac{\delta/p}{h/E_a + t_l/E_l}";

    private const double AdhesivePoisson = 0.35;
    private const double CouponModulus = 70e9, CouponPoisson = 0.33, CouponSheet = 1.6e-3, CouponOverlap = 12.7e-3, CouponLine = 0.2e-3;

    /// <summary>Pull across the bond's mouth over the pressure [-].</summary>
    public static double OverPressure(BondedPlug plug, in EndContext context)
    {
        var give = plug.BondLine.Meters / Modulus(plug) + context.LinerGive;
        return OverPressure(context.GrowthPerPascal / give);
    }

    /// <summary>The same for the free wall's growth over the give of what bonds it [-].</summary>
    public static double OverPressure(double growthOverGive) => growthOverGive / (1 + Math.Sqrt(1 + growthOverGive));

    /// <summary>Pull across the adhesive that its coupon bore when it failed in lap shear [Pa].</summary>
    public static double CouponPascals(BondedPlug plug) => LapJoint.Peel(plug.CouponStrength.Value.Pascals * CouponOverlap, CouponSheet,
        CouponOverlap / 2, CouponModulus, CouponPoisson, Modulus(plug), CouponLine);

    /// <summary>Pressure at which the mouth peels [Pa]; infinite where the wall doesn't grow.</summary>
    public static double FailurePascals(BondedPlug plug, in EndContext context) => CouponPascals(plug) / OverPressure(plug, context);

    private static double Modulus(BondedPlug plug) => 2 * (1 + AdhesivePoisson) * plug.Adhesive.ShearModulus.Value.Pascals;
}
