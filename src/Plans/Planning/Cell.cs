using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A rectangle of usable wood on a sheet the search works on: what <see cref="Node"/> says, in numbers that copy quickly.</summary>
/// <remarks>Cells name each other by their places in the sheet's array; -1 is none.</remarks>
internal struct Cell
{
    public int Parent;

    /// <summary>Its newest child; the others follow by <see cref="Next"/>.</summary>
    public int First;

    /// <summary>The next older child of its parent.</summary>
    public int Next;

    /// <summary>What lies beyond its children, cut the other way.</summary>
    public int Rest;

    /// <summary>The setting that takes it off its parent, or -1.</summary>
    public int Setting;

    /// <summary>The item it is, by id, or -1.</summary>
    public int Item;

    /// <summary>How the item lies, by its place in the item's turns.</summary>
    public int Turn;

    /// <summary>How many children it has.</summary>
    public int Children;

    /// <summary>How many items are in it.</summary>
    public int Items;

    public SheetAxis Axis;
    public bool OpenAlong;
    public bool OpenAcross;
    public bool IsRough;
    public bool IsRest;

    /// <summary>True when no child may be added: a run fills it to the last kerf.</summary>
    public bool IsFull;

    /// <summary>What its children share.</summary>
    public long Along;

    /// <summary>Given with its setting; a rest has what its siblings leave.</summary>
    public long Across;

    /// <summary>Along its axis, by its children and the kerfs between them.</summary>
    public long Used;

    /// <summary>The least it could do with along its axis, its rest as narrow as can be.</summary>
    public long LeastAlong;

    /// <summary>The least its children could do with across.</summary>
    public long LeastAcross;
}
