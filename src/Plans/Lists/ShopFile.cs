using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Records;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>Reads a shop's settings from a file of their own: the same fields as <c>shop</c> in a job.</summary>
/// <remarks><c>{ "tableSaw": { "kerf": "1/8 in", "ripReach": "30 in" }, "dressing": "1/4 in", "chunkLength": "8 ft" }</c></remarks>
public static class ShopFile
{
    /// <summary>What the saws take and reach; or what in the file cannot be read, with its line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, for messages.</param>
    /// <param name="bare">The unit of a length that has none, and whose defaults are taken.</param>
    public static Outcome<SawLimits> Read(string text, string file, LengthUnit bare)
    {
        var utf8 = Encoding.UTF8.GetBytes(text.TrimStart('\uFEFF'));
        if (!LinesOf(utf8).Take(out var lines, out var notJson))
            return notJson with { File = file };
        var json = JsonNode.Parse(utf8, documentOptions: Options);
        if (FormCheck.Of(json, Forms.Of<Workshop>()).FirstOrDefault() is { } misfit)
            return lines.Placed(misfit, file);
        var limits = ShopNumbers.LimitsOf(RecordJson.FromJson<Workshop>(json!.AsObject()), bare);
        return limits.Ok ? limits : lines.Placed(OfThisFile(limits.Refusal), file);
    }

    /// <summary>What is usual, where the shop says nothing.</summary>
    public static SawLimits Usual(LengthUnit unit) => ShopNumbers.LimitsOf(new Workshop(), unit).Value;

    private static JsonDocumentOptions Options =>
        new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>A job calls its shop's fields <c>shop/…</c>; here the shop is the whole file.</summary>
    private static Refusal OfThisFile(Refusal refusal) =>
        refusal with
        {
            Field =
                refusal.Field?.StartsWith("shop/", StringComparison.Ordinal) == true
                    ? refusal.Field[5..]
                    : refusal.Field,
        };

    private static Outcome<FieldLines> LinesOf(byte[] utf8)
    {
        try
        {
            return FieldLines.Of(utf8);
        }
        catch (JsonException stop)
        {
            return new Refusal(
                "This is not JSON from here on: look for a missing comma, quote or bracket; the whole file is { … } with the shop's fields.",
                Line: (int)(stop.LineNumber ?? 0) + 1
            );
        }
    }
}
