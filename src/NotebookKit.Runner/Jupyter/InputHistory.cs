using System.IO.Enumeration;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>The inputs of this session, for a front-end that steps back through them. Nothing is kept on disk.</summary>
internal sealed class InputHistory
{
    private const int Session = 0;
    private readonly List<(int Number, string Code)> _inputs = [];

    /// <summary>Keeps an input.</summary>
    /// <param name="number">Its execution count.</param>
    /// <param name="code">Its source.</param>
    public void Add(int number, string code) => _inputs.Add((number, code));

    /// <summary>Answers a history request.</summary>
    /// <param name="request">Content of the request.</param>
    public JsonObject Answer(JsonObject request)
    {
        var found = JupyterMessage.TextOf(request, "hist_access_type") switch
        {
            "tail" => _inputs.TakeLast(JupyterMessage.NumberOf(request, "n", int.MaxValue)),
                // Only this session is kept, and 0 asks for it.
            "range" when JupyterMessage.NumberOf(request, "session", 0) != Session => [],
            "range" => Range(JupyterMessage.NumberOf(request, "start", 0), JupyterMessage.NumberOf(request, "stop", int.MaxValue)),
            "search" => Search(
                JupyterMessage.TextOf(request, "pattern"), JupyterMessage.FlagOf(request, "unique", false),
                    JupyterMessage.NumberOf(request, "n", int.MaxValue)),
            _ => [],
        };
        var withOutput = JupyterMessage.FlagOf(request, "output", false);
        return new JsonObject { ["history"] = new JsonArray([.. found.Select(i => Entry(i.Number, i.Code, withOutput))]) };
    }

    private static JsonArray Entry(int number, string code, bool withOutput) =>
        withOutput ? [Session, number, new JsonArray(code, null)] : [Session, number, code];

    private IEnumerable<(int Number, string Code)> Range(int start, int stop) => _inputs.Where(i => i.Number >= start && i.Number < stop);

    private IEnumerable<(int Number, string Code)> Search(string pattern, bool unique, int count)
    {
        var found = _inputs.Where(i => FileSystemName.MatchesSimpleExpression(pattern.Length == 0 ? "*" : pattern, i.Code,
            ignoreCase: false));
        return (unique ? found.Reverse().DistinctBy(i => i.Code).Reverse() : found).TakeLast(count);
    }
}
