using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Two closed forms of flat lap joints: the bending at the end of a single lap, and what a long overlap of a tough adhesive carries.
/// </summary>
/// <remarks>
/// Source: Goland and Reissner, J. Appl. Mech. 11, 1944 (unverified); Hart-Smith, NASA CR-112235 and CR-112236, 1973 (unverified; its
/// form derived again from the first integral, without bending).
/// </remarks>
public static class LapJoint
{
    /// <summary>
    /// Bending moment at the end of a single lap over P·t/2, k = 1/(1 + 2√2·tanh u), u = (c/t)·√(3(1 − ν²)/2)·√(P/(t·E)) [-]: 1 for a
    /// small load, 0.2612 for a large one. Source: Goland and Reissner 1944.
    /// </summary>
    /// <param name="load">Pull a width, P; 0 to 100 kN/mm.</param>
    /// <param name="thickness">Thickness of either sheet, t; 0.01 to 2000 mm.</param>
    /// <param name="halfOverlap">Half of the overlap, c; 0.01 to 2000 mm.</param>
    /// <param name="modulus">Modulus of the sheets; 1 MPa to 1000 GPa.</param>
    /// <param name="poissonRatio">Poisson's ratio of the sheets [-]; 0 to 0.49.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double MomentFactor(ForcePerLength load, Length thickness, Length halfOverlap, Pressure modulus, double poissonRatio)
    {
        var p = new ValidRange<ForcePerLength>(ForcePerLength.Zero, ForcePerLength.FromKilonewtonsPerMillimeter(100))
            .Check(load, "pull a width", "Give the load over the joint's width.").NewtonsPerMeter;
        var t = ModeInput.Size(thickness, "thickness of the sheet", "Give either sheet's; both are alike.");
        var c = ModeInput.Size(halfOverlap, "half of the overlap", "A joint without an overlap carries nothing.");
        var e = ModeInput.Moduli.Check(modulus, "modulus of the sheet", "Aluminium is 69 GPa.").Pascals;
        var nu = ModeInput.Poisson(poissonRatio);
        return MomentFactor(p, t, c, e, nu);
    }

    /// <summary>The same in SI [-].</summary>
    internal static double MomentFactor(double load, double thickness, double halfOverlap, double modulus, double poisson)
    {
        var u = halfOverlap / thickness * Math.Sqrt(1.5 * (1 - poisson * poisson)) * Math.Sqrt(load / (thickness * modulus));
        return 1 / (1 + 2 * Math.Sqrt(2) * Math.Tanh(u));
    }

    /// <summary>
    /// Pull across the adhesive at the end of a long single lap, k/2·(P/t)·√(6·Ea·t/(E·h)) [Pa]; the share of the cross force, which adds
    /// to it, is left out. Source: Goland and Reissner 1944.
    /// </summary>
    internal static double Peel(double load, double thickness, double halfOverlap, double modulus, double poisson, double adhesiveModulus,
        double bondLine) =>
        MomentFactor(load, thickness, halfOverlap, modulus, poisson) / 2 * load / thickness
            * Math.Sqrt(6 * adhesiveModulus * thickness / (modulus * bondLine));

    /// <summary>
    /// Pull a width that a long overlap carries until its adhesive tears at an end, k_i·√(2·η·(1/k1 + 1/k2)·τp·(γe/2 + γp)), the softer
    /// sheet governing. Source: Hart-Smith 1973.
    /// </summary>
    /// <param name="first">Stiffness of the first sheet a width, E·t; 1 to 10 000 000 N/mm.</param>
    /// <param name="second">Stiffness of the second sheet a width; 1 to 10 000 000 N/mm.</param>
    /// <param name="adhesive">The adhesive's shear curve and its layer.</param>
    /// <param name="overlap">Length of the overlap; at least <see cref="LongEnough"/> and at most 2000 mm, for a shorter one tears
    /// sooner.</param>
    /// <exception cref="InvalidDesignException">The adhesive isn't valid.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static ForcePerLength LongOverlap(ForcePerLength first, ForcePerLength second, ToughAdhesive adhesive, Length overlap)
    {
        var limit = Limit(first, second, adhesive);
        new ValidRange<Length>(LongEnough(first, second, adhesive), 2000.Millimetres()).Check(
            overlap, "overlap", "A shorter one has no room for its yielded ends and an elastic middle; make it longer, or rate it on the " +
                "elastic peak.");
        return limit;
    }

    /// <summary>
    /// Overlap from which a joint counts as long: both yielded ends, P/τp, and six times 1/ω between them. Source: Hart-Smith 1973 (from
    /// memory).
    /// </summary>
    /// <param name="first">Stiffness of the first sheet a width, E·t; 1 to 10 000 000 N/mm.</param>
    /// <param name="second">Stiffness of the second sheet a width; 1 to 10 000 000 N/mm.</param>
    /// <param name="adhesive">The adhesive's shear curve and its layer.</param>
    /// <exception cref="InvalidDesignException">The adhesive isn't valid.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length LongEnough(ForcePerLength first, ForcePerLength second, ToughAdhesive adhesive)
    {
        var limit = Limit(first, second, adhesive).NewtonsPerMeter;
        var rate = ShearLag.RateOf(first.NewtonsPerMeter, second.NewtonsPerMeter, adhesive.ShearModulus.Pascals, adhesive.BondLine.Meters);
        return Length.FromMillimeters(1000 * (limit / adhesive.YieldShear.Pascals + 6 / rate));
    }

    private static ForcePerLength Limit(ForcePerLength first, ForcePerLength second, ToughAdhesive adhesive)
    {
        ArgumentNullException.ThrowIfNull(adhesive);
        InvalidDesignException.ThrowIfAny("Adhesive", adhesive.Validate());
        double one = Stiffness(first, "stiffness of the first sheet"), other = Stiffness(second, "stiffness of the second sheet");
        var energy = adhesive.YieldShear.Pascals * (adhesive.ElasticStrain.DecimalFractions / 2 + adhesive.PlasticStrain.DecimalFractions);
        return ForcePerLength.FromNewtonsPerMillimeter(
            Math.Min(one, other) * Math.Sqrt(2 * adhesive.BondLine.Meters * (1 / one + 1 / other) * energy) / 1000);
    }

    private static double Stiffness(ForcePerLength value, string name) =>
        new ValidRange<ForcePerLength>(ForcePerLength.FromNewtonsPerMillimeter(1), ForcePerLength.FromNewtonsPerMillimeter(1e7))
            .Check(value, name, "Modulus times thickness.").NewtonsPerMeter;
}
