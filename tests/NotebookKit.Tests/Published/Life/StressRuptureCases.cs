using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Life;

public class StressRuptureCases
{
    private const string Papers = "Phoenix, Murthy and Thesken, NASA papers on stress rupture (parameters unverified, like "
        + "aramid): computed";

    private static readonly StressRupture Law = new(StressRuptureParameters.LikeAramid);

    private static Ratio Sr(double ratio) => (100 * ratio).Percent();

    [Theory]
    [PublishedCase("L50", Papers)]
    [InlineData(0.5, 1e4, 1.3499162e-4)]
    [InlineData(0.5, 1e5, 2.1373301e-3)]
    [InlineData(0.6, 1e4, 0.0254200699)]
    [InlineData(0.8, 1, 1.6167405e-3)]
    public void Chance_of_breaking(double ratio, double hours, double chance) =>
        Tolerance.Relative(chance, Law.FailureChance([new(Sr(ratio), hours.Hours())]), 1e-7);

    [Theory]
    [PublishedCase("L50", Papers)]
    [InlineData(0.5, 53076.3)]
    [InlineData(0.6, 667.653)]
    public void Time_at_a_reliability(double ratio, double hours) => Tolerance.Relative(hours, Law.TimeTo(Sr(ratio), 0.999).Hours, 1e-6);

    [Fact]
    [PublishedCase("L51", Papers)]
    public void A_proof_counts_as_a_long_time_at_working_pressure()
    {
        Tolerance.Relative(2805.68537, Law.Equivalent(10.Minutes(), Sr(0.75), Sr(0.5)).Hours, 1e-8);
        Tolerance.Relative(3.22509994, Law.Equivalent(1.Hours(), Sr(0.525), Sr(0.5)).Hours, 1e-8);
    }

    [Fact]
    [PublishedCase("L52", Papers)]
    public void In_this_model_a_proof_only_ages_the_vessel()
    {
        LoadHold[] proof = [new(Sr(0.75), 10.Minutes())];
        LoadHold[] service = [new(Sr(0.5), 1e4.Hours())];
        Tolerance.Absolute(0.999847744, Law.ReliabilityGiven(proof, service), 1e-9);
        Tolerance.Absolute(0.999818373, Law.Reliability([.. proof, .. service]), 1e-9);
        Tolerance.Absolute(0.999865008, Law.Reliability(service), 1e-9);
    }
}
