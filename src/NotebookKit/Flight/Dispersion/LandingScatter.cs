using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Where the landings lie: mean, covariance, and the ellipses that hold a share of them were they normal.
/// Source: bivariate normal distribution; a 1-sigma ellipse holds 39 % of the landings, not 68 %.
/// </summary>
public sealed record LandingScatter
{
    private readonly double[] _east, _north;
    private readonly LandingSpread _spread;

    internal LandingScatter(double[] east, double[] north)
    {
        (_east, _north) = (east, north);
        _spread = new(BivariateSpread.Of(east, north), east.Length);
    }

    /// <summary>Number of landings.</summary>
    public int Count => _east.Length;

    /// <inheritdoc cref="LandingSpread.MeanEast"/>
    public Length MeanEast => _spread.MeanEast;

    /// <inheritdoc cref="LandingSpread.MeanNorth"/>
    public Length MeanNorth => _spread.MeanNorth;

    /// <inheritdoc cref="LandingSpread.Major"/>
    public Length Major => _spread.Major;

    /// <inheritdoc cref="LandingSpread.Minor"/>
    public Length Minor => _spread.Minor;

    /// <inheritdoc cref="LandingSpread.Bearing"/>
    public Angle Bearing => _spread.Bearing;

    /// <inheritdoc cref="LandingSpread.Covariance"/>
    public (Area EastEast, Area EastNorth, Area NorthNorth) Covariance => _spread.Covariance;

    /// <summary>Semi-axes of the ellipse that holds a share of the landings, were they normal. Source: Rayleigh, r = σ √(−2 ln(1 −
    /// P)).</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public (Length Major, Length Minor) Axes(Ratio share) => _spread.Axes(share);

    /// <summary>Outline of that ellipse, for drawing. Source: as <see cref="Axes"/>.</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public (Series East, Series North) Ellipse(Ratio share) => _spread.Ellipse(share);

    /// <summary>How many of the landings lie within that ellipse: the check on calling them normal.</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public int Inside(Ratio share)
    {
        var (ellipse, inside) = (_spread.Of(share), 0);
        for (var i = 0; i < _east.Length; i++)
        {
            if (ellipse.Contains(_east[i], _north[i])) inside++;
        }

        return inside;
    }

    /// <summary>Radius about the mean that holds a share of the landings, were they normal. Source: integral of the bivariate normal
    /// density.</summary>
    /// <param name="share">Share of the landings; above 0, below 100 %.</param>
    public Length Circle(Ratio share) => _spread.Circle(share);

    /// <inheritdoc/>
    public bool Equals(LandingScatter? other) => other is not null && _east.AsSpan().SequenceEqual(other._east)
        && _north.AsSpan().SequenceEqual(other._north);

    /// <inheritdoc/>
    public override int GetHashCode() => _spread.GetHashCode();
}
