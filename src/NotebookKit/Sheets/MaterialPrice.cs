using System.Globalization;
using NotebookKit.Quantities.Texts;

namespace NotebookKit.Sheets;

/// <summary>What a material costs, in the currency that its list is written in.</summary>
/// <param name="Amount">Amount [-]; 0 to a million.</param>
/// <param name="Currency">Currency as it is written: "EUR".</param>
/// <param name="Per">What it is the price of.</param>
public sealed record MaterialPrice(double Amount, string Currency, PricedBy Per)
{
    /// <summary>Reads "9.80 EUR/m", "24 EUR/kg" or "3 EUR each".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="FormatException">It can't be read; says how a price is written.</exception>
    public static MaterialPrice Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = text.Replace("/", " /", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        PricedBy? per = words is [_, _, var last] ? last switch { "/m" => PricedBy.Metre, "/kg" => PricedBy.Kilogram,
            "each" => PricedBy.Piece, _ => null } : null;
        if (per is { } known && UnitText.Number(words[0]) is { } amount and >= 0 and <= 1e6 && words[1].All(char.IsLetter))
            return new(amount, words[1], known);
        throw new FormatException($"\"{text}\" isn't a price. Write an amount, a currency and what it is for: \"9.80 EUR/m\", "
            + "\"24 EUR/kg\", \"3 EUR each\".");
    }

    /// <summary>For example "9.80 EUR/m".</summary>
    public override string ToString() => Money(Amount, Currency) + Per switch { PricedBy.Metre => "/m", PricedBy.Kilogram => "/kg",
        _ => " each" };

    internal static string Money(double amount, string currency) =>
        string.Create(CultureInfo.InvariantCulture, $"{amount:0.00} {currency}");
}

/// <summary>What a price is for.</summary>
public enum PricedBy
{
    /// <summary>A metre off the roll.</summary>
    Metre,

    /// <summary>A kilogram.</summary>
    Kilogram,

    /// <summary>A piece.</summary>
    Piece,
}
