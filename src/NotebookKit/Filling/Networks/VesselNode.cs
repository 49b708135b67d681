using NotebookKit.Filling.Balances;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A vessel of the vehicle: gas above its water, with or without heat to its wall.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Chamber">Its volume, bore and rated pressure.</param>
public sealed record VesselNode(string Name, Chamber Chamber) : PadNode(Name)
{
    /// <summary>Water in it at the start, over its volume; 0 to 95 %.</summary>
    public Ratio WaterFraction { get; init; }

    /// <summary>Pressure in it at the start; 0 to 300 bar gauge.</summary>
    public GaugePressure Start { get; init; }

    /// <summary>Whether it stands upright on its port under water, so that the head of the water counts: with what leaves, against what
    /// comes. Not counted unless said; a vessel of 1 m has 0.1 bar.</summary>
    public bool Standing { get; init; }

    /// <summary>What the wall does to the gas.</summary>
    public FillHeat Heat { get; init; }

    /// <summary>The wall, where heat passes to it; a plain cylinder of the chamber's bore and volume unless given.</summary>
    public FillWall? Wall { get; init; }

    /// <summary>The chamber's rated pressure.</summary>
    public override GaugePressure? RatedTo => Chamber.RatedPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
    [
        .. new[]
        {
            new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Find(Chamber.Volume, $"volume of {Name}",
                "Check the unit it was given in."),
            new ValidRange<GaugePressure>(0.1.BarGauge(), 300.BarGauge()).Find(Chamber.RatedPressure, $"rated pressure of {Name}",
                "A vessel without a rating isn't filled."),
            new ValidRange<Ratio>(Ratio.Zero, 95.Percent()).Find(WaterFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                $"water fraction of {Name}", "Some gas has to be there."),
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(Start, $"pressure of {Name} at the start",
                "It is gauge, above the air outside."),
            Enum.IsDefined(Heat) ? null : FillingFindings.HeatToWallUnknown(Heat.ToString(), Enum.GetNames<FillHeat>()),
            Wall is null && Heat == FillHeat.Wall ? FillWall.FindBore(Chamber) : null,
            Wall?.FindWater(Name, WaterFraction),
            Start > Chamber.RatedPressure ? FillingFindings.NodeStartsAboveRating(Name, Start, Chamber.RatedPressure) : null,
        }.OfType<Finding>(), .. Wall?.Validate() ?? [],
    ];

    internal FillWall WallOrPlain => Wall ?? FillWall.Of(Chamber, WaterFraction);
}
