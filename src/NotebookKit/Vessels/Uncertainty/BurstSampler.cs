using NotebookKit.Numerics;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Breaks a vessel many times over with everything that scatters drawn anew; the same seed gives the same bursts on any number of
/// threads.</summary>
internal sealed class BurstSampler
{
    /// <summary>Everything that is drawn, in the order of its random variable.</summary>
    public static IReadOnlyList<string> Variables { get; } =
    [
        "fabrication efficiency, not known", "making, vessel to vessel", "fibre strength", "fibre modulus", "resin strength",
            "fibre fraction", "angle of the sleeves",
        "fibre laid", "liner yield strength", "nozzle bond", "forward bond", "closure strength",
            "place between the fibres as laid and the laminate",
    ];

    /// <summary>Spread of what peel leaves of a bond [-]; common practice, no source.</summary>
    private const double PeelSpread = 0.2;

    private readonly VesselWall _wall;
    private readonly SeededSamples _samples;
    private readonly double[] _sigma;
    private readonly EndMode[] _nozzle;
    private readonly EndMode[] _forward;
    private readonly double _sleevePascals;
    private readonly double _fractionSpread;
    private readonly double _angleSpread;

    public BurstSampler(PressureVessel vessel, Layup layup, ulong seed)
    {
        _wall = Worth(new VesselWall(layup), vessel);
        _samples = new SeededSamples(seed);
        var fibres = layup.Plies.Select(p => LayupModel.FibreOf(p.Ply)).OfType<Materials.Solids.Fibre>().ToList();
        var yarns = vessel.Plies.OfType<BraidedSleeve>().Select(s => s.Braid.Yarn.Spread)
            .Concat(vessel.Plies.OfType<ClothWrap>().Select(w => w.Cloth.ArealWeight.Spread))
            .Concat(vessel.Plies.OfType<HoopWrap>().Select(h => h.Tape.ArealWeight.Spread));
        _sigma =
        [
            0,
            Log(vessel.Fabrication.VesselSpread),
            Log(Maximum(fibres.Select(f => f.TensileStrength.Spread))),
            Log(Maximum(fibres.Select(f => f.LongitudinalModulus.Spread))),
            Log(vessel.Resin.TensileStrength.Spread),
            0,
            0,
            Log(Maximum(yarns)),
            Log(vessel.Liner.Material?.YieldStrength.Spread ?? 0),
            Log(Bond(vessel.NozzleEnd)),
            Log(Bond(vessel.ForwardEnd)),
            Log(Math.Max(vessel.NozzleEnd.Closure.Material.YieldStrength.Spread, vessel.ForwardEnd.Closure.Material.YieldStrength.Spread)),
            0,
        ];
        var engine = _wall.NewEngine();
        _wall.Set(engine, BurstModel.MeanFactors(vessel), FailureCriterion.MaximumStress);
        var context = _wall.Context(engine.Layers);
        // Pressures of the ends at the means; a sample scales them by what drives each.
        _nozzle = [.. EndModel.Modes(vessel.NozzleEnd, context).Where(m => m.Kind == PartFailure.Burst)];
        _forward = [.. EndModel.Modes(vessel.ForwardEnd, context).Where(m => m.Kind == PartFailure.Burst)];
        _sleevePascals = context.SleevePascals;
        _fractionSpread = vessel.Fabrication.FibreFractionSpread.DecimalFractions;
        _angleSpread = vessel.Fabrication.AngleSpread.Radians;
    }

    /// <summary>
    /// The wall with those inner walls that come near to ruling it; the others never rule a sample that matters (a band of a tenth, common
    /// practice, no source).
    /// </summary>
    private static VesselWall Worth(VesselWall wall, PressureVessel vessel)
    {
        var engine = wall.NewEngine();
        var factors = BurstModel.MeanFactors(vessel);
        var (low, high) = BurstModel.Band(wall, engine, factors);
        return wall.Keeping(w =>
        {
            var (ownLow, ownHigh) = BurstModel.BandOfOne(w, engine, factors);
            return ownLow > 0.9 * low || ownHigh > 0.9 * high;
        });
    }

    /// <summary>Standard normal or, for the last one, uniform number of a variable.</summary>
    public double Draw(long sample, int variable) => variable == Variables.Count - 1 ? _samples.Uniform(sample, variable)
        : _samples.Normal(sample, variable);

    /// <summary>Bursts the vessel so many times.</summary>
    /// <param name="count">How many times.</param>
    /// <param name="efficiency">Efficiency for the uniform number of a sample [-].</param>
    /// <param name="lowEnd">Whether a wall is taken at its low end.</param>
    /// <param name="threads">Most threads; −1 for as many as there are.</param>
    /// <param name="wallOnly">Whether the ends are left out.</param>
    /// <returns>Burst [Pa] and the number of the weakest part, 0 the wall.</returns>
    public (double[] Bursts, byte[] Parts) Run(int count, Func<double, double> efficiency, bool lowEnd, int threads = -1,
        bool wallOnly = false)
    {
        var bursts = new double[count];
        var parts = new byte[count];
        const int block = 250;
        var run = WorkRun.Current;
        Parallel.For(0, (count + block - 1) / block, run.Parallel(threads), _wall.NewEngine, (b, _, engine) =>
        {
            for (var i = b * block; i < Math.Min(count, (b + 1) * block); i++)
            {
                run.ThrowIfStopped();
                (bursts[i], parts[i]) = Break(engine, i, efficiency, lowEnd, wallOnly);
            }

            return engine;
        }, _ => { });
        return (bursts, parts);
    }

    private (double Burst, byte Part) Break(WallEngine engine, long i, Func<double, double> efficiency, bool lowEnd, bool wallOnly)
    {
        var factors = new LayerFactors(
            efficiency(_samples.Uniform(i, 0)) * Factor(i, 1), Factor(i, 2), Factor(i, 3), Factor(i, 4),
            _fractionSpread * _samples.Normal(i, 5), _angleSpread * _samples.Normal(i, 6), Factor(i, 7));
        var (low, high) = BurstModel.Band(_wall, engine, factors, Factor(i, 8));
        var burst = low + (lowEnd ? 0 : _samples.Uniform(i, 12)) * (high - low);

        if (wallOnly) return (burst, 0);
        byte part = 0, number = 0;
        var sleeve = _sleevePascals > 0 ? _wall.SleevePascals(engine.Layers) / _sleevePascals : 1;
        var closure = Factor(i, 11);
        Weaken(_nozzle, closure, Factor(i, 9), sleeve, ref burst, ref part, ref number);
        Weaken(_forward, closure, Factor(i, 10), sleeve, ref burst, ref part, ref number);
        return (burst, part);
    }

    /// <summary>Parts are numbered as the burst prediction lists them.</summary>
    private static void Weaken(EndMode[] modes, double closure, double bond, double sleeve, ref double burst, ref byte part,
        ref byte number)
    {
        foreach (ref readonly var mode in modes.AsSpan())
        {
            number++;
            var pressure = mode.At(closure, bond, sleeve);
            if (pressure < burst) (burst, part) = (pressure, number);
        }
    }

    /// <summary>A factor about 1 that never falls below 0: lognormal with mean 1.</summary>
    private double Factor(long sample, int variable)
    {
        var sigma = _sigma[variable];
        return sigma > 0 ? Math.Exp(sigma * _samples.Normal(sample, variable) - 0.5 * sigma * sigma) : 1;
    }

    private static double Log(double spread) => Math.Sqrt(Math.Log(1 + spread * spread));

    private static double Maximum(IEnumerable<double> spreads) => spreads.DefaultIfEmpty(0).Max();

    /// <summary>Spread of a bond: its coupon's, and that of the share of peel, which no source gives.</summary>
    private static double Bond(VesselEnd end)
    {
        var coupon = Maximum(end.Joints.OfType<BondedPlug>().Select(p => p.CouponStrength.Spread)
            .Concat(end.Fitting is BondedFitting fitting ? [fitting.CouponStrength.Spread] : []));
        return coupon > 0 ? Math.Sqrt(coupon * coupon + PeelSpread * PeelSpread) : 0;
    }
}
