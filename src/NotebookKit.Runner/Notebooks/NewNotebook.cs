using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Notebooks;

/// <summary>The notebook of a vehicle of one's own: the design's check, vessel, flight and record.</summary>
internal static class NewNotebook
{
    private static readonly (bool IsCode, string Text)[] Cells =
    [
        (true, """
            var club = Design.Read("design.json").WithTests("tests").With(session.Givens);
            var design = new DesignRecordBuilder(club.Name, session.Givens);
            club.State(design);
            club.Check()
            """),
        (false, "## What the vessel holds, and what tests have shown"),
        (true, "foreach (var stage in club.Stages) display(stage.Vessel.Layup());"),
        (true, "foreach (var stage in club.Stages) display(stage.Rating);"),
        (false, "## The flight"),
        (true, "IResult flight = club.Stages.Count == 2 ? club.TwoStageVehicle.Fly(club.Site!) : club.Vehicle.Fly(club.Site!);\nflight"),
        (false, "## Vessels and logs in this folder"),
        (true, """
            var folder = ClubFolder.Read(".") with { Design = club };
            var looked = folder.Check(DateOnly.FromDateTime(DateTime.Today));
            foreach (var status in looked.Vessels) display(status);
            looked.Lines.Skip(looked.Design.Lines.Count)
            """),
        (false, "## The flight card\n\nIt rests on this folder: the design, the tests, the records of proofs and the service records in "
            + "vessels/, and day.json. It says NO-GO until every piece of evidence is shown, and says of each what is missing."),
        (true, "IResult card = folder.Card();\ncard"),
        (false, "## The record"),
        (true, "club.Check().Record"),
    ];

    /// <summary>Writes the notebook.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="name">Name of the vehicle.</param>
    public static void Write(string path, string name)
    {
        var cells = new JsonArray(
        [
            Cell(0, isCode: false, $"# {name}\n\nEverything is computed from [design.json](design.json). "
                + "Change a value there, and run this page again."),
            .. Cells.Select((c, i) => Cell(i + 1, c.IsCode, c.Text)),
        ]);
        var notebook = new JsonObject
        {
            ["cells"] = cells,
            ["metadata"] = new JsonObject
            {
                ["kernelspec"] = new JsonObject { ["display_name"] = "NotebookKit C#", ["language"] = "C#", ["name"] = "notebookkit" },
                ["language_info"] = new JsonObject { ["name"] = "C#", ["file_extension"] = ".cs", ["mimetype"] = "text/x-csharp" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
        AtomicFile.Write(path, notebook.ToJsonString(new() { WriteIndented = true }) + "\n");
    }

    private static JsonObject Cell(int number, bool isCode, string text)
    {
        var cell = new JsonObject
        {
            ["cell_type"] = isCode ? "code" : "markdown", ["id"] = FormattableString.Invariant($"own-{number:00}"),
            ["metadata"] = new JsonObject(),
        };
        if (isCode) (cell["execution_count"], cell["outputs"]) = (null, new JsonArray());
        var lines = text.Split('\n');
        cell["source"] = new JsonArray([.. lines.Select((l, i) => (JsonNode)(i < lines.Length - 1 ? l + "\n" : l))]);
        return cell;
    }
}
