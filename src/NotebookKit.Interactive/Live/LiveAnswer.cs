using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive.Html;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Live;

/// <summary>What an explorer's model says to one setting, as numbers and a drawn curve.</summary>
internal static class LiveAnswer
{
    public static string Html(Explorer explorer, IReadOnlyList<double> setting)
    {
        var state = explorer.Model([.. setting]);
        using var writer = new StringWriter();
        Fragment.Write(writer, "explore", w =>
        {
            w.Write($"<h4>{Escape.Text(explorer.Title)}</h4>");
            if (state.RefusedBecause.Length > 0)
            {
                w.Write($"<div class=\"nk-finding nk-error\">{Escape.Text(state.RefusedBecause)}</div>");
                return;
            }

            w.Write("<table><tbody>");
            foreach (var (number, value) in explorer.Numbers.Zip(state.Numbers))
                w.Write($"<tr><th>{Escape.Text(number.Name)}</th><td class=\"nk-value\">{Escape.Text($"{Digits.Round(value, 4)} {number.Unit}")}</td></tr>");
            w.Write("</tbody></table>");
            w.Write(LineChart.Draw(
                explorer.Title, new Series(explorer.X.Name, explorer.X.Unit, [.. state.X]), explorer.Y, new Series(explorer.Y.Name, explorer.Y.Unit, [.. state.Y])).ToSvg());
        });
        return writer.ToString();
    }
}
