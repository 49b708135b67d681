using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class EditDistanceTests
{
    // Levenshtein's distance as textbooks show it, every edit counting one: D. Jurafsky, J. H. Martin, Speech and Language Processing, ch.
    // 2 (intention); the usual examples of lectures for the others; all unverified.
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("intention", "execution", 5)]
    [InlineData("Saturday", "Sunday", 3)]
    [InlineData("", "abc", 3)]
    [InlineData("fil pressure", "Fill Pressure", 1)]
    [InlineData("bore", "BORE", 0)]
    public void Counts_the_edits_between_two_words(string one, string other, int edits)
    {
        Assert.Equal(edits, EditDistance.Between(one, other));
        Assert.Equal(edits, EditDistance.Between(other, one));
    }
}
