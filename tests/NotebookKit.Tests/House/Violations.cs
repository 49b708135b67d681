namespace NotebookKit.Tests.House;

/// <summary>Shows all that breaks a rule of the house, not only the first.</summary>
internal static class Violations
{
    public static void None(IEnumerable<string?> found)
    {
        var list = found.ToList();
        Assert.True(list.Count == 0, $"{list.Count} break this rule:{Environment.NewLine}{string.Join(Environment.NewLine, list)}");
    }
}
