using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Tests.Planning;

/// <summary>
/// The fewest sheets on which a handful of parts can be cut with one visit for each dimension: every order of visits, every cut
/// at each, every rough cut before them. An answer from outside: it knows saws and wood, and no tree of the planner's.
/// </summary>
/// <remarks>
/// In whole millimetres. All edges of a sheet are rough, so each dimension comes from a cut; sizes are such that none is ever what
/// other cuts happen to leave over.
/// </remarks>
internal sealed class VisitsAndSheetsByTrying
{
    private readonly (int Length, int Width, bool MayTurn)[] _parts;
    private readonly int[] _dimensions;
    private readonly int _kerf;
    private readonly int _roughGap;
    private readonly int[] _roughEnds;
    private readonly int[] _areas;
    private Dictionary<Piece, bool> _known = [];
    private int[] _order = [];

    public VisitsAndSheetsByTrying(CutPart[] parts, int kerf, int roughGap, int longest)
    {
        (_kerf, _roughGap) = (kerf, roughGap);
        _parts = [.. parts.Select(p => (Whole(p.Length), Whole(p.Width), p.Figure == PanelFigure.Any))];
        _dimensions = [.. _parts.SelectMany(p => new[] { p.Length, p.Width }).Distinct()];
        _roughEnds = [.. Ends(longest)];
        _areas =
        [
            .. Enumerable
                .Range(0, 1 << parts.Length)
                .Select(set => Each(set).Sum(p => _parts[p].Length * _parts[p].Width)),
        ];
    }

    /// <summary>How many different dimensions there are: the fewest visits.</summary>
    public int Visits => _dimensions.Length;

    /// <summary>The fewest sheets with so many visits.</summary>
    /// <param name="x">What is left of a sheet's length once its edges are true.</param>
    /// <param name="y">The same of its width.</param>
    public int FewestSheets(int x, int y)
    {
        var byArea = ((_areas[^1] - 1) / (x * y)) + 1;
        var fewest = int.MaxValue;
        foreach (var order in Orders([.. _dimensions.OrderDescending()]))
            if (fewest > byArea)
                fewest = Math.Min(fewest, FewestSheets(x, y, order));
        return fewest;
    }

    private int FewestSheets(int x, int y, int[] order)
    {
        (_order, _known) = (order, []);
        var all = (1 << _parts.Length) - 1;
        var fewest = Enumerable.Repeat(int.MaxValue / 2, all + 1).ToArray();
        fewest[0] = 0;
        for (var set = 1; set <= all; set++)
            foreach (var one in Subsets(set).Where(s => (s & LowestBit(set)) != 0))
                if (fewest[set & ~one] + 1 < fewest[set] && Gives(new(x, y, false, false, one, 0)))
                    fewest[set] = fewest[set & ~one] + 1;
        return fewest[all];
    }

    private bool Gives(Piece piece)
    {
        if (piece.Set == 0)
            return true;
        if (
            piece.X <= 0
            || piece.Y <= 0
            || _areas[piece.Set] > piece.X * piece.Y
            || !Each(piece.Set).All(p => Fits(p, piece))
        )
            return false;
        if (IsOnePart(piece))
            return true;
        if (!_known.TryGetValue(piece, out var gives))
            _known[piece] = gives = IsCutAtVisit(piece) || (piece.IsRough && IsCutRough(piece));
        return gives;
    }

    private bool Fits(int number, Piece piece)
    {
        var part = _parts[number];
        return (part.Length <= piece.X && part.Width <= piece.Y)
            || (part.MayTurn && part.Width <= piece.X && part.Length <= piece.Y);
    }

    private bool IsOnePart(Piece piece)
    {
        if (!int.IsPow2(piece.Set) || !piece.IsSizedX || !piece.IsSizedY)
            return false;
        var part = _parts[int.Log2(piece.Set)];
        return (part.Length, part.Width) == (piece.X, piece.Y)
            || (part.MayTurn && (part.Width, part.Length) == (piece.X, piece.Y));
    }

    /// <summary>A visit takes a strip off; what is left may be cut at the same visit again.</summary>
    private bool IsCutAtVisit(Piece piece)
    {
        for (var visit = piece.Visit; visit < _order.Length; visit++)
            foreach (var set in Subsets(piece.Set).Where(s => HasDimension(s, _order[visit])))
                if (IsCutOff(piece, set, visit, alongX: true) || IsCutOff(piece, set, visit, alongX: false))
                    return true;
        return false;
    }

    private bool IsCutOff(Piece piece, int set, int visit, bool alongX)
    {
        var (distance, size) = (_order[visit], alongX ? piece.X : piece.Y);
        var isSized = alongX ? piece.IsSizedX : piece.IsSizedY;
        return (isSized ? distance < size : distance <= size)
            && Gives(Side(distance, isSized: true, set).AtSaw())
            && Gives(Side(size - distance - _kerf, isSized: false, piece.Set & ~set).AtSaw());

        Piece Side(int side, bool isSized, int parts) =>
            (alongX ? piece with { X = side, IsSizedX = isSized } : piece with { Y = side, IsSizedY = isSized }) with
            {
                Set = parts,
                Visit = visit,
            };
    }

    /// <summary>A rough cut before all visits: both halves have their edges dressed. What the first half can do with is enough.</summary>
    private bool IsCutRough(Piece piece)
    {
        foreach (var set in Subsets(piece.Set).Where(s => s != piece.Set && (s & LowestBit(piece.Set)) != 0))
        {
            var (one, other) = (piece with { Set = set }, piece with { Set = piece.Set & ~set });
            if (
                Least(piece.X, end => Gives(one with { X = end })) is { } x
                && Gives(other with { X = piece.X - x - _roughGap })
            )
                return true;
            if (
                Least(piece.Y, end => Gives(one with { Y = end })) is { } y
                && Gives(other with { Y = piece.Y - y - _roughGap })
            )
                return true;
        }
        return false;
    }

    /// <summary>The least of the ends below a size that will do; more than that would too.</summary>
    private int? Least(int below, Func<int, bool> willDo)
    {
        var (low, high) = (0, _roughEnds.Count(e => e < below));
        var count = high;
        while (low < high)
            if (willDo(_roughEnds[(low + high) / 2]))
                high = (low + high) / 2;
            else
                low = ((low + high) / 2) + 1;
        return low < count ? _roughEnds[low] : null;
    }

    private bool HasDimension(int set, int size) =>
        Each(set).Any(p => _parts[p].Length == size || _parts[p].Width == size);

    /// <summary>As far as parts side by side may reach, kerfs between them, or one rough gap.</summary>
    private IEnumerable<int> Ends(int longest)
    {
        var reached = new HashSet<int>(_dimensions);
        for (var i = 1; i < _parts.Length; i++)
            reached.UnionWith(
                reached
                    .SelectMany(r => _dimensions.SelectMany(d => new[] { r + _kerf + d, r + _roughGap + d }))
                    .Where(r => r < longest)
                    .ToList()
            );
        return reached.Order();
    }

    private static IEnumerable<int[]> Orders(int[] dimensions) =>
        dimensions.Length == 0
            ?
            [
                [],
            ]
            : dimensions.SelectMany(first =>
                Orders([.. dimensions.Where(d => d != first)]).Select(rest => (int[])[first, .. rest])
            );

    private static IEnumerable<int> Each(int set) => Enumerable.Range(0, 8).Where(p => (set & (1 << p)) != 0);

    private static IEnumerable<int> Subsets(int set)
    {
        for (var part = set; part > 0; part = (part - 1) & set)
            yield return part;
    }

    private static int LowestBit(int set) => set & -set;

    private static int Whole(Nookwright.Measure.Length length) => (int)length.Millimetres;

    /// <summary>A piece: its sizes, whether a visit gave them, the parts it is for, and the visit that may come next.</summary>
    private readonly record struct Piece(int X, int Y, bool IsSizedX, bool IsSizedY, int Set, int Visit)
    {
        /// <summary>True before any visit has cut it.</summary>
        public bool IsRough { get; private init; } = true;

        /// <summary>The same piece, no longer to be broken down.</summary>
        public Piece AtSaw() => this with { IsRough = false };
    }
}
