using System.Globalization;
using System.Text;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>Writes numbers as a log has them: fixed decimals, point, line feeds.</summary>
internal sealed class DemoCsv
{
    private readonly StringBuilder _text = new();

    public DemoCsv(ulong seed, params string[] comments)
    {
        _text.Append(CultureInfo.InvariantCulture, $"# invented, seeded {seed}, not a real test\n");
        foreach (var comment in comments) _text.Append(CultureInfo.InvariantCulture, $"# {comment}\n");
    }

    public void Line(params string[] cells) => _text.Append(string.Join(",", cells)).Append('\n');

    public static string Number(double value, int decimals)
    {
        // Rounding to the grid first keeps "-0.00" out.
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    public override string ToString() => _text.ToString();
}
