using System.Buffers;
using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Explorers;

/// <summary>An explorer as HTML: its data, and a still picture of its first setting for pages that run no script.</summary>
internal static class ExplorerHtml
{
    // 16 bits a number: steps of 1/65000 of the range, far below the error of interpolation. The last step stands for "refused".
    private const ushort Steps = 65_000;
    private const ushort Refused = ushort.MaxValue;

    public static string Write(Explorer explorer, ExplorerGrid grid)
    {
        var start = explorer.At([.. explorer.Parameters.Select(p => p.Start)]);
        var html = new StringBuilder();
        html.Append("<div class=\"nk-explorer\"><h4>").Append(Escape.Text(explorer.Title)).Append("</h4>");
        if (explorer.Remark.Length > 0) html.Append("<p class=\"nk-note\">").Append(Escape.Text(explorer.Remark)).Append("</p>");
        html.Append("<div class=\"nk-explorer-live\"></div><div class=\"nk-explorer-still\">").Append(Still(explorer,
            start)).Append("</div>");
        html.Append("<p class=\"nk-note nk-explorer-error\">").Append(Escape.Text(explorer.ErrorText())).Append("</p>");
        html.Append("<script type=\"application/json\" class=\"nk-explorer-data\">").Append(Data(explorer, grid)).Append("</script></div>");
        return html.ToString();
    }

    private static string Still(Explorer explorer, ExplorerState start)
    {
        if (start.RefusedBecause.Length > 0) return $"<p>{Escape.Text(start.RefusedBecause)}</p>";
        var chart = LineChart.Draw(explorer.Title, new Series(explorer.X.Name, explorer.X.Unit, start.X), explorer.Y,
            new Series(explorer.Y.Name, explorer.Y.Unit, start.Y)) with
        {
            Remark = string.Join(", ", explorer.Parameters.Select(p => $"{p.Name.ToLowerInvariant()} {p.Show(p.Start)}"))
                + ": " + string.Join(", ", explorer.Numbers.Select((n,
                    i) => $"{n.Name.ToLowerInvariant()} {Digits.Round(start.Numbers[i])} {n.Unit}")),
        };
        return chart.ToStillHtml();
    }

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string Data(Explorer explorer, ExplorerGrid grid)
    {
        var buffer = new ArrayBufferWriter<byte>(65_536);
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) }))
        {
            writer.WriteStartObject();
            writer.WriteStartArray("parameters");
            foreach (var p in explorer.Parameters)
            {
                writer.WriteStartObject();
                writer.WriteString("name", p.Name);
                writer.WriteString("unit", p.Unit);
                writer.WriteNumber("from", p.From);
                writer.WriteNumber("to", p.To);
                writer.WriteNumber("points", p.Points);
                writer.WriteNumber("start", p.Start);
                writer.WriteBoolean("ratio", p.Logarithmic);
                writer.WriteStartArray("choices");
                foreach (var choice in p.Choices) writer.WriteStringValue(choice);
                writer.WriteEndArray();
                writer.WriteEndObject();
            }
            writer.WriteEndArray();
            if (explorer.Base is { } known)
            {
                writer.WriteStartObject("base");
                writer.WriteString("model", known.Model);
                // A quote as six characters would make the text half as long again; only the sign that may end the element is spelt out.
                writer.WritePropertyName("design");
                writer.WriteRawValue(JsonSerializer.Serialize(known.DesignText, Plain).Replace("<", "\\u003C", StringComparison.Ordinal));
                writer.WriteEndObject();
            }

            writer.WriteString("x", explorer.X.Title);
            writer.WriteString("y", explorer.Y.Title);
            writer.WriteNumber("curvePoints", grid.CurvePoints);
            Block(writer, "xs", grid, grid.CurvePoints, (s, i) => s.X[i]);
            Block(writer, "ys", grid, grid.CurvePoints, (s, i) => s.Y[i]);
            writer.WriteStartArray("numbers");
            for (var n = 0; n < explorer.Numbers.Count; n++)
            {
                writer.WriteStartObject();
                writer.WriteString("name", explorer.Numbers[n].Name);
                writer.WriteString("unit", explorer.Numbers[n].Unit);
                var which = n;
                Block(writer, "values", grid, 1, (s, _) => s.Numbers[which]);
                writer.WriteEndObject();
            }
            writer.WriteEndArray();
            Reasons(writer, grid);
            writer.WriteStartObject("colours");
            foreach (var (name, colour) in new[] { ("line", Palette.At(0)), ("start", Palette.At(7)), ("grid", Palette.Grid),
                ("frame", Palette.Frame), ("ink", Palette.Ink), ("paper", Palette.Paper) }) writer.WriteString(name, colour);
            writer.WriteEndObject();
            writer.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Block(Utf8JsonWriter writer, string name, ExplorerGrid grid, int count, Func<ExplorerState, int, double> value)
    {
        var known = grid.States.Where(s => s.RefusedBecause.Length == 0).SelectMany(s => Enumerable.Range(0,
            count).Select(i => value(s, i))).ToList();
        var (low, high) = (known.Min(), known.Max());
        var bytes = new byte[2 * count * grid.States.Count];
        var at = 0;
        foreach (var state in grid.States)
        {
            for (var i = 0; i < count; i++, at += 2)
            {
                var step = state.RefusedBecause.Length > 0 ? Refused : high > low
                    ? (ushort)Math.Round(Steps * (value(state, i) - low) / (high - low)) : (ushort)0;
                BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), step);
            }
        }
        writer.WriteStartObject(name);
        writer.WriteNumber("low", low);
        writer.WriteNumber("high", high);
        writer.WriteString("steps", Convert.ToBase64String(bytes));
        writer.WriteEndObject();
    }

    private static void Reasons(Utf8JsonWriter writer, ExplorerGrid grid)
    {
        var reasons = grid.States.Select(s => s.RefusedBecause).Where(r => r.Length > 0).Distinct().ToList();
        writer.WriteStartArray("reasons");
        foreach (var reason in reasons) writer.WriteStringValue(reason);
        writer.WriteEndArray();
        // Sparse: node and number of its reason.
        writer.WriteStartObject("refused");
        for (var node = 0; node < grid.States.Count; node++)
        {
            if (grid.States[node].RefusedBecause.Length > 0) writer.WriteNumber(node.ToString(CultureInfo.InvariantCulture),
                reasons.IndexOf(grid.States[node].RefusedBecause));
        }
        writer.WriteEndObject();
    }
}
