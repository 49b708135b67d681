using System.Text.Json;
using System.Text.Json.Serialization;

namespace NotebookKit.Flight.Dispersion;

/// <summary>A shard as it stands in its file: names and units in SI, rows of numbers one after another, none where there is no
/// number.</summary>
internal sealed record ShardDocument(
    string? Vehicle, string? Site, int Flights, ulong Seed, bool IsSixDegrees, int Stages, double? CeilingM, double? FieldRadiusM,
        double[]? CornersM,
    string? Fingerprint, string? Subject, int Shard, int Of, bool? IsWindGiven,
        [property: JsonConverter(typeof(ShardDocument.NumbersConverter))] IReadOnlyList<double>? Rows)
{
    /// <summary>Numbers with a null for what is none, which JSON has no number for.</summary>
    internal sealed class NumbersConverter : JsonConverter<IReadOnlyList<double>>
    {
        public override IReadOnlyList<double> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException("its rows are no list of numbers.");
            var numbers = new List<double>();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                numbers.Add(
                    reader.TokenType == JsonTokenType.Null ? double.NaN
                    : reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var number) ? number
                    : throw new JsonException("its rows hold something that is no number."));
            }

            return numbers;
        }

        public override void Write(Utf8JsonWriter writer, IReadOnlyList<double> value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var number in value)
            {
                if (double.IsNaN(number)) writer.WriteNullValue();
                else writer.WriteNumberValue(number);
            }

            writer.WriteEndArray();
        }
    }
}
