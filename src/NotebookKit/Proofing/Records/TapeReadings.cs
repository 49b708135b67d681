using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>
/// Girth and length of a vessel before, at and after its proof, read with a tape and a rule from behind cover: through a camera, or off a
/// pointer. Nobody goes near a vessel at pressure.
/// </summary>
/// <remarks>Source: geometry; readings as <see cref="TapeExpansion"/> uses them.</remarks>
public sealed record TapeReadings
{
    /// <summary>Girths, a station each; one at the least.</summary>
    public required IReadOnlyList<StretchReading> Girths { get; init; }

    /// <summary>Lengths between two marks along the vessel; one at the least, else the growth along isn't known.</summary>
    public required IReadOnlyList<StretchReading> Lengths { get; init; }

    /// <summary>Half-width of what the girth tape can't tell apart; 0.001 to 5 mm, 0.5 mm unless said (common practice, no
    /// source).</summary>
    public Length GirthWithin { get; init; } = 0.5.Millimetres();

    /// <summary>Half-width of what the length rule can't tell apart; 0.001 to 5 mm, 0.5 mm unless said (common practice, no
    /// source).</summary>
    public Length LengthWithin { get; init; } = 0.5.Millimetres();

    /// <summary>Water pumped in from no pressure to the proof hold, as weighed or measured in a jug; without it trapped air can't be
    /// told.</summary>
    public Reading<Volume>? WaterPumped { get; init; }

    /// <summary>Everything wrong with these readings.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var within = new ValidRange<Length>(0.001.Millimetres(), 5.Millimetres());
        List<Finding?> findings =
        [
            within.Find(GirthWithin, "error of the girth tape", "A steel tape reads to 0.5 mm, a pi tape to 0.05 mm."),
            within.Find(LengthWithin, "error of the length rule", "A steel rule reads to 0.5 mm, a dial gauge to 0.01 mm."),
            Girths.Count == 0 ? ProofingFindings.NoGirthOrLength("girth") : null,
            Lengths.Count == 0 ? ProofingFindings.NoGirthOrLength("length") : null,
            WaterPumped is { } water ? new ValidRange<Volume>(Volume.Zero, 20.Litres()).Find(water.Value, "water pumped in",
                "Check the unit it was given in.") : null,
            WaterPumped?.Within is { } error ? new ValidRange<Volume>(Volume.Zero, 1.Litres()).Find(error, "error of the water pumped in",
                "A kitchen scale tells 1 mL apart.") : null,
        ];
        foreach (var reading in Girths) findings.AddRange(OfOne(reading, "girth"));
        foreach (var reading in Lengths) findings.AddRange(OfOne(reading, "length"));
        return findings.OfType<Finding>().ToList();
    }

    private static IEnumerable<Finding?> OfOne(StretchReading reading, string what)
    {
        yield return new ValidRange<Length>(15.Millimetres(), 6.Metres()).Find(reading.Before,
            $"{what} at {reading.Station} before the proof",
            "Check the unit it was given in.");
        if (!(reading.Before.Meters > 0)) yield break;
        foreach (var (value, when) in new[] { (reading.AtProof, "at proof"), (reading.After ?? reading.Before, "after the proof") })
            yield return new ValidRange<Length>(0.95 * reading.Before, 1.1 * reading.Before).Find(value,
                $"{what} at {reading.Station} {when}",
                "It must be within −5 % to 10 % of the reading before the proof; was another mark read?");
    }
}

/// <summary>One girth or one length over a proof.</summary>
/// <param name="Station">Where it was read, as it is marked on the vessel.</param>
/// <param name="Before">Without pressure, before the proof; 15 mm to 6 m.</param>
/// <param name="AtProof">During the proof hold, read from behind cover; −5 % to 10 % off the one before.</param>
/// <param name="After">Without pressure, after the proof; −5 % to 10 % off the one before, none where it wasn't read: then what stays isn't
/// known.</param>
public sealed record StretchReading(string Station, Length Before, Length AtProof, Length? After = null);
