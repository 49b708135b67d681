using System.Text.Json;
using NotebookKit.Sheets;

namespace NotebookKit.Live.Answers;

/// <summary>A sheet of paper as the page prints it.</summary>
internal static class SheetAnswer
{
    public static void Write(Utf8JsonWriter json, string name, SheetContent? sheet, string why)
    {
        json.WriteStartObject(name);
        json.WriteString("why", why);
        if (sheet is not null)
        {
            json.WriteString("title", sheet.Title);
            json.WriteString("purpose", sheet.Purpose);
            json.WriteString("verdict", sheet.Verdict);
            json.WriteBoolean("inFavour", sheet.IsInFavour);
            json.WriteString("note", sheet.VerdictNote);
            Reply.Findings(json, "findings", sheet.Findings);
            Reply.Texts(json, "signatures", sheet.Signatures);
            json.WriteStartArray("sections");
            foreach (var section in sheet.Sections) Section(json, section);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Section(Utf8JsonWriter json, SheetSection section)
    {
        json.WriteStartObject();
        json.WriteString("heading", section.Heading);
        json.WriteString("text", section.Text);
        Reply.Lines(json, "facts", section.Facts);
        Reply.Texts(json, "steps", section.Steps);
        Reply.Texts(json, "rules", section.Rules);
        Reply.Texts(json, "blanks", section.Blanks.Select(b => b.Unit.Length > 0 ? $"{b.Name} [{b.Unit}]" : b.Name));
        if (section.Table is { } table)
        {
            Reply.Texts(json, "headings", table.Headings);
            json.WriteStartArray("rows");
            foreach (var row in table.Rows)
            {
                json.WriteStartArray();
                foreach (var cell in row) json.WriteStringValue(cell);
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }
}
