using System.Text.Json.Nodes;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>Sheets that are kept as they were planned, as a document has them: each a plan of its own.</summary>
public static class PinnedSheetJson
{
    /// <summary>A sheet as JSON.</summary>
    public static JsonObject Write(PinnedSheet sheet) => PlanJson.ToJson(sheet.Plan, sheet.Asked);

    /// <summary>A sheet, executed by the virtual saw as it was; or which field cannot be taken.</summary>
    /// <param name="pin">As the document has it.</param>
    public static Outcome<PinnedSheet> Read(SheetPin pin)
    {
        var field = $"cutting/sheets/{pin.Id}/plan";
        if (!PlanJson.Read(JsonObject.Create(pin.Plan)).Take(out var read, out var refusal))
            return refusal with { Field = $"{field}/{refusal.Field}" };
        return Trouble(read) is { } trouble
            ? new Refusal($"{trouble}: restore the file, or let this sheet change.", field)
            : new PinnedSheet(pin.Id, read.Plan, read.Request);
    }

    private static string? Trouble(ReadPlan read)
    {
        if (RequestSense.Trouble(read.Request) is { } nonsense)
            return nonsense;
        if (read.Plan.Sheets.Count != 1)
            return $"This is kept as one sheet, and the plan has {read.Plan.Sheets.Count}";
        return VirtualSaw.Run(read.Plan, read.Request).Why is { } why
            ? $"This sheet cannot be cut as it stands here: {why.TrimEnd('.')}"
            : null;
    }
}
