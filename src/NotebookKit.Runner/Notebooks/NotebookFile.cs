using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Notebooks;

/// <summary>
/// A notebook file in the open notebook format, version 4. It is edited in place as JSON, so that whatever isn't outputs or execution
/// counts (ids, metadata, raw cells, attachments) survives.
/// </summary>
internal sealed class NotebookFile
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly JsonObject _json;

    private NotebookFile(string path, JsonObject json, IReadOnlyList<NotebookCell> cells)
    {
        Path = path;
        this._json = json;
        Cells = cells;
    }

    /// <summary>Where it was read from.</summary>
    public string Path { get; }

    /// <summary>File name without folder and ending.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>Its cells in order.</summary>
    public IReadOnlyList<NotebookCell> Cells { get; }

    /// <summary>The code cells that hold code.</summary>
    public IEnumerable<NotebookCell> CodeCells => Cells.Where(c => c.Number > 0);

    /// <summary>Reads a notebook.</summary>
    /// <param name="path">File.</param>
    /// <exception cref="NotebookFormatException">There is no such file, or it isn't a notebook of format 4.</exception>
    public static NotebookFile Read(string path)
    {
        string text;
        try
        {
            text = File.ReadAllText(path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new NotebookFormatException($"There is no file {path}. Name a notebook that exists (see the list command).");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or OutOfMemoryException)
        {
            throw new NotebookFormatException($"The file can't be read: {e.Message}");
        }

        return Parse(path, text);
    }

    /// <summary>Reads a notebook from its text.</summary>
    /// <param name="path">Where the text comes from.</param>
    /// <param name="text">Whole text of the file.</param>
    /// <exception cref="NotebookFormatException">It isn't a notebook of format 4.</exception>
    public static NotebookFile Parse(string path, string text)
    {
        if (NotebookJson.Read(text) is not JsonObject json || json["cells"] is not JsonArray cells
            || IntegerOf(json["nbformat"]) is not { } major)
            throw new NotebookFormatException("The file is JSON but not a notebook: it has no list of cells or no format number.");
        if (major != 4)
            throw new NotebookFormatException($"The notebook is of format {major}; only format 4 can be run. Save it again from a current "
                + $"front-end.");

        if (json["metadata"] is not (null or JsonObject))
            throw new NotebookFormatException("The notebook's metadata is not an object. Save the notebook again from a front-end.");

        var read = new List<NotebookCell>();
        var number = 0;
        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i] is not JsonObject cell || KindOf(cell) is not { } kind)
                throw new NotebookFormatException($"Entry {i + 1} in the list of cells is not a cell. Save the notebook again from a "
                    + $"front-end.");
            if (NotebookJson.Mistyped(cell) is { } mistyped)
                throw new NotebookFormatException($"Entry {i + 1} in the list of cells can't be read: {mistyped}. Save the notebook again "
                    + "from a front-end.");
            var holdsCode = kind == CellKind.Code && !string.IsNullOrWhiteSpace(NotebookCell.TextOf(cell["source"]));
            read.Add(new NotebookCell(cell, kind, holdsCode ? ++number : 0));
        }

        return new NotebookFile(path, json, read);
    }

    /// <summary>The whole text as it is stored, valid as format 4.5: every cell has an id, made from its place where it had none.</summary>
    public string ToText()
    {
        FillIds();
        return _json.ToJsonString(Layout) + "\n";
    }

    // Cell ids came with format 4.5; a file without them gets the same ones in every run.
    private void FillIds()
    {
        if ((IntegerOf(_json["nbformat_minor"]) ?? 0) < 5) _json["nbformat_minor"] = 5;
        _json["metadata"] ??= new JsonObject();
        var cells = _json["cells"]!.AsArray().Select(c => c!.AsObject()).ToList();
        var taken = cells.Select(c => NotebookCell.TextOf(c["id"])).Where(id => id.Length > 0).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < cells.Count; i++)
        {
            cells[i]["metadata"] ??= new JsonObject();
            if (NotebookCell.TextOf(cells[i]["id"]).Length > 0) continue;
            var id = $"cell-{i + 1}";
            while (!taken.Add(id)) id += "-x";
            cells[i]["id"] = id;
        }
    }

    private static CellKind? KindOf(JsonObject cell) => NotebookCell.TextOf(cell["cell_type"]) switch
    {
        "code" => CellKind.Code,
        "markdown" => CellKind.Markdown,
        "raw" => CellKind.Raw,
        _ => null,
    };

    private static int? IntegerOf(JsonNode? node) => node is JsonValue value && value.TryGetValue<int>(out var number) ? number : null;
}
