using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Paper;

namespace Nookwright.Cli;

/// <summary>A cutting plan in plain text: sheets and their breakdown, then the visits in order.</summary>
/// <param name="plan">The plan.</param>
/// <param name="request">What was asked for.</param>
public sealed class PlanText(Plan plan, CutRequest request)
{
    private readonly LengthFormat _lengths = LengthFormat.Of(request.Units);
    private readonly LoosePieces _loose = LoosePieces.Of(plan);
    private readonly Dictionary<string, Workpiece> _workpieces = plan.Workpieces.ToDictionary(w => w.Id);
    private readonly Dictionary<string, CutPart> _parts = request.Parts.ToDictionary(p => p.Id);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() =>
        [Summary(), .. Said(), "", .. plan.Rounds.Count > 0 ? new RoundsText(plan).Lines() : Body(), .. Joints()];

    /// <summary>The lines after the summary.</summary>
    public IEnumerable<string> Body() => [.. Sheets(), .. LeftBefore(), .. plan.Visits.SelectMany(Visit)];

    /// <summary>The track saw's work on what an earlier round left.</summary>
    private IEnumerable<string> LeftBefore()
    {
        foreach (var left in request.Stock.Where(s => s.LeftAs is not null))
        {
            bool IsOfIt(string piece) =>
                piece == left.LeftAs || piece.StartsWith($"{left.LeftAs}-", StringComparison.Ordinal);
            var cuts = plan.Breakdown.Where(c => IsOfIt(c.On)).ToList();
            if (cuts.Count == 0)
                continue;
            yield return $"Piece {left.LeftAs}, left before: {left.Material}, {Size(left.Length)} x {Size(left.Width)}";
            foreach (var cut in cuts)
                yield return $"  {cut.Number}. {Say(cut)}";
            yield return "";
        }
    }

    private string Summary() =>
        $"{JobWords.Count(plan.Sheets.Count, "sheet")}, {JobWords.Count(plan.Visits.Count, "visit")} for "
        + $"{JobWords.Count(plan.DimensionsNow, "distinct dimension")}, {JobWords.Count(plan.Cuts.Count(), "cut")}, at most {JobWords.Count(_loose.Most, "loose piece")}; executed by the virtual saw.";

    private IEnumerable<string> Said() =>
        new[]
        {
            plan.Proof?.Sentence,
            plan.Findings.FirstOrDefault(f => f.Rule == "cutting.box-by-box")?.Message,
        }.OfType<string>();

    private string Lifted(PlanSheet sheet) =>
        _loose.Lifts.TryGetValue(sheet.Number, out var visit) ? $"; break it down for visit {visit}" : "";

    private IEnumerable<string> Sheets()
    {
        foreach (var sheet in plan.Sheets)
        {
            yield return $"Sheet {sheet.Number}: {sheet.Material}, {Size(sheet.Length)} x {Size(sheet.Width)}, its figure to the right{Lifted(sheet)}";
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
        var verb = cut.Kind == CutKind.Dressing ? "dress" : "cut";
        var gives = cut.Gives is { } g && cut.Kind != CutKind.Dressing ? $", gives {Name(g)}" : "";
        var leaves = cut.Leaves is { } l ? $", leaves {Name(l)}" : "";
        var distance = cut.Kind == CutKind.Dressing ? "" : $" {Size(cut.Distance)}";
        return $"{verb} {Name(cut.On)}{distance} from its {CutWords.Edge(cut.Along, cut.From)}{gives}{leaves}";
    }

    private string Name(string id)
    {
        var workpiece = _workpieces[id];
        if (workpiece.Part is null || !_parts.TryGetValue(workpiece.Part, out var part))
            return workpiece.Part is null ? id : $"{id}, for running grain {workpiece.Part}";
        return part.Name == part.Letter ? part.Letter : $"{part.Letter} ({part.Name})";
    }

    /// <summary>What a held blank waits for; a running grain waits for whatever one of its parts waits for.</summary>
    private string Awaited(Workpiece held) => string.Join(" and ", For(held).SelectMany(p => p.Awaits).Distinct());

    private IEnumerable<CutPart> For(Workpiece held)
    {
        var run = request.Runs.FirstOrDefault(r => r.Id == held.Part);
        return request.Parts.Where(p => p.Id == held.Part || run?.Parts.Contains(p.Id) == true);
    }

    /// <summary>What becomes of the figure of each running grain, from part to part.</summary>
    private IEnumerable<string> Joints()
    {
        foreach (var run in RunJoint.Of(plan, request).GroupBy(j => j.Run))
        {
            yield return $"Running grain {run.Key}";
            foreach (var joint in run)
                yield return $"  {Part(joint.Before)} to {Part(joint.After)}: {joint.Say(Size)}";
            yield return "";
        }
    }

    private string Part(string id) =>
        _parts[id] is var part && part.Name == part.Letter ? part.Id : $"{part.Letter} ({part.Name})";

    private string Size(Length length) => _lengths.PrintInFull(length);
}
