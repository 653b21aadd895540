using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Paper;

namespace Nookwright.Cli;

/// <summary>A cutting plan in plain text: sheets and their breakdown, then the visits in order.</summary>
/// <param name="plan">The plan.</param>
/// <param name="request">What was asked for.</param>
/// <param name="lengths">How lengths are shown.</param>
/// <param name="unit">What a length is written in when that would round it.</param>
public sealed class PlanText(Plan plan, CutRequest request, LengthFormat lengths, LengthUnit unit)
{
    private readonly Dictionary<string, Workpiece> _workpieces = plan.Workpieces.ToDictionary(w => w.Id);
    private readonly Dictionary<string, CutPart> _parts = request.Parts.ToDictionary(p => p.Id);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() => [Summary(), "", .. Sheets(), .. plan.Visits.SelectMany(Visit)];

    private string Summary() =>
        $"{JobWords.Count(plan.Sheets.Count, "sheet")}, {JobWords.Count(plan.Visits.Count, "visit")} for "
        + $"{JobWords.Count(plan.DimensionsNow, "distinct dimension")}, {JobWords.Count(plan.Cuts.Count(), "cut")}; executed by the virtual saw.";

    private IEnumerable<string> Sheets()
    {
        foreach (var sheet in plan.Sheets)
        {
            yield return $"Sheet {sheet.Number}: {sheet.Material}, {Size(sheet.Length)} x {Size(sheet.Width)}";
            foreach (var cut in plan.Breakdown.Where(c => _workpieces[c.On].Sheet == sheet.Number))
                yield return $"  {cut.Number}. {Say(cut)}";
            foreach (var held in plan.Workpieces.Where(w => w.Sheet == sheet.Number && w.Use == WorkpieceUse.Held))
                yield return $"  keep {Name(held.Id)} long, {Size(held.Length)} x {Size(held.Width)}, until {Awaited(held)} is read";
            yield return "";
        }
    }

    private IEnumerable<string> Visit(Visit visit)
    {
        var saw = SawInHand.Of(visit, id => _workpieces[id]);
        yield return $"Visit {visit.Number}: {saw} at {Size(visit.Setting)}";
        foreach (var cut in visit.Cuts)
            yield return $"  {cut.Number}. {Say(cut)}";
        yield return "";
    }

    private string Say(SawCut cut)
    {
        var axis = cut.Along == SheetAxis.Length ? "length" : "width";
        var from = cut.From == FromEdge.Low ? "low" : "high";
        var verb = cut.Kind == CutKind.Dressing ? "dress" : "cut";
        var gives = cut.Gives is { } g && cut.Kind != CutKind.Dressing ? $", gives {Name(g)}" : "";
        var leaves = cut.Leaves is { } l ? $", leaves {Name(l)}" : "";
        var distance = cut.Kind == CutKind.Dressing ? "" : $" {Size(cut.Distance)}";
        return $"{verb} {Name(cut.On)}{distance} from the {from} end of its {axis}{gives}{leaves}";
    }

    private string Name(string id)
    {
        var workpiece = _workpieces[id];
        if (workpiece.Part is null)
            return id;
        var part = _parts[workpiece.Part];
        return part.Name == part.Letter ? part.Letter : $"{part.Letter} ({part.Name})";
    }

    private string Awaited(Workpiece held) => held.Part is { } part ? string.Join(" and ", _parts[part].Awaits) : "?";

    private string Size(Length length) =>
        lengths.IsExact(length) ? lengths.Print(length) : LengthText.Write(length, unit);
}
