using System.Diagnostics;
using NotebookKit.Charts;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Numerics;
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
    private readonly PageWriter _pages = new(options.Single, File.Exists(LivePage.Built) ? $"../{LivePage.FileName}" : null);
    private readonly WorkerPool _workers = new();
    private readonly Lock _door = new();
    private bool _shared;

    /// <summary>Runs them all; one that fails doesn't stop the others, and what can't be written is named.</summary>
    /// <param name="cancellation">Ends the workers and leaves no half file.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public async Task<RunResult> RunAsync(CancellationToken cancellation)
    {
        AtomicFile.ClearParts(options.OutputFolder);
        var reports = new NotebookReport[options.Notebooks.Count];
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = options.Jobs, CancellationToken = cancellation };
        try
        {
            await Parallel.ForAsync(0, reports.Length, parallel, async (i, token) =>
            {
                reports[i] = await RunOneAsync(options.Notebooks[i], token);
                display.Ended(reports[i]);
            });
        }
        finally
        {
            await _workers.EndAsync();
        }

        if (options.Shard is not null) return new(reports, [], HasIndex: false);
        var sheets = RunFiles.Try("A sheet for the bench or the pad", () => SheetFolder.WriteFor(options, reports));
        var live = RunFiles.Try("The live page", () => LivePage.CopyTo(options.LivePage));
        var index = RunFiles.Write("The list of all pages", options.IndexFile, () => new IndexPage(options).Write(reports));
        return new(reports, [.. new[] { sheets, live, index }.OfType<string>()], index is null);
    }

    private async Task<NotebookReport> RunOneAsync(string path, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            return await RunFileAsync(NotebookFile.Read(path), clock, cancellation);
        }
        catch (NotebookFormatException e)
        {
            return Unreadable(Path.GetFileNameWithoutExtension(path), CellError.Plain("NotANotebook", e.Message), clock.Elapsed);
        }
        catch (Exception e) when (!cancellation.IsCancellationRequested)
        {
            return Unreadable(Path.GetFileNameWithoutExtension(path), CellError.Plain("NotRun",
                $"The notebook can't be run ({RunFiles.Words(e)})."), clock.Elapsed);
        }
    }

    private async Task<NotebookReport> RunFileAsync(NotebookFile file, Stopwatch clock, CancellationToken cancellation)
    {
        display.Started(file.Name, file.CodeCells.Count());
        if (options.Shard is { } stale) DeleteShards(file.Name, stale);
        var run = new NotebookRun(file, _workers.StartAsync);
        await run.RunAsync(options, (cell, progress) => display.Running(file.Name, cell, progress), cancellation);
        cancellation.ThrowIfCancellationRequested();

        // What the cells show of one part isn't what the notebook says.
        if (options.Shard is { } part) return OfPart(file, run, part, clock.Elapsed);
        var failures = run.Failures.ToList();
        var executed = Kept(RunFiles.Write("The executed notebook", options.ExecutedFile(file.Name), file.ToText), failures);
        var answer = Answered(run, file.Name);
        if (!options.Single) Kept(RunFiles.Try("The chart library", Share), failures);
        var places = new PagePlaces();
        var page = Kept(RunFiles.Write("The page", options.PageFile(file.Name), () =>
        {
            var written = _pages.Write(file, answer, failures, run.NotComputed, LessonOrder.Of(options, file.Name));
            places = written.Places;
            return written.Html;
        }), failures);
        var outline = NotebookOutline.Of(file);
        return new NotebookReport(
            file.Name, outline.Title, outline.Summary, run.CellsRun, file.CodeCells.Count(), clock.Elapsed, answer, failures,
            run.NotComputed, executed ? options.ExecutedFile(file.Name) : null, page ? options.PageFile(file.Name) : null)
        {
            Places = page ? places : new(),
        };
    }

    private static bool Kept(string? problem, List<CellFailure> failures)
    {
        if (problem is not null) failures.Add(new(0, CellStatus.EngineFailed, CellError.Plain("NotWritten", problem), ""));
        return problem is null;
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
        var note = last.Note;
        var set = options.SetIn(name);
        if (run.Failures.Count == 0 && set.Count == 0 && run.Records.All(r => r.Givens.All(g => !g.Overridden)))
            note = RunFiles.Try("The record for the next run", () => LastRecords.Keep(options, name, run.Records)) ?? note;
        return run.Answer with
        {
            Requirements = RequirementTable.Of(run.Records, last.Records, run.Unstated),
            ChangedGivens = ChangedGivens.Of(run.Records, last.Records, set),
            RecordNote = note,
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
        foreach (var file in ShardFiles.Of(options.ShardFolder(name), part)) WorkRun.Current.Disk.Delete(file);
    }

    // An old page of a notebook that can't be read any more would pass for a fresh one.
    private NotebookReport Unreadable(string name, CellError error, TimeSpan took)
    {
        AtomicFile.TryDelete(options.ExecutedFile(name));
        AtomicFile.TryDelete(options.PageFile(name));
        var failure = new CellFailure(0, CellStatus.EngineFailed, error, "");
        return new NotebookReport(name, name, "", 0, 0, took, NotebookAnswer.None, [failure], 0, null, null);
    }
}
