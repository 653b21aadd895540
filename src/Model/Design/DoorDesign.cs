using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>One door or a pair, sized by the opening it closes and hung where the box stands.</summary>
/// <remarks>
/// Inset: opening less gaps. Overlay: opening and what lies over the edges, less the gap between two. Both doors of a pair
/// are equal; what rounding leaves goes to the gaps. Its own frame is that of its box. (Trade practice: overlay door =
/// opening + overlays; pair = (opening + 2 overlays - middle gap) / 2; inset = opening - gaps.)
/// </remarks>
internal sealed partial class DoorDesign(Doors doors, Job job) : PieceDesign(doors, job)
{
    private const string UsualGap =
        "a door's gap is 1/16 in or 1.5 mm unless the doors say otherwise (common practice, no source)";

    public override Facing Facing => Box?.Facing ?? base.Facing;

    /// <summary>Doors without a name of their own go by their box: "left door of box 1".</summary>
    public override string Called => doors.Name ?? Box?.Called ?? base.Called;

    private CarcassDesign? Box => Job.Designs.GetValueOrDefault(doors.Box) as CarcassDesign;

    private bool IsInset => doors.Style == DoorStyle.Inset;

    private bool IsPair => doors.Count == 2;

    private bool IsAcross => doors.Figure == FigureOnDoor.Across;

    private string First => IsPair ? "left-door" : "door";

    /// <summary>Which of a door's finished sizes is its width as it hangs.</summary>
    private string WidthSide => IsAcross ? "length" : "width";

    private string HeightSide => IsAcross ? "width" : "length";

    protected override void NameSizes()
    {
        Name("gap", Gap);
        Name("opening-width", OpeningWidth);
        Name("opening-height", s => OfBox(s, "inside-height"));
        if (!IsInset)
            Name("overlay", Overlay);
        NameDoor(First, InGaps(DoorWidth), InGaps(DoorHeight));
        if (IsPair)
            NameDoor("right-door", As($"{First}.{WidthSide}"), As($"{First}.{HeightSide}"));
        Name("width", OverallWidth);
        Name("height", s => Of(s, $"{First}.{HeightSide}"));
        Name("depth", Thickness);
        Name("from-left", FromLeft);
        Name("from-bottom", FromBottom);
    }

    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var left = new Point3(At(sizes, "from-left"), Forward(sizes).Length, At(sizes, "from-bottom"));
        if (!IsPair)
            return [Door(sizes, First, left)];
        var right = left with { X = left.X + At(sizes, "width") - At(sizes, $"right-door.{WidthSide}") };
        return [Door(sizes, First, left), Door(sizes, "right-door", right)];
    }

    private void NameDoor(string member, FinishedSize width, FinishedSize height)
    {
        if (IsAcross)
            NameMember(member, width, height);
        else
            NameMember(member, height, width);
    }

    private FinishedSize InGaps(Func<Wanted, Traced> exact) =>
        new(ToMark.Down, exact, amount => $"the gaps round {Id} take up {Job.PrintRest(amount)}");

    private Board Door(Wanted sizes, string member, Point3 low)
    {
        var attitude = IsAcross ? Attitude.Front : Attitude.FrontOnEnd;
        var edge = new BoardEdges(Job, Id).Edge(sizes, doors.Edge, "edge");
        return Member(sizes, member, PanelRole.Door, attitude, low) with { Edges = new(edge, edge, edge, edge) };
    }

    private Traced OpeningWidth(Wanted sizes)
    {
        if (doors.Bay is not { } bay)
            return OfBox(sizes, "inside-width");
        return bay > (Box?.Bays ?? bay) ? sizes.Fail(NoSuchBay(bay)) : OfBox(sizes, $"bay-{bay}.width");
    }

    private Traced Gap(Wanted sizes) =>
        doors.Gap is { } gap
            ? sizes.Size(Field("gap"), gap)
            : Job.Usual(Length.FromInches(0, 1, 16), Length.FromMillimetres(1.5m), UsualGap);

    private Traced Overlay(Wanted sizes) =>
        doors.Overlay is { } overlay
            ? sizes.Written(Field("overlay"), overlay)
            : OfBox(sizes, "left-side.thickness") - Of(sizes, "gap") / 2;

    /// <summary>Over a partition two doors meet, and share its thickness less the gap.</summary>
    private Traced OverlayAt(Wanted sizes, bool isAtPartition) =>
        isAtPartition && doors.Overlay is null
            ? (OfBox(sizes, "left-side.thickness") - Of(sizes, "gap")) / 2
            : Of(sizes, "overlay");

    private Traced OverlayLeft(Wanted sizes) => OverlayAt(sizes, doors.Bay > 1);

    private Traced OverlayRight(Wanted sizes) => OverlayAt(sizes, doors.Bay is { } bay && bay < (Box?.Bays ?? 1));

    /// <summary>An open box has no edge above that a door could lie over.</summary>
    private Traced OverlayAbove(Wanted sizes) =>
        doors.Overlay is null && Box is { HasTop: false }
            ? Traced.ByRule(Length.Zero, "an open box has no edge above for a door to lie over")
            : Of(sizes, "overlay");

    private Traced DoorWidth(Wanted sizes)
    {
        if (doors.Width is { } given)
            return sizes.Size(Field("width"), given);
        if (IsInset)
            return IsPair
                ? (Of(sizes, "opening-width") - Of(sizes, "gap") * 3) / 2
                : Of(sizes, "opening-width") - Of(sizes, "gap") * 2;
        return IsPair ? (Covered(sizes) - Of(sizes, "gap")) / 2 : Covered(sizes);
    }

    private Traced DoorHeight(Wanted sizes) =>
        doors.Height is { } given ? sizes.Size(Field("height"), given)
        : IsInset ? Of(sizes, "opening-height") - Of(sizes, "gap") * 2
        : CoveredHeight(sizes);

    /// <summary>The opening and what overlay doors cover beside it.</summary>
    private Traced Covered(Wanted sizes) => Of(sizes, "opening-width") + OverlayLeft(sizes) + OverlayRight(sizes);

    private Traced CoveredHeight(Wanted sizes) =>
        Of(sizes, "opening-height") + Of(sizes, "overlay") + OverlayAbove(sizes);

    /// <summary>A number of the box, or why there is no box.</summary>
    private Traced OfBox(Wanted sizes, string side) => Box is null ? sizes.Fail(NoBox()) : sizes[$"{doors.Box}.{side}"];

    private Refusal NoBox() =>
        new($"{Id} hangs on \"{doors.Box}\", and there is no box of that id; name one.", Field("box"))
        {
            Rule = "doors.no-box",
        };

    private Refusal NoSuchBay(int bay) =>
        new(
            $"{Id} closes bay {bay} of {doors.Box}, which has {Box!.Bays}; name another bay, or none for the whole box.",
            Field("bay")
        )
        {
            Rule = "doors.no-such-bay",
        };
}
