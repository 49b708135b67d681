using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>One thing that has to be had for a build.</summary>
/// <param name="Name">What it is.</param>
/// <param name="For">What it is for.</param>
public sealed record ShoppingItem(string Name, string For)
{
    /// <summary>Length that is used; none where it goes by mass or piece.</summary>
    public Length? Length { get; init; }

    /// <summary>Mass that is used; none where it goes by length or piece.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Pieces that are used; none where it goes by length or mass.</summary>
    public int? Pieces { get; init; }

    /// <summary>What lies on the shelf; none where the stock list doesn't name it.</summary>
    public ShelfItem? Shelf { get; init; }

    /// <summary>What is used, in words.</summary>
    public string Needed => Length is { } l ? $"{Digits.Round(l.Meters)} m" : Mass is { } m ? $"{Digits.Round(m.Grams)} g"
        : Pieces is { } p ? $"{p}" : "not given";

    /// <summary>What lies on the shelf, in words.</summary>
    public string OnShelf => Length is not null && Shelf?.Length is { } l ? $"{Digits.Round(l.Meters)} m"
        : Mass is not null && Shelf?.Mass is { } m ? $"{Digits.Round(m.Grams)} g" : Pieces is not null && Shelf?.Pieces is { } p ? $"{p}"
        : "not given";

    /// <summary>Share of the need that has to be bought [-]: 0 where the shelf holds enough, 1 where none is known to be there.</summary>
    public double ToBuyShare => Length is { } l && Shelf?.Length is { } sl ? Math.Max(0, 1 - (sl / l))
        : Mass is { } m && Shelf?.Mass is { } sm ? Math.Max(0, 1 - (sm / m))
        : Pieces is { } p && Shelf?.Pieces is { } sp ? Math.Max(0, 1 - ((double)sp / p)) : 1;

    /// <summary>What has to be bought, in words.</summary>
    public string ToBuy => ToBuyShare <= 0 ? "nothing" : Length is { } l ? $"{Digits.Round(l.Meters * ToBuyShare)} m"
        : Mass is { } m ? $"{Digits.Round(m.Grams * ToBuyShare)} g" : Pieces is { } p ? $"{p - Math.Min(p, Shelf?.Pieces ?? 0)}" : Needed;

    /// <summary>Cost of what is used, in the price's currency; none where the price isn't given or is of another kind.</summary>
    public double? Cost => Shelf?.Price is not { } price ? null : price.Per switch
    {
        PricedBy.Metre when Length is { } l => price.Amount * l.Meters,
        PricedBy.Kilogram when Mass is { } m => price.Amount * m.Kilograms,
        PricedBy.Piece when Pieces is { } p => price.Amount * p,
        _ => null,
    };
}
