namespace Nookwright.Drawing;

/// <summary>The faces of solids that look at the eye.</summary>
internal static class SolidFacets
{
    /// <summary>How far a face must be turned to the eye to be seen as more than a line: the cosine of 89.9 degrees.</summary>
    private const double EdgeOn = 0.0017;

    /// <summary>True when a face with this normal is seen from its outside.</summary>
    public static bool Looks(Vertex normal, Sight sight) => normal.Dot(sight.Towards) > EdgeOn;

    /// <summary>The faces, in the solids' order.</summary>
    public static IEnumerable<Facet> Of(
        IEnumerable<Solid> solids,
        Sight sight,
        Func<Solid, SolidFace, FacetLook> lookOf
    ) =>
        from solid in solids
        from face in solid.Faces
        where Looks(face.Normal, sight)
        select Facet.Of(solid.Panel.Id, face, lookOf(solid, face));
}
