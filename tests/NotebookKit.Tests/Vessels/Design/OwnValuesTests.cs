using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Design;

/// <summary>A value of the user's own shows in every result that used it.</summary>
public class OwnValuesTests
{
    private static readonly PressureVessel Own = WithOwnLiner();

    private static readonly Dictionary<string, Func<IResult>> Results = new()
    {
        ["layup"] = Own.Layup,
        ["burst"] = () => Own.Burst(),
        ["rating"] = () => Own.Rate(),
        ["growth"] = () => Own.Expansion(10.BarGauge()),
        ["distribution"] = () => Own.SampleBursts(200),
        ["evidence"] = () => VesselEvidence.Of(new HeldProof(Own, "no. 1", 20.BarGauge())).Learn(Own),
        ["search"] = () => new LayupSearch(Own, [Samples.Stock.Braid("carbon sleeve 65 mm light")], []).Run(),
    };

    public static TheoryData<string> Names => [.. Results.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_shows_in(string result)
    {
        var shown = Assert.Single(Results[result]().Findings, f => f.Message.Contains("Uses your own values", StringComparison.Ordinal));
        Assert.Contains("PVC-U", shown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_where_there_are_none() =>
        Assert.DoesNotContain(Samples.Trainer.Burst().Findings, f => f.Message.Contains("your own", StringComparison.Ordinal));

    private static PressureVessel WithOwnLiner()
    {
        var liner = Samples.Trainer.Liner.Material!;
        var own = liner with { Modulus = liner.Modulus with { Origin = "club.json, line 12" } };
        return Samples.Trainer with { Liner = Samples.Trainer.Liner with { Material = own } };
    }
}
