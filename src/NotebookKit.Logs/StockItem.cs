using NotebookKit.Sheets;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>One thing on the shelf. Its name is the one it is looked up by in the material library.</summary>
/// <param name="Name">Name in the material library.</param>
/// <param name="Kind">What it is: "sleeve", "cloth", "tape", "veil", "resin", "hardener", "sheet", "fin sheet", "canopy", "part".</param>
/// <param name="Length">Length left on the roll, or of the sheet; none where it goes by mass.</param>
/// <param name="Width">Width of the roll or of the sheet; none where it has none.</param>
/// <param name="Mass">Mass left; none where it goes by length.</param>
/// <param name="PotLife">Time a resin can be worked with; none for anything else.</param>
public sealed record StockItem(string Name, string Kind, Length? Length, Length? Width, Mass? Mass, Duration? PotLife)
{
    /// <summary>Hardener by mass over resin by mass, from the data sheet; none where it isn't given.</summary>
    public Ratio? HardenerPerResin { get; init; }

    /// <summary>Pieces left; none where it isn't given, or it goes by length or mass.</summary>
    public int? Pieces { get; init; }

    /// <summary>Price; none where it isn't given.</summary>
    public MaterialPrice? Price { get; init; }

    /// <summary>The same for a shopping list.</summary>
    public ShelfItem ToShelf() => new(Name) { Length = Length, Width = Width, Mass = Mass, Pieces = Pieces, Price = Price };
}
