using NotebookKit.DesignFiles.Trees;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One reading of a design: what has been found so far.</summary>
internal sealed class Reading
{
    private const int MostMistakes = 20;

    private readonly TreeNode _root;
    private readonly List<DesignFileMistake> _mistakes = [];
    private readonly List<DesignGiven> _givens = [];
    private readonly List<(string Path, TreeNode Found)> _takenOver = [];
    private readonly Dictionary<string, (object Value, Looked Looked)> _once = new(StringComparer.Ordinal);
    private KeptParts _kept = new();
    private KeptParts? _before;
    private MaterialLibrary _library = MaterialLibrary.Typical;
    private Looked _looked;

    /// <param name="file">Name of the file.</param>
    /// <param name="root">The design.</param>
    /// <param name="asRead">The design as its file has it.</param>
    /// <param name="before">Parts of the same design, of the same file, before a value was changed: those that the change leaves alone
    /// stand as they were read. None where everything is read anew.</param>
    public Reading(string file, TreeNode root, TreeNode asRead, KeptParts? before = null) =>
        (File, _root, AsRead, _before) = (file, root, asRead, before);

    public string File { get; }

    public TreeNode Root
    {
        get
        {
            _looked |= Looked.AtOthers;
            return _root;
        }
    }

    /// <summary>What stands at a path from which a value is taken over; none where nothing stands there.</summary>
    public TreeNode? TakeOver(string path)
    {
        if (TreePath.Find(_root, path) is not { } found) return null;
        _takenOver.Add((path, found));
        return found;
    }

    /// <summary>The design as its file has it, before any value was changed for a run: what its tests were made of.</summary>
    public TreeNode AsRead { get; }

    /// <summary>The materials that names mean; the design's own are added as they are read.</summary>
    public MaterialLibrary Library
    {
        get
        {
            _looked |= Looked.AtMaterials;
            return _library;
        }

        set => _library = value;
    }

    /// <summary>What was read so far.</summary>
    public IReadOnlyList<DesignGiven> Givens
    {
        get
        {
            _looked |= Looked.AtOthers;
            return _givens;
        }
    }

    public bool IsWrong => _mistakes.Count > 0;

    public void Add(DesignGiven given) => _givens.Add(given);

    /// <summary>Reads a part, or takes it over from the reading before where nothing that it is made of has changed.</summary>
    /// <param name="shape">What it is read by.</param>
    /// <param name="node">The part.</param>
    /// <param name="path">Where it stands.</param>
    /// <param name="read">Reads it; false where something is wrong.</param>
    /// <param name="value">What it means.</param>
    public bool TryKeep<T>(Shape<T> shape, TreeNode node, string path, Func<(bool Right, T Value)> read, out T value)
    {
        var library = _library;
        if (_before?.Find(shape, node, path, library, _root) is { } kept)
        {
            value = (T)kept.Value!;
            _givens.AddRange(kept.Givens);
            if (kept.Looked.HasFlag(Looked.AtMaterials)) _library = kept.LibraryAfter;
            _looked |= kept.Looked;
            _takenOver.AddRange(kept.TakenOver);
            _kept.Add(node, kept);
            return true;
        }

        var (outer, mistakes, first, taken) = (_looked, _mistakes.Count, _givens.Count, _takenOver.Count);
        _looked = Looked.AtItself;
        (var right, value) = read();
        if (right && _mistakes.Count == mistakes && !_looked.HasFlag(Looked.AtOthers))
            _kept.Add(node, new(shape, path, value, _givens[first..], _takenOver[taken..], _looked, library, _library));
        _looked |= outer;
        return right;
    }

    /// <summary>Ends the reading; gives the parts that stand where a value is changed.</summary>
    /// <exception cref="DesignFileException">Something is wrong.</exception>
    public KeptParts Finish()
    {
        ThrowIfWrong();
        // What was made keeps the reading: that holds on to no earlier one.
        var kept = _kept;
        (_kept, _before) = (new(), null);
        return kept;
    }

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
        if (_once.TryGetValue(what, out var made))
        {
            _looked |= made.Looked;
            return (T)made.Value;
        }

        var (outer, taken) = (_looked, _takenOver.Count);
        _looked = Looked.AtItself;
        var value = make();
        // Whoever asks for it next takes over nothing by name.
        if (_takenOver.Count > taken) _looked |= Looked.AtOthers;
        if (value is not null) _once[what] = (value, _looked);
        _looked |= outer;
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
