using NotebookKit.Provenance;

namespace NotebookKit.Tests.Life.Retests;

public class RetestRuleTests
{
    [Fact]
    public void Published_rules_are_valid_and_name_a_standard() =>
        Assert.All(RetestRules.All, r =>
        {
            Assert.Empty(r.Validate());
            Assert.Equal(SourceKind.Standard, r.Source.Kind);
            Assert.Contains(r.Name, r.ToString(), StringComparison.Ordinal);
        });

    [Fact]
    public void A_cylinder_without_a_printed_life_has_no_end_of_life() => Assert.Null(RetestRules.Steel.LifeEnds(new DateOnly(2000, 1, 1)));
}
