using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.Live.Answers;

/// <summary>Writes an answer as JSON. What the library refuses is answered with its own sentence; a page never meets an
/// exception.</summary>
internal static class Reply
{
    private static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The answer, or why there is none.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        try
        {
            return Written(write);
        }
        catch (DesignFileException wrong)
        {
            return Refused(wrong.Message, [.. wrong.AllMessages.Split(Environment.NewLine)]);
        }
        catch (InvalidDesignException wrong)
        {
            return Refused(SentenceOf(wrong), []);
        }
        catch (Exception wrong) when (wrong is not OutOfMemoryException)
        {
            // At the edge of the page: whatever is wrong is said there, and nothing typed is lost.
            return Refused(wrong.Message, []);
        }
    }

    /// <summary>Why a step gave no answer.</summary>
    public static string SentenceOf(Exception wrong) => wrong is InvalidDesignException design
        ? design.Reasons : wrong.Message;

    /// <summary>A step's answer; none with the reason where the library refuses it.</summary>
    public static T? Try<T>(Func<T?> compute, out string why) where T : class
    {
        why = "";
        try
        {
            return compute();
        }
        catch (Exception wrong) when (wrong is InvalidDesignException or ArgumentException or InvalidOperationException
            or FormatException)
        {
            why = SentenceOf(wrong);
            return null;
        }
    }

    /// <summary>Findings as a list.</summary>
    public static void Findings(Utf8JsonWriter json, string name, IEnumerable<Finding> findings)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Lines as a list.</summary>
    public static void Lines(Utf8JsonWriter json, string name, IEnumerable<ResultLine> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("name", line.Name);
            json.WriteString("value", line.Value);
            json.WriteString("note", line.Note);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Texts as a list.</summary>
    public static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>Cautions as a list.</summary>
    public static void Cautions(Utf8JsonWriter json, IEnumerable<Caution> cautions)
    {
        json.WriteStartArray("cautions");
        foreach (var caution in cautions)
        {
            json.WriteStartObject();
            json.WriteString("topic", caution.Topic);
            json.WriteString("text", caution.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Refused(string sentence, IReadOnlyList<string> all) => Written(json =>
    {
        json.WriteString("error", sentence);
        Texts(json, "all", all);
    });

    private static string Written(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
