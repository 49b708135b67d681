using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What the words mean.</typeparam>
internal sealed class WordShape<T>(string noun, params (string Word, T Meaning)[] choices) : ScalarShape<T>
{
    /// <inheritdoc/>
    public override string Noun => noun;

    /// <inheritdoc/>
    protected override string RangeInWords => $"one of {string.Join(", ", choices.Select(c => c.Word))}";

    /// <inheritdoc/>
    public override string Write(T value) => choices.First(c => EqualityComparer<T>.Default.Equals(c.Meaning, value)).Word;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) =>
        book.Stated(noun, new() { ["enum"] = SchemaBook.Words(choices.Select(c => c.Word)) }, HasOrder);

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out T value)
    {
        value = default!;
        var words = choices.Select(c => c.Word).ToList();
        if (node is not TreeNode.Text text)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, $"one of {string.Join(", ", words)} in quotes"));
            return false;
        }

        var at = words.IndexOf(text.Value);
        if (at >= 0)
        {
            value = choices[at].Meaning;
            return true;
        }

        spot.Say(node.At, DesignFilesFindings.UnknownWord(spot.What, text.Value.Length > 60 ? text.Value[..60] : text.Value,
            Nearest.Of(text.Value, words), words));
        return false;
    }
}
