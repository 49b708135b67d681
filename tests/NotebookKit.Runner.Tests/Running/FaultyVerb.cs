using NotebookKit.Numerics;
using NotebookKit.Numerics.Disks;
using NotebookKit.Runner.Commands;
using Spectre.Console;

namespace NotebookKit.Runner.Tests.Running;

/// <summary>A command that writes, run again and again from the same folder while the disk fails at one place after another.</summary>
internal sealed class FaultyVerb : IDisposable
{
    private readonly TestFolder _folder = new();
    private Dictionary<string, byte[]> _before = [];

    /// <summary>Folder that it works in.</summary>
    public string At => _folder.Path;

    /// <summary>What it is called; ends with an exit code and what it said.</summary>
    public required Func<string, Task<(int Code, string Said)>> Verb { get; init; }

    /// <summary>Words that say that something was made.</summary>
    public required string Made { get; init; }

    /// <summary>Whether an older file may be taken away, because it would pass for a new one.</summary>
    public bool TakesOldAway { get; init; }

    /// <summary>Whether its success ends in another code than 0.</summary>
    public int Success { get; init; }

    /// <summary>Looks at what else has to hold, however it ended.</summary>
    public Action<string, string> Always { get; init; } = (_, _) => { };

    /// <summary>Files that lines are added to: one that was cut off stays where the disk takes nothing back.</summary>
    public string AppendsTo { get; init; } = " none ";

    /// <summary>Whether a file, neither the old nor the new one, is what it has to be after the fault: its path, its bytes, the new
    /// ones.</summary>
    public Func<string, byte[], byte[], bool> IsRight { get; init; } = (_, _, _) => false;

    /// <summary>In which ways the disk fails.</summary>
    public IReadOnlyList<Fault> Ways { get; init; } = [Fault.FullOnce, Fault.StaysFull, Fault.RefusedOnce, Fault.Gone];

    /// <summary>Tries every place in every way.</summary>
    /// <param name="prepare">Fills the folder before the first run.</param>
    /// <returns>How many runs there were, and what was wrong with them.</returns>
    public async Task<(int Runs, List<string> Wrong)> TryAllAsync(Action<string> prepare)
    {
        prepare(At);
        _before = Files();
        var counting = new FaultyDisk(Fault.None, 0);
        var (code, said) = await CallAsync(counting);
        var after = Files();
        List<string> wrong = [];
        if (code != Success || !said.Contains(Made, StringComparison.Ordinal)) wrong.Add($"without a fault: {code} {said}");
        var runs = 0;
        foreach (var fault in Ways)
            for (var place = 1; place <= counting.Places; place++)
            {
                Restore();
                var disk = new FaultyDisk(fault, place);
                runs++;
                try
                {
                    (code, said) = await CallAsync(disk);
                    wrong.AddRange(Look(disk, fault, code, said, after).Select(w => $"{fault} at {place} of {counting.Places}: {w}"));
                    Always(At, said);
                }
                catch (Exception e)
                {
                    wrong.Add($"{fault} at {place}: {e.GetType().Name}: {e.Message.Split('\n')[0]} {e.StackTrace?.Split('\n')[0]}");
                }
            }

        return (runs, wrong);
    }

    /// <summary>Calls the program in this process.</summary>
    public static async Task<(int Code, string Said)> Program(params string[] arguments)
    {
        var (output, errors, screen) = (Console.Out, Console.Error, AnsiConsole.Console);
        using var said = new StringWriter();
        try
        {
            Console.SetOut(said);
            Console.SetError(said);
            AnsiConsole.Console = AnsiConsole.Create(new() { Ansi = AnsiSupport.No, Out = new AnsiConsoleOutput(said) });
            var code = await RunnerCommands.InvokeAsync(arguments);
            return (code, said.ToString().ReplaceLineEndings(" "));
        }
        finally
        {
            Console.SetOut(output);
            Console.SetError(errors);
            AnsiConsole.Console = screen;
        }
    }

    public void Dispose() => _folder.Dispose();

    private async Task<(int Code, string Said)> CallAsync(Disk disk)
    {
        using var run = WorkRun.WriteWith(disk);
        return await Verb(At);
    }

    private IEnumerable<string> Look(FaultyDisk disk, Fault fault, int code, string said, Dictionary<string, byte[]> after)
    {
        var now = Files();
        if (!disk.HasFailed || (code == Success && said.Contains(Made, StringComparison.Ordinal)))
        {
            if (code != Success) yield return $"no fault, and {code}: {said}";
            if (!Same(now, after)) yield return $"said to be made, and isn't: {said}";
            yield break;
        }

        if (code == 0) yield return $"a fault, and success: {said}";
        if (said.Contains(Made, StringComparison.Ordinal)) yield return $"a fault, and made: {said}";
        if (said.Trim().Length < 20 || !said.TrimEnd().EndsWith('.')) yield return $"no sentence: {said}";
        if (said.Contains("The program can't go on", StringComparison.Ordinal)) yield return said;
        foreach (var (path, bytes) in now)
        {
            if (path.EndsWith(".part", StringComparison.Ordinal) || path.Contains(".part/", StringComparison.Ordinal))
            {
                if (fault != Fault.Gone) yield return $"left {path}";
                continue;
            }

            var isOld = _before.TryGetValue(path, out var old) && old.AsSpan().SequenceEqual(bytes);
            var isNew = after.TryGetValue(path, out var made) && made.AsSpan().SequenceEqual(bytes);
            var isCutOff = fault == Fault.Gone && path.EndsWith(AppendsTo, StringComparison.Ordinal) && bytes.AsSpan().StartsWith(old);
            var isRight = made is not null && IsRight(path, bytes, made);
            if (!isOld && !isNew && !isCutOff && !isRight) yield return $"{path} is neither the old nor the new one";
        }

        foreach (var path in _before.Keys.Where(p => !now.ContainsKey(p)))
            if (!TakesOldAway) yield return $"{path} is gone";
    }

    private static bool Same(Dictionary<string, byte[]> one, Dictionary<string, byte[]> other) =>
        one.Count == other.Count && one.All(f => other.TryGetValue(f.Key, out var bytes) && bytes.AsSpan().SequenceEqual(f.Value));

    private Dictionary<string, byte[]> Files() => Directory.EnumerateFiles(At, "*", SearchOption.AllDirectories)
        .ToDictionary(f => Path.GetRelativePath(At, f).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);

    private void Restore()
    {
        foreach (var folder in Directory.GetDirectories(At)) Directory.Delete(folder, recursive: true);
        foreach (var file in Directory.GetFiles(At)) File.Delete(file);
        foreach (var (path, bytes) in _before)
        {
            var full = Path.Combine(At, path);
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            File.WriteAllBytes(full, bytes);
        }
    }
}
