namespace NotebookKit.DesignFiles.Trees;

/// <summary>A design file can't be read or written; says the first mistake with its line and column, and carries all of them.</summary>
public sealed class DesignFileException : FormatException
{
    internal DesignFileException(string file, IReadOnlyList<DesignFileMistake> mistakes, Exception? inner = null)
        : base(Text(file, mistakes[0]), inner)
    {
        File = file;
        Mistakes = mistakes;
    }

    internal DesignFileException(string file, Place at, string sentence, Exception? inner = null)
        : this(file, [new(at.Line, at.Column, "", sentence)], inner)
    {
    }

    /// <summary>Name of the file, without its folder; empty where what is wrong is a value from outside.</summary>
    public string File { get; }

    /// <summary>All mistakes in the order of the text, at most twenty.</summary>
    public IReadOnlyList<DesignFileMistake> Mistakes { get; }

    /// <summary>Line of the first mistake, from 1; 0 where the value doesn't come from a file.</summary>
    public int Line => Mistakes[0].Line;

    /// <summary>Column of the first mistake, from 1; 0 where the value doesn't come from a file.</summary>
    public int Column => Mistakes[0].Column;

    /// <summary>Every mistake in a line of its own.</summary>
    public string AllMessages => string.Join(Environment.NewLine, Mistakes.Select(m => Text(File, m)));

    private static string Text(string file, DesignFileMistake mistake) =>
        mistake.Line > 0 ? FormattableString.Invariant($"{file}, line {mistake.Line}, column {mistake.Column}: {mistake.Sentence}")
        : file.Length > 0 ? $"{file}: {mistake.Sentence}" : mistake.Sentence;
}
