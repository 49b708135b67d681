namespace NotebookKit.DesignFiles.Shapes;

/// <summary>States the keys of an object, each once; what it returns reads the key's value from what was read.</summary>
internal sealed class FieldList
{
    private readonly List<Field> _fields = [];
    private readonly List<(string One, string Other, bool IsNeeded)> _oneOf = [];

    public IReadOnlyList<Field> Fields => _fields;

    public IReadOnlyList<(string One, string Other, bool IsNeeded)> Alternatives => _oneOf;

    /// <summary>A key that must be there.</summary>
    public Func<Values, T> Needs<T>(string key, Shape<T> shape, string about)
    {
        var at = Add(key, shape, about, isNeeded: true, null);
        return v => (T)v.All[at]!;
    }

    /// <summary>A single value with a default, which the design then names.</summary>
    public Func<Values, T> Has<T>(string key, ScalarShape<T> shape, T otherwise, string about)
    {
        var at = Add(key, shape, about, isNeeded: false, shape.Write(otherwise));
        return v => v.All[at] is T value ? value : otherwise;
    }

    /// <summary>A single value that may be left out: it is then not given.</summary>
    public Func<Values, T?> May<T>(string key, ScalarShape<T> shape, string about) where T : struct
    {
        var at = Add(key, shape, about, isNeeded: false, null);
        return v => v.All[at] is T value ? value : null;
    }

    /// <summary>A part that may be left out: it is then not given.</summary>
    public Func<Values, T?> Part<T>(string key, Shape<T> shape, string about) where T : class
    {
        var at = Add(key, shape, about, isNeeded: false, null);
        return v => (T?)v.All[at];
    }

    /// <summary>A text or list that may be left out.</summary>
    public Func<Values, T> Else<T>(string key, Shape<T> shape, T otherwise, string about) where T : class
    {
        var at = Add(key, shape, about, isNeeded: false, null);
        return v => (T?)v.All[at] ?? otherwise;
    }

    /// <summary>Two keys of which one at most may be there.</summary>
    public void NotBoth(string one, string other) => _oneOf.Add((one, other, false));

    /// <summary>Two keys of which one must be there, and one alone.</summary>
    public void EitherOf(string one, string other) => _oneOf.Add((one, other, true));

    private int Add<T>(string key, Shape<T> shape, string about, bool isNeeded, string? otherwise)
    {
        var (kind, range) = shape is ScalarShape<T> scalar ? (scalar.Noun, scalar.Range) : ("", "");
        _fields.Add(new(key, shape, about, isNeeded, kind, range, otherwise,
            (node, spot) => (shape.TryRead(node, spot, out var value), value)));
        return _fields.Count - 1;
    }
}
