using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One of several objects, told apart by a word under a key of theirs.</summary>
/// <typeparam name="T">What is made of any of them.</typeparam>
internal sealed class ChoiceShape<T> : Shape<T>
{
    private readonly string _name;
    private readonly string _key;
    private readonly IReadOnlyList<ObjectShape<T>> _alternatives;

    /// <summary>States alternatives.</summary>
    /// <param name="name">What they are called together: "ply".</param>
    /// <param name="key">Key that tells them apart.</param>
    /// <param name="alternatives">Words of each, what it is for, and its keys.</param>
    public ChoiceShape(string name, string key, params (string[] Words, string About, Func<FieldList, Func<Values,
        T>> Define)[] alternatives)
    {
        (_name, _key) = (name, key);
        _alternatives = [.. alternatives.Select(a => new ObjectShape<T>($"{name}, {a.Words[0]}", a.About, a.Define)
        {
            ChosenBy = (key, a.Words),
        })];
    }

    public IReadOnlyList<string> Words => [.. _alternatives.SelectMany(a => a.ChosenBy!.Value.Words)];

    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out T value)
    {
        value = default!;
        if (node is not TreeNode.Members members)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, $"an object in braces with \"{_key}\""));
            return false;
        }

        if (members.Find(_key) is not { } found)
        {
            spot.Say(node.At, DesignFilesFindings.KeyIsMissing(_key, spot.What, $"one of {string.Join(", ", Words)}."));
            return false;
        }

        var at = spot.At(_key, $"Which {_name} it is.");
        if (found is not TreeNode.Text text)
        {
            at.Say(found.At, DesignFilesFindings.WrongForm(_key, found.Noun, $"one of {string.Join(", ", Words)} in quotes"));
            return false;
        }

        if (Chosen(text.Value) is { } chosen)
        {
            spot.Run.Add(new(at.Path, "", text.Value, "word", $"one of {string.Join(", ", Words)}", at.About, GivenState.Stated));
            return chosen.TryRead(node, spot, out value);
        }

        at.Say(found.At, DesignFilesFindings.UnknownWord(_key, text.Value.Length > 60 ? text.Value[..60] : text.Value,
            Nearest.Of(text.Value, Words), Words));
        return false;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) =>
        node is TreeNode.Members members && members.Find(_key) is TreeNode.Text text && Chosen(text.Value) is { } chosen
            ? chosen.Order(node) : node;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => book.Refer(_name, () => new()
    {
        ["oneOf"] = new JsonArray([.. _alternatives.Select(a => (JsonNode)a.Schema(book))]),
    });

    /// <inheritdoc/>
    public override JsonObject PartialSchema(SchemaBook book) => book.Refer($"{_name} in part", () => new()
    {
        ["anyOf"] = new JsonArray([.. _alternatives.Select(a => (JsonNode)a.PartialSchema(book))]),
    });

    private ObjectShape<T>? Chosen(string word) => _alternatives.FirstOrDefault(a => a.ChosenBy!.Value.Words.Contains(word));
}
