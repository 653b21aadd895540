using Nookwright.Drawing;

namespace Nookwright.Paper;

/// <summary>Puts pictures on a page.</summary>
internal static class Placing
{
    /// <summary>The marks of a picture whose top left corner is put at a spot of the page.</summary>
    public static IEnumerable<Mark> At(this Picture picture, double x, double y) =>
        picture.Marks.Select(mark => Moved(mark, x, y));

    private static Mark Moved(Mark mark, double x, double y)
    {
        Spot To(Spot spot) => new(spot.X + x, spot.Y + y);
        return mark switch
        {
            Mark.Line line => line with { From = To(line.From), To = To(line.To) },
            Mark.Path path => path with { Spots = [.. path.Spots.Select(To)] },
            Mark.Circle circle => circle with { Centre = To(circle.Centre) },
            Mark.Label label => label with { At = To(label.At) },
            Mark.Group group => group with { Marks = [.. group.Marks.Select(inner => Moved(inner, x, y))] },
            _ => throw new InvalidOperationException($"A page cannot place {mark.GetType().Name}."),
        };
    }
}
