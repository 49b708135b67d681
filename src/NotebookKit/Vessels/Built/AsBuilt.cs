using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Built;

/// <summary>A vessel as it was built, beside the vessel as it was designed: thickness, fibre share, voids, mass, burst.</summary>
/// <remarks>
/// Source: voids, ASTM D2734 (density measured against density without voids); fibre share from mass of fibre and volume, ASTM D3171;
/// uncertainty to first order, JCGM 100:2008 (GUM), independent readings.
/// </remarks>
public sealed record AsBuilt : Result
{
    private readonly AsBuiltNumbers _numbers;
    private readonly Layup _builtLayup;
    private readonly Layup _designedLayup;

    internal AsBuilt(PressureVessel designed, AsBuiltReadings readings, Layup designedLayup, PressureVessel built, Layup builtLayup,
        AsBuiltNumbers numbers, IReadOnlyList<Finding> findings)
    {
        (Designed, Readings, Vessel, Findings) = (designed, readings, built, findings);
        (_numbers, _builtLayup, _designedLayup) = (numbers, builtLayup, designedLayup);
        DesignedBurst = designed.Burst().Burst;
        Burst = built.Burst().Burst;
    }

    /// <summary>The vessel as designed.</summary>
    public PressureVessel Designed { get; }

    /// <summary>What was weighed and measured.</summary>
    public AsBuiltReadings Readings { get; }

    /// <summary>The vessel as built: the design with the fibre that was weighed, at most the design's, in the thickness that was measured.
    /// Every later answer of it says so.</summary>
    public PressureVessel Vessel { get; }

    /// <summary>Fibre volume over laminate volume of all plies but veils. Source: ASTM D3171.</summary>
    public Estimate<Ratio> FibreFraction => Share(_numbers.FibreFraction);

    /// <summary>Voids over laminate volume; a little below zero where the readings can't tell. Source: ASTM D2734.</summary>
    public Estimate<Ratio> Voids => Share(_numbers.Voids);

    /// <summary>Resin over laminate mass. Source: balance of masses.</summary>
    public Estimate<Ratio> ResinShare => Share(_numbers.ResinShare);

    /// <summary>Cured thickness of all plies together. Source: geometry.</summary>
    public Estimate<Length> Thickness => new(Length.FromMillimeters(1000 * _numbers.Thickness.Value),
        _numbers.Thickness.Standard is { } u ? Length.FromMillimeters(2000 * u) : null);

    /// <summary>Dry fibre in all plies, veils included.</summary>
    public Estimate<Mass> FibreMass => Grams(_numbers.FibreMass);

    /// <summary>Resin in all plies.</summary>
    public Estimate<Mass> ResinMass => Grams(_numbers.ResinMass);

    /// <summary>Liner and laminate, without fittings.</summary>
    public Estimate<Mass> WallMass => Grams(_numbers.WallMass);

    /// <summary>Wet less cured: resin that was peeled, dripped or trimmed off. None where the wet vessel wasn't weighed.</summary>
    public Mass? Lost => Readings.Wet is { } wet
        ? Mass.FromGrams(wet.Value.Grams - 1000 * _numbers.WallMass.Value) : null;

    /// <summary>Cured thickness of each ply as built, from the inside out. Source: the measured thickness, shared out by the plies'
    /// fibre.</summary>
    public IReadOnlyList<Length> PlyThicknesses => [.. _builtLayup.Plies.Select(p => p.Thickness)];

    /// <summary>Burst as designed.</summary>
    public GaugePressure DesignedBurst { get; }

    /// <summary>Burst as built.</summary>
    public GaugePressure Burst { get; }

    /// <inheritdoc/>
    public override string Title =>
        $"{Designed.Name} as built{(string.IsNullOrWhiteSpace(Readings.Serial) ? "" : $", {Readings.Serial!.Trim()}")}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Fibre, resin and voids by weighing",
        [
            "Fibre and resin are shared out over the ends as over the straight part.",
            "Readings are independent; an error of ± a reads as any value within it, a/√3. What is shown is ± two standard uncertainties.",
            "More fibre than designed isn't counted for strength, less is.",
            "What share of the fibre's strength arrives isn't weighed: it stays that of the design until a burst shows it.",
            "Voids change no burst pressure here; what they take is said as a warning.",
        ],
        "Fibre volume fractions of 5 to 78.5 %, voids of up to 25 %.",
        [VesselSources.Voids, VesselSources.ConstituentContent, VesselSources.Uncertainty, VesselSources.VoidKnockDown]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Fibre volume fraction", FibreFraction.ToString(), $"as built; {FractionOf(_designedLayup).Show()} as designed"),
        new("Voids", Voids.ToString(), "as built; none as designed"),
        new("Resin by mass", ResinShare.ToString(), $"as built; {DesignedResin.Show()} as designed"),
        new("Cured thickness", Thickness.ToString(), $"as built; {_designedLayup.Thickness.ToUnit(LengthUnit.Millimeter).Show()} as "
            + $"designed"),
        .. _builtLayup.Plies.Select((p, i) => new ResultLine($"Thickness of {_builtLayup.NameOf(i)}",
            p.Thickness.ToUnit(LengthUnit.Millimeter).Show(),
            $"as built; {_designedLayup.Plies[i].Thickness.ToUnit(LengthUnit.Millimeter).Show()} as designed")),
        new("Dry fibre", FibreMass.ToString(), $"as built; {_designedLayup.FibreMass.Show()} as designed"),
        new("Liner and laminate", WallMass.ToString(),
            $"as built; {(_designedLayup.FibreMass + _designedLayup.ResinMass + _designedLayup.LinerMass).Show()} as designed"),
        .. Lost is { } lost ? [new ResultLine("Lost between wet and cured", lost.Show())] : Array.Empty<ResultLine>(),
        new("Burst", Burst.ToString(), $"as built; {DesignedBurst} as designed"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForBench, .. Provenance.Cautions.ForPressure];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Resin by mass", @"w_r = 1 - \frac{m_f}{m_{cured} - m_{liner} - m_{fittings}}",
            $"1 − {FibreMass.Value.Show(4)} / ({Readings.Cured.Value.Show(4)} − {Readings.Liner.Value.Show(4)}"
            + $"{(Readings.Fittings is { } f ? $" − {f.Value.Show(4)}" : "")})", ResinShare.ToString(), VesselSources.ConstituentContent),
        new("Fibre volume fraction", @"V_f = \frac{A_f}{A_{laminate}}",
            "fibre in a section of the straight part over the laminate's section",
            FibreFraction.ToString(), VesselSources.ConstituentContent),
        new("Voids", @"V_v = 1 - \frac{\rho_{measured}}{\rho_{solid}},\ \frac{1}{\rho_{solid}} = \frac{w_f}{\rho_f} + \frac{w_r}{\rho_r}",
            Readings.Sample is { } sample ? $"sample of {sample.Mass.Value.Show(4)} that displaces {sample.Displaced.Value.Show(4)}"
                : "laminate's mass along the straight part over its section", Voids.ToString(), VesselSources.Voids),
    ]);

    internal static Ratio FractionOf(Layup layup)
    {
        double fibre = 0, all = 0;
        foreach (var ply in layup.Plies.Where(p => p.CarriesLoad))
        {
            var ring = Math.Pow(ply.OuterDiameter.Meters, 2) - Math.Pow(ply.InnerDiameter.Meters, 2);
            fibre += ring * ply.FibreFraction.DecimalFractions;
            all += ring;
        }

        return Ratio.FromPercent(100 * fibre / all);
    }

    private Ratio DesignedResin => Ratio.FromPercent(100 * (_designedLayup.ResinMass / (_designedLayup.ResinMass
        + _designedLayup.FibreMass)));

    private static Estimate<Ratio> Share((double Value, double? Standard) number) =>
        new(Ratio.FromPercent(100 * number.Value), number.Standard is { } u ? Ratio.FromPercent(200 * u) : null);

    private static Estimate<Mass> Grams((double Value, double? Standard) number) =>
        new(Mass.FromGrams(1000 * number.Value), number.Standard is { } u ? Mass.FromGrams(2000 * u) : null);
}
