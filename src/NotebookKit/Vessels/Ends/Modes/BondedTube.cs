using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// A round bond between a tube and a ring or plug, pulled along the axis or twisted. Shear peaks at both ends of the overlap, more at the
/// end where the stiffer part stops; length past a few times 1/ω adds nothing.
/// </summary>
/// <param name="First">Part that comes in at the first end of the overlap and stops at the second: the tube.</param>
/// <param name="Second">Part that stops at the first end and goes on past the second: the ring or plug.</param>
/// <param name="BondRadius">Radius of the bond, a; from the inner part's outside to the outer part's inside.</param>
/// <param name="AdhesiveShearModulus">Shear modulus of the adhesive; 1 to 10 000 MPa.</param>
/// <param name="BondLine">Thickness of the adhesive, h; 0.01 to 5 mm.</param>
/// <param name="Overlap">Length of the overlap; 1 to 1000 mm.</param>
/// <remarks>
/// Elastic adhesive in shear alone; peel, the tube growing under pressure and a fillet aren't counted. Source: Volkersen,
/// Luftfahrtforschung 15, 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009, with E·A and G·J of the parts in the
/// place of the strips' E·t.
/// </remarks>
public sealed record BondedTube(TubeMember First, TubeMember Second, Length BondRadius, Pressure AdhesiveShearModulus, Length BondLine,
    Length Overlap)
{
    private double Radius => BondRadius.Meters;

    /// <summary>
    /// Rate at which an axial pull's shear falls off from the ends: ω² = 2πa·G/h·(1/E1A1 + 1/E2A2). Source: Volkersen 1938.
    /// </summary>
    public ReciprocalLength AxialRate => ReciprocalLength.FromInverseMeters(Rate(Axial(First), Axial(Second)));

    /// <summary>All that is wrong with the bond.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. First.Validate(), .. Second.Validate(),
        .. ModeInput.All(
            ModeInput.Sizes.Find(BondRadius, "radius of the bond", "Measure to the middle of the adhesive."),
            new ValidRange<Pressure>(1.Megapascals(), 10_000.Megapascals())
                .Find(AdhesiveShearModulus, "shear modulus of the adhesive", "Epoxies are 300 to 1500 MPa."),
            new ValidRange<Length>(0.01.Millimetres(), 5.Millimetres()).Find(BondLine, "bond line", "0.1 to 0.5 mm is usual."),
            new ValidRange<Length>(1.Millimetres(), 1000.Millimetres()).Find(Overlap, "overlap", "10 to 60 mm is usual."),
            Lies(First, Second) || Lies(Second, First)
                ? null
                : VesselsFindings.RadiusOfBondOutOfRange(BondRadius)),
    ];

    /// <summary>Shear of the adhesive under a pull along the axis. Source: Volkersen 1938.</summary>
    /// <param name="pull">Pull along the axis; 0 to 10 MN.</param>
    /// <exception cref="InvalidDesignException">The bond isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pull is out of range.</exception>
    public BondShear Pulled(Force pull)
    {
        InvalidDesignException.ThrowIfAny("Bonded tube", Validate());
        var force = new ValidRange<Force>(Force.Zero, Force.FromMeganewtons(10))
            .Check(pull, "pull on the bond", "Give the thrust on the closure.").Newtons;
        return Share(force / (2 * Math.PI * Radius * Overlap.Meters), Axial(First), Axial(Second), "pulled along the axis", pull.Show());
    }

    /// <summary>Shear of the adhesive under the thrust of a pressure on the bond's circle. Source: Volkersen 1938.</summary>
    /// <param name="pressure">Pressure on the circle inside the bond; 0 to 2000 bar.</param>
    /// <exception cref="InvalidDesignException">The bond isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public BondShear StressAt(GaugePressure pressure) => Pulled(Force.FromNewtons(ModeInput.Pressure(pressure) * Math.PI * Radius *
        Radius));

    /// <summary>
    /// Shear of the adhesive under a torque; ω² = 2πa³·G/h·(1/G1J1 + 1/G2J2). Source: Volkersen 1938, with twist in the place of stretch.
    /// </summary>
    /// <param name="torque">Torque about the axis; 0 to 1000 kN·m.</param>
    /// <exception cref="InvalidDesignException">The bond isn't valid, or a part's shear modulus isn't given.</exception>
    /// <exception cref="OutOfRangeException">The torque is out of range.</exception>
    public BondShear Twisted(Torque torque)
    {
        Finding[] missing = First.ShearModulus is null || Second.ShearModulus is null
            ? [VesselsFindings.ShearModulusIsNotGiven()]
            : [];
        InvalidDesignException.ThrowIfAny("Bonded tube", [.. Validate(), .. missing]);
        var moment = new ValidRange<Torque>(Torque.Zero, Torque.FromKilonewtonMeters(1000))
            .Check(torque, "torque on the bond", "Give the torque about the axis.").NewtonMeters;
        return Share(moment / (2 * Math.PI * Radius * Radius * Overlap.Meters), Torsional(First), Torsional(Second), "twisted",
            torque.Show());
    }

    private BondShear Share(double meanPa, double first, double second, string how, string load)
    {
        var rate = Rate(first, second);
        var (atFirst, middle, atSecond) = ShearLag.PlacesOverMean(first, second, rate * Overlap.Meters);
        return new BondShear(this, how, load, ReciprocalLength.FromInverseMeters(rate),
            Pressure.FromPascals(meanPa), Pressure.FromPascals(meanPa * atFirst), Pressure.FromPascals(meanPa * middle),
                Pressure.FromPascals(meanPa * atSecond))
        {
            Findings = [VesselsFindings.BondLeavesLinerOut()],
        };
    }

    private double Rate(double first, double second) => ShearLag.RateOf(first, second, AdhesiveShearModulus.Pascals, BondLine.Meters);

    // Stiffness a length of the bond's circle, as of a strip.
    private double Axial(TubeMember member) => member.AxialStiffness / (2 * Math.PI * Radius);

    private double Torsional(TubeMember member) =>
        member.TorsionalStiffness(member.ShearModulus!.Value) / (2 * Math.PI * Radius * Radius * Radius);

    // Rounding of a unit's conversion is no gap.
    private bool Lies(TubeMember inner, TubeMember outer) =>
        inner.OuterRadius.Meters <= Radius * (1 + 1e-9) && Radius <= outer.InnerRadius.Meters * (1 + 1e-9);
}
