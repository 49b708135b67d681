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
        Findings = Factor < Wanted ? [.. findings, LaunchingFindings.TipsOver(Factor, TipsAt, HoldDownNeeded)] : findings;
    }

    /// <summary>What was computed.</summary>
    public StandingWind Standing { get; }

    /// <summary>Force of the wind on the vehicle.</summary>
    public Force Force => Force.FromNewtons(0.5 * Standing.Air.KilogramsPerCubicMeter * Standing.Wind.MetersPerSecond
        * Standing.Wind.MetersPerSecond * Standing.DragOrCylinder * Standing.Diameter.Meters * Standing.Height.Meters);

    /// <summary>Moment that tips it, about the leeward feet.</summary>
    public Torque Tipping => Torque.FromNewtonMeters(Force.Newtons * Standing.Height.Meters / 2);

    /// <summary>Moment that holds it.</summary>
    public Torque Holding => Torque.FromNewtonMeters(((Standing.Mass.Kilograms * StandardConstants.Gravity) + Standing.HoldDown.Newtons)
        * Standing.ArmM);

    /// <summary>Holding over tipping moment [-]; infinite without wind.</summary>
    public double Factor => Holding.NewtonMeters / Tipping.NewtonMeters;

    /// <summary>Wind speed that tips it.</summary>
    public Speed TipsAt => Speed.FromMetersPerSecond(Math.Sqrt(4 * Holding.NewtonMeters / (Standing.Air.KilogramsPerCubicMeter
        * Standing.DragOrCylinder * Standing.Diameter.Meters * Standing.Height.Meters * Standing.Height.Meters)));

    /// <summary>Hold-down force that a factor of 2 needs; 0 where none is needed.</summary>
    public Force HoldDownNeeded => Force.FromNewtons(Math.Max(0, (Wanted * Tipping.NewtonMeters / Standing.ArmM)
        - (Standing.Mass.Kilograms * StandardConstants.Gravity)));

    /// <inheritdoc/>
    public override string Title => $"Standing in {Standing.Wind.Show()} of wind";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Overturning of a standing cylinder",
        ["The same wind over the whole height; its force at half of it.", "Nothing of rail or guys but the hold-down given; fins aren't "
            + "counted "
            + "unless the drag coefficient has them."],
        "A vehicle that stands free on its base.", [LaunchingSources.ShortCylinders,
            Source.CommonPractice("a factor of 2 against tipping")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Wind on the vehicle", Force.Show(), $"C_d {Digits.Round(Standing.DragOrCylinder)}"),
        new("Tipping moment", Tipping.Show(), $"holding {Holding.Show()}"),
        new("Factor against tipping", Digits.Round(Factor), $"{Wanted} is asked for (common practice, no source)"),
        new("Tips at", TipsAt.Show()), new("Hold-down for that factor", HoldDownNeeded.Show()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Tipping moment", @"M = \frac{1}{2}\,\rho\,v^2\,C_d\,D\,\frac{h^2}{2}", $"½ × {Standing.Air.Show()} × "
            + $"({Standing.Wind.Show()})² × "
            + $"{Digits.Round(Standing.DragOrCylinder)} × {Standing.Diameter.Show()} × ({Standing.Height.Show()})² / 2", Tipping.Show(),
            LaunchingSources.ShortCylinders),
    ]);
}
