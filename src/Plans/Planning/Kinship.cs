namespace Nookwright.Planning;

/// <summary>Which items, settings and stocks of one job are those of another: the same parts at the same sizes, by their ids.</summary>
internal sealed class Kinship
{
    private readonly Dictionary<Item, Item> _items = [];
    private readonly Dictionary<int, int> _settings = [];
    private readonly Dictionary<Stock, Stock> _stocks = [];

    private Kinship(Job before, Job now)
    {
        Take(before.Items, now.Items, before, now);
        Take(before.Blanks, now.Blanks, before, now);
        var stocks = now.Stocks.ToDictionary(s => s.Piece.Id);
        foreach (var stock in before.Stocks)
            if (stocks.TryGetValue(stock.Piece.Id, out var same) && IsSame(stock, same))
                _stocks[stock] = same;
    }

    /// <summary>What two jobs have in common.</summary>
    public static Kinship Of(Job before, Job now) => new(before, now);

    /// <summary>The item it is now; null when it has changed or is gone.</summary>
    public Item? Of(Item item) => _items.GetValueOrDefault(item);

    /// <summary>The stock it is now; null when it has changed or is gone.</summary>
    public Stock? Of(Stock stock) => _stocks.GetValueOrDefault(stock);

    /// <summary>The setting it is now, -1 for none; null when no part has it any more.</summary>
    public int? Of(int setting) =>
        setting < 0 ? -1
        : _settings.TryGetValue(setting, out var now) ? now
        : null;

    private void Take(IReadOnlyList<Item> before, IReadOnlyList<Item> now, Job jobBefore, Job jobNow)
    {
        var named = now.ToDictionary(i => NameOf(i, jobNow));
        foreach (var item in before)
            if (named.TryGetValue(NameOf(item, jobBefore), out var same) && IsSame(item, same) && Agree(item, same))
                _items[item] = same;
    }

    private static string NameOf(Item item, Job job) =>
        string.Join('\n', item.Parts.Select(p => job.Request.Parts[p].Id).Prepend(item.Run ?? ""));

    private static bool IsSame(Item before, Item now) =>
        before.Material == now.Material
        && before.Turns.Count == now.Turns.Count
        && before.Turns.Zip(now.Turns).All(t => IsSame(t.First, t.Second));

    private static bool IsSame(Turn before, Turn now) =>
        (before.X, before.Y, before.Figure, before.MatchX, before.MatchY)
            == (now.X, now.Y, now.Figure, now.MatchX, now.MatchY)
        && Sizes(before.Along).SequenceEqual(Sizes(now.Along));

    private static IEnumerable<long> Sizes(RunLine? line) =>
        line is null ? [] : line.Segments.SelectMany(s => s.Select(m => m.Size).Append(-1));

    private static bool IsSame(Stock before, Stock now) =>
        (
            before.Material,
            before.X,
            before.Y,
            before.Piece.HasFigure,
            before.Piece.TrustsEdges,
            before.Piece.OutOfSquare
        ) == (now.Material, now.X, now.Y, now.Piece.HasFigure, now.Piece.TrustsEdges, now.Piece.OutOfSquare)
        && before.Piece.Bad.SequenceEqual(now.Piece.Bad);

    /// <summary>Each setting is one setting now, and no two are the same one; an item against that has changed.</summary>
    private bool Agree(Item before, Item now)
    {
        var pairs = Settings(before).Zip(Settings(now)).Distinct().ToList();
        var ones = _settings.Values.ToHashSet();
        var isClash = pairs.Any(p =>
            _settings.TryGetValue(p.First, out var known) ? known != p.Second : p.Second < 0 || ones.Contains(p.Second)
        );
        if (isClash || pairs.DistinctBy(p => p.First).Count() < pairs.Count)
            return false;
        foreach (var (first, second) in pairs)
            _settings[first] = second;
        return true;
    }

    private static IEnumerable<int> Settings(Item item) =>
        item
            .Turns.SelectMany(t =>
                new[] { t.SetX, t.SetY }.Concat(t.Along?.Segments.SelectMany(s => s).Select(m => m.Setting) ?? [])
            )
            .Where(s => s >= 0);
}
