using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Building.Resins;

/// <summary>How much resin to mix, in cups that are on the work before they gel.</summary>
/// <remarks>Source: common practice; mass balance.</remarks>
/// <param name="System">The resin and its hardener.</param>
/// <param name="Shares">What takes it up, in the order it is laid.</param>
public sealed record ResinPlan(ResinSystem System, IReadOnlyList<ResinShare> Shares)
{
    /// <summary>Left in cup, brush and peel ply, over what stays on the work; 0 to 200 %, 35 % unless given (common practice).</summary>
    public Ratio Waste { get; init; } = 35.Percent();

    /// <summary>Mixed resin laid on in a minute; 0.5 to 200 g/min. 5 g/min unless given (common practice for one pair of hands).</summary>
    public MassFlow Pace { get; init; } = MassFlow.FromGramsPerSecond(5.0 / 60);

    internal double GramsPerMinute => 60 * Pace.GramsPerSecond;

    /// <summary>Share of the pot life that may be used; 20 to 90 %, 60 % unless given (common practice): it thickens well before it
    /// gels.</summary>
    public Ratio UsableLife { get; init; } = 60.Percent();

    /// <summary>Resin for the plies of a layup, ply by ply. Source: see <see cref="Vessels.Laying.Layup"/>.</summary>
    /// <param name="system">The resin and its hardener.</param>
    /// <param name="layup">The layup.</param>
    public static ResinPlan For(ResinSystem system, Layup layup)
    {
        ArgumentNullException.ThrowIfNull(layup);
        return new(system, [.. layup.Plies.Select((p, i) => new ResinShare(layup.NameOf(i), p.ResinMass))]);
    }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            .. System.Validate(),
            new ValidRange<Ratio>(0.Percent(), 200.Percent()).Find(Waste, "resin wasted", "A third is common practice for small work."),
            new ValidRange<double>(0.5, 200).Find(GramsPerMinute, "pace of laying on in g/min", "Time yourself: some 5 g a minute."),
            new ValidRange<Ratio>(20.Percent(), 90.Percent()).Find(UsableLife, "usable share of the pot life",
                "It thickens well before it gels."),
            Shares.Count == 0 ? BuildingFindings.NothingToLay() : null,
            .. Shares.Select(s => s.Mass > Mass.Zero && s.Mass <= 100.Kilograms()
                ? null
                : BuildingFindings.ResinMassOutOfRange(s.For, s.Mass)),
        ];
        return [.. findings.OfType<Finding>()];
    }

    /// <summary>Divides the resin into cups. Source: mass balance.</summary>
    /// <exception cref="InvalidDesignException">Something is out of range; all reasons are in it.</exception>
    public ResinPlanResult Divide()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny($"Resin plan, {System.Name}", findings);
        return new ResinPlanResult(this, findings);
    }
}

/// <summary>Resin that one thing takes up.</summary>
/// <param name="For">What takes it: a ply, the fillets.</param>
/// <param name="Mass">Mixed resin in it, nothing wasted; above 0.</param>
public sealed record ResinShare(string For, Mass Mass);
