using System.Globalization;

namespace NotebookKit.Provenance;

/// <summary>One of our numbers disagrees with somebody else's.</summary>
public sealed class DisagreementException : Exception
{
    /// <summary>Creates the exception.</summary>
    /// <param name="title">What was compared.</param>
    /// <param name="rows">The numbers that disagree.</param>
    /// <param name="arePublished">Whether the other numbers stand in print; else they are a reference of another kind.</param>
    public DisagreementException(string title, IReadOnlyList<Agreement> rows, bool arePublished = true)
        : base($"{title}: " + string.Join("; ", rows.Select(r => Sentence(r, arePublished ? "published" : "reference")))
            + ". Don't use the model before the reason is found.") =>
        Rows = rows;

    /// <summary>The numbers that disagree.</summary>
    public IReadOnlyList<Agreement> Rows { get; }

    private static string Sentence(Agreement r, string other) =>
        string.Create(CultureInfo.InvariantCulture, $"{r.What} is {r.Ours:G7} {r.Unit}, {other} {r.Published:G7} {r.Unit}, "
            + $"{100 * Math.Abs(r.Difference):G2} % apart where {100 * r.Allowed:G2} % is allowed");
}
