using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Reads pinned sheets with the settings of a job.</summary>
internal sealed class PinnedReader(CutRequest request, SettingTable settings)
{
    private readonly Dictionary<string, int> _parts = request
        .Parts.Select((p, i) => (p.Id, i))
        .ToDictionary(p => p.Id, p => p.i);

    /// <summary>A sheet.</summary>
    /// <param name="wish">What the maker wishes.</param>
    /// <param name="stock">What it is taken from.</param>
    /// <param name="isLoose">True when only sizes that must match are cut with the others of their setting.</param>
    public Pinned Read(PinnedSheet wish, Stock stock, bool isLoose)
    {
        var pieces = wish.Plan.Workpieces.ToDictionary(p => p.Id);
        var given = new Dictionary<string, int>();
        var cuts = new List<PinnedCut>();
        foreach (var cut in wish.Plan.Visits.SelectMany(v => v.Cuts))
        {
            cuts.Add(Read(cut, given.GetValueOrDefault(cut.On, -1), pieces, isLoose));
            foreach (var piece in new[] { cut.Gives, cut.Leaves }.OfType<string>())
                given[piece] = cuts.Count - 1;
        }
        return new(wish, stock, cuts);
    }

    private PinnedCut Read(SawCut cut, int after, Dictionary<string, Workpiece> pieces, bool isLoose)
    {
        var on = pieces[cut.On];
        var length = (cut.Along == SheetAxis.Length ? on.Width : on.Length).Nanometres;
        if (cut.Kind != CutKind.Sizing || cut.Gives is null)
            return new(cut, after, [], -1, false) { Length = length };
        var sides = Sides(pieces[cut.Gives], cut.Along, pieces.Values).ToList();
        if (sides.Count == 0)
            return OfNoPart(cut, after, isLoose) with { Length = length };
        var matched = sides.Where(s => settings.IsMatched(s.Part, s.Side)).ToList();
        var setting = matched.Concat(sides).Select(s => settings.Of(s.Part, s.Side)).First();
        return new(
            cut,
            after,
            [.. sides.Select(s => SettingPlan.Key(s.Part, s.Side))],
            setting,
            settings.IsKept(setting) && (!isLoose || matched.Count > 0)
        )
        {
            Length = length,
            IsTorn = matched.Any(m => settings.Of(m.Part, m.Side) != setting),
        };
    }

    /// <summary>A strip as wide as no part that comes from it: cut where some part of the job has that size, else parted off by a pencil line.</summary>
    private PinnedCut OfNoPart(SawCut cut, int after, bool isLoose)
    {
        var same = settings.Settings.Index().Where(s => s.Item.Distance == cut.Distance.Nanometres).ToList();
        if (same.Count == 0)
            return new(cut with { Kind = CutKind.Parting }, after, [], -1, false) { Length = 0 };
        var setting = same.OrderBy(s => !s.Item.IsKept).First().Index;
        return new(cut, after, [], setting, settings.IsKept(setting) && !isLoose) { Length = 0 };
    }

    /// <summary>The sides of the parts that come from a strip and are as wide as it is.</summary>
    private IEnumerable<(int Part, MatchedSide Side)> Sides(
        Workpiece strip,
        SheetAxis axis,
        IEnumerable<Workpiece> pieces
    ) =>
        from piece in pieces
        where piece.Use == WorkpieceUse.Part && IsIn(piece, strip) && Span(piece, axis) == Span(strip, axis)
        let part = _parts[piece.Part!]
        from side in SidesOf(request.Parts[part], piece, axis)
        where settings.Of(part, side) >= 0
        select (part, side);

    /// <summary>Of a square nobody can tell which side it is.</summary>
    private static IEnumerable<MatchedSide> SidesOf(CutPart part, Workpiece piece, SheetAxis axis)
    {
        var size = axis == SheetAxis.Length ? piece.Length : piece.Width;
        return MatchedSide.Both.Each().Where(side => part.Size(side) == size);
    }

    private static bool IsIn(Workpiece piece, Workpiece whole) =>
        piece.X >= whole.X
        && piece.Y >= whole.Y
        && piece.X + piece.Length <= whole.X + whole.Length
        && piece.Y + piece.Width <= whole.Y + whole.Width;

    private static (Measure.Length At, Measure.Length Size) Span(Workpiece piece, SheetAxis axis) =>
        axis == SheetAxis.Length ? (piece.X, piece.Length) : (piece.Y, piece.Width);
}
