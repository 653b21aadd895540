using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>What a piece of one panel is made to.</summary>
/// <param name="Member">Its panel's name.</param>
/// <param name="Role">What it does.</param>
/// <param name="Attitude">How it lies.</param>
/// <param name="Length">Along its length, as written.</param>
/// <param name="Width">Across it, as written.</param>
/// <param name="LongBy">What stays long.</param>
internal sealed record SinglePanel(
    string Member,
    PanelRole Role,
    Attitude Attitude,
    SizeText Length,
    SizeText Width,
    LongBy LongBy
)
{
    /// <summary>The field its length is written in.</summary>
    public string LengthField { get; init; } = "length";

    /// <summary>The field its width is written in.</summary>
    public string WidthField { get; init; } = "width";

    public PanelFigure Figure { get; init; }

    public EdgedSides Edges { get; init; } = new();

    public IReadOnlyList<RoundHole> Holes { get; init; } = [];

    /// <summary>A runner lies along its wall with its back against it.</summary>
    public static SinglePanel Of(Runner runner) =>
        new("runner", PanelRole.Runner, Against(runner.Wall), runner.Length, runner.Height, runner.LongBy)
        {
            WidthField = "height",
        };

    /// <summary>A filler stands on end and faces the front.</summary>
    public static SinglePanel Of(Filler filler) =>
        new("filler", PanelRole.Filler, Attitude.FrontOnEnd, filler.Height, filler.Width, filler.LongBy)
        {
            LengthField = "height",
        };

    /// <summary>Trim lies as the maker says.</summary>
    public static SinglePanel Of(Trim trim) =>
        new("trim", PanelRole.Trim, Lying(trim.Lie), trim.Length, trim.Width, trim.LongBy);

    /// <summary>A free panel lies as the maker says.</summary>
    public static SinglePanel Of(FreePanel panel) =>
        new("panel", PanelRole.Free, Lying(panel.Lie), panel.Length, panel.Width, panel.LongBy)
        {
            Figure = panel.Figure,
            Edges = panel.Edges,
            Holes = panel.Holes,
        };

    private static Attitude Against(Wall wall) =>
        wall switch
        {
            Wall.Left => Attitude.Right,
            Wall.Right => Attitude.Left,
            _ => Attitude.Front,
        };

    private static Attitude Lying(PanelLie lie) =>
        lie switch
        {
            PanelLie.Flat => Attitude.Level,
            PanelLie.UprightAlongX => Attitude.Front,
            PanelLie.StandingAlongX => Attitude.FrontOnEnd,
            PanelLie.UprightAlongY => Attitude.Right,
            _ => Attitude.RightOnEnd,
        };
}
