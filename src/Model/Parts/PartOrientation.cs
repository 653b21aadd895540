using Nookwright.Geometry;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>Which of a part's dimensions runs which way in the room or in its piece.</summary>
internal static class PartOrientation
{
    /// <summary>The dimension that stands upright, or null when that is the thickness.</summary>
    public static PartSide? Height(this Part part) => Along(part, Direction.PlusZ);

    /// <summary>The dimension from the front of its piece to the back.</summary>
    public static PartSide? Depth(this Part part, Facing facing) =>
        Along(part, facing == Facing.Front ? Direction.PlusY : Direction.PlusX);

    /// <summary>The dimension from side to side of its piece.</summary>
    public static PartSide? Across(this Part part, Facing facing) =>
        Along(part, facing == Facing.Front ? Direction.PlusX : Direction.PlusY);

    private static PartSide? Along(Part part, Direction way)
    {
        var place = part.Panel.Place;
        if (SameAxis(place.X, way))
            return new(part.Id, MatchedSide.Length);
        return SameAxis(place.Y, way) ? new(part.Id, MatchedSide.Width) : null;
    }

    /// <summary>Directions come in pairs, there and back.</summary>
    private static bool SameAxis(Direction a, Direction b) => (int)a / 2 == (int)b / 2;
}
