using System.Collections.Concurrent;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Nookwright.Measure;

namespace Nookwright.Records;

/// <summary>Works out the form of the document from its records, so that there is one place that says what a field is.</summary>
public static class Forms
{
    /// <summary>The name of the field that tells kinds of one thing apart.</summary>
    public const string Kind = "kind";

    private static readonly ConcurrentDictionary<Type, Form> Known = [];

    /// <summary>The form of a record.</summary>
    public static Form Of(Type record) => Known.GetOrAdd(record, Describe);

    /// <summary>The form of a record.</summary>
    public static Form.Record Of<T>()
        where T : Kept => (Form.Record)Of(typeof(T));

    /// <summary>The names of the fields a record has, as written in the file.</summary>
    public static IEnumerable<string> NamesIn(Kept record) =>
        ((Form.Record)Of(record.GetType())).Fields.Select(field => field.Name);

    /// <summary>The fields a thing with a form has; none for what is no record or of no known kind.</summary>
    internal static IReadOnlyList<FormField> FieldsOf(Form form, JsonObject thing) =>
        form switch
        {
            Form.Record record => record.Fields,
            Form.OneOf kinds => kinds.Kinds.FirstOrDefault(kind => kind.Key == (string?)thing[Kind]).Value?.Fields
                ?? [],
            _ => [],
        };

    private static Form Describe(Type record)
    {
        var type = RecordJson.Options.GetTypeInfo(record);
        return record.IsAbstract && type.PolymorphismOptions is { } kinds
            ? new Form.OneOf(record, [.. kinds.DerivedTypes.Select(KindOf)])
            : new Form.Record(record, [.. type.Properties.Where(p => !p.IsExtensionData).Select(FieldOf)]);
    }

    private static KeyValuePair<string, Form.Record> KindOf(JsonDerivedType kind) =>
        new((string)kind.TypeDiscriminator!, (Form.Record)Of(kind.DerivedType));

    private static FormField FieldOf(JsonPropertyInfo field)
    {
        var property = (PropertyInfo)field.AttributeProvider!;
        return new(field.Name, FormOf(property.PropertyType, property), field.IsRequired, property);
    }

    private static Form FormOf(Type given, PropertyInfo property)
    {
        var type = Nullable.GetUnderlyingType(given) ?? given;
        var range = property.GetCustomAttribute<RangeAttribute>();
        return type switch
        {
            _ when type == typeof(SizeText) => new Form.Size(),
            _ when type == typeof(string) => new Form.Text(property.GetCustomAttribute<RefersToAttribute>()?.List),
            _ when type == typeof(int) => range is null
                ? new Form.Count()
                : new Form.Count((int)range.Minimum, (int)range.Maximum),
            _ when type == typeof(decimal) => range is null
                ? new Form.Number()
                : new Form.Number((decimal)(double)range.Minimum, (decimal)(double)range.Maximum),
            _ when type == typeof(bool) => new Form.YesNo(),
            _ when type == typeof(DateOnly) => new Form.Day(),
            _ when type == typeof(JsonElement) => new Form.Plan(),
            { IsEnum: true } => new Form.Choice([.. Enum.GetNames(type).Select(WordOf)], type),
            { IsGenericType: true } => new Form.ListOf(FormOf(type.GetGenericArguments()[0], property)),
            _ when type.IsAssignableTo(typeof(Kept)) => Of(type),
            _ => throw new NotSupportedException($"{property} has no form in the document."),
        };
    }

    private static string WordOf(string member) => JsonNamingPolicy.KebabCaseLower.ConvertName(member);
}
