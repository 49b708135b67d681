using System.Reflection;
using NotebookKit.Tests.Published;

namespace NotebookKit.Tests.House;

/// <summary>A test that claims to check against the outside says where that is printed.</summary>
public class PublishedTests
{
    [Fact]
    public void Every_test_under_Published_names_its_case_and_source() =>
        Violations.None(
            from type in typeof(PublishedTests).Assembly.GetTypes()
            where type.Namespace?.StartsWith("NotebookKit.Tests.Published", StringComparison.Ordinal) == true
            from method in type.GetMethods()
            where method.GetCustomAttributes<FactAttribute>().Any()
            let cases = method.GetCustomAttributes<PublishedCaseAttribute>()
                .Concat(type.GetCustomAttributes<PublishedCaseAttribute>()).ToList()
            where cases.Count == 0 || cases.Any(c => c.Source.Length < 15)
            select $"{type.Name}.{method.Name}");
}
