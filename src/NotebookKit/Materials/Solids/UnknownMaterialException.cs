namespace NotebookKit.Materials.Solids;

/// <summary>A material was asked for by a name the library doesn't have.</summary>
public sealed class UnknownMaterialException : ArgumentException
{
    /// <summary>Creates the exception.</summary>
    /// <param name="kind">Kind of material: "fibre".</param>
    /// <param name="name">Name asked for.</param>
    /// <param name="nearest">Names that come nearest.</param>
    public UnknownMaterialException(string kind, string name, IReadOnlyList<string> nearest)
        : base($"There is no {kind} named \"{name}\" in the material library. Nearest: "
            + $"{string.Join(", ", nearest.Select(n => $"\"{n}\""))}. Add your own with library.With(...) or a material file.")
    {
        Kind = kind;
        Name = name;
        Nearest = nearest;
    }

    /// <summary>Kind of material.</summary>
    public string Kind { get; }

    /// <summary>Name asked for.</summary>
    public string Name { get; }

    /// <summary>Names that come nearest, best first.</summary>
    public IReadOnlyList<string> Nearest { get; }
}
