using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using UnitsNet;

namespace NotebookKit.Tests.House;

/// <summary>Every public number says its unit and range; everything that computes says its source.</summary>
public partial class DocumentationTests
{
    // These hold no physics of their own.
    private static readonly string[] NotPhysics = ["NotebookKit.Quantities", "NotebookKit.Provenance", "NotebookKit.Record",
        "NotebookKit.Numerics"];

    private static IEnumerable<Type> PublicTypes => Repository.Library.GetExportedTypes();

    [Fact]
    public void Every_public_double_says_its_unit() =>
        Violations.None(
            PublicTypes.SelectMany(DoubleProperties).Concat(PublicTypes.SelectMany(DoubleParameters))
                .Where(d => !Unit().IsMatch(d.Doc)).Select(d => d.Name).Order());

    [Fact]
    public void Every_number_a_caller_passes_says_its_range() =>
        Violations.None(
            PublicTypes.Where(IsPhysics).SelectMany(NumericParameters)
                .Where(d => !Range().IsMatch(d.Doc)).Select(d => d.Name).Order());

    [Fact]
    public void Every_type_that_computes_says_its_source() =>
        Violations.None(
            from type in PublicTypes.Where(IsPhysics)
            where !type.IsEnum && !type.IsInterface && Computes(type)
            where !AllDocs(type).Contains("Source:", StringComparison.Ordinal)
            select type.FullName);

    private static bool IsPhysics(Type type) =>
        !NotPhysics.Any(n => type.Namespace!.StartsWith(n, StringComparison.Ordinal)) && !typeof(Exception).IsAssignableFrom(type);

    // A type computes when a method of its own turns numbers or designs into numbers.
    private static bool Computes(Type type) =>
        OwnMethods(type).Any(m => IsNumeric(m.ReturnType) || typeof(NotebookKit.Provenance.IResult).IsAssignableFrom(m.ReturnType));

    private static IEnumerable<MethodInfo> OwnMethods(Type type) =>
        type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Where(m => !m.IsSpecialName && m.Name is not ("GetHashCode" or "CompareTo" or "Deconstruct" or "ToString" or "Equals"
                or "PrintMembers") && !m.Name.StartsWith('<'));

    private static bool IsNumeric(Type type) =>
        type == typeof(double) || typeof(IQuantity).IsAssignableFrom(type)
        || type == typeof(NotebookKit.Quantities.GaugePressure) || type == typeof(NotebookKit.Quantities.AbsolutePressure);

    private static IEnumerable<(string Name, string Doc)> DoubleProperties(Type type) =>
        from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where property.PropertyType == typeof(double)
        let own = property.GetIndexParameters().Length > 0 ? Doc($"P:{Id(type)}.{property.Name}(System.Int32)")
            : Doc($"P:{Id(type)}.{property.Name}")
        select ($"{type.FullName}.{property.Name}", own.Length > 0 ? own : Parameter(Constructor(type), property.Name)
            + Parameter("T:" + Id(type), property.Name));

    private static IEnumerable<(string Name, string Doc)> DoubleParameters(Type type) =>
        Parameters(type, t => t == typeof(double), wantsRange: false);

    private static IEnumerable<(string Name, string Doc)> NumericParameters(Type type) =>
        Parameters(type, t => t == typeof(double) || IsNumeric(t), wantsRange: true);

    // A design is what a caller builds and the library validates; the numbers of a result are not theirs to choose.
    private static bool IsDesign(Type type) => type.GetMethod("Validate", Type.EmptyTypes) is not null || ValidatedByVerb.Contains(type);

    private static readonly HashSet<Type> ValidatedByVerb =
    [
        .. from verbs in PublicTypes
           where verbs.IsAbstract && verbs.IsSealed
           from method in verbs.GetMethods(BindingFlags.Public | BindingFlags.Static)
           where method.Name == "Validate" && method.IsDefined(typeof(System.Runtime.CompilerServices.ExtensionAttribute), false)
           select method.GetParameters()[0].ParameterType,
    ];

    private static IEnumerable<(string Name, string Doc)> Parameters(Type type, Func<Type, bool> wanted, bool wantsRange)
    {
        if (typeof(Delegate).IsAssignableFrom(type)) yield break;
        var constructors = wantsRange && !IsDesign(type) ? [] : type.GetConstructors().Cast<MethodBase>();
        foreach (var method in constructors.Concat(OwnMethods(type)))
            foreach (var parameter in method.GetParameters().Where(p => wanted(Nullable.GetUnderlyingType(p.ParameterType)
                ?? p.ParameterType)))
            {
                var doc = string.Concat(MemberDocs(type, method).Select(m => Text(m.Elements("param").FirstOrDefault(p =>
                    p.Attribute("name")?.Value == parameter.Name))));
                if (MemberDocs(type, method).Any(m => m.Descendants("inheritdoc").Any())) continue;
                yield return ($"{type.FullName}.{method.Name}({parameter.Name})", doc);
            }
    }

    // Overloads share a name: any of them may carry the text.
    private static IEnumerable<XElement> MemberDocs(Type type, MethodBase method)
    {
        var start = $"M:{Id(type)}.{(method.IsConstructor ? "#ctor" : method.Name)}";
        var found = Repository.Documentation.Where(d => d.Key == start || d.Key.StartsWith(start + "(", StringComparison.Ordinal)
            || d.Key.StartsWith(start + "`", StringComparison.Ordinal)).Select(d => d.Value);
        return method.IsConstructor && Repository.Documentation.TryGetValue("T:" + Id(type), out var own) ? found.Append(own) : found;
    }

    private static string Constructor(Type type) =>
        Repository.Documentation.Keys.FirstOrDefault(k => k.StartsWith($"M:{Id(type)}.#ctor", StringComparison.Ordinal)) ?? "";

    private static string Parameter(string member, string name) =>
        Repository.Documentation.TryGetValue(member, out var doc)
            ? Text(doc.Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value == name))
            : "";

    private static string Doc(string id) => Repository.Documentation.TryGetValue(id, out var doc) ? Text(doc)
        + (doc.Descendants("inheritdoc").Any() ? "[inherited]" : "") : "";

    private static string AllDocs(Type type) =>
        string.Concat(Repository.Documentation.Where(d => d.Key == "T:" + Id(type)
            || d.Key.Contains($":{Id(type)}.", StringComparison.Ordinal)).Select(d => d.Value.Value));

    private static string Id(Type type) => type.FullName!.Replace('+', '.');

    private static string Text(XElement? element) => element?.Value ?? "";

    [GeneratedRegex(@"\[[^\]]+\]")]
    private static partial Regex Unit();

    [GeneratedRegex(@"\bto\b|\babove\b|\bbelow\b|\bat least\b|\bat most\b|\bpositive\b|\bany\b|\bbetween\b|\bwithin\b|[<>≤≥]")]
    private static partial Regex Range();
}
