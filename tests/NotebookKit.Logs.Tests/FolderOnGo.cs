using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Logs.Tests;

/// <summary>A club's folder whose card says GO, to be attacked by a test. Demo data are invented.</summary>
public abstract class FolderOnGo : IDisposable
{
    protected const string Gear = """
        [ { "kind": "cylinder", "serial": "D-7", "rated to": "232 bar gauge" },
            { "kind": "regulator", "serial": "R-3", "rated to": "300 bar gauge" },
            { "kind": "fill valve", "serial": "V-1", "rated to": "100 bar gauge" },
            { "kind": "hose", "serial": "H-2", "rated to": "100 bar gauge" },
            { "kind": "restrictor", "serial": "O-5", "rated to": "100 bar gauge" },
            { "kind": "check valve", "serial": "N-1", "rated to": "100 bar gauge" },
            { "kind": "gauge", "serial": "G-4", "rated to": "100 bar gauge" },
            { "kind": "dump valve", "serial": "V-2", "rated to": "100 bar gauge" } ]
        """;

    protected const string WithoutLabel = $$"""
        { "day": "2026-05-02", "flight": "first", "changes": [ { "of": "site.wind.speed", "is": "3 m/s" },
            { "of": "site.wind.reference", "is": "10 m" } ], "gear": {{Gear}},
          "vessels": [ { "serial": "C-1", "wall temperature": "15 °C", "resin moisture": "0.5 %", "resin moisture by": "strip" } ] }
        """;

    protected string Folder { get; } = Directory.CreateTempSubdirectory("nk-card-").FullName;

    protected FolderOnGo()
    {
        foreach (var below in new[] { "vessels", "tests", "logs" }) Directory.CreateDirectory(In(below));
        Curlew.Write(In("design.json"));
        File.Copy(Path.Combine(Root(), "data-demo", "curlew-proof.csv"), In("logs", "proof.csv"));
        File.WriteAllText(In("day.json"), WithoutLabel);
        var record = ClubFolder.Read(Folder).Judge(In("logs", "proof.csv"));
        var proved = record.ToProvedVessel(Curlew.Rating);
        File.WriteAllText(In("vessels", "c1-2026-03-14.proof.json"), record.ToJson());
        var service = ServiceFile.Create(In("vessels", "c1.service.jsonl"), "Curlew", "C-1");
        static DateTimeOffset Morning(int month, int day) => new(2026, month, day, 8, 0, 0, TimeSpan.Zero);
        service.Append(new Made(new(2026, 2, 21), "batch 3") { At = Morning(2, 21) });
        service.Append(new Proved(proved.Day, proved.Held, Curlew.Rating.ProofPressure / Curlew.Rating.WorkingPressure, proved.RuleSet,
            proved.Fingerprint) { At = Morning(3, 15), Tests = Curlew.Stage.TestMarks });
        service.Append(new Inspected(InspectionResult.Sound) { At = Morning(5, 2) });
        Label = ServiceFile.Read(In("vessels", "c1.service.jsonl")).EndMark;
        File.WriteAllText(In("day.json"), Today);
    }

    protected string Label { get; }

    protected string Today => Labelled(Label);

    protected static Design Curlew { get; } = Design.Read(Path.Combine(Root(), "notebooks", "curlew.json"));

    public void Dispose()
    {
        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    protected static string Labelled(string label) => WithoutLabel.Replace("\"serial\": \"C-1\",",
        $"\"serial\": \"C-1\", \"label\": \"{label}\",",
        StringComparison.Ordinal);

    protected void Forbids(string says)
    {
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(says, StringComparison.Ordinal));
    }

    protected static string Refusal(Action action) => Assert.Throws<InvalidDesignException>(action).Message;

    protected string In(params string[] parts) => Path.Combine([Folder, .. parts]);

    protected static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}
