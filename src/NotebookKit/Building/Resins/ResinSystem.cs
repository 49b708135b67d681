using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Resins;

/// <summary>A resin and its hardener as the cup sees them.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="HardenerPerResin">Hardener by mass over resin by mass; 5 to 200 %, from its data sheet.</param>
/// <param name="PotLife">Time from mixing to gelling in the cup; 2 min to 24 h, from its data sheet.</param>
public sealed record ResinSystem(string Name, Ratio HardenerPerResin, Duration PotLife)
{
    /// <summary>Mass for which the pot life is stated; 10 g to 5 kg, 100 g unless given. A larger cup heats itself and gels
    /// sooner.</summary>
    public Mass PotLifeMass { get; init; } = 100.Grams();

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Ratio>(5.Percent(), 200.Percent()).Find(HardenerPerResin, $"hardener of {Name}",
                "Common systems take 20 to 50 parts on 100; too little or too much never cures."),
            new ValidRange<Duration>(2.Minutes(), 24.Hours()).Find(PotLife, $"pot life of {Name}",
                "Common laminating systems have 20 to 120 minutes."),
            new ValidRange<Mass>(10.Grams(), 5.Kilograms()).Find(PotLifeMass, $"mass for the pot life of {Name}",
                "Data sheets state it for 100 g."),
        }.OfType<Finding>().ToList();
}
