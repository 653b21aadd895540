using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A request from bare lists of parts and sheets, without a job document.</summary>
public static class BareList
{
    /// <summary>The request; or which line asks for something that cannot be told apart.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="sheets">The sheets.</param>
    /// <param name="saws">The saws.</param>
    /// <param name="rules">What comes first.</param>
    /// <param name="partsFile">The name of the parts' file, for messages.</param>
    /// <remarks>
    /// Several of a label get the ids <c>label-1</c>, <c>label-2</c>, … and share the label. A match group keeps together
    /// the sides that all its parts share: lengths, widths, or both. A run takes its parts in the order of the file.
    /// </remarks>
    public static Outcome<CutRequest> Request(
        IReadOnlyList<ListedPart> parts,
        IReadOnlyList<ListedSheet> sheets,
        SawLimits saws,
        CutRules rules,
        string partsFile
    )
    {
        if (Materials(parts, sheets, partsFile) is { } noMaterial)
            return noMaterial;
        var only = sheets.Select(s => s.Material).FirstOrDefault(m => m is not null) ?? "sheet";
        var listed = parts.SelectMany(p => Cut(p, only).Select(c => (Line: p, Part: c))).ToList();
        if (listed.GroupBy(p => p.Part.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
            return new Refusal(
                $"\"{twice.Key}\" stands for two parts, first on line {twice.First().Line.Line}; give one another label.",
                "label",
                File: partsFile,
                Line: twice.Last().Line.Line
            );
        var runs = listed.Where(p => p.Line.Run is not null).GroupBy(p => p.Line.Run!);
        var matches = listed.Where(p => p.Line.Match is not null).GroupBy(p => p.Line.Match!);
        return new CutRequest(
            [.. listed.Select(p => p.Part)],
            [.. matches.Select(g => Match(g.Key, [.. g.Select(p => p.Part)]))],
            [.. runs.Select(g => new CutRun(g.Key, [.. g.Select(p => p.Part.Id)]))],
            [.. sheets.Select((s, i) => Stock(s, i, only) with { TrustsEdges = saws.TrustsEdges })],
            saws,
            rules
        );
    }

    private static Refusal? Materials(IReadOnlyList<ListedPart> parts, IReadOnlyList<ListedSheet> sheets, string file)
    {
        var several = sheets.Select(s => s.Material).Distinct().Count() > 1;
        return several && parts.FirstOrDefault(p => p.Material is null) is { } part
            ? new(
                $"{part.Label} has no material, and there are sheets of several; write which it is cut from.",
                "material",
                File: file,
                Line: part.Line
            )
            : null;
    }

    private static IEnumerable<CutPart> Cut(ListedPart part, string only) =>
        Enumerable
            .Range(1, part.Quantity)
            .Select(i => new CutPart(
                part.Quantity == 1 ? part.Label : $"{part.Label}-{i}",
                part.Label,
                part.Label,
                part.Material ?? only,
                part.Length,
                part.Width,
                part.Figure,
                []
            ));

    private static CutMatch Match(string group, IReadOnlyList<CutPart> parts)
    {
        var isLength = parts.Select(p => p.Length).Distinct().Count() == 1;
        var isWidth = parts.Select(p => p.Width).Distinct().Count() == 1;
        var side =
            isLength && isWidth ? MatchedSide.Both
            : isWidth ? MatchedSide.Width
            : MatchedSide.Length;
        return new(
            group,
            [.. parts.Select(p => new Parts.PartSide(p.Id, side))],
            $"The list puts them in group {group}."
        );
    }

    private static StockPiece Stock(ListedSheet sheet, int index, string only)
    {
        var material = sheet.Material ?? only;
        return new(
            $"{material}/{index + 1}",
            material,
            sheet.Length,
            sheet.Width,
            sheet.Quantity,
            sheet.Price,
            false,
            true
        );
    }
}
