using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>Where a reading is.</summary>
/// <param name="Run">The reading.</param>
/// <param name="Path">Path of the value.</param>
/// <param name="What">What the value is called in a sentence.</param>
/// <param name="About">What it is for.</param>
internal readonly record struct Spot(Reading Run, string Path, string What, string About)
{
    public Spot At(string key, string about) => new(Run, TreePath.Join(Path, key), key, about);

    public Spot At(int item) => this with { Path = TreePath.Join(Path, item),
        What = FormattableString.Invariant($"item {item} of {What}") };

    public void Say(Place at, string sentence) => Run.Say(at, Path, char.ToUpperInvariant(sentence[0]) + sentence[1..]);
}
