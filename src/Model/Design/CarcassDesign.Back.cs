using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>The back of a box: a panel on its edges or in a rabbet, or slats.</summary>
internal sealed partial class CarcassDesign
{
    private const int UsualSlats = 2;

    private string? BackMaterial => box.Back.Material ?? box.Material;

    private int Slats => box.Back.Kind == BackKind.Slats ? box.Back.Slats ?? UsualSlats : 0;

    private void NameBack()
    {
        if (HasAppliedBack)
            NameMember(
                "back",
                Fits("above the back", s => Of(s, "height")),
                Fits("beside the back", s => Of(s, "width")),
                BackThickness
            );
        if (HasRabbetedBack)
            NameMember(
                "back",
                Fits("in the back's rabbets", BackHeight),
                Fits("in the back's rabbets", BackWidth),
                BackThickness
            );
        for (var i = 1; i <= Slats; i++)
            NameMember(
                $"back-slat-{i}",
                Fits("between the sides", s => Of(s, "inside-width")),
                Own(SlatHeight),
                BackThickness
            );
    }

    private Traced BackThickness(Wanted sizes) =>
        box.Back.Material is null ? Thickness(sizes) : ThicknessOf(sizes, box.Back.Material, "back/material");

    private Traced BackWidth(Wanted sizes) => Of(sizes, "inside-width") + Of(sizes, "joint-depth") * 2;

    private Traced BackHeight(Wanted sizes) => Of(sizes, "inside-height") + Of(sizes, "joint-depth") * Closed;

    private Traced SlatHeight(Wanted sizes) =>
        box.Back.SlatHeight is { } height
            ? sizes.Size(Field("back/slatHeight"), height)
            : Job.Usual(Length.Inch * 4, Length.Millimetre * 100, UsualSlat);

    /// <summary>What the back takes of the inside depth.</summary>
    private Traced BackTakes(Wanted sizes) =>
        HasRabbetedBack || Slats > 0
            ? BackThickness(sizes)
            : Traced.ByRule(Length.Zero, "the back takes nothing of the inside depth");

    private IEnumerable<Board> BackBoards(Wanted sizes, BoxFrame frame)
    {
        if (HasAppliedBack)
            yield return Back(sizes, Attitude.FrontOnEnd, Centred(sizes, frame));
        if (HasRabbetedBack)
            yield return Back(sizes, Attitude.FrontOnEnd, Rabbeted(sizes, frame));
        for (var i = 1; i <= Slats; i++)
            yield return Slat(sizes, frame, i);
    }

    private Board Back(Wanted sizes, Attitude attitude, Point3 low) =>
        Member(sizes, "back", PanelRole.Back, attitude, low) with
        {
            Material = BackMaterial ?? "",
            Figure = FigureOn(BackMaterial, PanelFigure.Length),
        };

    private Point3 Centred(Wanted sizes, BoxFrame frame) =>
        new(Half(frame.Width - At(sizes, "back.width")), frame.CaseDepth, Length.Zero);

    private Point3 Rabbeted(Wanted sizes, BoxFrame frame)
    {
        var start = frame.Thickness - At(sizes, "joint-depth");
        var play = At(sizes, "inside-width") + At(sizes, "joint-depth") * 2 - At(sizes, "back.width");
        return new(start + Half(play), frame.CaseDepth - At(sizes, "back.thickness"), start);
    }

    private Board Slat(Wanted sizes, BoxFrame frame, int number)
    {
        var member = $"back-slat-{number}";
        var low = new Point3(
            frame.Thickness,
            frame.CaseDepth - At(sizes, $"{member}.thickness"),
            frame.Thickness + SlatRise(sizes, number)
        );
        return Member(sizes, member, PanelRole.BackSlat, Attitude.Front, low) with
        {
            Material = BackMaterial ?? "",
            Figure = FigureOn(BackMaterial, PanelFigure.Length),
        };
    }

    /// <summary>The first slat lies at the bottom and the last at the top; a single one at the top, where it takes the fixing to the wall.</summary>
    private Length SlatRise(Wanted sizes, int number)
    {
        var rise = At(sizes, "inside-height") - At(sizes, "back-slat-1.width");
        return Slats == 1 ? rise : new(rise.Nanometres * (number - 1) / (Slats - 1));
    }

    private static Length Half(Length length) => new(length.Nanometres / 2);
}
