using System.Globalization;
using System.Text.RegularExpressions;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Which of several even parts of a dispersion: 3/16 is the third of sixteen.</summary>
public readonly partial record struct ShardNumber
{
    /// <summary>One of several parts.</summary>
    /// <param name="number">Which; 1 to the number of parts.</param>
    /// <param name="of">Number of parts; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside.</exception>
    public ShardNumber(int number, int of)
    {
        if (of < 1) throw new ArgumentOutOfRangeException(nameof(of), $"number of shards is {of}; it must be 1 or more.");
        if (number < 1 || number > of) throw new ArgumentOutOfRangeException(nameof(number),
            $"shard is {number}; it must be 1 to {of}. The first is 1.");
        (Number, Of) = (number, of);
    }

    /// <summary>Which part; the first is 1.</summary>
    public int Number { get; }

    /// <summary>Number of parts.</summary>
    public int Of { get; }

    /// <summary>The only part: all of it.</summary>
    public static ShardNumber Whole { get; } = new(1, 1);

    /// <summary>Reads a part as people write it.</summary>
    /// <param name="text">For example "3/16".</param>
    /// <exception cref="FormatException">It isn't one.</exception>
    public static ShardNumber Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Form().Match(text.Trim()) is { Success: true } match
            && int.TryParse(match.Groups["number"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && int.TryParse(match.Groups["of"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var of)
            && number >= 1 && number <= of)
        {
            return new(number, of);
        }

        throw new FormatException($"\"{text}\" is not a shard; write which of how many, from 1 on: 3/16.");
    }

    /// <summary>For example "3/16".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number}/{Of}");

    [GeneratedRegex(@"^(?<number>\d{1,7})\s*/\s*(?<of>\d{1,7})$")]
    private static partial Regex Form();
}
