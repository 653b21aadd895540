using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>How a piece that looks to the front, left or right stands in the room.</summary>
/// <remarks>
/// A piece that looks left is seen by somebody who stands to its left and looks right: its own x then runs out of the recess,
/// its own y to the right. Whichever way it looks, its lowest corner in the room is the place the document gives.
/// </remarks>
internal static class Turning
{
    /// <summary>Where a piece's own frame stands in the room.</summary>
    /// <param name="facing">Where its front looks.</param>
    /// <param name="low">Its lowest corner in the room.</param>
    /// <param name="width">Its own width.</param>
    /// <param name="depth">Its own depth.</param>
    public static Placement ToRoom(Facing facing, Point3 low, Length width, Length depth) =>
        facing switch
        {
            Facing.Left => new(low + new Point3(default, width, default), Direction.MinusY, Direction.PlusX),
            Facing.Right => new(low + new Point3(depth, default, default), Direction.PlusY, Direction.MinusX),
            _ => new(low, Direction.PlusX, Direction.PlusY),
        };

    /// <summary>Which of the piece's own sizes lies along the room's x, and which along y.</summary>
    public static (string AlongX, string AlongY) Sizes(Facing facing) =>
        facing == Facing.Front ? ("width", "depth") : ("depth", "width");
}
