using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Tests.Fixtures;

/// <summary>Keeps count of what a cut gives and leaves, so that hand-made plans add up.</summary>
public sealed class HandSaw
{
    private readonly Dictionary<string, Workpiece> _pieces = [];
    private int _cuts;

    public IReadOnlyList<Workpiece> Workpieces => [.. _pieces.Values];

    public Workpiece this[string id] => _pieces[id];

    public void Lay(string id, int sheet, Length length, Length width) =>
        _pieces[id] = new(id, sheet, Length.Zero, Length.Zero, length, width, WorkpieceUse.Sheet, null);

    /// <summary>A cut from the low edge.</summary>
    public SawCut Cut(
        Length kerf,
        (CutKind Kind, string On, SheetAxis Along) cut,
        Length at,
        (string Id, WorkpieceUse Use) gives,
        (string Id, WorkpieceUse Use) leaves
    )
    {
        var on = _pieces[cut.On];
        var rest = (cut.Along == SheetAxis.Length ? on.Length : on.Width) - at - kerf;
        Add(Sized(on, cut.Along, Length.Zero, at), gives);
        if (rest.IsPositive)
            Add(Sized(on, cut.Along, at + kerf, rest), leaves);
        var left = rest.IsPositive ? leaves.Id : null;
        return new(++_cuts, cut.Kind, cut.On, cut.Along, FromEdge.Low, at, gives.Id, left);
    }

    private void Add(Workpiece piece, (string Id, WorkpieceUse Use) named)
    {
        var part = named.Use is WorkpieceUse.Part or WorkpieceUse.Held ? named.Id : null;
        _pieces.Add(named.Id, piece with { Id = named.Id, Use = named.Use, Part = part });
    }

    /// <summary>The stretch of a piece along an axis.</summary>
    public static Workpiece Sized(Workpiece on, SheetAxis along, Length from, Length size) =>
        along == SheetAxis.Length
            ? on with
            {
                X = on.X + from,
                Length = size,
            }
            : on with
            {
                Y = on.Y + from,
                Width = size,
            };
}
