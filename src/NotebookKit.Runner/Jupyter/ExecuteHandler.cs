using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Runs cells on request.</summary>
/// <param name="session">The worker behind the kernel.</param>
/// <param name="outlet">Sends messages.</param>
/// <param name="history">Keeps the inputs.</param>
/// <param name="questions">Asks the reader.</param>
/// <param name="widgets">Shows controls.</param>
internal sealed class ExecuteHandler(KernelSession session, KernelOutlet outlet, InputHistory history, ReaderQuestions questions,
    WidgetHandler widgets)
{
    private readonly Lock _door = new();
    private CancellationTokenSource? _running;
    private int _count;

    /// <summary>Interrupts the running cell, if one runs.</summary>
    public void Interrupt()
    {
        lock (_door) _running?.Cancel();
    }

    /// <summary>Runs a cell and answers.</summary>
    /// <param name="request">Request.</param>
    /// <param name="failed">Told before the answer goes out that the cells that wait behind it by then are not to be run; whoever sends
    /// another one has read the answer.</param>
    public async Task HandleAsync(JupyterMessage request, Action failed)
    {
        var code = JupyterMessage.TextOf(request.Content, "code");
        var silent = JupyterMessage.FlagOf(request.Content, "silent", absent: false);
        var counts = !silent && JupyterMessage.FlagOf(request.Content, "store_history", absent: true);
        if (counts)
        {
            _count++;
            history.Add(_count, code);
        }

        if (!silent) outlet.Publish("execute_input", request, new JsonObject { ["code"] = code, ["execution_count"] = _count });
        var publisher = new OutputPublisher(outlet, widgets, request, _count, silent);
        session.Late = publisher.Publish;
        var outcome = await RunAsync(code, counts ? _count : 0, publisher.Publish, request);
        if (outcome.SessionLost) widgets.Forget();
        if (outcome.Error is { } error)
        {
            if (!silent) publisher.Publish(error);
            var content = OutputPublisher.ErrorContent(error);
            content["status"] = "error";
            content["execution_count"] = _count;
            content["user_expressions"] = new JsonObject();
            if (JupyterMessage.FlagOf(request.Content, "stop_on_error", absent: true)) failed();
            outlet.Reply(SocketKind.Shell, request, content);
            return;
        }

        outlet.Reply(SocketKind.Shell, request, new JsonObject
        {
            ["execution_count"] = _count,
            ["user_expressions"] = await EvaluateAsync(request),
            ["payload"] = new JsonArray(),
        });
    }

    private async Task<CellOutcome> RunAsync(string code, int number, Action<CellOutput> output, JupyterMessage request)
    {
        // Empty code is how front-ends ask for expressions alone.
        if (string.IsNullOrWhiteSpace(code)) return CellOutcome.Success;
        using var stop = new CancellationTokenSource();
        lock (_door) _running = stop;
        try
        {
            return await session.RunAsync(code, number, JupyterMessage.TextOf(request.Metadata, "cellId"), output, questions.For(request),
                stop.Token);
        }
        finally
        {
            lock (_door) _running = null;
        }
    }

    private async Task<JsonObject> EvaluateAsync(JupyterMessage request)
    {
        var answers = new JsonObject();
        if (request.Content["user_expressions"] is not JsonObject expressions) return answers;
        foreach (var (name, _) in expressions)
        {
            JsonObject? value = null;
            var outcome = await RunAsync(JupyterMessage.TextOf(expressions, name), 0, o => value = (o as ResultOutput)?.Data ?? value,
                request);
            var answer = outcome.Error is { } error ? OutputPublisher.ErrorContent(error)
                : new JsonObject { ["data"] = value ?? [], ["metadata"] = new JsonObject() };
            answer["status"] = outcome.Error is null ? "ok" : "error";
            answers[name] = answer;
        }

        return answers;
    }
}
