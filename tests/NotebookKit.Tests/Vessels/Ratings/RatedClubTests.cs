using System.Globalization;
using MathNet.Numerics.Distributions;
using NotebookKit.Numerics;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Ratings;

/// <summary>Invented clubs whose truth is known, rated the way a club rates: <c>vessel.Rate(evidence: tests)</c>. More of them by
/// <c>NOTEBOOKKIT_CLUBS</c>.</summary>
public class RatedClubTests
{
    private static readonly int Clubs = int.TryParse(Environment.GetEnvironmentVariable("NOTEBOOKKIT_CLUBS"), NumberStyles.None,
        CultureInfo.InvariantCulture, out var clubs) ? clubs : 30;

    private static readonly PressureVessel Vessel = Samples.Trainer;
    private static readonly PressureVessel Short = Vessel with { Name = "short twin", Length = 120.Millimetres() };
    private static readonly IReadOnlyList<PredictedPart> Parts = Vessel.Burst().PredictedParts();

    // Bursts of whole vessels, bursts of short twins, proofs at 45 % of the predicted burst.
    private static readonly (int Whole, int Short, int Proofs)[] Plans = [(0, 0, 0), (1, 0, 0), (0, 3, 0), (5, 0, 2)];

    private enum World
    {
        ShareFromThePrior,
        ShareDrawnAtWill,
        MeanOff,
        SizeEffectAndMeanOff,
    }

    public static TheoryData<int> EveryWorld => [.. Enumerable.Range(0, Enum.GetValues<World>().Length)];

    [Theory, Trait("Length", "long")]
    [MemberData(nameof(EveryWorld))]
    public void A_rating_rests_on_too_much_in_no_more_than_one_club_in_twenty_and_its_working_pressure_never_does(int world)
    {
        var all = Plans.SelectMany((plan, p) => Enumerable.Range(0, Clubs).Select(club => (plan, Number: 1000L * p + club))).ToList();
        var (missed, tooHigh) = (0, 0);
        Parallel.ForEach(all, one =>
        {
            var club = new Club((World)world, one.Number);
            var rating = Vessel.Rate(evidence: club.Test(one.plan));
            if (rating.DesignBurst.Bar > club.TrueBar(0.10)) Interlocked.Increment(ref missed);
            if (rating.IsRated && rating.WorkingPressure.Bar > club.TrueBar(0.01) / 1.5) Interlocked.Increment(ref tooHigh);
        });
        Assert.True(missed <= 0.05 * all.Count, $"{(World)world}: design burst too high in {missed} of {all.Count} clubs");
        Assert.True(tooHigh == 0, $"{(World)world}: working pressure too high in {tooHigh} of {all.Count} clubs");
    }

    private sealed class Club
    {
        private readonly SeededSamples _numbers = new(512);
        private readonly World _world;
        private readonly long _club;
        private readonly double[] _ratio;
        private readonly double[] _scatter;
        private int _drawn;

        public Club(World world, long club)
        {
            (_world, _club) = (world, club);
            _ratio = [.. Parts.Select(_ => world switch
            {
                World.ShareFromThePrior => Math.Exp(0.175 * Gauss()),
                World.ShareDrawnAtWill => (0.30 + 0.65 * Uniform()) / 0.60,
                _ => 0.55 + 0.45 * Uniform(),
            })];
            _scatter = [.. Parts.Select(_ => 0.06 + 0.14 * Uniform())];
        }

        private bool IsWeibull => _world is World.ShareDrawnAtWill or World.SizeEffectAndMeanOff;

        public VesselEvidence Test((int Whole, int Short, int Proofs) plan)
        {
            var tests = new List<VesselTest>();
            for (var i = 0; i < plan.Whole + plan.Short + plan.Proofs; i++)
            {
                var isShort = i >= plan.Whole && i < plan.Whole + plan.Short;
                var vessel = isShort ? Short : Vessel;
                var strengths = Parts.Select((_, k) => Strength(k, isShort)).ToList();
                var weakest = strengths.Min();
                var proof = 0.45 * Parts.Min(p => p.Burst.Bar);
                tests.Add(i >= plan.Whole + plan.Short && weakest > proof ? new HeldProof(vessel, $"{i}", proof.BarGauge())
                    : new BurstTest(vessel, $"{i}", weakest.BarGauge(), Parts[strengths.IndexOf(weakest)].Name));
            }

            return new VesselEvidence(tests);
        }

        public double TrueBar(double share)
        {
            double low = 0.1, high = 1000;
            while (high - low > 1e-6)
            {
                var middle = 0.5 * (low + high);
                var held = 1.0;
                for (var k = 0; k < Parts.Count; k++)
                {
                    var z = Math.Log(middle / Parts[k].Burst.Bar / _ratio[k]) / _scatter[k];
                    held *= IsWeibull ? Math.Exp(-Math.Log(2) * Math.Exp(z * Math.PI / Math.Sqrt(6))) : Normal.CDF(0, 1, -z);
                }

                if (held > 1 - share) low = middle;
                else high = middle;
            }

            return low;
        }

        private double Strength(int k, bool isShort)
        {
            var unit = _scatter[k] * Math.Sqrt(6) / Math.PI;
            var size = isShort && k == 0 && _world == World.SizeEffectAndMeanOff ? unit * Math.Log(Vessel.Length / Short.Length) : 0;
            var spread = IsWeibull ? unit * (Math.Log(-Math.Log(Uniform())) - Math.Log(Math.Log(2))) : _scatter[k] * Gauss();
            return Parts[k].Burst.Bar * _ratio[k] * Math.Exp(size + spread);
        }

        private double Uniform() => _numbers.Uniform(_club, _drawn++);

        private double Gauss() => _numbers.Normal(_club, _drawn++);
    }
}
