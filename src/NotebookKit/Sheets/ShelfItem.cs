using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>What lies on the shelf of one material.</summary>
/// <param name="Name">Its name, as the material library has it.</param>
public sealed record ShelfItem(string Name)
{
    /// <summary>Length left; none where it isn't given.</summary>
    public Length? Length { get; init; }

    /// <summary>Mass left; none where it isn't given.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Price; none where it isn't given.</summary>
    public MaterialPrice? Price { get; init; }
}
