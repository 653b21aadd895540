using System.Buffers;
using System.Text;
using System.Text.Json;
using Nookwright.Flow;

namespace Nookwright.Drawing;

/// <summary>The room and the built-in as meshes for a screen, in compact JSON; room frame, millimetres to 0.001.</summary>
/// <remarks>
/// <code>
/// { "bounds": {"low":[x,y,z],"high":[x,y,z]},            of the built-in; of the room when there is none
///   "panels": [ {"id","piece","letter","name","material","role","held",
///                "centre":[x,y,z], "explode":[x,y,z],      a vector: where it goes when pulled all the way apart
///                "positions":[x,y,z,…], "indices":[a,b,c,…], "edges":[x,y,z,x,y,z,…]} ],
///   "room":   [ {"id","kind","what","wall","normal":[x,y,z],"positions":[…],"indices":[…]} ] }
/// </code>
/// Triangles run anticlockwise as seen from outside; corners are not shared between faces, so flat normals come out right.
/// </remarks>
public static class SceneJson
{
    /// <summary>The scene of a workbook.</summary>
    public static string Of(Workbook workbook)
    {
        var bytes = new ArrayBufferWriter<byte>(1 << 16);
        using (var json = new Utf8JsonWriter(bytes))
            new SceneWriter(json, workbook).Write();
        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }
}
