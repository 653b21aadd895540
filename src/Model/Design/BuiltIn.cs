using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Everything designed for the room: pieces and panels in place.</summary>
/// <param name="Pieces">The pieces, in the document's order; one that could not be worked out is missing and has a finding.</param>
/// <param name="Sizes">Every name of the job that was asked or exists, with its value: named sizes, pieces' sides, panels' sizes.</param>
/// <param name="Remainders">What rounding left over, and where it went.</param>
/// <param name="Findings">What will not work.</param>
public sealed record BuiltIn(
    IReadOnlyList<PlacedPiece> Pieces,
    IReadOnlyDictionary<string, Traced> Sizes,
    IReadOnlyList<Remainder> Remainders,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>What a document comes to in a room.</summary>
    public static BuiltIn Of(Project project, Room room) => new Designer(project, room).Design();

    /// <summary>All panels, in the order of their pieces.</summary>
    public IEnumerable<Panel> Panels => Pieces.SelectMany(p => p.Panels);
}

/// <summary>A piece standing in the room.</summary>
/// <param name="Piece">As the document has it.</param>
/// <param name="Low">The lowest x, y and z of it, in the room.</param>
/// <param name="High">The highest x, y and z of it, in the room.</param>
/// <param name="Panels">Its panels.</param>
public sealed record PlacedPiece(Piece Piece, Point3 Low, Point3 High, IReadOnlyList<Panel> Panels);

/// <summary>What rounding a finished size to the shop's mark left over.</summary>
/// <param name="Panel">The panel's id.</param>
/// <param name="Side">Which of its sizes.</param>
/// <param name="Amount">Finished less exact: positive when the part came out larger.</param>
/// <param name="Goes">Where it goes, as a sentence: "box-1 comes out 0.2 mm wider; the next piece in row-1 moves with it".</param>
public sealed record Remainder(string Panel, MatchedSide Side, Length Amount, string Goes);
