using System.Globalization;
using System.Text.Json.Nodes;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Records;

/// <summary>Puts a typed text into a field of a record that stands as JSON.</summary>
public static class FieldEdit
{
    /// <summary>Changes the field a path leads to, or says why it cannot be changed.</summary>
    /// <param name="top">The record, changed in place; records left out on the way are added.</param>
    /// <param name="form">Its form.</param>
    /// <param name="path">The field.</param>
    /// <param name="text">What was typed; nothing takes a field away that can be left out.</param>
    public static Refusal? Set(JsonObject top, Form form, string path, string text)
    {
        var place = new Place(top, form, null);
        foreach (var step in path.Split('/'))
        {
            var next = place.Json is JsonArray list ? Into(list, place.Form, step) : Into(place, step);
            if (!next.Take(out place, out var refusal))
                return refusal with { Field = path };
        }
        return Put(place, text) is { } wrong ? wrong with { Field = path } : null;
    }

    /// <summary>A place on the way: what stands there, its form, and how to put something else there.</summary>
    private sealed record Place(JsonNode? Json, Form Form, Action<JsonNode?>? Replace, bool Required = true);

    private static Outcome<Place> Into(JsonArray list, Form form, string step)
    {
        var index = FieldPath.IndexOf(list, step);
        var keys = list.Select((item, i) => FieldPath.KeyOf(item, i));
        return index < 0
            ? new Refusal($"There is no \"{step}\" in this list.{Listed("It holds", keys)}")
            : new Place(list[index], ((Form.ListOf)form).Item, value => list[index] = value);
    }

    private static Outcome<Place> Into(Place place, string step)
    {
        var fields = place.Json is JsonObject thing ? Forms.FieldsOf(place.Form, thing) : [];
        if (fields.FirstOrDefault(known => known.Name == step) is not { } field)
            return new Refusal($"There is no field \"{step}\" here.{Listed("There are", fields.Select(f => f.Name))}");
        var json = place.Json!.AsObject();
        if (json[step] is null && field.Form is Form.Record)
            json[step] = new JsonObject();
        if (json[step] is null && field.Form is Form.ListOf)
            json[step] = new JsonArray();
        return new Place(json[step], field.Form, value => Replace(json, step, value), field.Required);
    }

    private static void Replace(JsonObject json, string step, JsonNode? value)
    {
        if (value is null)
            json.Remove(step);
        else
            json[step] = value;
    }

    private static Refusal? Put(Place place, string text)
    {
        if (place.Form is Form.Record or Form.OneOf or Form.ListOf)
            return new("This holds several fields: name the one to change.");
        if (place.Form is Form.Plan)
            return new(
                "A plan that is issued or kept never moves: withdraw it, or let it change, to cut from another."
            );
        var isFree = place.Form is Form.Text { RefersTo: null };
        var typed = isFree ? text : text.Trim();
        if (typed.Length == 0 && place.Required && !isFree)
            return new($"This cannot be left empty: write {place.Form.InWords}.");
        if (!JsonOf(place.Form, typed).Take(out var json, out var wrong))
            return wrong;
        place.Replace!(typed.Length == 0 && !place.Required ? null : json);
        return null;
    }

    private static Outcome<JsonNode> JsonOf(Form form, string text)
    {
        if (form is Form.Size && text.Length > 0 && !Formula.Read(text).Take(out _, out var unread))
            return unread;
        JsonNode json = form switch
        {
            Form.Count when int.TryParse(text, CultureInfo.InvariantCulture, out var count) => count,
            Form.Number when decimal.TryParse(text, CultureInfo.InvariantCulture, out var number) => number,
            Form.YesNo when text is "yes" or "true" => true,
            Form.YesNo when text is "no" or "false" => false,
            _ => text,
        };
        return text.Length > 0 && FormCheck.Of(json, form).FirstOrDefault() is { } wrong ? wrong : json;
    }

    private static string Listed(string start, IEnumerable<string> names) =>
        string.Join(", ", names) is { Length: > 0 } all ? $" {start} {all}." : "";
}
