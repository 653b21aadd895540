using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Cli;

/// <summary>Answers for machines: JSON with lengths as text that reads back exactly, enums as words.</summary>
public static class JsonAnswer
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
    };

    /// <summary>The answer as text.</summary>
    public static string Write(object answer) => JsonSerializer.Serialize(answer, Options);

    /// <summary>A length both ways: as a maker writes it and in millimetres.</summary>
    public static object Of(Length length, LengthUnit unit) =>
        new { text = LengthText.Write(length, unit), millimetres = (decimal)length.Nanometres / 1_000_000 };

    /// <summary>A finding.</summary>
    public static object Of(Finding finding) =>
        new
        {
            finding.Rule,
            finding.Severity,
            finding.Message,
            finding.About,
            finding.Field,
            finding.Source,
        };
}
