using Nookwright.Records;
using Nookwright.Shop;

namespace Nookwright.Projects;

/// <summary>The fields of anything in a document, so that a page can show and change what it does not know.</summary>
public static class Fields
{
    /// <summary>The fields of a piece, in the order of the file.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, Piece piece) =>
        project.FieldsOf(piece, "pieces", piece.Id);

    /// <summary>The fields of a material.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, SheetGood sheet) =>
        project.FieldsOf(sheet, "shop/sheets", sheet.Id);

    /// <summary>The fields of an edging.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, Edging edging) =>
        project.FieldsOf(edging, "shop/edgings", edging.Id);

    /// <summary>The fields of a named size.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, NamedSize size) =>
        project.FieldsOf(size, "sizes", size.Name);

    /// <summary>The fields of a reading of something built.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, BuiltReading reading) =>
        project.FieldsOf(reading, "readings", reading.Name);

    /// <summary>The fields of a reading of the room.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, RoomReading reading) =>
        project.FieldsOf(reading, "room/readings", reading.Id);

    /// <summary>The fields of a thing in the room.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, RoomThing thing) =>
        project.FieldsOf(thing, "room/things", thing.Id);

    /// <summary>The fields of a row.</summary>
    public static IEnumerable<Field> FieldsOf(this Project project, Row row) => project.FieldsOf(row, "rows", row.Id);

    /// <summary>The fields of the saws and of how work is done in the shop.</summary>
    public static IEnumerable<Field> FieldsOfShop(this Project project) =>
        project.FieldsAt(project.Shop with { Sheets = [], Edgings = [] }, "shop");

    /// <summary>The fields of what is wished of the cutting plan.</summary>
    public static IEnumerable<Field> FieldsOfCutting(this Project project) =>
        project.FieldsAt(project.Cutting with { Sheets = [] }, "cutting");

    /// <summary>The fields of the job as a whole: its name, unit, smallest mark, paper, note.</summary>
    public static IEnumerable<Field> FieldsOfJob(this Project project) =>
        from field in project.FieldsAt(project, "")
        where !field.Path.Contains('/') && field.Path is not ("format" or "version")
        select field;

    private static IEnumerable<Field> FieldsOf(this Project project, Kept thing, string list, string id) =>
        project.FieldsAt(thing, FieldPath.Under(list, id));

    /// <summary>Ids are left out: another id is another edit, for others name it (<see cref="Edits.RenamePiece"/>).</summary>
    private static IEnumerable<Field> FieldsAt(this Project project, Kept thing, string path) =>
        from leaf in Leaves.Of(thing, path)
        where leaf.Form is not Form.ListOf
        where leaf.Path != FieldPath.Under(path, "id")
        where thing is not (NamedSize or BuiltReading) || leaf.Path != FieldPath.Under(path, "name")
        select new Field(
            leaf.Path,
            FieldWords.Label(leaf),
            KindOf(leaf.Form),
            leaf.Text,
            ChoicesOf(project, leaf.Form),
            !leaf.Field.Required
        );

    private static FieldKind KindOf(Form form) =>
        form switch
        {
            Form.Size => FieldKind.Size,
            Form.Choice => FieldKind.Choice,
            Form.Text { RefersTo: not null } => FieldKind.Reference,
            Form.Count => FieldKind.Count,
            Form.Number => FieldKind.Number,
            Form.YesNo => FieldKind.YesNo,
            Form.Day => FieldKind.Day,
            _ => FieldKind.Text,
        };

    private static IReadOnlyList<string> ChoicesOf(Project project, Form form) =>
        form switch
        {
            Form.Choice choice => choice.Words,
            Form.Text { RefersTo: { } list } => [.. project.IdsIn(list)],
            _ => [],
        };
}
