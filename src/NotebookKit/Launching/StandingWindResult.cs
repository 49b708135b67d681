using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>Whether a standing vehicle tips over in the wind.</summary>
/// <remarks>Source: as <see cref="StandingWind"/>.</remarks>
public sealed record StandingWindResult : Result
{
    /// <summary>Factor against tipping that is asked for [-]; common practice, no source.</summary>
    public const double Wanted = 2;

    internal StandingWindResult(StandingWind wind, IReadOnlyList<Finding> findings)
    {
        Standing = wind;
        if (wind is { Fins: null, DragCoefficient: null }) findings = [.. findings, LaunchingFindings.FinsNotGiven()];
        Findings = Factor < Wanted ? [.. findings, LaunchingFindings.TipsOver(Factor, TipsAt, HoldDownNeeded)] : findings;
    }

    /// <summary>What was computed.</summary>
    public StandingWind Standing { get; }

    /// <summary>Force of the wind on the vehicle.</summary>
    public Force Force => Force.FromNewtons(PressurePa * Standing.DragM2);

    /// <summary>Share of it on the fins; 0 where none are given.</summary>
    public Force ForceOnFins => Force.FromNewtons(PressurePa * Standing.FinsOrNone.Sum(f => f.DragCoefficient * f.Seen.SquareMeters));

    /// <summary>Moment that tips it, about the leeward feet.</summary>
    public Torque Tipping => Torque.FromNewtonMeters(PressurePa * Standing.DragM3);

    /// <summary>Moment that holds it.</summary>
    public Torque Holding => Torque.FromNewtonMeters(((Standing.Mass.Kilograms * StandardConstants.Gravity) + Standing.HoldDown.Newtons)
        * Standing.ArmM);

    /// <summary>Holding over tipping moment [-]; infinite without wind.</summary>
    public double Factor => Holding.NewtonMeters / Tipping.NewtonMeters;

    /// <summary>Wind speed that tips it.</summary>
    public Speed TipsAt => Speed.FromMetersPerSecond(Math.Sqrt(2 * Holding.NewtonMeters / (Standing.Air.KilogramsPerCubicMeter
        * Standing.DragM3)));

    /// <summary>Hold-down force that a factor of 2 needs; 0 where none is needed.</summary>
    public Force HoldDownNeeded => Force.FromNewtons(Math.Max(0, (Wanted * Tipping.NewtonMeters / Standing.ArmM)
        - (Standing.Mass.Kilograms * StandardConstants.Gravity)));

    private double PressurePa => 0.5 * Standing.Air.KilogramsPerCubicMeter * Standing.Wind.MetersPerSecond
        * Standing.Wind.MetersPerSecond;

    /// <inheritdoc/>
    public override string Title => $"Standing in {Standing.Wind.Show()} of wind";

    /// <inheritdoc/>
    public override ModelCard Model => new("Overturning of a standing cylinder",
        ["The same wind over the whole height; its force on the body at half of it.",
            "Nothing of rail or guys but the hold-down given.",
            Standing.FinsOrNone.Count > 0 ? "Every fin is a plate that nothing shelters, turned the worst way to the wind."
                : "Fins aren't counted unless they are given, or the drag coefficient has them."],
        "A vehicle that stands free on its base.", [LaunchingSources.ShortCylinders, LaunchingSources.Plates,
            Source.CommonPractice("a factor of 2 against tipping")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Wind on the vehicle", Force.Show(), $"C_d {Digits.Round(Standing.DragOrCylinder)}"),
        .. Standing.FinsOrNone.Count > 0 ? [new ResultLine("Of that on the fins", ForceOnFins.Show())] : Array.Empty<ResultLine>(),
        new("Tipping moment", Tipping.Show(), $"holding {Holding.Show()}"),
        new("Factor against tipping", Digits.Round(Factor), $"{Wanted} is asked for (common practice, no source)"),
        new("Tips at", TipsAt.Show()), new("Hold-down for that factor", HoldDownNeeded.Show()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Tipping moment", Standing.FinsOrNone.Count == 0 ? @"M = \frac{1}{2}\,\rho\,v^2\,C_d\,D\,\frac{h^2}{2}"
                : @"M = \frac{1}{2}\,\rho\,v^2\left(C_d\,D\,\frac{h^2}{2} + \sum C_f\,A_f\,z_f\right)", $"½ × {Standing.Air.Show()} × "
            + $"({Standing.Wind.Show()})² × {(Standing.FinsOrNone.Count > 0 ? "(" : "")}"
            + $"{Digits.Round(Standing.DragOrCylinder)} × {Standing.Diameter.Show()} × ({Standing.Height.Show()})² / 2"
            + string.Concat(Standing.FinsOrNone.Select(f => $" + {Digits.Round(f.DragCoefficient)} × {f.Seen.Show()} × {f.Centre.Show()}"))
            + (Standing.FinsOrNone.Count > 0 ? ")" : ""), Tipping.Show(),
            LaunchingSources.ShortCylinders),
    ]);
}
