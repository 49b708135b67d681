using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading.Tasks;

// Makes a copy of library and tests in out/mutants, puts every mutant of mutants.txt behind one switch, builds once, and runs the tests
// named beside each file once a mutant. Arguments: words of which a file's path or a mutant has to hold one; none for all.
var root = AppContext.BaseDirectory;
while (!File.Exists(Path.Combine(root, "NotebookKit.sln")))
    root = Path.GetDirectoryName(root) ?? throw new InvalidOperationException("No folder above the program holds NotebookKit.sln.");
var copy = Path.Combine(root, "out", "mutants");
var mutants = MutantList.Read(Path.Combine(root, "tests", "mutants", "mutants.txt"));
(string From, string To)[] folders = [("src/NotebookKit", "src/NotebookKit"), ("tests/NotebookKit.Tests", "tests/NotebookKit.Tests"),
    ("tests/mutants/run", "tests/MutantRun")];
foreach (var (from, to) in folders)
    Copy(Path.Combine(root, from), Path.Combine(copy, to));
Write(Path.Combine(copy, "tests", "Directory.Build.props"), File.ReadAllText(Path.Combine(root, "tests", "Directory.Build.props")));
foreach (var file in mutants.GroupBy(m => m.File))
{
    var text = File.ReadAllText(Path.Combine(root, "src", "NotebookKit", file.Key));
    Write(Path.Combine(copy, "src", "NotebookKit", file.Key), MutantList.Switched(text, [.. file]));
}

Write(Path.Combine(copy, "src", "NotebookKit", "MutantSwitch.cs"), MutantList.Switch);
var build = Run("dotnet", ["build", Path.Combine(copy, "tests", "MutantRun"), "-c", "Release", "-m:1", "--nologo", "-v", "q",
    "-p:RunAnalyzers=false", "-p:TreatWarningsAsErrors=false", "-p:EnforceCodeStyleInBuild=false", "-p:GenerateDocumentationFile=false"],
    0, "", 1_800_000);
if (build.Code != 0)
{
    var errors = build.Output.Split('\n').Where(l => l.Contains("error", StringComparison.Ordinal)).Distinct().Take(20);
    Console.WriteLine(string.Join("\n", errors));
    return 2;
}

var program = Path.Combine(copy, "tests", "MutantRun", "bin", "Release", "net10.0", "MutantRun.dll");
var wanted = mutants.Where(m => args.Length == 0 || args.Any(a => $"{m}".Contains(a, StringComparison.OrdinalIgnoreCase))).ToList();
var limits = new Dictionary<string, (HashSet<int> Seen, int Milliseconds, string[] Arguments)>();
foreach (var tests in wanted.Select(m => m.Tests).Distinct())
{
    var seen = Path.Combine(copy, "seen.txt");
    File.Delete(seen);
    var clock = Stopwatch.StartNew();
    var (code, output) = Run("dotnet", [program, tests], 0, seen, 900_000);
    Console.WriteLine($"unchanged: {output.Trim()} in {clock.Elapsed.TotalSeconds:0} s ({tests})");
    if (code != 0) return 2;
    limits[tests] = (File.Exists(seen) ? File.ReadAllLines(seen).Select(l => int.Parse(l, CultureInfo.InvariantCulture)).ToHashSet() : [],
        60_000 + 5 * (int)clock.ElapsedMilliseconds,
        [program, tests, "-", .. output.Split('\n').Where(l => l.StartsWith("fails: ", StringComparison.Ordinal))
            .Select(l => l[7..].Trim())]);
}

var results = new ConcurrentDictionary<int, (string What, string By)>();
Parallel.ForEach(wanted, new ParallelOptions { MaxDegreeOfParallelism = 2 }, mutant =>
{
    var (seen, milliseconds, arguments) = limits[mutant.Tests];
    var (code, output) = seen.Contains(mutant.Id) ? Run("dotnet", arguments, mutant.Id, "", milliseconds) : (-2, "");
    var what = code switch
    {
        0 => mutant.Equivalent.Length > 0 ? "equivalent" : "survived",
        1 => "killed",
        -1 => "timeout",
        -2 => "not covered",
        _ => "failed to run",
    };
    results[mutant.Id] = (what, output.Split('\n')[0].Trim());
    if (results[mutant.Id].What != "killed") Console.WriteLine($"{results[mutant.Id].What}: {mutant} {mutant.Equivalent}");
});

var report = new StringBuilder();
foreach (var mutant in wanted) report.AppendLine($"{results[mutant.Id].What,-12} {mutant}   {results[mutant.Id].By}");
File.WriteAllText(Path.Combine(copy, "score.txt"), report.ToString());
Console.WriteLine($"{"file",-48} {"killed",7} {"timeout",7} {"survived",8} {"uncovered",9} {"equivalent",10} {"score",6}");
foreach (var file in wanted.GroupBy(m => m.File).Append(null))
{
    var of = (file ?? (IEnumerable<Mutant>)wanted).Select(m => results[m.Id].What).ToList();
    int Count(string what) => of.Count(o => o == what);
    var counted = of.Count - Count("equivalent");
    var score = counted > 0 ? 100.0 * (Count("killed") + Count("timeout")) / counted : 100;
    Console.WriteLine($"{(file is IGrouping<string, Mutant> g ? g.Key : "all"),-48} {Count("killed"),7} {Count("timeout"),7} "
        + $"{Count("survived"),8} {Count("not covered"),9} {Count("equivalent"),10} {score,5:0} %");
}

return 0;

static void Copy(string from, string to)
{
    foreach (var old in Directory.Exists(to) ? Directory.GetFiles(to, "*.cs", SearchOption.AllDirectories) : [])
    {
        if (!Built(Path.GetRelativePath(to, old)) && !File.Exists(Path.Combine(from, Path.GetRelativePath(to, old)))) File.Delete(old);
    }

    foreach (var path in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
    {
        var place = Path.GetRelativePath(from, path);
        if (Built(place)) continue;
        var target = Path.Combine(to, place);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.Copy(path, target, true);
    }
}

static bool Built(string place) => place.Split(Path.DirectorySeparatorChar)[0] is "bin" or "obj";

static void Write(string path, string text)
{
    Directory.CreateDirectory(Path.GetDirectoryName(path)!);
    File.WriteAllText(path, text);
}

static (int Code, string Output) Run(string program, string[] arguments, int mutant, string seen, int milliseconds)
{
    var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
    start.Environment["NOTEBOOKKIT_MUTANT"] = mutant.ToString(CultureInfo.InvariantCulture);
    start.Environment["NOTEBOOKKIT_MUTANTS_SEEN"] = seen;
    using var process = Process.Start(start)!;
    process.ErrorDataReceived += (_, _) => { };
    process.BeginErrorReadLine();
    var output = process.StandardOutput.ReadToEndAsync();
    if (process.WaitForExit(milliseconds)) return (process.ExitCode, output.Result);
    process.Kill(true);
    return (-1, "");
}
