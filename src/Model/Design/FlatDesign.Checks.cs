using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>What will not work about a top or shelf.</summary>
internal sealed partial class FlatDesign
{
    public override IEnumerable<Finding> Check(Wanted sizes) =>
        [
            .. ReturnTooWide(sizes),
            .. flat.Holes.SelectMany(hole => HoleMisplaced(sizes, hole)),
            .. EdgingAtJoint(sizes),
        ];

    private Length ReturnedDepth(Wanted sizes) =>
        IsTwoStrips ? At(sizes, $"{ReturnOf(Top)}.width") : At(sizes, "return-depth");

    private Length ReturnedLength(Wanted sizes) =>
        IsTwoStrips ? At(sizes, $"{ReturnOf(Top)}.length") : At(sizes, "return-length");

    private IEnumerable<Finding> ReturnTooWide(Wanted sizes)
    {
        var over = IsL ? ReturnedDepth(sizes) - At(sizes, "width") : Length.Zero;
        if (over.IsPositive)
            yield return Mend(
                "flat.return-too-wide",
                $"The return of {Id} is {Job.Print(over)} wider than the whole board; make it narrower.",
                "returnDepth"
            );
    }

    private IEnumerable<Finding> HoleMisplaced(Wanted sizes, RoundHole hole)
    {
        var square = Square(RoundHoles.Read(sizes, Id, hole));
        if (
            !IsInside(square, At(sizes, "width"), At(sizes, "depth"))
            || Notch(sizes) is { } notch && Shares(notch, square)
        )
            yield return Mend(
                "flat.hole-outside",
                $"Hole {hole.Id} of {Id} is not wholly on the board; move it in, or make it smaller.",
                $"holes/{hole.Id}"
            );
        else if (IsTwoStrips && square.Low.Y < ReturnedLength(sizes) && square.High.Y > ReturnedLength(sizes))
            yield return Mend(
                "flat.hole-across-joint",
                $"Hole {hole.Id} of {Id} lies across the joint between the main run and the return; move it to one side.",
                $"holes/{hole.Id}/y"
            );
    }

    /// <summary>An edging that makes the panel smaller runs along the whole front edge, where the return butts against it too.</summary>
    private IEnumerable<Finding> EdgingAtJoint(Wanted sizes)
    {
        var edge = IsTwoStrips ? new BoardEdges(Job, Id).Edge(sizes, flat.Edges.Front, "edges/front") : null;
        if (edge is { Counted.IsPositive: true })
            yield return new(
                "flat.edging-at-joint",
                Severity.Note,
                $"The front edging of {Id} runs on behind the return and shows as a line of {Job.Print(edge.Counted)} at the joint.",
                [Id]
            )
            {
                Field = Field("edges/front"),
            };
    }

    /// <summary>What an L leaves open of its bounding rectangle.</summary>
    private (Point2 Low, Point2 High)? Notch(Wanted sizes)
    {
        if (!IsL)
            return null;
        var (width, deep, reach) = (At(sizes, "width"), ReturnedDepth(sizes), ReturnedLength(sizes));
        return flat.Return == ReturnSide.Left
            ? (new(deep, default), new(width, reach))
            : (Point2.Origin, new(width - deep, reach));
    }

    private static (Point2 Low, Point2 High) Square(HoleAt hole)
    {
        var half = Length.Zero + new Length(hole.Diameter.Nanometres / 2);
        return (new(hole.X - half, hole.Y - half), new(hole.X + half, hole.Y + half));
    }

    private static bool IsInside((Point2 Low, Point2 High) square, Length width, Length depth) =>
        square.Low.X >= Length.Zero && square.Low.Y >= Length.Zero && square.High.X <= width && square.High.Y <= depth;

    private static bool Shares((Point2 Low, Point2 High) a, (Point2 Low, Point2 High) b) =>
        a.Low.X < b.High.X && b.Low.X < a.High.X && a.Low.Y < b.High.Y && b.Low.Y < a.High.Y;

    private Finding Mend(string rule, string message, string step) =>
        new(rule, Severity.MustMend, message, [Id]) { Field = Field(step) };
}
