namespace Nookwright.Planning;

/// <summary>Two searches side by side, each with lots of its own, that share what they find.</summary>
/// <remarks>
/// They work for the same number of steps, then wait for each other; the better layout, or the first of equals, is where both
/// go on. So the outcome depends on steps alone and not on which core was faster.
/// </remarks>
internal sealed class Team
{
    private const int Members = 2;
    private const int FirstShift = 2_000;
    private const int LongestShift = 50_000;
    private const int SeedStep = 1_000;
    private const int ManyItems = 1_000;

    // So that no material waits for the end of another's search, they take turns, at first short ones.
    private const int FirstRound = 50_000;

    // Beyond this many items the finish hardly ever closes in the steps it may take.
    private const int MostToFinish = 300;

    // Measured on some hundred jobs, the finish seldom finds what the search has not: only a long search is worth its second.
    private const int LeastToFinish = 100_000;

    // Of the solver's own time, which is steps and not seconds.
    private const double FinishSeconds = 1;

    private readonly Job _job;
    private readonly Action<Candidate> _report;
    private readonly List<Search> _searches;
    private Candidate _best;
    private long _taken;

    public Team(Job job, Candidate first, Action<Candidate> report)
    {
        (_job, _best, _report) = (job, first, report);
        var seed = job.Request.Rules.Seed;
        _searches =
        [
            .. Enumerable.Range(0, Members).Select(i => Search.From(job, seed + (SeedStep * i), first.Layout)),
        ];
    }

    /// <summary>The best plan found.</summary>
    /// <param name="steps">How many steps each of them may take, for all materials together.</param>
    /// <param name="goal">The cost of a material's sheets at which nothing better is to be had, as known after so many steps.</param>
    /// <param name="stop">Ends the search early, with what has been found.</param>
    public Candidate Improve(int steps, Func<string, long, long> goal, CancellationToken stop)
    {
        for (var round = FirstRound; steps > 0 && !stop.IsCancellationRequested; round *= 2)
        {
            var open = _job.Items.GroupBy(i => i.Material).Where(g => CostOf(g.Key) > goal(g.Key, _taken)).ToList();
            if (open.Count == 0)
                break;
            var now = open.Count == 1 || steps < 2 * round ? steps : round;
            foreach (var material in open)
            {
                var share = (double)material.Count() / open.Sum(m => m.Count());
                Improve(material.Key, (int)Math.Ceiling(now * share), goal, stop);
            }
            steps -= now;
        }
        return _best;
    }

    /// <summary>What the sheets of a material cost; the largest number while an item has no place.</summary>
    private long CostOf(string material) =>
        _best.Layout.Waiting.Any(i => i.Material == material)
            ? long.MaxValue
            : _best
                .Layout.Sheets.Where(s => s.Stock.Material == material && !s.IsClosed)
                .Sum(s => _job.CostOf(s.Stock));

    private void Improve(string material, int steps, Func<string, long, long> goal, CancellationToken stop)
    {
        var members = _searches.Select(s => s.Rework(material)).ToList();
        var cost = members[0].BestCost;
        var longest = _job.Items.Count > ManyItems ? 8 * LongestShift : LongestShift;
        if (_job.Items.Count <= MostToFinish && steps >= LeastToFinish)
            foreach (var member in members)
                member.Pool = new(_job, material, _best.Plan.Sheets.Count(s => s.Material == material));
        for (var shift = FirstShift; steps > 0 && !stop.IsCancellationRequested; )
        {
            var content = goal(material, _taken);
            if (cost <= content)
                break;
            var now = Math.Min(shift, steps);
            Parallel.ForEach(members, member => member.Run(now, content, stop));
            steps -= now;
            _taken += now;
            shift = Math.Min(2 * shift, longest);
            var winner = members.MinBy(m => m.BestCost)!;
            if (winner.BestCost >= cost)
                continue;
            cost = winner.BestCost;
            foreach (var member in members.Where(m => m.BestCost > cost))
                member.Adopt(winner.Best);
            Keep(winner.Best);
        }
        if (Finished(members, material, cost, goal, stop) is { } better)
            foreach (var member in members)
                member.Adopt(better);
        foreach (var member in members)
            member.Finish();
    }

    /// <summary>What the exact finish makes of the sheets the members came by, where the goal is not met.</summary>
    private Picture? Finished(
        List<RuinAndRecreate> members,
        string material,
        long cost,
        Func<string, long, long> goal,
        CancellationToken stop
    )
    {
        if (cost == long.MaxValue || members[0].Pool is null || cost <= goal(material, _taken))
            return null;
        var best = members.MinBy(m => m.BestCost)!.Best;
        var better = new ExactFinish(_job, new ExactChooser(FinishSeconds)).Better(
            best,
            [.. members.Select(m => m.Pool!)],
            material,
            stop
        );
        if (better is not null)
            Keep(better);
        return better;
    }

    private void Keep(Picture picture)
    {
        var layout = new Layout(_job);
        layout.Restore(picture);
        layout.WaitingBlanks.AddRange(_best.Layout.WaitingBlanks);
        var candidate = Candidate.Of(_job, layout);
        if (candidate.Score.CompareTo(_best.Score) >= 0)
            return;
        _best = candidate with { IsKept = _best.IsKept };
        _report(candidate);
    }
}
