using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Paper;

/// <summary>What is true of one sheet and not of every other, in words, for whoever lays it down: where it comes from, what is bad on it, which of its edges to trust.</summary>
/// <param name="words">The job's words.</param>
public sealed class SheetTruths(JobWords words)
{
    /// <summary>Where it comes from, when it is not a new sheet: <c>the offcut marked 3a</c>; empty for a new one.</summary>
    public string From(PlanSheet sheet) =>
        words.Stock(sheet) is not { IsOffcut: true } stock ? ""
        : IsNamed(stock) ? $"the offcut marked {stock.Id}"
        : "an offcut from the rack";

    /// <summary>A sentence for each; none for a square sheet without faults whose edges are dressed.</summary>
    public IEnumerable<string> Of(PlanSheet sheet)
    {
        if (words.Stock(sheet) is not { } stock)
            yield break;
        if (stock.Bad.Count > 0)
            yield return $"Lay it so that what is bad lies where it is crossed out: {string.Join("; ", stock.Bad.Select(Where))}.";
        if (stock.OutOfSquare.IsPositive)
            yield return $"Its ends are {words.Size(stock.OutOfSquare)} out of square over its width: square each cut to the bottom edge, not to an end.";
        if (stock.TrustsEdges)
            yield return "Its factory edges are trusted: they are measured from as they come.";
    }

    private string Where(BadArea bad)
    {
        var why = bad.Why is { Length: > 0 } said ? $" ({said})" : "";
        return $"{words.Sides(bad.Length, bad.Width)}{why}, {FromEnd(bad.X, "left end")}, {FromEnd(bad.Y, "bottom edge")}";
    }

    private string FromEnd(Length distance, string edge) =>
        distance.IsPositive ? $"{words.Size(distance)} from the {edge}" : $"at the {edge}";

    // What nobody named goes by its material and its place in the list.
    private static bool IsNamed(StockPiece stock) =>
        !stock.Id.StartsWith($"{stock.Material}/", StringComparison.Ordinal);
}
