using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Sawing;

/// <summary>Executes cuts on pieces with true and rough edges. Knows wood and saws, and nothing of how a plan is found.</summary>
internal sealed class SawBench(SawLimits saws, IReadOnlyDictionary<string, Workpiece> records)
{
    private readonly Dictionary<string, BenchPiece> _here = [];
    private readonly HashSet<string> _seen = [];
    private readonly Dictionary<int, decimal?> _mass = [];

    /// <summary>What lies on the bench.</summary>
    public IReadOnlyDictionary<string, BenchPiece> Here => _here;

    /// <summary>An edge the track saw has cut to a pencil line; a shop that dresses nothing measures from any straight edge.</summary>
    private BenchEdge RoughEdge => new(saws.Dressing);

    /// <summary>A piece the plan lists and no cut made so far has given, nor was it laid here; null when there is none.</summary>
    public string? NeverSeen => records.Keys.FirstOrDefault(id => !_seen.Contains(id));

    /// <summary>Lays a whole sheet on the bench; its factory edges are true only where they are trusted and square.</summary>
    /// <returns>Why it is not the sheet the plan says, as a sentence; or null.</returns>
    public string? Lay(PlanSheet sheet, StockPiece stock)
    {
        var side = stock.TrustsEdges ? new BenchEdge(Length.Zero) : RoughEdge;
        var end = stock.OutOfSquare.IsPositive ? new BenchEdge(saws.Dressing + stock.OutOfSquare) : side;
        _mass[sheet.Number] = stock.KilogramsPerSquareMetre;
        if (_here.ContainsKey(sheet.Workpiece))
            return $"Two sheets are called {sheet.Workpiece}.";
        return Add(
            new(
                sheet.Workpiece,
                sheet.Number,
                new(Length.Zero, sheet.Length, end, end, null),
                new(Length.Zero, sheet.Width, side, side, null),
                false
            )
        );
    }

    /// <summary>Brings a piece that an earlier round left. A blank keeps the edges it was put away with; no edge of an offcut is measured from undressed.</summary>
    public void Bring(BenchPiece piece, StockPiece stock, bool isBlank)
    {
        BenchEdge Edge(BenchEdge was) => isBlank && was.IsTrue ? was : new(Length.Max(was.ToGo, RoughEdge.ToGo));
        BenchSide Left(BenchSide side) => new(side.At, side.Size, Edge(side.Low), Edge(side.High), null);
        _mass[piece.Sheet] = stock.KilogramsPerSquareMetre;
        _here[piece.Id] = new(piece.Id, piece.Sheet, Left(piece.X), Left(piece.Y), false) { IsSliver = piece.IsSliver };
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
        if (piece.IsSliver)
            return $"{cut.On} is what a dressing pass takes off, and that is waste.";
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
        if (visit.Saw == Saw.Stop && across > saws.CrosscutWidth)
            return $"{piece.Id} is {across} wide, and the crosscut guide takes {saws.CrosscutWidth}.";
        return Handling(piece);
    }

    private string? Handling(BenchPiece piece)
    {
        var (longer, shorter) = (Length.Max(piece.X.Size, piece.Y.Size), Length.Min(piece.X.Size, piece.Y.Size));
        if (longer > saws.ChunkLength || shorter > saws.ChunkWidth)
            return $"{piece.Id} is {longer} × {shorter}, more than one person handles ({saws.ChunkLength} × {saws.ChunkWidth}).";
        return _mass[piece.Sheet] * piece.SquareMetres is { } mass && mass > saws.ChunkKilograms
            ? $"{piece.Id} weighs {mass:0.0} kg, more than one person handles ({saws.ChunkKilograms} kg)."
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
            CutKind.Breakdown => OffSquare(cut, side, beyond),
            _ => Measured(cut, side, beyond),
        };
    }

    private string? Dressing(SawCut cut, BenchSide side, Visit? visit)
    {
        var (edge, _) = Edges(cut, side);
        var off = TakenOff(cut, side, visit);
        if (off >= side.Size)
            return $"dressing {off} off leaves nothing of {cut.On}.";
        if (!off.IsPositive)
            return $"that edge of {cut.On} is true already.";
        return off < edge.ToGo ? $"only {off} is dressed off, and {edge.ToGo} makes that edge true." : null;
    }

    /// <summary>A rough cut may be measured from a rough edge, but not from an end that is out of square, nor run off one.</summary>
    private string? OffSquare(SawCut cut, BenchSide side, Length beyond)
    {
        var (near, far) = Edges(cut, side);
        if (near.ToGo > RoughEdge.ToGo)
            return $"it is measured from an end of {cut.On} that is out of square.";
        return beyond < far.ToGo - RoughEdge.ToGo ? $"it runs off the end of {cut.On} that is out of square." : null;
    }

    private string? Measured(SawCut cut, BenchSide side, Length beyond)
    {
        var (near, far) = Edges(cut, side);
        if (!near.IsTrue)
            return $"it is measured from an edge of {cut.On} that is still rough.";
        return beyond < far.ToGo
            ? $"the far edge of {cut.On} is still rough, and only {beyond} of the {far.ToGo} to be dressed off would go."
            : null;
    }

    private static (BenchEdge Near, BenchEdge Far) Edges(SawCut cut, BenchSide side) =>
        cut.From == FromEdge.Low ? (side.Low, side.High) : (side.High, side.Low);

    private string? Put(SawCut cut, BenchPiece piece, Visit? visit)
    {
        var side = piece.Side(cut.Along);
        var taken = cut.Kind == CutKind.Dressing ? TakenOff(cut, side, visit) : cut.Distance + Kerf(visit);
        var left = side.Size - taken;
        var edge = cut.Kind == CutKind.Breakdown ? RoughEdge : new(Length.Zero);
        return PutOne(
                cut.Gives,
                "gives",
                cut.Distance,
                GivesSide(cut, side, edge, visit),
                cut,
                Given(piece, cut),
                visit
            ) ?? PutOne(cut.Leaves, "leaves", left, LeavesSide(cut, side, left, edge), cut, piece, visit);
    }

    /// <summary>What a sizing cut takes off is a strip from then on, and what a dressing pass takes off is waste.</summary>
    private static BenchPiece Given(BenchPiece piece, SawCut cut) =>
        cut switch
        {
            { Kind: CutKind.Sizing, Gives: { } strip } => piece with { Strips = piece.Strips.Add(strip) },
            { Kind: CutKind.Dressing } => piece with { IsSliver = true },
            _ => piece,
        };

    private static BenchSide GivesSide(SawCut cut, BenchSide side, BenchEdge edge, Visit? visit)
    {
        var sizedAt = cut.Kind == CutKind.Sizing ? visit!.Number : (int?)null;
        return cut.From == FromEdge.Low
            ? new(side.At, cut.Distance, side.Low, edge, sizedAt)
            : new(side.End - cut.Distance, cut.Distance, edge, side.High, sizedAt);
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
        if (made.IsSliver && record.Use != WorkpieceUse.Waste)
            return $"{made.Id} is what a dressing pass takes off, and the plan makes more of it than waste.";
        var isEqual =
            record.Sheet == made.Sheet
            && (record.X, record.Y) == (made.X.At, made.Y.At)
            && (record.Length, record.Width) == (made.X.Size, made.Y.Size);
        return isEqual
            ? null
            : $"{made.Id} comes out {made.X.Size} × {made.Y.Size} at {made.X.At}, {made.Y.At} on sheet {made.Sheet}, and the plan "
                + $"says {record.Length} × {record.Width} at {record.X}, {record.Y} on sheet {record.Sheet}.";
    }

    private static BenchSide LeavesSide(SawCut cut, BenchSide side, Length left, BenchEdge edge) =>
        cut.From == FromEdge.Low
            ? new(side.End - left, left, edge, side.High, null)
            : new(side.At, left, side.Low, edge, null);

    /// <summary>The sliver and the kerf; with no sliver the blade takes just what is to go, or its kerf when that is less.</summary>
    private Length TakenOff(SawCut cut, BenchSide side, Visit? visit) =>
        cut.Distance.IsPositive ? cut.Distance + Kerf(visit) : Length.Min(Edges(cut, side).Near.ToGo, Kerf(visit));

    private Length Kerf(Visit? visit) => visit is null ? saws.TrackKerf : saws.TableKerf;

    private static SheetAxis OtherWay(SheetAxis axis) => axis == SheetAxis.Length ? SheetAxis.Width : SheetAxis.Length;
}
