using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A top or an open shelf: straight or L-shaped in plan, one layer or doubled.</summary>
/// <remarks>
/// Its own frame spans the whole L: the return comes forward to y = 0 and the main run lies behind it. Panels: <c>main</c>
/// and <c>return</c>; doubled boards add <c>upper</c> and <c>lower</c> (<c>upper</c> alone for a board of one outline).
/// </remarks>
internal sealed partial class FlatDesign(FlatPiece flat, Job job) : PieceDesign(flat, job)
{
    private bool IsL => flat.Return != ReturnSide.None;

    private bool IsTwoStrips => IsL && flat.Make == LMake.TwoStrips;

    private bool IsDoubled => flat.Layers == 2;

    private PanelRole Role => flat is Shelf ? PanelRole.Shelf : PanelRole.Slab;

    /// <summary>The layers by what their panels' names add, from below.</summary>
    private IReadOnlyList<string> Layers => IsDoubled ? ["lower", "upper"] : [""];

    private string Top => Layers[^1];

    protected override void NameSizes()
    {
        NameTopLayer();
        if (IsDoubled)
            NameLowerLayer(Layers[0]);
        Name("width", s => Of(s, $"{MainOf(Top)}.length"));
        Name("main-depth", MainDepth);
        Name("depth", OverallDepth);
        Name("height", s => IsDoubled ? Thickness(s) * 2 : Thickness(s));
    }

    private void NameTopLayer()
    {
        NameMember(
            MainOf(Top),
            Decides(PieceSide.Width, s => s.Size(Field("width"), flat.Width)),
            Decides(PieceSide.Depth, s => IsL && !IsTwoStrips ? GivenReach(s) + GivenDepth(s) : GivenDepth(s))
        );
        if (IsTwoStrips)
            NameMember(ReturnOf(Top), Decides(PieceSide.Depth, GivenReach), Stands("return", GivenReturnDepth));
        else if (IsL)
            NameOneOutline();
    }

    /// <summary>The same sizes as the layer above it.</summary>
    private void NameLowerLayer(string layer)
    {
        NameMember(MainOf(layer), As($"{MainOf(Top)}.length"), As($"{MainOf(Top)}.width"));
        if (IsTwoStrips)
            NameMember(ReturnOf(layer), As($"{ReturnOf(Top)}.length"), As($"{ReturnOf(Top)}.width"));
    }

    /// <summary>An L cut out of one panel has two more sizes than its outside, and they are cut to the mark too.</summary>
    private void NameOneOutline()
    {
        Name("return-length", s => Of(s, $"{MainOf(Top)}.width") - Of(s, "main-depth"));
        Name("return-depth", s => Job.Finished.ToNearest(GivenReturnDepth(s)));
    }

    private FinishedSize Stands(string what, Func<Wanted, Traced> exact) =>
        new(
            ToMark.Nearest,
            exact,
            amount =>
                $"the {what} of {Id} comes out {Job.PrintRest(amount)} {(amount.IsPositive ? "wider" : "narrower")}"
        );

    private string MainOf(string layer) =>
        !IsDoubled ? "main"
        : IsTwoStrips ? $"main-{layer}"
        : layer;

    private static string ReturnOf(string layer) => layer.Length == 0 ? "return" : $"return-{layer}";

    private Traced GivenDepth(Wanted sizes) => sizes.Size(Field("depth"), flat.Depth);

    private Traced GivenReach(Wanted sizes) => Needed(sizes, "returnLength", flat.ReturnLength);

    private Traced GivenReturnDepth(Wanted sizes) => Needed(sizes, "returnDepth", flat.ReturnDepth);

    private Traced Needed(Wanted sizes, string field, SizeText? given) =>
        given is { } text
            ? sizes.Size(Field(field), text)
            : sizes.Fail(
                new(
                    $"{Id} has a return and no {field}; give the return a length and a depth, or make it straight.",
                    Field(field)
                )
                {
                    Rule = "flat.return-without-size",
                }
            );

    private Traced MainDepth(Wanted sizes) =>
        IsL && !IsTwoStrips ? Job.Finished.ToNearest(GivenDepth(sizes)) : Of(sizes, $"{MainOf(Top)}.width");

    private Traced OverallDepth(Wanted sizes)
    {
        var main = Of(sizes, $"{MainOf(Top)}.width");
        return IsTwoStrips ? Of(sizes, $"{ReturnOf(Top)}.length") + main : main;
    }
}
