using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace NotebookKit.Charts.Tests.House;

/// <summary>Every public number of the charts says its unit, and nothing public can be changed after it was made.</summary>
public sealed partial class DocumentationTests
{
    private static readonly Assembly Charts = typeof(EngineeringChart).Assembly;

    private static readonly Dictionary<string, XElement> Documentation = XDocument.Load(Path.ChangeExtension(Charts.Location,
        "xml")).Descendants("member").ToDictionary(m => m.Attribute("name")!.Value);

    [Fact]
    public void Every_public_double_says_its_unit()
    {
        var silent =
            from type in Charts.GetExportedTypes()
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static |
                BindingFlags.DeclaredOnly)
            where (Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType) == typeof(double)
            where !Unit().IsMatch(Text($"P:{type.FullName}.{property.Name}") + Parameter($"T:{type.FullName}", property.Name))
            select $"{type.FullName}.{property.Name}";
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_double_a_caller_passes_says_its_unit()
    {
        var silent =
            from type in Charts.GetExportedTypes()
            from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static |
                BindingFlags.DeclaredOnly).Where(m => !m.IsSpecialName && m.Name is not ("Deconstruct" or "Equals"))
            from parameter in method.GetParameters()
            where parameter.ParameterType == typeof(double)
            where !Documentation.Where(d => d.Key.StartsWith($"M:{type.FullName}.{method.Name}(",
                StringComparison.Ordinal)).Any(d => Unit().IsMatch(Of(d.Value, parameter.Name!)))
            select $"{type.FullName}.{method.Name}({parameter.Name})";
        Assert.Empty(silent);
    }

    [Fact]
    public void Nothing_public_can_be_set_after_it_was_made() => Assert.Empty(
        from type in Charts.GetExportedTypes()
        from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where property.SetMethod is { IsPublic: true } setter
            && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit))
        select $"{type.FullName}.{property.Name}");

    [Fact]
    public void Public_classes_are_sealed_abstract_or_static() =>
        Assert.Empty(Charts.GetExportedTypes().Where(t => t is { IsClass: true, IsSealed: false,
            IsAbstract: false }).Select(t => t.FullName));

    private static string Text(string id) => Documentation.TryGetValue(id, out var doc) ? doc.Value : "";

    private static string Parameter(string id, string name) => Documentation.TryGetValue(id, out var doc) ? Of(doc, name) : "";

    private static string Of(XElement doc, string name) => doc.Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value ==
        name)?.Value ?? "";

    [GeneratedRegex(@"\[[^\]]+\]")]
    private static partial Regex Unit();
}
