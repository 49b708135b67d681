namespace NotebookKit.Runner.Pages;

/// <summary>What lies around a page: the lessons before and after it, and which other pages exist.</summary>
/// <param name="Before">The lesson before; none for the first.</param>
/// <param name="After">The lesson after; none for the last.</param>
/// <param name="HasPage">Whether a notebook of this name gets a page beside this one, or has one.</param>
internal sealed record PageSurroundings(NeighbourPage? Before, NeighbourPage? After, Func<string, bool> HasPage)
{
    /// <summary>Of a page that stands alone.</summary>
    public static PageSurroundings Alone { get; } = new(null, null, _ => false);

    /// <summary>Where to go on, as html; empty where there is nowhere.</summary>
    public string ToHtml() => Before is null && After is null ? "" :
        "<nav class=\"neighbours\" aria-label=\"Lessons beside this one\"><h2>Lessons beside this one</h2><ul>"
        + Link(Before, "before") + Link(After, "next") + "<li><a href=\"../index.html\">All lessons</a></li></ul></nav>";

    private static string Link(NeighbourPage? page, string which) => page is null ? ""
        : $"<li><a rel=\"{(which == "next" ? "next" : "prev")}\" href=\"{Escape.Text(Uri.EscapeDataString(page.Name))}.html\">"
            + $"{Escape.Text(page.Title)}</a> <span>({which})</span></li>";
}

/// <summary>A lesson beside a page.</summary>
/// <param name="Name">File name without ending.</param>
/// <param name="Title">Its title.</param>
internal sealed record NeighbourPage(string Name, string Title);
