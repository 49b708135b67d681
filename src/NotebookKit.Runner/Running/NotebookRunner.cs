using System.Diagnostics;
using NotebookKit.Charts;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Runner.Batch;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Pages;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Sheets;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Running;

/// <summary>Runs notebooks, each in a worker of its own, and writes the executed files, the pages and their index.</summary>
/// <param name="options">What to run, how, and where to put it.</param>
/// <param name="display">Shows the run.</param>
internal sealed class NotebookRunner(RunOptions options, IRunDisplay display)
{
    private readonly PageWriter _pages = new(options.Single);
    private readonly Lock _door = new();
    private bool _shared;

    /// <summary>Runs them all; one that fails doesn't stop the others.</summary>
    /// <param name="cancellation">Ends the workers and leaves no half file.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public async Task<IReadOnlyList<NotebookReport>> RunAsync(CancellationToken cancellation)
    {
        var reports = new NotebookReport[options.Notebooks.Count];
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = options.Jobs, CancellationToken = cancellation };
        await Parallel.ForAsync(0, reports.Length, parallel, async (i, token) =>
        {
            reports[i] = await RunOneAsync(options.Notebooks[i], token);
            display.Ended(reports[i]);
        });
        if (options.Shard is null)
        {
            SheetFolder.WriteFor(options, reports);
            LivePage.CopyTo(options.LivePage);
            AtomicFile.Write(options.IndexFile, new IndexPage(options).Write(reports));
        }

        return reports;
    }

    private async Task<NotebookReport> RunOneAsync(string path, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        NotebookFile file;
        try
        {
            file = NotebookFile.Read(path);
        }
        catch (NotebookFormatException e)
        {
            return Unreadable(Path.GetFileNameWithoutExtension(path), e.Message, clock.Elapsed);
        }

        display.Started(file.Name, file.CodeCells.Count());
        if (options.Shard is { } stale) DeleteShards(file.Name, stale);
        var run = new NotebookRun(file, StartWorkerAsync);
        await run.RunAsync(options, (cell, progress) => display.Running(file.Name, cell, progress), cancellation);
        cancellation.ThrowIfCancellationRequested();

        // What the cells show of one part isn't what the notebook says.
        if (options.Shard is { } part) return OfPart(file, run, part, clock.Elapsed);
        AtomicFile.Write(options.ExecutedFile(file.Name), file.ToText());
        var answer = Answered(run, file.Name);
        var page = _pages.Write(file, answer, run.Failures, run.NotComputed, LessonOrder.Of(options, file.Name));
        if (!options.Single) Share();
        AtomicFile.Write(options.PageFile(file.Name), page.Html);
        var outline = NotebookOutline.Of(file);
        return new NotebookReport(
            file.Name, outline.Title, outline.Summary, run.CellsRun, file.CodeCells.Count(), clock.Elapsed, answer, run.Failures,
            run.NotComputed, options.ExecutedFile(file.Name), options.PageFile(file.Name)) { Places = page.Places };
    }

    // One copy for all pages of the folder; what lies there of an earlier version is replaced.
    private void Share()
    {
        lock (_door)
        {
            if (_shared) return;
            AtomicFile.Write(options.LibraryFile, PlotlyScript.Wrapped);
            AtomicFile.Write(options.FontFile, PageResources.MathFont);
            _shared = true;
        }
    }

    // What a run with other givens comes to is a question asked once: the next run is held against the design's own record.
    private NotebookAnswer Answered(NotebookRun run, string name)
    {
        var last = LastRecords.Read(options, name);
        var set = options.SetIn(name);
        if (run.Failures.Count == 0 && set.Count == 0 && run.Records.All(r => r.Givens.All(g => !g.Overridden)))
            LastRecords.Keep(options, name, run.Records);
        return run.Answer with
        {
            Requirements = RequirementTable.Of(run.Records, last.Records, run.Unstated),
            ChangedGivens = ChangedGivens.Of(run.Records, last.Records, set),
            RecordNote = last.Note,
        };
    }

    private NotebookReport OfPart(NotebookFile file, NotebookRun run, ShardNumber part, TimeSpan took)
    {
        var outline = NotebookOutline.Of(file);
        IReadOnlyList<CellFailure> failures = run.Failures.Count > 0 || ShardFiles.Of(options.ShardFolder(file.Name), part).Count > 0
            ? run.Failures
            : [new CellFailure(0, CellStatus.Failed, CellError.Plain("NothingToSplit",
                "The notebook flies no dispersion with batch: session.Batch, so there is nothing to split. " +
                "Pass that to Disperse, or run it without --shard."), "")];
        return new(
            file.Name, outline.Title, outline.Summary, run.CellsRun, file.CodeCells.Count(), took, NotebookAnswer.None, failures,
                run.NotComputed, null, null);
    }

    // A part left by an earlier run, of a notebook that has changed since, would pass for one of this run.
    private void DeleteShards(string name, ShardNumber part)
    {
        foreach (var file in ShardFiles.Of(options.ShardFolder(name), part)) File.Delete(file);
    }

    private static async Task<INotebookEngine> StartWorkerAsync(WorkerOptions limits, CancellationToken cancellation) =>
        await WorkerEngine.StartAsync(limits, cancellation);

    // An old page of a notebook that can't be read any more would pass for a fresh one.
    private NotebookReport Unreadable(string name, string reason, TimeSpan took)
    {
        DeleteIfThere(options.ExecutedFile(name));
        DeleteIfThere(options.PageFile(name));
        var failure = new CellFailure(0, CellStatus.EngineFailed, CellError.Plain("NotANotebook", reason), "");
        return new NotebookReport(name, name, "", 0, 0, took, NotebookAnswer.None, [failure], 0, null, null);
    }

    private static void DeleteIfThere(string path)
    {
        if (File.Exists(path)) File.Delete(path);
    }
}
