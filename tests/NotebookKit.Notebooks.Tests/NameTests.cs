using System.Reflection;

namespace NotebookKit.Notebooks.Tests;

/// <summary>A notebook sees every namespace of the project at once.</summary>
public class NameTests
{
    [Fact]
    public void No_two_public_types_that_a_notebook_sees_share_a_name()
    {
        Assembly[] seen =
        [
            typeof(NotebookKit.Quantities.Series).Assembly,
            typeof(NotebookKit.Charts.EngineeringChart).Assembly,
            typeof(NotebookKit.Logs.LogReader).Assembly,
            typeof(NotebookKit.Interactive.NotebookKitExtension).Assembly,
            typeof(UnitsNet.Length).Assembly,
        ];
        var shared = seen.SelectMany(a => a.GetExportedTypes())
            .Where(t => t is { IsNested: false, IsGenericType: false }
                && (t.Namespace == "UnitsNet" || t.Namespace!.StartsWith("NotebookKit", StringComparison.Ordinal)))
            .GroupBy(t => t.Name)
            .Where(g => g.Count() > 1)
            .Select(g => string.Join(", ", g.Select(t => t.FullName)));

        Assert.Empty(shared);
    }
}
