using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>
/// The vessel as mass and balance see it: a cylinder with its nozzle end at a station. While the vehicle accelerates the water stands
/// flat at the nozzle end and the gas above it.
/// </summary>
/// <remarks>
/// The water counts as rigid in pitch and not at all in roll, which it slips through. Source: cylinder about its centre, H. Goldstein,
/// Classical Mechanics (unverified); the slip in roll is common practice for a smooth bore.
/// </remarks>
/// <param name="Volume">Internal volume; 0.05 to 200 l.</param>
/// <param name="Bore">Internal diameter; 5 mm to 1 m.</param>
/// <param name="NozzleEndAt">Aft end of the inside, aft of the nose tip; 0 to 20 m.</param>
public sealed record WaterChamber(Volume Volume, Length Bore, Length NozzleEndAt)
{
    /// <summary>Density of the water; 950 to 1100 kg/m³. 998.2 kg/m³ at 20 °C where none is given.</summary>
    public Density WaterDensity { get; init; } = 998.2.KilogramsPerCubicMetre();

    /// <summary>Length of the inside, taken as a cylinder of its bore.</summary>
    public Length InsideLength => Length.FromMeters(InsideM);

    private double BoreM2 => Math.PI / 4 * Bore.Meters * Bore.Meters;

    private double InsideM => Volume.CubicMeters / BoreM2;

    /// <summary>Mass of water that fills a share of the volume.</summary>
    /// <param name="fraction">Water fraction; 0 to 100 %.</param>
    /// <exception cref="OutOfRangeException">The fraction is outside 0 to 100 %.</exception>
    public Mass Water(Ratio fraction) => Mass.FromKilograms(
        new ValidRange<Ratio>(0.Percent(), 100.Percent()).Check(fraction, "water fraction",
            "It is a share of the inside volume.").DecimalFractions
        * Volume.CubicMeters * WaterDensity.KilogramsPerCubicMeter);

    /// <summary>Everything that is wrong with the tank.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] findings =
        [
            new ValidRange<Volume>(0.05.Litres(), 200.Litres()).Find(Volume, "vessel volume", "Give the inside volume."),
            new ValidRange<Length>(5.Millimetres(), 1.Metres()).Find(Bore, "vessel bore", "Give the inside diameter."),
            new ValidRange<Length>(Length.Zero, 20.Metres()).Find(NozzleEndAt, "nozzle end of the vessel",
                "Measure it aft of the nose tip."),
            new ValidRange<Density>(950.KilogramsPerCubicMetre(), 1100.KilogramsPerCubicMetre()).Find(WaterDensity, "water density",
                "Fresh water is 998 kg/m³ at 20 °C."),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    /// <summary>Mass, centre and inertia of what is inside; no roll inertia, the water slips.</summary>
    internal MassState Contents(double waterKg, double gasKg)
    {
        var (area, radius) = (BoreM2, Bore.Meters / 2);
        var level = Math.Min(InsideM, waterKg / WaterDensity.KilogramsPerCubicMeter / area);
        var water = Column(waterKg, level, NozzleEndAt.Meters - (level / 2), radius);
        var ullage = InsideM - level;
        return water.With(Column(gasKg, ullage, NozzleEndAt.Meters - level - (ullage / 2), radius));
    }

    private static MassState Column(double massKg, double lengthM, double centreM, double radiusM) =>
        new(massKg, centreM, 0, massKg * ((radiusM * radiusM / 4) + (lengthM * lengthM / 12)));
}
