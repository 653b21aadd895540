using Nookwright.Design;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>What must match across pieces: boxes in one line or stack, their doors, support boxes of one tier.</summary>
internal sealed class RowMatches(Project project, ILookup<string, Part> partsOfPiece)
{
    private readonly Dictionary<string, Piece> _pieces = project.Pieces.DistinctBy(p => p.Id).ToDictionary(p => p.Id);

    public IEnumerable<MustMatch> All() =>
        project.Rows.SelectMany(row => row.Direction == RowDirection.Up ? OfStack(row) : OfLine(row)).Concat(OfTiers());

    private IEnumerable<MustMatch> OfLine(Row row)
    {
        if (row.Direction != RowDirection.Right)
            return [];
        var boxes = BoxesIn(row);
        // A turned box has its front elsewhere.
        var inPlane = boxes.Where(box => box.Facing == Facing.Front).ToList();
        return
        [
            Across(
                row,
                "depth",
                Members(inPlane, Depth, PanelRole.Side, PanelRole.Bottom, PanelRole.Top),
                "Boxes that stand in line are equally deep, so that their fronts make one plane."
            ),
            Across(
                row,
                "height",
                Members(boxes, Height, PanelRole.Side),
                "Boxes that stand in line are equally high, so that what lies on them lies flat."
            ),
            Across(
                row,
                "doors.height",
                Members(DoorsOn(inPlane), Height, PanelRole.Door),
                "Doors in one line are equally high, so that the gaps above and below them run through."
            ),
        ];
    }

    private IEnumerable<MustMatch> OfStack(Row row)
    {
        var boxes = BoxesIn(row);
        return
        [
            Across(
                row,
                "depth",
                Members(boxes, Depth, PanelRole.Side, PanelRole.Bottom, PanelRole.Top),
                "Boxes that stand on each other are equally deep, so that their fronts make one plane."
            ),
            Across(
                row,
                "width",
                Members(boxes, AcrossBox, PanelRole.Bottom, PanelRole.Top),
                "Boxes that stand on each other are equally wide, so that their sides run through."
            ),
            Across(
                row,
                "doors.width",
                Members(DoorsOn(boxes), AcrossBox, PanelRole.Door),
                "Doors above each other are equally wide, so that the gaps between them run through."
            ),
        ];
    }

    private IEnumerable<MustMatch> OfTiers() =>
        project
            .Pieces.OfType<SupportBox>()
            .Where(box => box.Tier is not null)
            .GroupBy(box => box.Tier!)
            .Select(tier => new MustMatch(
                $"{tier.Key}.height",
                Members([.. tier], Height, PanelRole.Side, PanelRole.Front),
                $"The support boxes of tier {tier.Key} carry one shelf, which lies level only if they are equally high."
            )
            {
                WithinOnePiece = false,
            });

    private List<Piece> BoxesIn(Row row) =>
        [.. row.Pieces.Distinct().Select(id => _pieces.GetValueOrDefault(id)).OfType<Carcass>()];

    private List<Piece> DoorsOn(List<Piece> boxes)
    {
        var ids = boxes.Select(box => box.Id).ToHashSet();
        return [.. project.Pieces.OfType<Doors>().Where(doors => ids.Contains(doors.Box))];
    }

    private List<PartSide> Members(
        IReadOnlyList<Piece> pieces,
        Func<Part, Facing, PartSide?> side,
        params PanelRole[] roles
    ) =>
        [
            .. from piece in pieces
            from part in partsOfPiece[piece.Id]
            where roles.Contains(part.Panel.Role)
            let meant = side(part, FacingOf(piece))
            where meant is not null
            select meant.Value,
        ];

    /// <summary>Doors look where their box looks.</summary>
    private Facing FacingOf(Piece piece) =>
        piece is Doors doors ? _pieces.GetValueOrDefault(doors.Box)?.Facing ?? Facing.Front : piece.Facing;

    private static PartSide? Height(Part part, Facing facing) => part.Height();

    private static PartSide? Depth(Part part, Facing facing) => part.Depth(facing);

    private static PartSide? AcrossBox(Part part, Facing facing) => part.Across(facing);

    private static MustMatch Across(Row row, string what, IReadOnlyList<PartSide> sides, string because) =>
        new($"{row.Id}.{what}", sides, because) { WithinOnePiece = false };
}
