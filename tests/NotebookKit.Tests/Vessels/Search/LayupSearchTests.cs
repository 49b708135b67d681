using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Search;

public class LayupSearchTests
{
    private static readonly LayupSearch Search = new(
        Samples.Trainer with { NozzleEnd = Samples.Trainer.NozzleEnd
            with { Closure = Samples.Trainer.NozzleEnd.Closure with { Wall = 20.Millimetres() } } },
        [Samples.Stock.Braid("carbon sleeve 65 mm light"), Samples.Stock.Braid("carbon sleeve 65 mm heavy"),
            Samples.Stock.Braid("carbon sleeve 50 mm heavy")],
        [new HoopWrap(Samples.Stock.Cloth("carbon tape 150 g")), new ClothWrap(Samples.Stock.Cloth("glass plain 80 g"))]);

    [Fact]
    public void Every_combination_is_tried_once()
    {
        var result = Search.Run();
        // Up to two of three sleeves, 1 + 3 + 6, times up to two of two wraps, 1 + 2 + 3, less the empty one.
        Assert.Equal(10 * 6 - 1, result.Options.Count);
        Assert.Equal(result.Options.Count, result.Options.Select(o => o.Name).Distinct().Count());
    }

    [Fact]
    public void Nothing_among_the_choices_is_both_heavier_and_weaker_and_every_other_says_why()
    {
        var result = Search.Run();
        Assert.True(result.Choices.Count > 2);
        foreach (var (light, heavy) in result.Choices.Zip(result.Choices.Skip(1)))
        {
            Assert.True(light.Mass < heavy.Mass);
            Assert.True(light.Rated < heavy.Rated);
        }

        Assert.All(result.Rejected, o => Assert.NotEmpty(o.Refusal));
        foreach (var beaten in result.Rejected.Where(o => o.Rated is not null))
            Assert.Contains(result.Choices, c => c.Mass <= beaten.Mass && c.Rated >= beaten.Rated);
    }

    [Fact]
    public void Wishes_reject_with_their_reason()
    {
        var result = (Search with { RequiredPressure = 8.BarGauge(), Heaviest = 520.Grams() }).Run();
        Assert.Contains(result.Rejected, o => o.Refusal.Contains("8 bar gauge is wanted", StringComparison.Ordinal));
        Assert.Contains(result.Rejected, o => o.Refusal.Contains("over the 520 g that will do", StringComparison.Ordinal));
        Assert.All(result.Choices, o => Assert.True(o.Rated >= 8.BarGauge() && o.Mass <= 520.Grams()));
    }

    [Fact]
    public void A_sleeve_too_narrow_is_rejected_with_the_range()
    {
        var wide = Search with { Vessel = Search.Vessel with { Liner = Search.Vessel.Liner with { Bore = 69.Millimetres() } } };
        Assert.Contains(wide.Run().Rejected, o => o.Name.StartsWith("carbon sleeve 50 mm heavy", StringComparison.Ordinal)
            && o.Refusal.Contains("below 70.7", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_layup_keeps_the_ends_fittings_discs_and_tails_of_its_vessel()
    {
        var end = Search.Vessel.ForwardEnd with
        {
            Joints = [new CarriedSleeve { Neck = 30.Millimetres(), Tail = 15.Millimetres() }],
            Discs = new CapDiscs(Samples.Stock.Cloth("carbon twill 200 g"), 3),
            Fittings = 60.Grams(),
        };
        var (plain, whole) = (Search.Run(), (Search with { Vessel = Search.Vessel with { ForwardEnd = end } }).Run());
        Assert.All(whole.Options, o => Assert.Same(end, o.Vessel.ForwardEnd));
        foreach (var (before, after) in plain.Options.Select(o => (o, whole.Options.Single(w => w.Name == o.Name))))
        {
            if (before.Mass is not { } mass || after.Mass is not { } heavier) continue;
            // Fittings and discs weigh on every layup, and a sleeve's tail as well.
            Assert.True(heavier > mass + 60.Grams(), after.Name);
        }

        Assert.Contains(whole.Options, o => o.Limit == "forward end, sleeve's tail");
    }

    [Fact]
    public void No_choice_is_a_failed_result_with_the_reason()
    {
        var result = (Search with { RequiredPressure = 200.BarGauge() }).Run();
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("No layup meets what is wanted", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_large_a_search_is_refused()
    {
        var error = Assert.Throws<InvalidDesignException>(() => (Search
            with { MaximumSleeves = 6, MaximumWraps = 6, Sleeves = [.. Enumerable.Repeat(Search.Sleeves, 4).SelectMany(s => s)] }).Run());
        Assert.Contains("over 5000 layups", error.Message, StringComparison.Ordinal);
    }
}
