using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Nookwright.Measure;

namespace Nookwright.Records;

/// <summary>A size is a JSON string; a bare JSON number is taken too and kept as the digits that were written.</summary>
internal sealed class SizeTextConverter : JsonConverter<SizeText>
{
    public override SizeText Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType is JsonTokenType.Number
            ? Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan)
            : reader.GetString()!;

    public override void Write(Utf8JsonWriter writer, SizeText value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Text);
}
