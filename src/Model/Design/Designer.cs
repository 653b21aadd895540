using Nookwright.Projects;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Works out a whole job: names first, pieces after, and what will not work last.</summary>
internal sealed class Designer
{
    private readonly Job _job;
    private readonly Room _room;
    private readonly List<PieceDesign> _designs = [];
    private readonly List<(string About, Refusal Why)> _troubles = [];

    public Designer(Project project, Room room)
    {
        _job = new(project);
        _room = room;
        foreach (var piece in project.Pieces)
            Add(piece);
        JobSizes.Name(_job, room);
        _designs.ForEach(design => design.NameAll());
    }

    public BuiltIn Design()
    {
        WorkOutRowsInOrder();
        var placed = _designs.Select(Placed).OfType<PlacedPiece>().ToList();
        var sizes = _job.Names.All();
        return new(placed, sizes, _job.Finished.Remainders, [.. Findings(placed)]);
    }

    private void Add(Piece piece)
    {
        var design = Pieces.DesignOf(piece, _job);
        if (_job.Designs.TryAdd(piece.Id, design))
            _designs.Add(design);
        else
            _job.Findings.Add(
                new(
                    "pieces.id-twice",
                    Severity.MustMend,
                    $"Two pieces are called {piece.Id}; the second is left out until it has an id of its own.",
                    [piece.Id]
                )
                {
                    Field = $"pieces/{piece.Id}/id",
                }
            );
    }

    /// <summary>From the first of each row on, so that a long row does not pile up one size inside the other.</summary>
    private void WorkOutRowsInOrder()
    {
        foreach (var piece in _job.Project.Rows.SelectMany(row => row.Pieces).Where(_job.Designs.ContainsKey))
        foreach (var side in (string[])["right", "back", "top"])
            _job.Names.Look($"{piece}.{side}");
    }

    private PlacedPiece? Placed(PieceDesign design)
    {
        var sizes = new Wanted(_job.Names);
        var boards = design.Boards(sizes).ToList();
        var toRoom = design.ToRoom(sizes);
        design.AskForPlace(sizes);
        if (sizes.Missing is { } missing)
        {
            _troubles.Add((design.Id, missing));
            return null;
        }
        _job.Findings.AddRange(design.Check(sizes));
        var panels = boards.Select(board => PanelInRoom.Of(board, design, toRoom, _job)).ToList();
        var bounds = SolidBox.Around(panels.SelectMany(SolidBox.InRoom));
        return new(design.Piece, bounds.Low, bounds.High, panels);
    }

    private IEnumerable<Finding> Findings(IReadOnlyList<PlacedPiece> placed) =>
        [
            .. FormulaFindings.Of([.. _troubles, .. JobSizes.Troubles(_job)], _job.Designs.ContainsKey),
            .. _job.Names.GivenTwice.Distinct().Select(GivenTwice),
            .. _job.Findings,
            .. EdgingFit.Findings(placed, _job),
            .. SheetsNotMeasured.Findings(placed, _job),
            .. PieceOverlaps.Findings(placed, _job),
            .. RoomFit.Findings(placed, _room, _job),
        ];

    private static Finding GivenTwice(string name) =>
        new(
            "names.given-twice",
            Severity.MustMend,
            $"{name} is the name of two things; formulas see the first. Give the other one a name of its own.",
            [name]
        );
}
