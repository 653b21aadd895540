using Nookwright.Cutting;

namespace Nookwright.Sawing;

/// <summary>Whether the rounds of a plan follow each other, and the plan as a whole is what its rounds say.</summary>
internal static class RoundsCheck
{
    /// <summary>The first number out of order, as a sentence; or null.</summary>
    public static string? Numbers(CutRound round, int number, int sheets, int visits)
    {
        if (round.Number != number)
            return $"it is called round {round.Number}.";
        if (round.Plan.Visits.FirstOrDefault(v => v.Round != number) is { } strange)
            return $"visit {strange.Number} says that it is of round {strange.Round}.";
        for (var i = 0; i < round.Plan.Sheets.Count; i++)
            if (round.Plan.Sheets[i].Number != sheets + i + 1)
                return $"sheet {round.Plan.Sheets[i].Number} stands in place {sheets + i + 1}.";
        for (var i = 0; i < round.Plan.Visits.Count; i++)
            if (round.Plan.Visits[i].Number != visits + i + 1)
                return $"visit {round.Plan.Visits[i].Number} stands in place {visits + i + 1}.";
        return null;
    }

    /// <summary>What the plan says and its rounds do not, as a sentence; or null.</summary>
    public static string? Whole(Plan plan, IReadOnlyDictionary<string, Workpiece> records)
    {
        if (!plan.Sheets.SequenceEqual(plan.Rounds.SelectMany(r => r.Plan.Sheets)))
            return "The plan has other sheets than its rounds.";
        if (!plan.Visits.SequenceEqual(plan.Rounds.SelectMany(r => r.Plan.Visits)))
            return "The plan has other visits than its rounds.";
        if (!plan.Breakdown.SequenceEqual(plan.Rounds[0].Plan.Breakdown))
            return "The plan has another breakdown than its first round.";
        if (plan.Workpieces.Count != records.Count)
            return "The plan has other pieces than its rounds.";
        var moved = plan.Workpieces.FirstOrDefault(p =>
            !records.TryGetValue(p.Id, out var was) || !Place(p).Equals(Place(was))
        );
        return moved is null ? null : $"{moved.Id} is not where its round says.";
    }

    /// <summary>The first part without its piece, or with a final piece before its blank, as a sentence; or null.</summary>
    public static string? Parts(Plan plan, CutRequest request)
    {
        var made = RoundsOf(plan, WorkpieceUse.Part);
        var kept = RoundsOf(plan, WorkpieceUse.Held);
        if (made.FirstOrDefault(m => m.Any(round => kept[m.Key].Contains(round))) is { } same)
            return $"{same.Key} is kept and cut to size in one round.";
        var pieces = plan.Workpieces.Select(p => p.Part).OfType<string>().ToHashSet();
        var runs = request.Runs.Where(r => pieces.Contains(r.Id)).SelectMany(r => r.Parts);
        var excused = plan.Findings.SelectMany(f => f.About);
        HashSet<string> known = [.. pieces, .. runs, .. excused];
        var missing = request.Parts.FirstOrDefault(p => !known.Contains(p.Id));
        return missing is null ? null : $"{missing.Id} comes out of no round, and no finding says why.";
    }

    private static ILookup<string, int> RoundsOf(Plan plan, WorkpieceUse use) =>
        plan
            .Rounds.SelectMany(r => r.Plan.Workpieces.Where(p => p.Use == use).Select(p => (p.Part, r.Number)))
            .ToLookup(p => p.Part ?? "", p => p.Number);

    private static object Place(Workpiece piece) => (piece.Sheet, piece.X, piece.Y, piece.Length, piece.Width);
}
