using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Vessels;

/// <summary>Budgets: one burst 100 µs, 20 000 sampled bursts 2 s, two hundred layups 3 s, on two cores.</summary>
[MemoryDiagnoser]
public class VesselBenchmarks
{
    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;

    private readonly PressureVessel _vessel = new(
        "invented vessel", new Liner(Stock.Solid("PVC-U"), 66.Millimetres(), 1.5.Millimetres()), 450.Millimetres(),
            Stock.Resin("laminating epoxy"),
        [new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm heavy")), new ClothWrap(Stock.Cloth("glass plain 80 g")),
            new VeilWrap(Stock.Veil("glass veil 30 g"))],
        new VesselEnd(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 14.Millimetres()) { Opening = 22.Millimetres() },
            new CarriedSleeve { Neck = 54.Millimetres(), IsTiedOff = true }),
        new VesselEnd(DomedClosure.Ellipsoid(Stock.Solid("aluminium 6061-T6"), 2.Millimetres(), 66.Millimetres()),
            new CarriedSleeve { Neck = 54.Millimetres(), IsTiedOff = true }));

    private PressureVessel _withEnds = null!;
    private Layup _layup = null!;
    private VesselWall _wall = null!;
    private NotebookKit.Vessels.Laminates.WallEngine _engine = null!;
    private LayupSearch _search = null!;

    [GlobalSetup]
    public void Setup()
    {
        var aluminium = Stock.Solid("aluminium 6061-T6");
        var end = new VesselEnd(DomedClosure.Hemisphere(aluminium, 3.Millimetres(), 66.Millimetres()) with { Opening = 20.Millimetres() },
            new BondedPlug(Stock.Adhesive("structural epoxy"), 30.Millimetres(), BondSurface.AbradedPlastic, BondSurface.AbradedMetal),
            new CarriedSleeve { Neck = 54.Millimetres(), Tail = 40.Millimetres() })
        {
            Fitting = new ThreadedFitting(aluminium, 20.Millimetres(), 1.5.Millimetres(), 12.Millimetres())
            {
                Boss = 28.Millimetres(), Seal = new Seal(SealKind.ORing) { HoldsTo = 120.BarGauge() },
            },
            Discs = new CapDiscs(Stock.Cloth("carbon twill 200 g"), 2),
        };
        _withEnds = _vessel with { NozzleEnd = end, ForwardEnd = end };
        _layup = _vessel.Layup();
        _wall = new VesselWall(_layup);
        _engine = _wall.NewEngine();
        _search = new LayupSearch(
            _vessel,
            [Stock.Braid("carbon sleeve 65 mm light"), Stock.Braid("carbon sleeve 65 mm heavy"), Stock.Braid("glass sleeve 65 mm"),
                Stock.Braid("carbon sleeve 76 mm"), Stock.Braid("carbon sleeve 50 mm heavy")],
            [new HoopWrap(Stock.Cloth("carbon tape 150 g")), new ClothWrap(Stock.Cloth("carbon twill 200 g")),
                new ClothWrap(Stock.Cloth("glass plain 80 g"))]);
    }

    /// <summary>The path of damage alone, plies grown anew: what a sample of the distribution costs.</summary>
    [Benchmark]
    public double Wall_of_one_sample()
    {
        _wall.Set(_engine, new LayerFactors(0.6), NotebookKit.Vessels.Laminates.FailureCriterion.MaximumStress);
        return _engine.Run().BurstLineLoad;
    }

    /// <summary>A whole prediction with validation, layup and ends.</summary>
    [Benchmark]
    public double Burst() => _vessel.Burst().Burst.Bar;

    /// <summary>The same with both ends whole: bond, tail, fitting, seal and discs.</summary>
    [Benchmark]
    public double Burst_with_full_ends() => _withEnds.Burst().Burst.Bar;

    /// <summary>Twenty thousand sampled vessels with such ends.</summary>
    [Benchmark]
    public double Twenty_thousand_bursts_with_full_ends() => _withEnds.SampleBursts().BBasis.Bar;

    /// <summary>Twenty thousand sampled vessels and the basis values.</summary>
    [Benchmark]
    public double Twenty_thousand_bursts() => _vessel.SampleBursts().BBasis.Bar;

    /// <summary>So many sampled vessels.</summary>
    public static object Sampled(int samples) => new VesselBenchmarks()._vessel.SampleBursts(samples);

    /// <summary>Two hundred and nine layups, rated and weighed.</summary>
    [Benchmark]
    public int Two_hundred_layups() => _search.Run().Choices.Count;
}
