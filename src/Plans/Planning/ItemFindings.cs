using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Why a part or a run can be cut from no sheet there is, and what would make it possible.</summary>
internal static class ItemFindings
{
    /// <summary>Null when some sheet will do, as far as sizes, figure and saws go.</summary>
    public static Finding? Of(Item item, CutRun? run, CutRequest request, SawNumbers saws, IReadOnlyList<Stock> stocks)
    {
        var subject = new Subject(item, run, request);
        if (subject.Smallest <= 0)
            return subject.Finding("cutting.no-size", "has a side of no size; give it one above zero.");
        var ours = stocks.Where(s => s.Material == item.Material).ToList();
        if (ours.Count == 0)
            return subject.Finding(
                "cutting.no-sheet-of-material",
                $"is of {item.Material}, and there is no such sheet in stock; add one."
            );
        if (!ours.Any(stock => Fits(item, stock, saws, request.Rules)))
            return subject.TooLarge(ours, saws);
        if (
            !ours.Any(stock =>
                Turns(item, stock).Any(turn => Fits(turn, stock, saws, request.Rules) && IsInReach(turn, saws))
            )
        )
            return subject.Finding("cutting.part-beyond-saws", subject.ReachMessage(saws));
        return null;
    }

    /// <summary>The ways an item may lie on a sheet.</summary>
    public static IEnumerable<Turn> Turns(Item item, Stock stock) =>
        item.Turns.Where(t => t.Figure || !stock.Piece.HasFigure);

    /// <summary>True when the item can lie on a sheet of this kind, dressing included.</summary>
    public static bool Fits(Item item, Stock stock, SawNumbers saws, CutRules rules) =>
        Turns(item, stock).Any(turn => Fits(turn, stock, saws, rules));

    private static bool Fits(Turn turn, Stock stock, SawNumbers saws, CutRules rules) =>
        FitsOne(turn.X, stock.X, turn.MatchX && turn.SetX >= 0, turn, saws, rules)
        && FitsOne(turn.Y, stock.Y, turn.MatchY && turn.SetY >= 0, turn, saws, rules);

    private static bool FitsOne(long size, long sheet, bool isMatched, Turn turn, SawNumbers saws, CutRules rules)
    {
        var isBlank = turn is { SetX: < 0, SetY: < 0 };
        var need = isBlank ? size : size + (2 * saws.Dressing);
        var mustBeCut = saws.Dressing == 0 && isMatched && rules.VisitsFirst && !isBlank;
        return mustBeCut ? need < sheet : need <= sheet;
    }

    private static bool IsInReach(Turn turn, SawNumbers saws) =>
        turn is { SetX: < 0, SetY: < 0 }
        || (CanSet(turn, saws) && saws.CanHandle(Rough(turn.X, saws), Rough(turn.Y, saws)));

    private static bool CanSet(Turn turn, SawNumbers saws) =>
        turn.Along is null
            ? saws.CanSet(turn.X) && saws.CanSet(turn.Y)
            : saws.CanSet(turn.Size(turn.Along.Axis.Other()))
                && turn.Along.Segments.SelectMany(s => s).All(m => saws.CanSet(m.Size));

    private static long Rough(long size, SawNumbers saws) => size + (2 * saws.Dressing);

    private sealed record Subject(Item Item, CutRun? Run, CutRequest Request)
    {
        public long Smallest =>
            Item.Parts.Select(p => Request.Parts[p]).Min(p => Math.Min(p.Length.Nanometres, p.Width.Nanometres));

        private string Say(long nanometres) => Request.Say(new(nanometres));

        private string Name => Run is null ? Request.Parts[Item.Parts[0]].Id : $"{Run.Id} (running grain)";

        public Finding TooLarge(List<Stock> stocks, SawNumbers saws)
        {
            var largest = stocks.MaxBy(s => s.Area)!.Piece;
            var turn = Item.Turns.FirstOrDefault(t => t.Figure) ?? Item.Turns[0];
            var margin = new Measure.Length(2 * saws.Dressing);
            var rule = Run is null ? "cutting.part-larger-than-sheet" : "cutting.run-longer-than-sheet";
            return Finding(
                rule,
                $"needs {Say(turn.X)} along the figure by {Say(turn.Y)} across, and the largest sheet of {Item.Material} gives "
                    + $"{Request.Say(largest.Length - margin)} by {Request.Say(largest.Width - margin)} after dressing; "
                    + (
                        Run is null
                            ? "make it smaller, join it from two, let it be turned, or add a larger sheet."
                            : "split the run, or add a larger sheet."
                    )
            );
        }

        public string ReachMessage(SawNumbers saws) =>
            Item.Turns.FirstOrDefault(turn => CanSet(turn, saws)) is { } turn
                ? $"needs a chunk of {Say(Rough(turn.X, saws))} by {Say(Rough(turn.Y, saws))} with its rough edges, and one person "
                    + $"handles {Say(saws.ChunkLength)} by {Say(saws.ChunkWidth)} with a track of {Say(saws.TrackLength)}; join it "
                    + "from two, or raise the shop's chunk length, chunk width or track length."
                : $"has a side beyond the saws: the fence reaches {Say(saws.RipReach)} and the stop {Say(saws.CrosscutReach)}; "
                    + "join it from two, or raise the shop's rip reach or crosscut reach.";

        public Finding Finding(string rule, string what)
        {
            IEnumerable<string> parts = Item.Parts.Select(p => Request.Parts[p].Id);
            return new(rule, Severity.MustMend, $"{Name} {what}", Run is null ? [.. parts] : [Run.Id, .. parts]);
        }
    }
}
