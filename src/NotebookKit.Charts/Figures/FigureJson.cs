using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Plotly.NET;

namespace NotebookKit.Charts.Figures;

/// <summary>
/// Writes a Plotly.NET chart as figure JSON by walking its properties. Plotly.NET's own writer reflects over every object and loads a
/// second serialiser for the first figure. Numbers keep seven digits. The text is safe inside a script element: every &lt; is written as an
/// escape.
/// </summary>
internal static class FigureJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        SkipValidation = true };

    public static string Write(GenericChart chart)
    {
        var buffer = new ArrayBufferWriter<byte>(16_384);
        using (var writer = new Utf8JsonWriter(buffer, Options))
        {
            writer.WriteStartObject();
            writer.WriteStartArray("data");
            foreach (var trace in GenericChart.getTraces(chart)) Object(writer, trace, trace.type);
            writer.WriteEndArray();
            writer.WritePropertyName("layout");
            Object(writer, GenericChart.getLayout(chart), null);
            writer.WritePropertyName("config");
            Object(writer, GenericChart.getConfig(chart), null);
            writer.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Object(Utf8JsonWriter writer, DynamicObj.DynamicObj value, string? type)
    {
        writer.WriteStartObject();
        if (type is not null) writer.WriteString("type", type);
        foreach (var (key, item) in value.Properties)
        {
            if (item is null) continue;
            writer.WritePropertyName(key);
            Value(writer, item);
        }
        writer.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter writer, object? value)
    {
        switch (value)
        {
            case null: writer.WriteNullValue(); break;
            case string text: writer.WriteStringValue(text); break;
            case bool flag: writer.WriteBooleanValue(flag); break;
            case int number: writer.WriteNumberValue(number); break;
            case double number: Number(writer, number); break;
            case double[] numbers: Numbers(writer, numbers); break;
            case DynamicObj.DynamicObj nested: Object(writer, nested, null); break;
            case IEnumerable<KeyValuePair<string, object?>> pairs: Pairs(writer, pairs); break;
            case IEnumerable items: Items(writer, items); break;
            case IConvertible number: Number(writer, number.ToDouble(CultureInfo.InvariantCulture)); break;
            default: throw new NotSupportedException($"A figure can't hold a {value.GetType().Name}; give it text, numbers, lists or "
                + "objects of these.");
        }
    }

    private static void Pairs(Utf8JsonWriter writer, IEnumerable<KeyValuePair<string, object?>> pairs)
    {
        writer.WriteStartObject();
        foreach (var (key, item) in pairs)
        {
            writer.WritePropertyName(key);
            Value(writer, item);
        }
        writer.WriteEndObject();
    }

    private static void Items(Utf8JsonWriter writer, IEnumerable items)
    {
        writer.WriteStartArray();
        foreach (var item in items) Value(writer, item);
        writer.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter writer, double[] numbers)
    {
        writer.WriteStartArray();
        foreach (var number in numbers) Number(writer, number);
        writer.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter writer, double number)
    {
        // A gap in a curve: JSON has no word for it but null.
        if (!double.IsFinite(number))
        {
            writer.WriteNullValue();
            return;
        }
        Span<byte> text = stackalloc byte[32];
        _ = number.TryFormat(text, out var length, "G7", CultureInfo.InvariantCulture);
        writer.WriteRawValue(text[..length], skipInputValidation: true);
    }
}
