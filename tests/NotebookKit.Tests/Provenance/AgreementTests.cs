using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Provenance;

public class AgreementTests
{
    private static readonly Source Table = new("NOAA, NASA, USAF", "U.S. Standard Atmosphere", 1976, "Table I", SourceKind.Standard);

    [Fact]
    public void Holds_within_the_printed_digits()
    {
        var table = new AgreementTable("Sea level", Table, Agreement.Of("Pressure", 101_325.Pascals(), Pressure.FromMillibars(1013.25),
            1e-6), Agreement.Of("Ratio", 1.0, 1.0, 1e-6));
        Assert.Equal(2, table.Rows.Count);
        Assert.Contains("published 1013.25 mbar", table.Lines[0].Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Fails_where_a_number_is_off_and_says_which()
    {
        var error = Assert.Throws<DisagreementException>(() => new AgreementTable("Sea level", Table,
            Agreement.Of("Temperature at 11 km", 216.65.Kelvins(), 216.774.Kelvins(), 1e-5)));
        Assert.Contains("Temperature at 11 km is 216.65 K, published 216.774 K", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Calls_a_computed_reference_no_publication()
    {
        var computed = Table with { Kind = SourceKind.Independent };
        var error = Assert.Throws<DisagreementException>(() => new AgreementTable("Sea level", computed,
            Agreement.Of("Ratio", 1.1, 1.0, 1e-3)));
        Assert.Contains("reference 1 ", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("published", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SourceKind.Standard, "published")]
    [InlineData(SourceKind.Published, "published")]
    [InlineData(SourceKind.DataSheet, "published")]
    [InlineData(SourceKind.Unverified, "published")]
    [InlineData(SourceKind.Independent, "reference")]
    [InlineData(SourceKind.Measured, "reference")]
    [InlineData(SourceKind.CommonPractice, "reference")]
    [InlineData(SourceKind.Typical, "reference")]
    public void Only_what_stands_in_print_is_called_published(SourceKind kind, string word)
    {
        var table = new AgreementTable("Flight", Table with { Kind = kind }, Agreement.Of("Ratio", 1.0, 1.0, 1e-6));
        Assert.StartsWith(word, table.Lines[0].Note, StringComparison.Ordinal);
        Assert.Contains(word, table.Model.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reference_computed_elsewhere_says_so() =>
        Assert.EndsWith("(computed independently of this library)",
            new Source("", "reference flight", 2026, "", SourceKind.Independent).ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_number_that_is_none_never_agrees() => Assert.False(Agreement.Of("x", double.NaN, 1.0, 0.1).Holds);
}
