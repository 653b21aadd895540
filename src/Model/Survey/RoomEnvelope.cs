using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>The largest upright box, square to the opening, that fits the recess between two heights.</summary>
/// <remarks>All nought where the recess was not read. No box is wider or deeper than a reading taken between its heights.</remarks>
/// <param name="Low">The lower height.</param>
/// <param name="High">The upper height.</param>
/// <param name="Left">x of its left side.</param>
/// <param name="Right">x of its right side; not less than the left.</param>
/// <param name="Back">y of its back; its front is the opening line, y = 0.</param>
public sealed record RoomEnvelope(Length Low, Length High, Length Left, Length Right, Length Back)
{
    /// <summary>Between its sides.</summary>
    public Length Width => Right - Left;

    internal static RoomEnvelope Of(Room room, Length low, Length high)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(high, low);
        var faces = room.FacesAsRead.ToLookup(face => face.Wall);
        IEnumerable<(decimal X, decimal Y)> Slice(Wall wall) => FaceSlice.Corners([.. faces[wall]], low, high);
        var left = Slice(Wall.Left).Select(corner => corner.X).DefaultIfEmpty().Max();
        var right = Slice(Wall.Right).Select(corner => corner.X).DefaultIfEmpty().Min();
        var back = Slice(Wall.Back).Select(corner => corner.Y).DefaultIfEmpty().Min();
        return new(low, high, Inward(left), Length.Max(Inward(left), Outward(right)), Outward(back));
    }

    private static Length Inward(decimal nanometres) => new((long)decimal.Ceiling(nanometres));

    private static Length Outward(decimal nanometres) => new((long)decimal.Floor(nanometres));
}
