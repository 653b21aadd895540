namespace Nookwright.Planning;

/// <summary>Orders in which items are placed: large before small, by a measure that differs from way to way.</summary>
internal static class ItemOrder
{
    /// <summary>How many measures there are.</summary>
    public const int Ways = 4;

    /// <summary>An order for a first construction; runs first where they would else find no strip long enough.</summary>
    public static IEnumerable<Item> Of(IEnumerable<Item> items, int way) =>
        items
            .OrderByDescending(item => item.Run is not null && way < 2)
            .ThenByDescending(item => Measure(item, way % Ways))
            .ThenBy(item => item.Id);

    /// <summary>The same order piece by piece where the job asks for that: what is finished together should lie together.</summary>
    public static IEnumerable<Item> Of(Job job, int way)
    {
        var items = Of(job.Items, way);
        if (!job.Request.Rules.BoxByBox)
            return items;
        var pieces = job.Request.Parts.Select(p => p.Piece).OfType<string>().Distinct().ToList();
        return items.OrderBy(item => item.Parts.Min(Box));

        int Box(int part) => job.Request.Parts[part].Piece is { } piece ? pieces.IndexOf(piece) : pieces.Count;
    }

    /// <summary>How large an item is by one of the measures.</summary>
    public static double Measure(Item item, int way) =>
        way switch
        {
            0 => item.Area,
            1 => item.LongSide,
            2 => item.LongSide + item.ShortSide,
            _ => item.ShortSide,
        };
}
