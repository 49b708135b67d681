using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One value. It stands bare, is taken over from another place ("= nozzle.throat"), or is stated with range and reason.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
internal abstract class ScalarShape<T> : Shape<T>
{
    /// <summary>What a value is taken over by: "= nozzle.throat".</summary>
    public const string TakesOver = "= ";

    /// <summary>What kind of value it is: "length".</summary>
    public abstract string Noun { get; }

    /// <summary>What it may be, in words; empty where nothing bounds it.</summary>
    public virtual string Range => "";

    /// <summary>A value as the file has it, without quotes.</summary>
    public abstract string Write(T value);

    /// <summary>The value of a bare node; says what is wrong where there is none.</summary>
    protected abstract bool TryReadBare(TreeNode node, Spot spot, out T value);

    /// <summary>Whether a value lies between two others; always where there is no order.</summary>
    protected virtual string? OutOf(T value, T? from, bool hasFrom, T? to, bool hasTo, Spot spot, string why) => null;

    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out T value)
    {
        value = default!;
        var why = spot.About;
        var (bare, range) = (node, Range);
        TreeNode? from = null, to = null;
        if (node is TreeNode.Members members)
        {
            if (members.Find("value") is not { } inner)
            {
                spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, "an object without \"value\"", $"one {Noun}"));
                return false;
            }

            if (!ReadReason(members, spot, ref why, out from, out to)) return false;
            bare = inner;
        }

        if (!Followed(ref bare, spot) || !TryReadBare(bare, spot, out value)) return false;
        T low = default!, high = default!;
        if (from is not null && !(Followed(ref from, spot) && TryReadBare(from, spot, out low))) return false;
        if (to is not null && !(Followed(ref to, spot) && TryReadBare(to, spot, out high))) return false;
        if (OutOf(value, low, from is not null, high, to is not null, spot, why) is { } sentence)
        {
            spot.Say(bare.At.Line > 0 ? bare.At : node.At, sentence);
            return false;
        }

        if (from is not null && to is not null) range = $"{Write(low)} to {Write(high)}";
        else if (from is not null) range = $"at least {Write(low)}";
        else if (to is not null) range = $"at most {Write(high)}";
        spot.Run.Givens.Add(new(spot.Path, "", bare switch
        {
            TreeNode.Text text => text.Value,
            TreeNode.Literal literal => literal.Value,
            _ => Write(value),
        }, Noun, range, why, GivenState.Stated));
        return true;
    }

    private static bool ReadReason(TreeNode.Members members, Spot spot, ref string why, out TreeNode? from, out TreeNode? to)
    {
        (from, to) = (members.Find("from"), members.Find("to"));
        string[] known = ["value", "from", "to", "why"];
        var right = true;
        foreach (var member in members.All)
        {
            if (member.Key == "why")
            {
                if (member.Value is TreeNode.Text text) why = text.Value;
                else
                {
                    spot.Say(member.Value.At, DesignFilesFindings.WrongForm("why", member.Value.Noun, "a text"));
                    right = false;
                }
            }
            else if (!known.Contains(member.Key))
            {
                spot.Say(member.KeyAt, DesignFilesFindings.UnknownKey(member.Key, spot.What, Nearest.Of(member.Key, known), known));
                right = false;
            }
        }

        return right;
    }

    // Goes from a value that is taken over to the one it is taken from.
    private static bool Followed(ref TreeNode node, Spot spot)
    {
        if (node is not TreeNode.Text { Value: var first } || !first.StartsWith(TakesOver, StringComparison.Ordinal)) return true;
        var at = node.At;
        List<string> way = [spot.Path];
        while (node is TreeNode.Text text && text.Value.StartsWith(TakesOver, StringComparison.Ordinal))
        {
            var path = text.Value[TakesOver.Length..].Trim();
            if (way.Contains(path))
            {
                spot.Say(at, DesignFilesFindings.CircularReference([.. way, path]));
                return false;
            }

            way.Add(path);
            var found = path.Length is 0 or > 200 ? null : TreePath.Find(spot.Run.Root, path);
            if (found is TreeNode.Members members) found = members.Find("value") ?? found;
            if (found is null or TreeNode.Members or TreeNode.Items)
            {
                spot.Say(at, found is null ? DesignFilesFindings.NothingAt(path, Nearest.Of(path, TreePath.All(spot.Run.Root)))
                    : DesignFilesFindings.NotOneValue(path));
                return false;
            }

            node = found;
        }

        node = node with { At = at };
        return true;
    }
}
