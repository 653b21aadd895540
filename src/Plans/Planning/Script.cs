using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Planning;

/// <summary>A plan being written down: pieces and cuts in the order they come about.</summary>
internal sealed class Script(Job job)
{
    private readonly List<Wood> _pieces = [];
    private readonly List<ScriptCut> _breakdown = [];
    private readonly List<ScriptVisit> _visits = [];
    private readonly List<PlanSheet> _sheets = [];
    private Kept? _kept;
    private int _number;

    public Job Job => job;

    public IReadOnlyList<PlanSheet> Sheets => _sheets;

    public int VisitCount => _visits.Count;

    /// <summary>Takes a sheet from stock.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="pin">The wish by which it is kept as it was planned; null for none.</param>
    public Wood Take(Stock stock, string? pin = null)
    {
        var number = _sheets.Count + 1;
        var sheet = Known(new Wood(number, 0, 0, stock.X, stock.Y));
        (sheet.Id, sheet.Stem, sheet.Use) = ($"S{number}", $"S{number}", WorkpieceUse.Sheet);
        _sheets.Add(
            new(number, stock.Piece.Id, stock.Material, stock.Piece.Length, stock.Piece.Width, sheet.Id) { Pin = pin }
        );
        return sheet;
    }

    /// <summary>A piece of a pinned sheet, by its name on the sheet as it is numbered now.</summary>
    public Wood Bring(Workpiece piece, PinnedSheet.Renaming names)
    {
        var now = names.Of(piece);
        return Known(
            new(now.Sheet, now.X.Nanometres, now.Y.Nanometres, now.Length.Nanometres, now.Width.Nanometres)
            {
                Id = now.Id,
            }
        );
    }

    /// <summary>A rough cut or dressing pass of a pinned sheet.</summary>
    public void Break(ScriptCut cut) => Record(_breakdown, cut);

    /// <summary>A cut of the visit, of a pinned sheet.</summary>
    public void Cut(ScriptCut cut) => Record(_visits[^1].Cuts, cut);

    /// <summary>Starts a visit; cuts that follow belong to it.</summary>
    public void Visit(IReadOnlyList<int> settings) => _visits.Add(new(settings, job.Distances[settings[0]], []));

    /// <summary>The visits without a cut are left out: their dimension came whole from a trusted edge.</summary>
    public void EndVisit()
    {
        if (_visits[^1].Cuts.Count == 0)
            _visits.RemoveAt(_visits.Count - 1);
    }

    /// <summary>Dresses so much off the low edge along an axis with the track saw; gives the dressed piece.</summary>
    public Wood Dress(Wood piece, SheetAxis axis, long off)
    {
        var sliver = Math.Max(0, off - job.Saws.TrackKerf);
        var gives = sliver == 0 ? null : Known(piece.Slice(axis, 0, sliver));
        var leaves = Known(piece.Slice(axis, off, piece.Size(axis)));
        Record(_breakdown, new(CutKind.Dressing, piece, axis, sliver, gives, leaves));
        return leaves;
    }

    /// <summary>A rough cut with the track saw, from the low edge.</summary>
    public (Wood Gives, Wood? Leaves) Break(Wood piece, SheetAxis axis, long distance) =>
        Cut(_breakdown, CutKind.Breakdown, piece, axis, distance, job.Saws.TrackKerf);

    /// <summary>A cut of the visit, from the low edge.</summary>
    public (Wood Gives, Wood? Leaves) Cut(CutKind kind, Wood piece, SheetAxis axis, long distance) =>
        Cut(_visits[^1].Cuts, kind, piece, axis, distance, job.Saws.Kerf);

    /// <summary>The plan as written.</summary>
    public Plan Read(IEnumerable<Trouble.Finding> findings, int dimensions)
    {
        NameNameless();
        return new(
            _sheets,
            [.. _pieces.Select(p => p.ToWorkpiece())],
            [.. _breakdown.Select(Read)],
            [.. _visits.Select(ReadVisit)],
            [.. findings],
            dimensions
        );
    }

    private (Wood Gives, Wood? Leaves) Cut(
        List<ScriptCut> list,
        CutKind kind,
        Wood piece,
        SheetAxis axis,
        long distance,
        long kerf
    )
    {
        var gives = Known(piece.Slice(axis, 0, distance));
        var rest = piece.Size(axis) - distance - kerf;
        var leaves = rest > 0 ? Known(piece.Slice(axis, distance + kerf, piece.Size(axis))) : null;
        Record(list, new(kind, piece, axis, distance, gives, leaves));
        return (gives, leaves);
    }

    private Wood Known(Wood piece)
    {
        _pieces.Add(piece);
        return piece;
    }

    private static void Record(List<ScriptCut> list, ScriptCut cut) => list.Add(cut);

    private SawCut Read(ScriptCut cut) =>
        new(
            ++_number,
            cut.Kind,
            cut.On.Id,
            cut.Axis,
            cut.From,
            new Length(cut.Distance),
            cut.Gives?.Id,
            cut.Leaves?.Id
        );

    private Kept Kept =>
        _kept ??= new(
            job,
            _pieces.Where(p => p is { Use: WorkpieceUse.Part, Part: not null }).Select(p => p.Part!).ToHashSet()
        );

    private Visit ReadVisit(ScriptVisit visit, int index)
    {
        var saw = visit.Distance <= job.Saws.RipReach ? Saw.Fence : Saw.Stop;
        List<SawCut> cuts = [.. visit.Cuts.Select(Read)];
        return new(index + 1, saw, new Length(visit.Distance), 1, cuts, Kept.By(visit.Settings));
    }

    /// <summary>Slivers and leftovers of the breakdown go by their sheet and a number.</summary>
    private void NameNameless()
    {
        var counts = new Dictionary<string, int>();
        foreach (var piece in _pieces.Where(p => p.Id.Length == 0))
        {
            var letter = piece.Use switch
            {
                WorkpieceUse.Held => "H",
                WorkpieceUse.Offcut => "O",
                WorkpieceUse.Waste => "W",
                _ => "R",
            };
            var stem = $"S{piece.Sheet}-{letter}";
            counts[stem] = counts.GetValueOrDefault(stem) + 1;
            piece.Id = stem + counts[stem];
        }
    }
}

/// <summary>A cut of a script.</summary>
internal sealed record ScriptCut(CutKind Kind, Wood On, SheetAxis Axis, long Distance, Wood? Gives, Wood? Leaves)
{
    /// <summary>The edge it is measured from.</summary>
    public FromEdge From { get; init; } = FromEdge.Low;
}

/// <summary>A visit of a script.</summary>
internal sealed record ScriptVisit(IReadOnlyList<int> Settings, long Distance, List<ScriptCut> Cuts);
