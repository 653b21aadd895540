using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Writes a layout down as the plan a maker follows.</summary>
internal static class PlanWriter
{
    /// <summary>The plan of a layout, with findings for all that has no place in it.</summary>
    public static Plan Write(Job job, Layout layout)
    {
        var script = new Script(job);
        var visits = new VisitWriter(script, layout.Order);
        var breakdown = new BreakdownWriter(script);
        foreach (var pinned in job.Pinned)
            visits.Bring(new PinnedWriter(script, pinned));
        foreach (var sheet in layout.Sheets.Where(s => s.Count > 0 || s.HasHeld).OrderBy(s => s.Stock.Index))
        foreach (var (chunk, root) in breakdown.Write(sheet))
            visits.Bring(chunk, root);
        visits.Write();
        var waiting = layout.Waiting.Concat(layout.WaitingBlanks).ToList();
        var plan = script.Read([.. job.Findings, .. TooFew(job, waiting)], Dimensions(job, layout));
        return plan with { Findings = [.. plan.Findings, .. Cautions.Of(plan, job)] };
    }

    private static int Dimensions(Job job, Layout layout) =>
        job
            .Items.Except(layout.Waiting)
            .SelectMany(i => i.Parts)
            .Select(p => job.Request.Parts[p])
            .Concat(job.Pinned.SelectMany(p => p.Wish.Asked.Parts).Where(p => !p.IsHeld))
            .SelectMany(p => new[] { p.Length, p.Width })
            .Distinct()
            .Count();

    private static IEnumerable<Finding> TooFew(Job job, List<Item> waiting) =>
        waiting.GroupBy(i => i.Material).Select(g => MissingSheets.Of(job.Request, g.Key, [.. g]));
}
