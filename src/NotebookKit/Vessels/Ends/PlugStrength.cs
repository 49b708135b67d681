using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// What a bonded plug holds. It lets go when the shear at the end of the overlap comes to what the same adhesive reached in its
/// coupon test, so twice the overlap isn't twice the strength. A short overlap or a thick bond line shears more evenly than the coupon did;
/// that is never counted, and the mean shear at failure stays at the coupon's or below.
/// </summary>
/// <remarks>
/// Source: shear lag, Volkersen, Luftfahrtforschung 15, 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009; coupon
/// after ASTM D1002 (1.6 mm aluminium, 12.7 mm overlap). A fillet is never counted. Not modelled: the wall growing past a stiff plug, which
/// peels the
/// bond open at its mouth, and the bond of liner to plies, which lies in series with the plug's.
/// </remarks>
internal static class PlugStrength
{
    public static string Cause(BondedPlug plug) =>
        $"shear at the end of the bond on {Words(plug.Adhesive.On(plug.VesselSurface).Value <= plug.Adhesive.On(plug.PlugSurface).Value ?
            plug.VesselSurface : plug.PlugSurface)}";

    public static double FailurePascals(BondedPlug plug, in EndContext context) =>
        context.BondFactor * plug.CouponStrength.Value.Pascals * Evenness(plug, context) * 4 * plug.Overlap.Meters / context.Bore;

    public static IEnumerable<WorkingStep> Work(BondedPlug plug, EndContext context)
    {
        var peak = PeakRatio(plug, context);
        var pressure = GaugePressure.FromPascals(FailurePascals(plug, context));
        yield return new WorkingStep(
            "Bond of the plug: peak over mean shear", @"\frac{\tau_{max}}{\bar\tau} = \frac{\omega l}{2}\left(\coth\frac{\omega l}{2} + "
                + @"\left|\frac{E_1t_1-E_2t_2}{E_1t_1+E_2t_2}\right|\tanh\frac{\omega l}{2}\right)",
            $"wall E·t {Digits.Round(context.WallStiffness / 1e6)} MN/m, plug {Digits.Round(Stiffness(plug) / 1e6)} MN/m, overlap "
                + $"{plug.Overlap.Show()}, bond line {plug.BondLine.Show()}",
            Digits.Round(peak), VesselSources.ShearLag);
        yield return new WorkingStep(
            "Bond of the plug lets go", @"p = \frac{4\,l}{d}\,\tau_{coupon}\,\min\left(1,\ \frac{k_{coupon}}{\tau_{max}/\bar\tau}\right)",
            $"4 × {plug.Overlap.Show()} / {Digits.Round(1000 * context.Bore)} mm × {plug.CouponStrength.Value.Show()} × min(1, "
                + $"{Digits.Round(CouponRatio(plug))} / {Digits.Round(peak)})",
            pressure.ToString(), VesselSources.ShearLag);
    }

    private static double PeakRatio(BondedPlug plug, in EndContext context) => ShearLag.PeakOverMean(
        context.WallStiffness, Stiffness(plug),
        plug.Overlap.Meters * ShearLag.RateOf(context.WallStiffness, Stiffness(plug), plug.Adhesive.ShearModulus.Value.Pascals,
            plug.BondLine.Meters));

    private static double Stiffness(BondedPlug plug) => plug.PlugModulus.Pascals * plug.SkirtWall.Meters;

    /// <summary>Mean shear at failure over that of the coupon [-]; at most 1.</summary>
    private static double Evenness(BondedPlug plug, in EndContext context) => Math.Min(1, CouponRatio(plug) / PeakRatio(plug, context));

    /// <summary>Peak over mean shear in the coupon [-].</summary>
    private static double CouponRatio(BondedPlug plug)
    {
        const double stiffness = 70e9 * 1.6e-3;
        return ShearLag.PeakOverMean(stiffness, stiffness, 12.7e-3 * ShearLag.RateOf(stiffness, stiffness,
            plug.Adhesive.ShearModulus.Value.Pascals, 0.2e-3));
    }

    private static string Words(BondSurface surface) => surface switch
    {
        BondSurface.TreatedMetal => "treated metal",
        BondSurface.AbradedMetal => "abraded metal",
        BondSurface.AbradedLaminate => "abraded laminate",
        _ => "abraded plastic",
    };
}
