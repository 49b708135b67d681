using System.Security.Cryptography;
using System.Text;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>A short mark of a vessel as its file states it: another bore, ply or end has another one, and so has a material of the
/// design's own that is made otherwise. What only weighs or names has none.</summary>
internal static class VesselMark
{
    private const int Digits = 12;

    private static readonly string[] OnlyWeighs = ["weighed", "other parts", "mass"];

    /// <summary>The first twelve digits of the SHA-256 over the values that the file states, in hexadecimal.</summary>
    /// <param name="givens">Values that were read.</param>
    /// <param name="within">Path before those of the vessel, with its point.</param>
    /// <param name="library">The library with the design's own materials.</param>
    public static string Of(IEnumerable<DesignGiven> givens, string within, MaterialLibrary library)
    {
        List<DesignGiven> given = [.. givens.Where(g => g.State == GivenState.Stated && g.Kind is not ("text" or "name")
            && g.Path.StartsWith(within, StringComparison.Ordinal) && !OnlyWeighs.Contains(g.Path.Split('.')[^1]))];
        var stated = given.Select(g => $"{g.Path[within.Length..]}={g.Value}").Concat(OwnMaterials.In(library,
            given.Select(g => g.Value).ToHashSet(StringComparer.OrdinalIgnoreCase))).Order(StringComparer.Ordinal);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', stated))))[..Digits];
    }
}
