using Nookwright.Design;
using Nookwright.Lettering;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>Names and letters on a view: on what is large enough, else beside it with a leader.</summary>
internal sealed class ViewLabels(ViewScene scene, Painting painting)
{
    private const double LetterSize = 4.2;
    private const double SmallLetter = 2.8;
    private const double NameSize = 2.8;
    private const double Line = 4;

    private readonly Dictionary<string, string> _letters = scene.Workbook.PartList.Parts.ToDictionary(
        p => p.Id,
        p => p.Letter
    );

    /// <summary>How wide the labels beside the view are at most.</summary>
    public static double MarginFor(ViewScene scene)
    {
        var labels = scene.Solids.Where(IsBeside).Select(s => BesideText(scene, s.Panel, "MM")).Distinct();
        return labels.Select(t => TextMetrics.Width(t, NameSize) + 8).DefaultIfEmpty(0).Max();
    }

    /// <summary>Letters in rings on doors, fronts and backs.</summary>
    public IEnumerable<Mark> OnPanels() =>
        from solid in scene.Solids
        let window = WindowOf(solid)
        where !IsBeside(solid) && Math.Min(window.Width, window.Height) > 2 * LetterSize && IsClear(solid, window)
        from mark in Ring(window.Middle, _letters.GetValueOrDefault(solid.Panel.Id, ""), solid.Panel.Id)
        select mark;

    /// <summary>The names of boxes, below the middle of their fronts.</summary>
    public IEnumerable<Mark> OnBoxes() =>
        from piece in scene.Pieces
        where piece.Piece is Carcass or SupportBox
        let window = Window.Around([painting.At(Vertex.Of(piece.Low)), painting.At(Vertex.Of(piece.High))])
        let name = piece.Piece.Name ?? piece.Piece.Id
        where TextMetrics.Width(name, NameSize) < window.Width - 1 && window.Height > 14
        where
            IsOf(piece, scene.Visible.At(Vertex.Of(piece.Low) + ((Vertex.Of(piece.High) - Vertex.Of(piece.Low)) * 0.4)))
        from mark in OnPaper(name, new(window.Middle.X, window.Middle.Y + LetterSize + 3.2))
        select mark;

    /// <summary>Letters and names of tops and shelves seen from above, towards the front, clear of the names of boxes below.</summary>
    public IEnumerable<Mark> OnTops() =>
        from solid in scene.Solids
        where solid.Panel.Role is PanelRole.Slab or PanelRole.Shelf
        let spot = SeenNearMiddle(solid)
        where spot is not null
        from mark in OnPaper(
            BesideText(scene, solid.Panel, _letters.GetValueOrDefault(solid.Panel.Id, "")),
            painting.AtSeen(spot.Value)
        )
        select mark;

    /// <summary>Boards seen edge on: in the left part of the view named in a column beside it, else by a small ring on them.</summary>
    /// <param name="view">The view.</param>
    public IEnumerable<Mark> Beside(Window view)
    {
        var leaders = Leaders().ToLookup(l => l.At.X < view.Left + (view.Width * 0.4));
        var named = leaders[true].Select(l => (l.Letter, Height: Math.Round(l.At.Y, 1))).ToHashSet();
        var rings = leaders[false].Where(l => !named.Contains((l.Letter, Math.Round(l.At.Y, 1))));
        return Column(leaders[true], view.Left).Concat(SmallRings(rings));
    }

    /// <summary>Each ring on its board where it is clear of those before it.</summary>
    private static IEnumerable<Mark> SmallRings(IEnumerable<Leader> leaders)
    {
        var taken = new List<Window>();
        foreach (var leader in leaders)
        {
            var places = leader.Spots.Select(s => Window.Around([s]).Grown(SmallLetter * 0.75)).ToArray();
            var place = places.Cast<Window?>().FirstOrDefault(p => !taken.Any(t => t.Overlaps(p!.Value))) ?? places[0];
            taken.Add(place);
            foreach (var mark in Ring(place.Middle, leader.Letter, leader.Panel, SmallLetter))
                yield return mark;
        }
    }

    private static IEnumerable<Mark> Column(IEnumerable<Leader> leaders, double right)
    {
        var lowest = double.NegativeInfinity;
        foreach (var (text, spot) in leaders.OrderBy(l => l.At.Y).Select(l => (l.Text, l.At)))
        {
            lowest = Math.Max(spot.Y + 1, lowest + Line);
            yield return new Mark.Label(text, new(right - 6, lowest), NameSize, Anchor.End);
            yield return new Mark.Path(
                [new(right - 5, lowest - 1), new(right - 2.5, lowest - 1), spot],
                false,
                Fill.None,
                Pen.Dimension
            );
            yield return new Mark.Circle(spot, 0.5, Fill.Ink, Pen.None);
        }
    }

    private IEnumerable<Leader> Leaders() =>
        from solid in scene.Solids
        where IsBeside(solid)
        let spots = SeenSpots(solid)
        where spots.Length > 0
        let letter = _letters.GetValueOrDefault(solid.Panel.Id, "")
        group new Leader(BesideText(scene, solid.Panel, letter), letter, solid.Panel.Id, spots) by (
            letter,
            solid.Panel.Piece
        ) into alike
        select alike.MinBy(l => l.At.X);

    /// <summary>True when a whole ring in the middle of a panel would lie on what is seen of it.</summary>
    private bool IsClear(Solid solid, Window window)
    {
        var middle = window.Middle;
        Spot[] spots = [middle, .. new Window(middle.X, middle.Y, middle.X, middle.Y).Grown(LetterSize * 0.5).Corners];
        return spots.All(s => scene.Visible.At(painting.SeenAt(s)) == solid.Panel.Id);
    }

    /// <summary>Spots on a board's middle line where it is seen, the leftmost first.</summary>
    private Spot[] SeenSpots(Solid solid)
    {
        var seen = Window.Around([scene.Sight.See(solid.Low), scene.Sight.See(solid.High)]);
        return
        [
            .. new[] { 0.01, 0.1, 0.3, 0.5, 0.7, 0.9 }
                .Select(share => new Spot(seen.Left + (share * seen.Width), seen.Middle.Y))
                .Where(spot => scene.Visible.At(spot) == solid.Panel.Id)
                .Select(painting.AtSeen),
        ];
    }

    /// <summary>A spot of a level board that is seen from above, half way along it.</summary>
    private Spot? SeenNearMiddle(Solid board)
    {
        var x = (board.Low.X + board.High.X) / 2;
        foreach (var share in new[] { 0.8, 0.5, 0.25, 0.1 })
        {
            var spot = new Spot(x, -(board.Low.Y + ((board.High.Y - board.Low.Y) * share)));
            if (scene.Visible.At(spot) == board.Panel.Id)
                return spot;
        }
        return null;
    }

    private static bool IsBeside(Solid solid) =>
        solid.Panel.Role
            is PanelRole.Slab
                or PanelRole.Shelf
                or PanelRole.BaseRail
                or PanelRole.Runner
                or PanelRole.Filler
                or PanelRole.Trim;

    private static string BesideText(ViewScene scene, Panel panel, string letter)
    {
        var piece = scene.Workbook.BuiltIn.Pieces.First(p => p.Piece.Id == panel.Piece).Piece;
        return $"{piece.Name ?? piece.Id}  {letter}".TrimEnd();
    }

    /// <summary>True when a panel seen is one of a box's own, or of the doors in front of it.</summary>
    private bool IsOf(PlacedPiece box, string? panel) =>
        scene
            .Pieces.Where(p => p == box || (p.Piece is Doors doors && doors.Box == box.Piece.Id))
            .Any(p => p.Panels.Any(q => q.Id == panel));

    private Window WindowOf(Solid solid) => Window.Around([painting.At(solid.Low), painting.At(solid.High)]);

    private static IEnumerable<Mark> Ring(Spot at, string letter, string about, double size = LetterSize)
    {
        if (letter.Length == 0)
            yield break;
        var em = letter.Length == 1 ? size : size * 0.8;
        yield return new Mark.Group(
            about,
            [
                new Mark.Circle(at, size * 0.72, Fill.Paper, Pen.Thin),
                new Mark.Label(
                    letter,
                    new(at.X, at.Y + (em * TextMetrics.CapitalHeight / 2)),
                    em,
                    Anchor.Middle,
                    Bold: true
                ),
            ]
        );
    }

    private static IEnumerable<Mark> OnPaper(string text, Spot at)
    {
        var half = (TextMetrics.Width(text, NameSize) / 2) + 0.6;
        var window = new Window(at.X - half, at.Y - (NameSize * 0.85), at.X + half, at.Y + (NameSize * 0.35));
        return
        [
            new Mark.Path(window.Corners, true, Fill.Paper, Pen.None),
            new Mark.Label(text, at, NameSize, Anchor.Middle),
        ];
    }

    private readonly record struct Leader(string Text, string Letter, string Panel, Spot[] Spots)
    {
        public Spot At => Spots[0];
    }
}
