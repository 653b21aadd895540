using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>The boards of a top or shelf, with their edging, what stays long, and their holes.</summary>
internal sealed partial class FlatDesign
{
    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var rise = Length.Zero;
        var boards = new List<Board>();
        foreach (var layer in Layers)
        {
            boards.AddRange(LayerBoards(sizes, layer, rise).Select(board => WithHoles(sizes, board)));
            rise += Thickness(sizes).Length;
        }
        return boards;
    }

    private IEnumerable<Board> LayerBoards(Wanted sizes, string layer, Length rise)
    {
        var name = MainOf(layer);
        var forward = IsTwoStrips ? At(sizes, $"{ReturnOf(layer)}.length") : Length.Zero;
        yield return Member(sizes, name, Role, Attitude.Level, new(default, forward, rise)) with
        {
            Called = CalledMain(layer),
            Outline = IsL && !IsTwoStrips ? LOutline(sizes, name) : null,
            Edges = MainEdges(sizes),
        };
        if (IsTwoStrips)
            yield return ReturnBoard(sizes, layer, rise);
    }

    /// <summary>In an L of one panel the edges at the inside corner go on from the front, and carry what it carries.</summary>
    private PanelEdges MainEdges(Wanted sizes)
    {
        var edges = new BoardEdges(Job, Id).Of(
            sizes,
            Attitude.Level,
            flat.Edges,
            IsTwoStrips ? flat.LongBy with { Front = null } : flat.LongBy
        );
        return IsL && !IsTwoStrips && edges.Low is { } front
            ? edges with
            {
                Inner = front with { LongBy = null },
            }
            : edges;
    }

    private Board ReturnBoard(Wanted sizes, string layer, Length rise)
    {
        var name = ReturnOf(layer);
        var left = flat.Return == ReturnSide.Left ? Length.Zero : At(sizes, "width") - At(sizes, $"{name}.width");
        return Member(sizes, name, Role, Attitude.LevelAlongY, new(left, default, rise)) with
        {
            Called = layer.Length == 0 ? "return" : $"{layer} layer of the return",
            Edges = new BoardEdges(Job, Id).Of(sizes, Attitude.LevelAlongY, ReturnEdges, ReturnLongBy),
        };
    }

    /// <summary>The return's outer side goes on from the main run's end, its inner side and its front end from the main run's front.</summary>
    private EdgedSides ReturnEdges =>
        flat.Return == ReturnSide.Left
            ? new()
            {
                Left = flat.Edges.Left,
                Right = flat.Edges.Front,
                Front = flat.Edges.Front,
            }
            : new()
            {
                Left = flat.Edges.Front,
                Right = flat.Edges.Right,
                Front = flat.Edges.Front,
            };

    private LongBy ReturnLongBy =>
        flat.Return == ReturnSide.Left
            ? new() { Left = flat.LongBy.Left, Front = flat.LongBy.Front }
            : new() { Right = flat.LongBy.Right, Front = flat.LongBy.Front };

    private string CalledMain(string layer) =>
        (IsTwoStrips, IsDoubled) switch
        {
            (true, true) => $"{layer} layer of the main run",
            (true, false) => "main run",
            (false, true) => $"{layer} layer",
            _ => "",
        };

    /// <summary>The L in the panel's frame: the return comes forward to y = 0 at one end.</summary>
    private Outline LOutline(Wanted sizes, string name)
    {
        var (width, depth) = (At(sizes, $"{name}.length"), At(sizes, $"{name}.width"));
        var (reach, returned) = (At(sizes, "return-length"), At(sizes, "return-depth"));
        var none = Length.Zero;
        return flat.Return == ReturnSide.Left
            ? new([
                new(none, none),
                new(returned, none),
                new(returned, reach),
                new(width, reach),
                new(width, depth),
                new(none, depth),
            ])
            : new([
                new(width - returned, none),
                new(width, none),
                new(width, depth),
                new(none, depth),
                new(none, reach),
                new(width - returned, reach),
            ]);
    }

    /// <summary>The holes whose centre lies on this board.</summary>
    private Board WithHoles(Wanted sizes, Board board) =>
        board.With(
            flat.Holes.Select(hole => (hole, at: RoundHoles.Read(sizes, Id, hole)))
                .Where(read => Holds(board, read.at))
                .Select(read => InBoard(board, read.hole.Id, read.at))
        );

    private static bool Holds(Board board, HoleAt hole) =>
        hole.X >= board.Low.X && hole.X < board.High.X && hole.Y >= board.Low.Y && hole.Y < board.High.Y;

    private static Machining InBoard(Board board, string id, HoleAt hole)
    {
        var centre = board.Inside(new(hole.X, hole.Y, board.Low.Z));
        return new Machining.Through(id, new(centre.X, centre.Y), hole.Diameter);
    }
}
