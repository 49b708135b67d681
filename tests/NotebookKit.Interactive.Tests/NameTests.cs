using NotebookKit.Charts;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Tests;

public sealed class NameTests
{
    // A session imports every namespace of ours: a name that exists twice could not be written in a cell.
    [Fact]
    public void No_public_name_exists_twice()
    {
        var twice = new[] { typeof(Source).Assembly, typeof(EngineeringChart).Assembly, typeof(NotebookKitExtension).Assembly }
            .SelectMany(a => a.GetExportedTypes()).Where(t => !t.IsNested)
            .Concat([typeof(UnitsNet.Length), typeof(UnitsNet.Angle)])
            .GroupBy(t => t.Name).Where(g => g.Count() > 1)
            .Select(g => string.Join(" and ", g.Select(t => t.FullName)));
        Assert.Empty(twice);
    }

    [Fact]
    public void No_public_name_of_charts_hides_a_unit_or_a_common_name_of_the_system()
    {
        var others = typeof(UnitsNet.Length).Assembly.GetExportedTypes().Where(t => t.Namespace == "UnitsNet").Select(t => t.Name)
            .Concat(typeof(object).Assembly.GetExportedTypes().Where(t => t.Namespace is "System" or "System.IO" or "System.Threading" or "System.Threading.Tasks" or "System.Collections.Generic").Select(t => t.Name))
            .ToHashSet(StringComparer.Ordinal);
        var clashing = typeof(EngineeringChart).Assembly.GetExportedTypes().Concat(typeof(NotebookKitExtension).Assembly.GetExportedTypes()).Where(t => !t.IsNested && others.Contains(t.Name)).Select(t => t.FullName);
        Assert.Empty(clashing);
    }
}
