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
        var slices = room
            .FacesAsRead.Where(face => FaceSlice.Reaches(face, room.FacesAsRead, low, high))
            .ToLookup(face => face.Wall, face => new FaceSlice(face, low, high));
        var back = slices[Wall.Back].Select(slice => slice.Nearest).DefaultIfEmpty().Min();
        var left = slices[Wall.Left].SelectMany(slice => slice.Across(back)).DefaultIfEmpty().Max();
        var right = slices[Wall.Right].SelectMany(slice => slice.Across(back)).DefaultIfEmpty().Min();
        return new(low, high, Inward(left), Length.Max(Inward(left), Outward(right)), Outward(back));
    }

    private static Length Inward(decimal nanometres) => new((long)decimal.Ceiling(nanometres));

    private static Length Outward(decimal nanometres) => new((long)decimal.Floor(nanometres));
}
