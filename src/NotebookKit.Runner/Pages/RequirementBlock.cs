using System.Text;
using NotebookKit.Runner.Reports;

namespace NotebookKit.Runner.Pages;

/// <summary>Requirements and changed givens, as a table for the head of a page and as lines for the index.</summary>
internal static class RequirementBlock
{
    /// <summary>Every requirement with its state, and the changed givens; empty where there are none.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string Tables(NotebookAnswer answer) =>
        Changed(answer) + string.Concat(answer.Requirements.Select(Folded));

    /// <summary>The changed givens, and the requirements that don't all hold; empty where there are none.</summary>
    /// <param name="answer">What the notebook's own run came to.</param>
    public static string Lines(NotebookAnswer answer) => Changed(answer) + string.Concat(answer.Requirements.Where(t => !t.AllHold)
        .Select(t => $"<p class=\"verdict fails\"><strong>Requirements{Of(t)}</strong> <span>{Escape.Text(t.Line)}</span></p>"));

    private static string Changed(NotebookAnswer answer)
    {
        var html = new StringBuilder();
        if (answer.ChangedGivens.Count > 0)
            html.Append("<p class=\"changed\"><strong>Changed givens</strong> ")
                .Append($"{Escape.Text(string.Join("; ", answer.ChangedGivens))}.</p>");
        if (answer.RecordNote.Length > 0) html.Append($"<p class=\"changed\">{Escape.Text(answer.RecordNote)}</p>");
        return html.ToString();
    }

    // What holds may be folded; what doesn't is read first.
    private static string Folded(RequirementTable table) => !table.AllHold ? Table(table)
        : $"<details class=\"more\"><summary>Requirements{Of(table)}, one by one</summary>{Table(table)}</details>";

    private static string Table(RequirementTable table)
    {
        var html = new StringBuilder("<table class=\"requirements\"><caption>Requirements").Append(Of(table))
            .Append(table.HasLast ? ", beside the last record" : "").Append("</caption><thead><tr><th>requirement</th><th>state</th>")
            .Append("<th>now</th><th>required</th>").Append(table.HasLast ? "<th>last record</th>" : "").Append("</tr></thead><tbody>");
        foreach (var row in table.Rows)
        {
            html.Append($"<tr class=\"{Class(row.State)}\"><th scope=\"row\">{Escape.Text(row.Name)}</th><td>{Words(row.State)}</td>")
                .Append($"<td>{Escape.Text(row.Remark.Length > 0 ? row.Remark : row.Now)}</td><td>{Escape.Text(row.Condition)}</td>")
                .Append(table.HasLast ? $"<td>{Escape.Text(row.Before.Length > 0 ? row.Before : "not stated")}</td>" : "")
                .Append("</tr>");
        }

        return html.Append("</tbody></table>").ToString();
    }

    private static string Of(RequirementTable table) => table.Title.Length > 0 ? $" of {Escape.Text(table.Title)}" : "";

    private static string Words(RequirementState state) => state switch
    {
        RequirementState.Holds => "holds",
        RequirementState.NoLongerHolds => "no longer holds",
        RequirementState.DoesNotHold => "does not hold",
        _ => "can't tell",
    };

    private static string Class(RequirementState state) => state switch
    {
        RequirementState.Holds => "holds",
        RequirementState.CannotTell => "open",
        _ => "fails",
    };
}
