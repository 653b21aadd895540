using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>A distance that a saw's fence or stop is set to.</summary>
/// <param name="Distance">In nanometres. Two settings may have one distance.</param>
/// <param name="IsKept">
/// True when all that is cut at it is cut in one visit, which gives it a place in the order of visits; false when it is free:
/// visited whenever it suits and as often as it takes.
/// </param>
internal readonly record struct PlannedSetting(long Distance, bool IsKept);

/// <summary>Which setting gives each side of each part, and what the order of visits must respect from the start.</summary>
/// <remarks>
/// The planner's aims are said with it: one kept setting for each dimension is "fewest visits"; free settings, but for what
/// must match, is "fewest sheets"; everything between, and box by box, is a plan with some dimensions split, made <see cref="By"/> a key for each side.
/// Sides that share a kept setting have one size and are never cut in two visits.
/// </remarks>
/// <param name="Settings">The settings, by number.</param>
/// <param name="Sides">The setting of each side: part 0's length, part 0's width, part 1's length, …; -1 for a held part.</param>
/// <param name="Rules">Pairs of kept settings of which the first is visited before the second.</param>
internal sealed record SettingPlan(
    IReadOnlyList<PlannedSetting> Settings,
    IReadOnlyList<int> Sides,
    IReadOnlyList<(int First, int Then)> Rules
)
{
    /// <summary>
    /// True when every size comes from a setting, be it free; false when a free size may also be what another leaves of a piece.
    /// </summary>
    public bool CutsAll { get; init; }

    /// <summary>What the request's rules ask for.</summary>
    public static SettingPlan Of(CutRequest request) =>
        request.Rules.BoxByBox ? BoxByBox.Of(request)
        : request.Rules.VisitsFirst ? OnePerDimension(request)
        : Free(request);

    /// <summary>One kept setting for each distinct dimension.</summary>
    public static SettingPlan OnePerDimension(CutRequest request) => By(request, (_, _) => (0, true));

    /// <summary>One kept setting for each group that must match or shares the height of a run; one free setting for each dimension otherwise.</summary>
    public static SettingPlan Free(CutRequest request)
    {
        var groups = new SideGroups(request);
        return By(request, (part, side) => groups.Of(part, side) is { } group ? (group + 1, true) : (0, false));
    }

    /// <summary>Sides of one size that are given the same key share a setting.</summary>
    /// <param name="request">The request.</param>
    /// <param name="keyOf">The key of a side, by the part's place in the request, and whether its setting is kept.</param>
    public static SettingPlan By(CutRequest request, Func<int, MatchedSide, (int Key, bool IsKept)> keyOf)
    {
        var known = new Dictionary<(Length, int, bool), int>();
        var settings = new List<PlannedSetting>();
        var sides = new int[request.Parts.Count * 2];
        for (var part = 0; part < request.Parts.Count; part++)
            foreach (var side in (MatchedSide[])[MatchedSide.Length, MatchedSide.Width])
            {
                sides[Key(part, side)] = -1;
                if (request.Parts[part].IsHeld)
                    continue;
                var size = request.Parts[part].Size(side);
                var (key, isKept) = keyOf(part, side);
                if (!known.TryGetValue((size, key, isKept), out var setting))
                {
                    known[(size, key, isKept)] = setting = settings.Count;
                    settings.Add(new(size.Nanometres, isKept));
                }
                sides[Key(part, side)] = setting;
            }
        return new(settings, sides, []);
    }

    /// <summary>The place of a side in <see cref="Sides"/>.</summary>
    public static int Key(int part, MatchedSide side) => (part * 2) + (side == MatchedSide.Length ? 0 : 1);

    /// <summary>The setting of a side; -1 for a held part.</summary>
    public int Of(int part, MatchedSide side) => Sides[Key(part, side)];

    /// <summary>The same with one more pair of settings whose order is fixed.</summary>
    public SettingPlan Order(int first, int then) => this with { Rules = [.. Rules, (first, then)] };
}
