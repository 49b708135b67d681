using Xunit.Abstractions;
using Xunit.Sdk;

namespace NotebookKit.Tests.Published;

/// <summary>Names the case outside this project that a test checks against, and where it is printed.</summary>
[TraitDiscoverer("NotebookKit.Tests.Published.PublishedCaseDiscoverer", "NotebookKit.Tests")]
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class, AllowMultiple = true)]
public sealed class PublishedCaseAttribute(string id, string source) : Attribute, ITraitAttribute
{
    /// <summary>Short name of the case: "V07".</summary>
    public string Id { get; } = id;

    /// <summary>Author, title, year, table or equation.</summary>
    public string Source { get; } = source;
}

/// <summary>Makes the case a trait, so that one case can be run by its name.</summary>
public sealed class PublishedCaseDiscoverer : ITraitDiscoverer
{
    /// <inheritdoc/>
    public IEnumerable<KeyValuePair<string, string>> GetTraits(IAttributeInfo traitAttribute) =>
        [new("Case", traitAttribute.GetConstructorArguments().First()?.ToString() ?? "")];
}
