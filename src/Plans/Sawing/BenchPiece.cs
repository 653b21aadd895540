using System.Collections.Immutable;
using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Sawing;

/// <summary>An edge of a rectangle on the virtual saw's bench.</summary>
/// <param name="ToGo">What must come off it, kerf included, before it may be measured from; zero for a true edge.</param>
internal readonly record struct BenchEdge(Length ToGo)
{
    /// <summary>True when it may be measured from.</summary>
    public bool IsTrue => ToGo == Length.Zero;
}

/// <summary>One way of a piece on the bench: where it lies on its sheet, its two edges, and the visit that gave its size.</summary>
/// <param name="At">From the sheet's corner.</param>
/// <param name="Size">How long.</param>
/// <param name="Low">The edge nearer to the sheet's corner.</param>
/// <param name="High">The other.</param>
/// <param name="Visit">The visit whose setting its size is; null for a size that no setting gave.</param>
internal readonly record struct BenchSide(Length At, Length Size, BenchEdge Low, BenchEdge High, int? Visit)
{
    /// <summary>One past its high edge.</summary>
    public Length End => At + Size;

    /// <summary>What is left of it once both edges are true.</summary>
    public Length Usable => Size - Low.ToGo - High.ToGo;
}

/// <summary>A piece on the virtual saw's bench.</summary>
/// <param name="Id">As the plan calls it.</param>
/// <param name="Sheet">The number of its sheet.</param>
/// <param name="X">Along the sheet's length.</param>
/// <param name="Y">Across.</param>
/// <param name="HasBeenAtVisit">True when a visit has cut it or what it came from.</param>
internal sealed record BenchPiece(string Id, int Sheet, BenchSide X, BenchSide Y, bool HasBeenAtVisit)
{
    /// <summary>The pieces it came from, itself among them, that a sizing cut took off: strips, each made by one setting.</summary>
    public ImmutableHashSet<string> Strips { get; init; } = [];

    /// <summary>True for what a dressing pass has taken off: waste, whatever its size.</summary>
    public bool IsSliver { get; init; }

    /// <summary>In square metres.</summary>
    public decimal SquareMetres => (decimal)X.Size.Nanometres * Y.Size.Nanometres / 1_000_000_000_000_000_000m;

    /// <summary>One of its two ways.</summary>
    public BenchSide Side(SheetAxis axis) => axis == SheetAxis.Length ? X : Y;

    /// <summary>True when all four edges may be measured from.</summary>
    public bool IsTrueAllRound => X.Low.IsTrue && X.High.IsTrue && Y.Low.IsTrue && Y.High.IsTrue;

    /// <summary>The same piece with one way changed and another name.</summary>
    public BenchPiece With(SheetAxis axis, BenchSide side, string id, bool atVisit) =>
        axis == SheetAxis.Length
            ? this with
            {
                Id = id,
                X = side,
                HasBeenAtVisit = HasBeenAtVisit || atVisit,
            }
            : this with
            {
                Id = id,
                Y = side,
                HasBeenAtVisit = HasBeenAtVisit || atVisit,
            };
}
