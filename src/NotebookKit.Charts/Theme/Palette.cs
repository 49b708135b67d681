namespace NotebookKit.Charts.Theme;

/// <summary>
/// The colours of our charts and drawings. The first six stay apart for people who see red and green alike; a test checks it.
/// Dash patterns and point shapes carry the same distinction for print.
/// </summary>
public static class Palette
{
    /// <summary>Colours of data in the order they are taken.</summary>
    public static IReadOnlyList<string> Data { get; } =
        ["#1b4f9c", "#d8731f", "#0ea38a", "#801050", "#6b3a1e", "#62aee4", "#e3c64b", "#7b858e"];

    /// <summary>Text.</summary>
    public const string Ink = "#1e262d";

    /// <summary>Quiet text and limit lines.</summary>
    public const string Quiet = "#55616b";

    /// <summary>Frame of the drawing area.</summary>
    public const string Frame = "#8a949c";

    /// <summary>Grid lines.</summary>
    public const string Grid = "#dfe4e8";

    /// <summary>Background.</summary>
    public const string Paper = "#ffffff";

    /// <summary>What must not be entered.</summary>
    public const string Danger = "#b3261e";

    /// <summary>Water.</summary>
    public const string Water = "#5b9bd0";

    /// <summary>Steps of a map from low to high, darker to lighter, all light enough for dark figures on them.</summary>
    public static IReadOnlyList<string> Map { get; } =
        ["#4a7ab3", "#5799c2", "#70b6c4", "#94ccb8", "#bedda9", "#e4e6a4", "#faf2c6"];

    /// <summary>Dash patterns in the order of <see cref="Data"/>, as pairs of line and gap [px].</summary>
    public static IReadOnlyList<string> Dashes { get; } =
        ["solid", "8px,3px", "2px,3px", "10px,3px,2px,3px", "14px,4px", "5px,2px", "1px,4px", "12px,3px,2px,3px,2px,3px"];

    /// <summary>A data colour; places past the last start again.</summary>
    /// <param name="slot">Place [-]; 0 or above.</param>
    public static string At(int slot) => Data[slot % Data.Count];

    /// <summary>A data colour with transparency, as CSS writes it.</summary>
    /// <param name="colour">Colour as #rrggbb.</param>
    /// <param name="opacity">Opacity [-]; 0 to 1.</param>
    public static string Tint(string colour, double opacity)
    {
        ArgumentNullException.ThrowIfNull(colour);
        var rgb = Convert.FromHexString(colour.AsSpan(1));
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"rgba({rgb[0]},{rgb[1]},{rgb[2]},{opacity:0.##})");
    }
}
