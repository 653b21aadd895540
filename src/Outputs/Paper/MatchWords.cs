using Nookwright.Parts;

namespace Nookwright.Paper;

/// <summary>Match groups of one size whose reasons differ in one number only, told together.</summary>
/// <param name="Letters">The parts, with how many of each.</param>
/// <param name="Because">The reason, its numbers together.</param>
/// <param name="Groups">The groups.</param>
internal sealed record MatchWords(string Letters, string Because, IReadOnlyList<MatchGroup> Groups)
{
    /// <summary>The groups, in the order of their first.</summary>
    public static IEnumerable<MatchWords> Together(IEnumerable<MatchGroup> matches, JobWords words) =>
        from size in matches.GroupBy(m => (m.Size, m.ByHand))
        from alike in AlikeNames.Alike(size, m => m.Because)
        let parts = alike.Items.SelectMany(m => m.Sides).Select(s => s.Part).Distinct()
        select new MatchWords(JobWords.Counted(parts.Select(words.Letter)), alike.Told, alike.Items);
}
