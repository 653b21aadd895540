using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Cutting;

/// <summary>What is to be cut, from what, with which saws: all that planning needs to know of a job, or of a bare list.</summary>
/// <param name="Parts">The parts.</param>
/// <param name="Matches">Groups of dimensions that must not be split over visits.</param>
/// <param name="Runs">Running grain: part ids in order, from one strip of one sheet.</param>
/// <param name="Stock">Sheets and offcuts.</param>
/// <param name="Saws">What the saws take and reach.</param>
/// <param name="Rules">What comes first.</param>
public sealed record CutRequest(
    IReadOnlyList<CutPart> Parts,
    IReadOnlyList<CutMatch> Matches,
    IReadOnlyList<CutRun> Runs,
    IReadOnlyList<StockPiece> Stock,
    SawLimits Saws,
    CutRules Rules
)
{
    /// <summary>What messages say lengths in; millimetres when nobody says.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetres;

    /// <summary>Parts the maker wants from different strips.</summary>
    public IReadOnlyList<CutApart> Apart { get; init; } = [];

    /// <summary>Sheets the maker keeps as they were planned.</summary>
    public IReadOnlyList<PinnedSheet> PinnedSheets { get; init; } = [];

    internal string Say(Length length) => LengthText.Write(length, Units);
}

/// <summary>A rectangle to cut.</summary>
/// <param name="Id">Unique.</param>
/// <param name="Letter">What is written on it.</param>
/// <param name="Name">What it is.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">To be cut to, one way; a held part's blank size.</param>
/// <param name="Width">To be cut to, the other way; a held part's blank size.</param>
/// <param name="Figure">Which of the two the figure runs along.</param>
/// <param name="Awaits">The readings it waits for; empty for a part that is cut to size now.</param>
public sealed record CutPart(
    string Id,
    string Letter,
    string Name,
    string Material,
    Length Length,
    Length Width,
    PanelFigure Figure,
    IReadOnlyList<string> Awaits
)
{
    /// <summary>The piece it belongs to; null when nobody says. Box by box, a piece's parts are finished before the next piece's.</summary>
    public string? Piece { get; init; }

    /// <summary>The stock it must come from, pinned by hand; null for any of its material.</summary>
    public string? From { get; init; }

    /// <summary>True for a part that was issued and is no longer asked for: another size took its place, or it was taken away.</summary>
    public bool IsSpare { get; init; }

    /// <summary>True while it is only broken down oversize.</summary>
    public bool IsHeld => Awaits.Count > 0;
}

/// <summary>Dimensions that must be cut in one visit.</summary>
/// <param name="Id">The group's id.</param>
/// <param name="Sides">Part ids with the dimension meant.</param>
/// <param name="Because">Why.</param>
public sealed record CutMatch(string Id, IReadOnlyList<Parts.PartSide> Sides, string Because);

/// <summary>Parts that must not come from one strip: the maker wants their figure, or their errors, unlike.</summary>
/// <param name="Id">The wish's id.</param>
/// <param name="Parts">Part ids; no two of them share a strip.</param>
public sealed record CutApart(string Id, IReadOnlyList<string> Parts);

/// <summary>A running grain to cut: parts side by side along one strip, in order.</summary>
/// <param name="Id">The run's id.</param>
/// <param name="Parts">Part ids in order.</param>
public sealed record CutRun(string Id, IReadOnlyList<string> Parts)
{
    /// <summary>
    /// Which of the members' sides lies across the run and is the same for all: length or width. Null for the side they
    /// share; when they share both, the side across the figure, so that the strip runs along it.
    /// </summary>
    public MatchedSide? Height { get; init; }

    /// <summary>
    /// Parts after which the maker allows the run to go on in another strip, where one is too short for all or a sheet is
    /// saved by it.
    /// </summary>
    public IReadOnlyList<string> MaySplitAfter { get; init; } = [];

    /// <summary>Those of these parts after which it does go on in another strip, though one could give it whole.</summary>
    internal IReadOnlyList<string> PartAfter { get; init; } = [];

    /// <summary>
    /// How far the cut edges of neighbours stand apart in place, joint by joint; null where nobody says, and empty when
    /// nobody says of any.
    /// </summary>
    public IReadOnlyList<Length?> Gaps { get; init; } = [];

    /// <summary>The gap after the part in a place, from nought; null when nobody says.</summary>
    internal Length? GapAfter(int place) => place < Gaps.Count ? Gaps[place] : null;
}

/// <summary>A kind of sheet, or an offcut.</summary>
/// <param name="Id">Unique.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
/// <param name="Quantity">How many there are; null for as many as needed.</param>
/// <param name="Price">Of one; null when unknown.</param>
/// <param name="IsOffcut">From the rack: used before any sheet.</param>
/// <param name="HasFigure">False when parts may be turned whatever they say.</param>
public sealed record StockPiece(
    string Id,
    string Material,
    Length Length,
    Length Width,
    int? Quantity,
    decimal? Price,
    bool IsOffcut,
    bool HasFigure
)
{
    /// <summary>The id of the workpiece it is, where an earlier round left it; null for what comes from the shop.</summary>
    public string? LeftAs { get; init; }

    /// <summary>Places nothing may be cut from, as measured from the sheet's low corner.</summary>
    public IReadOnlyList<BadArea> Bad { get; init; } = [];

    /// <summary>How far its ends are out of square, over its whole width; zero when square or not measured.</summary>
    /// <remarks>Its long edges are straight and alike; squaring takes this much off each end beyond the dressing.</remarks>
    public Length OutOfSquare { get; init; }

    /// <summary>True when its factory edges may be measured from undressed.</summary>
    public bool TrustsEdges { get; init; }

    /// <summary>Mass per area in kg/m²; null when unknown.</summary>
    public decimal? KilogramsPerSquareMetre { get; init; }
}

/// <summary>What comes first.</summary>
/// <param name="VisitsFirst">
/// True for one visit per dimension, then sheets; false for the fewest sheets first. What must match is never split either way.
/// </param>
/// <param name="Seed">For whatever the search draws by lot: same request, same seed, same effort, same plan.</param>
/// <param name="Effort">How many improvement rounds at most; 0 for the constructive plan alone.</param>
/// <param name="BoxByBox">
/// True to finish one piece's parts before the next piece's are begun: fewer loose pieces about, more visits.
/// </param>
public sealed record CutRules(bool VisitsFirst = true, int Seed = 1, int Effort = 1000, bool BoxByBox = false)
{
    private const int StepsPerRound = 100;

    /// <summary>The effort in steps of the search: a step takes a few parts out and puts them back.</summary>
    internal int Steps => Effort * StepsPerRound;
}
