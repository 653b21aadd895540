using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Nookwright.Records;

/// <summary>How records of the document are turned into JSON and back.</summary>
/// <remarks>
/// Names are camelCase, words of a choice kebab-case, days ISO 8601. What equals the default is left out, unless it is
/// one of the words that must always be said (<see cref="JsonRequiredAttribute"/>).
/// </remarks>
public static class RecordJson
{
    /// <summary>The rules, for the JSON serializer.</summary>
    public static JsonSerializerOptions Options { get; } = MakeOptions();

    /// <summary>A record as JSON.</summary>
    public static JsonObject ToJson<T>(T record)
        where T : Kept => JsonSerializer.SerializeToNode(record, Options)!.AsObject();

    /// <summary>JSON as a record; it must have passed <see cref="FormCheck"/>. Known fields that are null are taken out of it.</summary>
    public static T FromJson<T>(JsonObject json)
        where T : Kept
    {
        LeaveOutNulls(json, Forms.Of<T>());
        return json.Deserialize<T>(Options)!;
    }

    private static JsonSerializerOptions MakeOptions()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            AllowOutOfOrderMetadataProperties = true,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutDefaults } },
        };
        options.Converters.Add(new SizeTextConverter());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false));
        options.MakeReadOnly();
        return options;
    }

    private static void LeaveOutDefaults(JsonTypeInfo type)
    {
        if (!type.Type.IsAssignableTo(typeof(Kept)) || type.Type.IsAbstract)
            return;
        var asNew = Activator.CreateInstance(type.Type)!;
        foreach (var property in type.Properties.Where(p => !p.IsExtensionData && p.Get is not null))
        {
            var usual = property.Get!(asNew);
            var always = property.AttributeProvider!.IsDefined(typeof(JsonRequiredAttribute), inherit: true);
            property.ShouldSerialize = (_, value) => always || !Same(value, usual);
            property.Order = Depth(property.DeclaringType); // What all pieces have comes before what one kind has.
        }
    }

    private static int Depth(Type? type) => type is null ? 0 : Depth(type.BaseType) + 1;

    /// <summary>A known field that is null counts as left out; an unknown one stays as it is.</summary>
    private static void LeaveOutNulls(JsonNode? json, Form form)
    {
        if (json is JsonArray list && form is Form.ListOf items)
            foreach (var item in list)
                LeaveOutNulls(item, items.Item);
        if (json is not JsonObject thing)
            return;
        foreach (var field in Forms.FieldsOf(form, thing))
            if (thing[field.Name] is { } value)
                LeaveOutNulls(value, field.Form);
            else
                thing.Remove(field.Name);
    }

    private static bool Same(object? value, object? usual) =>
        value switch
        {
            null => true,
            Kept record => usual is not null && SameFields(record, usual),
            System.Collections.ICollection list => list.Count == 0,
            _ => value.Equals(usual),
        };

    private static bool SameFields(Kept record, object usual) =>
        record.Unknown is null or { Count: 0 }
        && Options
            .GetTypeInfo(record.GetType())
            .Properties.Where(p => !p.IsExtensionData && p.Get is not null)
            .All(p => Same(p.Get!(record), p.Get(usual)));
}
