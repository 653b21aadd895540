using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Lists;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Rounds;
using Nookwright.Shop;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Flow;

/// <summary>The steps from a document to its workbook, in order.</summary>
internal static class WorkbookSteps
{
    /// <summary>Everything but the plan.</summary>
    public static Workbook Run(Project project)
    {
        var room = Room.Of(project);
        var builtIn = BuiltIn.Of(project, room);
        var (issued, unread) = Issued(project);
        var parts = IssuedLetters.Kept(PartList.Of(builtIn, project), issued);
        var (request, shop) = Request(project, parts);
        var changes = issued is null ? null : Changes.Of(issued, request);
        var unknown = UnknownFields.Of(project);
        Finding[] findings =
        [
            .. unknown,
            .. room.Findings,
            .. builtIn.Findings,
            .. parts.Findings,
            .. shop,
            .. unread,
            .. changes?.Warnings ?? [],
        ];
        return new(project, room, builtIn, parts, changes?.Whole ?? request, Plan: null, OnceEach(findings))
        {
            Issued = issued,
        };
    }

    /// <summary>The same workbook with a plan and what planning found, instead of any plan before.</summary>
    public static Workbook Planned(Workbook workbook, Plan plan) =>
        workbook with
        {
            Plan = plan,
            Findings = OnceEach([.. workbook.Findings.Except(workbook.Plan?.Findings ?? []), .. plan.Findings]),
        };

    private static (IssuedPlan? Issued, IEnumerable<Finding> Unread) Issued(Project project)
    {
        if (project.Issued.Count == 0)
            return (null, []);
        return IssuedPlan.Read(project.Issued).Take(out var issued, out var refusal)
            ? (issued, [])
            : (null, [Unreadable(refusal) with { Rule = "cutting.issued-plan-not-read" }]);
    }

    private static (CutRequest Request, IEnumerable<Finding> Findings) Request(Project project, PartList parts)
    {
        var saws = ShopNumbers.LimitsOf(project.Shop, project.Units, out var refusals);
        var sheets = project.Shop.Sheets.Select(good => ShopNumbers.SheetOf(good, project.Units)).ToList();
        var usable = sheets.Where(s => s.Ok).Select(s => s.Value).ToList();
        var pinned = project.Cutting.Sheets.Select(PinnedSheetJson.Read).ToList();
        var wrong = refusals.Concat(sheets.Where(s => !s.Ok).Select(s => s.Refusal));
        var unread = pinned
            .Where(p => !p.Ok)
            .Select(p => Unreadable(p.Refusal) with { Rule = "cutting.kept-sheet-not-read" });
        var request = JobRequest.Of(parts, usable, saws, project.Cutting) with
        {
            Units = project.Units,
            PinnedSheets = [.. pinned.Where(p => p.Ok).Select(p => p.Value)],
        };
        return (request, [.. wrong.Select(Unreadable), .. unread]);
    }

    private static Finding Unreadable(Refusal refusal) =>
        new("shop.size-not-read", Severity.MustMend, refusal.Message, [])
        {
            Field = refusal.Field,
            IsUnreadable = true,
        };

    private static IReadOnlyList<Finding> OnceEach(IReadOnlyList<Finding> findings) =>
        [.. findings.DistinctBy(f => (f.Rule, f.Message, f.Field)).OrderByDescending(f => f.Severity)];
}
