using NotebookKit.DesignFiles.Trees;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One reading of a design: what has been found so far.</summary>
internal sealed class Reading(string file, TreeNode root, TreeNode asRead)
{
    private const int MostMistakes = 20;

    private readonly List<DesignFileMistake> _mistakes = [];
    private readonly Dictionary<string, object> _once = new(StringComparer.Ordinal);

    public string File { get; } = file;

    public TreeNode Root { get; } = root;

    /// <summary>The design as its file has it, before any value was changed for a run: what its tests were made of.</summary>
    public TreeNode AsRead { get; } = asRead;

    /// <summary>The materials that names mean; the design's own are added as they are read.</summary>
    public MaterialLibrary Library { get; set; } = MaterialLibrary.Typical;

    public List<DesignGiven> Givens { get; } = [];

    public bool IsWrong => _mistakes.Count > 0;

    public void Say(Place at, string path, string sentence)
    {
        // What is read twice is wrong once.
        if (_mistakes.Count < MostMistakes && !_mistakes.Exists(m => (m.Line, m.Column, m.Sentence) == (at.Line, at.Column, sentence)))
            _mistakes.Add(new(at.Line, at.Column, path, sentence));
    }

    public void ThrowIfWrong()
    {
        if (IsWrong) throw new DesignFileException(File, [.. _mistakes.OrderBy(m => new Place(m.Line, m.Column))]);
    }

    /// <summary>What several parts of one design rest on, made once; what was read with mistakes is none and is made again, so that each
    /// place says its own.</summary>
    public T? Once<T>(string what, Func<T?> make) where T : class
    {
        if (_once.TryGetValue(what, out var made)) return (T)made;
        if (make() is not { } value) return null;
        _once[what] = value;
        return value;
    }

    /// <summary>A reading of a part of the design as its file has it, with the same materials, mistakes and givens of its own.</summary>
    public Reading Beside() => new(File, AsRead, AsRead) { Library = Library };

    /// <summary>Takes over what a reading beside it found wrong.</summary>
    public void TakeMistakes(Reading beside)
    {
        foreach (var m in beside._mistakes) Say(new(m.Line, m.Column), m.Path, m.Sentence);
    }
}
