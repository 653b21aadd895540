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
        _materials = book
            .Project.Shop.Sheets.DistinctBy(s => s.Id)
            .ToDictionary(s => s.Id, s => s.Name.Length > 0 ? s.Name : s.Id);
    }

    /// <summary>A size with its unit, to the finest mark it needs: <c>23 3⁄4 in</c>.</summary>
    public string Size(Length length) => LengthLabel.Of(length, _format.InFull(length));

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

    /// <summary>The stack a workpiece is put on: that of the setting it waits for; null when it is not put down to wait.</summary>
    public int? Stack(string id) => _stacks.TryGetValue(id, out var stack) ? stack : null;

    /// <summary>What the shop's saws take and reach.</summary>
    public SawLimits Saws { get; }

    /// <summary>A workpiece's size along the sheet and across it.</summary>
    /// <remarks>To the job's own mark: what is left over need not be told finer.</remarks>
    public string Sides(Workpiece workpiece) =>
        $"{LengthLabel.Of(workpiece.Length, _format.WithoutUnit)}\u00a0×\u00a0{LengthLabel.Of(workpiece.Width, _format)}";

    /// <summary>What a workpiece is called at the saw: a part by its letter, anything else by the name written on it.</summary>
    public string Called(string id) => Called(_workpieces[id]);

    /// <inheritdoc cref="Called(string)"/>
    public string Called(Workpiece workpiece) =>
        workpiece switch
        {
            { Use: WorkpieceUse.Part, Part: { } part } => Letter(part),
            { Use: WorkpieceUse.Held, Part: { } part } => $"{Letter(part)}, held",
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
            WorkpieceUse.Offcut => ", keep",
            WorkpieceUse.Waste => ", scrap",
            _ => Stack(id) is { } stack ? $", stack\u00a0{stack}" : "",
        };
        return $"{Called(workpiece)} ({Sides(workpiece)}{fate})";
    }

    /// <summary>A weight in the job's system, to the whole pound or kilogram; null when it is not known.</summary>
    /// <remarks>1 lb is exactly 0.453 592 37 kg (NIST SP 811, appendix B.8).</remarks>
    public string? Weight(decimal? kilograms) =>
        kilograms is not { } known ? null
        : Unit == "mm" ? $"{decimal.Round(known):0} kg"
        : $"{decimal.Round(known / 0.45359237m):0} lb";

    /// <summary>A part's letter.</summary>
    public string Letter(string part) => _parts.TryGetValue(part, out var found) ? found.Letter : part;

    /// <summary>A part with its letter and name; a bare list has one word for both.</summary>
    public string Named(string part) =>
        !_parts.TryGetValue(part, out var found) ? part
        : found.Letter == found.Panel.Name ? found.Letter
        : $"{found.Letter} {found.Panel.Name}";

    /// <summary>The letters of the parts that come out of a workpiece, with how many of each; empty when none does.</summary>
    public string PartsIn(Workpiece whole) =>
        Counted(from piece in _partsOnSheet[whole.Sheet] where IsIn(piece, whole) select Letter(piece.Part!));

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
