using System.Text.Json;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;

namespace NotebookKit.Materials.Files;

/// <summary>
/// A user's own materials from a plain JSON file, every value with its unit. A name the library has is overridden, property by property;
/// a new name needs all of its properties, or <c>"like"</c> another.
/// </summary>
/// <remarks>
/// A property is <c>"4600 MPa"</c>, or <c>{ "value": "4600 MPa", "spread": "4 %", "source": "strand tests, March", "kind": "measured"
/// }</c>.
/// Either all of a file is taken or nothing of it.
/// </remarks>
public static class MaterialFile
{
    /// <summary>A file to start from.</summary>
    public const string Example = """
        {
          "fibres": [
            { "name": "carbon T700 class", "tensile strength": { "value": "4600 MPa", "spread": "4 %", "source": "strand tests of our roll, March", "kind": "measured" } }
          ],
          "braids": [
            { "name": "our 65 mm sleeve", "like": "carbon sleeve 65 mm heavy", "yarn": { "value": "410 tex", "spread": "2 %", "source": "weighed ten metres" } }
          ]
        }
        """;

    /// <summary>The library with a file's materials.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="library">Library to add to; the typical one where none is given.</param>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    /// <exception cref="InvalidDesignException">The file has mistakes; every one is named with its line.</exception>
    public static MaterialLibrary Read(string path, MaterialLibrary? library = null)
    {
        if (!File.Exists(path)) throw new FileNotFoundException($"There is no material file \"{path}\". Check the path, or start from "
            + "MaterialFile.Example.", path);
        return Parse(File.ReadAllText(path), Path.GetFileName(path), library);
    }

    /// <summary>The library with the materials of a text.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="name">Name of the file, for messages and for the results that use its values.</param>
    /// <param name="library">Library to add to; the typical one where none is given.</param>
    /// <exception cref="InvalidDesignException">The text has mistakes; every one is named with its line.</exception>
    public static MaterialLibrary Parse(string text, string name, MaterialLibrary? library = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        library ??= MaterialLibrary.Typical;
        var findings = new List<Finding>();
        LinedJson root;
        try
        {
            root = LinedJson.Parse(text);
        }
        catch (JsonException error)
        {
            findings.Add(MaterialsFindings.LineIsNotJson(name, error.LineNumber + 1, Plain(error.Message)));
            throw new InvalidDesignException("Material file", findings);
        }

        var reader = new MaterialFileReader(name, findings);
        if (root is not LinedJson.Members members)
        {
            findings.Add(MaterialsFindings.FileIsNotOneObject(name, root.Line, MaterialFileReader.Lists));
        }
        else
        {
            // Fibres first: sleeves and cloths name them.
            foreach (var (list, line, value) in members.Entries.OrderBy(m => Array.IndexOf(MaterialFileReader.Lists, m.Name)))
                library = reader.ReadList(list, line, value, library);
        }

        InvalidDesignException.ThrowIfAny("Material file", [.. findings.OrderBy(Line)]);
        return library;

        int Line(Finding finding)
        {
            var digits = finding.Message[(name.Length + ", line ".Length)..].TakeWhile(char.IsAsciiDigit);
            return int.Parse(string.Concat(digits), System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    private static string Plain(string message)
    {
        var end = message.IndexOf(" LineNumber", StringComparison.Ordinal);
        return (end > 0 ? message[..end] : message).TrimEnd('.');
    }
}
