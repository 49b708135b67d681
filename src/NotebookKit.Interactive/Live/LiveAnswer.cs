using NotebookKit.Charts;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Marks;
using NotebookKit.Interactive.Html;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Live;

/// <summary>What an explorer's model says to one setting, as numbers and a drawn curve, beside the curves that the reader kept.</summary>
internal static class LiveAnswer
{
    public static string Html(Explorer explorer, IReadOnlyList<double> setting, IReadOnlyList<LiveCurve> kept)
    {
        var state = Ask(explorer, setting);
        using var writer = new StringWriter();
        Fragment.Write(writer, "explore", w =>
        {
            w.Write($"<h4>{Escape.Text(explorer.Title)}</h4>");
            if (state.RefusedBecause.Length > 0)
            {
                w.Write($"<div class=\"nk-finding nk-error\">{Escape.Text(state.RefusedBecause)}</div>");
                return;
            }

            w.Write("<table>");
            if (kept.Count > 0) w.Write($"<thead><tr><th></th><th>now</th>{string.Concat(kept.Select(k =>
                $"<th>{Escape.Text(k.Name)}</th>"))}</tr></thead>");
            w.Write("<tbody>");
            foreach (var (i, number) in explorer.Numbers.Index())
            {
                w.Write($"<tr><th>{Escape.Text(number.Name)}</th><td "
                    + $"class=\"nk-value\">{Escape.Text(Show(number, state.Numbers[i]))}</td>");
                w.Write($"{string.Concat(kept.Select(k => $"<td>{Escape.Text(Show(number, k.State.Numbers[i]))}</td>"))}</tr>");
            }

            w.Write("</tbody></table>");
            w.Write(Chart(explorer, state, kept).ToStillHtml());
        });
        return writer.ToString();
    }

    // What a model throws while the reader drags stands where its answer would stand: nobody else would show it.
    private static ExplorerState Ask(Explorer explorer, IReadOnlyList<double> setting)
    {
        try
        {
            return explorer.Model([.. setting]);
        }
        catch (Exception e) when (WasStopped(e))
        {
            return ExplorerState.Refused("This setting was stopped before it had an answer.");
        }
#pragma warning disable CA1031 // whatever it is, the next drag has to find the session alive and the reader told
        catch (Exception e)
#pragma warning restore CA1031
        {
            return ExplorerState.Refused($"The model failed here: {e.Message}");
        }
    }

    // Parallel work says so in parallel.
    private static bool WasStopped(Exception problem) => problem is OperationCanceledException
        || (problem is AggregateException many && many.InnerExceptions.All(WasStopped));

    private static string Show(ExplorerNumber number, double value) => number.Unit == "-" ? Digits.Round(value, 4)
        : $"{Digits.Round(value, 4)} {number.Unit}";

    private static EngineeringChart Chart(Explorer explorer, ExplorerState state, IReadOnlyList<LiveCurve> kept)
    {
        var now = new LiveCurve("now", state);
        var slot = 0;
        return new EngineeringChart(explorer.Title, explorer.X, explorer.Y)
        {
            Marks = [new Curve(now.X(explorer), now.Y(explorer)) { Slot = slot },
                .. kept.Select(k => new Curve(k.X(explorer), k.Y(explorer)) { Slot = ++slot })],
        };
    }
}
