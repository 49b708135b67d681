using System.Diagnostics;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;

namespace NotebookKit.Runner.Tests;

/// <summary>A page in the machine's own Firefox, without a window, with a profile of its own; driven by the W3C's WebDriver BiDi. Without
/// one the test is skipped.</summary>
internal sealed class Firefox : IAsyncDisposable
{
    private const string Listening = "WebDriver BiDi listening on ";

    private static readonly string[] Places = ["/usr/bin/firefox-esr", "/usr/bin/firefox"];

    private readonly Process _program;
    private readonly ClientWebSocket _socket = new();
    private readonly TestFolder _profile;
    private int _last;
    private string _page = "";

    private Firefox(Process program, TestFolder profile) => (_program, _profile) = (program, profile);

    /// <summary>Everything the page asked for.</summary>
    public List<string> Requests { get; } = [];

    public static async Task<Firefox> OpenAsync(string page)
    {
        var place = Array.Find(Places, File.Exists);
        Skip.If(place is null, "There is no Firefox on this machine; install the firefox-esr package to try the page in Firefox too.");
        var profile = new TestFolder();
        var program = Process.Start(new ProcessStartInfo(place!, ["--headless", "--no-remote", "--profile", profile[""],
            "--remote-debugging-port", "0"]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        var firefox = new Firefox(program, profile);
        var listening = new TaskCompletionSource<string?>(TaskCreationOptions.RunContinuationsAsynchronously);
        program.OutputDataReceived += (_, _) => { };
        program.ErrorDataReceived += (_, said) =>
        {
            if (said.Data is null || said.Data.Contains(Listening, StringComparison.Ordinal)) listening.TrySetResult(said.Data);
        };
        program.BeginOutputReadLine();
        program.BeginErrorReadLine();
        var line = await listening.Task;
        Assert.True(line is not null, "Firefox ended before it listened.");
        var address = line![(line.IndexOf(Listening, StringComparison.Ordinal) + Listening.Length)..].Trim();
        await firefox._socket.ConnectAsync(new($"{address}/session"), default);
        await firefox.AskAsync("session.new", """{ "capabilities": {} }""");
        await firefox.AskAsync("session.subscribe", """{ "events": [ "network.beforeRequestSent" ] }""");
        firefox._page = (await firefox.AskAsync("browsingContext.getTree", "{}")).GetProperty("contexts")[0].GetProperty("context")
            .GetString()!;
        await firefox.AskAsync("browsingContext.navigate",
            $$"""{ "context": "{{firefox._page}}", "url": {{JsonSerializer.Serialize(page)}}, "wait": "complete" }""");
        return firefox;
    }

    /// <summary>What an expression of the page comes to; a promise is waited for.</summary>
    public async Task<string> EvaluateAsync(string expression)
    {
        var answer = await AskAsync("script.evaluate",
            $$"""{ "expression": {{JsonSerializer.Serialize(expression)}}, "awaitPromise": true, "target": { "context": "{{_page}}" } }""");
        Assert.True(answer.GetProperty("type").GetString() == "success", answer.GetRawText());
        var result = answer.GetProperty("result");
        return result.TryGetProperty("value", out var value) ? value.ToString() : "";
    }

    /// <summary>Makes the page as wide as this [px].</summary>
    public Task NarrowAsync(int width) => AskAsync("browsingContext.setViewport",
        $$"""{ "context": "{{_page}}", "viewport": { "width": {{width}}, "height": 800 } }""");

    public async ValueTask DisposeAsync()
    {
        _socket.Dispose();
        if (!_program.HasExited) _program.Kill(entireProcessTree: true);
        await _program.WaitForExitAsync();
        _program.Dispose();
        _profile.Dispose();
    }

    private async Task<JsonElement> AskAsync(string method, string parameters)
    {
        var number = ++_last;
        await _socket.SendAsync(Encoding.UTF8.GetBytes($$"""{ "id": {{number}}, "method": "{{method}}", "params": {{parameters}} }"""),
            WebSocketMessageType.Text, true, default);
        while (true)
        {
            var message = await ReceiveAsync();
            if (message.TryGetProperty("method", out var happened) && happened.GetString() == "network.beforeRequestSent")
                Requests.Add(message.GetProperty("params").GetProperty("request").GetProperty("url").GetString()!);
            if (!message.TryGetProperty("id", out var id) || id.ValueKind != JsonValueKind.Number || id.GetInt32() != number) continue;
            Assert.True(message.GetProperty("type").GetString() == "success", message.GetRawText());
            return message.GetProperty("result");
        }
    }

    private async Task<JsonElement> ReceiveAsync()
    {
        using var text = new MemoryStream();
        var part = new byte[1 << 16];
        while (true)
        {
            var got = await _socket.ReceiveAsync(part, default);
            text.Write(part, 0, got.Count);
            if (got.EndOfMessage) return JsonDocument.Parse(text.ToArray()).RootElement.Clone();
        }
    }
}
