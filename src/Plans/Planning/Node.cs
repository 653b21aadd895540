using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A rectangle of usable wood in the tree of one sheet's sizing cuts.</summary>
/// <remarks>
/// A node without item is cut into children side by side along its axis, each at its setting, a kerf between two; the cuts
/// of siblings may come in any order. Beyond its children a node may have one rest, cut the other way: smooth (after all of
/// them, from the same piece) or rough (parted from them by the track saw, hence free of their order).
/// A child turns the axis. A leaf holds an item. This is the usual guillotine tree with leftover nodes (Gardeyn and Wauters,
/// European Journal of Operational Research 2022), with siblings unordered because one visit serves them all.
/// </remarks>
internal sealed class Node
{
    public Node? Parent;
    public SheetAxis Axis;

    /// <summary>Its size along its axis; what its children share.</summary>
    public long Along;

    /// <summary>Its size across its axis; along its parent's axis unless it is a rest.</summary>
    public long Across;

    /// <summary>The setting that took it off its parent; -1 for a root, a rest or a run.</summary>
    public int Setting = -1;

    /// <summary>True when the far edge along its axis is still rough or factory; a dressing margin lies beyond it.</summary>
    public bool OpenAlong;

    /// <summary>The same across.</summary>
    public bool OpenAcross;

    /// <summary>True for a root, and for a rest parted from one by rough cuts alone.</summary>
    public bool IsRough;

    public Item? Item;
    public Turn? Turn;
    public List<Node> Children = [];
    public Node? Rest;

    /// <summary>Along its axis, by its children and the kerfs between them.</summary>
    public long Used;

    /// <summary>True when it is the whole of its parent's piece beside its siblings.</summary>
    public bool IsRest => Parent?.Rest == this;

    /// <summary>True when no setting gives its size: it is parted off its parent at a pencil line, and then cut up.</summary>
    public bool IsBlock => Setting < 0 && Item is null && Parent is not null && !IsRest;

    public bool IsEmpty => Item is null && Children.Count == 0;

    /// <summary>The settings its parent's piece is cut at to take it off.</summary>
    public IReadOnlyList<int> Settings =>
        Turn?.Along is { } line ? line.Settings
        : Setting >= 0 ? [Setting]
        : [];

    /// <summary>Itself and all below.</summary>
    public List<Node> All() => Collect([], _ => true);

    /// <summary>The leaves below.</summary>
    public List<Node> Leaves() => Collect([], n => n.Item is not null);

    /// <summary>The same node with nothing below it.</summary>
    public Node Alone()
    {
        var alone = (Node)MemberwiseClone();
        (alone.Parent, alone.Children, alone.Rest) = (null, [], null);
        return alone;
    }

    private List<Node> Collect(List<Node> found, Func<Node, bool> isWanted)
    {
        if (isWanted(this))
            found.Add(this);
        foreach (var child in Children)
            child.Collect(found, isWanted);
        Rest?.Collect(found, isWanted);
        return found;
    }
}
