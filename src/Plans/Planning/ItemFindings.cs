using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Why a part or a run can be cut from no sheet there is, and what would make it possible.</summary>
internal static class ItemFindings
{
    /// <summary>The rule of a part whose material nobody has.</summary>
    public const string NoSheet = "cutting.no-sheet-of-material";

    /// <summary>The same findings, with parts of one material that nobody has told together: one missing sheet is one trouble.</summary>
    public static IEnumerable<Finding> Together(IReadOnlyList<Finding> findings, CutRequest request)
    {
        var materials = request.Parts.ToDictionary(p => p.Id, p => p.Material);
        var missing = findings.Where(f => f.Rule == NoSheet).GroupBy(f => materials[f.About[^1]]);
        return missing
            .Select(group => Together(group, materials.ContainsKey))
            .Concat(findings.Where(f => f.Rule != NoSheet));
    }

    private static Finding Together(IGrouping<string, Finding> missing, Func<string, bool> isPart)
    {
        var all = missing.ToList();
        var about = all.SelectMany(f => f.About).ToList();
        return all.Count == 1
            ? all[0]
            : all[0] with
            {
                Message =
                    $"{about.Count(isPart)} parts are of {missing.Key}, and there is no such sheet in stock; add one.",
                About = about,
            };
    }

    /// <summary>Null when some sheet will do, as far as sizes, figure, bad areas and saws go.</summary>
    public static Finding? Of(Item item, CutRun? run, CutRequest request, SawNumbers saws, IReadOnlyList<Stock> stocks)
    {
        var subject = new ItemSubject(item, run, request, saws);
        if (subject.Smallest <= 0)
            return subject.Finding("cutting.no-size", "has a side of no size; give it one above zero.");
        var ours = stocks.Where(s => s.Material == item.Material).ToList();
        if (ours.Count == 0)
            return subject.Finding(NoSheet, $"is of {item.Material}, and there is no such sheet in stock; add one.");
        ours.RemoveAll(s => !item.MayComeFrom(s));
        if (ours.Count == 0)
            return subject.NotFromPin();
        if (ours.All(s => !CanSquare(s, saws)))
            return subject.NotSquared(ours[0]);
        if (!ours.Any(stock => Fits(item, stock, saws, request.Rules)))
            return subject.TooLarge(ours);
        if (!ours.Any(stock => Turns(item, stock).Any(turn => IsClear(turn, stock, saws, request.Rules))))
            return subject.OnBadAreas(ours);
        if (!ours.Any(stock => Turns(item, stock).Any(turn => IsCut(turn, stock, saws, request.Rules))))
            return subject.BeyondSaws(ours);
        return null;
    }

    /// <summary>The ways an item may lie on a sheet; none when it is pinned to another.</summary>
    public static IEnumerable<Turn> Turns(Item item, Stock stock) =>
        item.MayComeFrom(stock) ? item.Turns.Where(t => t.Figure || !stock.Piece.HasFigure) : [];

    /// <summary>True when the item can lie on a sheet of this kind, dressing included.</summary>
    public static bool Fits(Item item, Stock stock, SawNumbers saws, CutRules rules) =>
        Turns(item, stock).Any(turn => Fits(turn, Rough.Of(stock, saws), saws, rules));

    /// <summary>True when a sheet of this kind is square, or the track reaches to square it.</summary>
    public static bool CanSquare(Stock stock, SawNumbers saws) =>
        !stock.Piece.OutOfSquare.IsPositive
        || (stock.Y <= saws.TrackLength && (stock.X <= saws.TrackLength || Rough.Of(stock, saws).Y.At == 0));

    private static bool Fits(Turn turn, Rough raw, SawNumbers saws, CutRules rules) =>
        FitsOne(turn.X, raw.X, turn.MatchX && turn.SetX >= 0, turn, saws, rules)
        && FitsOne(turn.Y, raw.Y, turn.MatchY && turn.SetY >= 0, turn, saws, rules);

    private static bool FitsOne(long size, RawSide raw, bool isMatched, Turn turn, SawNumbers saws, CutRules rules)
    {
        var isBlank = turn is { SetX: < 0, SetY: < 0 };
        var room = isBlank ? raw.Room(saws.Dressing) : raw.Usable;
        var mustBeCut = saws.Dressing == 0 && isMatched && rules.VisitsFirst && !isBlank;
        return mustBeCut ? size < room : size <= room;
    }

    private static bool IsClear(Turn turn, Stock stock, SawNumbers saws, CutRules rules) =>
        BadParting.Clear(Rough.Of(stock, saws), stock, saws).Any(raw => Fits(turn, raw, saws, rules));

    private static bool IsCut(Turn turn, Stock stock, SawNumbers saws, CutRules rules) =>
        IsClear(turn, stock, saws, rules)
        && CanSquare(stock, saws)
        && (turn is { SetX: < 0, SetY: < 0 } || (CanSet(turn, saws) && ItemSubject.IsHandled(turn, stock, saws)));

    /// <summary>True when the saws reach its sizes, and the crosscut guide takes it where the stop has to be used.</summary>
    public static bool CanSet(Turn turn, SawNumbers saws) =>
        turn.Along is { } line
            ? saws.CanSet(turn.Size(line.Axis.Other()))
                && line.Segments.SelectMany(s => s)
                    .All(m => saws.CanSet(m.Size) && saws.CanCut(m.Size, turn.Size(line.Axis.Other())))
            : saws.CanSet(turn.X) && saws.CanSet(turn.Y) && IsGuided(turn, saws);

    /// <summary>One cut is made from a chunk that is wider than the part by its dressing, the other from the strip.</summary>
    private static bool IsGuided(Turn turn, SawNumbers saws) =>
        (saws.CanCut(turn.X, turn.Y + saws.Dressing) && saws.CanCut(turn.Y, turn.X))
        || (saws.CanCut(turn.Y, turn.X + saws.Dressing) && saws.CanCut(turn.X, turn.Y));
}
