using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Lettering;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Shop;

namespace Nookwright.Paper;

/// <summary>How the things of a job are said on paper: its sizes in its unit, its parts by letter, its workpieces as a maker sees them.</summary>
public sealed class JobWords
{
    private readonly LengthFormat _format;
    private readonly Dictionary<string, Workpiece> _workpieces;
    private readonly ILookup<int, Workpiece> _partsOnSheet;
    private readonly Dictionary<string, int> _stacks;
    private readonly Dictionary<string, Part> _parts;
    private readonly Dictionary<string, string> _letters;
    private readonly IReadOnlyDictionary<string, string> _marks;
    private readonly Dictionary<string, StockPiece> _stock;
    private readonly Dictionary<int, PlanSheet> _sheets;
    private readonly Dictionary<string, string> _materials;

    /// <summary>The words of a job.</summary>
    public JobWords(Workbook book)
    {
        _format = book.Lengths;
        Saws = book.CutRequest.Saws;
        _workpieces = (book.Plan?.Workpieces ?? []).ToDictionary(w => w.Id);
        _partsOnSheet = _workpieces.Values.Where(IsPart).ToLookup(w => w.Sheet);
        Loose = book.Plan is { } plan ? LoosePieces.Of(plan) : new([]);
        _stacks = Loose.Waits.ToDictionary(w => w.Piece, w => w.Visit);
        _parts = book.PartList.Parts.DistinctBy(p => p.Id).ToDictionary(p => p.Id);
        _letters = book.CutRequest.Parts.DistinctBy(p => p.Id).ToDictionary(p => p.Id, p => p.Letter);
        _marks = book.Plan is { } marked ? KeptOffcut.MarksOf(marked) : new Dictionary<string, string>();
        _stock = book.CutRequest.Stock.DistinctBy(s => s.Id).ToDictionary(s => s.Id);
        _sheets = (book.Plan?.Sheets ?? []).ToDictionary(s => s.Number);
        _materials = book
            .Project.Shop.Sheets.DistinctBy(s => s.Id)
            .ToDictionary(s => s.Id, s => s.Name.Length > 0 ? s.Name : s.Id);
    }

    /// <summary>A size with its unit, to the finest mark it needs: <c>23 3⁄4 in</c>.</summary>
    public string Size(Length length) => LengthLabel.Of(length, _format.InFull(length));

    /// <summary>A size to the job's own mark, for what nobody sets a saw by.</summary>
    public string Near(Length length) => LengthLabel.Of(length, _format);

    /// <summary>A size without its unit.</summary>
    public string Bare(Length length) => LengthLabel.Of(length, _format.InFull(length).WithoutUnit);

    /// <summary>The unit alone.</summary>
    public string Unit => _format.Style == LengthStyle.Millimetres ? "mm" : "in";

    /// <summary>Two sizes without unit, for tables: <c>30 × 15 1⁄2</c>.</summary>
    public string BareSides(Length length, Length width) => $"{Bare(length)}\u00a0× {Bare(width)}";

    /// <summary>The unit in full.</summary>
    public string Units => Unit == "mm" ? "millimetres" : "inches";

    /// <summary>Two sizes with one unit: <c>30 × 15 1⁄2 in</c>.</summary>
    public string Sides(Length length, Length width) => $"{Bare(length)}\u00a0× {Size(width)}";

    /// <summary>What a material is called.</summary>
    public string Material(string id) => LengthLabel.In(_materials.GetValueOrDefault(id, id));

    /// <summary>The workpiece with an id.</summary>
    public Workpiece Workpiece(string id) => _workpieces[id];

    /// <summary>Which pieces lie about between visits.</summary>
    public LoosePieces Loose { get; }

    /// <summary>The names of the sheets to lift for a setting, those of the plan's own round.</summary>
    /// <param name="visit">Its number.</param>
    public IEnumerable<string> LiftedFor(int visit) =>
        Loose
            .Lifts.Where(l => l.Value == visit && _sheets.ContainsKey(l.Key))
            .OrderBy(l => l.Key)
            .Select(l => _sheets[l.Key].Workpiece);

    /// <summary>The stack a workpiece is put on: that of the setting it waits for; null when it is not put down to wait.</summary>
    public int? Stack(string id) => _stacks.TryGetValue(id, out var stack) ? stack : null;

    /// <summary>What the shop's saws take and reach.</summary>
    public SawLimits Saws { get; }

    /// <summary>A workpiece's size along the sheet and across it.</summary>
    /// <remarks>To the job's own mark: what is left over need not be told finer.</remarks>
    public string Sides(Workpiece workpiece) =>
        $"{LengthLabel.Of(workpiece.Length, _format.WithoutUnit)}\u00a0×\u00a0{LengthLabel.Of(workpiece.Width, _format)}";

    /// <summary>The kind of sheet or offcut a sheet of the plan is; null when the plan was not made from this job's stock.</summary>
    public StockPiece? Stock(PlanSheet sheet) => _stock.GetValueOrDefault(sheet.Stock);

    /// <summary>What the sheet is that a workpiece comes from; null for one of an earlier round.</summary>
    public StockPiece? StockOf(Workpiece workpiece) =>
        _sheets.GetValueOrDefault(workpiece.Sheet) is { } sheet ? Stock(sheet) : null;

    /// <summary>What a workpiece is called at the saw: a part by its letter, anything else by the name written on it.</summary>
    public string Called(string id) => Called(_workpieces[id]);

    /// <inheritdoc cref="Called(string)"/>
    public string Called(Workpiece workpiece) =>
        workpiece switch
        {
            { Use: WorkpieceUse.Part, Part: { } part } => Letter(part),
            _ => workpiece.Id,
        };

    /// <summary>A workpiece with its size: <c>S1-C1 (96 × 15 7⁄8 in)</c>.</summary>
    public string Sized(string id) => $"{Called(id)} ({Sides(_workpieces[id])})";

    /// <summary>A workpiece with its size, and where it goes: on a stack, to the offcuts, to the scrap.</summary>
    public string Described(string id)
    {
        var workpiece = _workpieces[id];
        var fate = workpiece.Use switch
        {
            WorkpieceUse.Held => $", held for {Letter(workpiece.Part!)}: set it aside",
            WorkpieceUse.Offcut => KeptAs(workpiece),
            WorkpieceUse.Waste => ", scrap",
            _ => Stack(id) is { } stack ? $", stack\u00a0{stack}" : "",
        };
        return $"{Called(workpiece)} ({Sides(workpiece)}{fate})";
    }

    // With what is written on it, so that the next job finds it on the rack; a bad place in it must not be forgotten there.
    private string KeptAs(Workpiece offcut)
    {
        var bad = StockOf(offcut)?.Bad.Any(b => IsOn(b, offcut)) == true ? ", bad place in it" : "";
        return $", keep as {Mark(offcut.Id)}{bad}";
    }

    private static bool IsOn(BadArea bad, Workpiece piece) =>
        bad.X < piece.X + piece.Length
        && piece.X < bad.X + bad.Length
        && bad.Y < piece.Y + piece.Width
        && piece.Y < bad.Y + bad.Width;

    /// <summary>A weight in the job's system, to the whole pound or kilogram; null when it is not known.</summary>
    /// <remarks>1 lb is exactly 0.453 592 37 kg (NIST SP 811, appendix B.8).</remarks>
    public string? Weight(decimal? kilograms) =>
        kilograms is not { } known ? null
        : Unit == "mm" ? $"{decimal.Round(known):0} kg"
        : $"{decimal.Round(known / 0.45359237m):0} lb";

    /// <summary>A part's letter.</summary>
    public string Letter(string part) =>
        _parts.TryGetValue(part, out var found) ? found.Letter : _letters.GetValueOrDefault(part, part);

    /// <summary>A part with its letter and name; a bare list has one word for both.</summary>
    public string Named(string part) =>
        !_parts.TryGetValue(part, out var found) ? part
        : found.Letter == found.Panel.Name ? found.Letter
        : $"{found.Letter} {found.Panel.Name}";

    /// <summary>The letters of the parts that come out of a workpiece, with how many of each; empty when none does.</summary>
    public string PartsIn(Workpiece whole) =>
        Counted(from piece in _partsOnSheet[whole.Sheet] where IsIn(piece, whole) select Letter(piece.Part!));

    /// <summary>The letters of the parts that are cut out of a workpiece, with how many of each; empty when none is.</summary>
    public string CutFrom(Workpiece whole) => LettersIn(whole, WorkpieceUse.Part);

    /// <summary>The letters of the parts that blanks of a workpiece are kept for, with how many of each; empty when none is.</summary>
    public string HeldIn(Workpiece whole) => LettersIn(whole, WorkpieceUse.Held);

    /// <summary>A piece that an earlier round left, with its size and what is written on it.</summary>
    public string LeftAs(string id)
    {
        var piece = _workpieces[id];
        var what = piece.Use switch
        {
            WorkpieceUse.Held => $", held for {Letter(piece.Part!)}",
            WorkpieceUse.Offcut => $", the offcut marked {Mark(id)}",
            _ => "",
        };
        return $"{id} ({Sides(piece)}{what})";
    }

    /// <summary>The material of a workpiece: that of its sheet, or as what it was left by an earlier round; empty when nobody knows.</summary>
    public string MaterialOf(Workpiece workpiece) =>
        _sheets.TryGetValue(workpiece.Sheet, out var sheet) ? Material(sheet.Material)
        : _stock.Values.FirstOrDefault(s => s.LeftAs is { } left && SheetOf(left) == workpiece.Sheet) is { } stock
            ? Material(stock.Material)
        : "";

    private int? SheetOf(string id) => _workpieces.TryGetValue(id, out var piece) ? piece.Sheet : null;

    /// <summary>What to write on an offcut; its name where it has no other.</summary>
    public string Mark(string offcut) => _marks.TryGetValue(offcut, out var mark) ? mark : offcut;

    /// <summary>The blank that is kept for a held part, alone or with the rest of its run; null when none is.</summary>
    public Workpiece? BlankOf(Part part) =>
        _workpieces.Values.FirstOrDefault(w =>
            w.Use == WorkpieceUse.Held && (w.Part == part.Id || (part.Run is { } place && w.Part == place.Run))
        );

    private string LettersIn(Workpiece whole, WorkpieceUse use) =>
        Counted(
            from piece in _partsOnSheet[whole.Sheet]
            where piece.Use == use && IsIn(piece, whole)
            select Letter(piece.Part!)
        );

    /// <summary>Names with how many of each, the one alone: <c>A × 4, B</c>.</summary>
    public static string Counted(IEnumerable<string> names) =>
        string.Join(
            ", ",
            names
                .GroupBy(name => name)
                .OrderBy(alike => alike.Key.Length)
                .ThenBy(alike => alike.Key, StringComparer.Ordinal)
                .Select(alike => alike.Count() == 1 ? alike.Key : $"{alike.Key}\u00a0×\u00a0{alike.Count()}")
        );

    /// <summary>A number of things: <c>1 sheet</c>, <c>3 sheets</c>.</summary>
    public static string Count(int count, string one, string? many = null) =>
        count == 1 ? $"1 {one}" : $"{count} {many ?? one + "s"}";

    private static bool IsPart(Workpiece piece) =>
        piece is { Part: not null, Use: WorkpieceUse.Part or WorkpieceUse.Held };

    private static bool IsIn(Workpiece piece, Workpiece whole) =>
        piece.X >= whole.X
        && piece.Y >= whole.Y
        && piece.X + piece.Length <= whole.X + whole.Length
        && piece.Y + piece.Width <= whole.Y + whole.Width;
}
