using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using NotebookKit.Interactive;
using NotebookKit.Numerics;
using NotebookKit.Interactive.Live;
using NotebookKit.Runner.Wording;

namespace NotebookKit.Runner.Engine;

/// <summary>The C# kernel, in this process. A runaway cell can't be stopped from inside: a worker process puts that right.</summary>
internal sealed class CSharpEngine : INotebookEngine, ILanguageHelp
{
    private readonly CompositeKernel _kernel;
    private readonly long _outputLimitBytes;
    private readonly LanguageHelp _help;
    private CellProgress? _progress;

    private readonly CSharpKernel _csharp;

    private CSharpEngine(CompositeKernel kernel, CSharpKernel csharp, long outputLimitBytes)
    {
        this._csharp = csharp;
        this._kernel = kernel;
        this._outputLimitBytes = outputLimitBytes;
        _help = new LanguageHelp(kernel, new NameCompletion(n => csharp.TryGetValue<object>(n, out var value) ? value : null));
    }

    /// <summary>Starts a session with everything preloaded and the compiler warm.</summary>
    /// <param name="outputLimitBytes">How much one cell may write [bytes], above 0.</param>
    /// <param name="ask">Asks the reader to type something; gives none where nobody can answer.</param>
    /// <param name="frontEnd">Front-end that takes controls; none where there is none.</param>
    /// <param name="session">What the notebook is handed; none hands it a plain one.</param>
    public static async Task<CSharpEngine> StartAsync(long outputLimitBytes, Func<InputRequest, Task<string?>> ask,
        IFrontEndLink? frontEnd = null,
        Session? session = null)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

        var csharp = new CSharpKernel().UseKernelHelpers().UseValueSharing().UseWho();
        csharp.AddAssemblyReferences(SessionPreload.AssemblyFiles());
        ScriptSettings.Apply(csharp, SessionPreload.Namespaces());
        var kernel = new CompositeKernel { csharp };
        kernel.DefaultKernelName = csharp.Name;
        kernel.UseImportMagicCommand();
        kernel.RegisterCommandHandler<RequestInput>(async (request, context) =>
        {
            if (await ask(new InputRequest(request.Prompt, request.IsPassword))
                is { } typed) context.Publish(new InputProduced(typed, request));
            else context.Fail(request, message: "Nobody can be asked here: this front-end takes no input.");
        });
        CSharpEngine? engine = null;
        // Long computations of the library tell how far they are, and stop when the cell that started them is asked to.
        csharp.AddMiddleware(async (command, context, next) =>
        {
            using var run = WorkRun.Begin(context.CancellationToken, engine?._progress);
            // Taken back by the flow of this call when it first waits.
            if (command is SubmitCode) SynchronizationContext.SetSynchronizationContext(new CellContext(context.CancellationToken));
            await next(command, context).ConfigureAwait(false);
        });
        csharp.DeferCommand(new SubmitCode(SessionPreload.Usings()));
        PlainFormatting.Register();
        await NotebookKitExtension.LoadAsync(kernel, passesFigures: true, (session ?? Session.Plain).Givens);
        if (frontEnd is not null) FrontEnd.Attach(kernel, frontEnd);

        engine = new CSharpEngine(kernel, csharp, outputLimitBytes);
        var warm = await engine.RunAsync("_ = 1.0.ToString();", _ => { }, CancellationToken.None);
        if (warm.Status != CellStatus.Succeeded) throw new InvalidOperationException("The C# session did not start: "
            + $"{warm.Error?.Message}");
        await csharp.SetValueAsync(Session.Variable, session ?? Session.Plain, typeof(Session));
        ScriptSettings.InheritReferences(csharp);
        return engine;
    }

    /// <inheritdoc />
    public async Task<CellOutcome> RunAsync(string code, Action<CellOutput> output, CancellationToken cancellation)
    {
        var meter = new OutputMeter(_outputLimitBytes);
        _progress = new CellProgress(output);
        var events = new ConcurrentQueue<KernelEvent>();
        // The subscriber must not touch the console: the kernel listens to it, and would call this again without end.
        using var subscription = _kernel.KernelEvents.Subscribe(@event =>
        {
            if (@event is DiagnosticsProduced) events.Enqueue(@event);
            if (KernelOutput.From(@event) is { } shown && meter.Allows(KernelOutput.SizeOf(@event))) output(shown);
        });

        var run = Task.Run(() => _kernel.SendAsync(new SubmitCode(code), cancellation), CancellationToken.None);
        await Task.WhenAny(run, meter.Exceeded);
        if (meter.Exceeded.IsCompleted) return TooMuchOutput();
        try
        {
            var result = await run;
            return result.Events.OfType<CommandFailed>().LastOrDefault() is { } failed
                ? Failed(failed, events, code, cancellation)
                : CellOutcome.Success;
        }
        catch (OperationCanceledException)
        {
            return await AnswersAsync() ? Interrupted : Abandoned;
        }
    }

    /// <inheritdoc />
    public Task<CompletionList> CompleteAsync(string code, int position, CancellationToken cancellation)
        => _help.CompleteAsync(code, position, cancellation);

    /// <inheritdoc />
    public Task<Description?> DescribeAsync(string code, int position, CancellationToken cancellation)
        => _help.DescribeAsync(code, position, cancellation);

    /// <inheritdoc />
    public ValueTask DisposeAsync()
    {
        _kernel.Dispose();
        return ValueTask.CompletedTask;
    }

    private static CellOutcome Interrupted { get; } =
        new(CellStatus.Interrupted, CellError.Plain("Interrupted", "The cell was stopped on request."));

    private static CellOutcome Abandoned { get; } =
        new(CellStatus.Abandoned, CellError.Plain("Interrupted", "The cell did not stop when asked."));

    // The kernel lets go of a cancelled cell at once, whether its code has stopped or not. One that still runs keeps the next from
    // starting.
    private async Task<bool> AnswersAsync()
    {
        var probe = Task.Run(() => _kernel.SendAsync(new SubmitCode("")));
        return await Task.WhenAny(probe, Task.Delay(TimeSpan.FromSeconds(1.2))) == probe;
    }

    private CellOutcome Failed(CommandFailed failed, IEnumerable<KernelEvent> events, string code, CancellationToken cancellation) =>
        failed.Exception is OperationCanceledException && cancellation.IsCancellationRequested
            ? Interrupted
            : new CellOutcome(CellStatus.Failed, CellErrorReader.Read(failed, events, code, VariableNames()));

    private IReadOnlyCollection<string> VariableNames() =>
        _csharp.ScriptState is { } state ? [.. state.Variables.Select(v => v.Name).Distinct()] : [];

    private CellOutcome TooMuchOutput() => new(CellStatus.Flooded, CellError.Plain(
        "OutputLimit",
        string.Create(CultureInfo.InvariantCulture,
            $"The cell wrote more than {_outputLimitBytes /
            1e6:0.#} MB and was stopped. Show less: a summary, a chart, or every hundredth row.")));
}
