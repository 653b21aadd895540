using Nookwright.Cutting;
using Nookwright.Measure;
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
    /// the sides that all its parts share: lengths, widths, or both. A run takes its parts in the order of the file. Parts that
    /// wait for a reading are left longer and wider by the shop's allowance.
    /// </remarks>
    public static Outcome<CutRequest> Request(
        IReadOnlyList<ListedPart> parts,
        IReadOnlyList<ListedSheet> sheets,
        SawLimits saws,
        CutRules rules,
        string partsFile
    )
    {
        if ((Materials(parts, sheets, partsFile) ?? Pinned(parts, sheets, partsFile)) is { } wrong)
            return wrong;
        var only = sheets.Select(s => s.Material).FirstOrDefault(m => m is not null) ?? "sheet";
        var listed = parts.SelectMany(p => Cut(p, only, saws.Allowance).Select(c => (Line: p, Part: c))).ToList();
        if (listed.GroupBy(p => p.Part.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
            return new Refusal(
                $"\"{twice.Key}\" stands for two parts, first on line {twice.First().Line.Line}; give one another label.",
                "label",
                File: partsFile,
                Line: twice.Last().Line.Line
            );
        var matches = listed.Where(p => p.Line.Match is not null).GroupBy(p => p.Line.Match!);
        return new CutRequest(
            [.. listed.Select(p => p.Part)],
            [.. matches.SelectMany(g => Match(g.Key, [.. g.Select(p => p.Part)]))],
            [.. listed.Where(p => p.Line.Run is not null).GroupBy(p => p.Line.Run!).Select(Run)],
            [.. sheets.Select((s, i) => Stock(s, i, only, saws))],
            saws,
            rules
        )
        {
            Apart = [.. listed.Where(p => p.Line.Apart is not null).GroupBy(p => p.Line.Apart!).Select(Apart)],
        };
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

    private static Refusal? Pinned(IReadOnlyList<ListedPart> parts, IReadOnlyList<ListedSheet> sheets, string file)
    {
        var names = sheets.Select(s => s.Name).OfType<string>().ToList();
        var known =
            names.Count == 0 ? "the sheets have no column \"name\" yet" : $"the sheets are {string.Join(", ", names)}";
        return parts.FirstOrDefault(p => p.From is { } name && !names.Contains(name)) is { } part
            ? new(
                $"{part.Label} is to come from \"{part.From}\", and no sheet has that name: {known}; write one of their names in both lists.",
                "from",
                File: file,
                Line: part.Line
            )
            : null;
    }

    private static CutRun Run(IGrouping<string, (ListedPart Line, CutPart Part)> run) =>
        new(run.Key, [.. run.Select(p => p.Part.Id)])
        {
            Height = run.Select(p => p.Line.Height).FirstOrDefault(h => h is not null),
            MaySplitAfter = [.. run.Where(p => p.Line.MaySplit).Select(p => p.Part.Id)],
            Gaps = [.. run.SkipLast(1).Select(p => p.Line.Gap)],
        };

    private static CutApart Apart(IGrouping<string, (ListedPart Line, CutPart Part)> wish) =>
        new(wish.Key, [.. wish.Select(p => p.Part.Id)]);

    private static IEnumerable<CutPart> Cut(ListedPart part, string only, Length allowance) =>
        Enumerable
            .Range(1, part.Quantity)
            .Select(i => new CutPart(
                part.Quantity == 1 ? part.Label : $"{part.Label}-{i}",
                part.Label,
                part.Label,
                part.Material ?? only,
                part.Awaits is null ? part.Length : part.Length + allowance,
                part.Awaits is null ? part.Width : part.Width + allowance,
                part.Figure,
                part.Awaits is { } reading ? [reading] : []
            )
            {
                Piece = part.Piece,
                From = part.From,
            });

    private static IEnumerable<CutMatch> Match(string group, IReadOnlyList<CutPart> parts)
    {
        CutMatch On(string id, MatchedSide side) =>
            new(id, [.. parts.Select(p => new Parts.PartSide(p.Id, side))], $"The list puts them in group {group}.");
        var isLength = parts.Select(p => p.Length).Distinct().Count() == 1;
        var isWidth = parts.Select(p => p.Width).Distinct().Count() == 1;
        if (isLength && isWidth)
            return [On($"{group}, length", MatchedSide.Length), On($"{group}, width", MatchedSide.Width)];
        return [On(group, isWidth ? MatchedSide.Width : MatchedSide.Length)];
    }

    private static StockPiece Stock(ListedSheet sheet, int index, string only, SawLimits saws)
    {
        var material = sheet.Material ?? only;
        return new(
            sheet.Name ?? $"{material}/{index + 1}",
            material,
            sheet.Length,
            sheet.Width,
            sheet.Quantity,
            sheet.Price,
            sheet.IsOffcut,
            sheet.HasFigure
        )
        {
            Bad = sheet.Bad,
            OutOfSquare = sheet.OutOfSquare,
            TrustsEdges = sheet.TrustsEdges ?? saws.TrustsEdges,
            KilogramsPerSquareMetre = sheet.KilogramsPerSquareMetre,
        };
    }
}
