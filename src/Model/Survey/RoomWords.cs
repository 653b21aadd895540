using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>What places and readings of the recess are called in sentences.</summary>
internal static class RoomWords
{
    public static string Of(PlaceInPlan place) =>
        place switch
        {
            PlaceInPlan.LeftFront => "left-front",
            PlaceInPlan.RightFront => "right-front",
            PlaceInPlan.LeftBack => "left-back",
            PlaceInPlan.RightBack => "right-back",
            _ => place.ToString().ToLowerInvariant(),
        };

    public static string Of(RoomReadingKind kind) => kind.ToString().ToLowerInvariant();

    public static string Of(Wall wall) => $"{wall.ToString().ToLowerInvariant()} wall";
}
