using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Built;

/// <summary>What was weighed and measured of one vessel while it was made. What isn't given wasn't measured; it isn't taken as
/// zero.</summary>
/// <remarks>Source: readings as ASTM D3171 and D2734 ask for them, taken on a whole tube.</remarks>
public sealed record AsBuiltReadings
{
    /// <summary>Serial, as it stands on the vessel; none where it has none yet.</summary>
    public string? Serial { get; init; }

    /// <summary>Mass of the bare liner, cut to length; above 0.</summary>
    public required Reading<Mass> Liner { get; init; }

    /// <summary>Mass of liner and cured laminate, peel ply off and trimmed; above 0.</summary>
    public required Reading<Mass> Cured { get; init; }

    /// <summary>Mass of whatever else lay on the scale with the cured vessel: closures, fittings. None where nothing did.</summary>
    public Reading<Mass>? Fittings { get; init; }

    /// <summary>Mass of liner and wet laminate before it cured; not given where it wasn't weighed.</summary>
    public Reading<Mass>? Wet { get; init; }

    /// <summary>Mass of all dry fibre as cut, veil included, without what was trimmed off; not given where it wasn't weighed: then the
    /// design's stands.</summary>
    public Reading<Mass>? DryFibre { get; init; }

    /// <summary>The same ply by ply, in place of <see cref="DryFibre"/>; plies that aren't in it keep the design's.</summary>
    public IReadOnlyList<PlyReading> DryPlies { get; init; } = [];

    /// <summary>Outer diameters over the cured laminate, at several stations of the straight part; one at the least unless a sample was
    /// displaced.</summary>
    public IReadOnlyList<Reading<Length>> OuterDiameters { get; init; } = [];

    /// <summary>Outer diameters of the bare liner; the design's where none were measured.</summary>
    public IReadOnlyList<Reading<Length>> LinerDiameters { get; init; } = [];

    /// <summary>Length that is wrapped, along the vessel; the design's where it wasn't measured.</summary>
    public Reading<Length>? WrappedLength { get; init; }

    /// <summary>An offcut weighed and displaced in water; none where there is none.</summary>
    public SampleReading? Sample { get; init; }

    /// <summary>Everything wrong with the readings by themselves.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings = [.. OfMass(Liner, "mass of the bare liner"), .. OfMass(Cured, "mass of the cured vessel"),
            .. OfMass(Fittings, "mass of the fittings"), .. OfMass(Wet, "mass of the wet vessel"), .. OfMass(DryFibre, "mass of dry fibre"),
            .. OfMass(Sample?.Mass, "mass of the sample")];
        foreach (var ply in DryPlies) findings.AddRange(OfMass(ply.DryFibre, $"dry fibre of ply {ply.Ply}"));
        for (var i = 0; i < OuterDiameters.Count; i++) findings.AddRange(OfLength(OuterDiameters[i], $"outer diameter at station {i + 1}",
            600));
        for (var i = 0; i < LinerDiameters.Count; i++) findings.AddRange(OfLength(LinerDiameters[i], $"liner diameter at station {i + 1}",
            600));
        findings.AddRange(OfLength(WrappedLength, "wrapped length", 6000));
        if (Sample is { } sample)
        {
            findings.Add(new ValidRange<Volume>(0.05.Millilitres(), 1.Litres()).Find(sample.Displaced.Value, "volume the sample displaces",
                "An offcut displaces some millilitres."));
            findings.Add(sample.Displaced.Within is { } within
                ? new ValidRange<Volume>(Volume.Zero, sample.Displaced.Value / 2).Find(within, "error of the displaced volume",
                    "A reading that may be half wrong says nothing; take a finer burette or a larger sample.") : null);
        }

        if (DryFibre is not null && DryPlies.Count > 0) findings.Add(VesselsFindings.DryFibreIsGivenTwice());
        if (OuterDiameters.Count == 0 && Sample is null) findings.Add(VesselsFindings.NeitherDiameterNorSample());
        return findings.OfType<Finding>().ToList();
    }

    private static IEnumerable<Finding?> OfMass(Reading<Mass>? reading, string name)
    {
        if (reading is null) yield break;
        yield return new ValidRange<Mass>(0.1.Grams(), 100.Kilograms()).Find(reading.Value, name, "Check the unit it was given in.");
        if (reading.Within is { } within)
            yield return new ValidRange<Mass>(Mass.Zero, reading.Value / 2).Find(within, $"error of the {name}",
                "A reading that may be half wrong says nothing; take a finer scale.");
    }

    private static IEnumerable<Finding?> OfLength(Reading<Length>? reading, string name, double mostMillimetres)
    {
        if (reading is null) yield break;
        yield return new ValidRange<Length>(5.Millimetres(), mostMillimetres.Millimetres()).Find(reading.Value, name,
            "Check the unit it was given in.");
        if (reading.Within is { } within)
            yield return new ValidRange<Length>(Length.Zero, reading.Value / 10).Find(within, $"error of the {name}",
                "A calliper reads to 0.1 mm, a girth tape to 0.5 mm over the girth.");
    }
}

/// <summary>Dry fibre of one ply.</summary>
/// <param name="Ply">Number of the ply, counted from the inside; 1 or above.</param>
/// <param name="DryFibre">Its mass as cut, without what was trimmed off.</param>
public sealed record PlyReading(int Ply, Reading<Mass> DryFibre);

/// <summary>An offcut of the laminate.</summary>
/// <param name="Mass">Its mass, dry, in air.</param>
/// <param name="Displaced">The water that it displaces. Source: ASTM D792 (displacement).</param>
public sealed record SampleReading(Reading<Mass> Mass, Reading<Volume> Displaced);
