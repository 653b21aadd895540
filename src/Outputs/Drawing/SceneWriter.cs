using System.Text.Json;
using Nookwright.Flow;
using Nookwright.Parts;

namespace Nookwright.Drawing;

/// <summary>Writes one scene; see <see cref="SceneJson"/> for its form.</summary>
internal sealed class SceneWriter(Utf8JsonWriter json, Workbook workbook)
{
    private readonly IReadOnlyList<Solid> _solids = Solids.Of(workbook.BuiltIn);
    private readonly IReadOnlyList<RoomFace> _room = RoomSolids.Of(workbook.Room);

    public void Write()
    {
        json.WriteStartObject();
        WriteBounds();
        WritePanels();
        WriteRoom();
        json.WriteEndObject();
    }

    private Extent Bounds => _solids.Count > 0 ? Extent.Of(_solids) : Extent.Of(_room.SelectMany(f => f.Corners));

    private void WriteBounds()
    {
        json.WriteStartObject("bounds");
        WritePoints("low", [Bounds.Low]);
        WritePoints("high", [Bounds.High]);
        json.WriteEndObject();
    }

    private void WritePanels()
    {
        var parts = workbook.PartList.Parts.ToDictionary(p => p.Id);
        var apart = PullApart.Of(_solids);
        json.WriteStartArray("panels");
        foreach (var solid in _solids)
            WritePanel(solid, parts.GetValueOrDefault(solid.Panel.Id), apart[solid.Panel.Id]);
        json.WriteEndArray();
    }

    private void WritePanel(Solid solid, Part? part, Vertex explode)
    {
        var panel = solid.Panel;
        json.WriteStartObject();
        json.WriteString("id", panel.Id);
        json.WriteString("piece", panel.Piece);
        json.WriteString("letter", part?.Letter ?? "");
        json.WriteString("name", panel.Name);
        json.WriteString("material", panel.Material);
        json.WriteString("role", JsonNamingPolicy.KebabCaseLower.ConvertName(panel.Role.ToString()));
        json.WriteBoolean("held", part?.IsHeld ?? false);
        WritePoints("centre", [solid.Centre]);
        WritePoints("explode", [explode]);
        WritePoints("positions", solid.Faces.SelectMany(f => f.Rings).SelectMany(r => r));
        WriteIndices(solid.Faces);
        WritePoints("edges", solid.Edges.SelectMany(e => new[] { e.From, e.To }));
        json.WriteEndObject();
    }

    private void WriteIndices(IReadOnlyList<SolidFace> faces)
    {
        var first = 0;
        json.WriteStartArray("indices");
        foreach (var face in faces)
        {
            foreach (var corner in Triangulation.Of(face))
                json.WriteNumberValue(first + corner);
            first += face.Rings.Sum(r => r.Count);
        }
        json.WriteEndArray();
    }

    private void WriteRoom()
    {
        json.WriteStartArray("room");
        foreach (var face in _room)
        {
            json.WriteStartObject();
            json.WriteString("id", face.Id);
            json.WriteString("kind", Word(face.Kind));
            json.WriteString("what", face.Thing is { } thing ? Word(thing.Kind) : Word(face.Kind));
            json.WriteString("wall", face.Wall is { } wall ? Word(wall) : "");
            WritePoints("normal", [face.Normal]);
            WritePoints("positions", face.Corners);
            json.WriteStartArray("indices");
            foreach (var corner in Triangulation.Fan(face.Corners.Count))
                json.WriteNumberValue(corner);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void WritePoints(string name, IEnumerable<Vertex> points)
    {
        json.WriteStartArray(name);
        foreach (var (x, y, z) in points)
        {
            json.WriteNumberValue(Thousandths(x));
            json.WriteNumberValue(Thousandths(y));
            json.WriteNumberValue(Thousandths(z));
        }
        json.WriteEndArray();
    }

    private static double Thousandths(double millimetres) => Math.Round(millimetres, 3) + 0.0;

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
