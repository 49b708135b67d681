using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A dome, convex outwards: a hemisphere, or an ellipsoid of less depth.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Wall">Its wall; 0.1 to 100 mm.</param>
/// <param name="Depth">Inside depth; from a fifth of the bore, that of a hemisphere being half of it, up to the bore.</param>
/// <remarks>Source: geometry.</remarks>
public sealed record DomedClosure(IsotropicMaterial Material, Length Wall, Length Depth) : Closure(Material, Wall)
{
    /// <summary>A hemisphere for a bore.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="wall">Its wall; 0.1 to 100 mm.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public static DomedClosure Hemisphere(IsotropicMaterial material, Length wall, Length bore) => new(material, wall, bore / 2);

    /// <summary>A 2:1 ellipsoid for a bore.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="wall">Its wall; 0.1 to 100 mm.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public static DomedClosure Ellipsoid(IsotropicMaterial material, Length wall, Length bore) => new(material, wall, bore / 4);

    /// <summary>
    /// Widest opening over the bore [-]: past half of it what is left is a ring. Source: ASME Section VIII Division 1, UG-36(b)
    /// (unverified).
    /// </summary>
    private const double WidestOpening = 0.5;

    /// <summary>Discs that it is moulded of; none where it is of one material.</summary>
    public CapDiscs? Laminate { get; init; }

    /// <inheritdoc/>
    public override bool IsDuctile => Laminate is null && base.IsDuctile;

    /// <summary>
    /// A cap moulded of cloth discs, each turned against the one beneath, as if alike in every direction. Its modulus is 3/8 of the ply's
    /// along and 5/8 of the one across, its strength half of its fibres at the low end of what fabrication delivers; both scatter widely.
    /// </summary>
    /// <param name="discs">Discs it is moulded of.</param>
    /// <param name="resin">Resin.</param>
    /// <param name="depth">Inside depth; from a fifth of the bore up to the bore.</param>
    /// <param name="fabrication">How well it is made; hand laid where none is given.</param>
    /// <remarks>Source: netting analysis, half of the fibres in each of two directions; moduli, Tsai and Pagano 1968
    /// (unverified).</remarks>
    public static DomedClosure Moulded(CapDiscs discs, Resin resin, Length depth, Fabrication? fabrication = null)
    {
        ArgumentNullException.ThrowIfNull(discs);
        ArgumentNullException.ThrowIfNull(resin);
        InvalidDesignException.ThrowIfAny("Moulded cap", [.. discs.Validate(), .. resin.Validate()]);
        var (fibre, fraction, made) = (discs.Cloth.Fibre, discs.FibreFraction.DecimalFractions, fabrication ?? Fabrication.HandLaid);
        double em = resin.Modulus.Value.Pascals, e2f = fibre.TransverseModulus.Value.Pascals;
        var along = fibre.LongitudinalModulus.Value.Pascals * fraction + em * (1 - fraction);
        var across = em / (1 - Math.Sqrt(fraction) * (1 - em / e2f));
        var strength = 0.5 * fraction * fibre.TensileStrength.Value.Pascals * made.EfficiencyLow.DecimalFractions;
        var density = fraction * fibre.Density.Value.KilogramsPerCubicMeter + (1 - fraction) * resin.Density.Value.KilogramsPerCubicMeter;
        const string what = "laminate alike in every direction, of its fibres alone";
        var material = new IsotropicMaterial(
            $"moulded {discs.Cloth.Name}",
            Property.Typical(density.KilogramsPerCubicMetre(), 0.05, what),
            Property.Typical(Pressure.FromGigapascals((3 * along + 5 * across) / 8e9), 0.2, what),
            Property.Typical(0.3, 0.1, what),
            Property.Typical(Pressure.FromMegapascals(strength / 1e6), 0.2, what),
            Property.Typical(0.5.Percent(), 0.2, what),
            Property.Typical(CoefficientOfThermalExpansion.FromPerKelvin(10e-6), 0.5, what),
            Property.Typical(50.Celsius(), 0, what));
        return new DomedClosure(material, discs.Thickness, depth) { Laminate = discs };
    }

    /// <inheritdoc/>
    public override string Shape => "domed closure";

    /// <inheritdoc/>
    public override Volume VolumeInside(Length bore) => Volume.FromCubicMeters(2.0 / 3 * Math.PI * bore.Meters * bore.Meters / 4 *
        Depth.Meters);

    /// <inheritdoc/>
    public override Volume Solid(Length bore)
    {
        // Between two half ellipsoids, less the hole.
        double a = bore.Meters / 2, b = Depth.Meters, t = Wall.Meters, hole = Opening.Meters / 2;
        var shell = 2.0 / 3 * Math.PI * ((a + t) * (a + t) * (b + t) - a * a * b);
        return Volume.FromCubicMeters(shell - Math.PI * hole * hole * t);
    }

    /// <inheritdoc/>
    public override Length DepthInside(Length bore) => Depth;

    /// <inheritdoc/>
    public override Length Meridian(Length bore)
    {
        // A quarter of an ellipse by Ramanujan's second approximation.
        double a = bore.Meters / 2, b = Depth.Meters;
        var h = (a - b) * (a - b) / ((a + b) * (a + b));
        return Length.FromMeters(Finite.Check(Math.PI / 4 * (a + b) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h))),
            "meridian of the dome", "m"));
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [.. base.Validate(bore)];
        if (new ValidRange<Length>(bore / 5, bore).Find(Depth, "depth of the dome",
            "Flatter ones buckle at the rim; deeper ones are cones.") is { } depth) findings.Add(depth);
        else if (bore / 2 / Depth > Math.Sqrt(2))
            findings.Add(VesselsFindings.DomeIsTooFlat(1 / Math.Sqrt(2)));
        if (Opening > bore * WidestOpening && Opening <= bore * 0.95)
            findings.Add(VesselsFindings.OpeningWiderThanRimAllows(Opening, bore, bore * WidestOpening));
        return findings;
    }
}
