using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>What each part of a vessel would hold, weakest first, against working and proof pressure.</summary>
public static class PartMarginsChart
{
    /// <summary>Draws one bar a part.</summary>
    /// <param name="parts">Name and failure pressure of each part.</param>
    /// <param name="working">Working pressure; none where there is no rating yet.</param>
    /// <param name="proof">Proof pressure; none where there is no rating yet.</param>
    /// <exception cref="InvalidDesignException">No parts, or two of one name.</exception>
    public static EngineeringChart Draw(IReadOnlyList<(string Part, GaugePressure Fails)> parts, GaugePressure? working = null,
        GaugePressure? proof = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        // Bars are laid from the bottom up, so the weakest, last here, stands on top.
        var sorted = parts.OrderBy(p => p.Fails).Reverse().ToList();
        var fails = new Series("Pressure at which the part fails", PressureAxis.Unit, [.. sorted.Select(p => p.Fails.Bar)]);
        return new EngineeringChart("Pressure that each part holds", Axis.For(fails), Axis.OfNames("Part"))
        {
            Marks =
            [
                new Bars([.. sorted.Select(p => p.Part)], fails)
                {
                    Name = "",
                    Slots = [.. sorted.Select((_, i) => i == sorted.Count - 1 ? 1 : 0)],
                    Labels = [.. sorted.Select((p, i) =>
                        $"{p.Fails}{(working is { Pascals: > 0 } w ? $", {Digits.Round(p.Fails / w, 2)} × working" : "")}{(i ==
                        sorted.Count - 1 ? ": weakest" : "")}")],
                },
            ],
            Limits = [.. new[] { ("working", working), ("proof", proof) }.Where(l => l.Item2
                is not null).Select(l => new LimitLine(l.Item2!.Value.Bar, $"{l.Item1} {l.Item2}") { IsVertical = true })],
        }.Checked();
    }
}
