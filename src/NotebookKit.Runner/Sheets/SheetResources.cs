namespace NotebookKit.Runner.Sheets;

/// <summary>The fixed part of a sheet, inside this program.</summary>
internal static class SheetResources
{
    /// <summary>The style sheet of every sheet.</summary>
    public static string Style { get; } = Read("sheet.css");

    private static string Read(string name)
    {
        using var stream = typeof(SheetResources).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without its part {name}. Build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
