using Nookwright.Cutting;

namespace Nookwright.Paper;

/// <summary>Cuts made one after the other from one workpiece without touching the fence: each goes on with what the last one left.</summary>
/// <param name="Cuts">At least one, in order.</param>
public sealed record CutChain(IReadOnlyList<SawCut> Cuts)
{
    /// <summary>The first cut.</summary>
    public SawCut First => Cuts[0];

    /// <summary>What the cuts give, in order.</summary>
    public IEnumerable<string> Gives => Cuts.Select(c => c.Gives).OfType<string>();

    /// <summary>What is left after the last cut; null when the kerf took it.</summary>
    public string? Leaves => Cuts[^1].Leaves;

    /// <summary>A visit's cuts, put into chains.</summary>
    public static IReadOnlyList<CutChain> Of(IEnumerable<SawCut> cuts)
    {
        var chains = new List<List<SawCut>>();
        foreach (var cut in cuts)
        {
            if (chains.Count > 0 && GoesOn(chains[^1][^1], cut))
                chains[^1].Add(cut);
            else
                chains.Add([cut]);
        }
        return [.. chains.Select(chain => new CutChain(chain))];
    }

    private static bool GoesOn(SawCut last, SawCut next) =>
        next.On == last.Leaves && (next.Kind, next.Along, next.From) == (last.Kind, last.Along, last.From);
}
