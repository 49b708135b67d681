using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Asks the reader of a notebook to type something, and hands on the answer.</summary>
/// <param name="outlet">Sends messages.</param>
internal sealed class ReaderQuestions(KernelOutlet outlet)
{
    private TaskCompletionSource<string?>? _waiting;

    /// <summary>How a cell of this request asks; none where the front-end takes no input.</summary>
    /// <param name="request">Request that runs the cell.</param>
    public Func<InputRequest, Task<string?>>? For(JupyterMessage request) =>
        JupyterMessage.FlagOf(request.Content, "allow_stdin", absent: false) ? input => AskAsync(request, input) : null;

    /// <summary>Takes the front-end's answer.</summary>
    /// <param name="reply">Its message.</param>
    public void Answer(JupyterMessage reply) => _waiting?.TrySetResult(JupyterMessage.TextOf(reply.Content, "value"));

    private Task<string?> AskAsync(JupyterMessage request, InputRequest input)
    {
        _waiting = new(TaskCreationOptions.RunContinuationsAsynchronously);
        outlet.Ask(request, new JsonObject { ["prompt"] = input.Prompt, ["password"] = input.Hidden });
        return _waiting.Task;
    }
}
