using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One value. It stands bare, is taken over from another place ("= nozzle.throat", "= nozzle.throat + 3 mm"), or is stated with
/// range and reason.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
internal abstract class ScalarShape<T> : Shape<T>
{
    /// <summary>What kind of value it is: "length".</summary>
    public abstract string Noun { get; }

    /// <summary>What it may be, in words; empty where nothing bounds it. A design asks for it with each of its values, so that the words
    /// are made once.</summary>
    public string Range => field ??= RangeInWords;

    /// <summary>The words of the range.</summary>
    protected virtual string RangeInWords => "";

    /// <summary>Whether its values have an order, so that limits may be stated beside one.</summary>
    protected virtual bool HasOrder => false;

    /// <summary>A value as the file has it, without quotes.</summary>
    public abstract string Write(T value);

    /// <summary>The value of a bare node; says what is wrong where there is none.</summary>
    protected abstract bool TryReadBare(TreeNode node, Spot spot, out T value);

    /// <summary>A value and so much more of its kind; false where the text is none of it, or nothing can be added.</summary>
    protected virtual bool TryAdd(ref T value, int sign, string text) => false;

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

            if (!StatedValue.ReadReason(members, HasOrder, spot, ref why, out from, out to)) return false;
            bare = inner;
        }

        var written = bare;
        T low = default!, high = default!;
        if (!TryReadFollowed(bare, spot, out value) || (from is not null && !TryReadFollowed(from, spot, out low))
            || (to is not null && !TryReadFollowed(to, spot, out high))) return false;
        if (OutOf(value, low, from is not null, high, to is not null, spot, why) is { } sentence)
        {
            spot.Say(bare.At.Line > 0 ? bare.At : node.At, sentence);
            return false;
        }

        if (from is not null && to is not null) range = $"{Write(low)} to {Write(high)}";
        else if (from is not null) range = $"at least {Write(low)}";
        else if (to is not null) range = $"at most {Write(high)}";
        spot.Run.Add(new(spot.Path, "", written is TreeNode.Text text
            && !text.Value.StartsWith(StatedValue.TakesOver, StringComparison.Ordinal) ? text.Value : Write(value), Noun, range, why,
                GivenState.Stated)
        {
            HasReason = node is TreeNode.Members reasoned && reasoned.Find("why") is not null,
        });
        return true;
    }

    private bool TryReadFollowed(TreeNode node, Spot spot, out T value)
    {
        List<(int Sign, string Text)> more = [];
        value = default!;
        if (!StatedValue.Followed(ref node, spot, more) || !TryReadBare(node, spot, out value)) return false;
        foreach (var (sign, text) in more)
        {
            if (TryAdd(ref value, sign, text)) continue;
            spot.Say(node.At, DesignFilesFindings.CannotAdd(spot.What, text, Noun));
            return false;
        }

        return true;
    }
}
