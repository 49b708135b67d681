using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Load at which a flat round plate of ductile metal collapses: every circle of it has yielded enough to move. It lies well above first
/// yield, and takes ductility that plastics, castings and laminates don't have.
/// </summary>
/// <param name="OuterRadius">Radius at which the rim is held, R; 1 to 2000 mm.</param>
/// <param name="HoleRadius">Radius of the hole, free at its edge; 0 for a whole plate, else 0.001·R to 0.99·R.</param>
/// <param name="Thickness">Thickness, t; 0.1 to 500 mm.</param>
/// <param name="YieldStrength">Yield strength; 0.1 to 5000 MPa.</param>
/// <param name="Rim">How the outer edge is held.</param>
/// <remarks>
/// The moments found balance the load and nowhere exceed the yield rule, so the answer is a lower bound of the collapse load; under
/// Tresca a motion goes with them and it is the collapse load itself. Source: Hopkins and Prager, J. Mech. Phys. Solids 2, 1953; Hopkins
/// and Wang, the same journal 3, 1954 (both unverified); plates with a hole worked out here and met by a linear programme within 0.03 %.
/// </remarks>
public sealed record PlateCollapse(Length OuterRadius, Length HoleRadius, Length Thickness, Pressure YieldStrength, PlateRim Rim)
{
    /// <summary>Who carries the thrust on what closes the hole; the edge supports it unless said.</summary>
    public HoleCover Cover { get; init; } = HoleCover.SupportedAtEdge;

    /// <summary>When the section yields; Tresca, the lowest, unless said.</summary>
    public PlateYieldRule Rule { get; init; } = PlateYieldRule.Tresca;

    /// <summary>Full plastic moment a width, M0 = σy·t²/4. Source: Hopkins and Prager 1953.</summary>
    public TorquePerLength FullMoment => TorquePerLength.FromNewtonMetersPerMeter(FullMomentN);

    private double FullMomentN => YieldStrength.Pascals * Thickness.Meters * Thickness.Meters / 4;

    private double Hole => HoleRadius / OuterRadius;

    /// <summary>All that is wrong with the plate.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
    [
        new ValidRange<Length>(1.Millimetres(), 2000.Millimetres())
            .Find(OuterRadius, "outer radius of the plate", "Measure to where the rim is held."),
        .. AnnularPlate.HoleFindings(OuterRadius, HoleRadius),
        new ValidRange<Length>(0.1.Millimetres(), 500.Millimetres())
            .Find(Thickness, "thickness of the plate", "Turned end plates are 3 to 20 mm."),
        ModeInput.Stresses.Find(YieldStrength, "yield strength of the plate", "6061-T6 aluminium is near 240 MPa."),
    ]);

    /// <summary>
    /// Pressure at which the plate collapses, with the cover's pull where it is supported at the edge of the hole. Source: Hopkins and
    /// Prager 1953; Hopkins and Wang 1954.
    /// </summary>
    /// <exception cref="InvalidDesignException">The plate isn't valid.</exception>
    public PlateLimit Limit()
    {
        InvalidDesignException.ThrowIfAny("Round plate", Validate());
        var cover = Cover == HoleCover.SupportedAtEdge ? 1 : 0;
        var hole = Hole;
        var (factor, hinge) = Factor(PlateLoad.Pressure(hole, cover));
        var radius = OuterRadius.Meters;
        return new PlateLimit(this, factor, GaugePressure.FromPascals(factor * FullMomentN / (radius * radius)), hinge is { } h
            ? OuterRadius * h : null)
        {
            Findings = Rule == PlateYieldRule.MaximumMoment
                ? [VesselsFindings.LargestMomentRuleIsUnsafe()]
                : [VesselsFindings.CollapseTakesDuctileMetal()],
        };
    }

    /// <summary>
    /// Load around the edge of the hole, alone, at which the plate collapses: 2π·M0 on a supported rim whatever the hole. Source: Hopkins
    /// and Prager 1953, extended to the hole.
    /// </summary>
    /// <exception cref="InvalidDesignException">The plate isn't valid, or has no hole.</exception>
    public Force EdgeLoadLimit()
    {
        InvalidDesignException.ThrowIfAny("Round plate",
            [.. Validate(), .. HoleRadius.Meters > 0 ? (Finding[])[]
                : [VesselsFindings.PlateHasNoHole()]]);
        return Force.FromNewtons(2 * Math.PI * FullMomentN * Factor(PlateLoad.Edge(Hole)).Factor);
    }

    /// <summary>
    /// Load spread evenly over a circle in the middle of a whole plate on a supported rim at which the plate collapses, 2π·M0/(1 −
    /// 2c/(3R)). Source: Hopkins and Prager 1953.
    /// </summary>
    /// <param name="circle">Radius of the loaded circle, c; 0, a point, to the plate's radius.</param>
    /// <exception cref="InvalidDesignException">The plate isn't valid, has a hole, is clamped, or isn't rated by Tresca.</exception>
    /// <exception cref="OutOfRangeException">The circle is out of range.</exception>
    public Force CentralLoadLimit(Length circle)
    {
        InvalidDesignException.ThrowIfAny("Round plate",
        [
            .. Validate(),
            .. HoleRadius.Meters == 0 && Rim == PlateRim.Supported && Rule == PlateYieldRule.Tresca
                ? (Finding[])[]
                : [VesselsFindings.LoadOnCircleIsNotModelled()],
        ]);
        var c = new ValidRange<Length>(0.Millimetres(), OuterRadius)
            .Check(circle, "radius of the loaded circle", "The circle lies inside the plate.") / OuterRadius;
        return Force.FromNewtons(2 * Math.PI * FullMomentN / (1 - 2 * c / 3));
    }

    /// <summary>Load factor, and the circle at which the moment along the radius turns over R [-].</summary>
    private (double Factor, double? Hinge) Factor(PlateLoad load) => Rule switch
    {
        PlateYieldRule.MaximumMoment => ((1 + (Rim == PlateRim.Clamped ? 1 / (1 - load.Hole) : 0)) / load.Mean(1), null),
        PlateYieldRule.VonMises => (load.Hole == 0 ? WholeByMises() : HoledByMises(load), null),
        _ => ByTresca(load),
    };

    // M0 and R are 1. Inside the circle ρ the moment around is full; outside it the two moments differ by the full one, to −1 at the rim.
    private (double Factor, double? Hinge) ByTresca(PlateLoad load)
    {
        if (Rim == PlateRim.Supported) return (1 / load.Mean(1), null);
        // With a wide hole there is no such circle: the moment along the radius falls from the hole's edge on.
        var low = load.Hole > 0 ? load.Hole * (1 + 1e-6) : 1e-6;
        if (load.Hole > 0 && Excess(low) < 0) return ((1 + Math.Log(1 / load.Hole)) / (load.SumOver(1) - load.SumOver(load.Hole)), null);
        var circle = BracketedRoot.Solve(Excess, low, 1);
        return (FactorOf(circle), circle);

        double FactorOf(double rho) => 1 / load.Mean(rho);

        double Excess(double rho) => FactorOf(rho) * (load.SumOver(1) - load.SumOver(rho)) - Math.Log(1 / rho) - 1;
    }

    // Along the yield ellipse by an angle φ: Mr = 2/√3·sin φ, Mt = 2/√3·sin(φ + 60°); u is the load factor times r².
    private double WholeByMises()
    {
        const int steps = 4000;
        double phi = Math.PI / 3, u = 0, end = Rim == PlateRim.Clamped ? -Math.PI / 2 : 0;
        var h = (end - phi) / steps;
        for (var i = 0; i < steps; i++)
        {
            var k1 = Slope(phi, u);
            var k2 = Slope(phi + h / 2, u + h / 2 * k1);
            var k3 = Slope(phi + h / 2, u + h / 2 * k2);
            var k4 = Slope(phi + h, u + h * k3);
            u += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            phi += h;
        }

        return u;

        static double Slope(double phi, double u)
        {
            double swing = 2 / Math.Sqrt(3), radial = swing * Math.Sin(phi), around = swing * Math.Sin(phi + Math.PI / 3);
            // In the middle, where u is 0, the ratio has the limit 1/8.
            var ratio = u < 1e-12 ? 0.125 : (around - radial) / (2 * u);
            return swing * Math.Cos(phi) / (ratio - 0.25);
        }
    }

    private double HoledByMises(PlateLoad load)
    {
        var low = 0.2 / load.Mean(1);
        return BracketedRoot.Solve(Left, low, 100 * low, 1e-10 * low);

        // What is left at the rim of the moment it can take; where it is used up before the rim, how far before, below 0.
        double Left(double factor)
        {
            const int steps = 4000;
            double swing = 2 / Math.Sqrt(3), moment = 0, h = Math.Log(1 / load.Hole) / steps;
            for (var i = 0; i < steps; i++)
            {
                // Along ln r, since the moments change fastest beside a small hole.
                var r = load.Hole * Math.Exp(i * h);
                var k1 = Slope(r, moment);
                var k2 = Slope(r * Math.Exp(h / 2), moment + h / 2 * k1);
                var k3 = Slope(r * Math.Exp(h / 2), moment + h / 2 * k2);
                var k4 = Slope(r * Math.Exp(h), moment + h * k3);
                var next = moment + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
                if (next < -swing) return (Rim == PlateRim.Clamped ? 0 : -swing) - h * (steps - i - (moment + swing) / (moment - next));
                moment = next;
            }

            return Rim == PlateRim.Clamped ? moment + swing : moment;

            double Slope(double at, double m) => -m / 2 + Math.Sqrt(Math.Max(1 - 0.75 * m * m, 0)) - factor * load.At(at);
        }
    }
}
