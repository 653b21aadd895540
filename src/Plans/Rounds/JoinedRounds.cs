using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Rounds;

/// <summary>Rounds as the one plan they make.</summary>
internal static class JoinedRounds
{
    /// <summary>The plan of some rounds.</summary>
    /// <param name="rounds">At least one.</param>
    /// <param name="spares">Parts, each with its round, that were cut and are not asked for any more.</param>
    public static Plan Of(IReadOnlyList<CutRound> rounds, IReadOnlySet<(int Round, string Part)> spares)
    {
        var cutLater = rounds.Skip(1).SelectMany(r => r.Plan.Cuts).Select(c => c.On).ToHashSet();
        Workpiece Now(Workpiece piece, int round) =>
            piece switch
            {
                { Use: WorkpieceUse.Held or WorkpieceUse.Offcut } when cutLater.Contains(piece.Id) => piece with
                {
                    Use = WorkpieceUse.Chunk,
                    Part = null,
                },
                { Use: WorkpieceUse.Held, Part: { } kept } when spares.Contains((round, kept)) => piece with
                {
                    Use = WorkpieceUse.Offcut,
                    Part = null,
                },
                { Use: WorkpieceUse.Part, Part: { } part } when spares.Contains((round, part)) => piece with
                {
                    Part = SpareId(part, round),
                },
                _ => piece,
            };
        return new(
            [.. rounds.SelectMany(r => r.Plan.Sheets)],
            [.. rounds.SelectMany(r => r.Plan.Workpieces.Select(p => Now(p, r.Number)))],
            rounds[0].Plan.Breakdown,
            [.. rounds.SelectMany(r => r.Plan.Visits)],
            [.. rounds.SelectMany(Findings).DistinctBy(f => (f.Rule, f.Message))],
            rounds.Sum(r => r.Plan.DimensionsNow)
        )
        {
            Rounds = rounds,
            Proof = JoinedProof.Of(rounds),
        };
    }

    /// <summary>What rounds were asked for together: of a part that two of them were asked for, the later.</summary>
    public static CutRequest Asked(IReadOnlyList<CutRound> rounds)
    {
        var last = rounds[^1].Asked;
        var excused = rounds
            .SelectMany(r => r.Plan.Findings)
            .Where(IsAboutNoPlace)
            .SelectMany(f => f.About)
            .ToHashSet();
        return last with
        {
            Parts =
            [
                .. rounds
                    .Reverse()
                    .SelectMany(r => r.Asked.Parts)
                    .DistinctBy(p => p.Id)
                    .Where(p => !excused.Contains(p.Id)),
            ],
            Matches = [],
            Runs = [.. rounds.Reverse().SelectMany(r => r.Asked.Runs).DistinctBy(r => r.Id)],
            Stock = [.. rounds.SelectMany(r => r.Asked.Stock).DistinctBy(s => s.Id)],
            Apart = [],
        };
    }

    /// <summary>What a part that was issued and is no longer asked for goes by.</summary>
    public static string SpareId(string part, int round) => $"{part} (round {round})";

    /// <summary>What an issued round could not place is asked for again, and so told by the round after.</summary>
    private static IEnumerable<Finding> Findings(CutRound round) =>
        round.Plan.Findings.Where(f => !(round.IsIssued && IsAboutNoPlace(f)));

    private static bool IsAboutNoPlace(Finding finding) => finding.Severity == Severity.MustMend;
}
