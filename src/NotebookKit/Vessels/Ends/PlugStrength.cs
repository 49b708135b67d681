using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// What a bonded plug holds. It lets go when the shear at the end of the overlap comes to what the same adhesive reached in its
/// coupon test, so twice the overlap isn't twice the strength. A short overlap or a thick bond line shears more evenly than the coupon did;
/// that is never counted, and the mean shear at failure stays at the coupon's or below.
/// </summary>
/// <remarks>
/// Source: shear lag, Volkersen, Luftfahrtforschung 15, 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009; coupon
/// after ASTM D1002 (1.6 mm aluminium, 12.7 mm overlap). A fillet is never counted. The share for the wall growing past a
/// stiff plug has no source. Not modelled: the bond of liner to plies, which lies in series with the plug's.
/// </remarks>
internal static class PlugStrength
{
    public static string Cause(BondedPlug plug) =>
        $"shear at the end of the bond on {Words(plug.Adhesive.On(plug.VesselSurface).Value <= plug.Adhesive.On(plug.PlugSurface).Value ?
            plug.VesselSurface : plug.PlugSurface)}";

    public const string ShearFormula = @"p = \frac{4\,l}{d}\,\tau_{coupon}\,\min\left(1,\ \frac{k_{coupon}}{\tau_{max}/\bar\tau}\right)";

    /// <summary>Growth of the wall at the mouth of the bond, over the bond line, that halves the bond with itself [-]; common practice, no
    /// source: half to twice as much may be true.</summary>
    private const double PeelGrowth = 1;

    /// <summary>
    /// Pressure at which the bond lets go: in shear, less a share for the wall that grows past the plug and peels it. No source gives that
    /// share; the growth over the bond line is taken, so that p = p_shear/(1 + g·p). No more than what peels the bond's mouth by
    /// <see cref="MouthPeel"/>: the lower of both counts.
    /// </summary>
    public static double FailurePascals(BondedPlug plug, in EndContext context)
    {
        var shear = ShearPascals(plug, context.Bore, context.WallStiffness, Stiffness(plug));
        var growth = context.GrowthPerPascal / (PeelGrowth * plug.BondLine.Meters);
        return Math.Min(2 * shear / (1 + Math.Sqrt(1 + 4 * growth * shear)), MouthPeel.FailurePascals(plug, context));
    }

    /// <summary>
    /// The same in shear alone. A wall stiffer than the plug throws more of the load on the plug's end: the wall as given or a rigid one,
    /// whichever is worse, so that a further ply never lowers it.
    /// </summary>
    public static double ShearPascals(BondedPlug plug, double diameter, double wallStiffness, double plugStiffness) =>
        plug.CouponStrength.Value.Pascals * Math.Min(1, CouponRatio(plug) / PeakRatio(plug, wallStiffness, plugStiffness)) * 4
            * plug.Overlap.Meters / diameter;

    /// <summary>Force a width and slip of the bond, its overlap counted as far as it shears: G/h·tanh(ωl)/ω [N/m²].</summary>
    public static double SlipStiffness(BondedPlug plug, in EndContext context)
    {
        var modulus = plug.Adhesive.ShearModulus.Value.Pascals;
        var rate = ShearLag.RateOf(context.WallStiffness, Stiffness(plug), modulus, plug.BondLine.Meters);
        return modulus / plug.BondLine.Meters * Math.Tanh(rate * plug.Overlap.Meters) / rate;
    }

    public static IEnumerable<WorkingStep> Work(BondedPlug plug, EndContext context)
    {
        var peak = PeakRatio(plug, context.WallStiffness, Stiffness(plug));
        var shear = ShearPascals(plug, context.Bore, context.WallStiffness, Stiffness(plug));
        var pressure = GaugePressure.FromPascals(FailurePascals(plug, context));
        yield return new WorkingStep(
            "Bond of the plug: peak over mean shear", @"\frac{\tau_{max}}{\bar\tau} = \frac{\omega l}{2}\left(\coth\frac{\omega l}{2} + "
                + @"\left|\frac{E_1t_1-E_2t_2}{E_1t_1+E_2t_2}\right|\tanh\frac{\omega l}{2}\right)",
            $"wall E·t {Digits.Round(context.WallStiffness / 1e6)} MN/m or rigid, plug {Digits.Round(Stiffness(plug) / 1e6)} MN/m, overlap "
                + $"{plug.Overlap.Show()}, bond line {plug.BondLine.Show()}",
            Digits.Round(peak), VesselSources.ShearLag);
        yield return new WorkingStep(
            "Bond of the plug lets go in shear", ShearFormula,
            $"4 × {plug.Overlap.Show()} / {Digits.Round(1000 * context.Bore)} mm × {plug.CouponStrength.Value.Show()} × min(1, "
                + $"{Digits.Round(CouponRatio(plug))} / {Digits.Round(peak)})",
            GaugePressure.FromPascals(shear).ToString(), VesselSources.ShearLag);
        yield return new WorkingStep(
            "Bond of the plug peels at its mouth", MouthPeel.Formula,
            $"{Digits.Round(MouthPeel.CouponPascals(plug) / 1e6)} MPa of pull that the coupon bore, "
                + $"{Digits.Round(MouthPeel.OverPressure(plug, context))} times the pressure at the mouth",
            GaugePressure.FromPascals(Math.Min(MouthPeel.FailurePascals(plug, context), 1e12)).ToString(), ModeSources.Foundation);
        yield return new WorkingStep(
            "Bond of the plug lets go, the wall growing past it; no more than its peel", @"p = \frac{p_{shear}}{1 + \delta/h}",
            $"the wall grows by {Digits.Round(1e6 * context.GrowthPerPascal * pressure.Pascals)} µm at the bond line of "
                + $"{plug.BondLine.Show()}",
            pressure.ToString(), Source.CommonPractice("No source for the share of peel; half to twice as much may be true"));
    }

    private static double PeakRatio(BondedPlug plug, double wall, double other)
    {
        const double rigid = 1e15;
        return Math.Max(Peak(wall), Peak(rigid));

        double Peak(double stiffness) => ShearLag.PeakOverMean(stiffness, other, plug.Overlap.Meters
            * ShearLag.RateOf(stiffness, other, plug.Adhesive.ShearModulus.Value.Pascals, plug.BondLine.Meters));
    }

    private static double Stiffness(BondedPlug plug) => plug.PlugModulus.Pascals * plug.SkirtWall.Meters;

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
