using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

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

    private Machining.Through Through(Wanted sizes, Board board, RoundHole hole) =>
        RoundHoles.InBoard(board, hole.Id, RoundHoles.Read(sizes, Id, hole));
}

/// <summary>What a piece of one panel is made to.</summary>
/// <param name="Member">Its panel's name.</param>
/// <param name="Role">What it does.</param>
/// <param name="Attitude">How it lies.</param>
/// <param name="Length">Along its length, as written.</param>
/// <param name="Width">Across it, as written.</param>
/// <param name="LongBy">What stays long.</param>
internal sealed record SinglePanel(
    string Member,
    PanelRole Role,
    Attitude Attitude,
    SizeText Length,
    SizeText Width,
    LongBy LongBy
)
{
    /// <summary>The field its length is written in.</summary>
    public string LengthField { get; init; } = "length";

    /// <summary>The field its width is written in.</summary>
    public string WidthField { get; init; } = "width";

    public PanelFigure Figure { get; init; }

    public EdgedSides Edges { get; init; } = new();

    public IReadOnlyList<RoundHole> Holes { get; init; } = [];

    /// <summary>A runner lies along its wall with its back against it.</summary>
    public static SinglePanel Of(Runner runner) =>
        new("runner", PanelRole.Runner, Against(runner.Wall), runner.Length, runner.Height, runner.LongBy)
        {
            WidthField = "height",
        };

    /// <summary>A filler stands on end and faces the front.</summary>
    public static SinglePanel Of(Filler filler) =>
        new("filler", PanelRole.Filler, Attitude.FrontOnEnd, filler.Height, filler.Width, filler.LongBy)
        {
            LengthField = "height",
        };

    /// <summary>Trim lies as the maker says.</summary>
    public static SinglePanel Of(Trim trim) =>
        new("trim", PanelRole.Trim, Lying(trim.Lie), trim.Length, trim.Width, trim.LongBy);

    /// <summary>A free panel lies as the maker says.</summary>
    public static SinglePanel Of(FreePanel panel) =>
        new("panel", PanelRole.Free, Lying(panel.Lie), panel.Length, panel.Width, panel.LongBy)
        {
            Figure = panel.Figure,
            Edges = panel.Edges,
            Holes = panel.Holes,
        };

    private static Attitude Against(Wall wall) =>
        wall switch
        {
            Wall.Left => Attitude.Right,
            Wall.Right => Attitude.Left,
            _ => Attitude.Front,
        };

    private static Attitude Lying(PanelLie lie) =>
        lie switch
        {
            PanelLie.Flat => Attitude.Level,
            PanelLie.UprightAlongX => Attitude.Front,
            PanelLie.StandingAlongX => Attitude.FrontOnEnd,
            PanelLie.UprightAlongY => Attitude.Right,
            _ => Attitude.RightOnEnd,
        };
}
