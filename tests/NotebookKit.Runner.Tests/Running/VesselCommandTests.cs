using NotebookKit.Clearance.Service;

namespace NotebookKit.Runner.Tests.Running;

[Trait("Length", "long")]
public sealed class VesselCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    private string Record => folder["curlew-c1.service.jsonl"];

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_vessel_is_followed_from_made_to_a_hard_landing()
    {
        await Ends(0, "Curlew C-1", "new", Record, "--vessel", "Curlew", "--serial", "C-1");
        await Ends(1, "The record has no proof of this vessel", "show", Record);
        await Ends(0, "made: day 2024-02-20, batch braid 12", "add", Record, "made", "--day", "2024-02-20", "--batch", "braid 12", "--at",
            "2024-03-01");
        await Ends(
            0, "held 54 bar gauge, factor 1.5", "add", Record, "proved", "--day", "2024-03-02", "--held", "54 bar gauge", "--factor",
                "1.5", "--rules", "Club rule", "--record", "9f2c", "--at", "2024-03-02");
        await Ends(
            0, "filled: pressure 36 bar gauge, temperature 18 °C, hold 120 s", "add", Record, "filled", "--pressure", "36 bar gauge",
                "--temperature", "18 °C", "--hold", "2 min", "--at",
            "2024-05-01T09:30:00Z", "--by", "A. Member");
        await Ends(0, "Allowed by the proof", "show", Record, "--on", "2024-05-01");
        await Ends(1, "overdue", "show", Record, "--on", "2025-05-01");
        await Ends(0, "proof-test it again before it is filled", "add", Record, "landed-hard", "--at", "2024-05-01");
        await Ends(1, "the vessel landed hard", "show", Record, "--on", "2024-05-02");
        await File.WriteAllTextAsync(Record, (await File.ReadAllTextAsync(Record)).Replace("36 bar", "26 bar", StringComparison.Ordinal));
        await Ends(1, "Line 4 was changed after it was written", "show", Record, "--on", "2024-05-02");
    }

    [Theory]
    [InlineData("doesn't say that a gauge read it", "filled", "--pressure", "36 bar", "--hold", "2 min")]
    [InlineData("isn't a kind of event known here", "exploded")]
    [InlineData("isn't a day or a time in UTC", "landed-hard", "--at", "1.5.2024")]
    [InlineData("lies in the future", "landed-hard", "--at", "2099-05-01")]
    public async Task An_event_that_makes_no_sense_is_refused_with_a_sentence(string sentence, params string[] arguments)
    {
        ServiceFile.Create(Record, "Curlew", "C-1");
        var before = await File.ReadAllBytesAsync(Record);
        await Ends(2, sentence, ["add", Record, .. arguments]);
        Assert.Equal(before, await File.ReadAllBytesAsync(Record));
    }

    // The line would carry the proof of the first vessel to a later one.
    [Fact]
    public async Task A_vessel_that_was_proved_is_not_made_a_second_time()
    {
        await Ends(0, "Curlew C-1", "new", Record, "--vessel", "Curlew", "--serial", "C-1");
        await Ends(0, "made: day 2024-02-20", "add", Record, "made", "--day", "2024-02-20", "--batch", "one", "--at", "2024-03-01");
        await Ends(0, "held 54 bar gauge", "add", Record, "proved", "--day", "2024-03-02", "--held", "54 bar gauge", "--factor", "1.5",
            "--rules", "Club rule", "--record", "9f2c", "--at", "2024-03-02");
        var before = await File.ReadAllBytesAsync(Record);
        await Ends(2, "give the later vessel a serial of its own", "add", Record, "made", "--day", "2024-04-20", "--batch", "two", "--at",
            "2024-05-01");
        Assert.Equal(before, await File.ReadAllBytesAsync(Record));
    }

    [Fact]
    public async Task A_record_that_is_not_there_or_is_there_already_is_refused()
    {
        await Ends(2, "There is no", "show", Record);
        ServiceFile.Create(Record, "Curlew", "C-1");
        await Ends(2, "is there already", "new", Record, "--vessel", "Curlew", "--serial", "C-1");
        await Ends(2, "Option '--serial' is required", "new", folder["other"], "--vessel", "Curlew");
    }

    private static async Task Ends(int code, string sentence, params string[] arguments)
    {
        var run = await ProgramRun.RunAsync(["vessel", .. arguments]);
        var said = (run.Output + run.Errors).ReplaceLineEndings(" ");
        Assert.Contains(sentence, said, StringComparison.Ordinal);
        Assert.Equal(code, run.ExitCode);
    }
}
