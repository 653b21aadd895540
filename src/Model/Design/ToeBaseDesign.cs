using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A base on edge: front and back rails run through, cross members stand between them.</summary>
internal sealed class ToeBaseDesign(ToeBase toe, Job job) : PieceDesign(toe, job)
{
    private const int UsualCrosses = 3;

    private int Crosses => toe.CrossMembers ?? UsualCrosses;

    public override IEnumerable<Board> Boards(Wanted sizes)
    {
        var thickness = At(sizes, "front-rail.thickness");
        var behind = At(sizes, "depth") - thickness;
        yield return Member(sizes, "front-rail", PanelRole.BaseRail, Attitude.Front, Point3.Origin);
        yield return Member(sizes, "back-rail", PanelRole.BaseRail, Attitude.Front, new(default, behind, default));
        var step = At(sizes, "width") - thickness;
        for (var i = 1; i <= Crosses; i++)
        {
            var along = new Length(step.Nanometres * (i - 1) / (Crosses - 1));
            yield return Member(
                sizes,
                $"cross-{i}",
                PanelRole.BaseCross,
                Attitude.Right,
                new(along, thickness, default)
            ) with
            {
                Called = $"cross member {i}",
            };
        }
    }

    protected override void NameSizes()
    {
        NameMember(
            "front-rail",
            Decides(PieceSide.Width, s => s.Size(Field("width"), toe.Width)),
            Decides(PieceSide.Height, s => s.Size(Field("height"), toe.Height))
        );
        NameMember("back-rail", As("front-rail.length"), As("front-rail.width"));
        NameMember("cross-1", Decides(PieceSide.Depth, CrossLength), As("front-rail.width"));
        for (var i = 2; i <= Crosses; i++)
            NameMember($"cross-{i}", As("cross-1.length"), As("front-rail.width"));
        Name("width", s => Of(s, "front-rail.length"));
        Name("height", s => Of(s, "front-rail.width"));
        Name("depth", s => Of(s, "cross-1.length") + Thickness(s) * 2);
    }

    private Traced CrossLength(Wanted sizes) => sizes.Size(Field("depth"), toe.Depth) - Thickness(sizes) * 2;
}
