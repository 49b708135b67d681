using System.Globalization;
using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Pages;

/// <summary>
/// The places on one page that its index leads to, and the page's picture. A place is known by the type of the result that is shown there,
/// never by its words; the last of its kind is the one that counts.
/// </summary>
internal sealed partial class PagePlaces
{
    private readonly Dictionary<PlaceKind, string> _ids = [];
    private int _last;

    /// <summary>A still picture as a data link, for the head of the page; empty where the page shows none.</summary>
    public string Picture { get; private set; } = "";

    /// <summary>The same for a narrow place; the same picture where it has one form only.</summary>
    public string NarrowPicture { get; private set; } = "";

    /// <summary>What the picture shows.</summary>
    public string PictureWords { get; private set; } = "";

    /// <summary>Whether the picture is a drawing, not a chart.</summary>
    public bool IsDrawing { get; private set; }

    /// <summary>The id of a place; none where the page has no such place.</summary>
    /// <param name="kind">Which.</param>
    public string? Of(PlaceKind kind) => _ids.GetValueOrDefault(kind);

    /// <summary>The id that an output gets, as an attribute; empty where it is no place to be led to.</summary>
    /// <param name="html">Its html.</param>
    public string Mark(string html)
    {
        var kind = Card().IsMatch(html) ? PlaceKind.FlightCard : Type().Match(html).Groups["type"].Value switch
        {
            "ProofPlan" => PlaceKind.ProofPlan,
            "CutList" => PlaceKind.CuttingPlan,
            "DesignRecord" => PlaceKind.Record,
            _ => PlaceKind.None,
        };
        if (kind == PlaceKind.None) return "";
        var id = _ids[kind] = $"place-{++_last}";
        return $" id=\"{id}\"";
    }

    /// <summary>Takes the picture of an output, if that is wanted: a drawing before a chart, the first of its kind.</summary>
    /// <param name="html">Html of the output.</param>
    /// <param name="words">What it shows.</param>
    public void Look(string html, string words)
    {
        var drawing = html.StartsWith("<div class=\"nk-out nk-drawing\"", StringComparison.Ordinal);
        if ((Picture.Length > 0 && (IsDrawing || !drawing)) || Svg().Matches(html) is not { Count: > 0 } forms) return;
        Picture = Link(forms[0].Value);
        NarrowPicture = IsSquat(forms[^1].Value) ? Link(forms[^1].Value) : Picture;
        (PictureWords, IsDrawing) = (words, drawing);
    }

    // A form that stands high would take the room of the numbers beside it.
    private static bool IsSquat(string svg) => Box().Match(svg) is not { Success: true } box
        || double.Parse(box.Groups["height"].Value, CultureInfo.InvariantCulture)
            < 1.25 * double.Parse(box.Groups["width"].Value, CultureInfo.InvariantCulture);

    private static string Link(string svg) => "data:image/svg+xml;base64,"
        + Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(Named(svg)));

    // As a file of its own a drawing says which language it is in.
    private static string Named(string svg) => svg.Contains("xmlns=", StringComparison.Ordinal) ? svg
        : "<svg xmlns=\"http://www.w3.org/2000/svg\"" + svg["<svg".Length..];

    [GeneratedRegex("^<div class=\"nk-out nk-card\"")]
    private static partial Regex Card();

    [GeneratedRegex("^<div class=\"nk-out nk-result\" data-of=\"(?<type>[A-Za-z]+)\"")]
    private static partial Regex Type();

    [GeneratedRegex("viewBox=\"0 0 (?<width>[0-9.]+) (?<height>[0-9.]+)\"")]
    private static partial Regex Box();

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Svg();
}
