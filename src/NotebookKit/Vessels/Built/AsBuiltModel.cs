using NotebookKit.Materials.Solids;
using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using NotebookKit.Vessels.Limits;
using UnitsNet;

namespace NotebookKit.Vessels.Built;

/// <summary>Weighs a vessel: shares of fibre, resin and voids from masses, diameters and a sample, uncertainty to first order.</summary>
internal sealed class AsBuiltModel
{
    // Voids that may be read below zero where no reading gives its error. Common practice, no source.
    private const double BelowZero = 0.02;
    private const double MostVoids = 0.25;

    private readonly Layup _layup;
    private readonly AsBuiltReadings _readings;
    private readonly List<double> _values = [];
    private readonly List<double?> _standard = [];
    private readonly int _cured, _liner, _fittings, _length, _outer, _inner, _fibreDensity, _resinDensity, _sampleMass, _sampleVolume;
    private readonly int[] _dry;
    private readonly double[] _designedDry;
    private readonly bool _hasDiameters, _hasSample;

    private AsBuiltModel(Layup layup, AsBuiltReadings readings)
    {
        (_layup, _readings) = (layup, readings);
        _cured = Add(readings.Cured);
        _liner = Add(readings.Liner);
        _fittings = readings.Fittings is { } fittings ? Add(fittings) : Add(0, 0);
        // A length of the design's is exact only as far as it was cut so: it is taken as the design says, and its error isn't known.
        _length = readings.WrappedLength is { } length ? Add(length.Value.Meters, Standard(length.Within?.Meters))
            : Add(LayupModel.WallLength(layup.Vessel).Meters, 0);
        _outer = Mean(readings.OuterDiameters, double.NaN);
        _inner = Mean(readings.LinerDiameters, layup.Vessel.Liner.OuterDiameter.Meters);
        _hasDiameters = readings.OuterDiameters.Count > 0;
        _hasSample = readings.Sample is not null;
        _fibreDensity = Add(1, FibreDensitySpread());
        _resinDensity = Add(layup.Vessel.Resin.Density.Value.KilogramsPerCubicMeter,
            layup.Vessel.Resin.Density.Value.KilogramsPerCubicMeter * layup.Vessel.Resin.Density.Spread);
        (_sampleMass, _sampleVolume) = readings.Sample is { } sample
            ? (Add(sample.Mass), Add(sample.Displaced.Value.CubicMeters, Standard(sample.Displaced.Within?.CubicMeters)))
            : (Add(double.NaN, 0), Add(double.NaN, 0));
        _designedDry = [.. layup.Plies.Select(p => p.FibreMass.Kilograms)];
        _dry = Dry();
    }

    public static AsBuilt Of(PressureVessel vessel, AsBuiltReadings readings)
    {
        var subject = $"{vessel.Name} as built";
        List<Finding> findings = [.. readings.Validate()];
        var layup = vessel.Layup();
        foreach (var ply in readings.DryPlies)
            if (ply.Ply < 1 || ply.Ply > layup.Plies.Count)
                findings.Add(VesselsFindings.PlyIsNotInDesign(ply.Ply, layup.Plies.Count));
        if (readings.DryPlies.Select(p => p.Ply).Distinct().Count() < readings.DryPlies.Count)
            findings.Add(VesselsFindings.PlyIsWeighedTwice());
        if (!layup.Plies.Any(p => p.CarriesLoad)) findings.Add(VesselsFindings.NoLaminateToWeigh(vessel.Name));
        InvalidDesignException.ThrowIfAny(subject, findings);
        var model = new AsBuiltModel(layup, readings);
        findings.AddRange(model.FindMasses());
        InvalidDesignException.ThrowIfAny(subject, findings);
        var numbers = model.Numbers();
        findings.AddRange(model.FindShares(numbers));
        InvalidDesignException.ThrowIfAny(subject, findings);
        var built = model.Rebuild(numbers);
        findings.AddRange(model.Remarks(numbers));
        return new AsBuilt(vessel, readings, layup, built, built.Layup(), numbers, findings);
    }

    // ---- inputs

    private int Add(double value, double? standard)
    {
        _values.Add(value);
        _standard.Add(standard);
        return _values.Count - 1;
    }

    private int Add(Reading<Mass> reading) => Add(reading.Value.Kilograms, Standard(reading.Within?.Kilograms));

    private static double? Standard(double? within) => within / Math.Sqrt(3);

    // Mean of stations: the instrument's error is the same at each of them, the scatter between them goes down with their number.
    private int Mean(IReadOnlyList<Reading<Length>> stations, double otherwise)
    {
        if (stations.Count == 0) return Add(otherwise, 0);
        var mean = stations.Average(s => s.Value.Meters);
        if (stations.Any(s => s.Within is null)) return Add(mean, null);
        var own = stations.Max(s => s.Within!.Value.Meters) / Math.Sqrt(3);
        var scatter = stations.Count < 2 ? 0
            : stations.Sum(s => Math.Pow(s.Value.Meters - mean, 2)) / (stations.Count - 1) / stations.Count;
        return Add(mean, Math.Sqrt(own * own + scatter));
    }

    private int[] Dry()
    {
        if (_readings.DryFibre is { } all) return [Add(all)];
        var dry = new int[_designedDry.Length];
        for (var i = 0; i < dry.Length; i++)
        {
            dry[i] = _readings.DryPlies.FirstOrDefault(p => p.Ply == i + 1) is { } ply ? Add(ply.DryFibre)
                : Add(_designedDry[i], _designedDry[i] * WeightSpread(_layup.Plies[i].Ply));
        }

        return dry;
    }

    private static double WeightSpread(Ply ply) => ply switch
    {
        BraidedSleeve sleeve => sleeve.Braid.Yarn.Spread,
        ClothWrap wrap => wrap.Cloth.ArealWeight.Spread,
        HoopWrap hoop => hoop.Tape.ArealWeight.Spread,
        VeilWrap veil => veil.Veil.ArealWeight.Spread,
        _ => 0,
    };

    private static double DensityOf(Ply ply) => ply is VeilWrap veil ? veil.Veil.FibreDensity.Value.KilogramsPerCubicMeter
        : LayupModel.FibreOf(ply)!.Density.Value.KilogramsPerCubicMeter;

    // One spread for all fibres together: they are of one or two kinds, and their errors go one way.
    private double FibreDensitySpread() => _layup.Plies.Max(p => p.Ply is VeilWrap veil ? veil.Veil.FibreDensity.Spread
        : LayupModel.FibreOf(p.Ply)!.Density.Spread);

    // ---- sums of one set of inputs

    private double Share(double[] x, int ply) => _dry.Length == 1 && _designedDry.Length >= 1 && _readings.DryFibre is not null
        ? x[_dry[0]] / _designedDry.Sum() : x[_dry[ply]] / _designedDry[ply];

    private double FibreMass(double[] x) => _dry.Sum(i => x[i]);

    private double LaminateMass(double[] x) => x[_cured] - x[_liner] - x[_fittings];

    private double ResinShare(double[] x) => 1 - FibreMass(x) / LaminateMass(x);

    private double FibreVolume(double[] x) =>
        Enumerable.Range(0, _designedDry.Length).Sum(i => Share(x,
            i) * _designedDry[i] / DensityOf(_layup.Plies[i].Ply)) / x[_fibreDensity];

    // Density of the solid laminate, without voids (ASTM D2734).
    private double SolidDensity(double[] x) =>
        LaminateMass(x) / (FibreVolume(x) + (LaminateMass(x) - FibreMass(x)) / x[_resinDensity]);

    private double SampleDensity(double[] x) => x[_sampleMass] / x[_sampleVolume];

    private static double Ring(PlyGeometry ply) =>
        Math.PI / 4 * (Math.Pow(ply.OuterDiameter.Meters, 2) - Math.Pow(ply.InnerDiameter.Meters, 2));

    // Fibre in a section of the straight part, m²: the design's, by what was weighed, over the length it was spread on.
    private double FibreArea(double[] x, bool structural) => Enumerable.Range(0, _designedDry.Length)
        .Where(i => !structural || _layup.Plies[i].CarriesLoad)
        .Sum(i => Ring(_layup.Plies[i]) * _layup.Plies[i].FibreFraction.DecimalFractions * Share(x, i)) * Stretch(x) / x[_fibreDensity];

    private double Stretch(double[] x) => LayupModel.WallLength(_layup.Vessel).Meters / x[_length];

    private double LaminateMassPerLength(double[] x) => LaminateMass(x) / FibreMass(x) * Stretch(x) * Enumerable.Range(0,
        _designedDry.Length)
        .Sum(i => Ring(_layup.Plies[i]) * _layup.Plies[i].FibreFraction.DecimalFractions * DensityOf(_layup.Plies[i].Ply) * Share(x, i));

    private double Section(double[] x) => _hasDiameters ? Math.PI / 4 * (x[_outer] * x[_outer] - x[_inner] * x[_inner])
        : LaminateMassPerLength(x) / SampleDensity(x);

    private double Thickness(double[] x) => _hasDiameters ? (x[_outer] - x[_inner]) / 2
        : (Math.Sqrt(x[_inner] * x[_inner] + 4 / Math.PI * Section(x)) - x[_inner]) / 2;

    private double VeilSection => _layup.Plies.Where(p => !p.CarriesLoad).Sum(Ring);

    private double FibreFraction(double[] x) => FibreArea(x, true) / (Section(x) - VeilSection);

    private double FibreMassPerLength(double[] x) => FibreMass(x) / LaminateMass(x) * LaminateMassPerLength(x);

    // A sample by density against density without voids (ASTM D2734); a section of the straight part by the same, with its own plies.
    private double Voids(double[] x) => _hasSample
        ? 1 - SampleDensity(x) / SolidDensity(x)
        : 1 - (FibreArea(x, false) + (LaminateMassPerLength(x) - FibreMassPerLength(x)) / x[_resinDensity]) / Section(x);

    private (double Value, double? Standard) Of(Func<double[], double> function) => FirstOrder.Of(function, [.. _values], [.. _standard]);

    private AsBuiltNumbers Numbers() => new(Of(FibreFraction), Of(Voids), Of(ResinShare), Of(Thickness), Of(FibreMass),
        Of(x => LaminateMass(x) - FibreMass(x)), Of(x => x[_cured] - x[_fittings]));

    // ---- what is said

    private IEnumerable<Finding> FindMasses()
    {
        double[] x = [.. _values];
        if (!(LaminateMass(x) > 0))
            yield return VesselsFindings.CuredIsLighterThanLiner(G(x[_cured]), G(x[_liner]),
                _readings.Fittings is null ? null : G(x[_fittings]));
        else if (!(LaminateMass(x) > FibreMass(x)))
            yield return VesselsFindings.LaminateIsLighterThanFibre(G(LaminateMass(x)), G(FibreMass(x)),
                _readings.DryFibre is null && _readings.DryPlies.Count == 0);
        if (_readings.Wet is { } wet && x[_cured] - x[_fittings] > wet.Value.Kilograms
            + (wet.Within?.Kilograms ?? 0) + (_readings.Cured.Within?.Kilograms ?? 0))
            yield return VesselsFindings.CuredIsHeavierThanWet(G(x[_cured] - x[_fittings]), G(wet.Value.Kilograms));
        if (_hasDiameters && !(Section(x) > VeilSection))
            yield return VesselsFindings.OuterDiameterTooSmall(Millimetres(x[_outer]), Millimetres(x[_inner]));
    }

    private static IEnumerable<Finding> FindShares(AsBuiltNumbers n, string remedy)
    {
        var low = n.Voids.Standard is { } u ? -2 * u : -BelowZero;
        if (!(n.Voids.Value >= low && n.Voids.Value <= MostVoids))
            yield return VesselsFindings.VoidsOutOfRange(100 * n.Voids.Value, 100 * low, 100 * MostVoids, n.Voids.Standard is not null,
                remedy);
        if (CompositeLimits.FindFibreFraction((100 * n.FibreFraction.Value).Percent(), "fibre volume fraction as built") is { } finding)
            yield return finding;
    }

    private IEnumerable<Finding> FindShares(AsBuiltNumbers n) => FindShares(n, _hasSample
        ? "weigh and displace the sample again" : "measure the diameters and weigh the vessel again");

    private IEnumerable<Finding> Remarks(AsBuiltNumbers n)
    {
        if (n.Voids.Standard is null) yield return VesselsFindings.ReadingsWithoutError();
        var upTo = n.Voids.Value + 2 * (n.Voids.Standard ?? 0);
        if (upTo >= 0.01) yield return VesselsFindings.VoidsTakeStrength(100 * n.Voids.Value, 100 * upTo);
        if (_readings.DryFibre is null && _readings.DryPlies.Count == 0) yield return VesselsFindings.DryFibreWasNotWeighed();
        if (FibreRatio() > 1.001) yield return VesselsFindings.MoreFibreIsNotCredited(100 * (FibreRatio() - 1));
        if (_values[_inner] / _layup.Vessel.Liner.OuterDiameter.Meters - 1 is var off && Math.Abs(off) > 0.005)
            yield return VesselsFindings.LinerIsOfAnotherDiameter(Millimetres(_values[_inner]),
                Millimetres(_layup.Vessel.Liner.OuterDiameter.Meters));
    }

    private static string G(double kilograms) => $"{Digits.Round(1000 * kilograms, 4)} g";

    private static string Millimetres(double metres) => $"{Digits.Round(1000 * metres, 4)} mm";

    // ---- the vessel as built

    private double FibreRatio() => FibreArea([.. _values], true) * _values[_fibreDensity] / _layup.Plies.Where(p => p.CarriesLoad)
        .Sum(p => Ring(p) * p.FibreFraction.DecimalFractions);

    /// <summary>The design with the fibre that is there, at most the design's, in the thickness that was measured.</summary>
    private PressureVessel Rebuild(AsBuiltNumbers n)
    {
        var x = _values.ToArray();
        var plies = _layup.Plies.Select((p, i) => Scaled(p.Ply, Math.Min(1, Share(x, i) * Stretch(x)))).ToList();
        var design = _layup.Vessel;
        // The thickness of a ply goes nearly inversely with its fibre fraction: a few rounds bring it to the measured one.
        var factor = 1.0;
        var built = design;
        for (var round = 0; round < 12; round++)
        {
            built = design with
            {
                Plies = [.. plies.Select(p => p.FibreFraction is { } own && p is not VeilWrap
                    ? p with { FibreFraction = Ratio.FromPercent(own.Percent * factor) } : p)],
                Fabrication = design.Fabrication with
                {
                    FibreFraction = Ratio.FromPercent(design.Fabrication.FibreFraction.Percent * factor),
                    FibreFractionSpread = n.FibreFraction.Standard is { } u ? Ratio.FromPercent(Math.Min(15, 100 * u))
                        : design.Fabrication.FibreFractionSpread,
                    AsBuilt = $"fibre volume fraction {Digits.Round(100 * n.FibreFraction.Value)} % as built"
                        + $"{(string.IsNullOrWhiteSpace(_readings.Serial) ? "" : $" ({_readings.Serial!.Trim()})")}, "
                        + $"{Digits.Round(DesignedFraction())} % as designed",
                },
            };
            InvalidDesignException.ThrowIfAny($"{design.Name} as built", built.Validate());
            var layup = built.Layup();
            var ratio = (layup.Thickness.Meters - Veils(layup)) / (n.Thickness.Value - Veils(layup));
            if (Math.Abs(ratio - 1) < 1e-9) break;
            factor *= ratio;
        }

        return built;
    }

    private double DesignedFraction() => AsBuilt.FractionOf(_layup).Percent;

    private static double Veils(Layup layup) => layup.Plies.Where(p => !p.CarriesLoad).Sum(p => p.Thickness.Meters);

    private static Ply Scaled(Ply ply, double share)
    {
        if (Math.Abs(share - 1) < 1e-9) return ply;
        const string how = "as built: dry fibre weighed";
        Cloth Lighter(Cloth cloth) => cloth with
        {
            ArealWeight = Property.Measured(AreaDensity.FromGramsPerSquareMeter(cloth.ArealWeight.Value.GramsPerSquareMeter * share),
                cloth.ArealWeight.Spread, how),
        };
        return ply switch
        {
            BraidedSleeve sleeve => sleeve with
            {
                Braid = sleeve.Braid with
                {
                    Yarn = Property.Measured((sleeve.Braid.Yarn.Value.KilogramsPerMeter * 1e6 * share).Tex(), sleeve.Braid.Yarn.Spread,
                        how),
                },
            },
            ClothWrap wrap => wrap with { Cloth = Lighter(wrap.Cloth) },
            HoopWrap hoop => hoop with { Tape = Lighter(hoop.Tape) },
            // A veil's share carries nothing and is as thick as designed.
            _ => ply,
        };
    }
}
