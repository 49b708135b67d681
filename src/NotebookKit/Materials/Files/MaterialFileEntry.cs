using System.Text.Json;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Materials.Files;

/// <summary>One material in a user's file, its values read one by one.</summary>
internal sealed class MaterialFileEntry(string file, LinedJson.Members members, List<Finding> findings)
{
    private readonly HashSet<string> _asked = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A text; none where it isn't given.</summary>
    public string? Text(string name)
    {
        if (Find(name) is not { } found) return null;
        if (found.Value is LinedJson.Scalar { Kind: JsonTokenType.String } text) return text.Text;
        Say(found.Line, $"\"{name}\" must be a text in quotes");
        return null;
    }

    /// <summary>A property with its spread and source; the base's where it isn't given, an error where there is none either.</summary>
    /// <param name="name">Name of the property.</param>
    /// <param name="starting">The base's.</param>
    /// <param name="formerly">Name it had in the release before this one, still read.</param>
    public Property<T>? Property<T>(string name, Property<T>? starting, string? formerly = null) where T : struct, IComparable<T>
    {
        if ((formerly is null ? Find(name) : Find(name) ?? Peek(formerly)) is not { } found) return starting ?? Missing<Property<T>>(name);
        if (found.Value is LinedJson.Scalar scalar)
            return Read<T>(scalar, name) is { } plain ? new Property<T>(plain, starting?.Spread ?? 0,
                new Source("", $"{file}, line {scalar.Line}", null, "", SourceKind.Measured), Origin(scalar.Line)) : null;
        if (found.Value is not LinedJson.Members inner)
        {
            Say(found.Line, $"\"{name}\" must be a text like \"12 MPa\", or an object with \"value\", \"spread\", \"source\" and \"kind\"");
            return null;
        }

        T? value = null;
        var spread = starting?.Spread ?? 0;
        var source = $"{file}, line {found.Line}";
        var kind = SourceKind.Measured;
        foreach (var (member, line, content) in inner.Entries)
        {
            if (content is not LinedJson.Scalar text)
            {
                Say(line, $"\"{member}\" of \"{name}\" must be a text or a number");
                continue;
            }

            switch (member)
            {
                case "value": value = Read<T>(text, name); break;
                case "spread": spread = Read<Ratio>(text, $"spread of {name}")?.DecimalFractions ?? spread; break;
                case "source": source = text.Text; break;
                case "kind": kind = Kind(text); break;
                default: Say(line, $"\"{member}\" isn't part of a property; it takes \"value\", \"spread\", \"source\" "
                    + "and \"kind\""); break;
            }
        }

        if (value is null)
        {
            if (inner.Entries.All(i => i.Name != "value")) Say(found.Line, $"\"{name}\" has no \"value\"");
            return null;
        }

        return new Property<T>(value.Value, spread, new Source("", source, null, "", kind), Origin(found.Line));
    }

    /// <summary>A property that may be left out; the base's where it isn't given, none where there is none either.</summary>
    public Property<T>? OptionalProperty<T>(string name, Property<T>? starting) where T : struct, IComparable<T> =>
        Find(name) is null ? starting : Property(name, starting);

    /// <summary>A plain value; the base's where it isn't given, an error where there is none either.</summary>
    public T? Value<T>(string name, T? starting) where T : struct
    {
        if (Find(name) is not { } found)
        {
            if (starting is null) Missing<string>(name);
            return starting;
        }

        if (found.Value is LinedJson.Scalar scalar) return Read<T>(scalar, name);
        Say(found.Line, $"\"{name}\" must be a text like \"65 mm\"");
        return null;
    }

    /// <summary>The fibre it is made of.</summary>
    public Fibre? FibreOf(Fibre? starting, MaterialLibrary library)
    {
        if (Text("fibre") is not { } name) return starting ?? Missing<Fibre>("fibre");
        try
        {
            return library.Fibre(name);
        }
        catch (UnknownMaterialException unknown)
        {
            Error("fibre", unknown.Message);
            return null;
        }
    }

    /// <summary>An error for every member that nobody asked for: a misspelt name must not pass in silence.</summary>
    public void FindUnknown()
    {
        foreach (var (name, line, _) in members.Entries.Where(m => !_asked.Contains(m.Name)))
            Say(line, $"\"{name}\" isn't known here; this kind of material takes "
                + $"{string.Join(", ", _asked.Order(StringComparer.Ordinal))}");
    }

    /// <summary>An error at a member.</summary>
    public void Error(string name, string what) => Say(Find(name)?.Line ?? members.Line, $"\"{name}\" {what}");

    // A former name is read without being offered: only a file that uses it has it among the names asked for.
    private (int Line, LinedJson Value)? Peek(string name) => members.Entries.Any(m => string.Equals(m.Name, name,
        StringComparison.OrdinalIgnoreCase)) ? Find(name) : null;

    private (int Line, LinedJson Value)? Find(string name)
    {
        _asked.Add(name);
        foreach (var (member, line, value) in members.Entries)
            if (string.Equals(member, name, StringComparison.OrdinalIgnoreCase)) return (line, value);
        return null;
    }

    private T? Read<T>(LinedJson.Scalar scalar, string name) where T : struct
    {
        if (QuantityText.TryRead<T>(scalar.Text, out var value, out var wrong)) return value;
        Say(scalar.Line, $"{name}: {wrong}");
        return null;
    }

    private SourceKind Kind(LinedJson.Scalar text)
    {
        // "from memory" is what files of the release before this one say.
        if (string.Equals(text.Text, "from memory", StringComparison.OrdinalIgnoreCase)) return SourceKind.Unverified;
        if (Enum.TryParse<SourceKind>(text.Text.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true, out var kind)
            && Enum.IsDefined(kind)) return kind;
        Say(text.Line, $"kind: \"{text.Text}\" isn't one of measured, data sheet, standard, published, typical, unverified, "
            + "common practice");
        return SourceKind.Measured;
    }

    private T? Missing<T>(string name) where T : class
    {
        Say(members.Line, $"\"{name}\" is missing; a new material needs all of its properties, or \"like\" another");
        return null;
    }

    private string Origin(int line) => $"{file}, line {line}";

    private void Say(int line, string what) => findings.Add(MaterialsFindings.LineIsWrong(file, line, what));
}
