using System.Security.Cryptography;
using System.Text;
using Nookwright.Cutting;

namespace Nookwright.Web.Sessions;

/// <summary>What tells the cuts of one plan from those of another: a stamp for each round, made of everything that is cut up to it.</summary>
/// <remarks>A later round that is added leaves the stamps of the rounds before it as they are, and so their ticks.</remarks>
/// <param name="plan">The plan, or null for none.</param>
public sealed class CutStamps(Plan? plan)
{
    private const int Bytes = 8;

    private readonly Lazy<IReadOnlyDictionary<int, string>> _byRound = new(() => Made(plan));

    /// <summary>The stamp of a round of the plan.</summary>
    public string Of(int round) => _byRound.Value.GetValueOrDefault(round, "");

    private static Dictionary<int, string> Made(Plan? plan)
    {
        var stamps = new Dictionary<int, string>();
        if (plan is null)
            return stamps;
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var round in RoundOfWork.Of(plan))
        {
            Take(hash, round.Sheets.Select(Written));
            Take(hash, round.Breakdown.Select(Written));
            Take(hash, round.Visits.SelectMany(visit => visit.Cuts).Select(Written));
            stamps[round.Number] = Stamp(hash);
        }
        return stamps;
    }

    // Field by field, so that a stamp stays the same when a newer program knows more of a cut.
    private static string Written(PlanSheet sheet) =>
        $"{sheet.Number} {sheet.Stock} {sheet.Length.Nanometres} {sheet.Width.Nanometres}";

    private static string Written(SawCut cut) =>
        $"{cut.Number} {cut.On} {cut.Along} {cut.From} {cut.Distance.Nanometres} {cut.Gives} {cut.Leaves}";

    private static void Take(IncrementalHash hash, IEnumerable<string> lines)
    {
        foreach (var line in lines)
            hash.AppendData(Encoding.UTF8.GetBytes(line + "\n"));
    }

    private static string Stamp(IncrementalHash hash) =>
        Convert.ToHexStringLower(hash.GetCurrentHash().AsSpan(0, Bytes));
}
