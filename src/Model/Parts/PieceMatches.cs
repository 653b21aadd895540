using Nookwright.Design;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>What must match within one piece.</summary>
internal static class PieceMatches
{
    public static IEnumerable<MustMatch> Of(Piece piece, IReadOnlyList<Part> parts) =>
        piece switch
        {
            Carcass box => OfBox(box, parts),
            SupportBox box => OfBox(box, parts),
            Doors doors => OfDoors(doors, parts),
            ToeBase toeBase => OfBase(toeBase, parts),
            FlatPiece flat => OfLayers(flat, parts),
            _ => [],
        };

    private static IEnumerable<MustMatch> OfBox(Piece box, IReadOnlyList<Part> parts)
    {
        var sides = With(parts, PanelRole.Side);
        var between = With(parts, PanelRole.Bottom, PanelRole.Top, PanelRole.Stretcher);
        var slats = With(parts, PanelRole.BackSlat);
        return
        [
            Match(box, "sides.height", sides, Height, "the two sides of {0} must be equally high, or it stands skew"),
            Match(
                box,
                "sides.depth",
                sides,
                p => p.Depth(box.Facing),
                "the two sides of {0} must be equally deep, or its front is not flat"
            ),
            Match(
                box,
                "between.length",
                between,
                p => p.Across(box.Facing),
                "what closes {0} below and above must be equally long, or its sides are not parallel"
            ),
            Match(
                box,
                "slats.length",
                slats,
                p => p.Across(box.Facing),
                "the back slats of {0} hold its sides parallel"
            ),
            Match(box, "slats.height", slats, Height, "the back slats of {0} are ripped at one setting"),
        ];
    }

    private static IEnumerable<MustMatch> OfDoors(Doors doors, IReadOnlyList<Part> parts) =>
        [
            Match(doors, "height", parts, Height, "the doors of {0} hang side by side"),
            Match(doors, "width", parts, Level, "the doors of {0} share one opening"),
        ];

    private static IEnumerable<MustMatch> OfBase(ToeBase toeBase, IReadOnlyList<Part> parts)
    {
        var crosses = With(parts, PanelRole.BaseCross);
        var rails = With(parts, PanelRole.BaseRail);
        return
        [
            Match(
                toeBase,
                "height",
                [.. rails, .. crosses],
                Height,
                "all members of {0} must be equally high, or boxes rock on it"
            ),
            Match(
                toeBase,
                "crosses.length",
                crosses,
                p => p.Depth(toeBase.Facing),
                "the cross members of {0} must be equally long, or its rails are not parallel"
            ),
            Match(
                toeBase,
                "rails.length",
                rails,
                p => p.Across(toeBase.Facing),
                "the rails of {0} must be equally long, or it is not square"
            ),
        ];
    }

    /// <summary>Layers lie on each other; strips of one size are layers of each other.</summary>
    private static IEnumerable<MustMatch> OfLayers(FlatPiece flat, IReadOnlyList<Part> parts)
    {
        if (flat.Layers < 2)
            return [];
        return With(parts, PanelRole.Slab, PanelRole.Shelf)
            .GroupBy(part => (part.CutLength.Length, part.CutWidth.Length))
            .SelectMany((strip, i) => Layers(flat, i == 0 ? "layers" : $"layers-{i + 1}", [.. strip]));
    }

    private static IEnumerable<MustMatch> Layers(FlatPiece flat, string name, List<Part> layers) =>
        [
            Match(
                flat,
                $"{name}.length",
                layers,
                p => new(p.Id, MatchedSide.Length),
                "the layers of {0} lie on each other"
            ),
            Match(
                flat,
                $"{name}.width",
                layers,
                p => new(p.Id, MatchedSide.Width),
                "the layers of {0} lie on each other"
            ),
        ];

    private static PartSide? Height(Part part) => part.Height();

    /// <summary>What is not its height: an upright panel's other dimension, whichever way it looks.</summary>
    private static PartSide? Level(Part part) =>
        part.Height() is { } height
            ? height with
            {
                Side = height.Side == MatchedSide.Length ? MatchedSide.Width : MatchedSide.Length,
            }
            : null;

    private static List<Part> With(IEnumerable<Part> parts, params PanelRole[] roles) =>
        [.. parts.Where(part => roles.Contains(part.Panel.Role))];

    private static MustMatch Match(
        Piece piece,
        string what,
        IEnumerable<Part> parts,
        Func<Part, PartSide?> side,
        string because
    ) => new($"{piece.Id}.{what}", [.. parts.Select(side).OfType<PartSide>()], Sentence(because, piece));

    private static string Sentence(string because, Piece piece)
    {
        var sentence = string.Format(null, because, piece.Name ?? piece.Id);
        return char.ToUpperInvariant(sentence[0]) + sentence[1..] + ".";
    }
}
