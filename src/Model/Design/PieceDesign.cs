using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>How one piece of the document becomes named sizes and boards.</summary>
/// <remarks>
/// In two steps, because pieces may refer to each other in any order: first every piece names its sizes as sums still to be
/// worked out, then each is asked for its boards, in its own frame (see <see cref="Attitude"/>).
/// </remarks>
internal abstract class PieceDesign(Piece piece, Job job)
{
    public Piece Piece => piece;

    public string Id => piece.Id;

    /// <summary>Where its front looks.</summary>
    public virtual Facing Facing => piece.Facing;

    protected Job Job => job;

    /// <summary>What the maker calls it.</summary>
    public virtual string Called => piece.Name ?? piece.Id;

    /// <summary>The outside sizes and where it stands, then everything else.</summary>
    public void NameAll()
    {
        NameSizes();
        NamePlace();
    }

    /// <summary>Its boards, in its own frame.</summary>
    public abstract IEnumerable<Board> Boards(Wanted sizes);

    /// <summary>What will not work about it, once its sizes are known.</summary>
    public virtual IEnumerable<Finding> Check(Wanted sizes) => [];

    /// <summary>Where its own frame stands in the room.</summary>
    public virtual Placement ToRoom(Wanted sizes) =>
        Turning.ToRoom(Facing, Corner(sizes, "left", "front", "bottom"), At(sizes, "width"), At(sizes, "depth"));

    /// <summary>Asks for all six sides in the room, so that one that cannot be had is known.</summary>
    public void AskForPlace(Wanted sizes)
    {
        Corner(sizes, "left", "front", "bottom");
        Corner(sizes, "right", "back", "top");
    }

    /// <summary>A corner of its room box, by the names of three sides.</summary>
    private Point3 Corner(Wanted sizes, string x, string y, string z) => new(At(sizes, x), At(sizes, y), At(sizes, z));

    /// <summary>A size of the piece by its short name.</summary>
    public Traced Of(Wanted sizes, string side) => sizes[$"{Id}.{side}"];

    /// <summary>The same as a length, for placing things.</summary>
    public Length At(Wanted sizes, string side) => Of(sizes, side).Length;

    /// <summary>Names <c>width</c>, <c>height</c> and <c>depth</c> in its own frame, and its members' sizes.</summary>
    protected abstract void NameSizes();

    /// <summary>Names its six sides in the room.</summary>
    protected virtual void NamePlace() => PiecePlace.Name(this, job);

    /// <summary>A field of the piece, as a path through the document.</summary>
    protected string Field(string step) => $"pieces/{Id}/{step}";

    /// <summary>Names a size of the piece.</summary>
    protected void Name(string side, Func<Wanted, Traced> sum) => job.Names.Define($"{Id}.{side}", sum);

    /// <summary>The measured thickness of the piece's own sheet.</summary>
    protected Traced Thickness(Wanted sizes) => ThicknessOf(sizes, piece.Material, "material");

    /// <summary>The measured thickness of a sheet that a field names.</summary>
    protected Traced ThicknessOf(Wanted sizes, string? material, string step) =>
        job.Sheet(material) is { } sheet
            ? sizes[$"{sheet.Id}.thickness"]
            : sizes.Fail(MaterialFinding.Missing(Id, material, Field(step)));

    /// <summary>Names a member's length, width and thickness.</summary>
    protected void NameMember(
        string member,
        FinishedSize length,
        FinishedSize width,
        Func<Wanted, Traced>? thickness = null
    )
    {
        var panel = $"{Id}.{member}";
        job.Finished.Define(panel, MatchedSide.Length, length.ToMark, length.Goes, length.Exact);
        job.Finished.Define(panel, MatchedSide.Width, width.ToMark, width.Goes, width.Exact);
        Name($"{member}.thickness", thickness ?? Thickness);
    }

    /// <summary>A size that decides an outside size of the piece.</summary>
    protected FinishedSize Decides(PieceSide side, Func<Wanted, Traced> exact) =>
        new(ToMark.Nearest, exact, amount => side.Says(amount, this, job));

    /// <summary>A size of a part that goes between or onto others, and must not be larger than they leave.</summary>
    protected FinishedSize Fits(string where, Func<Wanted, Traced> exact) =>
        new(ToMark.Down, exact, amount => $"{job.PrintRest(amount)} of play {where}");

    /// <summary>The very size of another member.</summary>
    protected FinishedSize As(string side) => new(ToMark.Nearest, sizes => Of(sizes, side), _ => "");

    /// <summary>A member as a board lying somewhere in the piece.</summary>
    protected Board Member(Wanted sizes, string member, PanelRole role, Attitude attitude, Point3 low) =>
        new(member, role, member.Replace('-', ' '), piece.Material ?? "", attitude, low, SizeOf(sizes, member))
        {
            Figure = FigureOn(piece.Material, PanelFigure.Length),
        };

    /// <summary>Which way the figure runs: any way on a sheet without figure.</summary>
    protected PanelFigure FigureOn(string? material, PanelFigure wanted) =>
        job.Sheet(material) is { HasFigure: false } ? PanelFigure.Any : wanted;

    private BoardSize SizeOf(Wanted sizes, string member) =>
        new(Of(sizes, $"{member}.length"), Of(sizes, $"{member}.width"), Of(sizes, $"{member}.thickness"));
}

/// <summary>A finished size still to be worked out.</summary>
/// <param name="ToMark">Which way it is rounded.</param>
/// <param name="Exact">What it is before rounding.</param>
/// <param name="Goes">Where what is left over goes, as a sentence.</param>
internal sealed record FinishedSize(ToMark ToMark, Func<Wanted, Traced> Exact, Func<Length, string> Goes);
