using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Settings made of the visits of trees.</summary>
internal static class VisitSettings
{
    private static readonly MatchedSide[] Both = [MatchedSide.Length, MatchedSide.Width];

    /// <summary>A setting, visited once, for each visit; and which visit became which.</summary>
    public static (SettingPlan Plan, int[] Settings) Of(Trees trees, int dropped, IReadOnlyList<long> spares)
    {
        List<PlannedSetting> settings = [];
        var numbers = new int[trees.Visits];
        for (var visit = 0; visit < trees.Visits; visit++)
        {
            numbers[visit] = settings.Count;
            if (visit != dropped)
                settings.Add(new(trees.DistanceOf(visit), IsKept: true));
        }
        settings.AddRange(spares.Select(distance => new PlannedSetting(distance, IsKept: true)));
        if (dropped >= 0)
            numbers[dropped] = settings.FindIndex(s => s.Distance == trees.DistanceOf(dropped));
        var sides = Sides(trees, settings, numbers);
        return (new(settings, sides, RunRules(trees, dropped, numbers)), numbers);
    }

    /// <summary>The same job where parts that need not match may be cut at any setting of their distance.</summary>
    public static Job WithChoice(Job job)
    {
        var same = Enumerable.Range(0, job.Settings.Count).ToLookup(s => job.Distances[s]);
        IEnumerable<int> Choice(int setting, bool isMatched) =>
            isMatched || setting < 0 ? [setting] : same[job.Distances[setting]].OrderByDescending(s => s == setting);
        Item WithTurns(Item item) =>
            new(item.Id, item.Material, item.Parts, [.. item.Turns.SelectMany(Turns)], item.Run);
        IEnumerable<Turn> Turns(Turn turn) =>
            turn.Along is not null
                ? [turn]
                : from x in Choice(turn.SetX, turn.MatchX)
                from y in Choice(turn.SetY, turn.MatchY)
                select turn with
                {
                    SetX = x,
                    SetY = y,
                };
        return new(
            job.Request,
            job.Saws,
            job.Stocks,
            job.Settings,
            [.. job.Items.Select(WithTurns)],
            job.Blanks,
            job.FirstRules,
            job.Findings
        )
        {
            Sides = job.Sides,
            CutsAll = job.CutsAll,
            Pinned = job.Pinned,
        };
    }

    /// <summary>What must be cut together is cut where it is now; the others begin at the first setting of their distance.</summary>
    private static int[] Sides(Trees trees, List<PlannedSetting> settings, int[] numbers)
    {
        var request = trees.Job.Request;
        var groups = new SideGroups(request);
        var visits = VisitsOfSides(trees);
        var ofGroup = new Dictionary<int, int>();
        var sides = Enumerable.Repeat(-1, request.Parts.Count * 2).ToArray();
        foreach (var part in Enumerable.Range(0, request.Parts.Count).Where(p => !request.Parts[p].IsHeld))
        foreach (var side in Both)
        {
            var key = SettingPlan.Key(part, side);
            var any = settings.FindIndex(s => s.Distance == request.Parts[part].Size(side).Nanometres);
            var now = visits.TryGetValue(key, out var visit) ? numbers[visit] : any;
            if (groups.Of(part, side) is { } group)
                now = ofGroup.TryAdd(group, now) ? now : ofGroup[group];
            sides[key] = now;
        }
        return sides;
    }

    /// <summary>The visit that gives each side its size, where one does.</summary>
    private static Dictionary<int, int> VisitsOfSides(Trees trees)
    {
        var parts = trees.Job.Request.Parts;
        var visits = new Dictionary<int, int>();
        void Note(int part, long size, int visit)
        {
            foreach (var side in Both.Where(s => visit >= 0 && parts[part].Size(s).Nanometres == size))
                visits.TryAdd(SettingPlan.Key(part, side), visit);
        }
        foreach (var (key, visit) in trees.Cuts.PinnedSides)
            visits.TryAdd(key, visit);
        foreach (var leaf in trees.Sheets.SelectMany(s => s.Roots).SelectMany(r => r.Leaves()))
        {
            var strip = leaf.Parent!;
            foreach (var part in leaf.Item!.Parts.Where(_ => strip.Setting >= 0))
                Note(part, leaf.Turn!.Size(strip.Axis.Other()), trees.Cuts.VisitOf(strip));
            if (leaf.Setting >= 0)
                Note(leaf.Item.Parts[0], leaf.Turn!.Size(strip.Axis), trees.Cuts.VisitOf(leaf));
            foreach (var member in leaf.Turn!.Along?.Segments.SelectMany(s => s) ?? [])
                Note(member.Part, member.Size, trees.Cuts.VisitOf(member));
        }
        return visits;
    }

    /// <summary>Neighbours in a run keep the order they are cut in.</summary>
    private static List<(int First, int Then)> RunRules(Trees trees, int dropped, int[] numbers) =>
        [
            .. trees
                .Sheets.SelectMany(s => s.Roots)
                .SelectMany(r => r.Leaves())
                .Select(l => l.Turn!.Along)
                .OfType<RunLine>()
                .SelectMany(line => line.Segments.SelectMany(s => s).Zip(line.Segments.SelectMany(s => s).Skip(1)))
                .Select(pair => (trees.Cuts.VisitOf(pair.First), trees.Cuts.VisitOf(pair.Second)))
                .Where(v => v.Item1 != v.Item2 && v.Item1 != dropped && v.Item2 != dropped)
                .Select(v => (numbers[Math.Min(v.Item1, v.Item2)], numbers[Math.Max(v.Item1, v.Item2)]))
                .Distinct(),
        ];
}
