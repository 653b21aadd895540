namespace Nookwright.Planning;

/// <summary>The settings in an order that respects every "this one before that one", kept while such rules come and go.</summary>
/// <remarks>As long as there is no circle, every setting can be visited once.</remarks>
internal abstract class SettingOrder
{
    private const int MostDense = 600;

    /// <summary>No rules yet; where they leave it open, longer settings come first: long rips and crosscuts while the pieces are large.</summary>
    public static SettingOrder Of(Job job)
    {
        var ranks = new int[job.Settings.Count];
        var rank = 0;
        foreach (
            var setting in Enumerable.Range(0, ranks.Length).OrderByDescending(s => job.Distances[s]).ThenBy(s => s)
        )
            ranks[setting] = rank++;
        return Of(ranks);
    }

    /// <summary>No rules yet; where the rules leave it open, ranked as given.</summary>
    /// <param name="ranks">A permutation of 0 to the number of settings less one.</param>
    public static SettingOrder Of(IReadOnlyList<int> ranks) =>
        ranks.Count <= MostDense ? new DenseOrder(ranks) : new SparseOrder(ranks);

    /// <summary>The place of a setting in the order, from 0.</summary>
    public abstract int Rank(int setting);

    /// <summary>True when the rules put <paramref name="first"/> before <paramref name="then"/>, or when they are one setting.</summary>
    public abstract bool Reaches(int first, int then);

    /// <summary>True when a rule "first before then" closes no circle. A setting before itself is no rule at all.</summary>
    public bool Allows(int first, int then) => first == then || !Reaches(then, first);

    /// <summary>Adds a rule that <see cref="Allows"/> said yes to.</summary>
    public abstract void Add(int first, int then);

    /// <summary>Takes one mention of a rule back.</summary>
    public abstract void Remove(int first, int then);
}
