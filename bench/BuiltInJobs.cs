using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Bench;

/// <summary>Jobs drawn by lot that look like built-ins: boxes with equal sides, doors with running grain, shelves, a base, a top.</summary>
/// <remarks>
/// Every size is a whole multiple of 0.5 mm. A box brings two sides, a bottom, two stretchers, a back, shelves and doors;
/// boxes of a job share height and depth, so that a job of 60 to 75 parts has some 20 to 26 distinct dimensions, as ordinary
/// jobs do. Invented, like every demo.
/// </remarks>
public static class BuiltInJobs
{
    private const string Birch = "birch-18";
    private const string Thin = "birch-6";

    /// <summary>A usual home shop, in millimetres: table kerf 3.2, track kerf 2.2, dressing 6; no limit below a full sheet.</summary>
    public static SawLimits Saws { get; } =
        new(Mm(3.2), Mm(2.2), Mm(6), Mm(760), Mm(2440), Mm(2750), Mm(2440), Mm(1220), Mm(25));

    /// <summary>A job of 60 to 75 parts with 20 to 26 distinct dimensions: drawn again until it has as many.</summary>
    /// <param name="seed">Which.</param>
    public static CutRequest Ordinary(int seed)
    {
        var random = new Random(seed);
        while (true)
            if (
                Of(random, 60 + random.Next(16), kindsOfBox: 3 + random.Next(2)) is var job
                && Dimensions(job) is >= 20 and <= 26
            )
                return job;
    }

    /// <summary>How many distinct dimensions a job has.</summary>
    public static int Dimensions(CutRequest job) =>
        job.Parts.SelectMany(p => new[] { p.Length, p.Width }).Distinct().Count();

    /// <summary>A shop's job: as many parts as asked, of so many kinds of box.</summary>
    public static CutRequest Large(int parts, int kindsOfBox, int seed) => Of(new Random(seed), parts, kindsOfBox);

    private static CutRequest Of(Random random, int count, int kindsOfBox)
    {
        var drawing = new Drawing(random, count);
        var kinds = Enumerable.Range(0, kindsOfBox).Select(_ => BoxSize.Draw(random)).ToList();
        for (var number = 1; drawing.Room > 0; number++)
            drawing.Box($"box-{number}", kinds[random.Next(kinds.Count)]);
        return new(
            drawing.Parts,
            drawing.Matches,
            drawing.Runs,
            [Sheet(Birch), Sheet(Thin)],
            Saws,
            new CutRules(Seed: 1)
        );
    }

    private static StockPiece Sheet(string material) =>
        new(material, material, Mm(2440), Mm(1220), null, null, IsOffcut: false, HasFigure: true);

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);

    /// <summary>The sizes of one kind of box.</summary>
    private sealed record BoxSize(double Width, double Height, double Depth, int Shelves, int Doors)
    {
        private const double Thickness = 18;

        public double Inner => Width - (2 * Thickness);

        public double DoorWidth => (Width - 3 - (3 * (Doors - 1))) / Doors;

        // Heights and depths come from few values, since boxes stand beside each other and share a top.
        public static BoxSize Draw(Random random) =>
            new(
                380 + (random.Next(500) * 1.0),
                540 + (random.Next(3) * 90),
                320 + (random.Next(3) * 60),
                random.Next(1, 3),
                random.Next(1, 3)
            );
    }

    /// <summary>Collects parts until the job is full.</summary>
    private sealed class Drawing(Random random, int count)
    {
        public List<CutPart> Parts { get; } = [];

        public List<CutMatch> Matches { get; } = [];

        public List<CutRun> Runs { get; } = [];

        public int Room => count - Parts.Count;

        public void Box(string id, BoxSize size)
        {
            var sides = Several(id, "side", 2, size.Height, size.Depth, Birch, PanelFigure.Length);
            Several(id, "bottom", 1, size.Inner, size.Depth, Birch, PanelFigure.Length);
            Several(id, "stretcher", 2, size.Inner, 90, Birch, PanelFigure.Length);
            Several(id, "shelf", size.Shelves, size.Inner - 2, size.Depth - 20, Birch, PanelFigure.Length);
            Several(id, "back", 1, size.Width - 12, size.Height - 12, Thin, PanelFigure.Any);
            var doors = Several(id, "door", size.Doors, size.Height - 4, size.DoorWidth, Birch, PanelFigure.Length);
            if (sides.Count == 2)
                Matches.Add(
                    new(
                        $"{id}.sides",
                        [.. sides.Select(s => new PartSide(s, MatchedSide.Both))],
                        "Both sides stand level."
                    )
                );
            if (doors.Count > 1 && random.Next(2) == 0)
                Runs.Add(new($"{id}.doors", doors) { Height = MatchedSide.Length });
        }

        private List<string> Several(
            string box,
            string name,
            int wanted,
            double length,
            double width,
            string material,
            PanelFigure figure
        )
        {
            List<string> ids = [.. Enumerable.Range(1, Math.Min(wanted, Room)).Select(i => $"{box}.{name}-{i}")];
            Parts.AddRange(
                ids.Select(id => new CutPart(id, id, name, material, Half(length), Half(width), figure, [])
                {
                    Piece = box,
                })
            );
            return ids;
        }

        private static Length Half(double millimetres) => Mm(Math.Round(millimetres * 2) / 2);
    }
}
