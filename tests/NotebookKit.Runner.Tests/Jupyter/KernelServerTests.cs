using System.Globalization;
using System.Text.Json.Nodes;
using NetMQ;
using NetMQ.Sockets;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>One kernel for the tests that don't end it.</summary>
public sealed class SharedKernel : IAsyncLifetime
{
    internal KernelUnderTest Kernel { get; private set; } = null!;

    public Task InitializeAsync()
    {
        Kernel = KernelUnderTest.Start();
        return Task.CompletedTask;
    }

    public async Task DisposeAsync() => await Kernel.DisposeAsync();
}

public sealed class KernelServerTests(SharedKernel shared) : IClassFixture<SharedKernel>
{
    private readonly KernelUnderTest kernel = shared.Kernel;

    [Fact]
    public void A_cell_is_answered_with_busy_input_result_and_idle()
    {
        var (reply, published) = kernel.Run("6 * 7");
        Assert.Equal("ok", (string?)reply["status"]);
        Assert.True((int?)reply["execution_count"] > 0);
        Assert.Equal(["status", "execute_input", "execute_result", "status"], published.Select(m => m.Type));
        Assert.Equal("42", (string?)published[2].Content["data"]!["text/plain"]);
        Assert.Equal((int?)reply["execution_count"], (int?)published[2].Content["execution_count"]);
        Assert.Equal((int?)reply["execution_count"] + 1, (int?)kernel.Run("1").Reply["execution_count"]);
    }

    [Fact]
    public void A_chart_comes_as_an_object_with_html_that_draws_and_plain_words()
    {
        var (_, published) = kernel.Run("LineChart.Draw(\"Height\", new Series(\"time\", \"s\", [0.0, 1.0]), new Series(\"height\", "
            + "\"m\", [0.0, 2.0]))");
        var data = published.Single(m => m.Type == "execute_result").Content["data"]!;
        Assert.IsType<JsonObject>(data["application/vnd.plotly.v1+json"]);
        Assert.Contains("Plotly.newPlot", (string?)data["text/html"], StringComparison.Ordinal);
        Assert.Contains("Height", (string?)data["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_failing_cell_drops_those_that_wait_and_marks_the_line()
    {
        var first = kernel.Send("execute_request", KernelUnderTest.Execute("var a = 1;\nthrow new InvalidOperationException(\"as "
            + "asked\");"));
        var second = kernel.Send("execute_request", KernelUnderTest.Execute("2"));
        var reply = kernel.Reply(first);
        Assert.Equal("error", (string?)reply["status"]);
        Assert.Equal("InvalidOperationException", (string?)reply["ename"]);
        Assert.Contains(reply["traceback"]!.AsArray(), l => ((string?)l)!.Contains("line 2 > throw", StringComparison.Ordinal));
        Assert.Equal("aborted", (string?)kernel.Reply(second)["status"]);
        Assert.Equal("3", kernel.Value("3"));
    }

    [Fact]
    public void Silent_cells_neither_count_nor_show_their_value()
    {
        var before = (int?)kernel.Run("1").Reply["execution_count"];
        var content = KernelUnderTest.Execute("Console.WriteLine(\"unheard\"); display(\"unseen\");\n40 + 2");
        content["silent"] = true;
        content["user_expressions"] = new JsonObject { ["sum"] = "1 + 2", ["wrong"] = "nowhere" };
        var id = kernel.Send("execute_request", content);
        var reply = kernel.Reply(id);
        Assert.Equal(before, (int?)reply["execution_count"]);
        Assert.Equal("3", (string?)reply["user_expressions"]!["sum"]!["data"]!["text/plain"]);
        Assert.Equal("error", (string?)reply["user_expressions"]!["wrong"]!["status"]);
        Assert.All(kernel.Published(id), m => Assert.Equal("status", m.Type));
    }

    [Fact]
    public void A_cell_that_is_not_stored_shows_its_value_and_does_not_count()
    {
        var before = (int?)kernel.Run("1").Reply["execution_count"];
        var content = KernelUnderTest.Execute("40 + 2");
        content["store_history"] = false;
        var id = kernel.Send("execute_request", content);
        Assert.Equal(before, (int?)kernel.Reply(id)["execution_count"]);
        Assert.Equal("42", (string?)kernel.Published(id).Single(m => m.Type == "execute_result").Content["data"]!["text/plain"]);
        Assert.Equal(before + 1, (int?)kernel.Run("2").Reply["execution_count"]);
    }

    [Fact]
    public void Without_stop_on_error_those_that_wait_run_all_the_same()
    {
        var content = KernelUnderTest.Execute("throw new InvalidOperationException(\"as asked\");");
        content["stop_on_error"] = false;
        var first = kernel.Send("execute_request", content);
        var second = kernel.Send("execute_request", KernelUnderTest.Execute("2"));
        Assert.Equal("error", (string?)kernel.Reply(first)["status"]);
        Assert.Equal("ok", (string?)kernel.Reply(second)["status"]);
    }

    [Fact]
    public void A_display_is_updated_in_place()
    {
        var (_, published) = kernel.Run(
            "using Microsoft.DotNet.Interactive;\nvar shown = KernelInvocationContextExtensions.Display(KernelInvocationContext.Current, "
                + "\"0 %\", \"text/plain\");\nshown.Update(\"100 %\");");
        var first = published.Single(m => m.Type == "display_data");
        var update = published.Single(m => m.Type == "update_display_data");
        Assert.Equal((string?)first.Content["transient"]!["display_id"], (string?)update.Content["transient"]!["display_id"]);
        Assert.Equal("100 %", (string?)update.Content["data"]!["text/plain"]);
    }

    [Fact]
    public void A_progress_bar_grows_in_place()
    {
        var (reply, published) = kernel.Run("var bar = ProgressBar.Show(\"Flights <all>\", 400);\nParallel.For(1, 401, i => { "
            + "Thread.Sleep(1); bar.Report(i); });\nbar.Report(400); bar.Report(3);");
        Assert.Equal("ok", (string?)reply["status"]);
        var first = published.Single(m => m.Type == "display_data");
        Assert.Equal("Flights <all>: 0 of 400", (string?)first.Content["data"]!["text/plain"]);
        var updates = published.Where(m => m.Type == "update_display_data").ToList();
        Assert.All(updates, u => Assert.Equal((string?)first.Content["transient"]!["display_id"],
            (string?)u.Content["transient"]!["display_id"]));
        Assert.Equal("Flights <all>: 400 of 400", (string?)updates[^1].Content["data"]!["text/plain"]);
        Assert.Contains("<progress value=\"400\" max=\"400\"></progress> Flights &lt;all&gt;",
            (string?)updates[^1].Content["data"]!["text/html"], StringComparison.Ordinal);
        Assert.InRange(updates.Count, 1, 40);
    }

    [Fact]
    public void A_long_verb_of_the_library_shows_its_progress_and_stops_when_asked()
    {
        // As a front-end starts it: in the notebook's folder, where the design's file lies.
        var folder = Path.Combine(TestFolder.Repository, "notebooks");
        kernel.Run($"System.IO.Directory.SetCurrentDirectory(@\"{folder}\");");
        Assert.Equal("ok", (string?)kernel.Run($"#load \"{Path.Combine(folder, "curlew.csx")}\"").Reply["status"]);
        var (_, published) = kernel.Run("_ = curlew.Disperse(site, new Spread(), flights: 60, seed: 7, progress: "
            + "ProgressBar.Show(\"Flights\", 60));");
        Assert.Equal("Flights: 60 of 60", (string?)published.Last(m => m.Type == "update_display_data").Content["data"]!["text/plain"]);

        // Minutes of it: only a stop on request ends this cell with its session alive.
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("_ = curlew.Disperse(site, new Spread(), flights: "
            + "1_000_000, seed: 7);"));
        kernel.NextPublished(id, "display_data");
        kernel.Send("interrupt_request", [], viaControl: true);
        Assert.Equal("The cell was stopped on request.", (string?)kernel.Reply(id)["evalue"]);
        Assert.Equal("Curlew", kernel.Value("curlew.Name"));
    }

    [Fact]
    public void A_cell_can_ask_its_reader()
    {
        var content = KernelUnderTest.Execute("Console.ReadLine() + \"!\"");
        content["allow_stdin"] = true;
        var id = kernel.Send("execute_request", content);
        Assert.Equal("input_request", kernel.Question().Type);
        kernel.AnswerInput("typed");
        Assert.Equal("ok", (string?)kernel.Reply(id)["status"]);
        Assert.Equal("typed!", (string?)kernel.Published(id).Single(m => m.Type == "execute_result").Content["data"]!["text/plain"]);
    }

    [Fact]
    public void Names_are_completed_and_described_with_their_documentation()
    {
        var completed = kernel.Reply(kernel.Send("complete_request",
            new JsonObject { ["code"] = "var s = \"🚀\"; 63.Millim", ["cursor_pos"] = 22 }));
        Assert.Contains("Millimetres", completed["matches"]!.AsArray().Select(m => (string?)m));
        Assert.Equal(16, (int?)completed["cursor_start"]);
        Assert.Equal(22, (int?)completed["cursor_end"]);

        var described = kernel.Reply(kernel.Send("inspect_request",
            new JsonObject { ["code"] = "GaugePressure.FromBar", ["cursor_pos"] = 18, ["detail_level"] = 0 }));
        Assert.True((bool?)described["found"]);
        Assert.Contains("From bar", (string?)described["data"]!["text/plain"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1 + 1", "complete")]
    [InlineData("int F(int a)\n{", "incomplete")]
    [InlineData("var a = );", "invalid")]
    public void Code_is_judged_whole_or_not(string code, string status) =>
        Assert.Equal(status, (string?)kernel.Reply(kernel.Send("is_complete_request", new JsonObject { ["code"] = code }))["status"]);

    [Fact]
    public void Inputs_are_remembered()
    {
        kernel.Run("1 * 11");
        var count = (int?)kernel.Run("22").Reply["execution_count"];
        var tail = kernel.Reply(kernel.Send("history_request",
            new JsonObject { ["hist_access_type"] = "tail", ["n"] = 1, ["output"] = false, ["raw"] = true }));
        Assert.Equal("22", (string?)tail["history"]![0]![2]);
        JsonObject Range(int session) => new() { ["hist_access_type"] = "range", ["session"] = session, ["start"] = 1, ["stop"] = 1000,
            ["output"] = false, ["raw"] = true };
        Assert.Empty(kernel.Reply(kernel.Send("history_request", Range(-1)))["history"]!.AsArray());
        Assert.NotEmpty(kernel.Reply(kernel.Send("history_request", Range(0)))["history"]!.AsArray());
        var found = kernel.Reply(kernel.Send("history_request",
            new JsonObject { ["hist_access_type"] = "search", ["pattern"] = "1 ? 11", ["output"] = false, ["raw"] = true }));
        Assert.Equal(count - 1, (int?)Assert.Single(found["history"]!.AsArray())![1]);
    }

    [Fact]
    public void An_unknown_comm_target_is_closed_again()
    {
        var id = kernel.Send("comm_open", new JsonObject { ["comm_id"] = "c", ["target_name"] = "unknown", ["data"] = new JsonObject() });
        Assert.Equal("c", (string?)kernel.Published(id).Single(m => m.Type == "comm_close").Content["comm_id"]);
        Assert.Empty(kernel.Reply(kernel.Send("comm_info_request", []))["comms"]!.AsObject());
    }

    [Theory, Trait("Length", "long")]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_moved_slider_runs_the_computation_in_both_dialects_and_the_latest_value_wins(bool old)
    {
        await using var kernel = KernelUnderTest.Start();
        if (old)
        {
            var hello = kernel.Send("comm_open", new JsonObject { ["comm_id"] = "version", ["target_name"] = "jupyter.widget.version",
                ["data"] = new JsonObject() });
            Assert.Equal("~2.1.4", (string?)kernel.Published(hello).Single(m => m.Type == "comm_msg").Content["data"]!["version"]);
        }

        var (_, shown) = kernel.Run(
            """
            var asked = 0;
            Explorer.Build("Thrown upward", new Axis("time", "s"), new Axis("height", "m"), [new ExplorerParameter("Speed", "m/s", 1, 9, 5, 3)], [new ExplorerNumber("Square", "m")],
                s => { Interlocked.Increment(ref asked); return new ExplorerState { X = [0, 1], Y = [0, s[0]], Numbers = [s[0] * s[0]] }; }).Live()
            """);
        var opened = shown.Where(m => m.Type == "comm_open").ToList();
        var states = opened.Select(m => (Id: (string)m.Content["comm_id"]!,
            State: (old ? m.Content["data"] : m.Content["data"]!["state"])!.AsObject())).ToList();
        var slider = states.Single(s => (string?)s.State["_model_name"] == "FloatSliderModel");
        Assert.Equal(old ? "jupyter-js-widgets" : "@jupyter-widgets/controls", (string?)slider.State["_model_module"]);
        Assert.StartsWith("2.", (string?)opened[0].Metadata["version"], StringComparison.Ordinal);
        var data = shown.Single(m => m.Type == "execute_result").Content["data"]!.AsObject();
        Assert.Equal(states[^1].Id, (string?)data["application/vnd.jupyter.widget-view+json"]!["model_id"]);
        Assert.Equal(!old, data.ContainsKey("text/html"));

        var before = int.Parse(kernel.Value("asked")!, System.Globalization.CultureInfo.InvariantCulture);
        var busy = kernel.Send("execute_request", KernelUnderTest.Execute("Console.ReadLine();", asks: true));
        kernel.Question();
        var moves = Enumerable.Range(1, 30).Select(i => kernel.Send("comm_msg", new JsonObject
        {
            ["comm_id"] = slider.Id,
            ["data"] = old
                ? new JsonObject { ["method"] = "backbone", ["sync_data"] = new JsonObject { ["value"] = 3 + (i / 10.0) } }
                : new JsonObject { ["method"] = "update", ["state"] = new JsonObject { ["value"] = 3 + (i / 10.0) },
                    ["buffer_paths"] = new JsonArray() },
        })).ToList();
        // They wait behind the cell: the front looks at its sockets in turn, so it has read them when it has answered this often elsewhere.
        for (var i = 0; i < 20; i++) kernel.Reply(kernel.Send("kernel_info_request", [], viaControl: true), viaControl: true);
        kernel.AnswerInput("");
        kernel.Reply(busy);
        var answers = kernel.Published(moves[^1]).Where(m => m.Type == "comm_msg").ToList();
        Assert.Contains("36 m", (string?)answers[^1].Content["data"]!["state"]!["value"], StringComparison.Ordinal);
        var computed = int.Parse(kernel.Value("asked")!, System.Globalization.CultureInfo.InvariantCulture) - before;
        Assert.InRange(computed, 1, 5);
    }

    [Theory, Trait("Length", "long")]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_choice_and_buttons_are_answered_in_both_dialects(bool old)
    {
        await using var kernel = KernelUnderTest.Start();
        if (old) kernel.Published(kernel.Send("comm_open", new JsonObject { ["comm_id"] = "version",
            ["target_name"] = "jupyter.widget.version", ["data"] = new JsonObject() }));
        var (_, shown) = kernel.Run(
            """
            Explore.Over("Square", ExplorerInput.Between("Side", 1.Metres(), 3.Metres()), ExplorerInput.Among("How many", [("one", 1), ("two", 2), ("none", 0)]),
                (side, n) => n == 0 ? throw new InvalidOperationException("<divided> by none") : Explored.Curve(new Series("x", "m", [0, 1]), new Series("y", "m", [0, n])).With("Area", side * side * n))
            """);
        // It must fail where nobody catches it: a model may refuse, not break.
        Assert.Contains(shown, m => m.Type == "error");

        (_, shown) = kernel.Run(
            """
            var broken = 0;
            Explore.Over("Square", ExplorerInput.Between("Side", 1.Metres(), 3.Metres()), ExplorerInput.Among("How many", [("one", 1), ("two", 2)]),
                (side, n) => broken > 0 ? throw new InvalidOperationException("<broken> later") : Explored.Curve(new Series("x", "m", [0, 1]), new Series("y", "m", [0, n])).With("Area", side * side * n)).Live()
            """);
        var states = shown.Where(m => m.Type == "comm_open")
            .Select(m => (Id: (string)m.Content["comm_id"]!,
                State: (old ? m.Content["data"] : m.Content["data"]!["state"])!.AsObject())).ToList();
        var list = states.Single(s => (string?)s.State["_model_name"] == "DropdownModel");
        Assert.Equal(["one", "two"], list.State["_options_labels"]!.AsArray().Select(l => (string?)l));
        Assert.Equal(old ? null : 0, (int?)list.State["index"]);
        Assert.Equal(old ? "one" : null, (string?)list.State["value"]);
        var buttons = states.Where(s => (string?)s.State["_model_name"] == "ButtonModel").ToList();
        Assert.Equal(2, buttons.Count);

        Assert.Contains("8 m²", Answer(Pick(1)), StringComparison.Ordinal);
        Assert.Contains("2 m, two", Answer(Press(1)), StringComparison.Ordinal);
        Assert.Contains("<td>8 m²</td>", Answer(Pick(0)), StringComparison.Ordinal);
        Pick(1);
        var back = kernel.Published(Press(0)).Where(m => m.Type == "comm_msg").ToList();
        var told = back.Single(m => (string?)m.Content["comm_id"] == list.Id).Content["data"]!["state"]!.AsObject();
        Assert.Equal(old ? "one" : "0", told[old ? "value" : "index"]!.ToString());
        var answer = (string?)back[^1].Content["data"]!["state"]!["value"];
        Assert.Contains("4 m²", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("2 m, two", answer, StringComparison.Ordinal);

        kernel.Run("broken = 1;");
        Assert.Contains("&lt;broken&gt; later", Answer(Pick(1)), StringComparison.Ordinal);
        Assert.Equal("1", kernel.Value("broken"));

        string Pick(int place) => kernel.Send("comm_msg", new JsonObject
        {
            ["comm_id"] = list.Id,
            ["data"] = old
                ? new JsonObject { ["method"] = "backbone", ["sync_data"] = new JsonObject { ["value"] = place == 0 ? "one" : "two" } }
                : new JsonObject { ["method"] = "update", ["state"] = new JsonObject { ["index"] = place },
                    ["buffer_paths"] = new JsonArray() },
        });
        string Press(int which) => kernel.Send("comm_msg", new JsonObject
        {
            ["comm_id"] = buttons[which].Id, ["data"] = new JsonObject { ["method"] = "custom",
                ["content"] = new JsonObject { ["event"] = "click" } },
        });
        string Answer(string id) => (string)kernel.Published(id).Last(m => m.Type == "comm_msg").Content["data"]!["state"]!["value"]!;
    }

    [Fact, Trait("Length", "long")]
    public async Task A_stuck_drag_is_interrupted_and_its_session_replaced()
    {
        await using var kernel = KernelUnderTest.Start();
        kernel.Run("var stuck = false;");
        var (_, shown) = kernel.Run(
            """
            Explore.Over("Square", ExplorerInput.Between("Side", 1.Metres(), 3.Metres()), side => { if (stuck) { Console.WriteLine("stuck"); while (true) { } } return Explored.Curve(new Series("x", "m", [0, 1]), new Series("y", "m", [0, 1])); }).Live()
            """);
        var slider = shown.Where(m => m.Type == "comm_open").Single(m => (string?)m.Content["data"]!["state"]!["_model_name"] ==
            "FloatSliderModel");
        var cell = kernel.Send("execute_request", KernelUnderTest.Execute("stuck = true;"));
        kernel.Published(cell);
        var id = kernel.Send("comm_msg", new JsonObject
        {
            ["comm_id"] = slider.Content["comm_id"]!.DeepClone(),
                ["data"] = new JsonObject { ["method"] = "update", ["state"] = new JsonObject { ["value"] = 2.5 },
                ["buffer_paths"] = new JsonArray() },
        });
        // What is printed between two cells is shown with the one before.
        kernel.NextPublished(cell, "stream");
        kernel.Send("interrupt_request", [], viaControl: true);
        var said = kernel.Published(id);
        Assert.Contains("Variables are lost", (string?)said.Single(m => m.Type == "error").Content["evalue"], StringComparison.Ordinal);
        Assert.Contains(said, m => m.Type == "comm_close");
        Assert.Equal("2", kernel.Value("1 + 1"));
        Assert.Empty(kernel.Reply(kernel.Send("comm_info_request", []))["comms"]!.AsObject());
    }

    [Fact, Trait("Length", "long")]
    public async Task Controls_that_a_front_end_closes_are_forgotten_and_others_are_listed_by_target()
    {
        await using var kernel = KernelUnderTest.Start();
        var (_, shown) = kernel.Run("Explore.Over(\"Square\", ExplorerInput.Between(\"Side\", 1.Metres(), 3.Metres()), s => "
            + "Explored.Curve(new Series(\"x\", \"m\", [0, 1]), new Series(\"y\", \"m\", [0, 1]))).Live()");
        var opened = shown.Count(m => m.Type == "comm_open");
        Assert.Equal(opened, Comms("jupyter.widget"));
        Assert.Equal(opened, Comms(null));
        Assert.Equal(0, Comms("another"));
        kernel.Published(kernel.Send("comm_close", new JsonObject {
            ["comm_id"] = (string?)shown.First(m => m.Type == "comm_open").Content["comm_id"], ["data"] = new JsonObject() }));
        Assert.Equal(opened - 1, Comms(null));

        int Comms(string? target) => kernel.Reply(kernel.Send("comm_info_request",
            target is null ? [] : new JsonObject { ["target_name"] = target }))["comms"]!.AsObject().Count;
    }

    [Fact]
    public void An_interrupt_stops_a_cell_that_can_be_stopped_and_keeps_variables()
    {
        kernel.Run("var kept = 41;");
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("Console.WriteLine(\"waits\"); await Task.Delay(-1);"));
        kernel.NextPublished(id, "stream");
        kernel.Reply(kernel.Send("interrupt_request", [], viaControl: true), viaControl: true);
        Assert.Equal("Interrupted", (string?)kernel.Reply(id)["ename"]);
        Assert.Equal("42", kernel.Value("kept + 1"));
    }

    [Fact, Trait("Length", "long")]
    public void A_dispersion_shows_how_far_it_is_and_stops_when_asked()
    {
        // The vehicle of the fixture, flown longer than anybody waits.
        kernel.Run(NotebookFile.Read(TestFolder.Fixture("scatters.ipynb")).CodeCells.First().Source);
        kernel.Run("var kept = 41;");
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("trainer.Disperse(site, new Spread(), flights: "
            + "1_000_000, seed: 1)"));
        var first = kernel.NextPublished(id, "display_data");
        Assert.Matches(@"^\d+ of 1000000 flights$", (string?)first.Content["data"]!["text/plain"]);
        kernel.Reply(kernel.Send("interrupt_request", [], viaControl: true), viaControl: true);
        Assert.Equal("Interrupted", (string?)kernel.Reply(id)["ename"]);
        Assert.Equal("42", kernel.Value("kept + 1"));
    }

    [Fact]
    public void Progress_is_one_line_that_is_updated_in_place_to_its_end()
    {
        var (_, published) = kernel.Run("for (var i = 1; i <= 12; i++) { NotebookKit.Numerics.WorkRun.Current.Tell(new(\"flights\", i, "
            + "12)); Thread.Sleep(100); }");
        var first = published.Single(m => m.Type == "display_data");
        var last = published.Last(m => m.Type == "update_display_data");
        Assert.Equal((string?)first.Content["transient"]!["display_id"], (string?)last.Content["transient"]!["display_id"]);
        Assert.Equal("12 of 12 flights", (string?)last.Content["data"]!["text/plain"]);
    }

    [Fact]
    public void An_interrupt_replaces_a_stuck_worker_and_says_what_is_lost()
    {
        var count = (int?)kernel.Run("var lost = 1;").Reply["execution_count"];
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("Console.WriteLine(\"stuck\"); while (true) { }"));
        kernel.NextPublished(id, "stream");
        kernel.Send("interrupt_request", [], viaControl: true);
        var message = (string?)kernel.Reply(id)["evalue"];
        Assert.Contains("Variables are lost: run these cells again, in order: ", message, StringComparison.Ordinal);
        Assert.EndsWith($"[{count}].", message, StringComparison.Ordinal);
        Assert.Equal("2", kernel.Value("1 + 1"));
        Assert.Equal("error", (string?)kernel.Run("lost").Reply["status"]);
    }

    [Fact]
    public void A_cell_that_ends_its_process_does_not_end_the_kernel()
    {
        var (reply, _) = kernel.Run("Environment.FailFast(\"gone\");");
        Assert.Contains("The session was replaced by a fresh one.", (string?)reply["evalue"], StringComparison.Ordinal);
        Assert.Equal("2", kernel.Value("1 + 1"));
    }

    [Fact, Trait("Length", "long")]
    public async Task A_session_that_died_between_two_cells_is_not_laid_on_the_second()
    {
        using var worker = System.Diagnostics.Process.GetProcessById(int.Parse(kernel.Value("Environment.ProcessId")!,
            CultureInfo.InvariantCulture));
        worker.Kill();
        await worker.WaitForExitAsync();
        var message = (string?)kernel.Run("1 + 1").Reply["evalue"];
        Assert.StartsWith("The session's process had ended before this cell began", message, StringComparison.Ordinal);
        Assert.Equal("2", kernel.Value("1 + 1"));
    }

    [Fact, Trait("Length", "long")]
    public void A_cell_that_ran_twice_is_told_once_by_its_latest_number_where_it_ran_first()
    {
        kernel.Run("Environment.FailFast(\"fresh\");");
        var first = RunCell("a", "var a = 1;");
        var second = RunCell("b", "var b = a;");
        var third = RunCell("a", "a = 2;");
        Assert.True(first < second && second < third);
        var message = (string?)kernel.Run("Environment.FailFast(\"gone\");").Reply["evalue"];
        Assert.EndsWith($"in order: [{third}], [{second}].", message, StringComparison.Ordinal);

        int? RunCell(string cell, string code)
        {
            var id = kernel.Send("execute_request", KernelUnderTest.Execute(code), metadata: new JsonObject { ["cellId"] = cell });
            return (int?)kernel.Reply(id)["execution_count"];
        }
    }

    [Fact]
    public void An_interrupted_loop_that_awaits_and_never_looks_goes_on_no_more_and_may_clear_up()
    {
        var id = kernel.Send("execute_request", KernelUnderTest.Execute(
            "Console.WriteLine(\"goes\");\n"
                + "while (true) { await Task.Delay(20); AppContext.SetData(\"rounds\", Environment.TickCount64); }"));
        var other = "AppContext.GetData(\"rounds\")";
        kernel.NextPublished(id, "stream");
        kernel.Send("interrupt_request", [], viaControl: true);
        Assert.Equal("Interrupted", (string?)kernel.Reply(id)["ename"]);
        // It may take its last round meanwhile; then it stands, however long one looks.
        var then = kernel.Value(Still(other));
        Assert.Equal(then, kernel.Value(Still(other)));

        id = kernel.Send("execute_request", KernelUnderTest.Execute(
            "Console.WriteLine(\"goes\");\n"
                + "try { await Task.Delay(-1, Microsoft.DotNet.Interactive.KernelInvocationContext.Current.CancellationToken); } finally { "
                + "await Task.Yield(); AppContext.SetData(\"cleared\", 1); }"));
        kernel.NextPublished(id, "stream");
        kernel.Send("interrupt_request", [], viaControl: true);
        Assert.Equal("Interrupted", (string?)kernel.Reply(id)["ename"]);
        Assert.Equal("1", kernel.Value("while (AppContext.GetData(\"cleared\") is null) await Task.Delay(20);\n"
            + "AppContext.GetData(\"cleared\")"));

        static string Still(string value) => $"await Task.Delay(1500);\n{value}";
    }

    [Fact, Trait("Length", "long")]
    public void What_a_task_prints_after_its_cell_has_ended_is_shown_with_the_cell()
    {
        // Also after a cell that was stopped while it waited.
        var waits = kernel.Send("execute_request", KernelUnderTest.Execute("Console.WriteLine(\"waits\"); await Task.Delay(-1);"));
        kernel.NextPublished(waits, "stream");
        kernel.Send("interrupt_request", [], viaControl: true);
        Assert.Equal("Interrupted", (string?)kernel.Reply(waits)["ename"]);
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("var gate = new TaskCompletionSource(); "
            + "_ = gate.Task.ContinueWith(_ => Task.Delay(2000).ContinueWith(_ => Console.WriteLine(\"late\"))); "
            + "Console.WriteLine(\"now\");"));
        Assert.Equal("now\n", (string?)kernel.NextPublished(id, "stream").Content["text"]);
        kernel.Reply(id);
        var opens = kernel.Send("execute_request", KernelUnderTest.Execute("gate.SetResult();"));
        kernel.Reply(opens);
        Assert.Equal("late\n", (string?)kernel.NextPublished(opens, "stream").Content["text"]);
    }

    [Fact]
    public async Task A_client_that_reads_late_gets_every_reply()
    {
        await using var fresh = KernelUnderTest.Start();
        var asked = new List<string>();
        for (var i = 0; i < 10_000; i++) asked.Add(fresh.Send("kernel_info_request", []));
        foreach (var id in asked) Assert.Equal("ok", (string?)fresh.Reply(id)["status"]);
    }

    [Fact]
    public void The_cell_after_a_storm_of_interrupts_runs()
    {
        for (var round = 0; round < 5; round++)
        {
            var id = kernel.Send("execute_request", KernelUnderTest.Execute("Console.WriteLine(\"waits\"); await Task.Delay(-1);"));
            kernel.NextPublished(id, "stream");
            var storm = Enumerable.Range(0, 50).Select(_ => kernel.Send("interrupt_request", [], viaControl: true)).ToList();
            Assert.Equal("Interrupted", (string?)kernel.Reply(id)["ename"]);
            // Every interrupt is answered: none is left for the next cell.
            foreach (var one in storm) kernel.Reply(one, viaControl: true);
            Assert.Equal("2", kernel.Value("1 + 1"));
        }
    }

    [Fact]
    public async Task A_session_that_is_closed_while_its_worker_starts_does_not_wait_for_it()
    {
        var session = new KernelSession(Path.GetTempPath(), _ => { });
        await session.DisposeAsync();
        Assert.True(session.Up.IsCanceled);
    }

    [SkippableFact]
    public void What_another_program_writes_to_the_workers_output_costs_no_reply()
    {
        Skip.If(OperatingSystem.IsWindows(), "Starts a POSIX program.");
        Assert.Equal("ok", (string?)kernel.Run("System.Diagnostics.Process.Start(\"printf\", "
            + "\"no-line-end\").WaitForExit();").Reply["status"]);
        Assert.Equal("3", kernel.Value("System.Diagnostics.Process.Start(\"printf\", \"no-line-end\").WaitForExit(); 3"));
    }

    [Fact]
    public void Garbage_and_forged_messages_are_dropped()
    {
        kernel.SendRaw([[0, 1, 2]]);
        kernel.SendRaw(["<IDS|MSG>"u8.ToArray(), "nonsense"u8.ToArray(), "{}"u8.ToArray(), "{}"u8.ToArray(), "{}"u8.ToArray(),
            "{}"u8.ToArray()]);
        kernel.SendRaw(new WireFormat("forged").Write(JupyterMessage.New("x", "shutdown_request", null, [])));
        var odd = kernel.Send("execute_request", []);
        Assert.Equal("ok", (string?)kernel.Reply(odd)["status"]);
        kernel.Send("no_such_request", []);
        Assert.Equal("2", kernel.Value("1 + 1"));

        // Not even a message of the sockets' own protocol, at every port.
        var connection = kernel.Connection;
        var noise = new byte[4096];
        new Random(7).NextBytes(noise);
        foreach (var port in new[] { connection.ShellPort, connection.ControlPort, connection.StdinPort, connection.IopubPort,
            connection.HeartbeatPort })
        {
            using var raw = new System.Net.Sockets.TcpClient(connection.Ip, port);
            raw.GetStream().Write(noise);
        }

        Assert.Equal("2", kernel.Value("1 + 1"));
        Assert.False(kernel.Serving.IsCompleted);
    }

    [Fact]
    public void The_heart_beats_while_a_cell_runs()
    {
        var id = kernel.Send("execute_request", KernelUnderTest.Execute("Console.ReadLine();", asks: true));
        kernel.Question();
        using var heart = new RequestSocket();
        heart.Connect(kernel.Connection.AddressOf(kernel.Connection.HeartbeatPort));
        heart.SendFrame("ping");
        Assert.True(heart.TryReceiveFrameString(Patience.Limit, out var beat));
        Assert.Equal("ping", beat);
        kernel.AnswerInput("");
        kernel.Reply(id);
    }

    [Fact]
    public async Task A_shutdown_is_answered_and_ends_the_service()
    {
        await using var ended = KernelUnderTest.Start();
        var reply = ended.Reply(ended.Send("shutdown_request", new JsonObject { ["restart"] = false }, viaControl: true), viaControl: true);
        Assert.False((bool?)reply["restart"]);
        await ended.Serving.WaitAsync(Patience.Limit);
    }

    [Fact, Trait("Length", "long")]
    public async Task Two_kernels_do_not_disturb_each_other()
    {
        await using var other = KernelUnderTest.Start();
        kernel.Run("var name = \"one\";");
        other.Run("var name = \"two\";");
        Assert.Equal("one", kernel.Value("name"));
        Assert.Equal("two", other.Value("name"));
    }

    [Fact, Trait("Length", "long")]
    public void A_thousand_cells_leave_no_heap_behind()
    {
        kernel.Run("1");
        var before = Heap();
        var last = "";
        for (var i = 0; i < 1000; i++) last = kernel.Send("execute_request", KernelUnderTest.Execute("_ = 1;"));
        kernel.Reply(last);
        var grown = Heap() - before;
        // The compiler itself keeps about 0.1 MB a cell; what this guards against are the references carried again by each (0.8 MB a cell
        // and growing).
        Assert.InRange(grown, 0, 250);

        double Heap() => double.Parse(kernel.Value("(GC.GetTotalMemory(true) / 1e6).ToString()")!,
            System.Globalization.CultureInfo.InvariantCulture);
    }
}
