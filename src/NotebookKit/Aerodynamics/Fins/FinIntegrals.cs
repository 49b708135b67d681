namespace NotebookKit.Aerodynamics.Fins;

/// <summary>
/// The integrals over a fin's span that the component method needs. Every integrand is a polynomial of degree five at most on a strip,
/// which three Gauss points integrate exactly, so a trapezoid agrees with its closed forms to rounding.
/// </summary>
internal readonly struct FinIntegrals
{
    private static readonly double GaussOffset = Math.Sqrt(0.6);

    private FinIntegrals(double areaM2, double spanM, double macM, double macOutM, double macLeadM, double cosMid, double cosLead)
    {
        AreaM2 = areaM2;
        SpanM = spanM;
        MeanChordM = macM;
        MeanChordOutM = macOutM;
        MeanChordLeadM = macLeadM;
        CosMidSweep = cosMid;
        CosLeadSweep = cosLead;
    }

    /// <summary>Area of one face [m²].</summary>
    public double AreaM2 { get; }

    /// <summary>Body surface to tip [m].</summary>
    public double SpanM { get; }

    /// <summary>Mean aerodynamic chord [m].</summary>
    public double MeanChordM { get; }

    /// <summary>Spanwise station of the area centroid, where that chord lies [m].</summary>
    public double MeanChordOutM { get; }

    /// <summary>Leading edge of that chord aft of the root leading edge [m].</summary>
    public double MeanChordLeadM { get; }

    /// <summary>Cosine of the sweep of the line through mid chord, area-weighted over strips [-].</summary>
    public double CosMidSweep { get; }

    /// <summary>Cosine of the sweep of the leading edge, span-weighted over strips [-].</summary>
    public double CosLeadSweep { get; }

    /// <summary>2 s² / A, the aspect ratio of two panels joined at the root [-].</summary>
    public double AspectRatio => 2 * SpanM * SpanM / AreaM2;

    /// <summary>Length of the line through mid chord over the span [m].</summary>
    public double MidChordLineM => SpanM / CosMidSweep;

    /// <summary>Centre of pressure, a quarter of the mean chord behind its leading edge [m aft of the root leading edge].</summary>
    public double CentreM => MeanChordLeadM + (MeanChordM / 4);

    public static FinIntegrals Of(IReadOnlyList<FinStrip> strips)
    {
        double area = 0, chordSquare = 0, outMoment = 0, leadMoment = 0, cosMid = 0, cosLead = 0, leadSpan = 0, span = 0;
        foreach (var strip in strips)
        {
            area += strip.AreaM2;
            chordSquare += Gauss(strip, static (_, _, chord) => chord * chord);
            outMoment += Gauss(strip, static (y, _, chord) => chord * y);
            leadMoment += Gauss(strip, static (_, lead, chord) => chord * lead);
            var midRise = strip.LeadOuterM + (strip.ChordOuterM / 2) - strip.LeadInnerM - (strip.ChordInnerM / 2);
            cosMid += strip.AreaM2 * strip.WidthM / Math.Sqrt((strip.WidthM * strip.WidthM) + (midRise * midRise));
            var leadRise = strip.LeadOuterM - strip.LeadInnerM;
            cosLead += strip.WidthM * strip.WidthM / Math.Sqrt((strip.WidthM * strip.WidthM) + (leadRise * leadRise));
            leadSpan += strip.WidthM;
            span = Math.Max(span, strip.OuterM);
        }

        return new FinIntegrals(area, span, chordSquare / area, outMoment / area, leadMoment / area, cosMid / area, cosLead / leadSpan);
    }

    /// <summary>∫ c (r + y) dy, the first moment of chord about the roll axis [m³].</summary>
    public static double FirstMoment(IReadOnlyList<FinStrip> strips, double bodyRadiusM)
    {
        var sum = 0.0;
        foreach (var strip in strips) sum += Gauss(strip, (y, _, chord) => chord * (bodyRadiusM + y));
        return sum;
    }

    /// <summary>∫ c (r + y)² dy, the second moment of chord about the roll axis [m⁴].</summary>
    public static double SecondMoment(IReadOnlyList<FinStrip> strips, double bodyRadiusM)
    {
        var sum = 0.0;
        foreach (var strip in strips) sum += Gauss(strip, (y, _, chord) => chord * (bodyRadiusM + y) * (bodyRadiusM + y));
        return sum;
    }

    private static double Gauss(FinStrip strip, Func<double, double, double, double> integrand)
    {
        var half = strip.WidthM / 2;
        return half * (((5 * At(-GaussOffset)) + (8 * At(0)) + (5 * At(GaussOffset))) / 9);

        double At(double u)
        {
            var share = (1 + u) / 2;
            return integrand(
                strip.InnerM + (share * strip.WidthM),
                strip.LeadInnerM + (share * (strip.LeadOuterM - strip.LeadInnerM)),
                strip.ChordInnerM + (share * (strip.ChordOuterM - strip.ChordInnerM)));
        }
    }
}
