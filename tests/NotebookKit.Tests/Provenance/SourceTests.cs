using NotebookKit.Provenance;

namespace NotebookKit.Tests.Provenance;

public class SourceTests
{
    [Fact]
    public void Reads_as_a_reference() =>
        Assert.Equal(
            "Kaw, A. K., Mechanics of Composite Materials, 2006, Ex. 2.6",
            new Source("Kaw, A. K.", "Mechanics of Composite Materials", 2006, "Ex. 2.6").ToString());

    [Fact]
    public void Says_when_it_was_only_remembered() =>
        Assert.EndsWith("(unverified: source not at hand; confirm before relying on it)",
            new Source("A", "B", 1990, Kind: SourceKind.Unverified).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Says_when_there_is_none() =>
        Assert.Equal("one third water (common practice, no source)", Source.CommonPractice("one third water").ToString());
}
