using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Writes a pinned sheet down as it was planned: its rough cuts at once, and every other cut at the visit it has now.</summary>
internal sealed class PinnedWriter
{
    private readonly Script _script;
    private readonly Pinned _pinned;
    private readonly Dictionary<string, Wood> _woods;
    private IReadOnlyList<int> _visits = [];

    /// <summary>Takes the sheet from stock and breaks it down.</summary>
    public PinnedWriter(Script script, Pinned pinned)
    {
        (_script, _pinned) = (script, pinned);
        var plan = pinned.Wish.Plan;
        var sheet = script.Take(pinned.Stock, pinned.Wish.Id);
        var names = new PinnedSheet.Renaming(pinned.Wish.Sheet.Workpiece, sheet.Id, sheet.Sheet);
        _woods = plan.Workpieces.ToDictionary(
            p => p.Id,
            p => p.Id == pinned.Wish.Sheet.Workpiece ? Become(sheet, p) : Become(script.Bring(p, names), p)
        );
        foreach (var cut in plan.Breakdown)
            script.Break(Written(cut));
    }

    /// <summary>Learns at which visit each cut is made.</summary>
    public void Settle(TreeCuts cuts) => _visits = _pinned.Visits(cuts.VisitOf);

    /// <summary>Writes the cuts of a visit, in the order they were planned in.</summary>
    public void Write(int visit)
    {
        foreach (var (index, cut) in _pinned.Cuts.Index().Where(c => _visits[c.Index] == visit))
            _script.Cut(Written(cut.Cut));
    }

    private static Wood Become(Wood wood, Workpiece piece)
    {
        (wood.Use, wood.Part) = (piece.Use, piece.Part);
        return wood;
    }

    private ScriptCut Written(SawCut cut) =>
        new(cut.Kind, _woods[cut.On], cut.Along, cut.Distance.Nanometres, Wood(cut.Gives), Wood(cut.Leaves))
        {
            From = cut.From,
        };

    private Wood? Wood(string? id) => id is null ? null : _woods[id];
}
