using System.CommandLine;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Interactive;
using NotebookKit.Runner.Batch;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that puts the parts of dispersions together.</summary>
internal static class MergeCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var shards = new Argument<string[]>("shards") { Description = "Files with shards, or folders with shards in or below them.",
            Arity = ArgumentArity.OneOrMore };
        var output = new Option<string?>("--out") { Description = "Folder for the merged dispersions; the first folder named, or that of "
            + "the first file, if not given." };
        var command = new Command("merge", "Puts the shards of dispersions together to the result that one machine would have given.") {
            shards, output };
        command.SetAction(parsed => Merge(parsed.GetValue(shards) ?? [], parsed.GetValue(output)));
        return command;
    }

    private static int Merge(string[] named, string? output)
    {
        var files = Files(named);
        var folder = Path.GetFullPath(output ?? (Directory.Exists(named[0]) ? named[0] : Path.GetDirectoryName(files[0])!));
        var problems = new List<string>();
        var sets = ShardSet.Read(files, problems);
        var merged = sets.Select(s => s.Join(problems)).OfType<DispersionShard>().ToList();
        if (problems.Count > 0)
        {
            // All or nothing: a result beside a complaint would be taken for the whole.
            if (sets.Count > 1) problems.Add($"These are shards of {sets.Count} dispersions. One that nobody asked for is of another "
                + "notebook, seed, version or kind of machine: take its files away.");
            foreach (var problem in problems) Console.Error.WriteLine(problem);
            Console.Error.WriteLine("Nothing was merged.");
            return ExitCodes.Failed;
        }

        foreach (var shard in merged)
        {
            var text = ResultText.Of(DispersionResult.Merge([shard]));
            var file = Path.Combine(folder, ShardFiles.MergedName(shard.Plan.Fingerprint));
            DesignRequest.Keep(file, shard.Write);
            DesignRequest.Keep(Path.ChangeExtension(file, ".txt"), text);
            Console.Out.Write(text);
            Console.Out.WriteLine($"Merged: {file}");
        }

        return ExitCodes.Success;
    }

    private static List<string> Files(string[] named)
    {
        if (named.FirstOrDefault(n => !Directory.Exists(n) && !File.Exists(n))
            is { } missing) throw new RequestException($"There is no {missing}.");
        var files = named.SelectMany(n => Directory.Exists(n) ? ShardFiles.Below(n) : [n]).Select(Path.GetFullPath).Distinct().ToList();
        return files.Count > 0 ? files : throw new RequestException($"There are no shards in {string.Join(", ", named)}. Write them "
            + "with: run <notebook> --shard 1/16 --out <folder>.");
    }
}
