using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Nookwright.Measure;

namespace Nookwright.Lists;

/// <summary>How plans and what they were asked for are turned into JSON and back: exact millimetres, words in kebab-case.</summary>
internal static class PlanForm
{
    /// <summary>The rules, for the JSON serializer.</summary>
    public static JsonSerializerOptions Options { get; } = MakeOptions();

    /// <summary>Anything of a plan as JSON.</summary>
    public static JsonNode? Node<T>(T value) => JsonSerializer.SerializeToNode(value, Options);

    private static JsonSerializerOptions MakeOptions()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            WriteIndented = true,
            RespectRequiredConstructorParameters = true,
            RespectNullableAnnotations = true,
        };
        options.Converters.Add(new Millimetres());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false));
        return options;
    }

    /// <summary>Exact: six decimals of a millimetre are a nanometre.</summary>
    private sealed class Millimetres : JsonConverter<Length>
    {
        private const decimal NanometresPerMillimetre = 1_000_000m;

        public override Length Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            if (reader.TokenType is not JsonTokenType.Number || !reader.TryGetDecimal(out var millimetres))
                throw new JsonException();
            var nanometres =
                Math.Abs(millimetres) <= long.MaxValue / NanometresPerMillimetre
                    ? millimetres * NanometresPerMillimetre
                    : throw new JsonException();
            return decimal.IsInteger(nanometres) ? new((long)nanometres) : throw new JsonException();
        }

        public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Nanometres / NanometresPerMillimetre);
    }
}
