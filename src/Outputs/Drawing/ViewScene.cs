using Nookwright.Design;
using Nookwright.Flow;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>What stands in a view square to the room: its faces in painting order, the room's behind it, and what is seen where.</summary>
internal sealed class ViewScene
{
    /// <summary>Faces this far behind the front of their piece are inside it, and darker. Chosen by eye.</summary>
    private const double Inside = 60;

    private readonly IReadOnlyList<Facet> _things;
    private readonly IReadOnlyList<Facet> _panels;
    private readonly IReadOnlyDictionary<string, double> _fronts;

    /// <param name="workbook">The job.</param>
    /// <param name="sight">Where it is seen from.</param>
    /// <param name="solids">The solids in the view.</param>
    public ViewScene(Workbook workbook, Sight sight, IReadOnlyList<Solid> solids)
    {
        (Workbook, Sight, Solids) = (workbook, sight, solids);
        _fronts = solids
            .GroupBy(s => s.Panel.Piece)
            .ToDictionary(g => g.Key, g => g.SelectMany(s => new[] { s.Low, s.High }).Max(sight.Nearness));
        _panels = PaintingOrder.Of([.. SolidFacets.Of(solids, sight, LookOf)], sight);
        _things = PaintingOrder.Of(
            [
                .. RoomSolids
                    .Of(workbook.Room)
                    .Where(f => f.Thing is { Kind: not RoomThingKind.Stud } && SolidFacets.Looks(f.Normal, sight))
                    .SelectMany(ThingFacets.Of),
            ],
            sight
        );
        Visible = new(_panels, sight);
    }

    public Workbook Workbook { get; }

    public Sight Sight { get; }

    public IReadOnlyList<Solid> Solids { get; }

    /// <summary>What of the built-in is seen where.</summary>
    public Visible Visible { get; }

    /// <summary>The pieces with something in the view.</summary>
    public IReadOnlyList<PlacedPiece> Pieces
    {
        get
        {
            var ids = Solids.Select(s => s.Panel.Piece).ToHashSet();
            return [.. Workbook.BuiltIn.Pieces.Where(p => ids.Contains(p.Piece.Id))];
        }
    }

    /// <summary>Things on walls, then the built-in over them.</summary>
    public IEnumerable<Mark> Marks(Painting painting)
    {
        var captions = Captions.Of(Workbook);
        return [.. painting.Of(_things, captions), .. painting.Of(_panels, captions)];
    }

    private FacetLook LookOf(Solid solid, SolidFace face)
    {
        if (face.Kind == SolidFaceKind.Cut)
            return new(Fill.Dark, Pen.Thin);
        var behind = _fronts[solid.Panel.Piece] - Sight.Nearness(face.Outline[0]);
        return new(behind > Inside ? Fill.Middle : Fill.Light, Pen.Thin);
    }
}
