using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>A reading of the recess that somebody took and that can be used.</summary>
/// <param name="Kind">What was measured.</param>
/// <param name="At">Where in plan.</param>
/// <param name="Height">At what height above the floor's high point; for a lean, over what height.</param>
/// <param name="Value">What the tape said.</param>
internal sealed record TakenReading(RoomReadingKind Kind, PlaceInPlan At, Length Height, Traced Value)
{
    public decimal HeightNanometres => Height.Nanometres;

    public decimal Nanometres => Value.Length.Nanometres;
}
