using Nookwright.Bench;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Tests.Cutting;

/// <summary>Requests for tests, in millimetres.</summary>
internal static class Jobs
{
    public static SawLimits Shop { get; } =
        new(Mm(3), Mm(2), Mm(6), Mm(760), Mm(2440), Mm(2750), Mm(2440), Mm(1220), Mm(25));

    /// <summary>No kerf, no dressing, no limits: plain geometry.</summary>
    public static SawLimits Ideal => InstanceFile.IdealSaws;

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static CutPart Part(
        string id,
        decimal length,
        decimal width,
        PanelFigure figure = PanelFigure.Any,
        string material = "birch"
    ) => new(id, id, id, material, Mm(length), Mm(width), figure, []);

    public static CutPart Held(string id, decimal length, decimal width, PanelFigure figure = PanelFigure.Any) =>
        Part(id, length, width, figure) with
        {
            Awaits = ["boxes.width"],
        };

    public static StockPiece Sheet(
        decimal length = 2440,
        decimal width = 1220,
        int? quantity = null,
        string material = "birch",
        decimal? price = null
    ) => new($"{material}-{length}x{width}", material, Mm(length), Mm(width), quantity, price, false, true);

    public static CutMatch Match(string id, MatchedSide side, params string[] parts) =>
        new(id, [.. parts.Select(p => new PartSide(p, side))], "they must match");

    /// <summary>The plan of a request, stopped when the test is.</summary>
    public static Plan PlanOf(CutRequest request) => Planner.Plan(request, null, TestContext.Current.CancellationToken);

    public static CutRequest Request(params CutPart[] parts) => new(parts, [], [], [Sheet()], Shop, new());
}
