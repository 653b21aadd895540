using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>What must hold in every document, and needs no geometry to tell: names are plain and stand for one thing, and what is named exists.</summary>
/// <remarks>A document that breaks one of these is not opened, and no edit makes one, so that what is saved can be opened again.</remarks>
public static class ProjectChecks
{
    /// <summary>The most things in one list; a house full of built-ins is several jobs.</summary>
    public const int MostInAList = 1000;

    /// <summary>Everything that does not hold, each with its field.</summary>
    public static IEnumerable<Refusal> Of(Project project)
    {
        var tooMany = TooMany(project).ToList();
        return tooMany.Count > 0
            ? tooMany
            : [.. Names.Of(project), .. References.Of(project), .. RoundsInOrder(project)];
    }

    private static IEnumerable<Refusal> RoundsInOrder(Project project) =>
        project
            .Issued.Where((issued, index) => issued.Round != index + 1)
            .Take(1)
            .Select(issued => new Refusal(
                $"This is called round {issued.Round} and stands as number {project.Issued.ToList().IndexOf(issued) + 1}: "
                    + "the issued rounds follow each other from 1.",
                $"issued/{project.Issued.ToList().IndexOf(issued)}/round"
            ));

    private static IEnumerable<Refusal> TooMany(Project project)
    {
        (string Path, int Count, string Word)[] lists =
        [
            ("pieces", project.Pieces.Count, "pieces"),
            ("sizes", project.Sizes.Count, "named sizes"),
            ("readings", project.Readings.Count, "readings"),
            ("rows", project.Rows.Count, "rows"),
            ("runs", project.Runs.Count, "runs of grain"),
            ("matches", project.Matches.Count, "match groups"),
            ("cutting/pins", project.Cutting.Pins.Count, "pins"),
            ("cutting/apart", project.Cutting.Apart.Count, "wishes for parts apart"),
            ("cutting/sheets", project.Cutting.Sheets.Count, "kept sheets"),
            ("issued", project.Issued.Count, "issued rounds"),
            ("room/readings", project.Room.Readings.Count, "readings"),
            ("room/things", project.Room.Things.Count, "things"),
            ("shop/sheets", project.Shop.Sheets.Count, "materials"),
            ("shop/edgings", project.Shop.Edgings.Count, "edgings"),
        ];
        return lists
            .Where(list => list.Count > MostInAList)
            .Select(list => new Refusal(
                $"There are {list.Count} {list.Word} here, and one job takes {MostInAList}: make several jobs of it.",
                list.Path
            ));
    }
}
