using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>The columns of pin holes for the shelves of a bay.</summary>
/// <remarks>
/// 32 mm system: 5 mm holes, 32 mm apart, the front column 37 mm from the front edge and behind inset doors 37 mm from the
/// doors' backs, the rear column a multiple of 32 mm behind it (as makers describe it; no standards body defines it). The
/// grid of a bay goes through its first shelf, whose place is kept; another shelf of the bay goes to the nearest hole.
/// </remarks>
internal sealed partial class CarcassDesign
{
    private static readonly Length Pitch = Length.Millimetre * 32;
    private static readonly Length SetBackOfPins = Length.Millimetre * 37;
    private static readonly Length HoleDiameter = Length.Millimetre * 5;

    /// <summary>No holes nearer to bottom and top than this, unless a shelf asks for them (common practice, no source).</summary>
    private static readonly Length KeepFromEnds = Length.Millimetre * 64;

    /// <summary>Deep enough for the shank of a pin, and a skin left on the far side (from memory).</summary>
    private static readonly Length HoleDepth = Length.Millimetre * 10;

    private static readonly Length SkinLeft = Length.Millimetre * 3;

    private IEnumerable<BoxShelf> PinShelves(int bay) =>
        box.Shelves.Where(shelf => shelf.Kind == ShelfKind.Pins && shelf.Bay == bay);

    /// <summary>From the top of the bottom to a shelf's underside, as its holes allow.</summary>
    private Length ShelfRise(Wanted sizes, BoxShelf shelf)
    {
        var asked = ShelfAt(sizes, shelf).Length;
        if (shelf.Kind == ShelfKind.Fixed)
            return asked;
        var first = ShelfAt(sizes, PinShelves(shelf.Bay).First()).Length;
        return first + (asked - first).RoundTo(Pitch);
    }

    private Board WithPins(Wanted sizes, BoxFrame frame, Board board) =>
        board.With(
            from bay in Enumerable.Range(1, Bays)
            where PinShelves(bay).Any()
            let side = SideOfBay(sizes, frame, board, bay)
            where side is not null
            from column in PinColumns(sizes, bay)
            select Column(board, new(side.Value, column, frame.Thickness), PinHeights(sizes, bay))
        );

    /// <summary>Where a board's face closes a bay on one side, or null when it does not.</summary>
    private Length? SideOfBay(Wanted sizes, BoxFrame frame, Board board, int bay)
    {
        var left = bay == 1 ? "left-side" : box.Partitions[bay - 2].Id;
        var right = bay == Bays ? "right-side" : box.Partitions[bay - 1].Id;
        var from = frame.Thickness + At(sizes, $"bay-{bay}.left");
        return board.Member == left ? from
            : board.Member == right ? from + At(sizes, $"bay-{bay}.width")
            : null;
    }

    /// <summary>How far the columns stand from the front edge; one only when the box is too shallow for two.</summary>
    private IReadOnlyList<Length> PinColumns(Wanted sizes, int bay)
    {
        var front = SetBackOfPins + (InsetDoorsTake(sizes, bay)?.Length ?? Length.Zero);
        var between = (At(sizes, "inside-depth") - SetBackOfPins - front).FloorTo(Pitch);
        return between.IsPositive ? [front, front + between] : [front];
    }

    /// <summary>The lowest hole above the bottom, and how many.</summary>
    private (Length First, int Count) PinHeights(Wanted sizes, int bay)
    {
        var holes = PinShelves(bay).Select(shelf => ShelfRise(sizes, shelf) - Half(HoleDiameter)).ToList();
        var low = Length.Min(KeepFromEnds, holes.Min());
        var high = Length.Max(At(sizes, "inside-height") - KeepFromEnds, holes.Max());
        var first = holes[0] - (holes[0] - low).FloorTo(Pitch);
        return (first, (int)((high - first).Nanometres / Pitch.Nanometres) + 1);
    }

    private static Machining.Pins Column(Board board, Point3 foot, (Length First, int Count) heights)
    {
        var first = board.Inside(foot with { Z = foot.Z + heights.First });
        var face = first.Z == Length.Zero ? PanelFace.Hidden : PanelFace.Show;
        return new(face, new(first.X, first.Y), Pitch, heights.Count, HoleDiameter, Depth(board));
    }

    /// <summary>A partition is drilled from both faces, and the holes must not meet.</summary>
    private static Length Depth(Board board)
    {
        var thickness = board.Size.Thickness.Length;
        var most = board.Role == PanelRole.Partition ? Half(thickness - SkinLeft) : thickness - SkinLeft;
        return Length.Min(HoleDepth, most);
    }

    /// <summary>How much of a bay's depth inset doors in front of it take; null without any.</summary>
    private Traced? InsetDoorsTake(Wanted sizes, int bay) =>
        InsetDoors(doors => doors.Bay is null || doors.Bay == bay) is { } inset ? DoorThickness(sizes, inset) : null;

    private Doors? InsetDoors(Func<Doors, bool> before) =>
        Job
            .Project.Pieces.OfType<Doors>()
            .FirstOrDefault(doors => doors.Box == Id && doors.Style == DoorStyle.Inset && before(doors));

    private Traced DoorThickness(Wanted sizes, Doors inset) =>
        Job.Sheet(inset.Material) is { } sheet
            ? sizes[$"{sheet.Id}.thickness"]
            : Traced.ByRule(Length.Zero, $"{inset.Id} has no material yet");
}
