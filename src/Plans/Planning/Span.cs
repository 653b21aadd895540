using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>The wood a cell offers one more item: what a spot is judged by before anything is changed.</summary>
internal struct Span
{
    /// <summary>The cell that offers it.</summary>
    public int Cell;

    /// <summary>How an item would join it.</summary>
    public Joining Joining;

    /// <summary>The axis the item's first cut is measured along.</summary>
    public SheetAxis Axis;

    /// <summary>What is offered along the sheet.</summary>
    public long X;

    /// <summary>What is offered across the sheet.</summary>
    public long Y;

    /// <summary>The setting that gave the size across the axis, or -1.</summary>
    public int Setting;

    /// <summary>True when a margin, or a trusted edge, lies beyond the room along the axis.</summary>
    public bool OpenAlong;

    /// <summary>The same across.</summary>
    public bool OpenAcross;

    /// <summary>True when there is no child yet.</summary>
    public bool IsFirst;

    /// <summary>True when the size across may still change, because it is what siblings leave.</summary>
    public bool IsLoose;

    /// <summary>True when an item may not take the last of the room: what lies beyond it must still be cut.</summary>
    public bool IsShared;

    /// <summary>Where the settings stand that are visited before the item's first, in the sheet's list, and how many.</summary>
    public int Before;

    /// <summary>How many they are.</summary>
    public int BeforeCount;

    /// <summary>Where the settings stand that are visited after the item's first.</summary>
    public int After;

    /// <summary>How many they are.</summary>
    public int AfterCount;

    /// <summary>What is offered along the axis.</summary>
    public readonly long Room => Axis == SheetAxis.Length ? X : Y;

    /// <summary>What is offered across the axis.</summary>
    public readonly long Across => Axis == SheetAxis.Length ? Y : X;
}
