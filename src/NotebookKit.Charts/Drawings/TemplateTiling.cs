using NotebookKit.Sheets;

namespace NotebookKit.Charts.Drawings;

/// <summary>Cuts patterns into pieces that fit on A4 and on letter alike, with overlaps, and lays the pieces on pages.</summary>
internal static class TemplateTiling
{
    /// <summary>What both A4 and letter hold inside margins of 10 mm [mm].</summary>
    public const double PageWidth = 190, PageHeight = 252;

    /// <summary>Head of a page with its name and its ruler [mm]; the first has the long rulers.</summary>
    public const double Head = 22, FirstHead = 34;

    /// <summary>By how much pieces of one pattern lie over each other [mm].</summary>
    public const double Overlap = 10;

    // Room about a piece for its name and its marks [mm].
    private const double Side = 6, Above = 12, Below = 6;

    /// <summary>The pages, each a list of its tiles.</summary>
    public static IReadOnlyList<IReadOnlyList<TemplateTile>> Lay(IReadOnlyList<Template> templates)
    {
        List<IReadOnlyList<TemplateTile>> pages = [];
        List<TemplateTile> page = [];
        var y = FirstHead;
        foreach (var template in templates)
        {
            foreach (var piece in Pieces(template))
            {
                var height = piece.SizeMm.Across + Above + Below;
                if (page.Count > 0 && y + height > PageHeight + 0.001)
                {
                    pages.Add(page);
                    (page, y) = ([], Head);
                }

                page.Add(piece with { AtMm = (Side, y + Above) });
                y += height;
            }
        }

        if (page.Count > 0) pages.Add(page);
        return pages;
    }

    private static IEnumerable<TemplateTile> Pieces(Template template)
    {
        var (length, width) = (template.Length.Millimeters, template.Width.Millimeters);
        var (along, across) = (Cuts(length, PageWidth - (2 * Side)), Cuts(width, PageHeight - FirstHead - Above - Below));
        for (var row = 0; row < across.Count; row++)
            for (var column = 0; column < along.Count; column++)
                yield return new(template.Name, row + 1, column + 1, (along[column].From, across[row].From),
                    (along[column].Size, across[row].Size), default);
    }

    private static List<(double From, double Size)> Cuts(double whole, double room)
    {
        if (whole <= room) return [(0, whole)];
        var count = (int)Math.Ceiling((whole - Overlap) / (room - Overlap));
        return [.. Enumerable.Range(0, count).Select(i => (From: i * (room - Overlap), Size: Math.Min(room, whole - (i * (room
            - Overlap)))))];
    }
}
