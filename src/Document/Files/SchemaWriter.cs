using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Nookwright.Projects;
using Nookwright.Records;

namespace Nookwright.Files;

/// <summary>Writes the JSON Schema (draft 2020-12) of the document from its records and what is said about them in the code.</summary>
/// <remarks>
/// The schema describes what is written; reading takes a little more (comments, trailing commas, null for a field left
/// out). What must hold beyond form (<see cref="ProjectChecks"/>) is not in it. Fields that are not known are allowed
/// everywhere, for they are kept.
/// </remarks>
public sealed partial class SchemaWriter
{
    private readonly Dictionary<string, string> _summaries;
    private readonly Dictionary<string, JsonObject> _definitions = [];

    private SchemaWriter(XDocument comments) =>
        _summaries = comments
            .Descendants("member")
            .Where(member => member.Element("summary") is not null)
            .ToDictionary(member => member.Attribute("name")!.Value, member => Plain(member.Element("summary")!));

    /// <summary>The schema as text.</summary>
    /// <param name="comments">The documentation of this assembly, as the compiler writes it beside it.</param>
    public static string Write(XDocument comments) => JsonLayout.Write(new SchemaWriter(comments).Document());

    private JsonObject Document()
    {
        var top = FieldsOf(Forms.Of<Project>());
        var fields = top["properties"]!.AsObject();
        Narrow(fields, "format", new Project().Format);
        Narrow(fields, "version", Migrations.Known.Newest);
        _definitions["size"] = Size();
        return new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = $"Nookwright job, version {Migrations.Known.Newest}",
            ["description"] = About(typeof(Project)),
            ["type"] = "object",
            ["properties"] = fields.DeepClone(),
            ["required"] = top["required"]!.DeepClone(),
            ["$defs"] = Named(_definitions.OrderBy(d => d.Key, StringComparer.Ordinal).Select(d => (d.Key, d.Value))),
        };
    }

    private static void Narrow(JsonObject fields, string name, JsonNode value) =>
        fields[name] = new JsonObject
        {
            ["description"] = fields[name]!["description"]!.DeepClone(),
            ["const"] = value,
        };

    private static JsonObject Size() =>
        new()
        {
            ["description"] =
                "A length as a maker writes it (23 3/4 in, 603.5 mm, 8' 2 3/16\"), a plain number in the document's unit, or a formula.",
            ["type"] = new JsonArray("string", "number"),
            ["pattern"] = "\\S",
        };

    private JsonObject FieldsOf(Form.Record record, string? kind = null)
    {
        var required = record.Fields.Where(field => field.Required).Select(field => field.Name);
        var fields = Named(record.Fields.Select(field => (field.Name, OfField(field))));
        if (kind is not null)
            fields.Insert(0, Forms.Kind, new JsonObject { ["const"] = kind });
        return new()
        {
            ["description"] = About(record.Type),
            ["type"] = "object",
            ["properties"] = fields,
            ["required"] = Words(kind is null ? required : required.Prepend(Forms.Kind)),
        };
    }

    private JsonObject OfField(FormField field)
    {
        var property = field.Property;
        var schema = new JsonObject
        {
            ["description"] = _summaries[$"P:{property.DeclaringType!.FullName}.{property.Name}"],
        };
        foreach (var (name, value) in Of(field.Form))
            schema[name] = value?.DeepClone();
        return schema;
    }

    private JsonObject Of(Form form) =>
        form switch
        {
            Form.Size => Reference("size"),
            Form.Text => new() { ["type"] = "string" },
            Form.YesNo => new() { ["type"] = "boolean" },
            Form.Day => new() { ["type"] = "string", ["format"] = "date" },
            Form.Count count => Bounded("integer", count.Least, count.Most),
            Form.Number number => Bounded("number", number.Least, number.Most),
            Form.Choice choice => new() { ["enum"] = Words(choice.Words) },
            Form.Plan => new()
            {
                ["type"] = "object",
                ["properties"] = new JsonObject { ["format"] = new JsonObject { ["const"] = "nookwright-plan" } },
                ["required"] = Words(["format"]),
            },
            Form.ListOf list => new() { ["type"] = "array", ["items"] = Of(list.Item) },
            Form.Record record => Defined(NameOf(record.Type), () => FieldsOf(record)),
            Form.OneOf kinds => Defined(NameOf(kinds.Type), () => OfKinds(kinds)),
            _ => throw new NotSupportedException($"{form} has no schema."),
        };

    private JsonObject OfKinds(Form.OneOf kinds) =>
        new()
        {
            ["description"] = About(kinds.Type),
            ["oneOf"] = new JsonArray([
                .. kinds.Kinds.Select(kind => Defined(NameOf(kind.Value.Type), () => FieldsOf(kind.Value, kind.Key))),
            ]),
        };

    private JsonObject Defined(string name, Func<JsonObject> make)
    {
        if (!_definitions.ContainsKey(name))
            _definitions[name] = make();
        return Reference(name);
    }

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject Bounded(string type, JsonNode least, JsonNode most) =>
        new()
        {
            ["type"] = type,
            ["minimum"] = least,
            ["maximum"] = most,
        };

    private static JsonObject Named(IEnumerable<(string Name, JsonObject Schema)> members) =>
        new(members.Select(member => KeyValuePair.Create<string, JsonNode?>(member.Name, member.Schema)));

    private static JsonArray Words(IEnumerable<string> words) => new([.. words.Select(word => JsonValue.Create(word))]);

    private static string NameOf(Type type) => JsonNamingPolicy.KebabCaseLower.ConvertName(type.Name);

    private string About(Type type) => _summaries[$"T:{type.FullName}"];

    private static string Plain(XElement summary)
    {
        var words = summary.Nodes().Select(node => node is XElement element ? WordsOf(element) : node.ToString());
        return Spaces().Replace(string.Concat(words), " ").Trim();
    }

    private static string WordsOf(XElement element) =>
        element.Attribute("cref")?.Value is { } code
            ? JsonNamingPolicy.CamelCase.ConvertName(code[(code.LastIndexOf('.') + 1)..])
            : element.Value;

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
