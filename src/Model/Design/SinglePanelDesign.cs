using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>A piece of one panel: a runner, a filler, a trim strip, a panel for anything else.</summary>
/// <param name="piece">The piece.</param>
/// <param name="shape">What it is made to.</param>
/// <param name="job">The job.</param>
internal sealed class SinglePanelDesign(Piece piece, SinglePanel shape, Job job) : PieceDesign(piece, job)
{
    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var board = Member(sizes, shape.Member, shape.Role, shape.Attitude, Point3.Origin);
        yield return board with
        {
            Called = "",
            Figure = FigureOn(Piece.Material, shape.Figure),
            Edges = new BoardEdges(Job, Id).Of(sizes, shape.Attitude, shape.Edges, shape.LongBy),
            Machining = [.. shape.Holes.Select(hole => Through(sizes, board, hole))],
        };
    }

    public override IEnumerable<Finding> Check(Wanted sizes)
    {
        var board = Member(sizes, shape.Member, shape.Role, shape.Attitude, Point3.Origin);
        var outside = Outline.Rectangle(board.Size.Length.Length, board.Size.Width.Length).High;
        return from hole in shape.Holes
            let round = Through(sizes, board, hole)
            where !IsWithin(round, outside)
            select new Finding(
                "panel.hole-outside",
                Severity.MustMend,
                $"Hole {hole.Id} of {Id} is not wholly on the panel; move it in, or make it smaller.",
                [Id]
            )
            {
                Field = Field($"holes/{hole.Id}"),
            };
    }

    protected override void NameSizes()
    {
        NameMember(
            shape.Member,
            Stands(s => s.Size(Field(shape.LengthField), shape.Length)),
            Stands(s => s.Size(Field(shape.WidthField), shape.Width))
        );
        Name("width", s => Along(s, Direction.PlusX));
        Name("depth", s => Along(s, Direction.PlusY));
        Name("height", s => Along(s, Direction.PlusZ));
    }

    private FinishedSize Stands(Func<Wanted, Traced> exact) =>
        new(
            ToMark.Nearest,
            exact,
            amount => $"{Id} comes out {Job.PrintRest(amount)} {(amount.IsPositive ? "larger" : "smaller")}"
        );

    /// <summary>The board's size along an axis of the piece.</summary>
    private Traced Along(Wanted sizes, Direction axis) =>
        IsAlong(shape.Attitude.X, axis) ? Of(sizes, $"{shape.Member}.length")
        : IsAlong(shape.Attitude.Y, axis) ? Of(sizes, $"{shape.Member}.width")
        : Of(sizes, $"{shape.Member}.thickness");

    private static bool IsAlong(Direction direction, Direction axis) => (int)direction / 2 == (int)axis / 2;

    private static bool IsWithin(Machining.Through hole, Point2 high)
    {
        var (x, y, across) = (hole.Centre.X, hole.Centre.Y, hole.Diameter);
        return x * 2 >= across && y * 2 >= across && (high.X - x) * 2 >= across && (high.Y - y) * 2 >= across;
    }

    private Machining.Through Through(Wanted sizes, Board board, RoundHole hole) =>
        RoundHoles.InBoard(board, hole.Id, RoundHoles.Read(sizes, Id, hole));
}
