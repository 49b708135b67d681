namespace NotebookKit.Runner.Jupyter;

/// <summary>The protocol counts places in code in whole Unicode characters, C# in UTF-16 units.</summary>
internal static class CodePoints
{
    /// <summary>UTF-16 place of a protocol place.</summary>
    /// <param name="code">Code.</param>
    /// <param name="point">Place in whole characters, from 0; outside is moved to the nearest end.</param>
    public static int ToUnits(string code, int point)
    {
        var unit = 0;
        for (var i = 0; i < point && unit < code.Length; i++) unit += char.IsSurrogatePair(code, unit) ? 2 : 1;
        return unit;
    }

    /// <summary>Protocol place of a UTF-16 place.</summary>
    /// <param name="code">Code.</param>
    /// <param name="unit">Place in UTF-16 units, from 0.</param>
    public static int FromUnits(string code, int unit)
    {
        var point = 0;
        for (var at = 0; at < Math.Min(unit, code.Length); at += char.IsSurrogatePair(code, at) ? 2 : 1) point++;
        return point;
    }
}
