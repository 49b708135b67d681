using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>How warm a fill makes the inside of the wall, held against what liner and resin take. Errs high: the hotter of a jet that
/// stirs the gas throughout and of one that doesn't, on a vessel as warm as it is on the day.</summary>
/// <remarks>
/// The wall's mean rises by the model of the fill; its inside is warmer by what the heat needs to pass inwards, q L / (3 k) of a plate that
/// is heated steadily on one side and gives none off on the other, and never warmer than the gas. Source: H. S. Carslaw, J. C. Jaeger,
/// Conduction of Heat in Solids, 2nd ed. 1959, section 3.8 (unverified); k: typical of PET and epoxy laminates across their plies.
/// </remarks>
internal static class FillWarmth
{
    private const double ConductivityWPerMK = 0.2;

    // Of plastic and laminate, as the wall of a fill has it.
    private const double HeatPerVolumeJPerM3K = 1200 * 1300;

    /// <summary>What forbids the fill; none where liner and resin stay below what they take, or the fill doesn't follow the wall.</summary>
    public static Finding? Find(FillResult fill, PressureVessel vessel, Temperature? today, Property<Ratio>? moisture, string own)
    {
        if (fill.Fill.Heat != FillHeat.Wall) return null;
        var inside = Inside(fill, today);
        // Where nothing is known of the resin's heat the card says so, and forbids, already.
        return new ResinHeat(vessel, inside, moisture).Most is { } most && inside >= most.Temperature
            ? ClearanceFindings.FillWarmsWall(own, inside, most.Of, most.Temperature) : null;
    }

    /// <summary>Highest temperature of the inside of the wall on the way.</summary>
    internal static Temperature Inside(FillResult fill, Temperature? today)
    {
        var still = Warmest(fill);
        var jet = Math.Clamp(Math.Sqrt(4 / Math.PI * fill.Fill.Restrictor.EffectiveArea.SquareMillimeters), 0.1, 100);
        var stirred = Warmest((fill.Fill with
        {
            Wall = fill.Fill.WallOrPlain with { Inlet = jet.Millimetres(), Stirring = JetStirring.Throughout },
        }).Run());
        var start = Math.Max(fill.Fill.Temperature.DegreesCelsius, today?.DegreesCelsius ?? double.NegativeInfinity);
        return (start + Math.Max(still, stirred)).Celsius();
    }

    /// <summary>By how much the heated side of a wall is warmer than its mean, K.</summary>
    internal static double AboveMean(double fluxWPerM2, double thicknessM) =>
        fluxWPerM2 * thicknessM / (3 * ConductivityWPerMK);

    // Kelvins above the start.
    private static double Warmest(FillResult fill)
    {
        if (fill.WallTemperature is not { } wall || fill.Fill.WallOrPlain is not { HeatCapacity: { } capacity } plain) return 0;
        var perArea = capacity.JoulesPerKelvin / plain.Surface.SquareMeters;
        var thicknessM = perArea / HeatPerVolumeJPerM3K;
        var most = 0.0;
        for (var i = 1; i < wall.Count; i++)
        {
            var seconds = fill.Time[i] - fill.Time[i - 1];
            var flux = seconds > 0 ? perArea * (wall[i] - wall[i - 1]) / seconds : 0;
            var gas = Math.Max(fill.Temperature[i], fill.Temperature[i - 1]);
            most = Math.Max(most, Math.Max(wall[i], Math.Min(wall[i] + AboveMean(flux, thicknessM), gas)) - wall[0]);
        }

        return most;
    }
}
