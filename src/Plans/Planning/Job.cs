using Nookwright.Cutting;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>A request as the search sees it: lengths as whole nanometres, dimensions as numbered settings.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Saws">The saws.</param>
/// <param name="Stocks">The stock.</param>
/// <param name="Settings">The settings, by number.</param>
/// <param name="Items">What is cut to size now: single parts and runs.</param>
/// <param name="Blanks">Held parts, only broken down.</param>
/// <param name="FirstRules">Pairs of settings that runs, or whoever asked, put one before the other.</param>
/// <param name="Findings">What cannot be planned.</param>
internal sealed record Job(
    CutRequest Request,
    SawNumbers Saws,
    IReadOnlyList<Stock> Stocks,
    IReadOnlyList<PlannedSetting> Settings,
    IReadOnlyList<Item> Items,
    IReadOnlyList<Item> Blanks,
    IReadOnlyList<(int First, int Then)> FirstRules,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Ids of the parts that some sheet can give.</summary>
    public IEnumerable<string> Possible =>
        Items.Concat(Blanks).SelectMany(i => i.Parts).Select(p => Request.Parts[p].Id);

    /// <summary>True when every dimension should be visited once.</summary>
    public bool VisitsFirst => Request.Rules.VisitsFirst;

    /// <summary>The setting of each side, as in <see cref="SettingPlan.Sides"/>; runs have their own where they must.</summary>
    public required IReadOnlyList<int> Sides { get; init; }

    /// <summary>Sheets that are kept as they were planned; none of their parts is among the items.</summary>
    public IReadOnlyList<Pinned> Pinned { get; init; } = [];

    /// <summary>What the pinned sheets of a material cost, which the search does not count.</summary>
    public long PinnedCostOf(string material) =>
        Pinned.Where(p => p.Stock.Material == material).Sum(p => CostOf(p.Stock));

    /// <summary>The distance of each setting, in nanometres.</summary>
    public IReadOnlyList<long> Distances { get; } = [.. Settings.Select(s => s.Distance)];

    /// <summary>True when every size comes from a setting, be it free: none is what another leaves of a piece.</summary>
    public bool CutsAll { get; init; }

    /// <summary>True when it matters how and in which order sizes come about.</summary>
    public bool HasOrder => CutsAll || _hasKept || Request.Apart.Count > 0;

    private readonly bool _hasKept = Settings.Any(s => s.IsKept);

    /// <summary>True when a setting has but one visit; false for -1, no setting.</summary>
    public bool IsKept(int setting) => setting >= 0 && Settings[setting].IsKept;

    /// <summary>What one sheet of a kind costs the search.</summary>
    public long CostOf(Stock stock) => StockCost.Of(stock.Piece, Request.Stock);
}

/// <summary>The saws' numbers in nanometres; what has no limit is large but safe to add to.</summary>
internal sealed record SawNumbers(
    long Kerf,
    long TrackKerf,
    long Dressing,
    long RipReach,
    long CrosscutReach,
    long TrackLength,
    long ChunkLength,
    long ChunkWidth
)
{
    /// <summary>How wide a piece the crosscut guide takes.</summary>
    public long CrosscutWidth { get; private init; } = Far;

    /// <summary>True when the crosscut guide does not take whatever one person handles.</summary>
    public bool HasGuideLimit => CrosscutWidth < Far;

    /// <summary>The heaviest chunk in kilograms; null for no limit.</summary>
    public decimal? ChunkKilograms { get; private init; }

    private const long Far = 1_000_000_000_000_000; // a thousand kilometres, in nanometres

    /// <summary>The gap a rough cut leaves between usable wood on its two sides.</summary>
    public long RoughGap => TrackKerf + (2 * Dressing);

    public static SawNumbers Of(SawLimits saws) =>
        new(
            saws.TableKerf.Nanometres,
            saws.TrackKerf.Nanometres,
            saws.Dressing.Nanometres,
            Math.Min(Far, saws.RipReach.Nanometres),
            Math.Min(Far, saws.CrosscutReach.Nanometres),
            Math.Min(Far, saws.TrackLength.Nanometres),
            Math.Min(Far, saws.ChunkLength.Nanometres),
            Math.Min(Far, saws.ChunkWidth.Nanometres)
        )
        {
            CrosscutWidth = Math.Min(Far, saws.CrosscutWidth?.Nanometres ?? Far),
            ChunkKilograms = saws.ChunkKilograms,
        };

    /// <summary>True when the rip fence or the crosscut stop can be set to this distance.</summary>
    public bool CanSet(long distance) => distance <= Math.Max(RipReach, CrosscutReach);

    /// <summary>True when a piece this wide across the cut can be sized at a distance: at the fence, or at the stop if its guide takes it.</summary>
    public bool CanCut(long distance, long across) => distance <= RipReach || across <= CrosscutWidth;

    /// <summary>True when a raw piece can be dressed with the track and, dressed, be handled at the table saw.</summary>
    public bool CanHandle(Rough raw, Stock stock)
    {
        var isDressed = (raw.Y.Low == 0 || raw.X.Size <= TrackLength) && (raw.X.Low == 0 || raw.Y.Size <= TrackLength);
        return isDressed && CanHandle(raw.X.Handled, raw.Y.Handled, stock);
    }

    /// <summary>True when one person handles a piece of this size at the table saw.</summary>
    public bool CanHandle(long x, long y, Stock stock) =>
        Math.Max(x, y) <= ChunkLength && Math.Min(x, y) <= ChunkWidth && !(stock.Kilograms(x, y) > ChunkKilograms);
}

/// <summary>A kind of sheet.</summary>
internal sealed record Stock(int Index, StockPiece Piece, string Material)
{
    public long X => Piece.Length.Nanometres;

    public long Y => Piece.Width.Nanometres;

    public long Area => (X / 1000) * (Y / 1000);

    /// <summary>How many of it are pinned.</summary>
    public int Pinned { get; init; }

    /// <summary>How many there are beside the pinned ones.</summary>
    public int Quantity => Piece.Quantity is { } there ? there - Pinned : int.MaxValue;

    /// <summary>What a piece of it weighs; null when nobody knows.</summary>
    public decimal? Kilograms(long x, long y) => Piece.KilogramsPerSquareMetre * x * y / 1_000_000_000_000_000_000m;
}

/// <summary>Something the search places whole: a part, a run, or a held blank.</summary>
/// <param name="Id">Its place in its list.</param>
/// <param name="Material">The material.</param>
/// <param name="Parts">The parts it yields, as indexes into the request.</param>
/// <param name="Turns">The ways it may lie on a sheet.</param>
/// <param name="Run">The run's id, or null.</param>
internal sealed record Item(int Id, string Material, IReadOnlyList<int> Parts, IReadOnlyList<Turn> Turns, string? Run)
{
    /// <summary>The ways it may lie on a sheet, numbered.</summary>
    public IReadOnlyList<Turn> Turns { get; } = [.. Turns.Select((turn, number) => turn with { Number = number })];

    /// <summary>The stock it is pinned to; null for any of its material.</summary>
    public string? From { get; init; }

    /// <summary>Numbers of the wishes to be apart that one of its parts is named in; no other item of such a wish may share a strip with it.</summary>
    public IReadOnlyList<int> Apart { get; init; } = [];

    /// <summary>In square micrometres, so that sums of large sheets stay within a long.</summary>
    public long Area { get; } = (Turns[0].X / 1000) * (Turns[0].Y / 1000);

    public long LongSide { get; } = Math.Max(Turns[0].X, Turns[0].Y);

    public long ShortSide { get; } = Math.Min(Turns[0].X, Turns[0].Y);

    /// <summary>True when a stock is of its material and it is not pinned to another.</summary>
    public bool MayComeFrom(Stock stock) => stock.Material == Material && (From is null || From == stock.Piece.Id);
}

/// <summary>One way an item may lie.</summary>
/// <param name="X">Its size along the sheet's length.</param>
/// <param name="Y">Its size across.</param>
/// <param name="SetX">The setting that gives X; -1 along a run.</param>
/// <param name="SetY">The setting that gives Y; -1 along a run.</param>
/// <param name="MatchX">True when X belongs to a match group.</param>
/// <param name="MatchY">True when Y belongs to a match group.</param>
/// <param name="Figure">True when the figure then runs as asked; else only for sheets without figure.</param>
/// <param name="Along">For a run: the members in order.</param>
internal sealed record Turn(long X, long Y, int SetX, int SetY, bool MatchX, bool MatchY, bool Figure, RunLine? Along)
{
    /// <summary>Its place among the item's turns.</summary>
    public int Number { get; init; }

    public long Size(SheetAxis axis) => axis == SheetAxis.Length ? X : Y;

    public int Setting(SheetAxis axis) => axis == SheetAxis.Length ? SetX : SetY;

    public bool Match(SheetAxis axis) => axis == SheetAxis.Length ? MatchX : MatchY;
}

/// <summary>The members of a run as they lie along a strip.</summary>
/// <param name="Axis">The way they follow each other.</param>
/// <param name="Segments">Members that one pass from the low end can cut in the order of visits; a strip is parted between segments.</param>
internal sealed record RunLine(SheetAxis Axis, IReadOnlyList<IReadOnlyList<RunMember>> Segments)
{
    /// <summary>The settings of all members.</summary>
    public IReadOnlyList<int> Settings { get; } = [.. Segments.SelectMany(s => s).Select(m => m.Setting).Distinct()];
}

/// <summary>A member of a run.</summary>
internal readonly record struct RunMember(int Part, long Size, int Setting);
