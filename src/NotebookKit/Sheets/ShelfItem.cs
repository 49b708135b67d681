using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>What lies on the shelf of one material.</summary>
/// <param name="Name">Its name, as the material library has it.</param>
public sealed record ShelfItem(string Name)
{
    /// <summary>Length left; none where it isn't given.</summary>
    public Length? Length { get; init; }

    /// <summary>Width of the roll or of the sheet; none where it isn't given.</summary>
    public Length? Width { get; init; }

    /// <summary>Mass left; none where it isn't given.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Pieces left; none where it isn't given.</summary>
    public int? Pieces { get; init; }

    /// <summary>Price; none where it isn't given.</summary>
    public MaterialPrice? Price { get; init; }

    /// <summary>Whether it is what a list asks for: the names agree, commas apart, which a stock list can't hold.</summary>
    internal bool Is(string name) => string.Equals(Bare(Name), Bare(name), StringComparison.Ordinal);

    private static string Bare(string name) => name.Replace(",", "", StringComparison.Ordinal);
}
