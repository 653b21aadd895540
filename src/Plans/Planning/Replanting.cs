namespace Nookwright.Planning;

/// <summary>Takes trees over into a job with other settings: what its rules allow stays where it is, the rest waits for a new place.</summary>
/// <param name="from">The trees; they are left alone.</param>
/// <param name="to">The job.</param>
internal abstract class Replanting(Trees from, Job to)
{
    private readonly List<Item> _waiting = [];

    /// <summary>The trees as they are.</summary>
    protected Trees From => from;

    /// <summary>The job they come into.</summary>
    protected Job To => to;

    /// <summary>Adds the sheets of some materials to a layout, with all that stays in them; the rest waits there.</summary>
    public void Take(Layout layout, Func<string, bool> isWanted)
    {
        var blanks = from.Layout.WaitingBlanks.Where(i => isWanted(i.Material));
        layout.WaitingBlanks.AddRange(blanks.Select(i => to.Blanks[i.Id]));
        foreach (var (sheet, roots) in from.Sheets.Where(s => isWanted(s.Sheet.Stock.Material)))
            Plant(layout, sheet, [.. roots.Select(r => Kept(r, r, null) ?? Emptied(r))]);
        _waiting.AddRange(from.Layout.Waiting.Where(i => isWanted(i.Material)));
        layout.Waiting.AddRange(_waiting.Select(i => to.Items[i.Id]).OrderBy(i => i.Id));
    }

    /// <summary>The setting of a strip or a part in the new job; null when it cannot stay.</summary>
    /// <param name="node">The strip or part.</param>
    /// <param name="parent">What it is cut off.</param>
    protected abstract int? SettingOf(Node node, Node parent);

    /// <summary>How an item lies in the new job; null when it cannot stay.</summary>
    /// <param name="leaf">The item's node.</param>
    /// <param name="setting">The setting it is cut off at; -1 for a run.</param>
    /// <param name="strip">What it is cut off, as it is in the new job.</param>
    protected abstract Turn? TurnOf(Node leaf, int setting, Node strip);

    /// <summary>True when a run is as long and as parted in the new job as it was.</summary>
    protected static bool IsSameRun(Turn was, Turn now) =>
        (was.X, was.Y) == (now.X, now.Y) && was.Along!.Segments.Count == now.Along!.Segments.Count;

    private void Plant(Layout layout, SheetLayout sheet, List<Node> roots)
    {
        var planted = Planted(sheet, roots);
        if (!layout.Takes(planted))
        {
            foreach (var root in roots)
                Leave(root);
            planted = Planted(sheet, [.. roots.Select(Emptied)]);
        }
        if (planted.Count > 0 || planted.HasHeld)
            layout.Add(planted);
    }

    private SheetLayout Planted(SheetLayout sheet, List<Node> roots)
    {
        var planted = sheet.Emptied();
        var writer = new TreeWriter(to, planted);
        for (var root = 0; root < roots.Count; root++)
            writer.Write(root, roots[root]);
        return planted;
    }

    private static Node Emptied(Node root) => root.Alone();

    /// <summary>A node in the new job, with all that stays in it; null when nothing does.</summary>
    private Node? Kept(Node node, Node parent, Node? strip)
    {
        var kept = node.Alone();
        if (!CanStay(node, kept, parent, strip))
        {
            Leave(node);
            return null;
        }
        if (node.Item is not null)
            return kept;
        kept.Children = [.. node.Children.Select(c => Kept(c, node, kept)).OfType<Node>()];
        if (node.Rest is { } rest && kept.Children.Count > 0)
            kept.Rest = Kept(rest, node, null);
        else if (node.Rest is not null)
            Leave(node.Rest);
        return kept.Children.Count > 0 ? kept : null;
    }

    private bool CanStay(Node node, Node kept, Node parent, Node? strip)
    {
        if (node.Setting >= 0)
        {
            if (SettingOf(node, parent) is not { } setting)
                return false;
            kept.Setting = setting;
        }
        if (node.Item is null)
            return true;
        kept.Turn = TurnOf(node, kept.Setting, strip!);
        return kept.Turn is not null;
    }

    private void Leave(Node node) => _waiting.AddRange(node.Leaves().Select(l => l.Item!));
}
