using Nookwright.Lettering;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>On which side of a view a chain of dimensions lies.</summary>
internal enum ChainSide
{
    Below,
    Above,
    Right,
    Left,
}

/// <summary>Places along one axis whose distances are drawn in a line.</summary>
/// <param name="Side">Where the line lies.</param>
/// <param name="Stations">The places, exact, in rising order; at least two.</param>
internal sealed record DimensionChain(ChainSide Side, IReadOnlyList<Length> Stations)
{
    /// <summary>A chain through these places, or none when there are not two.</summary>
    public static IEnumerable<DimensionChain> Through(ChainSide side, IEnumerable<Length> places)
    {
        var stations = places.Distinct().Order().ToArray();
        return stations.Length < 2 ? [] : [new(side, stations)];
    }
}

/// <summary>A chain laid out at a scale: where its stations and its texts come to lie along the line.</summary>
/// <remarks>
/// As in ISO 129-1: texts stand above their line and read from below or from the right, lines end in oblique strokes.
/// A text too wide for its stretch goes up to a row of its own, with a line down to its stretch, so that no two texts meet.
/// </remarks>
internal sealed class LaidChain
{
    /// <summary>The em of dimension texts in millimetres: capitals of 2.3 mm, near the 2.5 mm of ISO 3098.</summary>
    public const double TextSize = 3.2;

    /// <summary>From one row of texts to the next.</summary>
    public const double RowHeight = 3.4;

    private const double Clear = 0.8;

    public LaidChain(DimensionChain chain, Func<Length, double> alongPaper, LengthFormat format)
    {
        Chain = chain;
        At = [.. chain.Stations.Select(alongPaper)];
        Texts = [.. Enumerable.Range(1, At.Length - 1).Select(i => Text(chain, i, format))];
        Place();
    }

    public DimensionChain Chain { get; }

    /// <summary>The stations along the line, on paper.</summary>
    public double[] At { get; }

    /// <summary>The texts between them.</summary>
    public string[] Texts { get; }

    /// <summary>The row of each text; 0 stands on the line.</summary>
    public int[] Rows { get; private set; } = [];

    /// <summary>How much room texts take above the line.</summary>
    public double HeightAboveLine => Clear + ((Rows.Max() + 1) * RowHeight);

    /// <summary>How far above the line a text's baseline is.</summary>
    public static double Baseline(int row) => Clear + (row * RowHeight);

    public double Middle(int i) => (At[i] + At[i + 1]) / 2;

    public double HalfWidth(int i) => TextMetrics.Width(Texts[i], TextSize) / 2;

    private void Place()
    {
        Rows = new int[Texts.Length];
        var placed = new List<(int Row, double From, double To)>();
        for (var i = 0; i < Texts.Length; i++)
        {
            var (from, to) = (Middle(i) - HalfWidth(i) - Clear, Middle(i) + HalfWidth(i) + Clear);
            var row = to - from <= Math.Abs(At[i + 1] - At[i]) ? 0 : 1;
            while (placed.Any(p => p.Row == row && p.From < to && from < p.To))
                row++;
            Rows[i] = row;
            placed.Add((row, from, to));
        }
    }

    private static string Text(DimensionChain chain, int i, LengthFormat format) =>
        LengthLabel.Of(chain.Stations[i] - chain.Stations[i - 1], format);
}
