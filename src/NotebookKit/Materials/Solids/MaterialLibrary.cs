using System.Collections.Immutable;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Materials.Solids;

/// <summary>Materials by name. Immutable: adding or replacing one gives a new library.</summary>
public sealed class MaterialLibrary
{
    private readonly ImmutableSortedDictionary<string, IMaterial> _materials;

    private MaterialLibrary(ImmutableSortedDictionary<string, IMaterial> materials) => _materials = materials;

    /// <summary>Typical values of the classes of material in use. None is a design value: a user's own tests replace them.</summary>
    public static MaterialLibrary Typical { get; } = new MaterialLibrary(
        ImmutableSortedDictionary<string, IMaterial>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase)).With([.. TypicalMaterials.All]);

    /// <summary>Everything in the library, by name.</summary>
    public IReadOnlyList<IMaterial> All => [.. _materials.Values];

    /// <summary>Everything of one kind, by name.</summary>
    /// <typeparam name="T">Kind of material.</typeparam>
    public IReadOnlyList<T> AllOf<T>() where T : class, IMaterial => [.. _materials.Values.OfType<T>()];

    /// <summary>Every user's value in the library, a line each.</summary>
    public IReadOnlyList<string> Overrides => [.. _materials.Values.SelectMany(m => m.Overrides).Distinct()];

    /// <summary>A fibre.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Fibre Fibre(string name) => Get<Fibre>("fibre", name);

    /// <summary>A resin.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Resin Resin(string name) => Get<Resin>("resin", name);

    /// <summary>A braided sleeve.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Braid Braid(string name) => Get<Braid>("braid", name);

    /// <summary>A cloth or tape.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Cloth Cloth(string name) => Get<Cloth>("cloth", name);

    /// <summary>A surfacing veil.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Veil Veil(string name) => Get<Veil>("veil", name);

    /// <summary>A liner plastic or a metal.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public IsotropicMaterial Solid(string name) => Get<IsotropicMaterial>("plastic or metal", name);

    /// <summary>An adhesive.</summary>
    /// <param name="name">Its name; letter case doesn't matter.</param>
    /// <exception cref="UnknownMaterialException">There is none of that name.</exception>
    public Adhesive Adhesive(string name) => Get<Adhesive>("adhesive", name);

    /// <summary>The library with these materials added; one of the same name is replaced, and sleeves and cloths made of a replaced fibre
    /// follow it.</summary>
    /// <param name="materials">Materials to add.</param>
    /// <exception cref="InvalidDesignException">A material has values out of range, or takes the name of another kind.</exception>
    public MaterialLibrary With(params IReadOnlyList<IMaterial> materials)
    {
        ArgumentNullException.ThrowIfNull(materials);
        var builder = _materials.ToBuilder();
        foreach (var material in materials)
        {
            List<Finding> findings = [.. material.Validate()];
            if (string.IsNullOrWhiteSpace(material.Name)) findings.Add(MaterialsFindings.MaterialHasNoName());
            else if (builder.TryGetValue(material.Name, out var there) && there.GetType() != material.GetType())
                findings.Add(MaterialsFindings.MaterialNameIsTaken(material.Name));
            InvalidDesignException.ThrowIfAny("Material library", findings);
            builder[material.Name] = material;
            if (material is not Fibre fibre) continue;
            foreach (var (name, user) in builder.ToList())
            {
                if (user is Braid braid && IsSame(braid.Fibre, fibre)) builder[name] = braid with { Fibre = fibre };
                else if (user is Cloth cloth && IsSame(cloth.Fibre, fibre)) builder[name] = cloth with { Fibre = fibre };
            }
        }

        return new MaterialLibrary(builder.ToImmutable());

        static bool IsSame(Fibre one, Fibre other) => string.Equals(one.Name, other.Name, StringComparison.OrdinalIgnoreCase);
    }

    private T Get<T>(string kind, string name) where T : class, IMaterial
    {
        ArgumentNullException.ThrowIfNull(name);
        if (_materials.TryGetValue(name.Trim(), out var found) && found is T material) return material;
        var nearest = AllOf<T>().Select(m => m.Name).OrderBy(n => Distance(name.Trim(), n)).Take(4).ToList();
        throw new UnknownMaterialException(kind, name, nearest);
    }

    /// <summary>Edits from one name to the other, words shared counting as near.</summary>
    private static int Distance(string asked, string known) =>
        EditDistance.Between(asked, known)
        - 8 * asked.Split(' ', StringSplitOptions.RemoveEmptyEntries).Count(word => known.Contains(word,
            StringComparison.OrdinalIgnoreCase));
}
