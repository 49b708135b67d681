using NotebookKit.Charts;

namespace NotebookKit.Interactive.Tests;

public sealed class NameTests
{
    [Fact]
    public void No_public_name_of_charts_hides_a_unit_or_a_common_name_of_the_system()
    {
        var others = typeof(UnitsNet.Length).Assembly.GetExportedTypes().Where(t => t.Namespace == "UnitsNet").Select(t => t.Name)
            .Concat(typeof(object).Assembly.GetExportedTypes().Where(t => t.Namespace is "System" or "System.IO" or "System.Threading"
                or "System.Threading.Tasks" or "System.Collections.Generic").Select(t => t.Name))
            .ToHashSet(StringComparer.Ordinal);
        var clashing = typeof(EngineeringChart).Assembly.GetExportedTypes()
            .Concat(typeof(NotebookKitExtension).Assembly.GetExportedTypes())
            .Where(t => !t.IsNested && others.Contains(t.Name)).Select(t => t.FullName);
        Assert.Empty(clashing);
    }
}
