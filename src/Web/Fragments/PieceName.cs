using Nookwright.Projects;

namespace Nookwright.Web.Fragments;

/// <summary>What a piece is called on the page.</summary>
public static class PieceName
{
    /// <summary>Its own name; doors without one go by their box; else the id.</summary>
    public static string Of(Project project, string id) =>
        project.Pieces.FirstOrDefault(piece => piece.Id == id) switch
        {
            { Name: { Length: > 0 } name } => name,
            Doors doors => $"doors of {Of(project, doors.Box)}",
            _ => id,
        };
}
