using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>The boards of a box, in its own frame, with the recesses its joints and its back need.</summary>
internal sealed partial class CarcassDesign
{
    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var frame = Frame(sizes);
        var letIn = LetInShelves(sizes, frame).ToList();
        return
        [
            .. CornerBoards(sizes, frame)
                .Select(board => board.Role == PanelRole.Side ? LetInto(board, letIn, frame) : board)
                .Select(board => Finished(WithBackRabbet(sizes, frame, board))),
            .. BackBoards(sizes, frame),
            .. InnerBoards(sizes, frame).Select(Finished),
        ];

        Board Finished(Board board) => WithPins(sizes, frame, WithFrontEdge(sizes, board));
    }

    private BoxFrame Frame(Wanted sizes) =>
        new(
            At(sizes, "width"),
            At(sizes, "height"),
            At(sizes, "left-side.width"),
            Thickness(sizes).Length,
            IsLetIn ? At(sizes, "joint-depth") : Length.Zero
        );

    private IEnumerable<Board> CornerBoards(Wanted sizes, BoxFrame frame)
    {
        var (t, let) = (frame.Thickness, frame.LetIn);
        var foot = SidesThrough ? Length.Zero : t - let;
        var start = SidesThrough ? t - let : Length.Zero;
        var lying = Lying(sizes, frame, start).ToList();
        Board[] sides =
        [
            Member(sizes, "left-side", PanelRole.Side, Attitude.LeftOnEnd, new(default, default, foot)),
            Member(sizes, "right-side", PanelRole.Side, Attitude.RightOnEnd, new(frame.Width - t, default, foot)),
        ];
        return SidesThrough
            ? [.. sides.Select(side => LetInto(side, lying, frame)), .. lying]
            : [.. sides, .. lying.Select(board => LetInto(board, sides, frame))];
    }

    /// <summary>Bottom, and top or stretchers.</summary>
    private IEnumerable<Board> Lying(Wanted sizes, BoxFrame frame, Length start)
    {
        var above = frame.Height - frame.Thickness;
        yield return Member(sizes, "bottom", PanelRole.Bottom, Attitude.Level, new(start, default, default));
        if (box.Top == BoxTop.Panel)
            yield return Member(sizes, "top", PanelRole.Top, Attitude.Level, new(start, default, above));
        if (box.Top != BoxTop.Stretchers)
            yield break;
        var behind = frame.CaseDepth - At(sizes, "back-stretcher.width");
        yield return Member(sizes, "front-stretcher", PanelRole.Stretcher, Attitude.Level, new(start, default, above));
        yield return Member(sizes, "back-stretcher", PanelRole.Stretcher, Attitude.Level, new(start, behind, above));
    }

    /// <summary>Recesses in one member where others are let into it: exactly what they share.</summary>
    private static Board LetInto(Board board, IEnumerable<Board> others, BoxFrame frame)
    {
        if (frame.LetIn == Length.Zero)
            return board;
        foreach (var other in others)
            if (SolidBox.Of(board).SharedWith(SolidBox.Of(other)) is { } shared)
                board = board.Cut(shared.Low, shared.High);
        return board;
    }

    /// <summary>A rabbet along the inner back edge, where the back goes in.</summary>
    private Board WithBackRabbet(Wanted sizes, BoxFrame frame, Board board)
    {
        if (!HasRabbetedBack)
            return board;
        var (t, depth) = (frame.Thickness, At(sizes, "joint-depth"));
        var (reach, into) = (t - depth, frame.CaseDepth - At(sizes, "back.thickness"));
        var rebate = new SolidBox(
            new(reach, into, reach),
            new(frame.Width - reach, frame.CaseDepth, HasTop ? frame.Height - reach : frame.Height)
        );
        return SolidBox.Of(board).SharedWith(rebate) is { } shared ? board.Cut(shared.Low, shared.High) : board;
    }

    private Board WithFrontEdge(Wanted sizes, Board board)
    {
        var edge = new BoardEdges(Job, Id).Edge(sizes, box.FrontEdge, "frontEdge");
        return edge is null || board.Low.Y > Length.Zero && board.Role == PanelRole.Stretcher
            ? board
            : board with
            {
                Edges = BoardEdges.On(board.Attitude, Direction.MinusY, edge),
            };
    }
}

/// <summary>The lengths that place things in a box.</summary>
/// <param name="Width">Outside.</param>
/// <param name="Height">Outside.</param>
/// <param name="CaseDepth">Of the sides: without an applied back.</param>
/// <param name="Thickness">Of the box's own sheet.</param>
/// <param name="LetIn">How far bottom and top go into the sides, or the sides into them; nothing for butt joints.</param>
internal readonly record struct BoxFrame(Length Width, Length Height, Length CaseDepth, Length Thickness, Length LetIn);
