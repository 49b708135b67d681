using Microsoft.CodeAnalysis.CSharp;
using NotebookKit.Interactive;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Running;

/// <summary>One notebook run from top to bottom. It stops at the first cell that fails unless that cell is meant to.</summary>
/// <param name="file">Notebook; its outputs are replaced in memory.</param>
/// <param name="start">Starts an engine within limits.</param>
internal sealed class NotebookRun(NotebookFile file, Func<WorkerOptions, CancellationToken, Task<INotebookEngine>> start)
{
    private readonly List<Headline> _headlines = [];
    private readonly List<MainVerdict> _verdicts = [];

    /// <summary>Code cells that ran, the failed one included.</summary>
    public int CellsRun { get; private set; }

    /// <summary>The cell that failed the notebook; none where it passed.</summary>
    public CellFailure? Failure { get; private set; }

    /// <summary>What it comes to, as far as it ran. A later decision takes the place of an earlier one on the same subject.</summary>
    public NotebookAnswer Answer => new(_headlines, [.. _verdicts.GroupBy(v => v.Subject, StringComparer.Ordinal).Select(of => of.Last())]);

    /// <summary>Runs it in an engine of its own.</summary>
    /// <param name="options">Limits.</param>
    /// <param name="tells">Told the number of each cell as it begins, and again how far its computation is.</param>
    /// <param name="cancellation">Ends the engine.</param>
    public async Task RunAsync(RunOptions options, Action<int, string?> tells, CancellationToken cancellation)
    {
        ClearOutputs();
        var folder = Path.GetDirectoryName(Path.GetFullPath(file.Path))!;
        try
        {
            await using var engine = await start(new WorkerOptions(folder, options.CellLimit, Batch: options.BatchOf(file.Name),
                Givens: options.Givens), cancellation);
            await RunCellsAsync(engine, tells, cancellation);
            if (Failure is null && options.MustTake.TryGetValue(file.Name, out var names)
                && names.Count > 0) await RequireTakenAsync(engine, names, cancellation);
        }
        catch (EngineStartException e)
        {
            Failure = new CellFailure(0, CellStatus.EngineFailed, CellError.Plain("EngineStart", e.Message), "");
        }
    }

    private async Task RunCellsAsync(INotebookEngine engine, Action<int, string?> tells, CancellationToken cancellation)
    {
        var recorder = new OutputRecorder();
        foreach (var cell in file.CodeCells)
        {
            tells(cell.Number, null);
            CellsRun++;
            recorder.Begin(cell.Number);
            void Show(CellOutput output)
            {
                if (output is ProgressOutput progress) tells(cell.Number, progress.Text);
                else recorder.Add(output);
            }

            var outcome = await engine.RunAsync(cell.Source, Show, cancellation);
            if (outcome.Error is { } error) recorder.Add(error);
            cell.SetOutputs(recorder.End(), cell.Number);
            _headlines.AddRange(AnswerReader.Numbers(cell));
            _verdicts.AddRange(AnswerReader.Verdicts(cell));
            if (outcome.Status == CellStatus.Succeeded) continue;
            if (outcome.Status == CellStatus.Failed && cell.MayFail) continue;
            Failure = new CellFailure(cell.Number, outcome.Status, outcome.Error!, StartOf(cell.Source));
            return;
        }
    }

    // Only the process that ran the cells knows what its givens took.
    private async Task RequireTakenAsync(INotebookEngine engine, IReadOnlyList<string> names, CancellationToken cancellation)
    {
        var list = string.Join(", ", names.Select(n => SymbolDisplay.FormatLiteral(n, quote: true)));
        var outcome = await engine.RunAsync($"{Session.Variable}.{nameof(Session.Givens)}.RequireTaken({list});", _ => { }, cancellation);
        if (outcome.Status != CellStatus.Succeeded) Failure = new CellFailure(0, outcome.Status,
            CellError.Plain("GivenNotTaken", outcome.Error!.Message), "");
    }

    private void ClearOutputs()
    {
        foreach (var cell in file.Cells.Where(c => c.Kind == CellKind.Code)) cell.SetOutputs([], null);
    }

    private static string StartOf(string code) => code.Split('\n').Select(l => l.Trim()).FirstOrDefault(l => l.Length > 0) ?? "";
}
