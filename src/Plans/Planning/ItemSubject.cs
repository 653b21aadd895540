using System.Globalization;
using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>What cannot be cut, and how that is said.</summary>
internal sealed record ItemSubject(Item Item, CutRun? Run, CutRequest Request, SawNumbers Saws)
{
    public long Smallest =>
        Item.Parts.Select(p => Request.Parts[p]).Min(p => Math.Min(p.Length.Nanometres, p.Width.Nanometres));

    private long LongestSide =>
        Item.Parts.Select(p => Request.Parts[p]).Max(p => Math.Max(p.Length.Nanometres, p.Width.Nanometres));

    private string Name => Run is null ? Request.Parts[Item.Parts[0]].Id : $"{Run.Id} (running grain)";

    /// <summary>True when the piece a part is first cut from at the table saw can be dressed and handled.</summary>
    public static bool IsHandled(Turn turn, Stock stock, SawNumbers saws)
    {
        var (x, y) = Chunk(turn, stock, saws);
        return saws.CanHandle(x, y, stock)
            && (saws.Dressing == 0 || Math.Max(x, y) + saws.Dressing <= saws.TrackLength || stock.Piece.TrustsEdges);
    }

    public Finding NotFromPin()
    {
        var pin = Item.From!;
        return Finding(
            "cutting.pin-not-in-stock",
            Request.Stock.FirstOrDefault(s => s.Id == pin) is { } other
                ? $"is pinned to {pin}, which is {other.Material}, and is of {Item.Material}; pin it to a sheet of its material, or take the pin away."
                : $"is pinned to {pin}, and there is no such stock; add it, or take the pin away."
        );
    }

    public Finding NotSquared(Stock stock) =>
        Finding(
            "cutting.sheet-not-squared",
            $"comes from {stock.Piece.Id}, which is out of square, and the track of {Say(Saws.TrackLength)} does not reach "
                + "along it to square it; use a longer track, or add a square sheet."
        );

    public Finding TooLarge(List<Stock> stocks)
    {
        var largest = Rough.Of(stocks.MaxBy(s => s.Area)!, Saws);
        var turn = Item.Turns.FirstOrDefault(t => t.Figure) ?? Item.Turns[0];
        var rule = Run is null ? "cutting.part-larger-than-sheet" : "cutting.run-longer-than-sheet";
        return Finding(
            rule,
            $"needs {Say(turn.X)} along the figure by {Say(turn.Y)} across, and the largest sheet {Where} gives "
                + $"{Say(largest.X.Usable)} by {Say(largest.Y.Usable)} after dressing; {Remedy}."
        );
    }

    public Finding OnBadAreas(List<Stock> stocks)
    {
        var turn = Item.Turns.FirstOrDefault(t => t.Figure) ?? Item.Turns[0];
        var clear = stocks.SelectMany(s => BadParting.Clear(Rough.Of(s, Saws), s, Saws));
        var largest = clear.MaxBy(r => (double)r.X.Usable * r.Y.Usable);
        var gives = largest is null ? "nothing" : $"{Say(largest.X.Usable)} by {Say(largest.Y.Usable)}";
        return Finding(
            "cutting.part-on-bad-area",
            $"needs {Say(turn.X)} along the figure by {Say(turn.Y)} across, and the largest clear place {Where} gives {gives} "
                + $"beside the bad areas; {Remedy}."
        );
    }

    public Finding BeyondSaws(List<Stock> stocks) =>
        Finding(
            "cutting.part-beyond-saws",
            Item.Turns.FirstOrDefault(turn => ItemFindings.CanSet(turn, Saws)) is not { } turn ? ReachMessage
                : stocks.Find(s => Weighs(turn, s) > Saws.ChunkKilograms) is { } heavy ? WeightMessage(turn, heavy)
                : HandlingMessage(turn)
        );

    public Finding Finding(string rule, string what)
    {
        IEnumerable<string> parts = Item.Parts.Select(p => Request.Parts[p].Id);
        return new(rule, Severity.MustMend, $"{Name} {what}", Run is null ? [.. parts] : [Run.Id, .. parts]);
    }

    private string Where => Item.From is { } pin ? $"of {pin}, where it is pinned," : $"of {Item.Material}";

    private string Remedy =>
        (Item.From is null ? "" : "take the pin away, ")
        + (
            Run is not null ? "split the run, or add a larger sheet"
            : TurnedFits ? "let it be turned, make it smaller, join it from two, or add a larger sheet"
            : "make it smaller, join it from two, or add a larger sheet"
        );

    /// <summary>True when it would fit with its figure the other way.</summary>
    private bool TurnedFits =>
        Item.Turns.All(t => t.Figure)
        && Request
            .Stock.Where(s => s.Material == Item.Material)
            .Any(s => Item.Turns.Any(t => t.Y < s.Length.Nanometres && t.X < s.Width.Nanometres));

    private string ReachMessage =>
        Saws.CrosscutWidth < Request.Saws.ChunkWidth.Nanometres
        && Item.Turns.Any(t => Saws.CanSet(t.X) && Saws.CanSet(t.Y))
            ? $"has a side beyond the fence's {Say(Saws.RipReach)}, and the crosscut guide takes pieces {Say(Saws.CrosscutWidth)} wide; "
                + "join it from two, or raise the shop's rip reach or crosscut width."
            : $"has a side of {Say(LongestSide)}, beyond the saws: the fence reaches {Say(Saws.RipReach)} and the stop {Say(Saws.CrosscutReach)}; "
                + "join it from two, or raise the shop's rip reach or crosscut reach.";

    private string HandlingMessage(Turn turn) =>
        $"needs a chunk of {Say(turn.X + (2 * Saws.Dressing))} by {Say(turn.Y + (2 * Saws.Dressing))} with its rough edges, and one "
        + $"person handles {Say(Saws.ChunkLength)} by {Say(Saws.ChunkWidth)} with a track of {Say(Saws.TrackLength)}; join it "
        + "from two, or raise the shop's chunk length, chunk width or track length.";

    private string WeightMessage(Turn turn, Stock stock)
    {
        string Kilograms(decimal? mass) => $"{mass!.Value.ToString("0.#", CultureInfo.InvariantCulture)} kg";
        return $"needs a chunk of {Kilograms(Weighs(turn, stock))}, and one person handles {Kilograms(Saws.ChunkKilograms)}; join it from "
            + "two, or raise the shop's chunk kilograms and have a second pair of hands.";
    }

    private decimal? Weighs(Turn turn, Stock stock)
    {
        var (x, y) = Chunk(turn, stock, Saws);
        return stock.Kilograms(x, y);
    }

    /// <summary>The least chunk it is cut from, its low edges true: cut off rough, or as large as the sheet.</summary>
    private static (long X, long Y) Chunk(Turn turn, Stock stock, SawNumbers saws)
    {
        var sheet = Rough.Of(stock, saws);
        return (Math.Min(turn.X + saws.Dressing, sheet.X.Handled), Math.Min(turn.Y + saws.Dressing, sheet.Y.Handled));
    }

    private string Say(long nanometres) => Request.Say(new(nanometres));
}
