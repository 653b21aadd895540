using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A box: the sizes of its corner members, and its outside and inside sizes as built from them.</summary>
/// <remarks>
/// The real box follows from the measured thickness and the rounded members: sides that run through stand apart by the
/// bottom's length, so the box comes out that length plus two thicknesses wide. Bottom and top that are let in lie in a recess
/// at the very end of the other member; a dado and a rabbet are the same cut there.
/// </remarks>
internal sealed partial class CarcassDesign(Carcass box, Job job) : PieceDesign(box, job)
{
    private const string UsualStretcher =
        "a stretcher is 4 in or 100 mm wide unless the box says otherwise (common practice, no source)";
    private const string UsualSlat =
        "a back slat is 4 in or 100 mm high unless the box says otherwise (common practice, no source)";

    private bool SidesThrough => box.Through == ThroughMember.Sides;

    private bool IsLetIn => box.Joint is Joint.Dado or Joint.Rabbet;

    internal bool HasTop => box.Top != BoxTop.Open;

    private bool HasRabbetedBack => box.Back is { Kind: BackKind.Panel, Fixing: BackFixing.Rabbet };

    private bool HasAppliedBack => box.Back is { Kind: BackKind.Panel, Fixing: BackFixing.Applied };

    protected override void NameSizes()
    {
        Name("joint-depth", JointDepth);
        NameCorners();
        NameOutside();
        NameInside();
        NameBack();
        NameBays();
        NameShelves();
    }

    private void NameCorners()
    {
        NameMember(
            "left-side",
            Decides(PieceSide.Height, SidesThrough ? Given("height", box.Height) : SideBetween),
            Decides(PieceSide.Depth, CaseDepth)
        );
        NameMember("right-side", As("left-side.length"), As("left-side.width"));
        NameMember(
            "bottom",
            Decides(PieceSide.Width, SidesThrough ? BottomBetween : Given("width", box.Width)),
            As("left-side.width")
        );
        if (box.Top == BoxTop.Panel)
            NameMember("top", As("bottom.length"), As("left-side.width"));
        if (box.Top == BoxTop.Stretchers)
        {
            NameMember("front-stretcher", As("bottom.length"), Own(StretcherWidth));
            NameMember("back-stretcher", As("bottom.length"), As("front-stretcher.width"));
        }
    }

    private void NameOutside()
    {
        Name("width", s => SidesThrough ? Unlet(s, "bottom.length", 2) + Thickness(s) * 2 : Of(s, "bottom.length"));
        Name("height", s => SidesThrough ? Of(s, "left-side.length") : Unlet(s, "left-side.length", Closed) + Ends(s));
        Name(
            "depth",
            s => HasAppliedBack ? Of(s, "left-side.width") + Of(s, "back.thickness") : Of(s, "left-side.width")
        );
    }

    private void NameInside()
    {
        Name("inside-width", s => Of(s, "width") - Thickness(s) * 2);
        Name("inside-height", s => Of(s, "height") - Ends(s));
        Name("inside-depth", s => Of(s, "left-side.width") - BackTakes(s));
    }

    /// <summary>How many members close the box below and above.</summary>
    private int Closed => HasTop ? 2 : 1;

    private Func<Wanted, Traced> Given(string field, SizeText text) => sizes => sizes.Size(Field(field), text);

    private FinishedSize Own(Func<Wanted, Traced> exact) =>
        new(ToMark.Nearest, exact, _ => "nothing else depends on it");

    private Traced JointDepth(Wanted sizes) =>
        box.JointDepth is { } depth ? sizes.Size(Field("jointDepth"), depth) : Thickness(sizes) / 2;

    /// <summary>A bottom between the sides, longer where it is let into them.</summary>
    private Traced BottomBetween(Wanted sizes) =>
        Let(sizes, sizes.Size(Field("width"), box.Width) - Thickness(sizes) * 2, 2);

    /// <summary>A side between bottom and top, longer where it is let into them.</summary>
    private Traced SideBetween(Wanted sizes) =>
        Let(sizes, sizes.Size(Field("height"), box.Height) - Ends(sizes), Closed);

    private Traced CaseDepth(Wanted sizes)
    {
        var depth = sizes.Size(Field("depth"), box.Depth);
        return HasAppliedBack ? depth - Of(sizes, "back.thickness") : depth;
    }

    private Traced StretcherWidth(Wanted sizes) =>
        box.StretcherWidth is { } width
            ? sizes.Size(Field("stretcherWidth"), width)
            : Job.Usual(Length.Inch * 4, Length.Millimetre * 100, UsualStretcher);

    /// <summary>The thicknesses of bottom and top.</summary>
    private Traced Ends(Wanted sizes) => HasTop ? Thickness(sizes) * 2 : Thickness(sizes);

    private Traced Let(Wanted sizes, Traced between, int ends) =>
        IsLetIn ? between + Of(sizes, "joint-depth") * ends : between;

    private Traced Unlet(Wanted sizes, string member, int ends) =>
        IsLetIn ? Of(sizes, member) - Of(sizes, "joint-depth") * ends : Of(sizes, member);
}
