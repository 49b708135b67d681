namespace NotebookKit.Tests.House;

/// <summary>A constant is written down once.</summary>
public class ConstantTests
{
    [Theory]
    [InlineData("9.80665")]
    [InlineData("8.314462618")]
    [InlineData("287.05287")]
    [InlineData("101325")]
    [InlineData("288.15")]
    public void A_constant_of_nature_stands_in_one_file(string digits)
    {
        var files = Repository.Sources("src").Where(f => File.ReadAllText(f).Replace("_", "", StringComparison.Ordinal).Contains(digits,
            StringComparison.Ordinal));
        Assert.Equal("StandardConstants.cs", Path.GetFileName(Assert.Single(files)));
    }
}
