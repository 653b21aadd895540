using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>Cuts solids level, for a plan below a height.</summary>
internal static class LevelCut
{
    /// <summary>What of a solid is below a height: all, nothing, or its lower part with its cut faces.</summary>
    /// <remarks>A board that lies level is kept or left out as a whole: its upper face says more than a cut through its thickness.</remarks>
    public static IEnumerable<Solid> Below(Solid solid, Length height)
    {
        var cut = height.Millimetres;
        if (solid.Low.Z >= cut)
            return [];
        var show = solid.Faces.First(f => f.Kind == SolidFaceKind.Show);
        if (solid.High.Z <= cut || Math.Abs(show.Normal.Z) > 0.5)
            return [solid];
        var thickness = show.Normal * -solid.Panel.Thickness.Length.Millimetres;
        return [solid with { Faces = [.. CutFaces(show, cut, thickness)] }];
    }

    /// <summary>Seen from above, nothing of an upright board is seen but where it is cut: between each pair of crossings.</summary>
    private static IEnumerable<SolidFace> CutFaces(SolidFace show, double cut, Vertex thickness)
    {
        var up = new Vertex(0, 0, 1);
        var along = up.Cross(show.Normal);
        var crossings = show.Edges.SelectMany(e => Crossing(e.From, e.To, cut)).OrderBy(p => p.Dot(along)).ToArray();
        foreach (var pair in crossings.Chunk(2).Where(p => p.Length == 2))
            yield return new([pair[0], pair[1], pair[1] + thickness, pair[0] + thickness], [], up, SolidFaceKind.Cut);
    }

    private static IEnumerable<Vertex> Crossing(Vertex a, Vertex b, double cut) =>
        (a.Z < cut) == (b.Z < cut) ? [] : [a + ((b - a) * ((cut - a.Z) / (b.Z - a.Z)))];
}
