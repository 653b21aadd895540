using System.Globalization;
using System.Text.RegularExpressions;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Changes to a document. Each gives a new one that can be saved and opened again, or says why it will not.</summary>
public static class Edits
{
    /// <summary>Puts a typed text into a field.</summary>
    /// <param name="project">The document.</param>
    /// <param name="fieldPath">The field, as a path (<c>pieces/box-1/width</c>).</param>
    /// <param name="text">What was typed; nothing takes a field away that can be left out.</param>
    public static Outcome<Project> SetField(this Project project, string fieldPath, string text) =>
        project.SetFields([new(fieldPath, text)]);

    /// <summary>Writes down what the tape said of something built.</summary>
    /// <param name="project">The document.</param>
    /// <param name="reading">The reading's name (<c>run.width</c>).</param>
    /// <param name="value">What the tape said; nothing makes the reading awaited again.</param>
    /// <param name="day">The day it was read.</param>
    public static Outcome<Project> TakeReading(this Project project, string reading, string value, DateOnly day)
    {
        var taken = !string.IsNullOrWhiteSpace(value);
        var date = taken ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "";
        return project.SetFields([new($"readings/{reading}/taken", value), new($"readings/{reading}/date", date)]);
    }

    /// <summary>Makes any other change, if what comes of it can be saved and opened again.</summary>
    public static Outcome<Project> Change(this Project project, Func<Project, Project> change) =>
        Checked(change(project));

    /// <summary>Adds a piece after the others.</summary>
    public static Outcome<Project> AddPiece(this Project project, Piece piece) =>
        Checked(project with { Pieces = [.. project.Pieces, piece] });

    /// <summary>Takes a piece away, and its name out of rows, runs, match groups, pins and wishes.</summary>
    public static Outcome<Project> RemovePiece(this Project project, string id)
    {
        if (project.Pieces.All(piece => piece.Id != id))
            return NoPiece(id);
        if (project.Pieces.OfType<Doors>().FirstOrDefault(doors => doors.Box == id) is { } hung)
            return new Refusal(
                $"The doors \"{hung.Id}\" hang on \"{id}\": take them away first.",
                $"pieces/{hung.Id}/box"
            );
        return Checked(
            project with
            {
                Pieces = [.. project.Pieces.Where(piece => piece.Id != id)],
                Rows =
                [
                    .. project.Rows.Select(row => row with { Pieces = [.. row.Pieces.Where(piece => piece != id)] }),
                ],
                Runs = [.. project.Runs.Select(run => Without(run, id))],
                Matches = [.. project.Matches.Select(match => match with { Panels = Without(match.Panels, id) })],
                Cutting = project.Cutting.Without(id),
            }
        );
    }

    /// <summary>Gives a piece another id, wherever it is named: in fields, in formulas, in rows, runs and match groups.</summary>
    public static Outcome<Project> RenamePiece(this Project project, string id, string newId)
    {
        if (project.Pieces.Select(piece => piece.Id).ToList().IndexOf(id) is var index && index < 0)
            return NoPiece(id);
        var inFormula = new Regex($@"(?<![\w.\-]){Regex.Escape(id)}(?=\.)");
        var changes =
            from leaf in Leaves.Of(project)
            let renamed = Renamed(leaf, id, newId, inFormula)
            where renamed != leaf.Text
            select KeyValuePair.Create(leaf.Path, renamed);
        return project
            .SetFields([.. changes, new($"pieces/{index}/id", newId)])
            .Then(renamed =>
                Checked(
                    renamed with
                    {
                        Issued = [.. renamed.Issued.Select(issued => IssueEdits.Renamed(issued, id, newId))],
                        Cutting = renamed.Cutting.Renamed(id, newId),
                    }
                )
            );
    }

    private static string Renamed(Leaf leaf, string id, string newId, Regex inFormula) =>
        leaf switch
        {
            { Form: Form.Size } => inFormula.Replace(leaf.Text, newId),
            { Form: Form.Text { RefersTo: "pieces" } } when leaf.Text == id => newId,
            { Field.Name: "panels" or "maySplitAfter" } when leaf.Text.StartsWith(id + ".", StringComparison.Ordinal) =>
                newId + leaf.Text[id.Length..],
            _ => leaf.Text,
        };

    private static Outcome<Project> SetFields(this Project project, IReadOnlyList<KeyValuePair<string, string>> changes)
    {
        var json = RecordJson.ToJson(project);
        if (changes.FirstOrDefault(change => change.Key is "format" or "version").Key is { } own)
            return new Refusal("The program writes this field itself: leave it as it is.", own);
        foreach (var (path, text) in changes)
            if (FieldEdit.Set(json, Forms.Of<Project>(), path, text) is { } refusal)
                return refusal;
        return Checked(RecordJson.FromJson<Project>(json));
    }

    private static Outcome<Project> Checked(Project project) =>
        FormCheck.Of(RecordJson.ToJson(project), Forms.Of<Project>()).Concat(ProjectChecks.Of(project)).FirstOrDefault()
            is { } refusal
            ? refusal
            : project;

    private static Refusal NoPiece(string id) =>
        new($"There is no piece \"{id}\": it may have been taken away.", "pieces");

    private static GrainRun Without(GrainRun run, string piece)
    {
        var panels = Without(run.Panels, piece);
        return run with { Panels = panels, MaySplitAfter = [.. panels.SkipLast(1).Intersect(run.MaySplitAfter)] };
    }

    internal static IReadOnlyList<string> Without(IReadOnlyList<string> panels, string piece) =>
        [.. panels.Where(panel => !panel.StartsWith(piece + ".", StringComparison.Ordinal))];
}
