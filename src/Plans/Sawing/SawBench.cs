using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Sawing;

/// <summary>Executes cuts on pieces with true and rough edges. Knows wood and saws, and nothing of how a plan is found.</summary>
internal sealed class SawBench(SawLimits saws, IReadOnlyDictionary<string, Workpiece> records)
{
    private readonly Dictionary<string, BenchPiece> _here = [];
    private readonly HashSet<string> _seen = [];

    /// <summary>What lies on the bench.</summary>
    public IReadOnlyDictionary<string, BenchPiece> Here => _here;

    /// <summary>A shop that dresses nothing measures from any straight edge, the sheet's own and the track saw's.</summary>
    private bool TrustsEdges => saws.Dressing == Length.Zero;

    /// <summary>A piece the plan lists and no cut made so far has given, nor was it laid here; null when there is none.</summary>
    public string? NeverSeen => records.Keys.FirstOrDefault(id => !_seen.Contains(id));

    /// <summary>Lays a whole sheet on the bench; its factory edges are true only where the shop trusts them.</summary>
    /// <returns>Why it is not the sheet the plan says, as a sentence; or null.</returns>
    public string? Lay(PlanSheet sheet)
    {
        var edge = new BenchEdge(TrustsEdges);
        if (_here.ContainsKey(sheet.Workpiece))
            return $"Two sheets are called {sheet.Workpiece}.";
        return Add(
            new(
                sheet.Workpiece,
                sheet.Number,
                new(Length.Zero, sheet.Length, edge, edge, null),
                new(Length.Zero, sheet.Width, edge, edge, null),
                false
            )
        );
    }

    /// <summary>Brings a piece that an earlier round left. A blank keeps the edges it was put away with; no edge of an offcut is measured from undressed.</summary>
    public void Bring(BenchPiece piece, bool isBlank)
    {
        BenchEdge Edge(BenchEdge was) => isBlank && was.IsTrue ? was : new(TrustsEdges);
        BenchSide Rough(BenchSide side) => new(side.At, side.Size, Edge(side.Low), Edge(side.High), null);
        _here[piece.Id] = new(piece.Id, piece.Sheet, Rough(piece.X), Rough(piece.Y), false);
    }

    /// <summary>Makes one cut; the sentence says why it cannot be made, or is null.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="visit">The visit it belongs to, or null in the breakdown.</param>
    public string? Make(SawCut cut, Visit? visit)
    {
        if (!_here.TryGetValue(cut.On, out var piece))
            return records.ContainsKey(cut.On)
                ? $"{cut.On} is not there: it has been cut up already, or has not been made yet."
                : $"there is no piece {cut.On}.";
        var trouble = Kind(cut, visit) ?? Reach(cut, piece, visit) ?? Place(cut, piece, visit);
        if (trouble is not null)
            return trouble;
        _here.Remove(cut.On);
        return Put(cut, piece, visit);
    }

    private static string? Kind(SawCut cut, Visit? visit)
    {
        if (visit is null)
            return cut.Kind is CutKind.Breakdown or CutKind.Dressing
                ? null
                : "only rough cuts and dressing passes come before the visits.";
        if (cut.Kind == CutKind.Breakdown)
            return "rough cuts come before the visits.";
        return cut.Kind == CutKind.Sizing && cut.Distance != visit.Setting
            ? $"it is {cut.Distance} from the edge, and the {visit.Saw} stands at {visit.Setting}."
            : null;
    }

    private string? Reach(SawCut cut, BenchPiece piece, Visit? visit)
    {
        var across = piece.Side(OtherWay(cut.Along)).Size;
        if (visit is null)
            return across > saws.TrackLength ? $"it is {across} long, and the track {saws.TrackLength}." : null;
        var reach = visit.Saw == Saw.Fence ? saws.RipReach : saws.CrosscutReach;
        if (visit.Saw == Saw.Track)
            return "a visit is made with the fence or the stop.";
        if (visit.Setting > reach)
            return $"the {visit.Saw} cannot be set to {visit.Setting}: it reaches {reach}.";
        var (longer, shorter) = (Length.Max(piece.X.Size, piece.Y.Size), Length.Min(piece.X.Size, piece.Y.Size));
        return longer > saws.ChunkLength || shorter > saws.ChunkWidth
            ? $"{piece.Id} is {longer} × {shorter}, more than one person handles ({saws.ChunkLength} × {saws.ChunkWidth})."
            : null;
    }

    private string? Place(SawCut cut, BenchPiece piece, Visit? visit)
    {
        var side = piece.Side(cut.Along);
        var beyond = side.Size - cut.Distance;
        if (cut.Distance.IsNegative || (cut.Distance == Length.Zero && cut.Kind != CutKind.Dressing))
            return "a cut is made at a distance above zero.";
        if (!beyond.IsPositive)
            return $"{piece.Id} is only {side.Size} that way, so nothing is cut at {cut.Distance}.";
        return cut.Kind switch
        {
            CutKind.Dressing => Dressing(cut, side, visit),
            CutKind.Breakdown => null,
            _ => Measured(cut, side, beyond),
        };
    }

    private string? Dressing(SawCut cut, BenchSide side, Visit? visit)
    {
        var off = TakenOff(cut, visit);
        if (off >= side.Size)
            return $"dressing {off} off leaves nothing of {cut.On}.";
        return off < saws.Dressing ? $"only {off} is dressed off, and {saws.Dressing} makes an edge true." : null;
    }

    private string? Measured(SawCut cut, BenchSide side, Length beyond)
    {
        var (near, far) = cut.From == FromEdge.Low ? (side.Low, side.High) : (side.High, side.Low);
        if (!near.IsTrue)
            return $"it is measured from an edge of {cut.On} that is still rough.";
        return !far.IsTrue && beyond < saws.Dressing
            ? $"the far edge of {cut.On} is still rough, and only {beyond} of the {saws.Dressing} to be dressed off would go."
            : null;
    }

    private string? Put(SawCut cut, BenchPiece piece, Visit? visit)
    {
        var side = piece.Side(cut.Along);
        var taken = cut.Kind == CutKind.Dressing ? TakenOff(cut, visit) : cut.Distance + Kerf(visit);
        var left = side.Size - taken;
        var isTrue = cut.Kind != CutKind.Breakdown || TrustsEdges;
        return PutOne(cut.Gives, "gives", cut.Distance, GivesSide(cut, side, isTrue, visit), cut, piece, visit)
            ?? PutOne(cut.Leaves, "leaves", left, LeavesSide(cut, side, left, isTrue), cut, piece, visit);
    }

    private string? PutOne(
        string? id,
        string verb,
        Length size,
        BenchSide side,
        SawCut cut,
        BenchPiece piece,
        Visit? visit
    )
    {
        if (id is null)
            return size.IsPositive ? $"it {verb} a piece of {size} that the plan does not name." : null;
        if (!size.IsPositive)
            return $"it {verb} no {id}: the kerf takes all of it.";
        if (_here.ContainsKey(id))
            return $"it {verb} {id}, and there is one on the bench already.";
        return Add(piece.With(cut.Along, side, id, visit is not null));
    }

    private string? Add(BenchPiece piece)
    {
        _seen.Add(piece.Id);
        _here[piece.Id] = piece;
        return Agrees(piece);
    }

    private string? Agrees(BenchPiece made)
    {
        if (!records.TryGetValue(made.Id, out var record))
            return $"the plan does not say what {made.Id} is.";
        var isEqual =
            record.Sheet == made.Sheet
            && (record.X, record.Y) == (made.X.At, made.Y.At)
            && (record.Length, record.Width) == (made.X.Size, made.Y.Size);
        return isEqual
            ? null
            : $"{made.Id} comes out {made.X.Size} × {made.Y.Size} at {made.X.At}, {made.Y.At} on sheet {made.Sheet}, and the plan "
                + $"says {record.Length} × {record.Width} at {record.X}, {record.Y} on sheet {record.Sheet}.";
    }

    private static BenchSide GivesSide(SawCut cut, BenchSide side, bool isTrue, Visit? visit)
    {
        var sizedAt = cut.Kind == CutKind.Sizing ? visit!.Number : (int?)null;
        return cut.From == FromEdge.Low
            ? new(side.At, cut.Distance, side.Low, new(isTrue), sizedAt)
            : new(side.End - cut.Distance, cut.Distance, new(isTrue), side.High, sizedAt);
    }

    private static BenchSide LeavesSide(SawCut cut, BenchSide side, Length left, bool isTrue) =>
        cut.From == FromEdge.Low
            ? new(side.End - left, left, new(isTrue), side.High, null)
            : new(side.At, left, side.Low, new(isTrue), null);

    /// <summary>The sliver and the kerf; with no sliver the blade takes just the dressing, or its kerf when that is less.</summary>
    private Length TakenOff(SawCut cut, Visit? visit) =>
        cut.Distance.IsPositive ? cut.Distance + Kerf(visit) : Length.Min(saws.Dressing, Kerf(visit));

    private Length Kerf(Visit? visit) => visit is null ? saws.TrackKerf : saws.TableKerf;

    private static SheetAxis OtherWay(SheetAxis axis) => axis == SheetAxis.Length ? SheetAxis.Width : SheetAxis.Length;
}
