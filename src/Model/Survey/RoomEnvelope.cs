using Nookwright.Measure;

namespace Nookwright.Survey;

/// <summary>The largest upright box, square to the opening, that fits the recess between two heights.</summary>
/// <param name="Low">The lower height.</param>
/// <param name="High">The upper height.</param>
/// <param name="Left">x of its left side.</param>
/// <param name="Right">x of its right side.</param>
/// <param name="Back">y of its back; its front is the opening line, y = 0.</param>
public sealed record RoomEnvelope(Length Low, Length High, Length Left, Length Right, Length Back)
{
    /// <summary>Between its sides.</summary>
    public Length Width => Right - Left;

    internal static RoomEnvelope Of(Room room, Length low, Length high)
    {
        throw new NotSupportedException("to be written by the Survey room's author");
    }
}
