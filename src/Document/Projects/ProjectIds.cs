namespace Nookwright.Projects;

/// <summary>What can be named in a document.</summary>
public static class ProjectIds
{
    /// <summary>The ids in a list that fields refer to, in the maker's order.</summary>
    /// <param name="project">The document.</param>
    /// <param name="list">The list as a path: <c>pieces</c>, <c>shop/sheets</c>, <c>shop/sheets/stock</c> or <c>shop/edgings</c>.</param>
    public static IEnumerable<string> IdsIn(this Project project, string list) =>
        list switch
        {
            "pieces" => project.Pieces.Select(piece => piece.Id),
            "shop/sheets" => project.Shop.Sheets.Select(sheet => sheet.Id),
            "shop/sheets/stock" => project
                .Shop.Sheets.SelectMany(sheet => sheet.Stock)
                .Select(s => s.Id)
                .OfType<string>(),
            "shop/edgings" => project.Shop.Edgings.Select(edging => edging.Id),
            _ => throw new ArgumentOutOfRangeException(nameof(list), list, "No field refers to this list."),
        };
}
