using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.CodeAnalysis.CSharp;
using NotebookKit.Interactive;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;
using NotebookKit.Sheets;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Running;

/// <summary>
/// One notebook run from top to bottom. Where a cell fails, the cells that need what it would have made say so in their place, and all
/// others run; where the session is lost, nothing after it runs.
/// </summary>
/// <param name="file">Notebook; its outputs are replaced in memory.</param>
/// <param name="start">Starts an engine within limits.</param>
internal sealed class NotebookRun(NotebookFile file, Func<WorkerOptions, CancellationToken, Task<INotebookEngine>> start)
{
    private readonly List<Headline> _headlines = [];
    private readonly List<MainVerdict> _verdicts = [];
    private readonly List<DesignRecord> _records = [];
    private readonly List<SheetContent> _sheets = [];
    private readonly List<CellFailure> _failures = [];
    private readonly List<string> _unstated = [];
    private readonly MissingNames _missing = new();
    private readonly string _folder = Path.GetDirectoryName(Path.GetFullPath(file.Path))!;

    /// <summary>Code cells that ran, the failed ones included.</summary>
    public int CellsRun { get; private set; }

    /// <summary>Code cells that weren't run.</summary>
    public int NotComputed { get; private set; }

    /// <summary>The cells that failed the notebook, in order; none where it passed.</summary>
    public IReadOnlyList<CellFailure> Failures => _failures;

    /// <summary>The design records it showed, the last one of each title.</summary>
    public IReadOnlyList<DesignRecord> Records =>
        [.. _records.GroupBy(r => r.Title, StringComparer.Ordinal).Select(of => of.Last())];

    /// <summary>Requirements that the code of cells states which failed or weren't run.</summary>
    public IReadOnlyList<string> Unstated => _unstated;

    /// <summary>What it comes to, as far as it ran. A later decision takes the place of an earlier one on the same subject.</summary>
    public NotebookAnswer Answer => new(_headlines, [.. _verdicts.GroupBy(v => v.Subject, StringComparer.Ordinal).Select(of => of.Last())])
    {
        Sheets = [.. _sheets.GroupBy(s => s.Title, StringComparer.Ordinal).Select(of => of.Last())],
    };

    /// <summary>Runs it in an engine of its own.</summary>
    /// <param name="options">Limits.</param>
    /// <param name="tells">Told the number of each cell as it begins, and again how far its computation is.</param>
    /// <param name="cancellation">Ends the engine.</param>
    public async Task RunAsync(RunOptions options, Action<int, string?> tells, CancellationToken cancellation)
    {
        ClearOutputs();
        try
        {
            await using var engine = await start(new WorkerOptions(_folder, options.CellLimit, Batch: options.BatchOf(file.Name),
                Givens: options.Givens), cancellation);
            await RunCellsAsync(engine, tells, cancellation);
            if (_failures.Count == 0 && options.MustTake.TryGetValue(file.Name, out var names)
                && names.Count > 0) await RequireTakenAsync(engine, names, cancellation);
        }
        catch (EngineStartException e)
        {
            _failures.Add(new CellFailure(0, CellStatus.EngineFailed, CellError.Plain("EngineStart", e.Message), ""));
            NotComputed = file.CodeCells.Count() - CellsRun;
        }
    }

    private async Task RunCellsAsync(INotebookEngine engine, Action<int, string?> tells, CancellationToken cancellation)
    {
        var recorder = new OutputRecorder();
        var lostIn = 0;
        foreach (var cell in file.CodeCells)
        {
            var names = CellNames.Of(cell.Source, _folder);
            if (lostIn > 0 || _missing.WhyNot(names) is not null)
            {
                Skip(cell, names, lostIn);
                continue;
            }

            var outcome = await RunCellAsync(engine, cell, recorder, tells, cancellation);
            if (outcome.Status == CellStatus.Succeeded) _missing.Made(names);
            else if (outcome.Status != CellStatus.Failed || !cell.MayFail) Fail(cell, names, outcome);
            if (outcome.Status is not (CellStatus.Succeeded or CellStatus.Failed)) lostIn = cell.Number;
        }
    }

    private async Task<CellOutcome> RunCellAsync(INotebookEngine engine, NotebookCell cell, OutputRecorder recorder,
        Action<int, string?> tells, CancellationToken cancellation)
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
        _records.AddRange(AnswerReader.Records(cell));
        _sheets.AddRange(AnswerReader.Sheets(cell));
        return outcome;
    }

    private void Fail(NotebookCell cell, CellNames names, CellOutcome outcome)
    {
        var error = outcome.Error!;
        _missing.Failed(cell, names, error.Kind == CellError.CompileError ? null : error.Line);
        _unstated.AddRange(names.Requirements);
        _failures.Add(new CellFailure(cell.Number, outcome.Status, error, StartOf(cell.Source)));
    }

    private void Skip(NotebookCell cell, CellNames names, int lostIn)
    {
        var why = lostIn > 0
            ? string.Create(CultureInfo.InvariantCulture, $"Not computed: cell {lostIn} ended the session and everything in it.")
            : _missing.WhyNot(names)!;
        if (lostIn == 0) _missing.Skipped(cell, names);
        _unstated.AddRange(names.Requirements);
        NotComputed++;
        cell.SetOutputs(
            [
                new JsonObject
                {
                    ["output_type"] = "display_data",
                    ["metadata"] = new JsonObject(),
                    ["data"] = new JsonObject
                    {
                        [MediaTypes.Html] = $"<p class=\"not-computed\" role=\"note\">{Escape.Text(why)}</p>",
                        [MediaTypes.Text] = why,
                    },
                },
            ],
            null);
    }

    // Only the process that ran the cells knows what its givens took.
    private async Task RequireTakenAsync(INotebookEngine engine, IReadOnlyList<string> names, CancellationToken cancellation)
    {
        var list = string.Join(", ", names.Select(n => SymbolDisplay.FormatLiteral(n, quote: true)));
        var outcome = await engine.RunAsync($"{Session.Variable}.{nameof(Session.Givens)}.RequireTaken({list});", _ => { }, cancellation);
        if (outcome.Status != CellStatus.Succeeded) _failures.Add(new CellFailure(0, outcome.Status,
            CellError.Plain("GivenNotTaken", outcome.Error!.Message), ""));
    }

    private void ClearOutputs()
    {
        foreach (var cell in file.Cells.Where(c => c.Kind == CellKind.Code)) cell.SetOutputs([], null);
    }

    private static string StartOf(string code) => code.Split('\n').Select(l => l.Trim()).FirstOrDefault(l => l.Length > 0) ?? "";
}
