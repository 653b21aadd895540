using System.Text.Json.Nodes;
using CsCheck;
using Nookwright.Projects;
using Nookwright.Records;

namespace Nookwright.Tests;

/// <summary>Makes any job whatever that a person could write: every kind of piece, any field there or left out, strange fields everywhere.</summary>
public sealed class AnyJob
{
    private static readonly string[] Sizes =
    [
        "23 3/4 in",
        "603.5 mm",
        "8' 2 3/16\"",
        "12",
        "(room.w * 2 - 1/2 in) / 3",
        "1\u00a01/2",
    ];

    private static readonly string[] Texts =
    [
        "as taken",
        "Großes Brett, «links»",
        "two\nlines",
        "\\ and \"",
        "😀",
        " ",
    ];

    private readonly Random _lot;

    private AnyJob(int seed) => _lot = new(seed);

    /// <summary>Any job as the JSON of a file, defaults and unknown fields among it.</summary>
    public static Gen<JsonObject> Json { get; } = Gen.Int[0, int.MaxValue].Select(seed => new AnyJob(seed).Job());

    /// <summary>Any job.</summary>
    public static Gen<Project> Project { get; } = Json.Select(RecordJson.FromJson<Project>);

    private JsonObject Job()
    {
        var job = Record(Forms.Of<Project>(), "");
        job["format"] = "nookwright-job";
        job["version"] = 1;
        List(job, "pieces").Insert(0, Box());
        Name(List(job, "pieces"), "id", "piece");
        Name(List(job, "sizes"), "name", "size.");
        Name(List(job, "readings"), "name", "reading_");
        foreach (var list in (string[])["rows", "runs", "matches"])
            Name(List(job, list), "id", list);
        foreach (var list in (string[])["sheets", "edgings"])
            Name(List(Part(job, "shop"), list), "id", list);
        foreach (var list in (string[])["pins", "apart"])
            Name(List(Part(job, "cutting"), list), "id", list);
        foreach (var (index, sheet) in List(Part(job, "shop"), "sheets").Index())
            Name((sheet as JsonObject)?["stock"] as JsonArray ?? [], "id", $"stock{index}-");
        foreach (var list in (string[])["readings", "things"])
            Name(List(Part(job, "room"), list), "id", list);
        foreach (var (name, members) in List(job, "pieces").SelectMany(piece => piece!.AsObject()))
            Name(members as JsonArray ?? [], "id", name);
        foreach (var (index, round) in List(job, "issued").Index())
            round!["round"] = index + 1;
        if (StockIds(job).Count == 0)
            Part(job, "cutting").Remove("pins");
        Refer(job, Forms.Of<Project>(), job);
        Wish(job);
        return job;
    }

    /// <summary>A run may split only after one of its own panels but the last, and a part has one pin.</summary>
    private static void Wish(JsonObject job)
    {
        foreach (var run in List(job, "runs").OfType<JsonObject>().Where(run => run.ContainsKey("maySplitAfter")))
        {
            run["panels"] = new JsonArray("piece0.left-side", "piece0.right-side");
            run["maySplitAfter"] = new JsonArray("piece0.left-side");
        }
        foreach (var (index, pin) in List(Part(job, "cutting"), "pins").Index())
            pin!["panels"] = new JsonArray($"piece0.panel-{index}");
    }

    private static List<JsonNode> StockIds(JsonObject job) =>
        [
            .. List(Part(job, "shop"), "sheets")
                .OfType<JsonObject>()
                .SelectMany(sheet => sheet["stock"] as JsonArray ?? [])
                .Select(stock => stock!["id"]!),
        ];

    private JsonObject Box()
    {
        var box = Record(Forms.Of<Carcass>(), "");
        box.Insert(0, "kind", "carcass");
        return box;
    }

    private JsonNode? Of(Form form, string name) =>
        form switch
        {
            Form.Size => _lot.Next(5) == 0 ? JsonValue.Create(_lot.Next(1000)) : Any(Sizes),
            Form.Text => Any(Texts),
            Form.Choice choice => Any(choice.Words),
            Form.Count count => _lot.Next(count.Least, Math.Min(count.Most, 1000) + 1),
            Form.Number number => number.Least + (_lot.Next(0, 1000) * 0.01m),
            Form.YesNo => _lot.Next(2) == 0,
            Form.Day => new DateOnly(2026, 1, 1).AddDays(_lot.Next(700)).ToString("yyyy-MM-dd"),
            Form.Plan => JsonNode.Parse(
                """{ "format": "nookwright-plan", "version": 1, "plan": { "visits": [ { "setting": 600.000001 } ] }, "x-new": [null, "é"] }"""
            ),
            Form.ListOf list => new JsonArray([.. Enumerable.Range(0, _lot.Next(4)).Select(_ => Of(list.Item, name))]),
            Form.Record record => Record(record, name),
            Form.OneOf kinds => Kind(kinds.Kinds[_lot.Next(kinds.Kinds.Count)]),
            _ => throw new NotSupportedException(),
        };

    private JsonObject Kind(KeyValuePair<string, Form.Record> kind)
    {
        var json = Record(kind.Value, "");
        json.Insert(_lot.Next(json.Count + 1), "kind", kind.Key);
        return json;
    }

    private JsonObject Record(Form.Record record, string name)
    {
        var json = new JsonObject();
        foreach (var field in record.Fields)
            if (field.Required || _lot.Next(2) == 0)
                json[field.Name] = Of(field.Form, field.Name);
        if (_lot.Next(4) == 0)
            json["x-" + name] = JsonNode.Parse("""{ "kept": [1.50, null, "é", { "deep": true }], "n": 1e3 }""");
        return json;
    }

    private static void Name(JsonArray list, string field, string start)
    {
        foreach (var (index, item) in list.Index())
            if (item is JsonObject thing)
                thing[field] = $"{start}{index}";
    }

    /// <summary>Makes what names something else name something that is there.</summary>
    private void Refer(JsonNode? json, Form form, JsonObject job)
    {
        if (json is JsonArray list)
            foreach (var item in list)
                Refer(item, ((Form.ListOf)form).Item, job);
        if (json is not JsonObject thing)
            return;
        foreach (var field in FieldsOf(form, thing))
            if (field.Form is Form.Text { RefersTo: { } ids })
                thing[field.Name] = Known(ids, job);
            else if (field.Form is Form.ListOf { Item: Form.Text } && thing[field.Name] is JsonArray names)
                thing[field.Name] = new JsonArray([.. names.Take(1).Select(_ => Member(field.Name))]);
            else
                Refer(thing[field.Name], field.Form, job);
    }

    private static IReadOnlyList<FormField> FieldsOf(Form form, JsonObject thing) =>
        form switch
        {
            Form.OneOf kinds => kinds.Kinds.First(kind => kind.Key == thing["kind"]!.GetValue<string>()).Value.Fields,
            Form.Record record => record.Fields,
            _ => [],
        };

    private JsonNode? Known(string ids, JsonObject job)
    {
        if (ids == "pieces")
            return "piece0";
        if (ids == "shop/sheets/stock")
            return StockIds(job)[0].DeepClone();
        var list = job["shop"]?[ids["shop/".Length..]]?.AsArray() ?? [];
        return list.Count == 0 ? null : list[_lot.Next(list.Count)]!["id"]!.DeepClone();
    }

    private static JsonNode Member(string field) => field == "pieces" ? "piece0" : "piece0.left-side";

    private string Any(IReadOnlyList<string> words) => words[_lot.Next(words.Count)];

    private static JsonObject Part(JsonObject json, string name) => (json[name] ??= new JsonObject()).AsObject();

    private static JsonArray List(JsonObject json, string name) => (json[name] ??= new JsonArray()).AsArray();
}
