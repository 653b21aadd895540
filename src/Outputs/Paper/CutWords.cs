using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>Saw cuts in words a maker can follow. Edges are named as the sheet lies on its page: length to the right.</summary>
/// <param name="words">The job's words.</param>
public sealed class CutWords(JobWords words)
{
    /// <summary>What a track needs to lie on beside its cut; common practice, no source.</summary>
    public static readonly Length TrackRest = Length.FromMillimetres(100);

    /// <summary>The edge a cut is measured from.</summary>
    public static string Edge(SheetAxis along, FromEdge from) =>
        (along, from) switch
        {
            (SheetAxis.Length, FromEdge.Low) => "left end",
            (SheetAxis.Length, FromEdge.High) => "right end",
            (SheetAxis.Width, FromEdge.Low) => "bottom edge",
            _ => "top edge",
        };

    /// <summary>A cut of the breakdown as an order: what to measure, where to cut, what that gives and leaves.</summary>
    public string Breakdown(SawCut cut)
    {
        var edge = Edge(cut.Along, cut.From);
        var work =
            IsSquaring(cut) ? $"{cut.On}: {Squared(cut, edge)}."
            : cut.Kind == CutKind.Dressing ? $"{cut.On}: dress the {edge}, {Dressed(cut)}."
            : $"{cut.On}: mark {words.Size(cut.Distance)} from the {edge}, cut {Direction(cut.Along)}.";
        return $"{work} {Result(cut)}{TrackCaution(cut)}";
    }

    // The track lies on what is kept: beyond the mark is the blade.
    private string TrackCaution(SawCut cut) =>
        (cut.Kind == CutKind.Dressing ? cut.Leaves : cut.Gives) is { } under && Along(under, cut) < TrackRest
            ? " Narrow: carry the track on a spare board of the same thickness beside it."
            : "";

    private Length Along(string id, SawCut cut) =>
        cut.Along == SheetAxis.Length ? words.Workpiece(id).Length : words.Workpiece(id).Width;

    /// <summary>A dressing or parting pass at the table saw as an order.</summary>
    public string Preparing(SawCut cut)
    {
        var (on, edge) = (words.Sized(cut.On), Edge(cut.Along, cut.From));
        var left = cut.Leaves is { } leaves ? $", leaves {words.Described(leaves)}" : "";
        return cut.Kind == CutKind.Dressing
            ? $"Dress the {edge} of {on}, {Dressed(cut)}{left}"
            : $"Part {on} at a pencil line {words.Size(cut.Distance)} from the {edge}: gives {words.Described(cut.Gives!)}{left}";
    }

    private string Dressed(SawCut cut) =>
        cut.Distance.IsPositive
            ? $"blade {words.Size(cut.Distance)} from it, {words.Size(TakenOff(cut))} off in all"
            : $"{words.Size(TakenOff(cut))} off";

    // An end that is not square stands out farther at one corner: there the most comes off.
    private string Squared(SawCut cut, string edge) =>
        $"square the {edge} to the bottom edge, blade {words.Size(cut.Distance)} from the corner that stands out farther, "
        + $"{words.Size(TakenOff(cut))} off there";

    private bool IsSquaring(SawCut cut) =>
        cut is { Kind: CutKind.Dressing, Along: SheetAxis.Length }
        && words.StockOf(words.Workpiece(cut.On)) is { OutOfSquare.IsPositive: true }
        && TakenOff(cut) > words.Saws.Dressing;

    // The sliver and the kerf together.
    private Length TakenOff(SawCut cut) =>
        Along(cut.On, cut) - (cut.Leaves is { } leaves ? Along(leaves, cut) : Length.Zero);

    private string Result(SawCut cut)
    {
        var gives = cut.Kind != CutKind.Dressing && cut.Gives is { } given ? $"Gives {words.Described(given)}" : null;
        var leaves = cut.Leaves is { } left ? $"leaves {words.Described(left)}" : "leaves nothing";
        return gives is null ? $"{char.ToUpperInvariant(leaves[0])}{leaves[1..]}." : $"{gives}; {leaves}.";
    }

    private static string Direction(SheetAxis along) =>
        along == SheetAxis.Width ? "along the figure" : "across the figure";
}
