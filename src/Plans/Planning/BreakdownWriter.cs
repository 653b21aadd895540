using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Writes the rough cuts and dressing passes of a sheet, and hands on the chunks that go to the table saw.</summary>
/// <remarks>
/// An edge that several chunks will share is dressed while the piece is still whole: one pass instead of several, when the
/// track is long enough.
/// </remarks>
internal sealed class BreakdownWriter(Script script)
{
    private readonly SawNumbers _saws = script.Job.Saws;
    private readonly List<(Wood Chunk, Node Root)> _chunks = [];
    private int _number;
    private IReadOnlyList<Node> _roots = [];

    /// <summary>The chunks of one sheet.</summary>
    public List<(Wood Chunk, Node Root)> Write(SheetLayout sheet)
    {
        (_roots, _number) = (sheet.Roots(script.Job), 0);
        _chunks.Clear();
        WriteRough(script.Take(sheet.Stock), sheet.Rough);
        return [.. _chunks];
    }

    private void WriteRough(Wood piece, Rough rough)
    {
        if (rough.First is { } first)
            WriteSplit(piece, rough, first);
        else if (rough.Held is { } held)
            Hold(piece, held);
        else if (rough.Region >= 0 && !_roots[rough.Region].IsEmpty)
            WriteRegion(piece, _roots[rough.Region]);
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
        if (HasChunk(first) && rough.Second is { } other && HasChunk(other))
            piece = DressShared(piece, rough.Axis.Other());
        var (gives, leaves) = script.Break(piece, rough.Axis, rough.At - Gone(piece, rough.Axis));
        gives.Use = WorkpieceUse.Chunk;
        WriteRough(gives, first);
        if (leaves is not null && rough.Second is { } second)
        {
            leaves.Use = WorkpieceUse.Chunk;
            WriteRough(leaves, second);
        }
    }

    private void Hold(Wood piece, Item held)
    {
        piece.Use = WorkpieceUse.Held;
        piece.Part = held.Run ?? script.Job.Request.Parts[held.Parts[0]].Id;
    }

    private void WriteRegion(Wood piece, Node root)
    {
        if (root.Rest is not { IsRough: true } rest)
        {
            WriteChunk(piece, root);
            return;
        }
        piece = DressShared(piece, root.Axis.Other());
        var chunk = root.Along - _saws.RoughGap - rest.Across + (2 * _saws.Dressing);
        var (gives, leaves) = script.Break(piece, root.Axis, chunk - Gone(piece, root.Axis));
        (gives.Use, leaves!.Use) = (WorkpieceUse.Chunk, WorkpieceUse.Chunk);
        WriteChunk(gives, root);
        WriteRegion(leaves, rest);
    }

    private void WriteChunk(Wood piece, Node root)
    {
        foreach (var axis in (SheetAxis[])[SheetAxis.Width, SheetAxis.Length])
            if (_saws.Dressing > 0 && !piece.IsTrueLow(axis))
                piece = Dressed(piece, axis);
        if (piece.Use != WorkpieceUse.Sheet)
        {
            piece.Use = WorkpieceUse.Chunk;
            piece.Id = piece.Stem = $"S{piece.Sheet}-C{++_number}";
        }
        _chunks.Add((piece, root));
    }

    private Wood DressShared(Wood piece, SheetAxis axis)
    {
        var isInReach = piece.Size(axis.Other()) <= _saws.TrackLength;
        return _saws.Dressing > 0 && !piece.IsTrueLow(axis) && isInReach ? Dressed(piece, axis) : piece;
    }

    private Wood Dressed(Wood piece, SheetAxis axis)
    {
        var dressed = script.Dress(piece, axis);
        dressed.Use = WorkpieceUse.Chunk;
        return dressed;
    }

    /// <summary>What dressing has already taken off the low end.</summary>
    private long Gone(Wood piece, SheetAxis axis) => piece.IsTrueLow(axis) ? _saws.Dressing : 0;

    private bool HasChunk(Rough rough) => rough.Leaves().Any(l => l.Region >= 0 && !_roots[l.Region].IsEmpty);

    private bool IsUsed(Rough leaf) => leaf.Held is not null || HasChunk(leaf);
}
