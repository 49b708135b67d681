using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Charges;

/// <summary>The hole that water and air leave through.</summary>
/// <remarks>
/// A jet can lose in two ways that must not be lumped together: it can be slower than the ideal one (velocity coefficient) and narrower
/// than the hole (contraction coefficient). Their product is the discharge coefficient on area. At one discharge coefficient of 0.9 the
/// thrust is 2·0.9·A·Δp where the jet contracts and 2·0.81·A·Δp where it is slow. Source: Encyclopaedia Britannica, 11th ed., Hydraulics,
/// 1911.
/// </remarks>
/// <param name="Throat">Narrowest diameter; 0.5 mm to 100 mm, below the vessel's bore.</param>
public sealed record Nozzle(Length Throat)
{
    /// <summary>Jet speed over ideal jet speed, water [-]; above 0, at most 1. 1 unless given.</summary>
    public double WaterVelocityCoefficient { get; init; } = 1;

    /// <summary>Jet area over throat area, water [-]; above 0, at most 1. 0.97 unless given (rounded entry, common practice).</summary>
    public double WaterContractionCoefficient { get; init; } = 0.97;

    /// <summary>Effective over geometric throat area, air [-]; above 0, at most 1. 0.95 unless given (rounded entry, common
    /// practice).</summary>
    public double AirDischargeCoefficient { get; init; } = 0.95;

    /// <summary>Where the coefficients come from.</summary>
    public Source Source { get; init; } = Source.CommonPractice("rounded nozzle, 0.97 of its area for water, 0.95 for air");

    /// <summary>Geometric throat area. Source: geometry.</summary>
    public Area ThroatArea => (Math.PI / 4 * Throat.Meters * Throat.Meters).SquareMetres();

    /// <summary>Discharge coefficient on area for water: velocity times contraction coefficient [-].</summary>
    public double WaterDischargeCoefficient => WaterVelocityCoefficient * WaterContractionCoefficient;

    /// <summary>A smooth bell-shaped mouth: velocity coefficient 0.97, no contraction. Source: Encyclopaedia Britannica, 11th ed.,
    /// Hydraulics, 1911.</summary>
    /// <param name="throat">Narrowest diameter; 0.5 mm to 100 mm.</param>
    public static Nozzle Rounded(Length throat) => new(throat)
    {
        WaterVelocityCoefficient = 0.97,
        WaterContractionCoefficient = 1,
        AirDischargeCoefficient = 0.97,
        Source = new("Encyclopaedia Britannica", "11th ed., Hydraulics, conoidal mouthpiece", 1911, "velocity coefficient about 0.97"),
    };

    /// <summary>
    /// A straight hole at least one and a half diameters long: the jet fills it and loses speed, 0.82 by measurement.
    /// Source: Encyclopaedia Britannica, 11th ed., Hydraulics, 1911.
    /// </summary>
    /// <param name="throat">Diameter; 0.5 mm to 100 mm.</param>
    public static Nozzle ShortTube(Length throat) => new(throat)
    {
        WaterVelocityCoefficient = 0.82,
        WaterContractionCoefficient = 1,
        AirDischargeCoefficient = 0.82,
        Source = new("Encyclopaedia Britannica", "11th ed., Hydraulics, cylindrical mouthpiece", 1911, "0.82"),
    };

    /// <summary>A sharp-edged hole: velocity coefficient 0.97, contraction 0.64. Source: Encyclopaedia Britannica, 11th ed., Hydraulics,
    /// 1911.</summary>
    /// <param name="throat">Diameter; 0.5 mm to 100 mm.</param>
    public static Nozzle SharpEdged(Length throat) => new(throat)
    {
        WaterVelocityCoefficient = 0.97,
        WaterContractionCoefficient = 0.64,
        AirDischargeCoefficient = 0.85,
        Source = new("Encyclopaedia Britannica", "11th ed., Hydraulics, sharp-edged orifice (air: unverified, choked flow contracts less)",
            1911, "0.97 × 0.64"),
    };

    /// <summary>
    /// A conical converging mouth at its best angle of 13.4°: discharge 0.946, velocity 0.963. Source: Castel's measurements (unverified:
    /// confirm).
    /// </summary>
    /// <param name="throat">Narrowest diameter; 0.5 mm to 100 mm.</param>
    public static Nozzle Conical(Length throat) => new(throat)
    {
        WaterVelocityCoefficient = 0.963,
        WaterContractionCoefficient = 0.946 / 0.963,
        AirDischargeCoefficient = 0.95,
        Source = new("Castel", "conical converging mouthpieces", null, "13.4°: discharge 0.946, velocity 0.963", SourceKind.Unverified),
    };

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var share = new ValidRange<double>(0.3, 1);
        Finding?[] all =
        [
            new ValidRange<Length>(0.5.Millimetres(), 100.Millimetres()).Find(Throat, "nozzle throat", "It is a diameter; check its unit."),
            share.Find(WaterVelocityCoefficient, "velocity coefficient for water",
                "A jet isn't faster than the ideal one, and none is known below 0.3."),
            share.Find(WaterContractionCoefficient, "contraction coefficient for water",
                "A jet isn't wider than its hole; a re-entrant tube has 0.5."),
            share.Find(AirDischargeCoefficient, "discharge coefficient for air", "It is effective over geometric area."),
        ];
        return [.. all.OfType<Finding>()];
    }
}
