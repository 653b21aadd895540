using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Planning;

/// <summary>A piece of wood while a plan is written down.</summary>
/// <remarks>Its name is settled before the plan is read out, not when it is sawn: only later is it known what becomes of it.</remarks>
internal sealed class Wood(int sheet, long x, long y, long sizeX, long sizeY)
{
    public string Id { get; set; } = "";

    public WorkpieceUse Use { get; set; } = WorkpieceUse.Waste;

    /// <summary>The part or run it is for.</summary>
    public string? Part { get; set; }

    /// <summary>How many pieces have been given off it and what was left of it, for names.</summary>
    public int Given { get; set; }

    /// <summary>The name its strips are called after.</summary>
    public string Stem { get; set; } = "";

    public int Sheet => sheet;

    public long Size(SheetAxis axis) => axis == SheetAxis.Length ? sizeX : sizeY;

    /// <summary>Where its low edge is on the sheet.</summary>
    public long At(SheetAxis axis) => axis == SheetAxis.Length ? x : y;

    /// <summary>The piece from one distance to another along an axis.</summary>
    public Wood Slice(SheetAxis axis, long from, long to) =>
        axis == SheetAxis.Length
            ? new(sheet, x + from, y, to - from, sizeY)
            : new(sheet, x, y + from, sizeX, to - from);

    public Workpiece ToWorkpiece() =>
        new(Id, sheet, new Length(x), new Length(y), new Length(sizeX), new Length(sizeY), Use, Part);

    /// <summary>Settles what a piece is that nothing more is cut from.</summary>
    public void Leave() =>
        Use = Offcuts.AreWorthKeeping(new Length(sizeX), new Length(sizeY)) ? WorkpieceUse.Offcut : WorkpieceUse.Waste;
}
