using System.Security.Cryptography;
using System.Text;
using NotebookKit.DesignFiles.Shapes;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>A short mark of a vessel as its file states it: another bore, ply or end has another one. What only weighs or names has
/// none.</summary>
internal static class VesselMark
{
    private const int Digits = 12;

    private static readonly string[] OnlyWeighs = ["weighed", "other parts", "mass"];

    /// <summary>The first twelve digits of the SHA-256 over the values that the file states, in hexadecimal.</summary>
    /// <param name="givens">Values that were read.</param>
    /// <param name="within">Path before those of the vessel, with its point.</param>
    public static string Of(IEnumerable<DesignGiven> givens, string within)
    {
        var stated = givens.Where(g => g.State == GivenState.Stated && g.Kind is not ("text" or "name")
            && g.Path.StartsWith(within, StringComparison.Ordinal) && !OnlyWeighs.Contains(g.Path.Split('.')[^1]))
            .Select(g => $"{g.Path[within.Length..]}={g.Value}").Order(StringComparer.Ordinal);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', stated))))[..Digits];
    }
}
