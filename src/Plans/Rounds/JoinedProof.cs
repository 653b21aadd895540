using Nookwright.Cutting;

namespace Nookwright.Rounds;

/// <summary>What is proven about several rounds together: each by itself, with what the rounds before it left.</summary>
internal static class JoinedProof
{
    /// <summary>The proof of some rounds; null where nothing is known about one of them.</summary>
    /// <param name="rounds">At least one.</param>
    public static PlanProof? Of(IReadOnlyList<CutRound> rounds)
    {
        var proofs = rounds.Select(r => r.Plan.Proof).OfType<PlanProof>().ToList();
        return proofs.Count < rounds.Count
            ? null
            : new(
                proofs[^1].Missing, // What an earlier round could not place is asked for again.
                [.. proofs.SelectMany(p => p.Rounds)],
                [.. proofs.SelectMany(p => p.Materials).GroupBy(m => (m.Material, m.Measure)).Select(Together)]
            );
    }

    /// <summary>A proof that was found for a round alone, as that of one round of several.</summary>
    /// <param name="alone">The proof.</param>
    /// <param name="number">The round's number.</param>
    /// <param name="materials">The materials there are; a blank, which was planned as one of its own, is bought already.</param>
    public static PlanProof Placed(PlanProof alone, int number, IReadOnlySet<string> materials) =>
        alone with
        {
            Rounds = [.. alone.Rounds.Select(r => r with { Round = number })],
            Materials = [.. alone.Materials.Where(m => materials.Contains(m.Material))],
        };

    private static MaterialProof Together(IEnumerable<MaterialProof> rounds)
    {
        var all = rounds.ToList();
        return all[0] with
        {
            Sheets = all.Sum(m => m.Sheets),
            SheetsAtLeast = all.Sum(m => m.SheetsAtLeast),
            Used = all.Sum(m => m.Used),
            AtLeast = all.Sum(m => m.AtLeast),
            Method = string.Join(", then ", all.Select(m => m.Method).Distinct()),
            Source = string.Join("; ", all.Select(m => m.Source).Distinct()),
        };
    }
}
