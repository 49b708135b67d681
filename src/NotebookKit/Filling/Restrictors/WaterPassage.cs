using NotebookKit.Provenance;

namespace NotebookKit.Filling.Restrictors;

/// <summary>What area a restrictor offers to water: never more than is sure, so that the time errs long.</summary>
internal static class WaterPassage
{
    public const double Density = 1000;

    // A sharp edge in a free jet passes 0.62 at low head, falling to 0.60 at high.
    private const double SharpEdge = 0.60;

    // Choked flow of gas says little of water: a valve differs by a fifth at equal area, and one that recovers pressure cavitates at two
    // thirds of it.
    private const double OfGasArea = 0.5;

    // Turbulent flow in a smooth hose down to Re = 1300; below, 64/Re.
    private const double LeastFriction = 0.05;

    // At 0 °C, its most.
    private const double ViscosityPaS = 1.79e-3;

    /// <summary>The origin of the figures that have none.</summary>
    public static Source Unsourced { get; } = Source.CommonPractice("Half the gas area of a restrictor known by its gas flow alone, a "
        + "friction factor of 0.05 at the least in a hose, for water");

    /// <summary>Effective area for water, m², good down to a drop in pressure.</summary>
    public static double AreaM2(IRestrictor restrictor, double leastDropPa)
    {
        // The slower the water, the more a hose holds it back: the least drop gives the smallest area. From below the sum only grows.
        var velocity = Math.Sqrt(2 * leastDropPa / Density);
        var resistance = Resistance(restrictor, double.PositiveInfinity);
        for (var i = 0; i < 200; i++)
        {
            var next = Resistance(restrictor, velocity / Math.Sqrt(resistance));
            if (next <= resistance * (1 + 1e-9)) break;
            resistance = next;
        }

        return 1 / Math.Sqrt(resistance);
    }

    /// <summary>Whether a figure without a source is in it.</summary>
    public static bool IsUnsourced(IRestrictor restrictor) => restrictor switch
    {
        Orifice => false,
        RestrictorChain chain => IsUnsourced(chain.First) || IsUnsourced(chain.Second),
        _ => true,
    };

    // One over the square of the effective area: what adds up along a chain.
    private static double Resistance(IRestrictor restrictor, double flowM3PerS)
    {
        switch (restrictor)
        {
            case RestrictorChain chain:
                return Resistance(chain.First, flowM3PerS) + Resistance(chain.Second, flowM3PerS);
            case Hose hose:
            {
                double bore = hose.Bore.Meters, area = Math.PI / 4 * bore * bore;
                var reynolds = Density * flowM3PerS / area * bore / ViscosityPaS;
                var friction = Math.Max(Math.Max(hose.DarcyFriction, LeastFriction), 64 / reynolds);
                return (1.5 + friction * hose.Length.Meters / bore) / (area * area);
            }

            case Orifice orifice:
            {
                var area = (orifice.WaterCoefficient ?? Math.Min(orifice.DischargeCoefficient,
                    SharpEdge)) * Math.PI / 4 * orifice.Diameter.Meters * orifice.Diameter.Meters;
                return 1 / (area * area);
            }

            default:
            {
                var area = OfGasArea * restrictor.EffectiveArea.SquareMeters;
                return 1 / (area * area);
            }
        }
    }
}
