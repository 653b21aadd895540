using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>A drawing for the page, made and written as SVG when it is first looked at.</summary>
/// <param name="name">What it shows, in a word or two.</param>
/// <param name="draw">Draws it.</param>
public sealed class PageDrawing(string name, Func<Picture> draw)
{
    private readonly Lazy<string> _svg = new(() => SvgWriter.Write(draw(), new(IdPrefix(name), EmbedStyle: false)));

    /// <summary>What it shows, in a word or two.</summary>
    public string Name { get; } = name;

    /// <summary>The drawing.</summary>
    public string Svg => _svg.Value;

    // Several drawings stand on one page, and an id is given once on it.
    private static string IdPrefix(string name) => $"d-{name.Replace(' ', '-')}-";
}

/// <summary>The drawings of a workbook, each made when it is first looked at, and once for all who look.</summary>
/// <param name="workbook">The workbook.</param>
public sealed class JobPictures(Workbook workbook)
{
    // Millimetres of a picture; the page stretches it to the width there is.
    private const double Width = 260;
    private const double Height = 180;

    private readonly Lazy<string> _scene = new(() => SceneJson.Of(workbook));
    private readonly Lazy<IReadOnlyList<PageDrawing>> _room = new(() => OfRoom(workbook));

    /// <summary>The scene for the three-dimensional view.</summary>
    public string Scene => _scene.Value;

    /// <summary>Drawings of the built-in in its room.</summary>
    public IReadOnlyList<PageDrawing> BuiltIn { get; } =
    [
        new("Front", () => Elevation.Of(workbook, SeenFrom.Front, Width, Height)),
        new("From the left", () => Elevation.Of(workbook, SeenFrom.Left, Width, Height)),
        new("From the right", () => Elevation.Of(workbook, SeenFrom.Right, Width, Height)),
        new("In the room", () => RoomView.Of(workbook, Width, Height)),
    ];

    /// <summary>Drawings of the room as read, empty.</summary>
    public IReadOnlyList<PageDrawing> Room => _room.Value;

    /// <summary>The sheets of a workbook's plan as they are cut; none while there is no plan.</summary>
    public IReadOnlyList<PageDrawing> SheetsOf(Workbook planned) => [];

    private static IReadOnlyList<PageDrawing> OfRoom(Workbook workbook)
    {
        var empty = workbook with { BuiltIn = workbook.BuiltIn with { Pieces = [] } };
        return [new("The room", () => RoomView.Of(empty, Width, Height))];
    }
}
