using NotebookKit.Provenance;

namespace NotebookKit.Filling;

/// <summary>The sentences of filling's findings, in one place.</summary>
internal static partial class FillingFindings
{
    // Filling/Balances/FillWall
    internal static Finding FilmLawUnknown(string law, IEnumerable<string> names) =>
        Finding.Error($"film law is {law}; it must be one of {string.Join(", ", names)}.");
}
