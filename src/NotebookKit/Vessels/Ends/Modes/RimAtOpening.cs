using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// The rim of a round hole in the crown of a thin hemispherical dome whose cover, a nozzle or plug, hangs on the hole's edge: what
/// pressure the rim takes, and whether the hole is too wide to be a hole in a dome at all. Stress comes from the bending of the shell
/// around the hole; for a small hole it meets the flat sheet's factor of 2, for a wider one it is more. Replacing the area stands beside
/// it, and the lower pressure counts.
/// </summary>
/// <param name="SphereRadius">Radius to the middle of the dome's wall, R; 5 to 2000 mm.</param>
/// <param name="Wall">Wall of the dome, t; 0.1 mm to a fifth of the radius.</param>
/// <param name="HoleRadius">Radius of the hole, a; 0.5 mm to 0.99·R. Above R/2 the hole is too wide and no pressure is given.</param>
/// <param name="Strength">Yield strength of a metal or plastic, or the strength without a hole of a laminate that is alike in every
/// direction; 0.1 to 5000 MPa.</param>
/// <param name="PoissonRatio">Poisson's ratio [-]; 0 to 0.49.</param>
/// <remarks>
/// Source: shells of revolution, Timoshenko and Woinowsky-Krieger 1959 (unverified, derived again); laminates by the stress at a
/// distance from the hole, Whitney and Nuismer, J. Compos. Mater. 8, 1974; area and the limit of half the diameter, ASME Section VIII
/// Division 1, UG-36 and UG-37 (unverified).
/// </remarks>
public sealed record RimAtOpening(Length SphereRadius, Length Wall, Length HoleRadius, Pressure Strength, double PoissonRatio)
{
    /// <summary>Widest hole that the rules take, over the dome's radius [-].</summary>
    internal const double WidestRatio = 0.5;

    /// <summary>Wall of a thicker rim around the hole; none where it isn't given. The dome's wall to five times it.</summary>
    public Length? RimWall { get; init; }

    /// <summary>
    /// How far the thicker rim reaches from the hole's edge along the dome; none where it isn't given. Above 0 to the dome's radius.
    /// </summary>
    public Length? RimReach { get; init; }

    /// <summary>
    /// Distance from the hole, d0, at which a laminate's stress is compared with its strength, from tests with holes, see
    /// <see cref="HoleStress.PointDistance"/>; 0.1 to 20 mm. None means a metal or plastic, which is compared at the very edge.
    /// </summary>
    public Length? PointDistance { get; init; }

    /// <summary>Whether the pressure presses on the edge of the hole itself; it does unless a seal is said to keep it off.</summary>
    public bool EdgePressed { get; init; } = true;

    /// <summary>
    /// Radius of the hole over √(R·t) [-]: below about 0.1 the shell is as good as flat around the hole. Source: Timoshenko and
    /// Woinowsky-Krieger 1959.
    /// </summary>
    public double HoleParameter => HoleRadius.Meters / Math.Sqrt(SphereRadius.Meters * Wall.Meters);

    /// <summary>
    /// Whether the hole takes more than half of the dome's diameter. Source: ASME Section VIII Division 1, UG-36(b) (unverified).
    /// </summary>
    public bool IsTooWide => HoleRadius.Meters > WidestRatio * SphereRadius.Meters;

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        new ValidRange<Length>(5.Millimetres(), 2000.Millimetres())
            .Find(SphereRadius, "radius of the dome", "Half the vessel's diameter for a hemisphere."),
        new ValidRange<Length>(0.1.Millimetres(), SphereRadius / 5)
            .Find(Wall, "wall of the dome", "Above a fifth of its radius the dome isn't a thin shell."),
        new ValidRange<Length>(0.5.Millimetres(), SphereRadius * 0.99)
            .Find(HoleRadius, "radius of the hole in the dome", "A hole has to lie inside the dome."),
        ModeInput.Stresses.Find(Strength, "strength of the dome", "Give the yield strength, or the laminate's strength without a hole."),
        ModeInput.PoissonRatios.Find(PoissonRatio, "Poisson's ratio of the dome",
            "Aluminium is near 0.33, a laminate alike in every direction near 0.3."),
        RimWall is { } wall
            ? new ValidRange<Length>(Wall, Wall * 5).Find(wall, "wall of the rim", "A rim is thicker than the dome, by up to five times.")
            : null,
        RimReach is { } reach
            ? new ValidRange<Length>(0.1.Millimetres(), SphereRadius)
                .Find(reach, "reach of the rim", "Measure along the dome from the hole's edge.")
            : null,
        RimWall is null != RimReach is null
            ? (RimWall is null ? VesselsFindings.RimWallIsNotGiven() : VesselsFindings.RimReachIsNotGiven())
            : null,
        PointDistance is { } distance
            ? new ValidRange<Length>(0.1.Millimetres(), 20.Millimetres())
                .Find(distance, "distance from the hole", "Laminates of carbon and epoxy were found near 1 mm.")
            : null);

    /// <summary>Pressure that the rim takes; none where the hole is too wide. Source: as of the type.</summary>
    /// <exception cref="InvalidDesignException">The dome or its hole isn't valid.</exception>
    public RimStrength Allows()
    {
        InvalidDesignException.ThrowIfAny("Opening in a dome", Validate());
        if (IsTooWide)
        {
            return new RimStrength(this, null, null, null, null)
            {
                Findings =
                [
                    VesselsFindings.HoleTooWideForDome(
                        Length.FromMillimeters(2 * HoleRadius.Millimeters), 100 * (HoleRadius / SphereRadius),
                        Length.FromMillimeters(2 * SphereRadius.Millimeters)),
                ],
            };
        }

        var (factor, at) = Worst();
        // Stresses of the shell come over the pressure.
        var fromStress = Strength.Pascals / (factor * SphereRadius.Meters / (2 * Wall.Meters));
        List<Finding> findings = [];
        if (HoleParameter > 0.5)
            findings.Add(VesselsFindings.HoleIsWideAgainstShell(HoleParameter));
        if (PointDistance is not null)
        {
            findings.Add(VesselsFindings.AreaReplacementIsForDuctileMetal());
            findings.Add(VesselsFindings.DistanceFromHoleNeedsTests());
        }

        return new RimStrength(this, factor, Length.FromMillimeters(1000 * at * SphereRadius.Meters),
            GaugePressure.FromPascals(fromStress), FromArea()) { Findings = findings };
    }

    /// <summary>Largest stress over the membrane stress of the dome, and where it is, from the hole's edge over R [-].</summary>
    private (double Factor, double At) Worst()
    {
        var r = SphereRadius.Meters;
        var stresses = ShellEdge.Solve(Wall.Meters / r, HoleRadius.Meters / r, (RimWall ?? Wall).Meters / r,
            (RimReach ?? Length.Zero).Meters / r, PoissonRatio, EdgePressed);
        var membrane = r / (2 * Wall.Meters);
        var skip = (PointDistance ?? Length.Zero).Meters / r;
        var isLaminate = PointDistance is not null;
        var (largest, at) = (1.0, Math.PI / 2);
        for (var i = 0; i < stresses.Count; i++)
        {
            var here = stresses[i];
            // The first point past the distance is brought back to it, straight between the two.
            if (here.Distance < skip) continue;
            var size = isLaminate ? here.Maximum : here.Span;
            var place = here.Distance;
            if (skip > 0 && i > 0 && stresses[i - 1].Distance < skip)
            {
                var share = (skip - stresses[i - 1].Distance) / (here.Distance - stresses[i - 1].Distance);
                size = stresses[i - 1].Maximum + share * (here.Maximum - stresses[i - 1].Maximum);
                place = skip;
                // That point itself counts too.
                if (here.Maximum / membrane > largest) (largest, at) = (here.Maximum / membrane, here.Distance);
            }

            if (size / membrane > largest) (largest, at) = (size / membrane, place);
        }

        return (largest, at);
    }

    /// <summary>
    /// Pressure at which the area taken out is just replaced, within a hole's radius of its edge and 2.5 walls out. Source: UG-37, UG-40
    /// (unverified).
    /// </summary>
    private GaugePressure FromArea()
    {
        double t = Wall.Meters, a = HoleRadius.Meters;
        var pad = Math.Min((RimWall ?? Wall).Meters - t, 2.5 * t) * Math.Min((RimReach ?? Length.Zero).Meters, a);
        // 2a·tr = 2a·(t − tr) + 2·pad.
        var needed = Math.Min(t / 2 + pad / (2 * a), t);
        return GaugePressure.FromPascals(2 * Strength.Pascals * needed / (SphereRadius.Meters + 0.2 * needed));
    }
}
