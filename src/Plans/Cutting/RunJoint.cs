using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>Where one part of a running grain follows another, and what becomes of the figure there.</summary>
/// <remarks>
/// On their strip the saw takes its kerf between the two; in place they stand a gap apart. Were the two equal, the figure would
/// run on as it grew; else it jumps by the difference. Parts that come from different strips have nothing of the figure in common.
/// </remarks>
/// <param name="Run">The run's id.</param>
/// <param name="Before">The id of the part before the joint.</param>
/// <param name="After">The id of the part after it.</param>
/// <param name="Lost">What the saw takes between them; null where they come from different strips and the figure starts anew.</param>
/// <param name="Gap">How far their cut edges stand apart in place; null when nobody says.</param>
public sealed record RunJoint(string Run, string Before, string After, Length? Lost, Length? Gap)
{
    /// <summary>True where the run goes on in another strip.</summary>
    public bool IsSplit => Lost is null;

    /// <summary>How far the figure jumps: kerf less gap, below zero where the gap is the wider; null when split or when the gap is not known.</summary>
    public Length? Jump => Lost - Gap;

    /// <summary>The joints of all runs, in order, between neighbours that are both cut to size; what waits has none yet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">What it was asked for.</param>
    public static IReadOnlyList<RunJoint> Of(Plan plan, CutRequest request)
    {
        var made = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).ToLookup(p => p.Part);
        var joints =
            from run in request.Runs
            from pair in run.Parts.Zip(run.Parts.Skip(1)).Index()
            let before = made[pair.Item.First].LastOrDefault()
            let after = made[pair.Item.Second].LastOrDefault()
            where before is not null && after is not null
            let lost = Between(before, after, request.Saws.TableKerf * MostKerfs)
            select new RunJoint(run.Id, before.Part!, after.Part!, lost, run.GapAfter(pair.Index));
        return [.. joints];
    }

    /// <summary>What becomes of the figure, as the second half of a sentence.</summary>
    /// <param name="size">How a length is said.</param>
    public string Say(Func<Length, string> size) =>
        (Lost, Gap) switch
        {
            (null, _) => "another strip: the figure starts anew",
            ({ } lost, null) => $"the saw takes {size(lost)} out of the figure",
            ({ } lost, { } gap) when lost == gap =>
                $"the figure runs on: the saw takes {size(lost)}, and the gap is as wide",
            ({ } lost, { } gap) =>
                $"the figure jumps {size((lost - gap).Abs())}: the saw takes {size(lost)}, and the gap is {size(gap)}",
        };

    // Where a strip is parted, the last part before that has a sizing cut of its own beside the parting cut.
    private const int MostKerfs = 2;

    /// <summary>How far apart two parts lay side by side in one strip, either way round; null when they did not.</summary>
    private static Length? Between(Workpiece one, Workpiece other, Length most)
    {
        if (one.Sheet != other.Sheet)
            return null;
        Length? along =
            (one.X, one.Length) == (other.X, other.Length) ? Apart(one.Y, one.Width, other.Y, other.Width)
            : (one.Y, one.Width) == (other.Y, other.Width) ? Apart(one.X, one.Length, other.X, other.Length)
            : null;
        return along is { IsNegative: false } lost && lost <= most ? lost : null;
    }

    private static Length Apart(Length at, Length size, Length otherAt, Length otherSize) =>
        Length.Max(otherAt - (at + size), at - (otherAt + otherSize));
}
