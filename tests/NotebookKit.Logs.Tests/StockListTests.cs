namespace NotebookKit.Logs.Tests;

public class StockListTests
{
    [Fact]
    public void Reads_items_with_gaps()
    {
        var list = StockList.Parse("# shelf\nitem [text], kind [text], length [mm], mass [kg]\nsleeve X, sleeve, 2500,\nresin Y, "
            + "resin, , 1.2\n", "shelf.csv");
        Assert.Equal(2.5, list.Items[0].Length!.Value.Meters, 12);
        Assert.Null(list.Items[0].Mass);
        Assert.Equal(1200, list.Of("Resin")[0].Mass!.Value.Grams, 9);
    }

    [Theory]
    [InlineData("item [text], length [m]\na, 1", 1, "kind", "no such column")]
    [InlineData("item, kind [text]\na, sleeve", 1, "item", "no unit")]
    [InlineData("item [text], kind [text], length [yd]\na, sleeve, 1", 1, "length", "'yd'")]
    [InlineData("item [text], kind [text], item [text]\na, sleeve, b", 1, "item", "stands twice")]
    [InlineData("item [text], kind [text]\na, sock", 2, "kind", "'sock' is no kind")]
    [InlineData("item [text], kind [text]\n, sleeve", 2, "item", "empty")]
    [InlineData("item [text], kind [text], length [m]\na, sleeve, -1", 2, "length", "'-1'")]
    [InlineData("item [text], kind [text], length [g]\na, sleeve, 1", 2, "length", "unit is g")]
    [InlineData("item [text], kind [text], length [m]\na, sleeve", 2, "", "2 cells")]
    [InlineData("# nothing", 0, "", "no header")]
    public void Says_line_column_and_what_was_found(string text, int line, string column, string found)
    {
        var error = Assert.Throws<LogFormatException>(() => StockList.Parse(text, "bad.csv"));
        Assert.Equal(line, error.Line);
        Assert.Equal(column, error.Column);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
    }
}
