using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Takes trees over into a job that has just the visits they need, one less, or some more.</summary>
/// <remarks>
/// Every visit becomes a setting, visited once. A part that need not match may be cut at any setting of its distance, so that
/// the search chooses among the visits there are and never makes more.
/// </remarks>
internal sealed class VisitReplanting : Replanting
{
    private readonly int _dropped;
    private readonly int[] _settings;

    private VisitReplanting(Trees from, Job to, int dropped, int[] settings)
        : base(from, to) => (_dropped, _settings) = (dropped, settings);

    /// <summary>A search that goes on from trees; null when a pinned sheet cannot be kept with so many visits.</summary>
    /// <param name="from">The trees.</param>
    /// <param name="dropped">The visit to do without, one of several of its distance; -1 for none.</param>
    /// <param name="spares">Distances that get a visit more each, in nanometres.</param>
    /// <param name="seed">For what the search draws by lot.</param>
    public static Search? Of(Trees from, int dropped, IReadOnlyList<long> spares, int seed)
    {
        var (plan, settings) = VisitSettings.Of(from, dropped, spares);
        var job = VisitSettings.WithChoice(JobReader.Read(from.Job.Request, plan));
        if (job.Pinned.Count != from.Job.Pinned.Count)
            return null;
        var search = new Search(job, seed);
        new VisitReplanting(from, job, dropped, settings).Take(search.Layout, _ => true);
        return search;
    }

    /// <summary>The setting that its visit became.</summary>
    protected override int? SettingOf(Node node, Node parent)
    {
        var visit = From.Cuts.VisitOf(node);
        return visit == _dropped && visit >= 0 ? null
            : visit >= 0 ? _settings[visit]
            : Array.FindIndex([.. To.Distances], d => d == From.Job.Distances[node.Setting]);
    }

    /// <summary>The way it lies, cut at the settings that it and its strip are cut at.</summary>
    protected override Turn? TurnOf(Node leaf, int setting, Node strip)
    {
        var was = leaf.Turn!;
        bool Fits(Turn turn) => was.Along is null ? IsSame(turn, was, strip, setting) : IsRun(turn, was, strip);
        return To.Items[leaf.Item!.Id].Turns.FirstOrDefault(Fits);
    }

    private static bool IsSame(Turn turn, Turn was, Node strip, int setting) =>
        (turn.X, turn.Y, turn.Figure) == (was.X, was.Y, was.Figure)
        && turn.Setting(strip.Axis) == setting
        && (strip.Setting < 0 || turn.Setting(strip.Axis.Other()) == strip.Setting);

    private bool IsRun(Turn turn, Turn was, Node strip) =>
        turn.Along?.Axis == was.Along!.Axis
        && IsSameRun(was, turn)
        && turn.Setting(strip.Axis.Other()) == strip.Setting
        && was.Along.Segments.SelectMany(s => s)
            .Zip(turn.Along.Segments.SelectMany(s => s))
            .All(m => _settings[From.Cuts.VisitOf(m.First)] == m.Second.Setting);
}
