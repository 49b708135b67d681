using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Mean and covariance of landings, and the ellipses that hold a share of them were they normal.
/// Source: bivariate normal distribution; a 1-sigma ellipse holds 39 % of the landings, not 68 %.
/// </summary>
public sealed record LandingSpread
{
    private readonly BivariateSpread _spread;

    internal LandingSpread(BivariateSpread spread, long count) => (_spread, Count) = (spread, count);

    /// <summary>Number of landings.</summary>
    public long Count { get; }

    /// <summary>Mean landing, to the east of the pad.</summary>
    public Length MeanEast => _spread.MeanX.Metres();

    /// <summary>Mean landing, to the north of the pad.</summary>
    public Length MeanNorth => _spread.MeanY.Metres();

    /// <summary>Standard deviation along the longer axis.</summary>
    public Length Major => _spread.Major.Metres();

    /// <summary>Standard deviation along the shorter axis.</summary>
    public Length Minor => _spread.Minor.Metres();

    /// <summary>Bearing of the longer axis, clockwise from north; 0 to 180°.</summary>
    public Angle Bearing => ((450 - (_spread.Ellipse(0.5).Angle * 180 / Math.PI)) % 180).Degrees();

    /// <summary>Variance to the east, covariance, variance to the north.</summary>
    public (Area EastEast, Area EastNorth, Area NorthNorth) Covariance =>
        (_spread.VarianceX.SquareMetres(), _spread.Covariance.SquareMetres(), _spread.VarianceY.SquareMetres());

    /// <summary>Semi-axes of the ellipse that holds a share of the landings, were they normal. Source: Rayleigh, r = σ √(−2 ln(1 −
    /// P)).</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public (Length Major, Length Minor) Axes(Ratio share)
    {
        var ellipse = Of(share);
        return (ellipse.SemiMajor.Metres(), ellipse.SemiMinor.Metres());
    }

    /// <summary>Outline of that ellipse, for drawing. Source: as <see cref="Axes"/>.</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public (Series East, Series North) Ellipse(Ratio share)
    {
        const int Points = 73;
        var ellipse = Of(share);
        var (sin, cos) = Math.SinCos(ellipse.Angle);
        var (east, north) = (new double[Points], new double[Points]);
        for (var i = 0; i < Points; i++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * i / (Points - 1));
            var (along, across) = (ellipse.SemiMajor * c, ellipse.SemiMinor * s);
            (east[i], north[i]) = (ellipse.CentreX + (along * cos) - (across * sin), ellipse.CentreY + (along * sin) + (across * cos));
        }

        return (new("East of pad", "m", east), new("North of pad", "m", north));
    }

    /// <summary>Radius about the mean that holds a share of the landings, were they normal. Source: integral of the bivariate normal
    /// density.</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public Length Circle(Ratio share) => _spread.CircleRadius(Check(share)).Metres();

    internal SpreadEllipse Of(Ratio share) => _spread.Ellipse(Check(share));

    private static double Check(Ratio share) => new ValidRange<double>(0.0001, 0.9999).Check(share.DecimalFractions,
        "share of the landings", "No ellipse holds all of them.");
}
