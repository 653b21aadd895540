using System.Collections.Concurrent;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Parts;

namespace Nookwright.Web.Sessions;

/// <summary>The drawings of a room and what is built in it.</summary>
/// <param name="workbook">The workbook; its plan does not matter here.</param>
public sealed class JobPictures(Workbook workbook)
{
    // Millimetres of a picture; the page stretches it to the width there is. Small, so that its letters are large.
    private const double Width = 190;
    private const double Height = 165;

    private readonly ConcurrentDictionary<string, PageDrawing> _parts = [];
    private readonly Lazy<string> _scene = new(() => SceneJson.Of(workbook));

    /// <summary>The scene for the three-dimensional view.</summary>
    public string Scene => _scene.Value;

    /// <summary>The built-in in its room.</summary>
    public IReadOnlyList<PageDrawing> BuiltIn { get; } =
    [
        PageDrawing.WithoutScale("Plan", () => PlanView.Of(workbook, Width, Height)),
        PageDrawing.WithoutScale("Front", () => Elevation.Of(workbook, SeenFrom.Front, Width, Height)),
        PageDrawing.WithoutScale("From the left", () => Elevation.Of(workbook, SeenFrom.Left, Width, Height)),
        PageDrawing.WithoutScale("From the right", () => Elevation.Of(workbook, SeenFrom.Right, Width, Height)),
    ];

    /// <summary>The room as read, empty.</summary>
    public IReadOnlyList<PageDrawing> Room { get; } =
    [
        PageDrawing.WithoutScale("The room from above", () => PlanView.Of(Emptied(workbook), Width, Height)),
        new("The room", () => RoomView.Of(Emptied(workbook), Width, Height)),
    ];

    /// <summary>A part by itself, with its edges, holes and sizes.</summary>
    public PageDrawing Of(Part part) =>
        _parts.GetOrAdd(part.Id, id => new($"Part {id}", () => PartPicture.Of(part, workbook.Lengths)));

    private static Workbook Emptied(Workbook workbook) =>
        workbook with
        {
            BuiltIn = workbook.BuiltIn with { Pieces = [] },
        };
}
