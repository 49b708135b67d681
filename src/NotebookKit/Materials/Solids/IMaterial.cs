using NotebookKit.Provenance;

namespace NotebookKit.Materials.Solids;

/// <summary>Anything the material library keeps by name.</summary>
public interface IMaterial
{
    /// <summary>Name it is looked up by; unlike every other of its kind.</summary>
    string Name { get; }

    /// <summary>What is wrong with its values; empty where nothing is.</summary>
    IReadOnlyList<Finding> Validate();

    /// <summary>Its properties that a user's value replaced, a line each; empty where all are the library's own.</summary>
    IReadOnlyList<string> Overrides { get; }
}
