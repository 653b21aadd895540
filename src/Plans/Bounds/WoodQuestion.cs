using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Bounds;

/// <summary>What has to come out of the sheets of one material, stripped of all that could only make it dearer.</summary>
/// <remarks>
/// <para>
/// Whatever a saw parts lies a blade's width away from its neighbour. So every part is taken a kerf larger both ways, every
/// sheet too, and then parts may touch. A sheet loses a dressing at each edge it does not trust. Between two chunks the track
/// saw's kerf and two dressings are lost: the gap, beyond the one kerf that is counted already. A blank of a held part ends at
/// rough edges, hence needs two dressings less than a chunk of its size.
/// </para>
/// <para>
/// Left out on purpose, since they can only cost more: the order of visits, reaches of saws and track, bad areas, sheets
/// out of square, the dressing round a blank, parts kept apart. A run is one thing, but is taken as several where the maker
/// lets it be split. Where nothing is dressed the track saw sizes as well as the table saw, so chunks have no limit.
/// </para>
/// </remarks>
/// <param name="Wants">What to cut, alike things together.</param>
/// <param name="Sheets">What to cut it from.</param>
/// <param name="Gap">What is lost between two chunks beyond one kerf, in nanometres.</param>
/// <param name="Chunk">The longest and the widest chunk one person handles, a kerf included; null when any sheet can be handled.</param>
internal sealed record WoodQuestion(
    IReadOnlyList<Want> Wants,
    IReadOnlyList<SheetKind> Sheets,
    long Gap,
    (long Longer, long Shorter)? Chunk
)
{
    private const long Far = 1_000_000_000_000; // a kilometre: more than any sheet, and safe to add to

    /// <summary>True when some blank is wanted, so that rough cuts alone make something.</summary>
    public bool HasRough => Wants.Any(w => w.IsRough);

    /// <summary>For things that do not fit on every kind of sheet, the kinds that take them, by their places among the sheets.</summary>
    public IReadOnlyList<IReadOnlySet<int>> Needs() =>
        [
            .. Wants
                .Select(w => Enumerable.Range(0, Sheets.Count).Where(s => w.Turns(Sheets[s]).Any()).ToHashSet())
                .Where(kinds => kinds.Count < Sheets.Count)
                .DistinctBy(kinds => string.Join(' ', kinds.Order())),
        ];

    /// <summary>What a request asks of one material. What fits on no sheet is left out: no plan makes it.</summary>
    public static WoodQuestion Of(CutRequest request, string material)
    {
        var saws = request.Saws;
        var dressing = saws.Dressing.Nanometres;
        var gap = saws.TrackKerf.Nanometres + (2 * dressing);
        var kerf = Math.Min(saws.TableKerf.Nanometres, gap);
        var sheets = request
            .Stock.Where(s => s.Material == material && s.Length.IsPositive && s.Width.IsPositive)
            .Select(s => Kind(s, request, kerf))
            .ToList();
        var wants = RequestReading
            .Things(request, material, kerf)
            .Select(t => Enlarged(t, t.IsRough ? kerf - (2 * dressing) : kerf))
            .Where(w => w.Length > 0 && w.Width > 0 && sheets.Any(s => w.Turns(s).Any()));
        return new(Alike(wants), sheets, gap - kerf, ChunkOf(saws, kerf, sheets));
    }

    private static SheetKind Kind(StockPiece piece, CutRequest request, long kerf)
    {
        var isDressed = piece.TrustsEdges || piece.LeftAs is not null; // What an earlier round left may have true edges.
        var dressing = isDressed ? 0 : request.Saws.Dressing.Nanometres;
        long Usable(Length size) => size.Nanometres - (2 * dressing) + kerf;
        return new(
            piece.Id,
            Usable(piece.Length),
            Usable(piece.Width),
            piece.HasFigure,
            StockCost.Of(piece, request.Stock),
            piece.Quantity,
            piece.IsOffcut
        );
    }

    private static Want Enlarged(Want want, long by) =>
        want with
        {
            Length = want.Length + by,
            Width = want.Width + by,
        };

    /// <summary>A square, or one that may lie either way, is the same however its two sizes are named.</summary>
    private static List<Want> Alike(IEnumerable<Want> wants) =>
        [
            .. wants
                .Select(w => w.Lengthways && w.Crossways && w.Length < w.Width ? Swapped(w) : w)
                .GroupBy(w => w with { Count = 0 })
                .Select(g => g.Key with { Count = g.Sum(w => w.Count) })
                .OrderByDescending(w => Math.Max(w.Length, w.Width))
                .ThenByDescending(w => Math.Min(w.Length, w.Width)),
        ];

    private static Want Swapped(Want want) => want with { Length = want.Width, Width = want.Length };

    private static (long, long)? ChunkOf(Shop.SawLimits saws, long kerf, List<SheetKind> sheets)
    {
        if (saws.Dressing == Length.Zero)
            return null;
        var longer = Math.Min(Far, saws.ChunkLength.Nanometres) + kerf;
        var shorter = Math.Min(longer, Math.Min(Far, saws.ChunkWidth.Nanometres) + kerf);
        var isHandled = sheets.All(s => Math.Max(s.X, s.Y) <= longer && Math.Min(s.X, s.Y) <= shorter);
        return isHandled ? null : (longer, shorter);
    }
}
