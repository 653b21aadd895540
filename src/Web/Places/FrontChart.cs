using System.Globalization;
using Nookwright.Cutting;

namespace Nookwright.Web.Places;

/// <summary>Where the plans of a front stand in its little picture: visits to the right, sheets (or the price) up.</summary>
/// <remarks>The picture's unit is a CSS pixel at its usual width; origin at the top left.</remarks>
/// <param name="front">The front, with two plans or more.</param>
public sealed class FrontChart(PlanFront front)
{
    /// <summary>The picture's width.</summary>
    public const double Width = 400;

    /// <summary>The picture's height.</summary>
    public const double Height = 230;

    /// <summary>Half the side of a point, which is pressed with a finger.</summary>
    public const double PointRadius = 18;

    /// <summary>Where the axis of visits is.</summary>
    public const double Foot = 182;

    /// <summary>Where the axis of sheets is.</summary>
    public const double Left = 62;

    private const double Top = 30;
    private const double Right = 366;

    // Not on the axes, so that a point is seen whole.
    private const double Inset = 26;

    // A point has room for a finger, a number beside the axis for its figures; closer ones are moved apart.
    private const double LeastRight = 2 * PointRadius;
    private const double LeastDown = 17;

    /// <summary>True when the plans differ in how many sheets they buy; false when only the price tells them apart.</summary>
    public bool IsInSheets { get; } = CountsSheets(front);

    /// <summary>What the axis upwards counts.</summary>
    public string UpIs => IsInSheets ? "sheets" : "price";

    /// <summary>The plans, each with its place.</summary>
    public IReadOnlyList<FrontPoint> Points { get; } = PointsOf(front);

    /// <summary>The staircase from plan to plan: the wood stays as it is until the visits for the next step are made.</summary>
    public string Stairs
    {
        get
        {
            var points = Points;
            var steps = points.Skip(1).Select(point => $"H {Number(point.X)} V {Number(point.Y)}");
            return $"M {Number(points[0].X)} {Number(points[0].Y)} {string.Join(' ', steps)}";
        }
    }

    /// <summary>A number as SVG wants it.</summary>
    public static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);

    private static IReadOnlyList<FrontPoint> PointsOf(PlanFront front)
    {
        var (plans, isInSheets) = (front.Plans, CountsSheets(front));
        double Up(FrontPlan plan) => isInSheets ? plan.Sheets : (double)plan.Price!.Value;
        var (first, last) = (plans[0], plans[^1]);
        var right = plans.Select(p => Share(p.Visits, first.Visits, last.Visits));
        var down = plans.Select(p => 1 - Share(Up(p), Up(last), Up(first)));
        var x = Spread(right, Left + Inset, Right - Inset, LeastRight);
        var y = Spread(down, Top, Foot - Inset, LeastDown);
        return [.. plans.Select((p, i) => new FrontPoint(p, x[i], y[i], isInSheets ? $"{p.Sheets}" : $"{p.Price:0}"))];
    }

    private static bool CountsSheets(PlanFront front) =>
        front.Plans.Select(plan => plan.Sheets).Distinct().Count() == front.Plans.Count
        || front.Plans.Any(plan => plan.Price is null);

    /// <summary>Shares that grow, each in its measure between two ends, but none closer to the next than it must be to be told apart.</summary>
    private static double[] Spread(IEnumerable<double> shares, double from, double to, double least)
    {
        double[] places = [.. shares.Select(share => from + (share * (to - from)))];
        var apart = Math.Min(least, (to - from) / Math.Max(1, places.Length - 1));
        for (var i = 1; i < places.Length; i++)
            places[i] = Math.Max(places[i], places[i - 1] + apart);
        if (places.Length > 1)
            places[^1] = to;
        for (var i = places.Length - 2; i > 0; i--)
            places[i] = Math.Min(places[i], places[i + 1] - apart);
        return places;
    }

    private static double Share(double value, double least, double most) =>
        most > least ? (value - least) / (most - least) : 0.5;
}

/// <summary>A plan of a front in its picture.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="X">Its place to the right.</param>
/// <param name="Y">Its place down.</param>
/// <param name="Up">What it is on the axis upwards.</param>
public sealed record FrontPoint(FrontPlan Plan, double X, double Y, string Up);
