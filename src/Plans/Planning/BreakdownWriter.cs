using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Writes the rough cuts and dressing passes of a sheet, and hands on the chunks that go to the table saw.</summary>
/// <remarks>
/// An edge that several chunks will share is dressed while the piece is still whole: one pass instead of several, when the
/// track is long enough.
/// </remarks>
internal sealed class BreakdownWriter(Script script)
{
    private static readonly SheetAxis[] AcrossFirst = [SheetAxis.Width, SheetAxis.Length];

    private readonly SawNumbers _saws = script.Job.Saws;
    private readonly List<(Wood Chunk, Node Root)> _chunks = [];
    private int _number;
    private IReadOnlyList<Node> _roots = [];

    /// <summary>The chunks of one sheet.</summary>
    public List<(Wood Chunk, Node Root)> Write(SheetLayout sheet)
    {
        (_roots, _number) = (sheet.Roots(script.Job), 0);
        _chunks.Clear();
        WriteRough(Squared(script.Take(sheet.Stock), sheet.Rough), sheet.Rough);
        return [.. _chunks];
    }

    /// <summary>A sheet out of square has its long edge dressed and its end squared to that, before anything is measured.</summary>
    private Wood Squared(Wood sheet, Rough rough)
    {
        foreach (var axis in AcrossFirst)
            sheet = Dressed(sheet, axis, rough.Side(axis).At);
        return sheet;
    }

    private void WriteRough(Wood piece, Rough rough)
    {
        if (rough.First is { } first)
            WriteSplit(piece, rough, first);
        else if (rough.Held is { } held)
            Hold(piece, held);
        else if (rough.Region >= 0 && !_roots[rough.Region].IsEmpty)
            WriteRegion(piece, _roots[rough.Region], new(rough.X.TrueAt, rough.Y.TrueAt));
        else
            piece.Leave();
    }

    private void WriteSplit(Wood piece, Rough rough, Rough first)
    {
        if (!first.Leaves().Concat(rough.Second?.Leaves() ?? []).Any(IsUsed))
        {
            piece.Leave();
            return;
        }
        var along = rough.Axis.Other();
        var trueAt = rough.Side(along).TrueAt;
        if (HasChunk(first) && rough.Second is { } other && HasChunk(other) && !IsSplitBefore(rough, along, trueAt))
            piece = DressShared(piece, along, trueAt);
        var (gives, leaves) = BreakAt(piece, rough.Axis, rough.Side(rough.Axis).At + rough.At);
        WriteRough(gives, first);
        if (leaves is not null && rough.Second is { } second)
            WriteRough(leaves, second);
    }

    private void Hold(Wood piece, Item held)
    {
        piece.Use = WorkpieceUse.Held;
        piece.Part = held.Run ?? script.Job.Request.Parts[held.Parts[0]].Id;
    }

    private void WriteRegion(Wood piece, Node root, Corner corner)
    {
        if (root.Rest is not { IsRough: true } rest)
        {
            WriteChunk(piece, root, corner);
            return;
        }
        piece = DressShared(piece, root.Axis.Other(), corner.Of(root.Axis.Other()));
        var end = corner.Of(root.Axis) + root.Along - _saws.RoughGap - rest.Across;
        var (gives, leaves) = BreakAt(piece, root.Axis, end + _saws.Dressing);
        WriteChunk(gives, root, corner);
        WriteRegion(leaves!, rest, corner.With(root.Axis, end + _saws.RoughGap));
    }

    private void WriteChunk(Wood piece, Node root, Corner corner)
    {
        foreach (var axis in AcrossFirst)
            piece = Dressed(piece, axis, corner.Of(axis));
        if (piece.Use != WorkpieceUse.Sheet)
        {
            piece.Use = WorkpieceUse.Chunk;
            piece.Id = piece.Stem = $"S{piece.Sheet}-C{++_number}";
        }
        _chunks.Add((piece, root));
    }

    private (Wood Gives, Wood? Leaves) BreakAt(Wood piece, SheetAxis axis, long at)
    {
        var (gives, leaves) = script.Break(piece, axis, at - piece.At(axis));
        gives.Use = WorkpieceUse.Chunk;
        if (leaves is not null)
            leaves.Use = WorkpieceUse.Chunk;
        return (gives, leaves);
    }

    private Wood DressShared(Wood piece, SheetAxis axis, long until) =>
        piece.Size(axis.Other()) <= _saws.TrackLength ? Dressed(piece, axis, until) : piece;

    /// <summary>The piece with its low edge true there; it may be already.</summary>
    private Wood Dressed(Wood piece, SheetAxis axis, long until)
    {
        if (piece.At(axis) == until)
            return piece;
        var dressed = script.Dress(piece, axis, until - piece.At(axis));
        dressed.Use = WorkpieceUse.Chunk;
        return dressed;
    }

    private bool HasChunk(Rough rough) => rough.Leaves().Any(l => l.Region >= 0 && !_roots[l.Region].IsEmpty);

    /// <summary>True when a later rough cut lies where dressing the whole edge would take the wood away.</summary>
    private static bool IsSplitBefore(Rough rough, SheetAxis axis, long trueAt) =>
        rough.First is { } first
        && (
            (rough.Axis == axis && rough.Side(axis).At + rough.At <= trueAt)
            || IsSplitBefore(first, axis, trueAt)
            || (rough.Second is { } second && IsSplitBefore(second, axis, trueAt))
        );

    private bool IsUsed(Rough leaf) => leaf.Held is not null || HasChunk(leaf);

    /// <summary>Where the low edges of a chunk are once they are true.</summary>
    private readonly record struct Corner(long X, long Y)
    {
        public long Of(SheetAxis axis) => axis == SheetAxis.Length ? X : Y;

        public Corner With(SheetAxis axis, long at) => axis == SheetAxis.Length ? new(at, Y) : new(X, at);
    }
}
