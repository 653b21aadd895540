using Nookwright.Geometry;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A small box that carries a shelf, open behind.</summary>
/// <remarks>
/// The front covers the front edges of the two sides, which run from bottom to top; top and bottom stand between the sides,
/// behind the front. So no edge shows from the front, and the shelf's weight goes down through the sides.
/// </remarks>
internal sealed class SupportBoxDesign(SupportBox box, Job job) : PieceDesign(box, job)
{
    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var t = At(sizes, "front.thickness");
        var (width, height) = (At(sizes, "width"), At(sizes, "height"));
        return
        [
            Member(sizes, "front", PanelRole.Front, Attitude.Front, Point3.Origin),
            Member(sizes, "left-side", PanelRole.Side, Attitude.LeftOnEnd, new(default, t, default)),
            Member(sizes, "right-side", PanelRole.Side, Attitude.RightOnEnd, new(width - t, t, default)),
            Member(sizes, "bottom", PanelRole.Bottom, Attitude.Level, new(t, t, default)),
            Member(sizes, "top", PanelRole.Top, Attitude.Level, new(t, t, height - t)),
        ];
    }

    protected override void NameSizes()
    {
        NameMember(
            "left-side",
            Decides(PieceSide.Height, s => s.Size(Field("height"), box.Height)),
            Decides(PieceSide.Depth, s => s.Size(Field("depth"), box.Depth) - Thickness(s))
        );
        NameMember("right-side", As("left-side.length"), As("left-side.width"));
        NameMember("front", Decides(PieceSide.Width, s => s.Size(Field("width"), box.Width)), As("left-side.length"));
        NameMember(
            "bottom",
            Fits("between the sides", s => Of(s, "front.length") - Thickness(s) * 2),
            As("left-side.width")
        );
        NameMember("top", As("bottom.length"), As("left-side.width"));
        Name("width", s => Of(s, "front.length"));
        Name("height", s => Of(s, "left-side.length"));
        Name("depth", s => Of(s, "left-side.width") + Thickness(s));
    }
}
