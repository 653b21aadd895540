using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>Where doors hang: in the frame of their box, and in the room.</summary>
internal sealed partial class DoorDesign
{
    public override Placement ToRoom(Wanted sizes) => Box?.ToRoom(sizes) ?? Placement.Identity;

    protected override void NamePlace()
    {
        var isTurned = Facing != Facing.Front;
        var (alongX, alongY) = Turning.Sizes(Facing);
        var (x, y) = isTurned
            ? ((Func<Wanted, Traced>)Forward, (Func<Wanted, Traced>)FromLeftOfBox)
            : (FromLeftOfBox, Forward);
        NameSpan("left", "right", s => Low(s, Facing == Facing.Right, ("left", "right"), x(s), alongX), alongX);
        NameSpan("front", "back", s => Low(s, Facing == Facing.Left, ("front", "back"), y(s), alongY), alongY);
        NameSpan("bottom", "top", s => OfBox(s, "bottom") + Of(s, "from-bottom"), "height");
    }

    private void NameSpan(string low, string high, Func<Wanted, Traced> start, string size)
    {
        Name(low, start);
        Name(high, s => Of(s, low) + Of(s, size));
    }

    /// <summary>The lower end in the room of what starts so far along one of the box's own axes, which may run against the room's.</summary>
    private Traced Low(Wanted sizes, bool isAgainst, (string Low, string High) box, Traced start, string size) =>
        isAgainst ? OfBox(sizes, box.High) - start - Of(sizes, size) : OfBox(sizes, box.Low) + start;

    private Traced FromLeftOfBox(Wanted sizes) => Of(sizes, "from-left");

    /// <summary>Inset doors are flush with the box's front; overlay doors stand before it.</summary>
    private Traced Forward(Wanted sizes) =>
        IsInset ? Traced.ByRule(Length.Zero, "inset doors are flush with the box's front edges") : -Thickness(sizes);

    private Traced FromLeft(Wanted sizes)
    {
        var inside = OfBox(sizes, "left-side.thickness");
        var opening = doors.Bay is { } bay ? inside + OfBox(sizes, $"bay-{bay}.left") : inside;
        if (IsInset)
            return opening + SideGap(sizes);
        var left = opening - OverlayLeft(sizes);
        return IsPair ? left : left + (Covered(sizes) - Of(sizes, $"{First}.{WidthSide}")) / 2;
    }

    private Traced FromBottom(Wanted sizes)
    {
        var inside = OfBox(sizes, "bottom.thickness");
        var height = Of(sizes, "height");
        return IsInset
            ? inside + (Of(sizes, "opening-height") - height) / 2
            : inside - Of(sizes, "overlay") + (CoveredHeight(sizes) - height) / 2;
    }

    /// <summary>The gap there really is beside and between inset doors, once the doors are rounded.</summary>
    private Traced SideGap(Wanted sizes) =>
        (Of(sizes, "opening-width") - Of(sizes, $"{First}.{WidthSide}") * doors.Count) / (doors.Count + 1);

    private Traced OverallWidth(Wanted sizes)
    {
        var width = Of(sizes, $"{First}.{WidthSide}");
        return !IsPair ? width
            : IsInset ? width * 2 + SideGap(sizes)
            : Covered(sizes);
    }
}
