using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// A plug glued into the vessel. It lets go when the shear at the end of the overlap comes to what the same adhesive reached in its
/// coupon test, so twice the overlap isn't twice the strength. A short overlap or a thick bond line shears more evenly than the coupon did;
/// that is never counted, and the mean shear at failure stays at the coupon's or below.
/// </summary>
/// <param name="Adhesive">Adhesive.</param>
/// <param name="Overlap">Bonded length; 3 to 300 mm.</param>
/// <param name="VesselSurface">What it holds on to in the vessel.</param>
/// <param name="PlugSurface">What it holds on to on the plug.</param>
/// <remarks>
/// Source: shear lag, Volkersen, Luftfahrtforschung 15, 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009; coupon
/// after ASTM D1002 (1.6 mm aluminium, 12.7 mm overlap). A fillet is never counted. Not modelled: the wall growing past a stiff plug, which peels the
/// bond open at its mouth, and the bond of liner to plies, which lies in series with the plug's.
/// </remarks>
public sealed record BondedPlug(Adhesive Adhesive, Length Overlap, BondSurface VesselSurface, BondSurface PlugSurface) : EndJoint
{
    /// <summary>Thickness of the adhesive; 0.05 to 3 mm.</summary>
    public Length BondLine { get; init; } = 0.3.Millimetres();

    /// <summary>Wall of the plug's skirt inside the overlap; 0.2 to 100 mm.</summary>
    public Length SkirtWall { get; init; } = 3.Millimetres();

    /// <summary>Modulus of the plug; 0.1 to 250 GPa.</summary>
    public Pressure PlugModulus { get; init; } = 69.Gigapascals();

    /// <inheritdoc/>
    public override string Name => "bonded plug";

    /// <inheritdoc/>
    public override Length Reach => Overlap;

    /// <summary>Lap-shear strength on the weaker of the two surfaces.</summary>
    public Property<Pressure> CouponStrength
    {
        get
        {
            var (one, other) = (Adhesive.On(VesselSurface), Adhesive.On(PlugSurface));
            return one.Value <= other.Value ? one : other;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. Adhesive.Validate()];
        Add(new ValidRange<Length>(3.Millimetres(), 300.Millimetres()).Find(Overlap, "overlap of the bonded plug", "Half to one bore is usual."));
        Add(new ValidRange<Length>(0.05.Millimetres(), 3.Millimetres()).Find(BondLine, "bond line of the plug", "0.1 to 0.5 mm is usual."));
        Add(new ValidRange<Length>(0.2.Millimetres(), 100.Millimetres()).Find(SkirtWall, "skirt wall of the plug", "2 to 5 mm is usual."));
        Add(new ValidRange<Pressure>(0.1.Gigapascals(), 250.Gigapascals()).Find(PlugModulus, "modulus of the plug", "Aluminium is 69 GPa."));
        if (findings.All(f => f.Severity != FindingSeverity.Error)) findings.Add(Finding.Warning(NotModelled));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }

    /// <summary>What the bond's pressure leaves out, said wherever it is computed.</summary>
    internal const string NotModelled =
        "The plug's bond is computed in shear alone: peel from the wall growing past a stiff plug, and the bond of the liner to the plies, which is in series with it, are not modelled. Carry the plies over the plug or lock it mechanically, and let the proof judge.";

    /// <summary>Mean shear in the bond under a pressure. Source: balance of forces, p·d/(4l).</summary>
    /// <param name="pressure">Gauge pressure; any.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public Pressure MeanShear(GaugePressure pressure, Length bore) => Pressure.FromPascals(pressure.Pascals * bore.Meters / (4 * Overlap.Meters));

    internal override string Cause => $"shear at the end of the bond on {Words(Adhesive.On(VesselSurface).Value <= Adhesive.On(PlugSurface).Value ? VesselSurface : PlugSurface)}";

    internal override double FailurePascals(in EndContext context) =>
        context.BondFactor * CouponStrength.Value.Pascals * Evenness(context) * 4 * Overlap.Meters / context.Bore;

    internal override IEnumerable<WorkingStep> Work(EndContext context)
    {
        var peak = PeakRatio(context);
        var pressure = GaugePressure.FromPascals(FailurePascals(context));
        yield return new WorkingStep(
            "Bond of the plug: peak over mean shear", @"\frac{\tau_{max}}{\bar\tau} = \frac{\omega l}{2}\left(\coth\frac{\omega l}{2} + \left|\frac{E_1t_1-E_2t_2}{E_1t_1+E_2t_2}\right|\tanh\frac{\omega l}{2}\right)",
            $"wall E·t {Digits.Round(context.WallStiffness / 1e6)} MN/m, plug {Digits.Round(PlugStiffness / 1e6)} MN/m, overlap {Overlap.Show()}, bond line {BondLine.Show()}",
            Digits.Round(peak), VesselSources.ShearLag);
        yield return new WorkingStep(
            "Bond of the plug lets go", @"p = \frac{4\,l}{d}\,\tau_{coupon}\,\min\left(1,\ \frac{k_{coupon}}{\tau_{max}/\bar\tau}\right)",
            $"4 × {Overlap.Show()} / {Digits.Round(1000 * context.Bore)} mm × {CouponStrength.Value.Show()} × min(1, {Digits.Round(CouponRatio)} / {Digits.Round(peak)})",
            pressure.ToString(), VesselSources.ShearLag);
    }

    internal double PeakRatio(in EndContext context) => ShearLag.PeakOverMean(
        context.WallStiffness, PlugStiffness, Overlap.Meters * ShearLag.RateOf(context.WallStiffness, PlugStiffness, Adhesive.ShearModulus.Value.Pascals, BondLine.Meters));

    private double PlugStiffness => PlugModulus.Pascals * SkirtWall.Meters;

    /// <summary>Mean shear at failure over that of the coupon [-]; at most 1.</summary>
    private double Evenness(in EndContext context) => Math.Min(1, CouponRatio / PeakRatio(context));

    /// <summary>Peak over mean shear in the coupon [-].</summary>
    private double CouponRatio
    {
        get
        {
            const double stiffness = 70e9 * 1.6e-3;
            return ShearLag.PeakOverMean(stiffness, stiffness, 12.7e-3 * ShearLag.RateOf(stiffness, stiffness, Adhesive.ShearModulus.Value.Pascals, 0.2e-3));
        }
    }

    private static string Words(BondSurface surface) => surface switch
    {
        BondSurface.TreatedMetal => "treated metal",
        BondSurface.AbradedMetal => "abraded metal",
        BondSurface.AbradedLaminate => "abraded laminate",
        _ => "abraded plastic",
    };
}
