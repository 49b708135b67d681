using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A hose: it holds gas back by friction, holds gas in its bore, grows under pressure, and whips where it comes off.</summary>
/// <remarks>Source: <see cref="Restrictors.Hose"/>; <see cref="HoseWhip"/>.</remarks>
/// <param name="Name">What it is called.</param>
/// <param name="Hose">Bore, length and friction.</param>
public sealed record HosePart(string Name, Hose Hose) : LinePart(Name)
{
    /// <summary>Growth of its inner volume over a bar of gauge pressure [1/bar]; 0 to 0.01, none unless measured or given by its
    /// maker.</summary>
    public double? GrowthPerBar { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() =>
    [
        .. Hose.Validate(),
        .. GrowthPerBar is { } growth && new ValidRange<double>(0, 0.01).Find(growth, $"growth of the {Name} over a bar",
            "A braided hose grows by some 0.0005 a bar; check the unit.") is { } wrong ? [wrong] : Array.Empty<Finding>(),
    ];

    /// <summary>Its inner volume under pressure. Source: geometry; the growth as given, none where it isn't.</summary>
    /// <param name="pressure">Pressure in it; 0 to 300 bar gauge.</param>
    /// <exception cref="OutOfRangeException">The pressure is outside.</exception>
    public Volume VolumeAt(GaugePressure pressure)
    {
        var bar = HoseWhip.Pressures.Check(pressure, "pressure in the hose", "It is gauge, above the air outside.").Bar;
        return Volume.FromCubicMeters(Math.PI / 4 * Hose.Bore.Meters * Hose.Bore.Meters * Hose.Length.Meters
            * (1 + (GrowthPerBar ?? 0) * bar)).ToUnit(UnitsNet.Units.VolumeUnit.Milliliter);
    }

    /// <summary>What happens where it comes off under pressure. Source: as <see cref="HoseWhip"/>.</summary>
    /// <param name="pressure">Pressure in it; 0 to 300 bar gauge.</param>
    /// <param name="ambient">Surrounding air pressure; 0.5 to 1.2 bar absolute.</param>
    /// <exception cref="OutOfRangeException">A pressure is outside.</exception>
    public HoseWhip Whip(GaugePressure pressure, AbsolutePressure ambient) => new(this, pressure, ambient);

    internal override IRestrictor Narrowest => Hose;
}
