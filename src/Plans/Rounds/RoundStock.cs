using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Rounds;

/// <summary>What the next round can cut from: blanks that are due, leftovers of the rounds before, then the shop's stock that is left.</summary>
internal sealed class RoundStock
{
    private readonly IssuedPlan _issued;

    public RoundStock(IssuedPlan issued, CutRequest now, IReadOnlyList<CutPart> due, IReadOnlyList<Workpiece> free)
    {
        _issued = issued;
        var blanks = due.Select(p => p.From!).Distinct().Select(issued.Piece);
        Pieces = [.. blanks.Select(Left), .. free.Concat(issued.Offcuts).Select(Left), .. now.Stock.Select(Remaining)];
    }

    /// <summary>In the order they are thought of.</summary>
    public IReadOnlyList<StockPiece> Pieces { get; }

    private StockPiece Left(Workpiece piece)
    {
        var sheet = _issued.StockOf(piece);
        return new(piece.Id, sheet.Material, piece.Length, piece.Width, 1, null, true, sheet.HasFigure)
        {
            LeftAs = piece.Id,
            // Sheets are squared at their low end before anything is cut; the high one stays as it came.
            OutOfSquare = piece.X + piece.Length == sheet.Length ? sheet.OutOfSquare : Length.Zero,
            KilogramsPerSquareMetre = sheet.KilogramsPerSquareMetre,
            Bad = [.. sheet.Bad.Select(bad => Within(bad, piece)).OfType<BadArea>()],
        };
    }

    /// <summary>The issued rounds have taken theirs: the document's stock is what there was before them.</summary>
    private StockPiece Remaining(StockPiece stock)
    {
        var taken = _issued.Rounds.SelectMany(r => r.Plan.Sheets).Count(s => s.Stock == stock.Id);
        return stock.Quantity is { } there ? stock with { Quantity = Math.Max(0, there - taken) } : stock;
    }

    private static BadArea? Within(BadArea bad, Workpiece piece)
    {
        var (x, y) = (Length.Max(bad.X, piece.X), Length.Max(bad.Y, piece.Y));
        var (endX, endY) = (
            Length.Min(bad.X + bad.Length, piece.X + piece.Length),
            Length.Min(bad.Y + bad.Width, piece.Y + piece.Width)
        );
        return endX > x && endY > y ? new(x - piece.X, y - piece.Y, endX - x, endY - y, bad.Why) : null;
    }
}
