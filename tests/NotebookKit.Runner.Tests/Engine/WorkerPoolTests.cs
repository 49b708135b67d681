using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests.Engine;

/// <summary>A worker takes another notebook only where the one before can't have left anything behind.</summary>
[Trait("Length", "long")]
public sealed class WorkerPoolTests : IDisposable
{
    // Cells that may leave something, and what names it.
    private static readonly (string Code, string Named)[] Leaving =
    [
        ("Environment.SetEnvironmentVariable(\"NK_LEFT\", \"1\");", "System.Environment.SetEnvironmentVariable"),
        ("Environment.CurrentDirectory = Environment.CurrentDirectory;", "System.Environment.set_CurrentDirectory"),
        ("Console.SetOut(Console.Error);", "System.Console.SetOut"),
        ("System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.InvariantCulture;",
            "System.Globalization.CultureInfo.set_CurrentCulture"),
        ("new Thread(() => { }).Start();", "System.Threading.Thread"),
        ("_ = Task.Run(() => 1);", "System.Threading.Tasks.Task.Run"),
        ("Func<Task<int>> later = async () => 1; _ = later().ContinueWith(t => 2);", "System.Threading.Tasks.Task`1.ContinueWith"),
        ("AppContext.SetData(\"left\", 1);", "System.AppContext"),
        ("_ = typeof(NotebookKit.Provenance.Finding).GetMethods();", "System.Type.GetMethods"),
        ("dynamic any = \"text\"; _ = any.Length;", "Microsoft.CSharp"),
        ("Microsoft.DotNet.Interactive.Formatting.Formatter.Register<double>(d => \"mine\");",
            "Microsoft.DotNet.Interactive.Formatting.Formatter"),
        ("[System.Runtime.InteropServices.DllImport(\"libc\")] static extern int getpid(); _ = getpid();", "native code"),
        ("var one = 1; System.Runtime.CompilerServices.Unsafe.As<int, uint>(ref one) = 2u;", "System.Runtime.CompilerServices.Unsafe.As"),
        ("_ = System.Runtime.InteropServices.MemoryMarshal.Cast<char, byte>(\"text\".AsSpan()).Length;",
            "System.Runtime.InteropServices.MemoryMarshal.Cast"),
        ("_ = NotebookKit.Numerics.WorkRun.Current;", "NotebookKit.Numerics.WorkRun"),
        ("UnitsNet.UnitAbbreviationsCache.Default.MapUnitToAbbreviation(UnitsNet.Units.LengthUnit.Meter, \"metri\");",
            "UnitsNet.UnitAbbreviationsCache"),
    ];

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_session_whose_cells_may_have_left_something_is_the_last_of_its_process()
    {
        await using var worker = await StartAsync();
        foreach (var (code, _) in Leaving) await RunAsync(worker, code);
        var why = await worker.RenewAsync(folder.Path, CancellationToken.None);
        Assert.NotNull(why);
        Assert.All(Leaving, l => Assert.Contains(l.Named, why, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_assembly_that_a_cell_referenced_ends_its_process()
    {
        await using var worker = await StartAsync();
        var copy = folder["NotebookKit.Ours.dll"];
        File.Copy(typeof(WorkerPoolTests).Assembly.Location, copy);
        await RunAsync(worker, $"#r \"{copy}\"\nobject held = typeof(NotebookKit.Runner.Tests.Engine.WorkerPoolTests);");
        Assert.Contains("NotebookKit.Runner.Tests", await worker.RenewAsync(folder.Path, CancellationToken.None), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_session_knows_nothing_of_the_one_before()
    {
        await using var worker = await StartAsync();
        await RunAsync(worker, """
            var bore = 63.Millimetres();
            record Row(string Name, double Value);
            var rows = Enumerable.Range(1, 3).Select(i => new Row($"row {i}", Math.Sqrt(i))).ToList();
            foreach (var row in rows) Console.WriteLine($"{row.Name}: {row.Value:0.0}");
            rows
            """);
        var other = Directory.CreateDirectory(folder["other"]).FullName;
        Assert.Null(await worker.RenewAsync(other, CancellationToken.None));
        var outcome = await worker.RunAsync("bore", _ => { }, CancellationToken.None);
        Assert.Equal(CellError.CompileError, outcome.Error?.Kind);
        Assert.Equal("other", await RunAsync(worker, "System.IO.Path.GetFileName(Environment.CurrentDirectory)"));
        Assert.Equal("True", await RunAsync(worker, "session.Batch is null"));
    }

    // Of more than four texts the compiler makes an array on the stack.
    [Fact]
    public async Task What_only_the_compiler_uses_leaves_nothing()
    {
        await using var worker = await StartAsync();
        Assert.Equal("a, b, c, d, e", await RunAsync(worker, """
            string[] t = ["a", "b", "c", "d", "e"];
            string.Concat(t[0], ", ", t[1], ", ", t[2] + ", " + t[3] + ", " + t[4])
            """));
        Assert.Null(await worker.RenewAsync(folder.Path, CancellationToken.None));
    }

    [Fact]
    public async Task What_the_library_refuses_is_no_fault()
    {
        var pool = new WorkerPool();
        var options = new WorkerOptions(folder.Path);
        try
        {
            string? first = null;
            await using (var engine = await pool.StartAsync(options, CancellationToken.None))
            {
                first = await RunAsync(engine, "Environment.ProcessId");
                var refused = await engine.RunAsync("new ValidRange<double>(1, 2).Check(3, \"bore\", \"Measure again.\");",
                    _ => { }, CancellationToken.None);
                Assert.Equal(CellStatus.Failed, refused.Status);
            }

            await using var next = await pool.StartAsync(options, CancellationToken.None);
            Assert.Equal(first, await RunAsync(next, "Environment.ProcessId"));
        }
        finally
        {
            await pool.EndAsync();
        }
    }

    [Fact]
    public async Task A_worker_that_saw_a_fault_takes_no_other_notebook()
    {
        var pool = new WorkerPool();
        var options = new WorkerOptions(folder.Path);
        try
        {
            var first = await IdAsync("");
            Assert.Equal(first, await IdAsync(""));
            Assert.Equal(first, await IdAsync("throw new InvalidOperationException();"));
            Assert.NotEqual(first, await IdAsync(""));
        }
        finally
        {
            await pool.EndAsync();
        }

        async Task<string?> IdAsync(string then)
        {
            await using var engine = await pool.StartAsync(options, CancellationToken.None);
            var id = await RunAsync(engine, "Environment.ProcessId");
            if (then.Length > 0) await engine.RunAsync(then, _ => { }, CancellationToken.None);
            return id;
        }
    }

    private Task<WorkerEngine> StartAsync() => WorkerEngine.StartAsync(new WorkerOptions(folder.Path), CancellationToken.None);

    private static async Task<string?> RunAsync(INotebookEngine engine, string code)
    {
        string? text = null;
        var outcome = await engine.RunAsync(code, o => text = o is ResultOutput shown ? (string?)shown.Data["text/plain"] : text,
            CancellationToken.None);
        Assert.True(outcome.Status == CellStatus.Succeeded, code + outcome.Error?.Message);
        return text;
    }
}
