using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>An object: its keys, and what is made of their values.</summary>
/// <typeparam name="T">What is made.</typeparam>
internal sealed class ObjectShape<T> : Shape<T>
{
    private readonly FieldList _list = new();
    private readonly Func<Values, T> _make;
    private readonly string _about;

    /// <summary>States an object.</summary>
    /// <param name="name">What it is called, alone in the design file: "launch tube".</param>
    /// <param name="about">What it is for.</param>
    /// <param name="define">States its keys, and returns what makes it.</param>
    public ObjectShape(string name, string about, Func<FieldList, Func<Values, T>> define)
    {
        (Name, _about) = (name, about);
        _make = define(_list);
    }

    public string Name { get; }

    public IReadOnlyList<Field> Fields => _list.Fields;

    /// <summary>Key and words by which it was chosen among alternatives; none where it wasn't.</summary>
    public (string Key, IReadOnlyList<string> Words)? ChosenBy { get; init; }

    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out T value) =>
        spot.Run.TryKeep(this, node, spot.Path, () => (TryReadKeys(node, spot, out var read), read), out value);

    private bool TryReadKeys(TreeNode node, Spot spot, out T value)
    {
        value = default!;
        if (node is not TreeNode.Members members)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, $"an object in braces, {Name}"));
            return false;
        }

        var meant = UnknownKeys(members, spot);
        var right = meant.Count == 0;
        var values = new object?[Fields.Count];
        for (var i = 0; i < values.Length; i++)
        {
            var field = Fields[i];
            var at = spot.At(field.Key, field.About);
            if (members.Find(field.Key) is { } found)
            {
                (var fine, values[i]) = field.Read(found, at);
                right &= fine;
            }
            else if (field.IsNeeded)
            {
                // A key that is said to be mistyped isn't said to be missing as well.
                if (!meant.Contains(field.Key)) spot.Say(node.At, DesignFilesFindings.KeyIsMissing(field.Key, spot.What, field.About));
                right = false;
            }
            else if (field.Kind.Length > 0)
            {
                spot.Run.Add(new(at.Path, "", field.Default ?? "not given", field.Kind, field.Range, field.About,
                    field.Default is null ? GivenState.NotGiven : GivenState.Default));
            }
        }

        foreach (var (one, other, isNeeded) in _list.Alternatives)
        {
            var (first, second) = (members.Find(one), members.Find(other));
            if (first is null && second is null && isNeeded)
                spot.Say(node.At, DesignFilesFindings.KeyIsMissing(one, spot.What, $"or \"{other}\", one of both."));
            else if (first is not null && second is not null)
                spot.Say(members.All.First(m => m.Key == other).KeyAt, DesignFilesFindings.OneOfBoth(one, other, spot.What));
            else continue;
            right = false;
        }

        var word = ChosenBy is { } chosen ? (members.Find(chosen.Key) as TreeNode.Text)?.Value ?? "" : "";
        return right && TryMake(new(values, spot, word), node, out value);
    }

    private bool TryMake(Values values, TreeNode node, out T value)
    {
        value = default!;
        try
        {
            value = _make(values);
            return true;
        }
        catch (InvalidDesignException wrong)
        {
            values.Spot.Say(node.At, string.Join(' ', wrong.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f =>
                f.Message)));
        }
        catch (ArgumentException wrong)
        {
            var note = wrong.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
            values.Spot.Say(node.At, note > 0 ? wrong.Message[..note] : wrong.Message);
        }
        catch (FormatException wrong) when (wrong is not DesignFileException)
        {
            values.Spot.Say(node.At, wrong.Message);
        }

        return false;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node)
    {
        if (node is not TreeNode.Members members) return node;
        var order = (ChosenBy is { } by ? [by.Key] : Array.Empty<string>()).Concat(Fields.Select(f => f.Key)).ToList();
        return members with
        {
            All =
            [
                .. members.All.OrderBy(m => order.IndexOf(m.Key) is var at && at < 0 ? order.Count : at)
                    .Select(m => Fields.FirstOrDefault(f =>
                        f.Key == m.Key) is { } field ? m with { Value = field.Shape.Order(m.Value) } : m),
            ],
        };
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => book.Refer(Name, () => Whole(book, needsAll: true));

    /// <inheritdoc/>
    public override JsonObject PartialSchema(SchemaBook book) => book.Refer($"{Name} in part", () => Whole(book, needsAll: false));

    private JsonObject Whole(SchemaBook book, bool needsAll)
    {
        var properties = new JsonObject();
        if (ChosenBy is { } by) properties[by.Key] = new JsonObject { ["enum"] = SchemaBook.Words(by.Words) };
        foreach (var field in Fields) properties[field.Key] = field.Schema(book, needsAll);
        List<string> needed = needsAll
            ? [.. ChosenBy is { } chosen ? [chosen.Key] : Array.Empty<string>(), .. Fields.Where(f => f.IsNeeded).Select(f => f.Key)] : [];
        var schema = new JsonObject { ["type"] = "object", ["description"] = _about, ["properties"] = properties };
        if (needed.Count > 0) schema["required"] = SchemaBook.Words(needed);
        schema["additionalProperties"] = false;
        if (_list.Alternatives.Count > 0)
            schema["allOf"] = new JsonArray([.. _list.Alternatives.Select(a => (JsonNode)(a.IsNeeded
                ? new JsonObject { ["oneOf"] = new JsonArray(Required(a.One), Required(a.Other)) }
                : new JsonObject { ["not"] = Required(a.One, a.Other) }))]);
        return schema;
    }

    private static JsonObject Required(params string[] keys) => new() { ["required"] = SchemaBook.Words(keys) };

    // Says which keys aren't known, and returns what each was likely meant to be.
    private List<string?> UnknownKeys(TreeNode.Members members, Spot spot)
    {
        List<string?> meant = [];
        foreach (var member in members.All)
        {
            if (Fields.Any(f => f.Key == member.Key) || member.Key == ChosenBy?.Key) continue;
            var known = (ChosenBy is { } by ? [by.Key] : Array.Empty<string>()).Concat(Fields.Select(f => f.Key)).ToList();
            var key = member.Key.Length > 60 ? $"{member.Key[..60]}..." : member.Key;
            meant.Add(Nearest.Of(member.Key, known));
            spot.Say(member.KeyAt, DesignFilesFindings.UnknownKey(key, spot.What, meant[^1], known));
        }

        return meant;
    }
}
