namespace Nookwright.Planning;

/// <summary>One way of a raw rectangle: where it lies on its sheet, and what must come off its two edges before they are true.</summary>
/// <param name="At">Its low edge, from the sheet's corner.</param>
/// <param name="Size">Raw, margins included.</param>
/// <param name="Low">What comes off the low edge.</param>
/// <param name="High">What comes off the high edge.</param>
internal readonly record struct RawSide(long At, long Size, long Low, long High)
{
    /// <summary>The least margin: at a trusted edge the last cut takes nothing but its kerf, so that every size comes from a setting.</summary>
    public const long Hair = 1;

    /// <summary>One past its high edge.</summary>
    public long End => At + Size;

    /// <summary>Where its low edge is once it is true.</summary>
    public long TrueAt => At + Low;

    /// <summary>What is left once both edges are true.</summary>
    public long Usable => Size - Low - High;

    /// <summary>What is taken to the table saw: the low edge is true, the high one still rough.</summary>
    public long Handled => Size - Low;

    /// <summary>How far from its low edge rough cuts go: an end out of square is no wood to count on.</summary>
    /// <param name="dressing">What comes off a straight edge.</param>
    public long Room(long dressing) => Size - Math.Max(0, High - dressing);

    /// <summary>The part of it before a rough cut at a distance from its low edge.</summary>
    public RawSide Before(long distance, long margin) => new(At, distance, Low, margin);

    /// <summary>The part of it that begins at a distance from its low edge, beyond a rough cut.</summary>
    public RawSide Beyond(long distance, long margin) => new(At + distance, Size - distance, margin, High);
}
