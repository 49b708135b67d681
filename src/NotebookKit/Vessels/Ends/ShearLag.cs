using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>Shear along an overlap bonded between two elastic strips: it peaks at the ends, so more length soon adds nothing.</summary>
/// <param name="FirstModulus">Modulus of the first strip, pulled at x = −l/2; 1 MPa to 1000 GPa.</param>
/// <param name="FirstThickness">Thickness of the first strip; 1 µm to 1 m.</param>
/// <param name="SecondModulus">Modulus of the second strip, which ends at x = −l/2; 1 MPa to 1000 GPa.</param>
/// <param name="SecondThickness">Thickness of the second strip; 1 µm to 1 m.</param>
/// <param name="AdhesiveShearModulus">Shear modulus of the adhesive; 1 to 10 000 MPa.</param>
/// <param name="BondLine">Thickness of the adhesive; 0.01 to 5 mm.</param>
/// <param name="Overlap">Length of the overlap, l; 1 to 1000 mm.</param>
/// <remarks>
/// Flat strips, elastic adhesive, no bending, no fillet (a fillet is noted, never counted). Source: Volkersen, Luftfahrtforschung 15,
/// 1938; reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009. For tubes: Lubkin and Reissner, Trans. ASME 78, 1956.
/// </remarks>
public sealed record ShearLag(
    Pressure FirstModulus, Length FirstThickness, Pressure SecondModulus, Length SecondThickness, Pressure AdhesiveShearModulus,
        Length BondLine, Length Overlap)
{
    /// <summary>All that is wrong with the joint.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        Add(new ValidRange<Pressure>(1.Megapascals(), 1000.Gigapascals()).Find(FirstModulus, "modulus of the first strip",
            "Aluminium is 69 GPa."));
        Add(new ValidRange<Length>(1.Micrometres(), 1.Metres()).Find(FirstThickness, "thickness of the first strip", "Give the wall."));
        Add(new ValidRange<Pressure>(1.Megapascals(), 1000.Gigapascals()).Find(SecondModulus, "modulus of the second strip",
            "Aluminium is 69 GPa."));
        Add(new ValidRange<Length>(1.Micrometres(), 1.Metres()).Find(SecondThickness, "thickness of the second strip", "Give the wall."));
        Add(new ValidRange<Pressure>(1.Megapascals(), 10_000.Megapascals()).Find(AdhesiveShearModulus, "shear modulus of the adhesive",
            "Epoxies are 300 to 1500 MPa."));
        Add(new ValidRange<Length>(0.01.Millimetres(), 5.Millimetres()).Find(BondLine, "bond line", "0.1 to 0.5 mm is usual."));
        Add(new ValidRange<Length>(1.Millimetres(), 1000.Millimetres()).Find(Overlap, "overlap", "10 to 60 mm is usual."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }

    /// <summary>Rate at which shear falls off from the ends: ω² = (G/h)(1/E1t1 + 1/E2t2). Source: Volkersen 1938.</summary>
    public ReciprocalLength Omega => ReciprocalLength.FromInverseMeters(Checked().Rate);

    /// <summary>Largest shear over mean shear [-]. Source: Volkersen 1938.</summary>
    public double PeakRatio => Checked() is var lap
        ? PeakOverMean(lap.Stiffness1, lap.Stiffness2, lap.Rate * lap.Overlap.Meters) : 0;

    /// <summary>Mean shear, load over area. Source: balance of forces.</summary>
    /// <param name="load">Pull a width; any.</param>
    public Pressure Mean(ForcePerLength load) => Pressure.FromPascals(
        Load(load) / Checked().Overlap.Meters);

    /// <summary>Largest shear, at the end where the stiffer strip stops. Source: Volkersen 1938.</summary>
    /// <param name="load">Pull a width; any.</param>
    /// <exception cref="InvalidDesignException">The joint isn't valid.</exception>
    public Pressure Peak(ForcePerLength load)
    {
        return Mean(load) * PeakRatio;
    }

    /// <summary>Shear at a place. Source: Volkersen 1938.</summary>
    /// <param name="load">Pull a width; any.</param>
    /// <param name="place">Distance from the middle; −l/2, where the second strip stops, to l/2.</param>
    /// <exception cref="InvalidDesignException">The joint isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The place is outside the overlap.</exception>
    public Pressure At(ForcePerLength load, Length place)
    {
        Checked();
        var x = new ValidRange<Length>(Overlap / -2, Overlap / 2).Check(place, "place along the overlap",
            "Measure from its middle.").Meters;
        var half = Rate * Overlap.Meters / 2;
        var asymmetry = (Stiffness1 - Stiffness2) / (Stiffness1 + Stiffness2);
        return Pressure.FromPascals(Load(load) * Rate / 2 * (Math.Cosh(Rate * x) / Math.Sinh(half)
            + asymmetry * Math.Sinh(Rate * x) / Math.Cosh(half)));
    }

    /// <summary>Peak over mean for stiffnesses a width [N/m] and ω·l [-].</summary>
    internal static double PeakOverMean(double first, double second, double rateLength)
    {
        var (atFirst, _, atSecond) = PlacesOverMean(first, second, rateLength);
        return Math.Max(atFirst, atSecond);
    }

    /// <summary>Shear over its mean where the second part ends, in the middle, and where the first ends, for stiffnesses a width [N/m] and
    /// ω·l [-].</summary>
    internal static (double AtFirst, double Middle, double AtSecond) PlacesOverMean(double first, double second, double rateLength)
    {
        var half = rateLength / 2;
        var swing = (first - second) / (first + second) * Math.Tanh(half);
        return (half * (1 / Math.Tanh(half) - swing), half / Math.Sinh(half), half * (1 / Math.Tanh(half) + swing));
    }

    internal static double RateOf(double first, double second, double shearModulus, double bondLine) =>
        Math.Sqrt(shearModulus / bondLine * (1 / first + 1 / second));

    private ShearLag Checked()
    {
        InvalidDesignException.ThrowIfAny("Bonded overlap", Validate());
        return this;
    }

    private static double Load(ForcePerLength load) => new ValidRange<ForcePerLength>(ForcePerLength.FromNewtonsPerMeter(-1e12),
        ForcePerLength.FromNewtonsPerMeter(1e12)).Check(load, "load per width", "Check its unit.").NewtonsPerMeter;

    private double Stiffness1 => FirstModulus.Pascals * FirstThickness.Meters;

    private double Stiffness2 => SecondModulus.Pascals * SecondThickness.Meters;

    private double Rate => RateOf(Stiffness1, Stiffness2, AdhesiveShearModulus.Pascals, BondLine.Meters);
}
