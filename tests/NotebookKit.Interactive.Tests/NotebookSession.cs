using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using NotebookKit.Charts;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Tests;

/// <summary>A real kernel with the extension in it. One for all tests: formatters are shared by the whole process.</summary>
public sealed class NotebookSession : IAsyncLifetime, IDisposable
{
    private readonly CompositeKernel _root = new();
    private readonly CSharpKernel _csharp = new();

    public Kernel Root => _root;

    public async Task InitializeAsync()
    {
        _root.Add(_csharp);
        _root.DefaultKernelName = _csharp.Name;
        _csharp.AddAssemblyReferences([typeof(Source).Assembly.Location, typeof(Session).Assembly.Location,
            typeof(EngineeringChart).Assembly.Location, typeof(UnitsNet.Pressure).Assembly.Location, typeof(Samples).Assembly.Location]);
        await NotebookKitExtension.LoadAsync(_root, passesFigures: true);
        await RunAsync("using NotebookKit.Quantities; using NotebookKit.Provenance; using NotebookKit.Record; using UnitsNet; using "
            + "NotebookKit.Interactive.Tests; var session = NotebookKit.Interactive.Session.Plain;");
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        _csharp.Dispose();
        _root.Dispose();
    }

    /// <summary>Runs a cell and gives everything that came out of it.</summary>
    public async Task<IReadOnlyList<KernelEvent>> RunAsync(string cell) => (await _root.SendAsync(new SubmitCode(cell))).Events;

    /// <summary>Runs a cell that shows one thing and gives its forms by mime type.</summary>
    public async Task<IReadOnlyDictionary<string, string>> ShowAsync(string cell)
    {
        var events = await RunAsync(cell);
        Assert.DoesNotContain(events, e => e is CommandFailed);
        var shown = Assert.Single(events.OfType<DisplayEvent>(), e => e is ReturnValueProduced or DisplayedValueProduced);
        return shown.FormattedValues.ToDictionary(v => v.MimeType, v => v.Value);
    }
}
