using NotebookKit.Interactive.Formatters;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive;

/// <summary>A result as plain text: title, numbers, findings and cautions, as a cell shows it where nothing else can be shown.</summary>
public static class ResultText
{
    /// <summary>The text, each line ended by a line feed.</summary>
    /// <param name="result">The result.</param>
    public static string Of(IResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        using var text = new StringWriter { NewLine = "\n" };
        ResultFormatter.Plain(result, text);
        return text.ToString();
    }
}
