using System.Globalization;
using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Commands;

/// <summary>Reads a time limit as people write it: 500ms, 60s, 2min, 3h.</summary>
internal static partial class TimeLimitText
{
    /// <summary>The time; none where the text isn't one or isn't above zero.</summary>
    /// <param name="text">For example "60s".</param>
    public static TimeSpan? Read(string text)
    {
        var match = Form().Match(text.Trim());
        if (!match.Success) return null;
        var number = double.Parse(match.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        var seconds = match.Groups["unit"].Value switch { "ms" => number / 1000, "s" => number, "min" => number * 60, _ => number * 3600 };
        return seconds is > 0 and < 1e6 ? TimeSpan.FromSeconds(seconds) : null;
    }

    [GeneratedRegex(@"^(?<number>\d+(\.\d+)?)\s*(?<unit>ms|s|min|h)$")]
    private static partial Regex Form();
}
