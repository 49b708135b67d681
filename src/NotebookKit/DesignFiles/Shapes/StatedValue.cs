using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>What stands around a single value of any type: reason, range, and where it is taken over from.</summary>
internal static class StatedValue
{
    /// <summary>What a value is taken over by: "= nozzle.throat".</summary>
    public const string TakesOver = "= ";

    /// <summary>Reads range and reason beside a value; false where something is wrong, which the reading then knows.</summary>
    public static bool ReadReason(TreeNode.Members members, bool hasOrder, Spot spot, ref string why, out TreeNode? from, out TreeNode? to)
    {
        (from, to) = (members.Find("from"), members.Find("to"));
        string[] known = hasOrder ? ["value", "from", "to", "why"] : ["value", "why"];
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

    /// <summary>Goes from a value that is taken over to the one it is taken from, and notes what is added on the way.</summary>
    public static bool Followed(ref TreeNode node, Spot spot, List<(int Sign, string Text)> more)
    {
        var at = node.At;
        List<string> way = [spot.Path];
        while (node is TreeNode.Text text && text.Value.StartsWith(TakesOver, StringComparison.Ordinal))
        {
            var path = text.Value[TakesOver.Length..].Trim();
            foreach (var (sign, word) in new[] { (1, " + "), (-1, " - ") })
            {
                var cut = path.IndexOf(word, StringComparison.Ordinal);
                if (cut < 0) continue;
                more.Add((sign, path[(cut + word.Length)..].Trim()));
                path = path[..cut].Trim();
            }

            if (way.Contains(path))
            {
                // One circle is one mistake, said where it is met first.
                List<string> circle = [.. way.Skip(way.IndexOf(path))];
                spot.Run.Once($"circle {string.Join(' ', circle.Order(StringComparer.Ordinal))}", () =>
                {
                    spot.Say(at, DesignFilesFindings.CircularReference([.. circle, path]));
                    return "";
                });
                return false;
            }

            way.Add(path);
            var found = path.Length is 0 or > 200 ? null : spot.Run.TakeOver(path);
            if (found is TreeNode.Members members) found = members.Find("value") ?? found;
            if (found is null or TreeNode.Members or TreeNode.Items)
            {
                spot.Say(at, found is not null ? DesignFilesFindings.NotOneValue(path)
                    : DesignFilesFindings.NothingAt(path.Length > 80 ? path[..80] : path, Nearest.Of(path, TreePath.All(spot.Run.Root))));
                return false;
            }

            node = found;
        }

        node = node with { At = at };
        return true;
    }
}
